"""The gear against main rudder, hull and what stands on the stern: by hand arithmetic. All boats invented."""

from __future__ import annotations

import math
from typing import Any

import pytest

from service.core.fit.boats import prepare
from service.core.fit.engine import fit_configuration
from tests.support.boats import at, boat, demo, ids, margin, metal, ready, value

HUNG: dict[str, Any] = {
    "hung": "transom", "stock_aft_mm": 30, "leading_edge_aft_mm": 10, "trailing_edge_aft_mm": 500, "top_height_mm": 400,
    "bottom_height_mm": -1000, "max_deflection_deg": 35,
}  # fmt: skip


# --- main rudder ------------------------------------------------------------------------------------------


def test_blade_behind_the_rudder() -> None:
    assert value(at(boat(), metal(), x=150), "main_rudder.blade") == pytest.approx(600)  # 150 - 50 + 500
    near = at(boat(main_rudder={"trailing_edge_aft_mm": 20}), metal(), x=150)
    assert margin(near, "main_rudder.blade") == pytest.approx(80 - 100)


def test_a_rudder_under_the_blade_is_cleared_in_height_too() -> None:
    deep = {"top_height_mm": -1000, "trailing_edge_aft_mm": 20}  # the blade ends at -820
    assert value(at(boat(main_rudder=deep), metal(), x=150), "main_rudder.blade") == pytest.approx(
        math.hypot(80, 180), abs=1e-3
    )


def test_beside_the_rudder_the_tip_of_its_sweep_counts() -> None:
    # stock at 0, 400 long, hard over 35°: tip at (327.66, 229.43); the gear's axis at (327.66, 700), its blade turned 30°
    # comes nearest with its tail's corner at (327.66 + 150 cos 30°, 700 - 75)
    rudder = {"stock_aft_mm": 0, "leading_edge_aft_mm": -50, "trailing_edge_aft_mm": 400}
    tip_x, tip_y = 400 * math.cos(math.radians(35)), 400 * math.sin(math.radians(35))
    fit = at(boat(main_rudder=rudder), metal(), x=tip_x, y=700)
    lean_tail = math.hypot(150 * math.cos(math.radians(30)), 625 - tip_y)
    lean_nose = math.hypot(50 * math.cos(math.radians(30)), 675 - tip_y)
    assert value(fit, "main_rudder.blade") == pytest.approx(min(lean_tail, lean_nose), abs=1e-3)


def test_twin_rudders() -> None:
    twins = boat(main_rudder={"number": 2, "spacing_mm": 1200})
    assert value(at(twins, metal(), y=600), "main_rudder.blade") == pytest.approx(600)  # dead behind one of them
    # between them: stocks at (-900, ±600), 1050 and 600 away: 29.7°, inside both sweeps, so less both radii
    assert value(at(twins, metal()), "main_rudder.blade") == pytest.approx(math.hypot(1050, 600) - 400 - 50, abs=1e-3)
    assert value(at(twins, metal()), "wake") == pytest.approx(600)
    assert value(at(twins, metal(), y=-500), "wake") == pytest.approx(100)


def test_shaft_and_arms_clear_a_rudder_hung_outside() -> None:
    form = boat(main_rudder=HUNG)
    assert "main_rudder.shaft" not in ids(at(boat(), metal()))
    # collars above the rudder's head (400): the lower arm is 500 ± 40, so 60 above; the shaft 700 - 25 - 500 behind
    assert value(at(form, metal("long", "long"), x=700, lower=500), "main_rudder.shaft") == pytest.approx(60)
    assert value(at(form, metal("long", "long"), x=540, lower=600), "main_rudder.shaft") == pytest.approx(15)
    assert margin(at(form, metal("long", "long"), x=700, lower=300), "main_rudder.shaft") < -100  # an arm across it
    beside = at(form, metal("long", "long"), x=500, y=600, lower=300)
    tip = 470 * math.sin(math.radians(35))  # the arm is 160 wide: its side at 520
    assert value(beside, "main_rudder.shaft") == pytest.approx(520 - tip, abs=1e-3)


def test_struts_clear_a_rudder_hung_outside() -> None:
    narrow = {**HUNG, "trailing_edge_aft_mm": 250, "top_height_mm": 1000}
    fit = at(boat(main_rudder=narrow), metal("strutted", "hinge"), x=400, lower=300)
    # struts run from (0, ±300) to (400, 0): the rudder sweeps over them
    assert margin(fit, "main_rudder.shaft") < -100


def test_wake_is_advice() -> None:
    behind = boat(preferences={"side": "centre", "strength": "must"})
    fit = fit_configuration(ready(behind, draws=50), metal("hinge", "hinge"))
    wake = fit.check("wake")
    assert (wake.status, wake.binds) == ("fail", False)
    assert fit.verdict == "fits"
    assert margin(at(boat(), metal(), y=-260), "wake") == pytest.approx(60)
    assert "wake" not in ids(at(boat(), metal("long", "long"), x=1050))  # 1550 behind the trailing edge, reach 1500


# --- hull -------------------------------------------------------------------------------------------------


def test_blade_and_shaft_to_a_plumb_transom() -> None:
    fit = at(boat(), metal(), x=150)
    assert value(fit, "hull.blade") == pytest.approx(100)
    assert value(fit, "hull.shaft") == pytest.approx(125)


def test_a_reverse_transom_comes_close_below_and_a_counter_above() -> None:
    toe = 1000 * math.tan(math.radians(20))
    reverse = at(boat(transom={"rake_deg": -20}), metal("hinge", "long"), x=500)
    assert value(reverse, "hull.shaft") == pytest.approx(475 - toe, abs=1e-3)
    assert value(reverse, "hull.blade") == pytest.approx(450 - toe, abs=1e-3)  # down below, the hull reaches as far
    counter = at(boat(transom={"rake_deg": 20}), metal("long", "hinge"), x=150)
    assert value(counter, "hull.shaft") == pytest.approx(125)
    # the blade's top, 20 under water, is nearest square to the slope: 100 + toe aft of its foot at the waterline
    square = (100 + toe) * math.cos(math.radians(20)) + 20 * math.sin(math.radians(20))
    assert value(counter, "hull.blade") == pytest.approx(square, abs=1e-3)


def test_head_tiller_and_vane_clear_the_deck_by_standing_above_it() -> None:
    fit = at(boat(), metal(), x=60)  # shaft top at 1300; the head (radius 80) reaches over the deck
    assert value(fit, "hull.head") == pytest.approx(300)
    assert value(fit, "hull.tiller") == pytest.approx(240)
    assert value(fit, "hull.vane") == pytest.approx(600)
    low = at(boat(), metal(), x=60, bottom=-320)  # shaft top at 980, the head in the deck
    assert value(low, "hull.head") == pytest.approx(-20)  # 60 - 80
    assert value(low, "hull.tiller") == pytest.approx(-40)


def test_camber_either_way_is_cleared_where_it_stands_furthest_aft() -> None:
    low: dict[str, Any] = {
        "y": 500,
        "x": 200,
        "bottom": -400,
    }  # shaft top at 900: the tiller (radius 100) is abreast of the skin
    round_ = at(boat(transom={"camber_mm": 80}), metal(), **low)
    hollow = at(boat(transom={"camber_mm": -80}), metal(), **low)
    # between the gap straight forward from the tiller's nearest side and the gap from its axis, less the radius
    assert 100 + 80 * 0.4**2 - 1e-3 <= value(round_, "hull.tiller") <= 100 + 80 * 0.5**2
    assert 100 - 80 * 0.6**2 - 1e-3 <= value(hollow, "hull.tiller") <= 100 - 80 * 0.5**2


def test_a_step_is_part_of_the_hull() -> None:
    step = {"step_height_mm": 300, "step_depth_mm": 500, "step_width_mm": 1200, "lower_rake_deg": 0}
    form = boat(boat={"stern": "scoop"}, transom=step)
    assert value(at(form, metal("long", "long"), x=600, lower=700, bottom=350), "hull.shaft") == pytest.approx(
        math.hypot(75, 50), abs=1e-3
    )
    assert value(at(form, metal("long", "long"), x=600, lower=700), "hull.blade") == pytest.approx(50)


# --- obstacles --------------------------------------------------------------------------------------------


def box(*, aft: Any, starboard: Any, height: Any, **more: Any) -> dict[str, Any]:  # noqa: ANN401 - JSON is any
    return {"kind": "other", "aft_mm": aft, "starboard_mm": starboard, "height_mm": height, **more}


def gap(*things: dict[str, Any], index: int = 0) -> float:
    return value(at(boat(obstacles=list(things)), metal()), f"obstacle[{index}]")


def test_the_nearest_part_counts() -> None:
    # arms are 160 wide and 80 high at 300 and 800: 300 - 80 to the side of a box that stands so high
    assert gap(box(aft=[0, 100], starboard=[300, 500], height=[0, 600])) == pytest.approx(220)
    # between the arms, 60 from the lower one and 40 from its flange, 120 high: the shaft 275 away at its side
    assert gap(box(aft=[0, 100], starboard=[300, 500], height=[400, 700])) == pytest.approx(
        math.hypot(220, 40), abs=1e-3
    )
    # as high as the vane (1600 to 2400), axis at 150: 50 aft of the box, 300 beside it, radius 250
    assert gap(box(aft=[0, 100], starboard=[300, 500], height=[1700, 1800])) == pytest.approx(
        math.hypot(50, 300) - 250, abs=1e-3
    )
    # the tiller (1240 to 1300, radius 100) and the head (1300 to 1600, radius 80)
    assert gap(box(aft=[0, 300], starboard=[150, 200], height=[1250, 1260])) == pytest.approx(50)
    assert gap(box(aft=[0, 300], starboard=[150, 200], height=[1420, 1430])) == pytest.approx(70)
    # the blade (-20 to -820) turned 30°: its tail's corner at (150 + 150 cos 30°, 75)
    assert gap(box(aft=[200, 400], starboard=[150, 200], height=[-500, -400])) == pytest.approx(75)


def test_no_flange_is_bolted_over_an_outlet() -> None:
    """An arm passes 10 over what its flange, higher than the collar, would cover."""
    pipe = {"kind": "exhaust", "aft_mm": [-50, 30], "starboard_mm": [-30, 30]}
    assert gap({**pipe, "height_mm": [350, 355]}) < 0
    assert gap({**pipe, "height_mm": [390, 400]}) == pytest.approx(30)  # the flange ends at 360
    assert gap({**pipe, "height_mm": [390, 400], "aft_mm": [-200, -100]}) == pytest.approx(
        math.hypot(100, 30), abs=1e-3
    )


def test_struts_are_cleared_along_their_length() -> None:
    form = boat(obstacles=[box(aft=[190, 210], starboard=[140, 160], height=[300, 350])])
    fit = at(form, metal("strutted", "hinge"), x=400, lower=300)
    assert value(fit, "obstacle[0]") < 0  # the starboard strut runs from (0, 300) to (400, 0): right through


def test_an_open_end_goes_on_for_ever() -> None:
    # the vane is nearest to what has no upper end
    far = math.hypot(50, 300) - 250
    for high in ([0, None], [None, None]):
        assert gap(box(aft=[0, 100], starboard=[300, 500], height=high)) == pytest.approx(far, abs=1e-3)
    assert gap(box(aft=[0, 100], starboard=[300, None], height=[0, 600])) == pytest.approx(220)
    assert gap(box(aft=[None, 100], starboard=[300, 500], height=[0, 600])) == pytest.approx(220)
    assert gap(box(aft=[600, None], starboard=[None, None], height=[None, 0])) == pytest.approx(600 - 150 - 150)


def test_what_moves_needs_more_room_and_is_cleared_all_the_way() -> None:
    place: dict[str, Any] = {"aft": [0, 100], "starboard": [300, 500], "height": [0, 600]}
    still = at(boat(obstacles=[box(**place)]), metal())
    folds = at(boat(obstacles=[box(**place, moves="folds")]), metal())
    assert margin(still, "obstacle[0]") == pytest.approx(170)
    assert margin(folds, "obstacle[0]") == pytest.approx(120)
    opens = box(**place, moves="folds", swept_to={"starboard_mm": [200, 400]})
    assert gap(opens) == pytest.approx(120)
    # from one side to the other: clear at both ends, through the shaft on its way
    ends: tuple[dict[str, Any], ...] = ({"starboard_mm": [-700, -600]}, {"starboard_mm": [600, 700]})
    across = box(aft=[100, 200], starboard=[-700, -600], height=[0, 600], moves="swings", swept_to=ends[1])
    assert all(
        gap(box(aft=[100, 200], height=[0, 600], starboard=e["starboard_mm"])) == pytest.approx(520) for e in ends
    )
    assert gap(across) < 0


def test_removable_is_a_trade_and_keep_a_refusal() -> None:
    wall = box(aft=[0, 3000], starboard=[-900, 900], height=[500, 700])

    def fitted(**more: bool) -> tuple[str, tuple[str, ...], bool]:
        fit = fit_configuration(ready(boat(obstacles=[{**wall, **more}]), draws=20), metal())
        return fit.verdict, fit.trades, fit.check("obstacle[0]").binds

    assert fitted() == ("does_not_fit", (), True)
    assert fitted(removable=True) == ("fits", ("take off the other",), False)
    assert fitted(removable=True, keep=True) == ("does_not_fit", (), True)
    assert fitted(removable=False, keep=True) == ("does_not_fit", (), True)


def test_what_is_said_not_to_be_there_is_not_checked() -> None:
    wall = box(aft=[0, 3000], starboard=[-900, 900], height=[500, 700])
    form = boat(obstacles=[{**wall, "present": False}, box(aft=[0, 100], starboard=[300, 500], height=[0, 600])])
    fit = at(form, metal())
    assert "obstacle[0]" not in ids(fit)
    assert value(fit, "obstacle[1]") == pytest.approx(220)


def test_a_thing_without_a_place_leaves_the_fit_undecided() -> None:
    fit = fit_configuration(ready(boat(obstacles=[{"kind": "ladder", "side": "port"}]), draws=20), metal())
    check = fit.check("obstacle[0]")
    assert (check.status, check.value, check.margin, check.probability) == ("unknown", None, None, None)
    assert fit.verdict == "undecided"


def test_a_pair_without_a_place_stands_on_both_sides() -> None:
    """The demo maker's rules say where a pair's starboard one stands; the port one mirrors it."""
    boats = prepare(boat(obstacles=[{"kind": "davits", "side": "both"}]), demo(), draws=1)
    one, other = boats.nominal.boxes[0]
    assert boats.nominal.boxes.shape == (1, 2, 12)
    assert (other[2], other[3]) == (-one[3], -one[2])
    assert list(boats.nominal.box_info[:, 0]) == [0, 0]  # one check, of the nearer
