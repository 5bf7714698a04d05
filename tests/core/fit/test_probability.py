"""How sure a fit is, what it rests on, and what cannot be said. All boats invented."""

from __future__ import annotations

from typing import Any

import pytest

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.fit import Fit
from service.core.fit.boats import prepare
from service.core.fit.cures import cures
from service.core.fit.engine import fit_configuration, set_many
from service.core.fit.site import S
from service.core.recall import Fill
from tests.support.boats import PLUMB, bench, boat, demo, joined, metal, ready

DRAWS = 600


def fitted(form: BoatForm, catalogue: Catalogue | None = None, draws: int = DRAWS) -> Fit:
    return fit_configuration(ready(form, catalogue, draws), metal())


# --- probability ------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("field", "changes"),
    [
        ("boat.displacement_kg", {"boat": {"displacement_kg": 7800}}),
        ("transom.top_height_mm", {"transom": {"top_height_mm": 610, "bottom_height_mm": 80}}),
        ("main_rudder.trailing_edge_aft_mm", {"main_rudder": {"trailing_edge_aft_mm": 60},
                                              "preferences": {"side": "centre", "strength": "must"}}),
        ("obstacles[0]", {"preferences": {"side": "centre", "strength": "must"},
                          "obstacles": [{"kind": "rail", "aft_mm": [0, 400], "starboard_mm": [145, 700],
                                         "height_mm": [0, 950]}]}),
    ],
)  # fmt: skip
def test_a_better_method_makes_a_nominal_pass_surer(field: str, changes: dict[str, Any]) -> None:
    """The same value by photo, by tape and by laser: its standard uncertainty falls, nothing else changes."""
    found = []
    for method in ("photo", "tape", "laser"):
        fit = fitted(boat(**joined(changes, {"methods": {field: method}})))
        assert fit.verdict in ("fits", "tight")
        assert fit.probability is not None
        found.append(fit.probability)
    assert found == sorted(found)
    assert found[-1] > found[0] + 0.02
    assert found[-1] > 0.9


def test_a_boat_with_room_to_spare_is_sure() -> None:
    fit = fitted(boat(methods={"*": "tape"}))
    assert fit.verdict == "fits"
    assert fit.probability == 1
    assert fit.first_order == pytest.approx(1, abs=0.01)
    assert not fit.disagrees


def test_below_the_threshold_a_pass_is_tight() -> None:
    fit = fitted(boat(boat={"displacement_kg": 7950}, methods={"boat.displacement_kg": "photo"}))
    assert fit.verdict == "tight"
    assert fit.probability == pytest.approx(0.54, abs=0.08)  # Φ(50 / 500) = 0.5398; four standard errors of 600 draws


def test_the_joint_probability_is_no_more_than_any_check() -> None:
    fit = fitted(boat(transom={"top_height_mm": 610, "bottom_height_mm": 80}, methods={"*": "photo"}))
    each = [c.probability for c in fit.checks if c.binds and c.probability is not None]
    assert fit.probability is not None
    assert fit.probability <= min(each) + 1e-9
    assert fit.probability < 1


def test_the_fitter_plumbs_the_shaft_on_the_boat() -> None:
    """A rake that turns out 4° other moves the shaft with the skin: that alone loses no fit whose arms have room."""
    form = boat(transom={"rake_deg": 3}, methods={"transom.rake_deg": "photo"})
    fit = fitted(form)
    assert fit.probability == 1


def test_doubt_adds_up_and_names_what_carries_it() -> None:
    fit = fitted(boat(boat={"displacement_kg": 7800}, methods={"boat.displacement_kg": "photo"}))
    assert fit.doubt[0].field == "boat.displacement_kg"
    assert sum(d.share for d in fit.doubt) == pytest.approx(1, abs=0.01)
    assert [d.share for d in fit.doubt] == sorted((d.share for d in fit.doubt), reverse=True)


def test_what_can_be_taken_off_costs_no_probability() -> None:
    wall = {"kind": "rail", "aft_mm": [0, 900], "starboard_mm": [-900, 900], "height_mm": [500, 700], "removable": True}
    fit = fitted(boat(obstacles=[wall]))
    assert fit.check("obstacle[0]").status == "fail"
    assert (fit.verdict, fit.probability) == ("fits", 1.0)
    assert fit.trades == ("take off the rail",)


def test_the_seed_decides_the_draws_and_nothing_else() -> None:
    form = boat(boat={"displacement_kg": 7900}, methods={"*": "photo"})
    one, same, other = (fit_configuration(prepare(form, bench(), seed=s, draws=DRAWS), metal()) for s in (1, 1, 2))
    assert one == same
    assert one.placement == other.placement
    assert one.probability != other.probability


# --- what nobody knows ------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("part", "name", "blocked"),
    [
        ("main_rudder", "hung", "main_rudder.blade"),
        ("main_rudder", "trailing_edge_aft_mm", "main_rudder.blade"),
        ("main_rudder", "top_height_mm", "main_rudder.blade"),
        ("main_rudder", "bottom_height_mm", "main_rudder.blade"),
        ("main_rudder", "max_deflection_deg", "main_rudder.blade"),
        ("transom", "rake_deg", "lower.reach"),
        ("transom", "bottom_height_mm", "lower.seat"),
        ("transom", "width_top_mm", "upper.seat"),
        ("transom", "width_waterline_mm", "lower.seat"),
        ("transom", "camber_mm", "hull.vane"),
        ("boat", "displacement_kg", "displacement"),
    ],
)
def test_what_has_neither_value_nor_prior_leaves_it_undecided(part: str, name: str, blocked: str) -> None:
    fit = fitted(boat(**{part: {name: None}}), draws=20)
    check = fit.check(blocked)
    assert (check.status, check.value, check.margin, check.probability) == ("unknown", None, None, None)
    assert "not known" in check.why
    assert not [c for c in fit.checks if c.binds and c.status == "fail"]
    assert fit.verdict == "undecided"
    assert fit.check("spacing").status == "pass"  # what can be said is said


def test_twin_rudders_without_their_distance() -> None:
    fit = fitted(boat(main_rudder={"number": 2}), draws=20)
    assert fit.check("main_rudder.blade").status == "unknown"
    assert fit.verdict == "undecided"


def test_a_step_or_a_post_nobody_measured() -> None:
    step = fitted(boat(boat={"stern": "scoop"}), draws=20)
    assert step.check("lower.seat").status == "unknown"
    post = fit_configuration(ready(boat(boat={"stern": "double_ended"}), draws=20), metal("cheek", "cheek"))
    assert post.check("lower.gap").status == "unknown"


def test_a_miss_stays_a_miss_whatever_else_is_unknown() -> None:
    fit = fitted(boat(boat={"displacement_kg": 9000}, main_rudder={"hung": None}), draws=20)
    assert fit.verdict == "does_not_fit"


# --- what is filled ---------------------------------------------------------------------------------------


def test_priors_fill_and_are_listed() -> None:
    form = boat(base=joined(PLUMB, {"transom": {"camber_mm": None, "thickness_mm": None}}))
    boats = ready(form, demo(), 20)
    listed = {f.field: f for f in boats.filled}
    assert set(listed) == {"transom.camber_mm", "transom.thickness_mm"} | {
        f for f in listed if f == "boat.hull_material"
    }
    assert listed["transom.camber_mm"].from_ == "prior"
    assert listed["transom.camber_mm"].spread is not None
    assert boats.unknown == ()
    dumped = listed["transom.camber_mm"].model_dump(by_alias=True)
    assert {"field", "from", "value", "spread"} <= set(dumped)


def test_a_prior_grows_with_the_boat() -> None:
    def top(loa: float) -> float:
        boats = ready(boat(boat={"loa_mm": loa}, transom={"top_height_mm": None}), demo())
        return next(float(f.value) for f in boats.filled if f.field == "transom.top_height_mm")

    prior = demo().rules.prior_of("transom.top_height_mm", "plumb")
    assert prior is not None
    assert top(12_000) - top(10_000) == pytest.approx(2 * prior.per_loa)


def test_sister_ships_fill_with_their_median() -> None:
    values = (100.0, 120.0, 140.0, 400.0)
    given = {"transom.bottom_height_mm": Fill(field="transom.bottom_height_mm", source="sister_ships", values=values,
                                              weights=(0.25,) * 4)}  # fmt: skip
    boats = prepare(boat(transom={"bottom_height_mm": None}), bench(), given, draws=2000)
    filled = next(f for f in boats.filled if f.field == "transom.bottom_height_mm")
    assert filled.from_ == "sister_ships"
    assert 120 <= float(filled.value) <= 140
    drawn = boats.drawn["transom.bottom_height_mm"]
    assert 0.2 < (drawn > 250).mean() < 0.3  # one in four sisters


def test_a_stern_taken_from_neighbours_is_the_commonest() -> None:
    given = {"boat.stern": Fill(field="boat.stern", source="neighbours", values=("scoop", "plumb", "plumb"),
                                weights=(0.4, 0.35, 0.25))}  # fmt: skip
    boats = prepare(boat(boat={"stern": None}), demo(), given, draws=10)
    filled = next(f for f in boats.filled if f.field == "boat.stern")
    assert (filled.value, filled.spread) == ("plumb", 0.4)  # three fifths have it, two fifths another
    stated = prepare(boat(), demo(), given, draws=10)
    assert "boat.stern" not in {f.field for f in stated.filled}


def test_an_obstacle_without_a_place_is_listed_with_its_usual_one() -> None:
    boats = ready(boat(obstacles=[{"kind": "ladder", "side": "port", "aft_mm": [0, 60]}]), demo(), 10)
    listed = {f.field: f.value for f in boats.filled if f.field.startswith("obstacles")}
    assert listed == {"obstacles[0].starboard_mm": "usual place", "obstacles[0].height_mm": "usual place"}


def test_the_waterline_moves_every_height_together() -> None:
    boats = ready(boat(methods={"*": "laser"}), draws=400)
    top, bottom = boats.draws.values[:, S.TOP], boats.draws.values[:, S.BOTTOM]
    assert top.std() == pytest.approx((10**2 + 2**2) ** 0.5, rel=0.15)  # waterline 10, laser 2
    assert (top - bottom).std() == pytest.approx(2 * 2**0.5, rel=0.15)


# --- cures ------------------------------------------------------------------------------------------------


def test_cures_are_tried_and_hold() -> None:
    wall = {"kind": "rail", "aft_mm": [0, 900], "starboard_mm": [-900, 900], "height_mm": [500, 700]}
    boats = ready(boat(obstacles=[wall]))
    fit = set_many(boats, [metal()])[0].fit
    assert fit.verdict == "does_not_fit"
    assert "without the rail it would pass" in cures(boats, fit)
    kept = ready(boat(obstacles=[{**wall, "keep": True}]))
    assert "without the rail it would pass" not in cures(kept, set_many(kept, [metal()])[0].fit)


def test_no_sternpost_bracket_is_a_cure_for_a_flat_transom() -> None:
    boats = ready(boat(transom={"rake_deg": 10}))
    fit = set_many(boats, [metal("hinge", "strutted")])[0].fit
    assert fit.verdict == "does_not_fit"
    found = cures(boats, fit)
    assert "with upper bracket hinge it would pass" in found
    assert not [c for c in found if "cheek" in c or "stand " in c]


def test_every_cure_by_other_metal_holds() -> None:
    boats = ready(boat(transom={"rake_deg": 10}))
    fit = set_many(boats, [metal("hinge", "strutted")])[0].fit
    for cure in cures(boats, fit):
        words = cure.split()
        part = "shaft" if words[1] == "shaft" else words[1]
        code = words[2] if part == "shaft" else words[3]
        assert set_many(boats, [fit.configuration.model_copy(update={part: code})])[0].fit.verdict == "fits"


@pytest.mark.parametrize(("low", "rake"), [(450, 0), (700, 20), (450, -8)])
def test_no_part_that_would_cure_it_is_passed_over(low: float, rake: float) -> None:
    """Without a step no stand holds. Each other shaft or bracket of the demo maker's is placed whole: what passes is named."""
    wall = {"kind": "rail", "aft_mm": [0, 200], "starboard_mm": [100, 900], "height_mm": [low, low + 150], "keep": True}
    boats = prepare(boat(transom={"rake_deg": rake}, obstacles=[wall]), demo(), draws=1)
    own = Configuration(gear="gear-720", lower="hinge-60-170", upper="stand-90-190", shaft="shaft-1110")
    fit = set_many(boats, [own])[0].fit
    assert fit.verdict == "does_not_fit"
    brackets = [b.code for b in demo().brackets]
    parts = [(role, code) for role in ("lower", "upper") for code in brackets]
    parts += [("shaft", s.code) for s in demo().shafts]
    tried = [own.model_copy(update={part: code}) for part, code in parts]
    able = [one for one in tried if one != own and demo().misfit(one) is None]
    passing = {one for one in able if set_many(boats, [one])[0].fit.verdict != "does_not_fit"}
    assert passing
    named = {words.split(" it would pass")[0].split()[-1] for words in cures(boats, fit)}
    assert named == {code for part, code in parts if own.model_copy(update={part: code}) in passing}


def test_of_many_things_those_are_named_that_alone_are_in_the_way() -> None:
    """A wall that nothing passes, among things that are in nobody's way; with a second wall, taking one away helps nothing."""
    wall = {"kind": "rail", "aft_mm": [-100, 1500], "starboard_mm": [-1500, 1500], "height_mm": [350, 950]}
    free = [{"kind": "exhaust", "aft_mm": [-50, 0], "starboard_mm": [700 + 20 * n, 715 + 20 * n], "height_mm": [900, 950]}
            for n in range(12)]  # fmt: skip
    for walls, named in (([wall], 1), ([wall, {**wall, "kind": "platform"}], 0)):
        boats = ready(boat(obstacles=[*free[:5], *walls, *free[5:]]))
        found = [c for c in cures(boats, set_many(boats, [metal()])[0].fit) if c.startswith("without")]
        assert found == ["without the rail it would pass"] * named
