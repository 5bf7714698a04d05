"""Every kind of bracket on its skin, by hand arithmetic. All boats and brackets invented."""

from __future__ import annotations

import math
from typing import Any

import pytest

from service.core.fit import Fit
from tests.support.boats import at, bench, boat, ids, margin, metal, ruled, value

TAN20 = 0.36397023  # of 20°
SCOOP: dict[str, Any] = {
    "step_height_mm": 300, "step_depth_mm": 600, "step_width_mm": 1200, "lower_rake_deg": 0,
}  # fmt: skip


# --- reach and pad ----------------------------------------------------------------------------------------


def test_reach_counts_from_the_skin_at_the_flange() -> None:
    fit = at(boat(), metal(), x=130)
    assert value(fit, "lower.reach") == pytest.approx(130)
    assert margin(fit, "lower.reach") == pytest.approx(30)  # over the least, 100
    assert fit.check("lower.reach").limit == 100
    assert margin(at(boat(), metal(), x=90), "lower.reach") == pytest.approx(-10)
    assert at(boat(), metal(), x=90).check("lower.reach").status == "fail"


def test_on_a_rake_both_reaches_differ_by_the_standoff() -> None:
    fit = at(boat(transom={"rake_deg": 20}), metal("long", "hinge"), x=100, lower=300, upper=800)
    # the skin stands (300 - 1000) tan 20° = -254.779 at the lower flange, -72.794 at the upper
    assert standoff(fit, "lower") == pytest.approx(100 + 254.779, abs=0.01)
    assert standoff(fit, "upper") == pytest.approx(100 + 72.794, abs=0.01)


def standoff(fit: Fit, role: str) -> float:
    """Return what lies between skin and axis: reach and pad."""
    return value(fit, f"{role}.reach") + sum(p.centre_mm for p in fit.pads if p.role == role)


def test_a_reverse_transom_takes_reach_away_below() -> None:
    fit = at(boat(transom={"rake_deg": -20}), metal("hinge", "long"), x=400, lower=300, upper=800)
    assert standoff(fit, "lower") == pytest.approx(400 - 700 * TAN20, abs=0.01)
    assert standoff(fit, "upper") == pytest.approx(400 - 200 * TAN20, abs=0.01)
    assert margin(fit, "upper.reach") == pytest.approx(400 - 200 * TAN20 - 400, abs=0.01)  # no pad lengthens an arm


def test_a_pad_cures_what_the_flange_does_not_take() -> None:
    form = boat(transom={"rake_deg": 15})
    fit = at(form, metal("stiff", "stiff"), x=300, lower=300, upper=700)
    half = 75 * math.tan(math.radians(15))  # flange 150 high: its edges stand 20.096 off
    assert value(fit, "lower.pad") >= 2 * half - 1e-3
    pad = next(p for p in fit.pads if p.role == "lower")
    assert pad.corners_mm["top port"] == pytest.approx(pad.centre_mm - half)
    assert pad.corners_mm["bottom starboard"] == pytest.approx(pad.centre_mm + half)
    assert min(pad.corners_mm.values()) >= -1e-9
    assert max(pad.corners_mm.values()) == pytest.approx(80 - margin(fit, "lower.pad"), abs=1e-3)
    assert (pad.rake_bevel_deg, pad.plan_bevel_deg) == pytest.approx((15, 0))
    assert pad.blank_mm == math.ceil(max(pad.corners_mm.values()))


def test_pad_corners_add_both_slopes() -> None:
    form = boat(transom={"rake_deg": 10, "camber_mm": 100})
    fit = at(form, metal("stiff", "stiff"), y=400, x=400, lower=300, upper=700)
    across = -8 * 100 * 400 / 2000**2  # -0.08
    up, side = 75 * math.tan(math.radians(10)), 80 * across
    pad = next(p for p in fit.pads if p.role == "lower")
    for name, vertical, sideways in (("top port", 1, -1), ("top starboard", 1, 1), ("bottom port", -1, -1)):
        assert pad.corners_mm[name] == pytest.approx(pad.centre_mm - vertical * up - sideways * side)
    assert max(pad.corners_mm, key=lambda n: pad.corners_mm[n]) == "bottom starboard"
    assert pad.plan_bevel_deg == pytest.approx(math.degrees(math.atan(-0.08)))


def test_only_the_slope_beyond_the_flanges_range_goes_into_the_pad() -> None:
    fit = at(boat(transom={"rake_deg": 30}), metal("hinge", "hinge"), x=500, lower=300, upper=700)
    beyond = math.tan(math.radians(30)) - math.tan(math.radians(20))
    pad = next(p for p in fit.pads if p.role == "lower")
    assert pad.rake_bevel_deg == pytest.approx(math.degrees(math.atan(beyond)))


def test_too_steep_for_the_pad() -> None:
    steep = at(boat(transom={"rake_deg": 30}), metal("stiff", "hinge"), x=700, lower=300, upper=800)
    # the least pad has its thin edge at nothing: 150 tan 30° = 86.60 at the thick one, 6.60 more than allowed
    assert margin(steep, "lower.pad") <= 80 - 150 * math.tan(math.radians(30)) + 1e-3
    assert steep.check("lower.pad").status == "fail"
    assert steep.verdict == "undecided"  # the engine decides, the sheet only describes


def test_swing_is_mirrored_to_port() -> None:
    camber = {"camber_mm": 500}  # at y = 600: slope -8 · 500 · 600 / 4e6 = -0.6, 30.96°: inside -50..-10
    for side in (1, -1):
        fit = at(boat(transom=camber), metal("quarter", "quarter"), y=side * 600, x=150)
        assert not [p for p in fit.pads if abs(p.plan_bevel_deg) > 1e-6]
        assert standoff(fit, "lower") == pytest.approx(150 + 500 * 0.36)
    plain = at(boat(), metal("quarter", "quarter"), y=600, x=300)  # flat: 10° short of what the flange takes least
    assert plain.pads[0].plan_bevel_deg == pytest.approx(10)


# --- seat -------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("lower", "y", "room"),
    [
        (300.0, 0.0, 210.0),  # 300 - 60 - 30 above the bottom edge at 0
        (80.0, 0.0, -10.0),
        (950.0, 0.0, -40.0),  # 1000 - 950 - 60 - 30
        (300.0, 700.0, 32.0),  # half-breadth at the footprint's lower edge, 210: 800 + 42; less 700, 80 and 30
        (300.0, -700.0, 32.0),
    ],
)
def test_seat(lower: float, y: float, room: float) -> None:
    fit = at(boat(), metal(), y=y, lower=lower, upper=960)
    assert margin(fit, "lower.seat") == pytest.approx(room)


def test_edge_distance_goes_all_round() -> None:
    wider = at(boat(), metal(), catalogue=ruled(bench(), edge_distance=50))
    assert margin(wider, "lower.seat") == pytest.approx(190)


def test_a_riser_seats_lower_than_its_collar() -> None:
    fit = at(boat(), metal("hinge", "riser"), upper=1000)  # the flange at 850: 1000 - 850 - 60 - 30
    assert margin(fit, "upper.seat") == pytest.approx(60)


def test_a_footprint_stays_off_the_step() -> None:
    form = boat(boat={"stern": "scoop"}, transom=SCOOP)
    above = at(form, metal(), x=700, lower=420, upper=800)
    assert margin(above, "lower.seat") == pytest.approx(420 - 60 - 30 - 300)
    below = at(form, metal(), x=700, lower=150, upper=800)
    assert margin(below, "lower.seat") == pytest.approx(
        60
    )  # 300 - 240 under the step, 150 - 90 over the bottom: both 60
    across = at(form, metal(), x=700, lower=330, upper=800)
    assert margin(across, "lower.seat") == pytest.approx(-60)  # 330 - 90 - 300


# --- struts -----------------------------------------------------------------------------------------------


def test_strut_lengths_and_feet() -> None:
    fit = at(boat(), metal("strutted", "hinge"), x=400, lower=300)
    # feet at y ± 300, height 350, on the skin at x = 0; collar at (400, 0, 300)
    assert value(fit, "lower.strut") == pytest.approx(math.sqrt(400**2 + 300**2 + 50**2), abs=1e-3)
    assert margin(fit, "lower.strut") == pytest.approx(600 - 502.494, abs=1e-3)
    assert fit.cuts[0] == {"role": "lower", "part": "strut", "count": 2, "length_mm": 502.5, "spread_mm": 600}


def test_a_strut_foot_must_stand_on_skin() -> None:
    fit = at(boat(), metal("strutted", "hinge"), y=500, x=400, lower=300)
    # half-breadth at 350 is 870: 870 - 500 - 300 - 30 = 40, less than what the length leaves
    assert margin(fit, "lower.strut") == pytest.approx(40)
    off = at(boat(), metal("strutted", "hinge"), y=600, x=400, lower=300)
    assert margin(off, "lower.strut") == pytest.approx(-60)
    assert "lack" in off.check("lower.strut").why
    assert "lower.strut" not in ids(at(boat(), metal()))


# --- cheek ------------------------------------------------------------------------------------------------

POST: dict[str, Any] = {"boat": {"stern": "double_ended"}, "transom": {"post_width_mm": 90, "rake_deg": 20}}


def test_a_cheek_straddles_the_post() -> None:
    fit = at(boat(**POST), metal("cheek", "cheek"), x=100)
    assert value(fit, "lower.gap") == 90
    assert margin(fit, "lower.gap") == pytest.approx(30)  # of 40 to 120
    assert fit.check("lower.gap").limit == 120
    assert value(fit, "lower.reach") == pytest.approx(100 + 700 * TAN20, abs=0.01)
    assert margin(fit, "lower.seat") == pytest.approx(300 - 80 - 30)  # up and down only
    assert not fit.pads
    assert at(boat(**POST), metal("cheek", "cheek"), x=100, y=5).check("lower.seat").status == "fail"


def test_a_cheek_takes_no_pad() -> None:
    steep = at(
        boat(boat={"stern": "double_ended"}, transom={"post_width_mm": 90, "rake_deg": 35}), metal("cheek", "cheek")
    )
    assert steep.check("lower.pad").status == "fail"
    wide = at(boat(boat={"stern": "double_ended"}, transom={"post_width_mm": 130}), metal("cheek", "cheek"))
    assert margin(wide, "lower.gap") == pytest.approx(-10)


def test_cheek_bolts_go_through_the_post() -> None:
    fit = at(boat(**POST), metal("cheek", "cheek"))
    # two plates of 10 and the post: grip 110; M12: washers 2.7 + 3.3, nut 10.8, two pitches 3.5 -> 130.3 -> 140
    assert fit.fasteners[0].made_of == {"flange": 20, "post": 90}
    assert fit.fasteners[0].length_mm == 140
    unsaid = at(boat(boat={"stern": "double_ended"}), metal("cheek", "cheek"))
    assert unsaid.fasteners[0].length_mm is None
    assert "measure it" in unsaid.fasteners[0].note


def test_a_post_bears_no_flange() -> None:
    fit = at(boat(**POST), metal("cheek", "hinge"), x=150)
    assert margin(fit, "upper.seat") == pytest.approx(45 - 80 - 30)


def test_level_cuts_give_a_double_ender_quarters_to_seat_on() -> None:
    cut = [{"half_breadth_mm": 0, "aft_mm": 0}, {"half_breadth_mm": 1000, "aft_mm": -600}]
    sections = [{"below_top_mm": b, "points": cut} for b in (0, 1000)]
    form = boat(boat={"stern": "double_ended"}, transom={"post_width_mm": 90, "sections": sections})
    fit = at(form, metal("quarter", "quarter"), y=550, x=100)
    assert margin(fit, "lower.seat") == pytest.approx(842 - 550 - 80 - 30)  # as on a transom of that width
    assert standoff(fit, "lower") == pytest.approx(100 + 330)  # 0.6 · 550 forward
    assert all(p.plan_bevel_deg == 0 for p in fit.pads)  # slope -0.6, 31° in plan: the flange swings that far


# --- step -------------------------------------------------------------------------------------------------


def test_a_stand_on_a_step() -> None:
    form = boat(boat={"stern": "scoop"}, transom=SCOOP)
    fit = at(form, metal("stand", "hinge"), x=500, lower=440)
    # base 160 fore and aft, wholly on 0..600 with 30 to spare: its centre from 110 to 490; reach 100..300 from x = 500
    # leaves 200..400 -> the middle: reach 200, centre at 300
    assert value(fit, "lower.reach") == pytest.approx(200)
    assert margin(fit, "lower.reach") == pytest.approx(100)
    assert margin(fit, "lower.seat") == pytest.approx(190)  # 300 - 110 fore, 490 - 300 aft; 600 - 100 - 30 across
    assert value(fit, "lower.stands") == pytest.approx(140)
    assert margin(fit, "lower.stands") == pytest.approx(50)
    assert margin(at(form, metal("stand", "hinge"), x=500, lower=500), "lower.stands") == pytest.approx(-10)
    assert margin(at(form, metal("stand", "hinge"), x=500, y=400, lower=440), "lower.seat") == pytest.approx(70)


def test_a_stand_off_the_step_or_without_one() -> None:
    form = boat(boat={"stern": "scoop"}, transom=SCOOP)
    assert margin(at(form, metal("stand", "hinge"), x=820, lower=440), "lower.reach") == pytest.approx(-15)
    # the base can stand no further aft than 490, and reach no further than 300: 30 too far, shared by reach and seat
    assert margin(at(form, metal("stand", "hinge"), x=820, lower=440), "lower.seat") == pytest.approx(-15)
    assert at(boat(), metal("stand", "hinge"), lower=440).check("lower.seat").status == "fail"


def test_a_low_skin_has_its_own_flange_height() -> None:
    """An open stern: the sole's edge is low, so that only a riser brings the collar up."""
    form = boat(boat={"stern": "open"}, transom={"top_height_mm": 450})
    assert margin(at(form, metal("hinge", "riser"), lower=150, upper=480), "upper.seat") == pytest.approx(30)
    assert at(form, metal("hinge", "hinge"), lower=150, upper=480).check("upper.seat").status == "fail"
