from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from service.core.loads import assess
from service.core.loads.mount import CHEEK_AXES, STEP_AXES, plain_axes
from service.core.loads.shapes import Hull, Inputs, Mount, StrutSet
from service.core.loads.standard import Numbers

Place = Callable[..., Inputs]
Make = Callable[..., Mount]
ALWAYS = {
    "load.shaft_stress", "load.shaft_deflection", "load.shaft_frequency", "load.shaft_frequency_along", "load.shaft_shaking",
    *(f"load.{role}.{what}" for role in ("lower", "upper") for what in ("along", "side", "moment", "bolts")),
}  # fmt: skip
SKIN = {
    f"load.{role}.{what}" for role in ("lower", "upper") for what in ("skin_bearing", "skin_punching", "skin_bending")
}


def draws(place: Place, strut_bracket: Make, count: int = 40) -> Inputs:
    rng = np.random.default_rng(3)
    lower = rng.normal(300, 20, count)
    reach = rng.normal(200, 10, count)
    flat = np.zeros(count)
    feet = np.stack([
        np.stack([-reach - 10, -300 + rng.normal(0, 9, count), flat + 40], -1),
        np.stack([-reach + 6, 300 + rng.normal(0, 9, count), flat + 40], -1),
    ], -2)  # fmt: skip
    one = place()
    return replace(
        one,
        spot=replace(one.spot, lower_mm=lower, upper_mm=lower + rng.normal(420, 20, count), shaft_bottom_mm=rng.normal(-60, 20, count),
                     blade_top_mm=rng.normal(-80, 60, count)),
        lower=strut_bracket(feet, arm_mm=np.stack([reach, flat, flat - 20], -1), axes=plain_axes(rng.normal(0.1, 0.03, count), 0.02),
                            pad_mm=rng.uniform(0, 30, count)),
        hull=Hull(rng.normal(9350, 90, count), "frp_cored", rng.normal(24, 1, count), 15.0),
    )  # fmt: skip


def single(inputs: Inputs, k: int) -> Inputs:
    """Return one draw of a batch."""

    def pick(value: Any, rank: int = 0) -> Any:  # noqa: ANN401 - whatever a field holds
        return value[k] if isinstance(value, np.ndarray) and value.ndim > rank else value

    spot = replace(inputs.spot, **{name: pick(value) for name, value in vars(inputs.spot).items()})
    hull = replace(inputs.hull, **{name: pick(value) for name, value in vars(inputs.hull).items()})
    mounts: dict[str, Any] = {}
    for role, mount in inputs.mounts():
        group = mount.struts
        struts = StrutSet(pick(group.feet_mm, 2), group.tube, group.bolt, group.bolts) if group else None
        mounts[role] = replace(
            mount, arm_mm=pick(mount.arm_mm, 1), axes=pick(mount.axes, 2), pad_mm=pick(mount.pad_mm), struts=struts
        )
    return replace(inputs, spot=spot, hull=hull, **mounts)


def test_many_draws_at_once_are_each_alone(place: Place, strut_bracket: Make, numbers: Numbers) -> None:
    batch = draws(place, strut_bracket)
    many = assess(batch, numbers)
    for k in (0, 17, 39):
        one = assess(single(batch, k), numbers)
        assert [r.id for r in one.results] == [r.id for r in many.results]
        for alone, among in zip(one.results, many.results, strict=True):
            assert float(alone.value) == pytest.approx(float(among.value[k]), rel=1e-9), alone.id
            assert float(alone.margin) == pytest.approx(float(among.margin[k]), rel=1e-9, abs=1e-9), alone.id
            assert alone.case_name() == among.case_name((k,))
        for role, overlap in one.backing_overlap_mm.items():
            assert float(overlap) == pytest.approx(float(many.backing_overlap_mm[role][k]))


def test_every_check_says_all_it_saw(place: Place, numbers: Numbers) -> None:
    got = assess(place(), numbers)
    assert {r.id for r in got.results} == ALWAYS | SKIN
    for r in got.results:
        above = "frequency" in r.id
        assert float(r.margin) == pytest.approx(float(r.value - r.limit) if above else float(r.limit - r.value)), r.id
        assert float(r.scale) == pytest.approx(max(0.25 * float(r.limit), 1e-9))
        assert float(r.scaled) == pytest.approx(float(r.margin / r.scale))
        assert r.title
        assert r.formula
        assert r.source
        assert r.case_name() in r.cases
    assert not {r.id for r in got.results if not r.binds} - {"load.shaft_frequency", "load.shaft_frequency_along"}


def test_the_worst_case_governs(place: Place, numbers: Numbers) -> None:
    got = assess(place(), numbers)
    force = np.hypot(got.cases.along_n, got.cases.side_n)
    assert got.result("load.shaft_deflection").case_name() == got.cases.names[int(force.argmax())]


def test_shaft_stress_by_hand(place: Place, numbers: Numbers) -> None:
    """Worst case's bending at the lower collar, torsion and the weight, with the sections of the tube written out."""
    got = assess(place(), numbers)
    k = int(got.result("load.shaft_stress").case)
    moment = float(np.hypot(got.cases.along_n[k], got.cases.side_n[k])) * (300.0 + 440.0)
    bend = moment / 5359.88 + 29.0 * 9.80665 / 478.53
    twist = abs(float(got.cases.torque_nm[k])) * 1000 / (2 * 5359.88)
    assert float(got.result("load.shaft_stress").value) == pytest.approx((bend**2 + 3 * twist**2) ** 0.5, rel=1e-5)
    assert float(got.result("load.shaft_stress").limit) == pytest.approx(450 / 1.5)


def test_moment_on_the_flange_by_hand(place: Place, bracket: Make, numbers: Numbers) -> None:
    """A flange square to the boat, collar straight aft: side force and weight on the reach, and half the arm's own."""
    one = place(lower=bracket(200.0, axes=plain_axes(0.0, 0.0)))
    got = assess(one, numbers)
    k = int(got.result("load.lower.side").case)
    side = float(got.cases.side_n[k]) * (420.0 + 740.0) / 420.0
    down = 29.0 * 9.80665 * 0.2 + 5.0 * 9.80665 * 0.1
    assert float(got.result("load.lower.side").value) == pytest.approx(abs(side))
    assert float(got.result("load.lower.moment").value) == pytest.approx(np.hypot(side * 0.2, down))


def mirrored(inputs: Inputs) -> Inputs:
    flip = np.array([1.0, -1.0, 1.0])

    def turn(mount: Mount) -> Mount:
        axes = mount.axes * flip
        axes = axes * np.array([[1.0], [-1.0], [1.0]])
        struts = mount.struts
        if struts:
            struts = replace(struts, feet_mm=(struts.feet_mm * flip)[..., ::-1, :])
        return replace(
            mount, arm_mm=mount.arm_mm * flip, axes=axes, pattern_mm=mount.pattern_mm * [-1, 1], struts=struts
        )

    return replace(inputs, lower=turn(inputs.lower), upper=turn(inputs.upper))


def test_a_mirrored_boat_has_mirrored_loads(place: Place, bracket: Make, strut_bracket: Make, numbers: Numbers) -> None:
    lopsided = np.array([[-55, -40], [60, -35], [-50, 40], [55, 45]], dtype=float)
    feet = np.array([[-230.0, -280.0, 40.0], [-190.0, 330.0, 40.0]])
    one = place(
        lower=strut_bracket(feet, axes=plain_axes(0.1, 0.3)),
        upper=bracket(pattern_mm=lopsided, axes=plain_axes(0.2, -0.4)),
    )
    here, there = assess(one, numbers), assess(mirrored(one), numbers)
    for a, b in zip(here.results, there.results, strict=True):
        assert float(a.value) == pytest.approx(float(b.value), rel=1e-9), a.id


@pytest.mark.parametrize(("field", "factor"), [("along_n", "along"), ("side_n", "side"), ("moment_nm", "moment")])
def test_one_percent_of_an_allowable(field: str, factor: str, place: Place, bracket: Make, numbers: Numbers) -> None:
    weak = bracket()
    strong = replace(weak, **{field: 1.01 * getattr(weak, field)})
    before, after = (assess(place(lower=m), numbers).result(f"load.lower.{factor}") for m in (weak, strong))
    assert float(after.margin - before.margin) == pytest.approx(0.01 * getattr(weak, field))


def test_one_percent_of_the_reach(place: Place, bracket: Make, numbers: Numbers) -> None:
    """On a square flange the whole moment goes with the reach, and so do the bolts' pulls, not their shears."""
    square = plain_axes(0.0, 0.0)
    before, after = (
        assess(place(lower=bracket(reach, axes=square)), numbers).result("load.lower.moment")
        for reach in (200.0, 202.0)
    )
    assert float(after.value / before.value) == pytest.approx(1.01, rel=1e-9)


def test_struts_take_the_side_off_the_flange(
    place: Place, bracket: Make, strut_bracket: Make, numbers: Numbers
) -> None:
    plain, held = (assess(place(lower=m), numbers) for m in (bracket(), strut_bracket()))
    assert held.result("load.lower.moment").value < 0.2 * plain.result("load.lower.moment").value
    assert held.result("load.lower.bolts").value < plain.result("load.lower.bolts").value
    assert float(held.result("load.lower.side").value) == pytest.approx(float(plain.result("load.lower.side").value))
    assert {"load.lower.struts", "load.lower.feet"} <= {r.id for r in held.results}


def test_a_strut_governed_by_hand(place: Place, strut_bracket: Make, numbers: Numbers) -> None:
    """Side load alone pushes one strut and pulls the other: S = F / 2 sin; with all of the drag on the struts besides."""
    got = assess(place(lower=strut_bracket()), numbers)
    row = got.result("load.lower.struts")
    k = int(row.case)
    length = (210.0**2 + 300.0**2 + 40.0**2) ** 0.5
    leverage = (420.0 + 740.0) / 420.0
    across, along = abs(float(got.cases.side_n[k])) * leverage, abs(float(got.cases.along_n[k])) * leverage
    by_side, by_drag = across * length / 600.0, along * length / 420.0
    squash, euler = 147.03 * 220, np.pi**2 * 193000 * 10136.7 / length**2
    lam = (squash / euler) ** 0.5
    phi = (1 + 0.49 * (lam - 0.4) + lam**2) / 2
    capacity = squash / (phi + (phi**2 - lam**2) ** 0.5)
    pressed = [by_side * 2.5 / capacity, (by_side - by_drag) * 2.5 / capacity]
    pulled = [by_side * 1.5 / squash, (by_side + by_drag) * 1.5 / squash]
    assert float(row.value) == pytest.approx(max(pressed + pulled), rel=1e-4)


@pytest.mark.parametrize(
    ("material", "said"), [("aluminium", True), ("steel", True), ("wood", False), ("frp_solid", False)]
)
def test_stainless_on_metal_is_noted(material: str, said: bool, place: Place, numbers: Numbers) -> None:  # noqa: FBT001 - a table's column
    got = assess(place(hull=Hull(9350.0, material, 12.0)), numbers)
    assert ("load.galvanic" in {r.id for r in got.results}) is said
    assert any("corrodes" in f.text for f in got.findings) is said


def test_a_metal_nobody_knows_is_taken_as_the_weakest(place: Place, numbers: Numbers) -> None:
    one = place()
    odd = replace(one, gear=replace(one.gear, tube=replace(one.gear.tube, material="unobtainium")))
    got = assess(odd, numbers)
    assert any("unobtainium" in f.text for f in got.findings)
    assert float(got.result("load.shaft_stress").limit) == pytest.approx(220 / 1.5)


def test_out_of_range_is_found_not_hidden(place: Place, numbers: Numbers) -> None:
    one = place()
    got = assess(replace(one, hull=replace(one.hull, lwl_mm=40_000.0), spot=replace(one.spot, upper_mm=320.0)), numbers)
    assert {"lwl_mm", "spacing_mm"} <= {f.input for f in got.findings}


def test_struts_in_a_line_and_plates_wider_than_the_panel_are_found(
    place: Place, strut_bracket: Make, numbers: Numbers
) -> None:
    together = np.array([[-210.0, 0.0, 40.0], [-210.0, 0.1, 40.0]])
    one = place(lower=strut_bracket(together), hull=Hull(9350.0, "frp_solid", 12.0, panel_mm=150.0))
    assert {"volume", "share"} <= {f.input for f in assess(one, numbers).findings}
    assert not {"volume", "share"} & {f.input for f in assess(place(lower=strut_bracket()), numbers).findings}


def test_axes_of_every_flange_are_square_and_right_handed() -> None:
    rng = np.random.default_rng(1)
    plain = plain_axes(rng.uniform(-0.7, 0.7, 20), rng.uniform(-0.8, 0.8, 20))
    for axes in (*plain, STEP_AXES, CHEEK_AXES):
        assert axes @ axes.T == pytest.approx(np.eye(3), abs=1e-12)
        assert np.cross(axes[1], axes[2]) == pytest.approx(axes[0])
