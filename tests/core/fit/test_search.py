"""What the search leaves out changes no result: aims given up early, and checks that a collar does not move."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray

from service.core.catalogue import Configuration
from service.core.fit.bits import NEAR
from service.core.fit.boats import Boats
from service.core.fit.checks import check, check_metal, scales
from service.core.fit.engine import judged, set_many
from service.core.fit.kit import Kit, build
from service.core.fit.search import aim_at, aim_beating
from service.core.fit.terms import FIXED, terms
from tests.core.fit.test_place import CASES, FIXED_BOX
from tests.support.boats import boat, demo, ready

Array = NDArray[np.float64]
CUTS = {
    "transom": {
        "rake_deg": None,
        "sections": [
            {"height_mm": 1000, "points": [{"half_breadth_mm": h, "aft_mm": -h * h / 9000} for h in (0, 500, 1000)]},
            {
                "height_mm": 500,
                "points": [{"half_breadth_mm": h, "aft_mm": -120 - h * h / 9000} for h in (0, 450, 900)],
            },
            {"height_mm": 0, "points": [{"half_breadth_mm": h, "aft_mm": -260 - h * h / 9000} for h in (0, 400, 800)]},
        ],
    },
    "obstacles": [FIXED_BOX],
}
EVERY = [*CASES, ("level cuts", CUTS, ("gear-720", "strut-600-860", "hinge-150-290", "shaft-1350"))]


def case_of(changes: dict[str, Any], codes: tuple[str, str, str, str]) -> tuple[Boats, Kit]:
    boats = ready(boat(**changes), demo())
    kit = build(boats.catalogue, [demo_configuration(codes)])
    return boats, kit


def demo_configuration(codes: tuple[str, str, str, str]) -> Configuration:

    return Configuration(gear=codes[0], lower=codes[1], upper=codes[2], shaft=codes[3])


def spots(seed: int, count: int = 60) -> Array:
    """Return placements all over a stern, pads at nought."""
    dice = np.random.default_rng(seed)
    low, high = np.array([-600.0, 50, 100, 400, -400]), np.array([600.0, 900, 700, 1100, 300])
    return np.hstack([dice.uniform(low, high, (count, 5)), np.zeros((count, 2))])


@pytest.mark.parametrize(("name", "changes", "codes"), EVERY, ids=[c[0] for c in EVERY])
def test_an_aim_is_given_up_only_where_it_stays_below(
    name: str, changes: dict[str, Any], codes: tuple[str, str, str, str]
) -> None:
    (boats, kit), dice = case_of(changes, codes), np.random.default_rng(len(name))
    t, count = terms(boats.catalogue.rules), FIXED + boats.nominal.binds.size
    scale, out = scales(t, count), np.empty((count, 3))
    given_up = 0
    for at in spots(11):
        whole = float(aim_at(boats.nominal, 0, kit, 0, t, scale, at, out))
        for beat in (whole, whole - 1e-12, float(whole + dice.exponential(3.0)), -np.inf):
            got = float(aim_beating(boats.nominal, 0, kit, 0, t, scale, at, beat, out))
            if got == -np.inf:
                assert whole < beat
                given_up += 1
            else:
                assert got == whole
    assert given_up > 20


@pytest.mark.parametrize(("name", "changes", "codes"), EVERY, ids=[c[0] for c in EVERY])
def test_a_collar_moves_nothing_beyond_its_own_checks(
    name: str, changes: dict[str, Any], codes: tuple[str, str, str, str]
) -> None:
    boats, kit = case_of(changes, codes)
    t, count = terms(boats.catalogue.rules), FIXED + boats.nominal.binds.size
    moved, whole = np.empty((count, 3)), np.empty((count, 3))
    for n, (y, x, lower, upper, bottom, *_) in enumerate(spots(12, 20)):
        there = (lower + 30.0, upper) if n % 2 else (lower, upper - 30.0)
        check(boats.nominal, 0, kit, 0, t, y, x, lower, upper, bottom, NEAR, moved)
        low, up = check(boats.nominal, 0, kit, 0, t, y, x, *there, bottom, NEAR, whole)
        check_metal(boats.nominal, 0, kit, 0, t, y, x, *there, bottom, low, up, NEAR, moved)
        np.testing.assert_array_equal(moved, whole, err_msg=name)


@pytest.mark.parametrize(("name", "changes", "codes"), EVERY, ids=[c[0] for c in EVERY])
def test_judging_says_what_the_whole_fit_says(
    name: str, changes: dict[str, Any], codes: tuple[str, str, str, str]
) -> None:
    boats, _ = case_of(changes, codes)
    one = demo_configuration(codes)
    fit, short = set_many(boats, [one])[0].fit, judged(boats, one)
    assert (short.verdict, short.smallest_margin, short.why) == (fit.verdict, fit.smallest_margin, fit.why), name
    assert {c.id for c in fit.checks if c.binds}
