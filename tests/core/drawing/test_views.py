"""What stands where: views beside the placement, the form, and the referee's own skin; what does not pass, in its place."""

from __future__ import annotations

import math

import pytest
import shapely

from service.core.boat import STERNS, BoatForm
from service.core.drawing import Outline, View
from service.core.drawing.clashes import clashes
from service.core.drawing.lengths import INCH_COUNTRIES, tape
from service.core.drawing.scene import Scene, scene
from service.core.drawing.views import views
from service.core.fit import Placement
from tests.referee.boats import random_boat
from tests.referee.skin import Skin
from tests.support.boats import PLUMB, at, bench, boat, joined, metal
from tests.support.drawn import Case, random_case, rng, set_near

SMALL = 0.01
KEYS = ["side", "stern", "plan", "lower_plate", "upper_plate"]


def box(outline: Outline) -> tuple[float, float, float, float]:
    xs, ys = zip(*outline.points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def named(view: View, label: str, layer: str | None = None) -> Outline:
    """Return the first outline of a name (and layer)."""
    return next(o for o in view.outlines if o.label == label and layer in (None, o.layer))


def shown(form: BoatForm, y: float = 0.0) -> tuple[View, ...]:
    return views(form, at(form, metal(), y=y), bench())


def of_stern(stern: str) -> Case:
    """Return a random boat of a stern, a gear near it."""
    for seed in range(200):
        form = random_boat(rng(seed), things=3)
        if form.boat.stern == stern:
            return set_near(form, rng(seed))
    raise AssertionError(stern)


@pytest.mark.parametrize("stern", STERNS)
def test_every_stern_has_every_view(stern: str) -> None:
    case = of_stern(stern)
    drawn = case.views()
    assert [view.key for view in drawn] == KEYS
    for view in drawn[:3]:
        assert {"body", "hull", "metal", "blade", "vane"} <= {o.layer for o in view.outlines} | {
            d.layer for d in view.discs
        }
        assert view.says
    placed = case.fit.placement
    assert placed is not None
    shaft = box(named(drawn[0], "shaft"))
    assert shaft[1] == pytest.approx(placed.shaft_bottom_mm, abs=SMALL)
    assert shaft[3] == pytest.approx(placed.shaft_top_mm, abs=SMALL)
    assert (shaft[0] + shaft[2]) / 2 == pytest.approx(placed.shaft_aft_mm, abs=SMALL)
    across = box(named(drawn[1], "shaft"))
    assert (across[0] + across[2]) / 2 == pytest.approx(placed.offset_mm, abs=SMALL)


@pytest.mark.parametrize("stern", [s for s in STERNS if s != "scoop"])
def test_the_skin_is_where_the_referee_has_it(stern: str) -> None:
    """Against the referee's own reading of the stern (scipy's curves), which shares nothing with the drawing."""
    case = of_stern(stern)
    placed, skin = case.fit.placement, Skin(case.form)
    assert placed is not None
    face = named(case.views()[0], "skin and deck").points[:-1]
    for x, z in face:
        assert x == pytest.approx(skin.at(placed.offset_mm, z), abs=0.5)


@pytest.mark.parametrize("seed", range(8))
def test_dimensions_measure_what_the_answer_says(seed: int) -> None:
    case = random_case(seed)
    placed = case.fit.placement
    assert placed is not None
    values = expected(placed)
    for view in case.views()[:3]:
        for mark in view.dimensions:
            if mark.says in values:
                assert mark.measured == pytest.approx(abs(values[mark.says]), abs=SMALL), mark.says
                assert float(mark.text) == pytest.approx(values[mark.says], abs=0.51)
    said = {mark.says for view in case.views()[:3] for mark in view.dimensions}
    assert values.keys() <= said


def expected(placed: Placement) -> dict[str, float]:
    found = {
        "shaft axis aft of the top edge": placed.shaft_aft_mm,
        "lower collar above the water": placed.lower_height_mm,
        "upper collar above the water": placed.upper_height_mm,
        "shaft's lower end above the water": placed.shaft_bottom_mm,
        "length of the shaft": placed.shaft_top_mm - placed.shaft_bottom_mm,
    }
    return found | ({"shaft axis from the centreline": abs(placed.offset_mm)} if abs(placed.offset_mm) >= 1 else {})


def test_an_obstacle_stands_where_the_form_says() -> None:
    thing = {"kind": "locker", "aft_mm": [-200, 50], "starboard_mm": [300, 700], "height_mm": [900, 1250]}
    side, stern, plan, *_ = shown(boat(obstacles=[thing]))
    assert box(named(side, "locker")) == pytest.approx([-200, 900, 50, 1250])
    assert box(named(stern, "locker")) == pytest.approx([300, 900, 700, 1250])
    assert box(named(plan, "locker")) == pytest.approx([-200, 300, 50, 700])
    assert named(side, "locker").hatched


def test_a_swinging_one_is_drawn_at_both_ends_and_between() -> None:
    """What it sweeps is the convex hull of both ends: shapely's, beside ours."""
    thing = {
        "kind": "ladder", "moves": "swings", "aft_mm": [0, 60], "starboard_mm": [400, 800], "height_mm": [300, 1000],
        "swept_to": {"aft_mm": [0, 700], "height_mm": [200, 300]},
    }  # fmt: skip
    side = shown(boat(obstacles=[thing]))[0]
    start, end = named(side, "swinging ladder"), named(side, "swinging ladder, swung away")
    assert box(end) == pytest.approx([0, 200, 700, 300])
    swept = shapely.Polygon(named(side, "what the swinging ladder sweeps").points)
    around = shapely.MultiPoint([*start.points, *end.points]).convex_hull
    assert shapely.symmetric_difference(swept, around).area < 1e-6


def test_what_stands_beyond_the_view_is_said_and_not_lost() -> None:
    thing = {"kind": "mast", "aft_mm": [-4000, -3800], "starboard_mm": [-50, 50], "height_mm": [900, 9000]}
    side, stern, plan, *_ = shown(boat(obstacles=[thing]))
    assert side.remarks == ("Beyond this drawing: mast.",)
    assert "Beyond this drawing: mast." in plan.remarks
    assert "Beyond this drawing: mast." in stern.remarks


def test_what_is_longer_than_the_view_says_so() -> None:
    stay = {"kind": "stay", "aft_mm": [-100, -80], "starboard_mm": [-5, 5], "height_mm": [900, None]}
    for view in shown(boat(obstacles=[stay]))[:2]:
        assert any(note.text == "stay, longer than drawn" for note in view.notes)


def test_what_collides_is_marked_where_it_does() -> None:
    """The mark lies where the shaft with the room it must have meets the locker (shapely's own intersection)."""
    thing = {"kind": "locker", "aft_mm": [50, 400], "starboard_mm": [-100, 100], "height_mm": [950, 1250], "keep": True}
    form = boat(obstacles=[thing])
    fit = at(form, metal(), x=150.0)
    side, stern, *_ = views(form, fit, bench())
    limit = fit.check("obstacle[0]").limit or 0.0
    locker = shapely.box(50, 950, 400, 1250)
    near = shapely.box(*box(named(side, "shaft"))).buffer(limit + 1, join_style="mitre")
    marks = [o for o in side.outlines if o.layer == "clash" and "locker" in o.label]
    assert marks
    for mark in marks:
        assert mark.hatched
        assert shapely.Polygon(mark.points).intersects(locker)
    assert any(shapely.Polygon(m.points).intersects(shapely.intersection(locker, near)) for m in marks)
    assert any(note.urgent and "locker" in note.text for note in stern.notes)


@pytest.mark.parametrize("seed", range(6))
def test_no_refusal_is_silent(seed: int) -> None:
    """Every binding check that fails is marked in place or said under the view, in each view."""
    case = random_case(seed)
    failed = [c for c in case.fit.checks if c.status == "fail" and c.binds]
    assert len(clashes(scene(case.form, case.fit, case.catalogue))) >= len(failed)
    for view in case.views()[:3]:
        told = [note.text for note in view.notes if note.urgent] + list(view.remarks)
        for check in failed:
            assert any(check.why[1:] in text for text in told), check.id


def test_where_everything_passes_nothing_is_marked() -> None:
    form = boat()
    fit = at(form, metal())
    fit = fit.model_copy(update={"checks": tuple(c for c in fit.checks if c.status == "pass")})
    for view in views(form, fit, bench()):
        assert not any(o.layer == "clash" for o in view.outlines)
        assert not any(note.urgent for note in view.notes)


def test_the_heeled_waterline_falls_to_the_weather_side() -> None:
    """Rigid rotation about (y 0, z 0): tan of the heel times the offset (FIT, exact meanings)."""
    heel = math.tan(math.radians(bench().rules["heel_angle"]))
    for offset in (-400.0, 400.0):
        side, stern, *_ = shown(boat(), y=offset)
        (y0, z0), (y1, z1) = next(o for o in stern.outlines if o.layer == "heel").points
        assert (y0, z0) == (0.0, 0.0)
        assert math.copysign(1.0, y1) == math.copysign(1.0, offset)
        assert z1 / abs(y1) == pytest.approx(-heel)
        assert next(o for o in side.outlines if o.layer == "heel").points[0][1] == pytest.approx(-400.0 * heel)


def test_a_bracket_without_a_pad_is_drawn_without_one() -> None:
    case = of_stern("double_ended")
    bare = case.fit.model_copy(update={"pads": ()})
    for view in views(case.form, bare, case.catalogue):
        assert not any(o.layer == "pad" for o in view.outlines)


def test_what_was_not_placed_has_no_views() -> None:
    form = boat()
    assert views(form, at(form, metal()).model_copy(update={"placement": None}), bench()) == ()


def test_the_blade_sweeps_as_far_as_it_turns() -> None:
    form = boat()
    seen: Scene = scene(form, at(form, metal()), bench())
    plan = shown(form)[2]
    gear = seen.gear
    swept = next(o for o in plan.outlines if o.layer == "sweep" and o.label.startswith("blade turned"))
    (x, y), *arc = swept.points
    assert (x, y) == seen.axis
    angles = [math.degrees(math.atan2(b - y, a - x)) for a, b in arc]
    assert (min(angles), max(angles)) == pytest.approx((-gear.blade.max_angle_deg, gear.blade.max_angle_deg))
    reach = gear.blade.chord_mm - gear.blade.balance_mm
    assert all(math.dist((x, y), p) == pytest.approx(reach) for p in arc)
    vane = next(d for d in plan.discs if d.layer == "vane")
    assert vane.radius == gear.vane.radius_mm


def test_inches_stand_beside_millimetres_to_a_sixteenth() -> None:
    """25.4 mm an inch, exactly (the international yard of 1959)."""
    form = boat()
    for mark in views(form, at(form, metal()), bench(), inches=True)[0].dimensions:
        whole, _, inches = mark.text.partition(" (")
        shown_in = sum(_part(p) for p in inches.removesuffix(" in)").lstrip("-").split())
        assert abs(shown_in * 25.4 - mark.measured) <= 25.4 / 32 + 1e-9, mark.text
        assert abs(abs(float(whole)) - mark.measured) <= 0.5
    assert tape(25.4 * 22.75) == "22 3/4 in"
    assert "US" in INCH_COUNTRIES


def _part(text: str) -> float:
    top, _, under = text.partition("/")
    return float(top) / float(under or 1)


def test_a_rudder_far_ahead_is_not_drawn_in_plan() -> None:
    form = boat(
        base=joined(
            PLUMB, {"main_rudder": {"stock_aft_mm": -2500, "leading_edge_aft_mm": -2700, "trailing_edge_aft_mm": -2100}}
        )
    )
    plan = shown(form)[2]
    assert not any(o.layer == "rudder" for o in plan.outlines)
