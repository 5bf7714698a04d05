"""Distances between solids whose plan is a disc, a rectangle or a sector and whose sides are upright.

Two upright solids are apart by sqrt(plan distance² + height gap²), each floored at zero. A sector is a pie slice with
a half-angle of at most 90°, so it is convex and the nearest pair is found among its corners, its straight edges and its
arc, unless straight edges cross: exact, without sampling. Overlap comes back as zero or negative: where it can be told,
a search learns which way is out. All in mm, a sector's half-angle as cosine and sine; `facing` is +1 for one that
opens aft, -1 forward.
"""

from __future__ import annotations

import math

from service.core.compiled import compiled


@compiled
def apart(plan: float, height: float) -> float:
    """Join plan distance and height gap; where both overlap, the smaller way out, negative."""
    if plan < 0.0 and height < 0.0:
        return max(plan, height)
    plan, height = max(plan, 0.0), max(height, 0.0)
    return math.sqrt(plan * plan + height * height)


@compiled
def point_rectangle(x: float, y: float, x0: float, x1: float, y0: float, y1: float) -> float:
    """Return the distance of a point from a rectangle; negative inside. Ends may be infinite."""
    return apart(max(x0 - x, x - x1), max(y0 - y, y - y1))


@compiled
def point_segment(px: float, py: float, ax: float, ay: float, bx: float, by: float) -> tuple[float, float, float]:
    """Return the distance from a point to a segment, and the nearest point."""
    dx, dy = bx - ax, by - ay
    length = dx * dx + dy * dy
    t = 0.0
    if length > 0.0:
        t = min(max(((px - ax) * dx + (py - ay) * dy) / length, 0.0), 1.0)
    qx, qy = ax + t * dx, ay + t * dy
    return math.hypot(px - qx, py - qy), qx, qy


@compiled
def through(ax: float, ay: float, bx: float, by: float, x0: float, x1: float, y0: float, y1: float) -> bool:
    """Say whether a segment passes through a rectangle, whose ends may be infinite."""
    first, last = 0.0, 1.0
    for start, end, low, high in ((ax, bx, x0, x1), (ay, by, y0, y1)):
        along = end - start
        if along == 0.0:
            if start < low or start > high:
                return False
            continue
        near, far = (low - start) / along, (high - start) / along
        first, last = max(first, min(near, far)), min(last, max(near, far))
    return first <= last


@compiled
def crossing(
    ax: float, ay: float, bx: float, by: float, cx: float, cy: float, dx: float, dy: float
) -> bool:  # fmt: skip
    """Say whether the segments a-b and c-d cross."""
    ux, uy, vx, vy = bx - ax, by - ay, dx - cx, dy - cy
    turn = ux * vy - uy * vx
    if turn == 0.0:
        return False
    s = ((cx - ax) * vy - (cy - ay) * vx) / turn
    t = ((cx - ax) * uy - (cy - ay) * ux) / turn
    return 0.0 <= s <= 1.0 and 0.0 <= t <= 1.0


@compiled
def inside_angle(px: float, py: float, sx: float, sy: float, cos: float, facing: float) -> bool:
    """Say whether a point lies within a sector's angle, at any distance."""
    dx, dy = (px - sx) * facing, py - sy
    return dx >= math.sqrt(dx * dx + dy * dy) * cos


@compiled
def point_sector(
    px: float, py: float, sx: float, sy: float, radius: float, cos: float, sin: float, facing: float
) -> float:
    """Return the distance of a point from a sector; zero inside."""
    dx, dy = (px - sx) * facing, abs(py - sy)
    away = math.sqrt(dx * dx + dy * dy)
    if dx >= away * cos:
        return max(away - radius, 0.0)
    # by symmetry the edge on the point's own side is the nearer one
    along = min(max(dx * cos + dy * sin, 0.0), radius)
    return math.hypot(dx - along * cos, dy - along * sin)


@compiled
def sector_rectangle(
    sx: float, sy: float, radius: float, cos: float, sin: float, facing: float,
    x0: float, x1: float, y0: float, y1: float,
) -> float:  # fmt: skip
    """Return the distance of a sector from a rectangle; zero or less where they meet."""
    nx, ny = min(max(sx, x0), x1), min(max(sy, y0), y1)
    best = point_rectangle(sx, sy, x0, x1, y0, y1)
    if inside_angle(nx, ny, sx, sy, cos, facing):
        best = min(best, math.hypot(sx - nx, sy - ny) - radius)
    reach, side = radius * cos * facing, radius * sin
    for ex, ey in ((sx + reach, sy - side), (sx + reach, sy + side)):
        best = min(best, point_rectangle(ex, ey, x0, x1, y0, y1))
        if best > 0.0 and through(sx, sy, ex, ey, x0, x1, y0, y1):
            best = 0.0
    for cx in (x0, x1):
        for cy in (y0, y1):
            if math.isfinite(cx) and math.isfinite(cy):
                best = min(best, point_sector(cx, cy, sx, sy, radius, cos, sin, facing))
    return best


@compiled
def _half_pair(
    ax: float, ay: float, ra: float, ca: float, sa: float, fa: float,
    bx: float, by: float, rb: float, cb: float, sb: float, fb: float,
) -> float:  # fmt: skip
    """Return the least of: corners of a to b, and the straight edges of a to the arc of b."""
    reach, side = ra * ca * fa, ra * sa
    best = point_sector(ax, ay, bx, by, rb, cb, sb, fb)
    for sign in (-1.0, 1.0):
        ex, ey = ax + reach, ay + sign * side
        best = min(best, point_sector(ex, ey, bx, by, rb, cb, sb, fb))
        direct, qx, qy = point_segment(bx, by, ax, ay, ex, ey)
        if inside_angle(qx, qy, bx, by, cb, fb):
            best = min(best, direct - rb)
    return best


@compiled
def sectors(
    ax: float, ay: float, ra: float, ca: float, sa: float, fa: float,
    bx: float, by: float, rb: float, cb: float, sb: float, fb: float,
) -> float:  # fmt: skip
    """Return the distance of two sectors over every pair of their angles; zero or less where they meet."""
    best = min(
        _half_pair(ax, ay, ra, ca, sa, fa, bx, by, rb, cb, sb, fb),
        _half_pair(bx, by, rb, cb, sb, fb, ax, ay, ra, ca, sa, fa),
    )
    if inside_angle(bx, by, ax, ay, ca, fa) and inside_angle(ax, ay, bx, by, cb, fb):
        best = min(best, math.hypot(ax - bx, ay - by) - ra - rb)
    if best > 0.0:
        for one in (-1.0, 1.0):
            for other in (-1.0, 1.0):
                ex, ey = ax + ra * ca * fa, ay + one * ra * sa
                if crossing(ax, ay, ex, ey, bx, by, bx + rb * cb * fb, by + other * rb * sb):
                    best = 0.0
    return best


@compiled
def point_box(x: float, y: float, z: float, box: object) -> float:
    """Return the distance of a point from a box (x0, x1, y0, y1, z0, z1); zero inside."""
    dx = max(box[0] - x, x - box[1], 0.0)  # type: ignore[index]  # an array inside compiled code
    dy = max(box[2] - y, y - box[3], 0.0)  # type: ignore[index]  # the same
    dz = max(box[4] - z, z - box[5], 0.0)  # type: ignore[index]  # the same
    return math.sqrt(dx * dx + dy * dy + dz * dz)
