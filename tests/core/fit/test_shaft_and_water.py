"""The shaft between its collars, the blade in the water, the boat's weight: by hand arithmetic. All boats invented."""

from __future__ import annotations

import math

import pytest

from service.core.catalogue import Configuration
from service.core.fit.engine import fit_configuration
from tests.support.boats import at, bench, boat, demo, margin, metal, ready, ruled, value

TAN30 = 0.57735027


def test_spacing() -> None:
    assert margin(at(boat(), metal(), lower=300, upper=650), "spacing") == pytest.approx(50)
    assert at(boat(), metal(), lower=400, upper=650).check("spacing").status == "fail"


def test_overhang_counts_to_the_middle_of_the_blade() -> None:
    fit = at(boat(), metal(), lower=300, bottom=-50)  # blade from -70 to -870, its middle at -470
    assert value(fit, "overhang") == pytest.approx(770)
    assert margin(fit, "overhang") == pytest.approx(180)


def test_head_and_foot() -> None:
    fit = at(boat(), metal(), lower=300, upper=800, bottom=-50)
    assert value(fit, "head") == pytest.approx(450)  # the top stands at 1250
    assert margin(fit, "head") == pytest.approx(450 - 120 - 40)
    assert value(fit, "foot") == pytest.approx(350)
    assert margin(fit, "foot") == pytest.approx(310)
    assert fit.placement is not None
    assert fit.placement.shaft_top_mm == 1250
    longer = at(boat(), metal(shaft="shaft-1600"), bottom=-50)
    assert value(longer, "head") == pytest.approx(750)


@pytest.mark.parametrize(("bottom", "share"), [(0.0, 1.0), (20.0, 1.0), (100.0, 0.9), (260.0, 0.7), (900.0, 0.0)])
def test_share_of_the_blade_under_water(bottom: float, share: float) -> None:
    fit = at(boat(), metal(), bottom=bottom)
    assert value(fit, "immersion.rest") == pytest.approx(share)
    assert margin(fit, "immersion.rest") == pytest.approx(share - 0.9)


def test_to_weather_the_blade_rises_and_to_leeward_it_sinks() -> None:
    for side in (1, -1):
        fit = at(boat(), metal(), y=side * 300, bottom=20)
        # about (0, 0): z' = z cos 30° + |y| sin 30°, so the water cuts the blade at z = -|y| tan 30°
        assert value(fit, "immersion.weather") == pytest.approx((800 - 300 * TAN30) / 800, abs=1e-4)
        deep = at(boat(), metal(), y=side * 300, bottom=-50)
        assert value(deep, "root_depth.rest") == pytest.approx(70)
        assert value(deep, "root_depth.leeward") == pytest.approx(150 + 70 * math.cos(math.radians(30)), abs=1e-3)
        assert margin(deep, "root_depth.leeward") == pytest.approx(250 - 210.622, abs=1e-3)
    centre = at(boat(), metal(), bottom=20)
    assert value(centre, "immersion.weather") == pytest.approx(1)


def test_displacement() -> None:
    assert margin(at(boat(), metal()), "displacement") == pytest.approx(3000)
    heavy = at(boat(boat={"displacement_kg": 9500}), metal())
    assert margin(heavy, "displacement") == pytest.approx(-1500)


def test_every_check_explains_itself() -> None:
    fit = at(boat(), metal("stiff", "riser"))
    for check in fit.checks:
        assert check.value is not None
        assert check.limit is not None
        assert check.margin == pytest.approx(
            abs(check.value - check.limit) * (1 if check.status == "pass" else -1), abs=1e-3
        )
        assert check.why
        assert check.source
        assert check.scale
    assert fit.check("lower.reach").source == "catalogue bench-1: stiff, reach_mm"
    assert fit.check("spacing").source == "rule bracket_spacing_min: bench"


def test_a_stricter_rule_takes_just_its_difference() -> None:
    loose, strict = at(boat(), metal()), at(boat(), metal(), catalogue=ruled(bench(), overhang_max=900))
    assert margin(loose, "overhang") - margin(strict, "overhang") == pytest.approx(50)


def test_parts_go_with_what_was_chosen() -> None:
    one = {p.code: p.quantity for p in at(boat(), metal("hinge", "riser")).parts}
    two = {p.code: p.quantity for p in at(boat(), metal("hinge", "hinge")).parts}
    assert (one["hinge-pin"], two["hinge-pin"]) == (2, 4)
    assert one["blade-bag"] == two["blade-bag"] == 1
    assert list(one)[:4] == ["gear", "shaft-1300", "hinge", "riser"]


def test_under_way_the_stern_wave_stands_over_the_blade() -> None:
    """100 mm of squat and stern wave: common practice, no source (50 to 150 mm)."""
    pair = Configuration(gear="gear-720", lower="hinge-150-290", upper="hinge-150-290", shaft="shaft-1350")
    plain = fit_configuration(ready(boat(), demo()), pair)
    depth, deeper = plain.check("root_depth.rest"), plain.check("root_depth.under_way")
    assert depth.value is not None
    assert deeper.value == pytest.approx(depth.value + 100.0, abs=0.01)
    assert not deeper.binds
    assert "stern_wave" in deeper.source
