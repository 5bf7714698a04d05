"""Where the search for a placement begins: offsets, collar heights and an axis and bottom to go with them."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled
from service.core.fit.bits import NEAR
from service.core.fit.checks import check
from service.core.fit.kit import CHEEK, STEP, G, Kit, M
from service.core.fit.mounts import beyond
from service.core.fit.search import aim
from service.core.fit.site import Flag, S, Site, skin
from service.core.fit.terms import FIXED, T, Terms

Array = NDArray[np.float64]
MIDDLE = np.array([0.5])
"""Where a start's bottom lies within its room."""


@compiled
def offset_range(site: Site, kit: Kit, k: int, side: float, t: Terms) -> tuple[float, float]:
    """Return the least and most offset of a lie (mm); off centre begins one tube's diameter out."""
    if side == 0.0:
        return 0.0, 0.0
    near = max(2.0 * kit.gear[k, G.TUBE], 0.0)
    far = max(site.values[0, S.HALF_TOP] - min(kit.lower[k, M.WIDTH], kit.upper[k, M.WIDTH]) / 2.0 - t[T.EDGE], near)
    return (near, far) if side > 0.0 else (-far, -near)


@compiled
def collar_range(site: Site, m: Array, k: int, t: Terms) -> tuple[float, float]:
    """Return the lowest and highest collar centre over skin that could bear the flange; over its stands for a step."""
    if m[k, M.KIND] == STEP and site.flags[Flag.STEPPED]:
        return site.values[0, S.STEP_HEIGHT] + m[k, M.STANDS_LOW], site.values[0, S.STEP_HEIGHT] + m[k, M.STANDS_HIGH]
    edge = t[T.EDGE] + m[k, M.HEIGHT] / 2.0
    low = site.values[0, S.BOTTOM] + edge + m[k, M.RISE]
    return low, max(site.values[0, S.TOP] - edge + m[k, M.RISE], low)


@compiled
def begin(
    site: Site, kit: Kit, k: int, t: Terms, y: float, lower: float, upper: float, share: float, at: Array
) -> float:
    """Set the axis in the middle of what both reaches and the rudder leave, the bottom at `share` of what the rest leaves.

    The rest is immersion, overhang, head and the lower collar.

    Return how much both reaches share, pads at their thickest (mm): where it is negative no axis serves both.
    """
    first, last = -np.inf, np.inf
    for upper_one in range(2):
        m = kit.upper if upper_one else kit.lower
        collar = upper if upper_one else lower
        x, rake, _ = skin(site, 0, y, collar - m[k, M.RISE])
        base = m[k, M.HEIGHT] / 2.0 * abs(beyond(rake, m[k, M.TILT_LOW], m[k, M.TILT_HIGH]))
        if m[k, M.KIND] == STEP:
            x, _, _ = skin(site, 0, y, site.values[0, S.STEP_HEIGHT])
            base = site.values[0, S.STEP_DEPTH] / 2.0
        if m[k, M.KIND] == CHEEK:
            base = 0.0
        first, last = max(first, x + base + m[k, M.REACH_LOW]), min(last, x + base + m[k, M.REACH_HIGH])
    shared = last + t[T.PAD_MAX] - first
    clear = site.values[0, S.TRAILING] + t[T.RUDDER_GAP] + kit.gear[k, G.BALANCE]
    if clear > first:
        first = min(clear, max(last, first))
    above = kit.gear[k, G.ROOT_GAP] + kit.gear[k, G.SPAN]
    wet = min(
        above - t[T.SHARE] * kit.gear[k, G.SPAN],
        above - abs(y) * math.tan(t[T.HEEL]) - t[T.SHARE_HEELED] * kit.gear[k, G.SPAN],
    )
    high = min(wet, lower - kit.lower[k, M.COLLAR] / 2.0)
    low = max(lower + above - kit.gear[k, G.SPAN] / 2.0 - t[T.OVERHANG], kit.gear[k, G.ROOT_GAP] - t[T.ROOT_DEPTH])
    low = max(low, upper + kit.gear[k, G.HEAD_ROOM] + kit.upper[k, M.COLLAR] / 2.0 - kit.gear[k, G.LENGTH])
    at[0], at[1], at[2], at[3], at[4], at[5], at[6] = (
        y,
        (first + last) / 2.0,
        lower,
        upper,
        low + share * (high - low),
        0.0,
        0.0,
    )
    return shared


@compiled
def grid(
    site: Site, kit: Kit, k: int, t: Terms, side: float, offsets: int, heights: int, spacing: float, shares: Array
) -> tuple[Array, Array]:
    """Return starts (n, 7) over offsets, collar heights at least `spacing` apart and `shares` of the bottom's room.

    Beside them what both reaches share at each (mm). One start, hopeless, where no pair of collars has room.
    """
    y_low, y_high = offset_range(site, kit, k, side, t)
    l0, l1 = collar_range(site, kit.lower, k, t)
    u0, u1 = collar_range(site, kit.upper, k, t)
    columns = 1 if side == 0.0 else offsets
    most = columns * heights * heights * shares.size + 1
    found, shared = np.empty((most, 7)), np.empty(most)
    n = 0
    for a in range(columns):
        outwards = a / (columns - 1) if columns > 1 else 0.5
        y = y_low + (y_high - y_low) * (outwards if side >= 0.0 else 1.0 - outwards)
        for b in range(heights):
            lower = l0 + (l1 - l0) * b / (heights - 1)
            for c in range(heights):
                upper = u0 + (u1 - u0) * c / (heights - 1)
                if upper - lower <= spacing:
                    continue
                for share in shares:
                    shared[n] = begin(site, kit, k, t, y, lower, upper, share, found[n])
                    n += 1
    if n == 0:
        middle, half = (site.values[0, S.TOP] + site.values[0, S.BOTTOM]) / 2.0, t[T.SPACING] / 2.0
        shared[0] = begin(site, kit, k, t, (y_low + y_high) / 2.0, middle - half, middle + half, 0.5, found[0])
        n = 1
    return found[:n], shared[:n]


@compiled
def aims_of(site: Site, kit: Kit, k: int, t: Terms, scale: Array, starts: Array) -> Array:
    """Return the aim of each start."""
    out = np.empty((FIXED + site.binds.size, 3))
    found = np.empty(starts.shape[0])
    for n in range(starts.shape[0]):
        s = starts[n]
        check(site, 0, kit, k, t, s[0], s[1], s[2], s[3], s[4], NEAR, out)
        found[n] = aim(site, out, scale)
    return found
