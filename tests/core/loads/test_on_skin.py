from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from service.core.catalogue import Rules
from service.core.loads import assess
from service.core.loads.shapes import Hull, Inputs, Mount
from service.core.loads.standard import STANDARD, Numbers

Place = Callable[..., Inputs]
Make = Callable[..., Mount]


@pytest.mark.parametrize(
    ("change", "better"),
    [
        ({"thickness_mm": 14.0}, ["skin_bending", "skin_bearing", "skin_punching"]),
        ({"panel_mm": 250.0}, ["skin_bending"]),
    ],
)
def test_more_skin_is_never_worse(change: dict[str, float], better: list[str], place: Place, numbers: Numbers) -> None:
    one = place()
    before, after = assess(one, numbers), assess(replace(one, hull=replace(one.hull, **change)), numbers)  # type: ignore[arg-type] # a hull's own fields
    for role in ("lower", "upper"):
        for name in better:
            assert after.result(f"load.{role}.{name}").margin > before.result(f"load.{role}.{name}").margin


def test_one_percent_of_a_skin(place: Place, numbers: Numbers) -> None:
    one = place()
    thick = assess(replace(one, hull=replace(one.hull, thickness_mm=12.12)), numbers)
    for name, power in (("skin_bending", -2), ("skin_bearing", -1), ("skin_punching", -1)):
        ratio = thick.result(f"load.lower.{name}").value / assess(one, numbers).result(f"load.lower.{name}").value
        assert float(ratio) == pytest.approx(1.01**power, rel=1e-9)


def test_a_cored_skin_is_checked_for_its_core(place: Place, numbers: Numbers) -> None:
    filled = place(hull=Hull(9350.0, "frp_cored", 24.0, 15.0))
    bare = place(hull=Hull(9350.0, "frp_cored", 24.0, 15.0, filled=False))
    plugged, crushed = (assess(one, numbers) for one in (filled, bare))
    assert plugged.result("load.lower.core").margin > 0 > crushed.result("load.lower.core").margin
    assert crushed.result("load.lower.skin_bearing").value > plugged.result("load.lower.skin_bearing").value


@pytest.mark.parametrize(
    ("hull", "field"),
    [(Hull(9350.0, "frp_solid"), "transom.thickness_mm"), (Hull(9350.0, "frp_cored", 24.0), "transom.core_mm")],
)
def test_what_is_not_known_leaves_its_checks_out_and_says_so(
    hull: Hull, field: str, place: Place, numbers: Numbers
) -> None:
    got = assess(place(hull=hull), numbers)
    assert not [r.id for r in got.results if "skin" in r.id or "core" in r.id]
    assert got.result("load.lower.bolts").value > 0
    assert [f.input for f in got.findings if "not checked" in f.text] == [field, field]
    assert got.backing_overlap_mm == {}


def test_an_unknown_hull_is_taken_as_laminate_with_a_finding(place: Place, numbers: Numbers) -> None:
    got = assess(place(hull=Hull(9350.0, None, 12.0)), numbers)
    assert any(f.input == "boat.hull_material" for f in got.findings)
    known = assess(place(), numbers)
    assert float(got.result("load.lower.skin_bending").value) == float(known.result("load.lower.skin_bending").value)


def test_a_core_that_is_hardly_there_is_found(place: Place, numbers: Numbers) -> None:
    got = assess(place(hull=Hull(9350.0, "frp_cored", 24.0, 4.0)), numbers)
    assert "core_share" in {f.input for f in got.findings}


def test_the_backing_plate_that_would_do_is_enough_and_no_larger(place: Place, numbers: Numbers) -> None:
    overlap = float(assess(place(), numbers).backing_overlap_mm["lower"])
    assert numbers["backing_overlap"] < overlap < numbers["backing_overlap_most"]
    for step, passes in ((0.5, True), (-0.5, False)):
        rule = STANDARD["backing_overlap_most"].model_copy(update={"value": overlap + step})
        row = assess(place(), Numbers(Rules(rule={"backing_overlap_most": rule}, scale={}))).result(
            "load.lower.skin_bending"
        )
        assert (float(row.margin) >= 0) is passes


def test_no_backing_plate_is_enough_on_a_thin_skin(place: Place, numbers: Numbers) -> None:
    got = assess(place(hull=Hull(9350.0, "frp_solid", 4.0)), numbers)
    assert np.isinf(got.backing_overlap_mm["lower"])
    assert got.result("load.lower.skin_bending").margin < 0


def test_thick_pads_leave_a_finding(place: Place, bracket: Make, numbers: Numbers) -> None:
    thick = assess(place(lower=bracket(pad_mm=60.0)), numbers)
    assert [f.input for f in thick.findings if "pad" in f.input] == ["lower.pad_mm"]
    assert (
        thick.result("load.lower.skin_bending").value
        >= assess(place(), numbers).result("load.lower.skin_bending").value
    )
