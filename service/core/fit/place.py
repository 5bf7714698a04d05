"""The best placement: offset, shaft axis, collar heights and shaft bottom that make the smallest scaled margin largest.

Two steps. A grid of offsets and collar heights, each with shaft axis and bottom set in the middle of what reach,
rudder, immersion, overhang and head leave, finds where to begin. A compass search, many starts at once and all
directions of one step in one call of the checks, climbs from there. The aim is lexicographic: the smallest margin
counts whole, the next by a thousandth and the third by a millionth, so a margin that saturates does not stop the
next from growing.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.fit.checks import CEILING, Sheet, Spot, evaluate
from service.core.fit.kit import Kit, Mount
from service.core.fit.mounts import beyond
from service.core.fit.site import Site, skin

Array = NDArray[np.float64]
Index = NDArray[np.intp]
Lie = Literal["centre", "port", "starboard"]
LIES: tuple[Lie, ...] = ("centre", "port", "starboard")
STEPS = np.array([80.0, 50.0, 80.0, 80.0, 80.0])
"""First step of offset, shaft axis, lower and upper collar, shaft bottom (mm)."""
FAR = 1.5
"""Margins beyond this many scales need not be exact while searching: no aim looks at them."""
FINEST = 0.05
"""A start whose step has shrunk below this share of a millimetre is done."""


def _directions() -> Array:
    """Return unit moves (D, 5): each coordinate alone, the sensible pairs, and a fixed spread of mixed ones."""
    single = np.vstack([np.eye(5), -np.eye(5)])
    together = np.array([
        [0, 0, 1, 1, 1], [0, 0, 1, 1, 0], [0, 0, 0, 1, 1], [0, 0, 1, 0, 1], [0, 1, 1, 0, 0], [0, 1, 0, 1, 0],
        [0, 1, 0, -1, 0], [0, 1, -1, 0, 0], [1, 1, 0, 0, 0], [1, -1, 0, 0, 0], [1, 0, 0, 0, 1], [1, 0, 0, 0, -1],
        [0, 1, 1, 1, 1], [0, 1, -1, -1, -1],
    ], dtype=float)  # fmt: skip
    mixed = np.random.default_rng(5).normal(size=(6, 5))
    mixed /= np.abs(mixed).max(axis=1, keepdims=True)
    return np.vstack([single, together, -together, mixed, -mixed])


DIRECTIONS = _directions()


def aim(sheet: Sheet) -> Array:
    """Return the lexicographic aim of each row, over the checks that a placement can change."""
    low = np.partition(sheet.governing(movable=True), 2, axis=0)[:3]
    low.sort(axis=0)
    return np.asarray(low[0] + 1e-3 * np.minimum(low[1], CEILING) + 1e-6 * np.minimum(low[2], CEILING))


def offset_range(site: Site, kit: Kit, lie: Lie, rules: Rules) -> tuple[Array, Array]:
    """Return the least and most offset of a lie per configuration; off centre begins one tube's diameter out."""
    if lie == "centre":
        zero = np.zeros_like(kit.tube)
        return zero, zero
    near = 2 * kit.tube
    far = np.maximum(site.half_top - np.minimum(kit.lower.width, kit.upper.width) / 2 - rules["edge_distance"], near)
    return (near, far) if lie == "starboard" else (-far, -near)


def starts(site: Site, kit: Kit, lie: Lie, rules: Rules, grid: tuple[int, int, int] = (7, 6, 6)) -> tuple[Spot, Index]:
    """Return sensible placements on a grid of offsets and collar heights, and the configuration each belongs to.

    `site` has one row. Rows run configuration, offset, lower, upper; an upper collar below its lower is left out.
    """
    count = kit.length.size
    offsets, lows, highs = grid if lie != "centre" else (1, *grid[1:])
    low_y, high_y = offset_range(site, kit, lie, rules)
    shape = (count, offsets, lows, highs)
    share = [np.linspace(0.0, 1.0, k) if k > 1 else np.array([0.5]) for k in (offsets, lows, highs)]
    y = (low_y[:, None] + (high_y - low_y)[:, None] * share[0])[:, :, None, None]
    lower = _heights(site, kit.lower, rules, share[1])[:, None, :, None]
    upper = _heights(site, kit.upper, rules, share[2])[:, None, None, :]
    y, lower, upper = (np.broadcast_to(a, shape).reshape(-1) for a in (y, lower, upper))
    index = np.repeat(np.arange(count), offsets * lows * highs)
    keep = upper - lower > rules["bracket_spacing_min"] / 2
    y, lower, upper, index = y[keep], lower[keep], upper[keep], index[keep]
    rows = kit.take(index)
    x = _axis(site, rows, y, lower, upper, rules)
    return Spot(y, x, lower, upper, _bottom(site, rows, y, lower, upper, rules)), index


def _heights(site: Site, mount: Mount, rules: Rules, share: Array) -> Array:
    """Return collar heights (C, shares) over the skin that could bear the flange; a step bracket over its stands."""
    edge = rules["edge_distance"] + mount.height / 2
    low = site.bottom + edge + mount.rise
    high = np.maximum(site.top - edge + mount.rise, low)
    if site.stepped:
        low = np.where(mount.step, site.step_height + mount.stands_low, low)
        high = np.where(mount.step, site.step_height + mount.stands_high, high)
    return np.asarray(low[:, None] + (high - low)[:, None] * share)


def _axis(site: Site, kit: Kit, y: Array, lower: Array, upper: Array, rules: Rules) -> Array:
    """Return the shaft axis in the middle of what both reaches, their pads and the main rudder leave."""
    low, high = np.full(y.shape, -np.inf), np.full(y.shape, np.inf)
    for mount, collar in ((kit.lower, lower), (kit.upper, upper)):
        at = skin(site, y, collar - mount.rise)
        bevel = mount.height / 2 * np.abs(beyond(at.rake, mount.tilt_low, mount.tilt_high))
        base = np.where(mount.step, site.step_depth / 2, bevel)
        low = np.maximum(low, at.x + base + mount.reach_low)
        high = np.minimum(high, at.x + np.maximum(base, 0.0) + mount.reach_high)
    clear = site.trailing + rules["main_rudder_gap"] + kit.balance
    low = np.minimum(np.maximum(low, clear), np.maximum(high, low))
    return np.asarray((low + high) / 2)


def _bottom(site: Site, kit: Kit, y: Array, lower: Array, upper: Array, rules: Rules) -> Array:
    """Return the shaft's bottom in the middle of what immersion, overhang, root depth and head leave."""
    heel = np.tan(np.radians(rules["heel_angle"]))
    above = kit.root_gap + kit.span
    wet = np.minimum(
        above * 1.0 - rules["immersed_share_min"] * kit.span,
        above - np.abs(y) * heel - rules["immersed_share_heeled_min"] * kit.span,
    )
    high = np.minimum(wet, lower - kit.lower.collar / 2)
    low = np.maximum(
        np.maximum(
            upper + kit.head_room + kit.upper.collar / 2 - kit.length,
            lower + above - kit.span / 2 - rules["overhang_max"],
        ),
        kit.root_gap - rules["root_depth_max"],
    )
    return np.asarray((low + high) / 2) + 0 * site.top


def climb(
    site: Site,
    kit: Kit,
    spot: Spot,
    rules: Rules,
    bounds: tuple[Array, Array],
    *,
    rounds: int = 24,
    locked: tuple[int, ...] = (),
    enough: float | None = None,
    step: float = 1.0,
    best: Array | None = None,
) -> tuple[Spot, Array]:
    """Climb from each placement; return the placements reached and their aim.

    Site and kit have one row, or one for each placement. `bounds` are least and most offset. `locked` coordinates
    stay. A row whose aim is above `enough` rests.
    """
    moves = DIRECTIONS * STEPS
    moves[:, list(locked)] = 0.0
    moves = moves[np.abs(moves).sum(axis=1) > 0]
    at = spot.stack()
    value = aim(evaluate(site, kit, spot, rules, far=FAR)) if best is None else best.copy()
    size = np.full(value.shape, step)
    for _ in range(rounds):
        active = np.flatnonzero((size * STEPS.min() > FINEST) & (True if enough is None else value < enough))
        if not active.size:
            break
        tried = at[:, active, None] + size[active][None, :, None] * moves.T[:, None, :]
        low, high = (np.broadcast_to(b, value.shape)[active][:, None] for b in bounds)
        tried[0] = np.clip(tried[0], low, high)
        rows = np.repeat(active, moves.shape[0])
        got = _aim_at(site, kit, tried.reshape(5, -1), rows, rules).reshape(active.size, -1)
        pick = got.argmax(axis=1)
        gain = got[np.arange(active.size), pick]
        better = gain > value[active] + 1e-9
        at[:, active[better]] = tried[:, np.flatnonzero(better), pick[better]]
        value[active[better]] = gain[better]
        size[active] *= np.where(better, 1.15, 0.45)
    return Spot.of(at), value


def _aim_at(site: Site, kit: Kit, tried: Array, rows: Index, rules: Rules) -> Array:
    own_site = site if site.rows == 1 else site.take(rows)
    own_kit = kit if kit.length.size == 1 else kit.take(rows)
    return aim(evaluate(own_site, own_kit, Spot.of(tried), rules, far=FAR))


@dataclass(frozen=True)
class Best:
    """The best placement of each configuration in each lie: arrays (C, lies), aims beside them."""

    lies: tuple[Lie, ...]
    spots: Array
    """(5, C, lies)"""
    aims: Array
    """(C, lies)"""

    def pick(self, configuration: int, lie: int) -> Spot:
        """Return one placement as rows of one."""
        return Spot.of(self.spots[:, configuration, lie][:, None])


def place(
    site: Site, kit: Kit, rules: Rules, *, lies: tuple[Lie, ...] = LIES, tries: int = 3, rounds: int = 24
) -> Best:
    """Return the best placement of every configuration of the kit in each lie, on one boat (a site of one row).

    All configurations and lies climb together: one call of the checks moves them all one step.
    """
    count = kit.length.size
    spots, index, bounds_low, bounds_high = [], [], [], []
    for column, lie in enumerate(lies):
        found, owner = starts(site, kit, lie, rules)
        value = aim(evaluate(site, kit.take(owner), found, rules, far=FAR)) if owner.size else np.empty(0)
        best = _best_of_each(value, owner, tries)
        low, high = offset_range(site, kit, lie, rules)
        missing = np.setdiff1d(np.arange(count), owner[best])
        begin = np.concatenate(
            [found.take(best).stack(), _hopeless(site, missing.size, low[missing], high[missing])], axis=1
        )
        owners = np.concatenate([owner[best], missing])
        spots.append(begin)
        index.append(owners * len(lies) + column)
        bounds_low.append(low[owners])
        bounds_high.append(high[owners])
    where = np.concatenate(index)
    bounds = (np.concatenate(bounds_low), np.concatenate(bounds_high))
    rows = kit.take(where // len(lies))
    reached, value = climb(site, rows, Spot.of(np.concatenate(spots, axis=1)), rules, bounds, rounds=rounds)
    best = _best_of_each(value, where, 1)
    order = where[best]
    stacked = reached.stack()[:, best[np.argsort(order)]].reshape(5, count, len(lies))
    return Best(lies, stacked, value[best[np.argsort(order)]].reshape(count, len(lies)))


def _best_of_each(value: Array, owner: Index, most: int) -> Index:
    """Return the rows of the best `most` values of each owner."""
    order = np.lexsort((-value, owner))
    ranked = owner[order]
    first = np.searchsorted(ranked, ranked, side="left")
    return np.asarray(order[np.arange(order.size) - first < most])


def _hopeless(site: Site, n: int, low: Array, high: Array) -> Array:
    """Return somewhere to begin where the skin leaves no room for both brackets: the best miss is found from there."""
    middle = np.broadcast_to((site.top + site.bottom) / 2, (n,))
    return np.stack([(low + high) / 2, np.full(n, 300.0), middle - 200.0, middle + 200.0, np.full(n, -50.0)])
