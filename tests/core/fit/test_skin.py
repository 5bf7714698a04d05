"""The skin x = X(y, z) as FIT says it, by hand arithmetic. All boats invented."""

from __future__ import annotations

import math
from typing import Any

import pytest

from service.core.boat import BoatForm
from service.core.fit.site import half_breadth, skin
from tests.support.boats import boat, ready


def at(form: BoatForm, y: float, z: float) -> tuple[float, float, float]:
    """Return x, local rake and plan angle in degrees."""
    x, rake, plan = skin(ready(form).nominal, 0, float(y), float(z))  # ints would be compiled for anew
    return x, math.degrees(math.atan(rake)), math.degrees(math.atan(plan))


@pytest.mark.parametrize(
    ("rake", "x_at_water"),
    [(0.0, 0.0), (20.0, -363.970234), (-20.0, 363.970234)],  # 1000 tan 20° = 363.970234
)
def test_one_rake(rake: float, x_at_water: float) -> None:
    form = boat(transom={"rake_deg": rake})
    assert at(form, 0, 1000)[0] == pytest.approx(0)
    assert at(form, 0, 0)[:2] == pytest.approx((x_at_water, rake), abs=1e-5)
    assert at(form, 700, 0)[0] == pytest.approx(x_at_water, abs=1e-5)  # no camber: as far aft at the sides


def test_camber_draws_the_sides_forward() -> None:
    form = boat(transom={"camber_mm": 80, "rake_deg": 10})
    # c (2y/W)² = 80 · (1000/2000)² = 20 at y = 500; slope -8 c y / W² = -8 · 80 · 500 / 4e6 = -0.08
    x, rake, plan = at(form, 500, 1000)
    assert x == pytest.approx(-20)
    assert rake == pytest.approx(10)
    assert plan == pytest.approx(math.degrees(math.atan(-0.08)))
    assert at(form, -500, 1000)[2] == pytest.approx(-plan)


def test_under_the_bottom_the_hull_reaches_as_far_aft() -> None:
    form = boat(transom={"rake_deg": -45, "bottom_height_mm": 200})
    assert at(form, 0, 200)[0] == pytest.approx(800)
    assert at(form, 0, -900)[0] == pytest.approx(800)
    assert at(form, 0, 5000)[0] == pytest.approx(0)  # nor does it go on above its top


PROFILE: dict[str, Any] = {
    "rake_deg": 30,
    "profile": [{"below_top_mm": b, "aft_mm": a} for b, a in ((0, 0), (400, 40), (700, 30), (1000, -60))],
}


def test_a_profile_outranks_the_rake_and_is_met_at_its_points() -> None:
    form = boat(transom=PROFILE)
    for below, aft in ((0, 0), (400, 40), (700, 30), (1000, -60)):
        assert at(form, 0, 1000 - below)[0] == pytest.approx(aft)
    assert at(form, 0, 600)[1] == pytest.approx(0)  # a turning point stays one: nothing overshoots 40
    assert max(at(form, 0, z)[0] for z in range(0, 1001, 5)) == pytest.approx(40)


def test_a_profile_that_starts_lower_is_joined_to_the_top_edge() -> None:
    form = boat(transom={"profile": [{"height_mm": 600, "aft_mm": -80}, {"height_mm": 0, "aft_mm": -200}]})
    assert at(form, 0, 1000)[0] == pytest.approx(0)
    assert at(form, 0, 600)[0] == pytest.approx(-80)


def test_sections_outrank_a_profile() -> None:
    cut = [{"half_breadth_mm": 0, "aft_mm": 0}, {"half_breadth_mm": 1000, "aft_mm": -500}]
    low = [{"half_breadth_mm": 0, "aft_mm": -100}, {"half_breadth_mm": 1000, "aft_mm": -600}]
    form = boat(
        transom={**PROFILE, "sections": [{"below_top_mm": 0, "points": cut}, {"below_top_mm": 1000, "points": low}]}
    )
    x, rake, plan = at(form, 400, 500)  # two straight lines: 200 forward of the middle, and halfway from 0 to -100
    assert x == pytest.approx(-250)
    assert rake == pytest.approx(math.degrees(math.atan(0.1)))
    assert plan == pytest.approx(math.degrees(math.atan(-0.5)))
    assert at(form, -400, 500) == pytest.approx((x, rake, -plan))


def test_a_scoop_steps_aft() -> None:
    step = {"step_height_mm": 300, "step_depth_mm": 500, "step_width_mm": 1200, "lower_rake_deg": 45}
    form = boat(boat={"stern": "scoop"}, transom={"rake_deg": 0, **step})
    assert at(form, 0, 301)[0] == pytest.approx(0)
    assert at(form, 0, 299)[0] == pytest.approx(500 - 1)  # the step's edge is 500 aft; 45°: 1 forward a mm down
    assert at(form, 0, 100)[:2] == pytest.approx((300, 45))
    assert at(boat(transom={"rake_deg": 0, **step}), 0, 100)[0] == pytest.approx(0)  # of no meaning on a plain stern


def test_half_breadth_runs_straight_from_waterline_to_top() -> None:
    site = ready(boat()).nominal
    for z, half in ((1000, 1000), (500, 900), (0, 800), (-500, 700)):
        assert half_breadth(site, 0, float(z)) == pytest.approx(half)


def test_of_a_double_ender_without_level_cuts_the_post_is_the_only_seat() -> None:
    form = boat(boat={"stern": "double_ended"}, transom={"post_width_mm": 90})
    assert half_breadth(ready(form).nominal, 0, 400.0) == pytest.approx(45)
