"""A search of all places at once, for a configuration that passes from none of the usual starts: differential evolution.

Misses have many hilltops, each with a small foot, so climbing from a few starts seldom reaches the highest. A population
of placements spread over all that a lie allows is crossed until it agrees (R. Storn and K. Price, J. Global Optimization
11 (1997) 341: best/1/bin with dithered weight). Offsets count outwards, so that a mirrored boat is searched the mirrored way.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled
from service.core.fit.kit import STEP, G, Kit, M
from service.core.fit.search import aim_beating
from service.core.fit.site import Flag, S, Site, skin
from service.core.fit.starts import collar_range, offset_range
from service.core.fit.terms import T, Terms

Array = NDArray[np.float64]
MANY, GENERATIONS, AGREED = 75, 100, 0.004
"""Placements in the population, crossings at most, and how near the aims of all come before it stops."""
CROSSED, LEAST_WEIGHT, MOST_WEIGHT = 0.7, 0.5, 1.0
SEED = 20
DEEPER = 300.0
"""How far below its allowed depth a blade is tried (mm)."""


@compiled
def evolved(site: Site, kit: Kit, k: int, t: Terms, scale: Array, side: float, out: Array) -> Array:
    """Return the best placement (7,) found of one lie, pads left at nought. The same every time."""
    low, high = _bounds(site, kit, k, t, side)
    np.random.seed(SEED)  # noqa: NPY002 - the generator that compiled code has; its state is this thread's own
    own, aims, at, tried = _spread(low, high), np.empty(MANY), np.zeros(7), np.empty(5)
    for n in range(MANY):
        aims[n] = _aim(site, kit, k, t, scale, side, own[n], -math.inf, at, out)
    for _ in range(GENERATIONS):
        weight = LEAST_WEIGHT + (MOST_WEIGHT - LEAST_WEIGHT) * np.random.random()  # noqa: NPY002 - the same
        best = int(np.argmax(aims))
        for n in range(MANY):
            _cross(own, n, best, weight, low, high, tried)
            got = _aim(site, kit, k, t, scale, side, tried, aims[n], at, out)
            if got >= aims[n]:
                own[n], aims[n] = tried, got
        if aims.max() - aims.min() < AGREED:
            break
    _turned(own[int(np.argmax(aims))], side, at)
    return at


@compiled
def _spread(low: Array, high: Array) -> Array:
    """Return placements (MANY, 5), each coordinate spread evenly in an order of its own."""
    own = np.empty((MANY, 5))
    for j in range(5):
        order = np.random.permutation(MANY)  # noqa: NPY002 - as above
        for n in range(MANY):
            own[n, j] = low[j] + (high[j] - low[j]) * (order[n] + np.random.random()) / MANY  # noqa: NPY002 - as above
    return own


@compiled
def _cross(own: Array, n: int, best: int, weight: float, low: Array, high: Array, tried: Array) -> None:
    """Write a placement crossed from the best and the difference of two others; what leaves the bounds is drawn anew."""
    a, b = np.random.randint(MANY), np.random.randint(MANY)  # noqa: NPY002 - as above
    sure = np.random.randint(5)  # noqa: NPY002 - as above
    for j in range(5):
        tried[j] = own[n, j]
        if j == sure or np.random.random() < CROSSED:  # noqa: NPY002 - as above
            tried[j] = own[best, j] + weight * (own[a, j] - own[b, j])
            if tried[j] < low[j] or tried[j] > high[j]:
                tried[j] = low[j] + (high[j] - low[j]) * np.random.random()  # noqa: NPY002 - as above


@compiled
def _aim(
    site: Site, kit: Kit, k: int, t: Terms, scale: Array, side: float, one: Array, beat: float, at: Array, out: Array
) -> float:
    """Return the aim of a placement whose offset counts outwards, minus infinity where it stays below `beat`."""
    _turned(one, side, at)
    return aim_beating(site, 0, kit, k, t, scale, at, beat, out)


@compiled
def _turned(one: Array, side: float, at: Array) -> None:
    """Write a placement whose offset counts outwards as everybody else counts."""
    at[:5] = one
    at[0] = -one[0] if side < 0.0 else one[0]


@compiled
def _bounds(site: Site, kit: Kit, k: int, t: Terms, side: float) -> tuple[Array, Array]:
    """Return the least and most of offset outwards, axis, both collars and the shaft's bottom."""
    near, far = offset_range(site, kit, k, side, t)
    if side < 0.0:
        near, far = -far, -near
    l0, l1 = _collars(site, kit.lower, k, t)
    u0, u1 = _collars(site, kit.upper, k, t)
    fore, aft = math.inf, -math.inf
    for y in (near, far):
        for z in (l0, l1, u0, u1):
            x, _, _ = skin(site, 0, y, z)
            fore, aft = min(fore, x), max(aft, x)
    reach_low = min(kit.lower[k, M.REACH_LOW], kit.upper[k, M.REACH_LOW])
    reach_high = max(kit.lower[k, M.REACH_HIGH], kit.upper[k, M.REACH_HIGH])
    aft = max(aft, site.values[0, S.TRAILING], site.values[0, S.STEP_DEPTH] + fore)
    deep = kit.gear[k, G.ROOT_GAP] - t[T.ROOT_DEPTH] - DEEPER
    return (
        np.array([near, fore + reach_low, l0, u0, deep]),
        np.array([far, aft + reach_high + t[T.PAD_MAX], l1, u1, kit.gear[k, G.ROOT_GAP] + kit.gear[k, G.SPAN]]),
    )


@compiled
def _collars(site: Site, m: Array, k: int, t: Terms) -> tuple[float, float]:
    """Return the lowest and highest collar: a miss may seat a flange past the edges of the skin that bears it."""
    low, high = collar_range(site, m, k, t)
    if m[k, M.KIND] == STEP and site.flags[Flag.STEPPED]:
        return low, high
    return site.values[0, S.BOTTOM] + m[k, M.RISE], max(site.values[0, S.TOP] + m[k, M.RISE], high)
