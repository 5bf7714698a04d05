"""Where to begin, and the best placement from there, for every configuration of a kit in every lie."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.compiled import compiled
from service.core.fit.checks import scales
from service.core.fit.evolve import evolved
from service.core.fit.kit import Kit
from service.core.fit.search import climb, polish
from service.core.fit.site import Site
from service.core.fit.starts import MIDDLE, aims_of, grid, offset_range
from service.core.fit.terms import FIXED, T, Terms, terms

Array = NDArray[np.float64]
Index = NDArray[np.intp]
Lie = Literal["centre", "port", "starboard"]
LIES: tuple[Lie, ...] = ("centre", "port", "starboard")
SIDE = {"centre": 0.0, "port": -1.0, "starboard": 1.0}
FIRST, MORE, QUICK = 5, 4, 4
"""Starts climbed from in each lie, the best of the grid that are not neighbours of each other, and for how many rounds.

The best of them goes on at once, to tell the lies apart; in the lie that is chosen all do.
"""
NEIGHBOURS = 150.0
"""Starts of one offset whose collars and bottoms are nearer than this (mm) climb to the same place."""
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
    under_way: Array
    """What each climb had reached when it was left (C, lies, FIRST + MORE, 7)."""
    so_far: Array
    """The aims there (C, lies, FIRST + MORE), -inf where there was no start."""


def place(site: Site, kit: Kit, rules: Rules, *, lies: tuple[Lie, ...] = LIES, dry: bool = False) -> Best:
    """Return the best placement of every configuration of the kit in each lie on the first row of the site."""
    sides = np.array([SIDE[lie] for lie in lies])
    spots, aims, under_way, so_far = _place_all(site, kit, terms(rules, dry=dry), sides)
    return Best(lies, spots, aims, dry, under_way, so_far)


def polished(
    site: Site, kit: Kit, rules: Rules, best: Best, index: int, lie: int, *, deep: bool = True
) -> tuple[Array, float]:
    """Return the best placement of one lie, improved in what the smallest margin alone does not tell apart, and its aim.

    `deep`: where that configuration passes in no lie, wet or dry, the best miss of any is looked for all over.
    """
    t, side, spot = terms(rules, dry=best.dry), SIDE[best.lies[lie]], best.spots[index, lie]
    if deep and not best.dry and best.aims[index].max() < 0.0:
        sides = np.array([SIDE[one] for one in best.lies])
        found, aim_there, n = _deep(site, kit, index, t, sides)
        if aim_there > best.aims[index, lie]:
            at, value = _polish(site, kit, index, t, float(sides[n]), found, MOVES)
            return at[:5], value
    spot = _highest(site, kit, index, t, side, best.under_way[index, lie], best.so_far[index, lie], spot)
    at, value = _polish(site, kit, index, t, side, spot, MOVES)
    return at[:5], value


@compiled
def _place_all(site: Site, kit: Kit, t: Terms, sides: Array) -> tuple[Array, Array, Array, Array]:
    count, many = kit.gear.shape[0], FIRST + MORE
    spots, aims = np.empty((count, sides.size, 5)), np.empty((count, sides.size))
    under_way, so_far = np.empty((count, sides.size, many, 7)), np.empty((count, sides.size, many))
    scale = scales(t, FIXED + site.binds.size)
    for k in range(count):
        for n in range(sides.size):
            y_low, y_high = offset_range(site, kit, k, sides[n], t)
            starts, _ = grid(site, kit, k, t, sides[n], 4, 5, t[T.SPACING] / 2.0, MIDDLE)
            _first(site, kit, k, t, scale, (y_low, y_high), starts, under_way[k, n], so_far[k, n])
            m = int(np.argmax(so_far[k, n]))
            at, aims[k, n] = climb(
                site, 0, kit, k, t, scale, under_way[k, n, m], y_low, y_high, TRUST, ROUNDS, np.inf, -np.inf
            )
            spots[k, n], under_way[k, n, m], so_far[k, n, m] = at[:5], at, aims[k, n]
    return spots, aims, under_way, so_far


@compiled
def _first(
    site: Site, kit: Kit, k: int, t: Terms, scale: Array, offsets: tuple[float, float], starts: Array,
    reached: Array, tried: Array,
) -> None:  # fmt: skip
    """Climb a few rounds from the best starts that are not neighbours of each other; write where to, and the aims.

    First starts whose lower collars are apart, whatever their upper ones; then others of the rest.
    """
    aims = aims_of(site, kit, k, t, scale, starts)
    left, many = aims.copy(), FIRST + MORE
    reached[:], tried[:] = 0.0, -np.inf
    picked, ahead = np.empty(many, np.intp), -np.inf
    for m in range(many):
        if m == FIRST:  # those put aside for their lower collars alone come back
            for other in range(starts.shape[0]):
                left[other] = aims[other]
                for n in picked[:m]:
                    if _near(starts[other], starts[n]) and abs(starts[other, 3] - starts[n, 3]) < NEIGHBOURS:
                        left[other] = -np.inf
        n = int(np.argmax(left))
        picked[m] = n
        if not np.isfinite(left[n]):
            left[n] = -np.inf
            if m >= FIRST:
                break
            continue
        reached[m], tried[m] = climb(
            site, 0, kit, k, t, scale, starts[n], offsets[0], offsets[1], TRUST, QUICK, np.inf, ahead
        )
        ahead = max(ahead, tried[m])
        for other in range(starts.shape[0]):
            if _near(starts[other], starts[n]) and (m < FIRST or abs(starts[other, 3] - starts[n, 3]) < NEIGHBOURS):
                left[other] = -np.inf


@compiled
def _near(one: Array, other: Array) -> bool:
    """Say whether two starts have one offset, and lower collars and bottoms that are near each other."""
    return abs(one[0] - other[0]) < 1.0 and abs(one[2] - other[2]) < NEIGHBOURS and abs(one[4] - other[4]) < NEIGHBOURS


@compiled
def _highest(
    site: Site, kit: Kit, k: int, t: Terms, side: float, under_way: Array, so_far: Array, spot: Array
) -> Array:
    """Climb on from all that is under way in one lie, the highest first; return the best placement (7,), `spot` at least."""
    scale, y = scales(t, FIXED + site.binds.size), offset_range(site, kit, k, side, t)
    left, best, best_at = so_far.copy(), -np.inf, np.zeros(7)
    best_at[:5] = spot
    for _ in range(left.size):
        m = int(np.argmax(left))
        if not np.isfinite(left[m]):
            break
        at, value = climb(site, 0, kit, k, t, scale, under_way[m], y[0], y[1], TRUST, 2 * ROUNDS, np.inf, best)
        left[m] = -np.inf
        if value > best:
            best, best_at = value, at
    return best_at


@compiled
def _polish(site: Site, kit: Kit, k: int, t: Terms, side: float, spot: Array, moves: Array) -> tuple[Array, float]:
    scale = scales(t, FIXED + site.binds.size)
    y_low, y_high = offset_range(site, kit, k, side, t)
    start, value = climb(site, 0, kit, k, t, scale, spot, y_low, y_high, TRUST, 2 * ROUNDS, np.inf, -np.inf)
    start, value = polish(site, 0, kit, k, t, scale, start, value, moves, y_low, y_high, POLISH_STEP, POLISH_ROUNDS)
    return climb(site, 0, kit, k, t, scale, start, y_low, y_high, TRUST, 2 * ROUNDS, np.inf, -np.inf)


@compiled
def _deep(site: Site, kit: Kit, k: int, t: Terms, sides: Array) -> tuple[Array, float, int]:
    """Return the best placement of any lie, searched for all over it, its aim and its place in `sides`."""
    scale, out = scales(t, FIXED + site.binds.size), np.empty((FIXED + site.binds.size, 3))
    best, best_at, best_side = -np.inf, np.zeros(7), 0
    for n in range(sides.size):
        y_low, y_high = offset_range(site, kit, k, sides[n], t)
        usual, _ = grid(site, kit, k, t, sides[n], 4, 5, t[T.SPACING] / 2.0, MIDDLE)
        starts = np.vstack((evolved(site, kit, k, t, scale, sides[n], out).reshape(1, 7), usual))
        for m in range(starts.shape[0]):
            at, value = climb(site, 0, kit, k, t, scale, starts[m], y_low, y_high, TRUST, 2 * ROUNDS, np.inf, best)
            if value > best:
                best, best_at, best_side = value, at, n
    return best_at, best, best_side
