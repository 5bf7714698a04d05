"""The demo maker's catalogue parses, says what the trade says, and leaves no kind of stern without metal."""

from __future__ import annotations

from dataclasses import replace
from math import isclose

import numpy as np
import pytest

from seed_fixtures.boats import Boat, Rudder, Stern, Thing
from seed_fixtures.generate import kit
from seed_fixtures.ways import gear_for, ways
from service.core.boat import METHODS, OBSTACLE_KINDS
from service.core.catalogue import Catalogue
from service.core.catalogue_check import parse_catalogue

INBOARD = Rudder("inboard", -800, -900, -320, -190, -1450, 35)


@pytest.fixture(scope="module")
def catalogue() -> Catalogue:
    return parse_catalogue(kit())


def test_it_offers_two_gears_eight_shafts_twelve_brackets_of_every_kind(catalogue: Catalogue) -> None:
    assert len(catalogue.gears) == 2
    assert len(catalogue.shafts) >= 8
    assert len(catalogue.brackets) >= 12
    assert {bracket.kind for bracket in catalogue.brackets} == {"hinged", "outrigger", "strutted", "cheek", "step"}


def test_numbers_of_the_trade(catalogue: Catalogue) -> None:
    """Common practice, no source: 50.8 mm tube, 12.7 mm flange, four or six bolts, 25 t, a shaft of about 1473 mm."""
    assert any(gear.tube.outside_mm == 50.8 for gear in catalogue.gears)
    assert max(gear.max_displacement_kg for gear in catalogue.gears) == 25_000
    assert any(isclose(shaft.length_mm, 1473, abs_tol=25) for shaft in catalogue.shafts)
    flat = [bracket for bracket in catalogue.brackets if bracket.kind in ("hinged", "outrigger")]
    assert {bracket.flange.thickness_mm for bracket in flat} == {12.7}
    assert {len(bracket.bolts.pattern_mm) for bracket in catalogue.brackets} == {4, 6}


def test_bolts_lie_inside_their_flange(catalogue: Catalogue) -> None:
    outside = [
        bracket.code
        for bracket in catalogue.brackets
        for y, z in bracket.bolts.pattern_mm
        if abs(y) > bracket.flange.width_mm / 2 - 10 or abs(z) > bracket.flange.height_mm / 2 - 10
    ]
    assert outside == []


def test_every_method_and_every_kind_of_obstacle_is_known(catalogue: Catalogue) -> None:
    assert {method.code for method in catalogue.methods} == {*METHODS, "unsaid"}
    assert set(catalogue.rules.obstacle) == set(OBSTACLE_KINDS)


def test_priors_know_how_the_main_rudder_is_hung(catalogue: Catalogue) -> None:
    path = "main_rudder.trailing_edge_aft_mm"
    inside = catalogue.rules.prior_of(path, "plumb", "inboard")
    outside = catalogue.rules.prior_of(path, "plumb", "transom")
    assert inside is not None
    assert outside is not None
    assert inside == catalogue.rules.prior_of(path, "plumb")
    assert inside.mean < 0 < outside.mean


def _boat(kind: str, top: float, bottom: float, rake: float, **more: float) -> Boat:
    wide = {"open": 2900.0, "double_ended": 1450.0}.get(kind, 1850.0)
    stern = Stern(kind, top, bottom, rake, wide, wide * 0.65, 600 if kind == "double_ended" else 40, 12, **more)
    return Boat("x", "x", "x", 1990, 10_500, 8800, 3300, 1800, 6500, "frp_solid", stern, INBOARD)


def _hung_outside(boat: Boat, trailing: float, top: float) -> Boat:
    stock = trailing - 450
    return replace(boat, rudder=Rudder("transom", stock, stock - 30, trailing, top, -1050, 36))


STEP = {"step_depth": 520.0, "step_width": 1200.0, "lower_rake": -10.0}
BOATS = {
    "plumb": _boat("plumb", 950, -30, 1),
    "plumb, rudder outside and low": _hung_outside(_boat("plumb", 950, -30, 1), 500, 300),
    "plumb, rudder outside and high": _hung_outside(_boat("plumb", 950, -30, 1), 480, 850),
    "counter 15": _boat("raked", 950, 120, 15),
    "counter 30": _boat("raked", 950, 120, 30),
    "counter 38": _boat("raked", 950, 120, 38),
    "reverse 15": _boat("reverse", 990, 0, -15),
    "reverse 30": _boat("reverse", 990, 0, -30),
    "scoop, step 250": _boat("scoop", 1060, -20, -14, step_height=250, **STEP),
    "scoop, step 350": _boat("scoop", 1060, -20, -14, step_height=350, **STEP),
    "open 450": _boat("open", 450, -20, -5),
    "open 500": _boat("open", 500, -20, -15),
    "double-ended, rudder inside": _boat("double_ended", 1050, -260, 20, post_width=90),
    "double-ended, rudder on the post": _hung_outside(
        _boat("double_ended", 1050, -260, 20, post_width=90), 170, 290
    ),
}  # fmt: skip


@pytest.mark.parametrize("weight", [6500, 12_000])
@pytest.mark.parametrize("name", BOATS)
def test_some_pair_of_brackets_reaches_on_every_kind_of_stern(name: str, weight: float) -> None:
    parts = kit()
    boat = replace(BOATS[name], displacement=weight)
    gear = gear_for(boat, parts)
    assert gear is not None
    assert [way for y in (0.0, 400.0, 600.0) for way in ways(boat, gear, y, parts)]


def test_a_fixed_ladder_in_the_middle_leaves_only_the_sides() -> None:
    parts = kit()
    ladder = Thing("ladder", "centre", (0, 90), (-170, 170), (-300, 950), keep=True)
    boat = replace(BOATS["plumb"], things=(ladder,))
    gear = gear_for(boat, parts)
    assert gear is not None
    assert ways(boat, gear, 0.0, parts) == []
    assert ways(boat, gear, 400.0, parts) != []


def test_a_boat_beyond_the_largest_gear_gets_none() -> None:
    assert gear_for(replace(BOATS["plumb"], displacement=31_000), kit()) is None


def test_stand_off_on_a_raked_transom() -> None:
    """600 mm at 20 degrees makes 218.382 mm: closed form, tan 20 x 600."""
    stern = _boat("raked", 1000, 100, 20).stern
    x = stern.skin(0.0, np.array([300.0, 900.0]))
    assert float(x[1] - x[0]) == pytest.approx(218.382, abs=0.001)
