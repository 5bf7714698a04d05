"""Clearances: the gear against the main rudder, the hull and what stands on the stern."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from service.core.fit.compiled import compiled
from service.core.fit.kit import G, Kit, M
from service.core.fit.mounts import Seated
from service.core.fit.site import NO_CURVE, SECTIONS, Flag, S, Site, skin
from service.core.fit.solids import (
    apart,
    point_box,
    point_rectangle,
    point_sector,
    point_segment,
    sector_rectangle,
    sectors,
)

Array = NDArray[np.float64]
INF = math.inf
FAR_BELOW = -5000.0
ALONG = 17
"""Points taken along a strut."""
STAGES = 17
"""Positions taken of a moving obstacle, ends included; between both ends each is a box, their union the hull of both."""
NEAR = 250.0
"""A clearance surely larger than this (mm) is not worked out further while searching."""


@compiled
def interval_gap(a0: float, a1: float, b0: float, b1: float) -> float:
    """Return the gap between two intervals; negative by how far they overlap."""
    return max(b0 - a1, a0 - b1)


# --- main rudder ------------------------------------------------------------------------------------------


@compiled
def rudder_blade(site: Site, i: int, kit: Kit, k: int, x: float, y: float, bottom: float, near: float) -> float:
    """Return the least distance of the gear's blade from the main rudder over every pair of angles (mm).

    Both sweep upright solids about their stocks. Where they meet in plan, how far aft the blade would have to go
    tells the search which way is out. Beyond `near` a lower bound serves.
    """
    high = bottom - kit.gear[k, G.ROOT_GAP]
    height = interval_gap(
        high - kit.gear[k, G.SPAN], high, site.values[i, S.RUDDER_BOTTOM], site.values[i, S.RUDDER_TOP]
    )
    ahead = x - kit.gear[k, G.BALANCE] - max(site.values[i, S.TRAILING], site.values[i, S.STOCK])
    if apart(ahead, height) > near:
        return apart(ahead, height)
    stock = site.values[i, S.STOCK]
    aft, fore = max(site.values[i, S.TRAILING] - stock, 0.0), max(stock - site.values[i, S.LEADING], 0.0)
    cos, sin = site.values[i, S.RUDDER_COS], site.values[i, S.RUDDER_SIN]
    own_cos, own_sin = kit.gear[k, G.BLADE_COS], kit.gear[k, G.BLADE_SIN]
    balance, tail = kit.gear[k, G.BALANCE], kit.gear[k, G.TAIL]
    offset = site.values[i, S.RUDDER_OFFSET]
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
        plan = min(x - kit.gear[k, G.BALANCE] - site.values[i, S.TRAILING], 0.0)
    return apart(plan, height)


@compiled
def rudder_solids(
    site: Site, i: int, kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float],
    low: Seated, up: Seated,
) -> float:  # fmt: skip
    """Return the least distance of shaft, arms and struts from a main rudder hung outside, at any of its angles."""
    stock, trailing = site.values[i, S.STOCK], site.values[i, S.TRAILING]
    radius, cos, sin = max(trailing - stock, 0.0), site.values[i, S.RUDDER_COS], site.values[i, S.RUDDER_SIN]
    r0, r1 = site.values[i, S.RUDDER_BOTTOM], site.values[i, S.RUDDER_TOP]
    best = INF
    for side in (-1.0, 1.0):
        if side < 0.0 and site.values[i, S.RUDDER_OFFSET] == 0.0:
            continue
        at = side * site.values[i, S.RUDDER_OFFSET]
        plan = point_sector(x, y, stock, at, radius, cos, sin, 1.0) - kit.gear[k, G.TUBE]
        if plan <= 0.0:
            plan = min(x - kit.gear[k, G.TUBE] - trailing, 0.0)
        best = min(best, apart(plan, interval_gap(bottom, bottom + kit.gear[k, G.LENGTH], r0, r1)))
        for upper in range(2):
            seated = up if upper else low
            m = kit.upper if upper else kit.lower
            collar = collars[1] if upper else collars[0]
            w, h = m[k, M.WIDTH] / 2.0, m[k, M.COLLAR] / 2.0
            plan = sector_rectangle(stock, at, radius, cos, sin, 1.0, min(x - seated.reach, x), x, y - w, y + w)
            if plan <= 0.0:
                plan = -max(min(radius, x - stock), 1.0)
            best = min(best, apart(plan, interval_gap(collar - h, collar + h, r0, r1)))
            if seated.strut_length > 0.0:
                thin = m[k, M.STRUT_RADIUS]
                for n in range(2 * ALONG):
                    px, py, pz = strut_point(seated, x, y, collar, n)
                    plan = point_sector(px, py, stock, at, radius, cos, sin, 1.0) - thin
                    best = min(best, apart(plan, interval_gap(pz, pz, r0, r1)))
    return best


@compiled
def strut_point(seated: Seated, x: float, y: float, collar: float, n: int) -> tuple[float, float, float]:
    """Return one of 2 · ALONG points on the axes of both struts, from foot to collar."""
    end = -1.0 if n < ALONG else 1.0
    fx = seated.foot_port if n < ALONG else seated.foot_starboard
    s = (n % ALONG) / (ALONG - 1)
    return fx + s * (x - fx), y + (1.0 - s) * end * seated.spread / 2.0, seated.foot_z + s * (collar - seated.foot_z)


# --- hull -------------------------------------------------------------------------------------------------


@compiled
def hull(site: Site, i: int, x: float, y: float, radius: float, low: float, high: float) -> float:
    """Return the distance of an upright cylinder (or swept blade) about (x, y) from the skin and the deck edge.

    The skin is taken at the cylinder's side where it stands furthest aft (the one nearest the centreline, or the outer
    one where the camber is hollow), with the whole radius forward: never less careful than the true shape, by a
    millimetre or two at usual cambers.
    """
    side = max(abs(y) - radius, 0.0)
    if site.values[i, S.CAMBER] < 0.0 and site.flags[Flag.CURVE] != SECTIONS:
        side = min(abs(y) + radius, site.values[i, S.HALF_TOP])
    if y < 0.0:
        side = -side
    front = x - radius
    top, bottom = site.values[i, S.TOP], site.values[i, S.BOTTOM]
    if low >= top:
        edge, _, _ = skin(site, i, side, top)
        return math.hypot(max(front - edge, 0.0), low - top)
    count = 2
    if site.flags[Flag.CURVE] != NO_CURVE:
        count = 13
    elif site.flags[Flag.STEPPED]:
        count = 4
    before_x, _, _ = skin(site, i, side, bottom)
    before_z = FAR_BELOW
    best = INF
    for n in range(count):
        if count == 4:  # noqa: PLR2004 - the four corners of a scoop
            step = site.values[i, S.STEP_HEIGHT]
            z = bottom if n == 0 else (step - 1e-6 if n == 1 else (step if n == 2 else top))  # noqa: PLR2004 - the same
        else:
            z = bottom + (top - bottom) * n / (count - 1)
        at_x, _, _ = skin(site, i, side, z)
        best = min(best, _face(front, low, high, before_x, before_z, at_x, z))
        before_x, before_z = at_x, z
    return best


@compiled
def _face(front: float, low: float, high: float, ax: float, az: float, bx: float, bz: float) -> float:
    """Return the distance of an upright face from one straight stretch of skin, in their vertical plane; signed."""
    best = INF
    for px, pz in ((ax, az), (bx, bz)):
        if low <= pz <= high:
            best = min(best, front - px)
        else:
            best = min(best, math.hypot(max(front - px, 0.0), pz - min(max(pz, low), high)))
    for corner in (low, high):
        if min(az, bz) <= corner <= max(az, bz) and bz != az:
            at = ax + (bx - ax) * (corner - az) / (bz - az)
            if front < at:
                best = min(best, front - at)
                continue
        distance, _, _ = point_segment(front, corner, ax, az, bx, bz)
        best = min(best, distance)
    return best


# --- obstacles --------------------------------------------------------------------------------------------


@compiled
def obstacle(
    site: Site, i: int, place: int, kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float],
    low: Seated, up: Seated, near: float, gaps: Array,
) -> None:  # fmt: skip
    """Write into `gaps` the least gap of each of PARTS from one box, in all its positions (mm)."""
    gaps[:] = INF
    box = np.empty(6)
    stages = STAGES if site.box_info[place, 1] else 1
    for n in range(stages):
        s = n / (stages - 1) if stages > 1 else 0.0
        for e in range(6):
            start, end = site.boxes[i, place, e], site.boxes[i, place, 6 + e]
            if s == 0.0 or not math.isfinite(end):
                box[e] = start
            elif s == 1.0 or not math.isfinite(start):
                box[e] = end
            else:
                box[e] = (1.0 - s) * start + s * end
        _box_gaps(kit, k, x, y, bottom, collars, low, up, box, near, gaps)


PARTS = ("shaft", "head", "tiller", "vane", "blade", "lower arm", "upper arm", "lower struts", "upper struts")


@compiled
def _box_gaps(
    kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float], low: Seated, up: Seated,
    box: Array, near: float, gaps: Array,
) -> None:  # fmt: skip
    x0, x1, y0, y1, z0, z1 = box[0], box[1], box[2], box[3], box[4], box[5]
    top = bottom + kit.gear[k, G.LENGTH]
    centre = point_rectangle(x, y, x0, x1, y0, y1)
    gaps[0] = min(gaps[0], apart(centre - kit.gear[k, G.TUBE], interval_gap(bottom, top, z0, z1)))
    gaps[1] = min(
        gaps[1], apart(centre - kit.gear[k, G.HEAD_RADIUS], interval_gap(top, top + kit.gear[k, G.HEAD_HEIGHT], z0, z1))
    )
    gaps[2] = min(
        gaps[2],
        apart(centre - kit.gear[k, G.TILLER_RADIUS], interval_gap(top - kit.gear[k, G.TILLER_HEIGHT], top, z0, z1)),
    )
    vane = interval_gap(top + kit.gear[k, G.VANE_BOTTOM], top + kit.gear[k, G.VANE_TOP], z0, z1)
    gaps[3] = min(gaps[3], apart(centre - kit.gear[k, G.VANE_RADIUS], vane))
    high = bottom - kit.gear[k, G.ROOT_GAP]
    height = interval_gap(high - kit.gear[k, G.SPAN], high, z0, z1)
    blade = apart(centre - max(kit.gear[k, G.TAIL], kit.gear[k, G.BALANCE]), height)
    if blade < near:
        cos, sin = kit.gear[k, G.BLADE_COS], kit.gear[k, G.BLADE_SIN]
        plan = min(
            sector_rectangle(x, y, kit.gear[k, G.BALANCE], cos, sin, -1.0, x0, x1, y0, y1),
            sector_rectangle(x, y, kit.gear[k, G.TAIL], cos, sin, 1.0, x0, x1, y0, y1),
        )
        blade = apart(plan, height)
    gaps[4] = min(gaps[4], blade)
    gaps[5] = min(gaps[5], _arm(kit.lower, k, x, y, collars[0], low, box))
    gaps[6] = min(gaps[6], _arm(kit.upper, k, x, y, collars[1], up, box))
    gaps[7] = min(gaps[7], _strut(kit.lower, k, x, y, collars[0], low, box))
    gaps[8] = min(gaps[8], _strut(kit.upper, k, x, y, collars[1], up, box))


@compiled
def _arm(m: Array, k: int, x: float, y: float, collar: float, seated: Seated, box: Array) -> float:
    """Return the gap of an arm, a box from flange to collar, flange wide, collar high."""
    w, h = m[k, M.WIDTH] / 2.0, m[k, M.COLLAR] / 2.0
    along = interval_gap(min(x - seated.reach, x), x, box[0], box[1])
    across = interval_gap(y - w, y + w, box[2], box[3])
    return apart(apart(along, across), interval_gap(collar - h, collar + h, box[4], box[5]))


@compiled
def _strut(m: Array, k: int, x: float, y: float, collar: float, seated: Seated, box: Array) -> float:
    if seated.strut_length <= 0.0:
        return INF
    best = INF
    for n in range(2 * ALONG):
        px, py, pz = strut_point(seated, x, y, collar, n)
        best = min(best, point_box(px, py, pz, box))
    return best - m[k, M.STRUT_RADIUS]
