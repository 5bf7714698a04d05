"""Does a configuration beat an aim anywhere: answered as soon as it is known, where `place` would go on to the best."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.compiled import compiled
from service.core.fit.checks import scales
from service.core.fit.kit import CHEEK, STEP, G, Kit, M
from service.core.fit.mounts import NOTHING_TO_STAND_ON
from service.core.fit.place import NEIGHBOURS, SIDE, Lie
from service.core.fit.search import climb
from service.core.fit.site import Flag, S, Site
from service.core.fit.starts import MIDDLE, aims_of, grid, offset_range
from service.core.fit.terms import FIXED, T, Terms, terms

Array = NDArray[np.float64]
IndexArray = NDArray[np.intp]
LONG = 1e5
"""A shaft of this length reaches any head; a radius of as much less than nothing touches nothing (mm)."""
STARTS, ROUNDS, TRUST = 6, 12, 150.0
"""Starts climbed from, for how many rounds, and how far a straight-line model is believed at first (mm)."""
OFFSETS, HEIGHTS = 4, 5
GAIN = 0.005
"""A miss less by so little is no less a miss."""


def better(
    site: Site, kit: Kit, rules: Rules, lies: tuple[Lie, ...], wanted: IndexArray, enough: float
) -> tuple[Array, float]:
    """Return an aim of each wanted configuration (places in the kit): where it can be seen to exceed `enough`, such a one.

    Else the best that was seen on the way. Below zero `enough` follows the best aim of all as it rises; it comes back.
    """
    return _better(site, kit, terms(rules), np.array([SIDE[lie] for lie in lies]), wanted, enough)


def any_shaft(kit: Kit) -> Kit:
    """Return the kit with shafts that reach any head and stand in nobody's way: what brackets and blade can at most."""
    gear = kit.gear.copy()
    gear[:, G.LENGTH], gear[:, G.TUBE] = LONG, -LONG
    return kit._replace(gear=gear)


@compiled
def _better(site: Site, kit: Kit, t: Terms, sides: Array, wanted: IndexArray, enough: float) -> tuple[Array, float]:
    scale = scales(t, FIXED + site.binds.size)
    found = np.full(wanted.size, -np.inf)
    mirrored = site.box_info.shape[0] == 0  # nothing stands on the stern: both sides are one another's mirror image
    for n in range(wanted.size):
        seen = False
        for side in sides:
            if mirrored and side != 0.0 and seen:
                continue
            seen = seen or side != 0.0
            never = _never(site, kit, wanted[n], t, side)
            if never < enough:
                found[n] = max(found[n], never)
                continue
            found[n] = max(found[n], _one(site, kit, wanted[n], t, scale, side, enough))
            if found[n] >= 0.0:
                break
        if enough < 0.0:
            enough = min(max(enough, found[n] + GAIN), 0.0)
    return found, enough


@compiled
def _never(site: Site, kit: Kit, k: int, t: Terms, side: float) -> float:
    """Return a scaled margin that no placement in a lie exceeds.

    A cheek bracket straddles a post of its width on the centreline, a stand needs a step, and a seat no more room
    athwartships than there is.
    """
    margin = np.inf
    near = min(abs(offset_range(site, kit, k, side, t)[0]), abs(offset_range(site, kit, k, side, t)[1]))
    half = max(site.values[0, S.HALF_TOP], site.values[0, S.HALF_WATER])
    if site.flags[Flag.POST_ONLY]:
        half = site.values[0, S.POST] / 2.0
    for upper in range(2):
        m = kit.upper if upper else kit.lower
        if m[k, M.KIND] == STEP:
            if site.flags[Flag.STEPPED] == 0:
                margin = min(margin, NOTHING_TO_STAND_ON / t[T.S_SEAT])
        elif m[k, M.KIND] == CHEEK:
            post = site.values[0, S.POST]
            margin = min(margin, min(post - m[k, M.GAP_LOW], m[k, M.GAP_HIGH] - post) / t[T.S_GAP])
            if near > 0.0:
                margin = min(margin, -near / t[T.S_SEAT])
        else:
            margin = min(margin, (half - near - m[k, M.WIDTH] / 2.0 - t[T.EDGE]) / t[T.S_SEAT])
    return margin


@compiled
def _one(site: Site, kit: Kit, k: int, t: Terms, scale: Array, side: float, enough: float) -> float:
    """Return an aim of one configuration in one lie; below zero, once it exceeds `enough`, the best of its climb."""
    y_low, y_high = offset_range(site, kit, k, side, t)
    starts, _ = grid(site, kit, k, t, side, OFFSETS, HEIGHTS, t[T.SPACING] / 2.0, MIDDLE)
    aims = aims_of(site, kit, k, t, scale, starts)
    best = aims.max()
    for _ in range(STARTS):
        n = int(np.argmax(aims))
        if best >= 0.0 or not np.isfinite(aims[n]):
            break
        at, value = climb(
            site, 0, kit, k, t, scale, starts[n], y_low, y_high, TRUST, ROUNDS, max(enough, best), -np.inf
        )
        if 0.0 > value > enough:
            _, value = climb(site, 0, kit, k, t, scale, at, y_low, y_high, TRUST / 2.0, 2 * ROUNDS, 0.0, -np.inf)
        best = max(best, value)
        for other in range(starts.shape[0]):
            if abs(starts[other, 0] - starts[n, 0]) < 1.0 and abs(starts[other, 2] - starts[n, 2]) < NEIGHBOURS:
                aims[other] = -np.inf
    return best
