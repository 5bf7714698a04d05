"""What stands on the stern: the gap of each part of the gear from an obstacle, in every position of a moving one.

An obstacle is a box; a moving one sweeps the convex hull of where it stands and where it ends. That hull is the union
of the boxes in between, and the gap of a convex part from them is a bowl over the way moved: its least is found by
golden section. A part whose surroundings are already further off than the least found is not looked at.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled
from service.core.fit.bits import GOLDEN, INF, interval_gap, rod_box, rounds
from service.core.fit.kit import STEP, G, Kit, M
from service.core.fit.mounts import Seated
from service.core.fit.site import Site
from service.core.fit.solids import apart, point_rectangle, sector_rectangle

Array = NDArray[np.float64]
PARTS = (
    "shaft", "head", "tiller", "vane", "blade aft", "blade forward", "lower arm", "upper arm", "lower strut to port",
    "lower strut to starboard", "upper strut to port", "upper strut to starboard", "lower flange", "upper flange",
)  # fmt: skip
BLADE, ARM, STRUT, FLANGE = 4, 6, 8, 12
"""Places in PARTS: the blade aft of the axis (then forward of it: each is convex), the first arm, strut and flange."""


@compiled
def surroundings(
    kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float], low: Seated, up: Seated
) -> Array:
    """Return a box about each of PARTS (14, 6); its first end is inf where the configuration has no such part."""
    around = np.empty((len(PARTS), 6))
    for part in range(len(PARTS)):
        around[part] = _bounds(kit, k, x, y, bottom, collars, low, up, part)
    return around


@compiled
def obstacle(
    boxes: Array, kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float],
    low: Seated, up: Seated, near: float, around: Array, scratch: Array,
) -> float:  # fmt: skip
    """Return the least gap (mm) of any part from one obstacle's box, in all its positions. Beyond `near` a lower bound.

    `boxes` (12,): where it stands and where it ends; `around` from `surroundings`; `scratch` (5, 14) is written over.
    """
    start, end, about, box, fars = scratch[0, :6], scratch[1, :6], scratch[2, :6], scratch[3, :6], scratch[4]
    travel = _ends(boxes, start, end, about)
    for part in range(len(PARTS)):
        fars[part] = INF
        if around[part, 0] != INF:
            squared = 0.0
            for e in (0, 2, 4):
                gap = max(interval_gap(around[part, e], around[part, e + 1], about[e], about[e + 1]), 0.0)
                squared += gap * gap
            fars[part] = math.sqrt(squared)
    best = INF
    for _ in range(len(PARTS)):
        part = int(np.argmin(fars))
        if fars[part] > 0.0 and fars[part] >= best:
            break
        if fars[part] > near:
            return fars[part]
        best = min(best, _least(kit, k, x, y, bottom, collars, low, up, part, start, end, travel, box))
        fars[part] = INF
    return best


@compiled
def part_gap(
    site: Site, i: int, place: int, kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float],
    low: Seated, up: Seated, part: int,
) -> float:  # fmt: skip
    """Return the gap (mm) of one of PARTS from one obstacle's box, in all its positions; inf where it has no such part."""
    start, end, around = np.empty(6), np.empty(6), np.empty(6)
    travel = _ends(site.boxes[i, place], start, end, around)
    if _bounds(kit, k, x, y, bottom, collars, low, up, part)[0] == INF:
        return INF
    return _least(kit, k, x, y, bottom, collars, low, up, part, start, end, travel, around)


@compiled
def _ends(boxes: Array, start: Array, end: Array, around: Array) -> float:
    """Write both ends of a box's way and the box about both; return how far the way is (mm).

    Where one end of the way is unbounded, all of the way is: so is the hull of both.
    """
    travel = 0.0
    for e in range(6):
        one, two = boxes[e], boxes[6 + e]
        if not (math.isfinite(one) and math.isfinite(two)):
            one = one if not math.isfinite(one) else two
            two = one
        start[e], end[e] = one, two
        around[e] = min(one, two) if e % 2 == 0 else max(one, two)
        if one != two:
            travel = max(travel, abs(two - one))
    return travel


@compiled
def _bounds(
    kit: Kit,
    k: int,
    x: float,
    y: float,
    bottom: float,
    collars: tuple[float, float],
    low: Seated,
    up: Seated,
    part: int,
) -> tuple[float, float, float, float, float, float]:
    """Return a box about a part; its first end is inf where the configuration has no such part."""
    if part >= FLANGE:
        if part > FLANGE:
            return _flange(kit.upper, k, up, y, collars[1])
        return _flange(kit.lower, k, low, y, collars[0])
    if part >= ARM:
        upper = (part - ARM) % 2 == 1 if part < STRUT else part - STRUT >= 2  # noqa: PLR2004 - two struts each
        seated, m = (up, kit.upper) if upper else (low, kit.lower)
        collar = collars[1] if upper else collars[0]
        if part < STRUT:
            w, h = m[k, M.WIDTH] / 2.0, m[k, M.COLLAR] / 2.0
            fore, aft = min(x - seated.reach, x), max(x - seated.reach, x)
            return fore, aft, y - w, y + w, collar - h, collar + h
        if seated.strut_length <= 0.0:
            return INF, INF, INF, INF, INF, INF
        r = m[k, M.STRUT_RADIUS]
        fx, fy = _foot(seated, y, part)
        z = seated.foot_z
        return min(fx, x) - r, max(fx, x) + r, min(fy, y) - r, max(fy, y) + r, min(z, collar) - r, max(z, collar) + r
    r, z0, z1 = _upright(kit, k, bottom, part)
    return x - r, x + r, y - r, y + r, z0, z1


@compiled
def _flange(
    m: Array, k: int, seated: Seated, y: float, collar: float
) -> tuple[float, float, float, float, float, float]:
    """Return a box about a flange and its pad, which lie along the skin; about base and column of one that stands on a step."""
    w, h = m[k, M.WIDTH] / 2.0, m[k, M.HEIGHT] / 2.0
    if m[k, M.KIND] == STEP:
        return seated.x - h, seated.x + h, y - w, y + w, seated.flange, collar + m[k, M.COLLAR] / 2.0
    lean = h * abs(seated.rake) + w * abs(seated.plan)
    aft = seated.x + max(seated.pad, 0.0) + m[k, M.THICKNESS] + lean
    return seated.x - lean, aft, y - w, y + w, seated.flange - h, seated.flange + h


@compiled
def _upright(kit: Kit, k: int, bottom: float, part: int) -> tuple[float, float, float]:
    """Return radius, lower and upper end of shaft, head, tiller, vane or what the blade sweeps."""
    top = bottom + kit.gear[k, G.LENGTH]
    if part == 0:
        return kit.gear[k, G.TUBE], bottom, top
    if part == 1:
        return kit.gear[k, G.HEAD_RADIUS], top, top + kit.gear[k, G.HEAD_HEIGHT]
    if part == 2:  # noqa: PLR2004 - a place in PARTS
        return kit.gear[k, G.TILLER_RADIUS], top - kit.gear[k, G.TILLER_HEIGHT], top
    if part in (BLADE, BLADE + 1):
        high = bottom - kit.gear[k, G.ROOT_GAP]
        radius = kit.gear[k, G.TAIL] if part == BLADE else kit.gear[k, G.BALANCE]
        return radius, high - kit.gear[k, G.SPAN], high
    return kit.gear[k, G.VANE_RADIUS], top + kit.gear[k, G.VANE_BOTTOM], top + kit.gear[k, G.VANE_TOP]


@compiled
def _foot(seated: Seated, y: float, part: int) -> tuple[float, float]:
    if (part - STRUT) % 2 == 0:
        return seated.foot_port, y - seated.spread / 2.0
    return seated.foot_starboard, y + seated.spread / 2.0


@compiled
def _least(
    kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float], low: Seated, up: Seated,
    part: int, start: Array, end: Array, travel: float, box: Array,
) -> float:  # fmt: skip
    """Return the least gap of one part along the way from `start` to `end`; `box` (6,) is scratch."""
    at_start = _gap(kit, k, x, y, bottom, collars, low, up, part, start)
    if travel == 0.0:
        return at_start
    best = min(at_start, _gap(kit, k, x, y, bottom, collars, low, up, part, end))
    first, last = 0.0, 1.0
    a, b = 1.0 - GOLDEN, GOLDEN
    _between(start, end, a, box)
    at_a = _gap(kit, k, x, y, bottom, collars, low, up, part, box)
    _between(start, end, b, box)
    at_b = _gap(kit, k, x, y, bottom, collars, low, up, part, box)
    for _ in range(rounds(travel)):
        if at_a <= at_b:
            last, b, at_b = b, a, at_a
            a = last - GOLDEN * (last - first)
            _between(start, end, a, box)
            at_a = _gap(kit, k, x, y, bottom, collars, low, up, part, box)
        else:
            first, a, at_a = a, b, at_b
            b = first + GOLDEN * (last - first)
            _between(start, end, b, box)
            at_b = _gap(kit, k, x, y, bottom, collars, low, up, part, box)
    return min(best, at_a, at_b)


@compiled
def _between(start: Array, end: Array, s: float, box: Array) -> None:
    for e in range(6):
        box[e] = start[e] if start[e] == end[e] else (1.0 - s) * start[e] + s * end[e]


@compiled
def _gap(
    kit: Kit, k: int, x: float, y: float, bottom: float, collars: tuple[float, float], low: Seated, up: Seated,
    part: int, box: Array,
) -> float:  # fmt: skip
    """Return the gap of one part from one box; negative where they overlap."""
    if part >= ARM:
        return _metal_gap(kit, k, x, y, collars, low, up, part, box)
    radius, z0, z1 = _upright(kit, k, bottom, part)
    height = interval_gap(z0, z1, box[4], box[5])
    if part in (BLADE, BLADE + 1):
        cos, sin, facing = kit.gear[k, G.BLADE_COS], kit.gear[k, G.BLADE_SIN], 1.0 if part == BLADE else -1.0
        plan = sector_rectangle(x, y, radius, cos, sin, facing, box[0], box[1], box[2], box[3])
        return apart(plan, height)
    return apart(point_rectangle(x, y, box[0], box[1], box[2], box[3]) - radius, height)


@compiled
def _metal_gap(
    kit: Kit, k: int, x: float, y: float, collars: tuple[float, float], low: Seated, up: Seated, part: int, box: Array
) -> float:
    """Return the gap of an arm, a box from flange to collar, of a flange, or of a strut: all within its radius of its axis."""
    if part < STRUT or part >= FLANGE:
        around = _bounds(kit, k, x, y, 0.0, collars, low, up, part)
        along = interval_gap(around[0], around[1], box[0], box[1])
        across = interval_gap(around[2], around[3], box[2], box[3])
        return apart(apart(along, across), interval_gap(around[4], around[5], box[4], box[5]))
    upper = part - STRUT >= 2  # noqa: PLR2004 - two struts each
    seated = up if upper else low
    fx, fy = _foot(seated, y, part)
    radius = kit.upper[k, M.STRUT_RADIUS] if upper else kit.lower[k, M.STRUT_RADIUS]
    return rod_box(fx, fy, seated.foot_z, x, y, collars[1] if upper else collars[0], box) - radius
