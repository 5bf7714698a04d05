"""The outline of a stern from aft, without any gear."""

from __future__ import annotations

import pytest

from service.core.drawing.outline import SHAPING, stern_outline, typical
from service.core.form import with_values
from tests.support.boats import demo

SAID = {
    "transom.top_height_mm": 900.0, "transom.bottom_height_mm": -100.0, "transom.width_top_mm": 1800.0,
    "transom.width_waterline_mm": 1200.0,
}  # fmt: skip


def test_an_outline_reaches_as_far_as_was_measured() -> None:
    found = stern_outline(typical("plumb", SAID), demo())
    left, right, low, high = found.box
    assert (left, right) == pytest.approx((-900, 900))
    assert (low, high) == pytest.approx((-100, 900))
    assert found.filled == ()
    assert found.step is None
    assert {(-y, z) for y, z in found.points} == set(found.points)  # both sides are alike


def test_a_step_stands_where_it_was_measured_and_gaps_are_named() -> None:
    said = {name: value for name, value in SAID.items() if name != "transom.width_top_mm"}
    found = stern_outline(typical("scoop", {**said, "transom.step_height_mm": 300.0}), demo())
    assert found.step == pytest.approx(300)
    assert found.filled == ("transom.width_top_mm",)


def test_medians_that_contradict_each_other_make_a_boat_all_the_same() -> None:
    form = typical("raked", {**SAID, "transom.bottom_height_mm": 950.0})
    assert form == with_values(form, {"boat.stern": "raked"})
    assert form.transom.bottom_height_mm is None
    assert set(SAID) <= set(SHAPING)
