"""Small exact tools of the clearances: gaps of intervals, the least of a bowl-shaped function, a rod and a box."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled

Array = NDArray[np.float64]
INF = math.inf
NEAR = 250.0
"""A clearance surely larger than this (mm) is not worked out further while searching."""
GOLDEN = (math.sqrt(5.0) - 1.0) / 2.0
CLOSE = 0.02
"""A search along a length ends when what is left of it is this short (mm)."""
LEVEL = 1e-7
"""A slope (mm² along the whole segment) or a share of the segment too small to matter."""


@compiled
def interval_gap(a0: float, a1: float, b0: float, b1: float) -> float:
    """Return the gap between two intervals; negative by how far they overlap."""
    return max(b0 - a1, a0 - b1)


@compiled
def rounds(length: float) -> int:
    """Return how many steps of a golden section bring a stretch of `length` mm down to CLOSE."""
    return 2 if length <= CLOSE else int(math.log(CLOSE / length) / math.log(GOLDEN)) + 2


@compiled
def rod_box(ax: float, ay: float, az: float, bx: float, by: float, bz: float, box: Array) -> float:
    """Return the distance of the segment a-b from a box (x0, x1, y0, y1, z0, z1); zero where they meet.

    The squared distance of a point of the segment is a bowl made of parabolas; its slope is a rising line of straight
    stretches, whose zero is found by false position (Illinois rule).
    """
    low, high = 0.0, 1.0
    at_low, _ = _slope(ax, ay, az, bx, by, bz, box, 0.0)
    if at_low >= 0.0:
        return math.sqrt(_slope(ax, ay, az, bx, by, bz, box, 0.0)[1])
    at_high, last = _slope(ax, ay, az, bx, by, bz, box, 1.0)
    if at_high <= 0.0:
        return math.sqrt(last)
    best, kept = last, 0
    for _ in range(60):
        s = (low * at_high - high * at_low) / (at_high - at_low)
        slope, squared = _slope(ax, ay, az, bx, by, bz, box, s)
        best = min(best, squared)
        if squared <= 0.0 or abs(slope) < LEVEL or high - low < LEVEL:
            break
        if slope < 0.0:
            low, at_low = s, slope
            if kept < 0:
                at_high /= 2.0
            kept = -1
        else:
            high, at_high = s, slope
            if kept > 0:
                at_low /= 2.0
            kept = 1
    return math.sqrt(best)


@compiled
def _slope(
    ax: float, ay: float, az: float, bx: float, by: float, bz: float, box: Array, s: float
) -> tuple[float, float]:
    """Return how the squared distance of the point s along a segment changes, and the squared distance."""
    dx, dy, dz = bx - ax, by - ay, bz - az
    x, y, z = ax + s * dx, ay + s * dy, az + s * dz
    ex = x - min(max(x, box[0]), box[1])
    ey = y - min(max(y, box[2]), box[3])
    ez = z - min(max(z, box[4]), box[5])
    return 2.0 * (ex * dx + ey * dy + ez * dz), ex * ex + ey * ey + ez * ez
