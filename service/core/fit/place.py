"""Where to begin, and the best placement from there, for every configuration of a kit in every lie."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.fit.bits import NEAR
from service.core.fit.checks import MARGIN, check, scales
from service.core.fit.compiled import compiled
from service.core.fit.kit import CHEEK, STEP, G, Kit, M
from service.core.fit.mounts import beyond
from service.core.fit.search import aim, climb, polish
from service.core.fit.site import Flag, S, Site, skin
from service.core.fit.terms import FIXED, HEAD, T, Terms, terms

Array = NDArray[np.float64]
Index = NDArray[np.intp]
Lie = Literal["centre", "port", "starboard"]
LIES: tuple[Lie, ...] = ("centre", "port", "starboard")
SIDE = {"centre": 0.0, "port": -1.0, "starboard": 1.0}
MIDDLE, SPREAD = np.array([0.5]), np.array([0.1, 0.5, 0.9])
"""Where a start's bottom lies within its room."""
DEEP, DEEP_QUICK, DEEP_TRIES = 16, 5, 3
"""Starts climbed from in each lie where a configuration passes in none."""
FIRST, QUICK = 5, 4
"""Starts climbed from in each lie, the best of the grid that are not neighbours of each other, and for how many rounds."""
TRIES = 1
"""Of these the best are climbed from to the end."""
NEIGHBOURS = 150.0
"""Starts of one offset whose lower collars are nearer than this (mm) climb to the same place."""
TRUST, ROUNDS = 60.0, 14
POLISH_STEP, POLISH_ROUNDS = 8.0, 24


def _moves() -> Array:
    """Return compass moves (D, 5): each coordinate alone, the sensible pairs, and a fixed spread of mixed ones."""
    together = np.array([
        [0, 0, 1, 1, 1], [0, 0, 1, 1, 0], [0, 0, 0, 1, 1], [0, 0, 1, 0, 1], [0, 1, 1, 0, 0], [0, 1, 0, 1, 0],
        [0, 1, 0, -1, 0], [0, 1, -1, 0, 0], [1, 1, 0, 0, 0], [1, -1, 0, 0, 0], [1, 0, 0, 0, 1], [1, 0, 0, 0, -1],
    ], dtype=float)  # fmt: skip
    single = np.eye(5)
    return np.vstack([single, -single, together, -together])


MOVES = _moves()


@dataclass(frozen=True)
class Best:
    """The best placement of each configuration in each lie: `spots` (C, lies, 5), `aims` (C, lies)."""

    lies: tuple[Lie, ...]
    spots: Array
    aims: Array
    dry: bool
    """Every bolt hole was kept above the water by the rules' allowance."""


def place(site: Site, kit: Kit, rules: Rules, *, lies: tuple[Lie, ...] = LIES, dry: bool = False) -> Best:
    """Return the best placement of every configuration of the kit in each lie on the first row of the site."""
    sides = np.array([SIDE[lie] for lie in lies])
    spots, aims = _place_all(site, kit, terms(rules, dry=dry), sides)
    return Best(lies, spots, aims, dry)


def polished(site: Site, kit: Kit, rules: Rules, best: Best, index: int, lie: int) -> tuple[Array, float]:
    """Return one of the placements found, improved in what the smallest margin alone does not tell apart, and its aim.

    Where that configuration passes in no lie, wet or dry, the best miss of any is looked for from many more starts.
    """
    t, side, spot = terms(rules, dry=best.dry), SIDE[best.lies[lie]], best.spots[index, lie]
    if not best.dry and best.aims[index].max() < 0.0:
        sides = np.array([SIDE[one] for one in best.lies])
        deep, aim_there, n = _deep(site, kit, index, t, sides)
        if aim_there > best.aims[index, lie]:
            side, spot = float(sides[n]), deep[:5]
    at, value = _polish(site, kit, index, t, side, spot, MOVES)
    return at[:5], value


def reachable(site: Site, kit: Kit, rules: Rules, *, lies: tuple[Lie, ...], any_shaft: bool) -> Array:
    """Return the best aim of each configuration on the coarse grid of starts (C,); `any_shaft` leaves out the head."""
    return _reachable(site, kit, terms(rules), np.array([SIDE[lie] for lie in lies]), any_shaft)


@compiled
def offset_range(site: Site, kit: Kit, k: int, side: float, t: Terms) -> tuple[float, float]:
    """Return the least and most offset of a lie (mm); off centre begins one tube's diameter out."""
    if side == 0.0:
        return 0.0, 0.0
    near = 2.0 * kit.gear[k, G.TUBE]
    far = max(site.values[0, S.HALF_TOP] - min(kit.lower[k, M.WIDTH], kit.upper[k, M.WIDTH]) / 2.0 - t[T.EDGE], near)
    return (near, far) if side > 0.0 else (-far, -near)


@compiled
def _heights(site: Site, m: Array, k: int, t: Terms) -> tuple[float, float]:
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
def _grid(
    site: Site, kit: Kit, k: int, t: Terms, side: float, offsets: int, heights: int, spacing: float, shares: Array
) -> tuple[Array, Array]:
    """Return starts (n, 7) over offsets, collar heights at least `spacing` apart and `shares` of the bottom's room.

    Beside them what both reaches share at each (mm). One start, hopeless, where no pair of collars has room.
    """
    y_low, y_high = offset_range(site, kit, k, side, t)
    l0, l1 = _heights(site, kit.lower, k, t)
    u0, u1 = _heights(site, kit.upper, k, t)
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
def _aims(site: Site, kit: Kit, k: int, t: Terms, scale: Array, grid: tuple[Array, Array], any_shaft: bool) -> Array:  # noqa: FBT001 - compiled code takes no keywords
    """Return the aim of each start; where no axis serves both reaches, by how far, without looking further."""
    starts, shared = grid
    out = np.empty((FIXED + site.binds.size, 3))
    found = np.empty(starts.shape[0])
    for n in range(starts.shape[0]):
        if any_shaft and shared[n] < 0.0:
            found[n] = shared[n] / t[T.S_REACH] / 2.0
            continue
        s = starts[n]
        check(site, 0, kit, k, t, s[0], s[1], s[2], s[3], s[4], NEAR, out)
        if any_shaft:
            out[HEAD, MARGIN] = np.inf
        found[n] = aim(site, out, scale)
    return found


@compiled
def _place_all(site: Site, kit: Kit, t: Terms, sides: Array) -> tuple[Array, Array]:
    count = kit.gear.shape[0]
    spots, aims = np.empty((count, sides.size, 5)), np.empty((count, sides.size))
    scale = scales(t, FIXED + site.binds.size)
    for k in range(count):
        for column in range(sides.size):
            at, value = _place_one(site, kit, k, t, scale, sides[column])
            spots[k, column], aims[k, column] = at[:5], value
    return spots, aims


@compiled
def _place_one(site: Site, kit: Kit, k: int, t: Terms, scale: Array, side: float) -> tuple[Array, float]:
    grid = _grid(site, kit, k, t, side, 4, 5, t[T.SPACING] / 2.0, MIDDLE)
    reached, tried = _first(site, kit, k, t, scale, side, grid, FIRST, QUICK)
    return _finish(site, kit, k, t, scale, side, reached, tried, TRIES, ROUNDS)


@compiled
def _first(
    site: Site, kit: Kit, k: int, t: Terms, scale: Array, side: float, grid: tuple[Array, Array], many: int, rounds: int
) -> tuple[Array, Array]:
    """Climb a few rounds from the best starts that are not neighbours of each other; return where to, and the aims."""
    y_low, y_high = offset_range(site, kit, k, side, t)
    starts, _ = grid
    found = _aims(site, kit, k, t, scale, grid, False)
    reached, tried = np.zeros((many, 7)), np.full(many, -np.inf)
    for m in range(many):
        n = int(np.argmax(found))
        if not np.isfinite(found[n]):
            break
        reached[m], tried[m] = climb(site, 0, kit, k, t, scale, starts[n], y_low, y_high, TRUST, rounds, np.inf)
        for other in range(starts.shape[0]):
            if (
                abs(starts[other, 0] - starts[n, 0]) < 1.0
                and abs(starts[other, 2] - starts[n, 2]) < NEIGHBOURS
                and abs(starts[other, 4] - starts[n, 4]) < NEIGHBOURS
            ):
                found[other] = -np.inf
    return reached, tried


@compiled
def _finish(
    site: Site,
    kit: Kit,
    k: int,
    t: Terms,
    scale: Array,
    side: float,
    reached: Array,
    tried: Array,
    many: int,
    rounds: int,
) -> tuple[Array, float]:
    """Climb on from the best of what was reached; return the best of all."""
    y_low, y_high = offset_range(site, kit, k, side, t)
    best, best_at = tried[0], reached[0]
    for _ in range(many):
        m = int(np.argmax(tried))
        if not np.isfinite(tried[m]):
            break
        at, value = climb(site, 0, kit, k, t, scale, reached[m], y_low, y_high, TRUST, rounds, np.inf)
        tried[m] = -np.inf
        if value > best:
            best, best_at = value, at
    return best_at, best


@compiled
def _reachable(site: Site, kit: Kit, t: Terms, sides: Array, any_shaft: bool) -> Array:  # noqa: FBT001 - compiled code takes no keywords
    scale = scales(t, FIXED + site.binds.size)
    best = np.full(kit.gear.shape[0], -np.inf)
    for k in range(kit.gear.shape[0]):
        for side in sides:
            found = _aims(
                site, kit, k, t, scale, _grid(site, kit, k, t, side, 3, 4, t[T.SPACING] / 2.0, MIDDLE), any_shaft
            )
            best[k] = max(best[k], found.max())
    return best


@compiled
def _polish(site: Site, kit: Kit, k: int, t: Terms, side: float, spot: Array, moves: Array) -> tuple[Array, float]:
    scale, start = scales(t, FIXED + site.binds.size), np.zeros(7)
    start[:5] = spot
    y_low, y_high = offset_range(site, kit, k, side, t)
    start, value = climb(site, 0, kit, k, t, scale, start, y_low, y_high, TRUST, 2 * ROUNDS, np.inf)
    start, value = polish(site, 0, kit, k, t, scale, start, value, moves, y_low, y_high, POLISH_STEP, POLISH_ROUNDS)
    return climb(site, 0, kit, k, t, scale, start, y_low, y_high, TRUST, 2 * ROUNDS, np.inf)


@compiled
def _deep(site: Site, kit: Kit, k: int, t: Terms, sides: Array) -> tuple[Array, float, int]:
    """Return the best placement of any lie from many more starts, its aim and its place in `sides`."""
    scale = scales(t, FIXED + site.binds.size)
    best, best_at, best_side = -np.inf, np.zeros(7), 0
    for n in range(sides.size):
        grid = _grid(site, kit, k, t, sides[n], 4, 6, -np.inf, SPREAD)
        reached, tried = _first(site, kit, k, t, scale, sides[n], grid, DEEP, DEEP_QUICK)
        at, value = _finish(site, kit, k, t, scale, sides[n], reached, tried, DEEP_TRIES, 2 * ROUNDS)
        if value > best:
            best, best_at, best_side = value, at, n
    return best_at, best, best_side
