"""A configuration where somebody put it: against the placement that was sought, and against trigonometry."""

from __future__ import annotations

import math

import pytest

from service.core.answer.placed import placed
from service.core.fit.engine import fit_configuration
from service.core.fit.shapes import Fit
from tests.support.boats import bench, boat, margin, metal, ready, value

CHECKED = 0.02
"""A placement is published to a hundredth of a mm."""


@pytest.fixture(scope="module")
def sought() -> Fit:
    return fit_configuration(ready(boat(), draws=50), metal())


def test_at_the_place_that_was_sought_every_check_comes_out_as_it_did(sought: Fit) -> None:
    assert sought.placement is not None
    got = placed(ready(boat()), metal(), sought.placement)
    assert [check.id for check in got.checks] == [check.id for check in sought.checks]
    for check in sought.checks:
        assert got.check(check.id).margin == pytest.approx(check.margin, abs=CHECKED, rel=1e-3), check.id
    assert got.verdict == "fits"
    assert got.probability is None
    assert got.placement == sought.placement


@pytest.mark.parametrize("offset", [-300.0, 40.0, 250.0])
def test_a_shaft_further_out_goes_deeper_to_leeward_by_the_sine_of_the_heel(sought: Fit, offset: float) -> None:
    """Elementary trigonometry: a point y off the centreline goes down by |y| sin(heel) when she heels over it."""
    assert sought.placement is not None
    here = placed(ready(boat()), metal(), sought.placement.model_copy(update={"offset_mm": 0.0}))
    out = placed(ready(boat()), metal(), sought.placement.model_copy(update={"offset_mm": offset}))
    heel = math.radians(bench().rules["heel_angle"])
    deeper = value(out, "root_depth.leeward") - value(here, "root_depth.leeward")
    assert deeper == pytest.approx(abs(offset) * math.sin(heel), abs=CHECKED)
    assert value(out, "root_depth.rest") == pytest.approx(value(here, "root_depth.rest"), abs=CHECKED)


def test_raised_as_a_whole_it_loses_as_much_depth_and_nothing_between_its_brackets(sought: Fit) -> None:
    at = sought.placement
    assert at is not None
    up = {name: getattr(at, name) + 60.0 for name in ("lower_height_mm", "upper_height_mm", "shaft_bottom_mm")}
    got = placed(ready(boat()), metal(), at.model_copy(update=up))
    assert margin(got, "spacing") == pytest.approx(margin(sought, "spacing"), abs=CHECKED)
    assert value(got, "root_depth.rest") == pytest.approx(value(sought, "root_depth.rest") - 60.0, abs=CHECKED)
    assert got.placement is not None
    assert got.placement.shaft_top_mm == pytest.approx(at.shaft_top_mm + 60.0, abs=CHECKED)


def test_beside_the_boat_it_does_not_fit(sought: Fit) -> None:
    assert sought.placement is not None
    got = placed(ready(boat()), metal(), sought.placement.model_copy(update={"offset_mm": 5_000.0}))
    assert got.verdict == "does_not_fit"
    assert margin(got, "lower.seat") < 0
