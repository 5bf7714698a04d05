"""How far an upright cylinder stands from the hull: skin, deck, and what is under the bottom edge.

At each height z the hull's level cut is x <= X(y, z). With the plan distance D(z) of the cylinder's axis from that
cut, the clearance is the least over z of the plan gap D(z) - radius joined with how far z is above or below the
cylinder: exact for a cambered skin, at any rake. Nothing is known of the hull beyond its sides; it is taken to be as
broad at every height as at its broadest, which never makes it narrower than it is.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from service.core.fit.bits import INF, interval_gap
from service.core.fit.compiled import compiled
from service.core.fit.site import SECTIONS, Flag, S, Site, skin
from service.core.fit.solids import apart, point_segment

Array = NDArray[np.float64]
BELOW_STEP = 1e-6
"""The skin under a scoop's step ends this far below it (mm)."""
TURNS = 12


@compiled
def hull(site: Site, i: int, x: float, y: float, radius: float, low: float, high: float, near: float) -> float:  # noqa: C901 - one walk up the skin
    """Return the distance (mm) of an upright cylinder (or what a blade sweeps) about (x, y) from the hull.

    Negative where it would have to go aft by so much. Beyond `near` a lower bound serves.
    """
    top, bottom = site.values[i, S.TOP], site.values[i, S.BOTTOM]
    if low - top > near:
        return low - top
    if site.flags[Flag.CURVE] == SECTIONS:
        return _from_table(site, i, x, y, radius, low, high, near)
    stepped = site.flags[Flag.STEPPED] != 0
    knots = site.below.size
    aftmost = -INF
    for n in range(knots + 2):
        aftmost = max(aftmost, skin(site, i, 0.0, _level(site, i, n, knots, stepped))[0])
    if stepped:
        aftmost = max(aftmost, skin(site, i, 0.0, site.values[i, S.STEP_HEIGHT] - BELOW_STEP)[0])
    bend = 4.0 * site.values[i, S.CAMBER] / (2.0 * site.values[i, S.HALF_TOP]) ** 2
    broad = max(site.values[i, S.HALF_TOP], site.values[i, S.HALF_WATER])
    if x - radius - aftmost - max(-bend, 0.0) * broad * broad > near:
        return x - radius - aftmost - max(-bend, 0.0) * broad * broad
    across = abs(y)
    a = bottom
    plan_a, _ = _plan(site, i, x, across, a, bend, broad)
    best = apart(plan_a - radius, low - a) if low > a else plan_a - radius
    for n in range(1, knots + 2):
        b = _level(site, i, n, knots, stepped)
        if b <= a:
            continue
        under = stepped and n == 1
        end = b - BELOW_STEP if under else b
        plan_b, _ = _plan(site, i, x, across, end, bend, broad)
        if max(a, low) <= min(end, high):
            best = min(best, _plan(site, i, x, across, max(a, low), bend, broad)[0] - radius)
            best = min(best, _plan(site, i, x, across, min(end, high), bend, broad)[0] - radius)
        least = min(plan_a, plan_b) - radius
        if end > high and apart(least, max(a - high, 0.0)) < best:
            best = min(best, _nearest(site, i, x, across, radius, high, max(a, high), end, bend, broad))
        if a < low and apart(least, max(low - end, 0.0)) < best:
            best = min(best, _nearest(site, i, x, across, radius, low, a, min(end, low), bend, broad))
        a, plan_a = b, plan_b
        if under:
            plan_a, _ = _plan(site, i, x, across, a, bend, broad)
    return best


@compiled
def _level(site: Site, i: int, n: int, knots: int, stepped: bool) -> float:  # noqa: FBT001 - compiled code takes no keywords
    """Return the n-th height at which the skin may turn, from bottom to top."""
    top, bottom = site.values[i, S.TOP], site.values[i, S.BOTTOM]
    if n == 0:
        return bottom
    if n == knots + 1:
        return top
    if stepped:
        return min(max(site.values[i, S.STEP_HEIGHT], bottom), top)
    return min(max(top - site.below[knots - n], bottom), top)


@compiled
def _plan(site: Site, i: int, x: float, across: float, z: float, bend: float, broad: float) -> tuple[float, float]:
    """Return the plan distance of the axis from the level cut at z, and how it changes with z."""
    crown, rake, _ = skin(site, i, 0.0, z)
    distance, aft = to_arch(x - crown, across, bend, broad)
    return distance, -aft * rake


@compiled
def to_arch(u: float, v: float, bend: float, broad: float) -> tuple[float, float]:
    """Return the distance of a point from the region u <= -bend v², |v| <= broad, and how it changes with u.

    v >= 0. Inside it is negative, by how far aft the edge is. The nearest place of the edge solves a cubic, which
    Newton's rule climbs down from a side where it bends up.
    """
    if v <= broad and u <= -bend * v * v:
        return u + bend * v * v, 1.0
    at = v
    if bend != 0.0:
        if bend < 0.0:
            at = broad
        for _ in range(TURNS):
            wrong = 2.0 * bend * bend * at**3 + (1.0 + 2.0 * bend * u) * at - v
            slope = 6.0 * bend * bend * at * at + 1.0 + 2.0 * bend * u
            if slope <= 0.0 or (bend < 0.0 and at == broad and wrong < 0.0):
                break
            step = wrong / slope
            at -= step
            if abs(step) < 1e-3:  # noqa: PLR2004 - mm along the edge, where the distance is level
                break
    at = min(max(at, 0.0), broad)
    fore, aside = max(u + bend * at * at, 0.0), v - at
    distance = math.hypot(fore, aside)
    return distance, fore / distance if distance > 0.0 else 1.0


@compiled
def _nearest(
    site: Site, i: int, x: float, across: float, radius: float, level: float, first: float, last: float,
    bend: float, broad: float,
) -> float:  # fmt: skip
    """Return the distance of the rim at height `level` from the skin between two heights.

    Each turn lays a straight line through the plan gap where it stands and steps to that line's nearest point.
    """
    best, z = INF, last if abs(last - level) < abs(first - level) else first
    for _ in range(TURNS):
        distance, slope = _plan(site, i, x, across, z, bend, broad)
        gap = distance - radius
        best = min(best, apart(gap, abs(z - level)))
        if gap <= 0.0:
            break
        moved = min(max((level - slope * (gap - slope * z)) / (1.0 + slope * slope), first), last)
        if abs(moved - z) < 1e-2:  # noqa: PLR2004 - mm along the skin, where the distance is level
            break
        z = moved
    return best


# --- level cuts: the skin between them as straight stretches, drawn densely when the site is made ----------


@compiled
def _from_table(site: Site, i: int, x: float, y: float, radius: float, low: float, high: float, near: float) -> float:
    """Return the same from the table of dense level cuts: straight stretches in half-breadth and in height."""
    top, bottom = site.values[i, S.TOP], site.values[i, S.BOTTOM]
    aftmost = site.dense_aft.max()
    if x - radius - aftmost > near:
        return x - radius - aftmost
    across, last = abs(y), site.dense_below.size - 1
    n = last
    while n > 0 and top - site.dense_below[n - 1] <= bottom:
        n -= 1
    under_z = max(top - site.dense_below[n], bottom)
    under = _to_cut(site, n, x, across) - radius
    if n > 0 and top - site.dense_below[n] < bottom:  # the bottom edge lies between two cuts
        share = (bottom - top + site.dense_below[n]) / (site.dense_below[n] - site.dense_below[n - 1])
        under += share * (_to_cut(site, n - 1, x, across) - radius - under)
    # under the bottom edge the hull reaches as far aft as there, and so it does under the lowest cut
    best = apart(under, low - under_z) if low > under_z else under
    m = n
    while m > 0:
        above = m - 1  # beside the cylinder only what was measured counts: between, the skin reaches no further aft
        while (
            above > 0 and not site.dense_cut[above] and low < top - site.dense_below[above - 1] < high and low < under_z
        ):
            above -= 1
        z = top - site.dense_below[above]
        ahead = x - radius - max(site.dense_aft[above], site.dense_aft[m])
        if apart(ahead, interval_gap(under_z, z, low, high)) < best:
            if m != n:
                under = _to_cut(site, m, x, across) - radius
            plan = _to_cut(site, above, x, across) - radius
            best = min(best, _stretch(under, under_z, plan, z, low, high))
        m, under_z = above, z
    if under_z < top and apart(x - radius - site.dense_aft[0], interval_gap(under_z, top, low, high)) < best:
        under = _to_cut(site, 0, x, across) - radius
        best = min(best, _stretch(under, under_z, under, top, low, high))
    return best


@compiled
def _to_cut(site: Site, n: int, x: float, across: float) -> float:  # noqa: C901 - three walks along one line
    """Return the plan distance from one dense level cut, both halves of it; negative inside.

    From the place abreast outwards to both sides, as long as something nearer can be there.
    """
    row, half = site.dense[n], site.dense_half
    last = half.size - 1
    start = 0
    while start < last - 1 and half[start + 1] < across:
        start += 1
    best = INF
    if half[0] <= across <= half[last]:
        edge = row[start] + (row[start + 1] - row[start]) * (across - half[start]) / (half[start + 1] - half[start])
        if x <= edge:
            return x - edge
        best = x - edge
    elif across < half[0]:
        if x <= row[0]:
            return x - row[0]
        best = x - row[0]
    for k in range(start, last):
        if half[k] - across > best:
            break
        best = min(best, point_segment(x, across, row[k], half[k], row[k + 1], half[k + 1])[0])
    for k in range(start - 1, -1, -1):
        if across - half[k + 1] > best:
            break
        best = min(best, point_segment(x, across, row[k], half[k], row[k + 1], half[k + 1])[0])
    for k in range(last):
        if across + half[k] > best:
            break
        best = min(best, point_segment(x, across, row[k], -half[k], row[k + 1], -half[k + 1])[0])
    return best


@compiled
def _stretch(gap_a: float, a: float, gap_b: float, b: float, low: float, high: float) -> float:
    """Return how far an upright edge low..high at plan gap zero is from a straight stretch of (gap, height)."""
    best = INF
    for z in (max(a, low), min(b, high)):
        if max(a, low) <= min(b, high):
            best = min(best, gap_a + (gap_b - gap_a) * (z - a) / (b - a))
    if a < low:
        best = min(best, _rim(gap_a, a, gap_b, b, low))
    if b > high:
        best = min(best, _rim(gap_a, a, gap_b, b, high))
    return best


@compiled
def _rim(gap_a: float, a: float, gap_b: float, b: float, level: float) -> float:
    if min(gap_a, gap_b) <= 0.0:  # the skin passes under or over the rim: only height is left
        best = INF
        for gap, z in ((gap_a, a), (gap_b, b)):
            best = min(best, apart(gap, abs(z - level)))
        if gap_a * gap_b < 0.0:
            best = min(best, abs(a + (b - a) * gap_a / (gap_a - gap_b) - level))
        return best
    distance, _, _ = point_segment(0.0, level, gap_a, a, gap_b, b)
    return distance
