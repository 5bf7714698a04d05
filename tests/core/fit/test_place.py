"""The best placement: against a global optimiser, against mirrors and other data, and against wishes. All invented."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.optimize import Bounds, differential_evolution

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.fit.boats import Boats
from service.core.fit.checks import scales
from service.core.fit.engine import set_many
from service.core.fit.kit import Kit, build
from service.core.fit.place import LIES, place, polished
from service.core.fit.search import aim_at
from service.core.fit.terms import FIXED, terms
from tests.support.boats import PLUMB, bench, boat, demo, joined, margin, metal, ready, ruled

FIXED_BOX: dict[str, Any] = {"kind": "rail", "aft_mm": [0, 260], "starboard_mm": [150, 700], "height_mm": [900, 1500]}


def aim_of(boats: Boats, kit: Kit, spot: NDArray[np.float64]) -> float:
    """Return the aim of a placement by the service's checks: the smallest scaled margin, and a little of the next."""
    t = terms(boats.catalogue.rules)
    count = FIXED + boats.nominal.binds.size
    at = np.concatenate([spot, np.zeros(2)])
    return float(aim_at(boats.nominal, 0, kit, 0, t, scales(t, count), at, np.empty((count, 3))))


# --- as good as a global optimiser ------------------------------------------------------------------------

CASES: list[tuple[str, dict[str, Any], tuple[str, str, str, str]]] = [
    ("plumb", {}, ("gear-720", "hinge-150-290", "hinge-60-170", "shaft-1220")),
    (
        "raked",
        {"boat": {"stern": "raked"}, "transom": {"rake_deg": 22, "bottom_height_mm": 120}},
        ("gear-860", "outrigger-aft-400-600", "hinge-150-290", "shaft-1720"),
    ),
    (
        "reverse",
        {"boat": {"stern": "reverse"}, "transom": {"rake_deg": -20, "camber_mm": 60}, "obstacles": [FIXED_BOX]},
        ("gear-720", "hinge-150-290", "outrigger-fore-380-600", "shaft-1470"),
    ),
    (
        "hung outside",
        {"main_rudder": {"hung": "transom", "stock_aft_mm": 30, "leading_edge_aft_mm": 10, "trailing_edge_aft_mm": 480,
                         "top_height_mm": 350, "bottom_height_mm": -1000}},
        ("gear-720", "strut-600-860", "strut-600-860", "shaft-1600"),
    ),
    (
        "scoop",
        {"boat": {"stern": "scoop"}, "transom": {"rake_deg": -12, "step_height_mm": 320, "step_depth_mm": 620,
                                                 "step_width_mm": 1300, "lower_rake_deg": -5}},
        ("gear-860", "stand-90-190", "outrigger-540-720", "shaft-2100"),
    ),
    (
        "double ended",
        {"boat": {"stern": "double_ended"}, "transom": {"rake_deg": 18, "post_width_mm": 90, "bottom_height_mm": -200}},
        ("gear-720", "cheek-180-420", "cheek-180-420", "shaft-1350"),
    ),
]  # fmt: skip


@pytest.mark.parametrize(("name", "changes", "codes"), CASES, ids=[c[0] for c in CASES])
def test_no_worse_than_differential_evolution(
    name: str, changes: dict[str, Any], codes: tuple[str, str, str, str]
) -> None:
    """By 0.01 of a scaled margin at most, in the best of its lies."""
    boats = ready(boat(**changes), demo())
    configuration = Configuration(gear=codes[0], lower=codes[1], upper=codes[2], shaft=codes[3])
    kit = build(boats.catalogue, [configuration])
    best = place(boats.nominal, kit, boats.catalogue.rules)
    ours = max(polished(boats.nominal, kit, boats.catalogue.rules, best, 0, lie)[1] for lie in range(len(best.lies)))
    half = 0.0 if name == "double ended" else 900.0  # a sternpost is straddled on the centreline only

    def miss(spot: NDArray[np.float64]) -> float:
        return -aim_of(boats, kit, spot)

    ends = Bounds([-half, -200, 0, 100, -600], [half, 1500, 1200, 1800, 300])
    rng = np.random.default_rng(5)
    theirs = differential_evolution(miss, ends, rng=rng, popsize=24, maxiter=160, tol=1e-8, polish=False)
    assert ours >= -float(theirs.fun) - 0.01, (name, ours, -theirs.fun, best.spots[0, best.aims[0].argmax()], theirs.x)


# --- mirrors and other data -------------------------------------------------------------------------------


def mirrored(document: dict[str, Any]) -> dict[str, Any]:
    out = dict(document)
    out["obstacles"] = [
        {**o, "starboard_mm": [None if v is None else -v for v in reversed(o["starboard_mm"])]}
        for o in document.get("obstacles", [])
    ]
    return out


@pytest.mark.parametrize(
    "changes",
    [
        {"obstacles": [FIXED_BOX]},
        {
            "obstacles": [FIXED_BOX, {**FIXED_BOX, "starboard_mm": [-900, -500]}],
            "transom": {"camber_mm": 90, "rake_deg": 12},
        },
        {"obstacles": [{**FIXED_BOX, "starboard_mm": [-100, None]}], "transom": {"rake_deg": -15}},
    ],
)
def test_a_mirrored_boat_mirrors_the_placement(changes: dict[str, Any]) -> None:
    one = joined(PLUMB, changes)
    kits = [metal("hinge", "hinge"), metal("long", "long", "shaft-1600")]
    rules = bench().rules
    here = place(ready(boat(base=one)).nominal, build(bench(), kits), rules)
    there = place(ready(boat(base=mirrored(one))).nominal, build(bench(), kits), rules)
    centre, port, starboard = (LIES.index(lie) for lie in ("centre", "port", "starboard"))
    assert here.aims[:, [centre, port, starboard]] == pytest.approx(there.aims[:, [centre, starboard, port]], abs=5e-3)
    for k in range(len(kits)):
        for a, b in ((port, starboard), (starboard, port), (centre, centre)):
            if here.aims[k, a] >= 0:
                same = np.abs(here.spots[k, a] * [-1, 1, 1, 1, 1] - there.spots[k, b]).max() <= 1.0
                assert same or here.aims[k, a] == pytest.approx(there.aims[k, b], abs=1e-3)


def spot_of(form: BoatForm, configuration: Configuration, catalogue: Catalogue | None = None) -> NDArray[np.float64]:
    return set_many(ready(form, catalogue), [configuration])[0].spot


def test_another_datum_changes_nothing() -> None:
    """The same profile by heights above water, and by distances below the top edge."""
    rows = [(0, 0), (300, -40), (700, -150), (1000, -290)]
    below = boat(transom={"rake_deg": None, "profile": [{"below_top_mm": b, "aft_mm": a} for b, a in rows]})
    above = boat(transom={"rake_deg": None, "profile": [{"height_mm": 1000 - b, "aft_mm": a} for b, a in rows]})
    upward = boat(
        transom={"rake_deg": None, "profile": [{"height_mm": 1000 - b, "aft_mm": a} for b, a in reversed(rows)]}
    )
    kit = metal("long", "hinge", "shaft-1600")
    assert spot_of(above, kit) == pytest.approx(spot_of(below, kit), abs=1e-6)
    assert spot_of(upward, kit) == pytest.approx(spot_of(below, kit), abs=1e-6)


def test_units_change_nothing() -> None:
    metric = boat(transom={"top_height_mm": 990.6})
    feet = boat(transom={"top_height_mm": "3 ft 3 in"})  # 39 in · 25.4
    assert spot_of(feet, metal()) == pytest.approx(spot_of(metric, metal()), abs=1e-3)


# --- more room never hurts --------------------------------------------------------------------------------


@pytest.mark.parametrize("rule", ["fixed_gap", "main_rudder_gap", "edge_distance", "bracket_spacing_min"])
def test_asking_less_never_turns_a_pass_into_a_miss(rule: str) -> None:
    form = boat(transom={"rake_deg": 8}, obstacles=[FIXED_BOX])
    kits = [metal(lower, upper, shaft) for lower in ("hinge", "long", "strutted") for upper in ("hinge", "riser")
            for shaft in ("shaft-1300", "shaft-1600")]  # fmt: skip
    verdicts = []
    for share in (1.0, 0.8, 0.5):
        catalogue = ruled(bench(), **{rule: bench().rules[rule] * share})
        best = place(ready(form, catalogue).nominal, build(catalogue, kits), catalogue.rules)
        verdicts.append(best.aims.max(axis=1) >= 0)
    assert verdicts[0].any()
    for strict, loose in pairwise(verdicts):
        assert not (strict & ~loose).any()


def test_an_obstacle_further_off_never_hurts() -> None:
    kits = [metal(), metal("long", "hinge"), metal("hinge", "riser")]
    aims = []
    for off in (0, 40, 120, 400):
        form = boat(obstacles=[{**FIXED_BOX, "starboard_mm": [-150 + off, 900]}])
        aims.append(place(ready(form).nominal, build(bench(), kits), bench().rules).aims.max(axis=1))
    for near, far in pairwise(aims):
        assert np.all(far >= near - 0.01)


# --- wishes -----------------------------------------------------------------------------------------------


def offset(preferences: dict[str, Any], **changes: Any) -> tuple[float, str]:  # noqa: ANN401 - JSON is any
    fit = set_many(ready(boat(preferences=preferences, **changes)), [metal()])[0].fit
    assert fit.placement is not None
    return fit.placement.offset_mm, fit.verdict


@pytest.mark.parametrize(("side", "sign"), [("port", -1), ("starboard", 1), ("centre", 0)])
def test_a_side_is_kept_to_must_or_wish(side: str, sign: int) -> None:
    for strength in ("must", "wish", None):
        y, verdict = offset({"side": side, "strength": strength})
        assert np.sign(round(y)) == sign
        assert verdict == "fits"


WALL_TO_PORT: dict[str, Any] = {"kind": "arch", "aft_mm": [-500, 2000], "starboard_mm": [-2000, -20],
                                "height_mm": [-900, 3000]}  # fmt: skip


def test_a_wish_gives_way_and_a_must_does_not() -> None:
    y, verdict = offset({"side": "port", "strength": "wish"}, obstacles=[WALL_TO_PORT])
    assert y > 0
    assert verdict == "fits"
    y, verdict = offset({"side": "port", "strength": "must"}, obstacles=[WALL_TO_PORT])
    assert y < 0
    assert verdict == "does_not_fit"


def test_what_is_to_be_avoided() -> None:
    y, _ = offset({"avoid": ["centre", "port"]})
    assert y > 0
    y, _ = offset({"avoid": ["centre", "port"], "strength": "wish"})
    assert y > 0
    y, verdict = offset({"avoid": ["centre", "starboard"], "strength": "wish"}, obstacles=[WALL_TO_PORT])
    assert y > 0  # nothing else passes
    assert verdict == "fits"
    y, verdict = offset({"avoid": ["centre", "starboard"], "strength": "must"}, obstacles=[WALL_TO_PORT])
    assert y < 0
    assert verdict == "does_not_fit"


def test_the_shaft_stands_between_its_brackets_ends_and_the_blade_in_the_water() -> None:
    for kit in (metal(), metal("long", "hinge"), metal("strutted", "riser", "shaft-1600")):
        fit = set_many(ready(boat(transom={"rake_deg": 10})), [kit])[0].fit
        assert fit.placement is not None
        p = fit.placement
        assert p.shaft_bottom_mm < p.lower_height_mm < p.upper_height_mm < p.shaft_top_mm
        assert p.shaft_top_mm - p.shaft_bottom_mm == pytest.approx(
            1600 if kit.shaft == "shaft-1600" else 1300, abs=0.02
        )
        assert margin(fit, "immersion.rest") <= 0.1 + 1e-9
