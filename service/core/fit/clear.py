"""Clearances of the gear from the boat's own rudder, at every pair of angles."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled
from service.core.fit.bits import GOLDEN, INF, NEAR, interval_gap, rounds
from service.core.fit.kit import G, Kit, M
from service.core.fit.mounts import Seated
from service.core.fit.site import S
from service.core.fit.solids import apart, point_sector, sector_rectangle, sectors

__all__ = ["INF", "NEAR", "rudder_blade", "rudder_solids"]

Array = NDArray[np.float64]


@compiled
def rudder_blade(values: Array, i: int, kit: Kit, k: int, x: float, y: float, bottom: float, near: float) -> float:
    """Return the least distance of the gear's blade from the main rudder over every pair of angles (mm).

    Both sweep upright solids about their stocks. Where they meet in plan, how far aft the blade would have to go
    tells the search which way is out. Beyond `near` a lower bound serves.
    """
    high = bottom - kit.gear[k, G.ROOT_GAP]
    height = interval_gap(high - kit.gear[k, G.SPAN], high, values[i, S.RUDDER_BOTTOM], values[i, S.RUDDER_TOP])
    ahead = x - kit.gear[k, G.BALANCE] - max(values[i, S.TRAILING], values[i, S.STOCK])
    if apart(ahead, height) > near:
        return apart(ahead, height)
    stock = values[i, S.STOCK]
    aft, fore = max(values[i, S.TRAILING] - stock, 0.0), max(stock - values[i, S.LEADING], 0.0)
    cos, sin = values[i, S.RUDDER_COS], values[i, S.RUDDER_SIN]
    own_cos, own_sin = kit.gear[k, G.BLADE_COS], kit.gear[k, G.BLADE_SIN]
    balance, tail = kit.gear[k, G.BALANCE], kit.gear[k, G.TAIL]
    offset = values[i, S.RUDDER_OFFSET]
    plan = INF
    for side in (-1.0, 1.0):
        if side < 0.0 and offset == 0.0:
            continue
        at = side * offset
        plan = min(plan, sectors(stock, at, aft, cos, sin, 1.0, x, y, balance, own_cos, own_sin, -1.0))
        plan = min(plan, sectors(stock, at, aft, cos, sin, 1.0, x, y, tail, own_cos, own_sin, 1.0))
        if (
            fore > 0.0 and near == INF
        ):  # the part forward of the stock never stands nearest, but an exact figure counts it
            plan = min(plan, sectors(stock, at, fore, cos, sin, -1.0, x, y, balance, own_cos, own_sin, -1.0))
            plan = min(plan, sectors(stock, at, fore, cos, sin, -1.0, x, y, tail, own_cos, own_sin, 1.0))
    if plan <= 0.0:
        plan = min(x - kit.gear[k, G.BALANCE] - values[i, S.TRAILING], 0.0)
    return apart(plan, height)


@compiled
def rudder_solids(
    values: Array, i: int, kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float],
    low: Seated, up: Seated,
) -> float:  # fmt: skip
    """Return the least distance of shaft, arms and struts from a main rudder hung outside, at any of its angles (mm).

    Where they meet in plan, how far aft the metal would have to go tells the search which way is out.
    """
    stock = values[i, S.STOCK]
    aft, fore = max(values[i, S.TRAILING] - stock, 0.0), max(stock - values[i, S.LEADING], 0.0)
    best = INF
    for side in (-1.0, 1.0):
        at = side * values[i, S.RUDDER_OFFSET]
        if side < 0.0 and at == 0.0:
            continue
        best = min(best, _metal_sector(values, i, kit, k, x, y, bottom, collars, low, up, at, aft, 1.0))
        if fore > 0.0:
            best = min(best, _metal_sector(values, i, kit, k, x, y, bottom, collars, low, up, at, fore, -1.0))
    return best


@compiled
def _metal_sector(
    values: Array, i: int, kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float],
    low: Seated, up: Seated, at: float, radius: float, facing: float,
) -> float:  # fmt: skip
    """Return the same for what one rudder sweeps aft or forward of its stock."""
    stock, out = values[i, S.STOCK], max(values[i, S.TRAILING], values[i, S.STOCK])
    cos, sin = values[i, S.RUDDER_COS], values[i, S.RUDDER_SIN]
    r0, r1 = values[i, S.RUDDER_BOTTOM], values[i, S.RUDDER_TOP]
    plan = point_sector(x, y, stock, at, radius, cos, sin, facing) - kit.gear[k, G.TUBE]
    if plan <= 0.0:
        plan = min(x - kit.gear[k, G.TUBE] - out, 0.0)
    best = apart(plan, interval_gap(bottom, bottom + kit.gear[k, G.LENGTH], r0, r1))
    for upper in range(2):
        seated = up if upper else low
        m = kit.upper if upper else kit.lower
        collar = collars[1] if upper else collars[0]
        w, h = m[k, M.WIDTH] / 2.0, m[k, M.COLLAR] / 2.0
        plan = sector_rectangle(
            stock, at, radius, cos, sin, facing, min(x - seated.reach, x), max(x - seated.reach, x), y - w, y + w
        )
        if plan <= 0.0:
            plan = -max(min(radius, x - stock), 1.0)
        best = min(best, apart(plan, interval_gap(collar - h, collar + h, r0, r1)))
        if seated.strut_length > 0.0:
            for end in (-1.0, 1.0):
                gap = _strut_sector(seated, x, y, collar, end, stock, at, radius, cos, sin, facing, r0, r1)
                best = min(best, gap - m[k, M.STRUT_RADIUS])
    return best


@compiled
def _strut_sector(
    seated: Seated, x: float, y: float, collar: float, end: float, stock: float, at: float, radius: float,
    cos: float, sin: float, facing: float, r0: float, r1: float,
) -> float:  # fmt: skip
    """Return the distance of a strut's axis from what the rudder sweeps, a convex solid: a bowl along the strut."""
    fx = seated.foot_port if end < 0.0 else seated.foot_starboard
    first, last, best = 0.0, 1.0, INF
    for turn in range(rounds(seated.strut_length)):
        a, b = last - GOLDEN * (last - first), first + GOLDEN * (last - first)
        if turn == 0:
            a, b = 0.0, 1.0
        at_a = _off_sector(seated, fx, x, y, collar, end, a, stock, at, radius, cos, sin, facing, r0, r1)
        at_b = _off_sector(seated, fx, x, y, collar, end, b, stock, at, radius, cos, sin, facing, r0, r1)
        best = min(best, at_a, at_b)
        if turn == 0:
            continue
        if at_a <= at_b:
            last = b
        else:
            first = a
    return best


@compiled
def _off_sector(
    seated: Seated, fx: float, x: float, y: float, collar: float, end: float, s: float, stock: float, at: float,
    radius: float, cos: float, sin: float, facing: float, r0: float, r1: float,
) -> float:  # fmt: skip
    """Return how far the point at share s of a strut's axis, from its foot at `fx`, is from what the rudder sweeps."""
    px, py = fx + s * (x - fx), y + (1.0 - s) * end * seated.spread / 2.0
    pz = seated.foot_z + s * (collar - seated.foot_z)
    plan = point_sector(px, py, stock, at, radius, cos, sin, facing)
    return math.hypot(plan, max(r0 - pz, pz - r1, 0.0))
