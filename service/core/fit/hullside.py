"""How far an upright cylinder stands from the hull: skin, deck, and what is under the bottom edge.

At each height z the hull's level cut is x <= X(y, z). With the plan distance D(z) of the cylinder's axis from that
cut, the clearance is the least over z of the plan gap D(z) - radius joined with how far z is above or below the
cylinder: exact for a cambered skin, at any rake. Nothing is known of the hull beyond its sides; it is taken to be as
broad at every height as at its broadest, which never makes it narrower than it is.
"""

from __future__ import annotations

import math
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled, inlined
from service.core.fit import pchip
from service.core.fit.bits import INF, interval_gap
from service.core.fit.site import SECTIONS, Flag, S, Site, W
from service.core.fit.solids import apart, point_segment

Array = NDArray[np.float64]
Parts = tuple[tuple[float, float, float], ...]
TURNS = 12


class Piece(NamedTuple):
    """One piece of the centreline as plain numbers: where it starts, how high it is, x and dX/dz at both ends."""

    low: float
    width: float
    x_low: float
    x_high: float
    slope_low: float
    slope_high: float


@inlined
def hull(site: Site, i: int, x: float, y: float, parts: Parts, near: float, out: Array, first: int) -> None:
    """Write the distances (mm) of upright cylinders about (x, y) from the hull into the values of `out` from row `first`.

    A part is its radius (or how far a blade sweeps), lower and upper end. Negative where it would have to go aft by so
    much. Beyond `near` a lower bound serves.
    """
    if site.flags[Flag.CURVE] == SECTIONS:
        _from_cuts(site, i, x, y, parts, near, out, first)
    else:
        _from_wall(site.values, site.wall, i, x, abs(y), parts, near, out, first)


@compiled
def _from_wall(
    values: Array, wall: Array, i: int, x: float, across: float, parts: Parts, near: float, out: Array, first: int
) -> None:
    """Write the same where the skin is a centreline with a camber: one walk up its pieces for all parts."""
    top, bottom, half = values[i, S.TOP], values[i, S.BOTTOM], values[i, S.HALF_TOP]
    bend, broad = values[i, S.CAMBER] / (half * half), max(half, values[i, S.HALF_WATER])
    ahead = INF
    for n in range(wall.shape[1]):
        ahead = min(ahead, x - max(wall[i, n, W.X_LOW], wall[i, n, W.X_HIGH]))
    ahead -= max(-bend, 0.0) * broad * broad
    under = INF
    for n in range(wall.shape[1]):
        a, b = max(wall[i, n, W.LOW], bottom), min(wall[i, n, W.HIGH], top)
        if b <= a:
            continue
        piece = Piece(
            wall[i, n, W.LOW], wall[i, n, W.HIGH] - wall[i, n, W.LOW], wall[i, n, W.X_LOW], wall[i, n, W.X_HIGH],
            wall[i, n, W.SLOPE_LOW], wall[i, n, W.SLOPE_HIGH],
        )  # fmt: skip
        at_a, at_b = _plan(piece, x, across, a, bend, broad)[0], _plan(piece, x, across, b, bend, broad)[0]
        if under == INF:  # under the bottom edge the hull reaches as far aft as there
            under = at_a
            for m in range(len(parts)):
                radius, low, _ = parts[m]
                out[first + m, 0] = apart(at_a - radius, low - a) if low > a else at_a - radius
        for m in range(len(parts)):
            radius, low, high = parts[m]
            if low - top > near:
                out[first + m, 0] = low - top
            elif ahead - radius > near:
                out[first + m, 0] = ahead - radius
            else:
                least = _piece_gap(
                    piece, x, across, a, b, at_a, at_b, radius, low, high, bend, broad, out[first + m, 0]
                )
                out[first + m, 0] = min(out[first + m, 0], least)


@compiled
def _piece_gap(
    piece: Piece, x: float, across: float, a: float, b: float, at_a: float, at_b: float,
    radius: float, low: float, high: float, bend: float, broad: float, best: float,
) -> float:  # fmt: skip
    """Return the distance of a cylinder from the skin between two heights of one piece, `best` where that is less."""
    first, last = max(a, low), min(b, high)
    if first <= last:
        best = min(best, (at_a if first == a else _plan(piece, x, across, first, bend, broad)[0]) - radius)
        best = min(best, (at_b if last == b else _plan(piece, x, across, last, bend, broad)[0]) - radius)
    least = min(at_a, at_b) - radius
    if b > high and apart(least, max(a - high, 0.0)) < best:
        best = min(best, _nearest(piece, x, across, radius, high, max(a, high), b, bend, broad))
    if a < low and apart(least, max(low - b, 0.0)) < best:
        best = min(best, _nearest(piece, x, across, radius, low, a, min(b, low), bend, broad))
    return best


@compiled
def _plan(piece: Piece, x: float, across: float, z: float, bend: float, broad: float) -> tuple[float, float]:
    """Return the plan distance of the axis from the level cut at z, and how it changes with z."""
    crown, rake = pchip.piece(
        piece.x_low, piece.x_high, piece.slope_low, piece.slope_high, piece.width, (z - piece.low) / piece.width
    )
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
    piece: Piece, x: float, across: float, radius: float, level: float, first: float, last: float,
    bend: float, broad: float,
) -> float:  # fmt: skip
    """Return the distance of the rim at height `level` from the skin between two heights.

    Each turn lays a straight line through the plan gap where it stands and steps to that line's nearest point.
    """
    best, z = INF, last if abs(last - level) < abs(first - level) else first
    for _ in range(TURNS):
        distance, slope = _plan(piece, x, across, z, bend, broad)
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
def _from_cuts(site: Site, i: int, x: float, y: float, parts: Parts, near: float, out: Array, first: int) -> None:
    """Write the same where the skin is a table of level cuts."""
    shift, plans, aftmost = site.dense_shift[i], np.full(site.dense_below.size, np.nan), -INF
    for n in range(plans.size):
        aftmost = max(aftmost, site.dense_aft[n] + shift[n])
    for m in range(len(parts)):
        radius, low, high = parts[m]
        ahead = x - radius - aftmost
        out[first + m, 0] = ahead if ahead > near else _from_table(site, i, x, y, radius, low, high, plans)


@compiled
def _from_table(site: Site, i: int, x: float, y: float, radius: float, low: float, high: float, plans: Array) -> float:
    """Return the distance of one part from the table of dense level cuts: straight stretches in half-breadth and in height.

    `plans` (L,) keeps the plan distances of the axis from the cuts, the same for every part, as they are worked out.
    """
    top, bottom = site.values[i, S.TOP], site.values[i, S.BOTTOM]
    shift = site.dense_shift[i]
    across, last = abs(y), site.dense_below.size - 1
    n = last
    while n > 0 and top - site.dense_below[n - 1] <= bottom:
        n -= 1
    under_z = max(top - site.dense_below[n], bottom)
    under = _kept(site, n, x - shift[n], across, plans) - radius
    if n > 0 and top - site.dense_below[n] < bottom:  # the bottom edge lies between two cuts
        share = (bottom - top + site.dense_below[n]) / (site.dense_below[n] - site.dense_below[n - 1])
        under += share * (_kept(site, n - 1, x - shift[n - 1], across, plans) - radius - under)
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
        ahead = x - radius - max(site.dense_aft[above] + shift[above], site.dense_aft[m] + shift[m])
        if apart(ahead, interval_gap(under_z, z, low, high)) < best:
            if m != n:
                under = _kept(site, m, x - shift[m], across, plans) - radius
            plan = _kept(site, above, x - shift[above], across, plans) - radius
            best = min(best, _stretch(under, under_z, plan, z, low, high))
        m, under_z = above, z
    if under_z < top and apart(x - radius - site.dense_aft[0] - shift[0], interval_gap(under_z, top, low, high)) < best:
        under = _kept(site, 0, x - shift[0], across, plans) - radius
        best = min(best, _stretch(under, under_z, under, top, low, high))
    return best


@compiled
def _kept(site: Site, n: int, x: float, across: float, plans: Array) -> float:
    """Return the plan distance from one dense level cut, worked out once."""
    if math.isnan(plans[n]):
        plans[n] = _to_cut(site, n, x, across)
    return plans[n]


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
