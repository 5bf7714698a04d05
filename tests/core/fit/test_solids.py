"""Distances of solids against shapely, with sectors as fine polygons: 300 random pairs of each sort."""

from __future__ import annotations

import math

import numpy as np
import pytest
from shapely import Point, Polygon, box

from service.core.fit.solids import apart, point_rectangle, point_sector, sector_rectangle, sectors

PAIRS = 300
WITHIN = 0.3
"""mm; a polygon's arc of 600 chords stands up to 0.01 mm inside a circle of 1 m."""


def slice_of(x: float, y: float, radius: float, half: float, facing: float) -> Polygon:
    turns = np.linspace(-half, half, 600)
    arc = np.column_stack([x + facing * radius * np.cos(turns), y + radius * np.sin(turns)])
    return Polygon([(x, y), *arc])


def a_slice(rng: np.random.Generator, spread: float) -> tuple[float, float, float, float, float]:
    return (
        float(rng.uniform(-spread, spread)),
        float(rng.uniform(-spread, spread)),
        float(rng.uniform(20, 900)),
        float(rng.uniform(0.02, math.pi / 2 - 0.01)),
        float(rng.choice([-1.0, 1.0])),
    )


def plain(
    x: float, y: float, radius: float, half: float, facing: float
) -> tuple[float, float, float, float, float, float]:
    return x, y, radius, math.cos(half), math.sin(half), facing


def agree(ours: float, theirs: float) -> bool:
    """Say whether both see the same gap, or both none: how deep an overlap goes is each one's own affair."""
    return abs(max(ours, 0.0) - theirs) <= WITHIN


def test_two_sectors() -> None:
    rng, seen = np.random.default_rng(1), {"apart": 0, "meeting": 0}
    for _ in range(PAIRS):
        a, b = a_slice(rng, 900), a_slice(rng, 900)
        theirs = slice_of(*a).distance(slice_of(*b))
        ours = sectors(*plain(*a), *plain(*b))
        assert sectors(*plain(*b), *plain(*a)) == pytest.approx(ours, abs=1e-9)
        if theirs > 0:
            assert agree(ours, theirs), (a, b, ours, theirs)
        seen["apart" if theirs > 0 else "meeting"] += 1
    assert min(seen.values()) > 30


def test_sectors_that_meet_are_never_called_apart() -> None:
    """The distance is floored where boundaries cross or one lies in the other: at most a sliver may be missed."""
    rng = np.random.default_rng(2)
    missed = []
    for _ in range(PAIRS):
        a, b = a_slice(rng, 400), a_slice(rng, 400)
        one, other = slice_of(*a), slice_of(*b)
        if one.intersection(other).area > 1.0:
            ours = sectors(*plain(*a), *plain(*b))
            if ours > WITHIN:
                missed.append((a, b, ours))
    assert missed == []


def test_sector_and_rectangle() -> None:
    rng = np.random.default_rng(3)
    missed = []
    for _ in range(PAIRS):
        a = a_slice(rng, 900)
        x0, y0 = (float(v) for v in rng.uniform(-900, 700, 2))
        x1, y1 = x0 + float(rng.uniform(1, 700)), y0 + float(rng.uniform(1, 700))
        theirs = slice_of(*a).distance(box(x0, y0, x1, y1))
        ours = sector_rectangle(*plain(*a), x0, x1, y0, y1)
        if not agree(ours, theirs):
            missed.append((a, (x0, x1, y0, y1), ours, theirs))
    assert missed == []


def test_a_rectangle_with_open_ends() -> None:
    """Open ends as a very large rectangle."""
    rng = np.random.default_rng(4)
    far = 1e6
    for _ in range(100):
        a = a_slice(rng, 900)
        ends = [float(v) for v in rng.uniform(-900, 900, 2)]
        x0, x1 = (ends[0], math.inf) if rng.random() < 0.5 else (-math.inf, ends[0])
        y0, y1 = (ends[1], math.inf) if rng.random() < 0.5 else (-math.inf, math.inf)
        theirs = slice_of(*a).distance(box(max(x0, -far), max(y0, -far), min(x1, far), min(y1, far)))
        assert agree(sector_rectangle(*plain(*a), x0, x1, y0, y1), theirs)


def test_point_and_sector() -> None:
    rng = np.random.default_rng(5)
    for _ in range(PAIRS):
        a = a_slice(rng, 900)
        x, y = (float(v) for v in rng.uniform(-1500, 1500, 2))
        assert agree(point_sector(x, y, *plain(*a)), slice_of(*a).distance(Point(x, y)))


def test_point_and_rectangle() -> None:
    rng = np.random.default_rng(6)
    for _ in range(PAIRS):
        x0, y0 = (float(v) for v in rng.uniform(-900, 700, 2))
        x1, y1 = x0 + float(rng.uniform(1, 700)), y0 + float(rng.uniform(1, 700))
        x, y = (float(v) for v in rng.uniform(-1500, 1500, 2))
        assert agree(point_rectangle(x, y, x0, x1, y0, y1), box(x0, y0, x1, y1).distance(Point(x, y)))
    assert point_rectangle(10.0, 5.0, 0.0, 100.0, 0.0, 40.0) == pytest.approx(-5)  # inside, 5 from the nearest side


@pytest.mark.parametrize(
    ("plan", "height", "both"), [(3, 4, 5), (-3, 4, 4), (3, -4, 3), (-3, -4, -3), (0, 0, 0), (math.inf, -1, math.inf)]
)
def test_upright_solids_are_apart_in_plan_and_height(plan: float, height: float, both: float) -> None:
    assert apart(float(plan), float(height)) == pytest.approx(both)
