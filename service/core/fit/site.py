"""The boat as arrays, one entry a row (nominal, star point or draw), and its skin x = X(y, z)."""

from __future__ import annotations

from enum import IntEnum
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled, inlined
from service.core.fit import pchip

Array = NDArray[np.float64]
Index = NDArray[np.intp]
RAKED, SECTIONS = 0, 1
"""How the skin is known: by a centreline (one rake, a step, a profile) and a camber, or by level cuts."""
ASIDE = 1e-3
"""Step in half-breadth by which a plan angle is taken (mm)."""


class S(IntEnum):
    """Columns of a site's values: heights above water, x and y in the frame of the boat form; slopes as tangents."""

    TOP = 0
    BOTTOM = 1
    RAKE = 2
    HALF_TOP = 3
    HALF_WATER = 4
    CAMBER = 5
    STEP_HEIGHT = 6
    STEP_DEPTH = 7
    HALF_STEP = 8
    LOWER_RAKE = 9
    POST = 10
    HUNG_OUTSIDE = 11
    STOCK = 12
    LEADING = 13
    TRAILING = 14
    RUDDER_TOP = 15
    RUDDER_BOTTOM = 16
    RUDDER_COS = 17
    """Cosine and sine of how far the main rudder turns each way."""
    RUDDER_SIN = 18
    RUDDER_OFFSET = 19
    DISPLACEMENT = 20


class W(IntEnum):
    """Columns of one piece of the centreline: heights of its ends, x there, and dX/dz there."""

    LOW = 0
    HIGH = 1
    X_LOW = 2
    X_HIGH = 3
    SLOPE_LOW = 4
    SLOPE_HIGH = 5


class Flag(IntEnum):
    """Places in a site's flags."""

    STEPPED = 0
    POST_ONLY = 1
    """The sternpost is the only known seat: a double-ended stern without level cuts."""
    CURVE = 2


class Site(NamedTuple):
    """What the checks need of a boat, few arrays so that compiled code passes them on cheaply.

    `values` (N, columns of S). `boxes` (N, M, 12): x, y, z of each obstacle box, low end before high, where it stands and
    then where a moving one ends; `box_info` (M, 3): obstacle it belongs to, whether it moves, 1 for moving_gap;
    `binds` (obstacles): 0 for what may be taken off, a trade and never a refusal. Level cuts: `below` (K,) distance
    below the top edge, `half` (H,) half-breadths, `aft` (1, K, H) and their slopes; `ends` (K,) how far out each was
    measured; `shift` (N, K) how much further aft each stands in a row. `dense` (L, D) is the same skin at many
    distances below the top edge `dense_below` and half-breadths `dense_half`, close enough for straight stretches
    between; `dense_aft` (L,) is the aftmost x of each, `dense_cut` (L,) 1 where one was measured, `dense_shift` (N, L)
    its shift. Without level cuts `wall` (N, P, columns of W) is the centreline in pieces from low to high, each a cubic
    between its ends; the whole skin is in it, and the camber.
    """

    values: Array
    wall: Array
    boxes: Array
    box_info: Index
    binds: Index
    flags: Index
    below: Array
    half: Array
    aft: Array
    slope_across: Array
    ends: Array
    dense: Array
    dense_below: Array
    dense_half: Array
    dense_aft: Array
    dense_cut: Index
    shift: Array
    dense_shift: Array


@inlined
def skin(site: Site, i: int, y: float, z: float) -> tuple[float, float, float]:
    """Return x of the skin at (y, z) and the tangents of local rake dX/dz and plan angle dX/dy.

    From sections where there are any, else a profile, else one rake: X = Xc(z) - c (2y/W)², Xc = (z - top) tan r
    (FIT, exact meanings). z is held between bottom and top edge: below the bottom the hull reaches as far aft.
    """
    if site.flags[Flag.CURVE] == SECTIONS:
        top = site.values[i, S.TOP]
        return _from_sections(site, i, y, top - min(max(z, min(site.values[i, S.BOTTOM], top)), top))
    return from_wall(site.values, site.wall, i, y, z)


@inlined
def aft_of_skin(site: Site, i: int, y: float, z: float) -> float:
    """Return x of the skin at (y, z) alone, as `skin` does."""
    if site.flags[Flag.CURVE] == SECTIONS:
        top = site.values[i, S.TOP]
        return _x_from_sections(site, i, y, top - min(max(z, min(site.values[i, S.BOTTOM], top)), top))
    return from_wall(site.values, site.wall, i, y, z)[0]


@compiled
def from_wall(values: Array, wall: Array, i: int, y: float, z: float) -> tuple[float, float, float]:
    """Return the same where the skin is a centreline with a camber; few arguments, for it is asked most of all."""
    top = values[i, S.TOP]
    z = min(max(z, min(values[i, S.BOTTOM], top)), top)
    n = wall.shape[1] - 1
    while n > 0 and z < wall[i, n, W.LOW]:
        n -= 1
    centre, rake = on_piece(wall, i, n, z)
    width = 2.0 * values[i, S.HALF_TOP]
    return centre - values[i, S.CAMBER] * (2.0 * y / width) ** 2, rake, -8.0 * values[i, S.CAMBER] * y / width**2


@compiled
def on_piece(wall: Array, i: int, n: int, z: float) -> tuple[float, float]:
    """Return x of the centreline at height z, which lies on its n-th piece, and dX/dz."""
    low, high = wall[i, n, W.LOW], wall[i, n, W.HIGH]
    return pchip.piece(
        wall[i, n, W.X_LOW], wall[i, n, W.X_HIGH], wall[i, n, W.SLOPE_LOW], wall[i, n, W.SLOPE_HIGH], high - low,
        (z - low) / (high - low),
    )  # fmt: skip


@compiled
def _from_sections(site: Site, i: int, y: float, down: float) -> tuple[float, float, float]:
    """Interpolate along each level cut in half-breadth, then between the cuts in height; the plan angle by a small step."""
    x, fall = _between_cuts(site, 0, abs(y), down)
    beside, _ = _between_cuts(site, 0, abs(y) + ASIDE, down)
    plan = (beside - x) / ASIDE
    further, more = _straight(site.below, site.shift[i], down)
    return x + further, -(fall + more), plan if y >= 0.0 else -plan


@compiled
def _x_from_sections(site: Site, i: int, y: float, down: float) -> float:
    return _between_cuts(site, 0, abs(y), down)[0] + _straight(site.below, site.shift[i], down)[0]


@compiled
def _straight(at: Array, value: Array, query: float) -> tuple[float, float]:
    """Return value and derivative of straight stretches between knots, held beyond them."""
    last = at.size - 1
    if last == 0 or query <= at[0]:
        return value[0], 0.0
    for k in range(last):
        if query <= at[k + 1]:
            slope = (value[k + 1] - value[k]) / (at[k + 1] - at[k])
            return value[k] + slope * (query - at[k]), slope
    return value[last], 0.0


@compiled
def _between_cuts(site: Site, row: int, across: float, down: float) -> tuple[float, float]:
    """Return x and how it changes with the distance below the top edge: only the cuts nearby bear on it."""
    levels, at = site.below.size, site.below
    down = min(max(down, at[0]), at[levels - 1])
    k = 0
    while k < levels - 2 and down >= at[k + 1]:
        k += 1
    start, end = _cut(site, row, k, across), _cut(site, row, k + 1, across)
    width = at[k + 1] - at[k]
    own = (end - start) / width
    first, last = own, own
    if levels > 2:  # noqa: PLR2004 - two cuts make straight lines
        before, after, above, below = 0.0, 0.0, 0.0, 0.0
        if k > 0:
            before = at[k] - at[k - 1]
            above = (start - _cut(site, row, k - 1, across)) / before
        if k < levels - 2:
            after = at[k + 2] - at[k + 1]
            below = (_cut(site, row, k + 2, across) - end) / after
        first = pchip.inner_slope(before, width, above, own) if k > 0 else pchip.end_slope(width, after, own, below)
        last = (
            pchip.inner_slope(width, after, own, below)
            if k < levels - 2
            else pchip.end_slope(width, before, own, above)
        )
    return pchip.piece(start, end, first, last, width, (down - at[k]) / width)


@compiled
def _cut(site: Site, row: int, k: int, across: float) -> float:
    x, _ = pchip.value(site.half, site.aft[row, k], site.slope_across[row, k], across)
    return x


@inlined
def half_breadth(site: Site, i: int, z: float) -> float:
    """Return the skin's half-breadth at height z: linear from the waterline's to the top's, never negative.

    Where level cuts were taken, no further than they were: between them straight.
    """
    half = _straight_half(site.values, i, z)
    if site.flags[Flag.POST_ONLY]:
        half = site.values[i, S.POST] / 2.0
    elif site.flags[Flag.CURVE] == SECTIONS:
        half = min(half, _measured_out_to(site.below, site.ends, site.values[i, S.TOP] - z))
    return max(half, 0.0)


@compiled
def _straight_half(values: Array, i: int, z: float) -> float:
    rise = values[i, S.HALF_TOP] - values[i, S.HALF_WATER]
    return values[i, S.HALF_WATER] + rise * z / max(values[i, S.TOP], 1.0)


@compiled
def _measured_out_to(below: Array, ends: Array, down: float) -> float:
    """Return how far out the level cuts were measured at a distance below the top edge."""
    return _straight(below, ends, down)[0]
