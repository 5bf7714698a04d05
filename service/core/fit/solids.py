"""Distances between solids whose plan is a disc, a rectangle or a sector and whose sides are upright.

Two upright solids are apart by sqrt(plan distance² + height gap²), each floored at zero. A sector is a pie slice
with a half-angle of at most 90°, so it is convex and the nearest pair is found among its corners, its straight
edges and its arc: exact, without sampling. Overlap comes back negative, so that a search knows which way is out.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Sector:
    """A slice about (x, y): radius, half-angle in radians; `facing` +1 opens aft, -1 forward."""

    x: Array
    y: Array
    radius: Array
    half: Array
    facing: float

    def corners(self) -> tuple[tuple[Array, Array], ...]:
        """Return apex and both ends of the arc."""
        reach, side = self.radius * np.cos(self.half) * self.facing, self.radius * np.sin(self.half)
        return (self.x, self.y), (self.x + reach, self.y - side), (self.x + reach, self.y + side)


def interval_gap(low_a: Array, high_a: Array, low_b: Array, high_b: Array) -> Array:
    """Return the gap between two intervals; negative by how far they overlap."""
    return np.maximum(low_b - high_a, low_a - high_b)


def apart(plan: Array, height: Array) -> Array:
    """Join plan distance and height gap; where both overlap, the smaller way out, negative.

    >>> float(apart(np.array(30.0), np.array(40.0)))
    50.0
    >>> float(apart(np.array(-5.0), np.array(-2.0)))
    -2.0
    """
    outside = np.hypot(np.maximum(plan, 0.0), np.maximum(height, 0.0))
    return np.where((plan < 0) & (height < 0), np.maximum(plan, height), outside)


def point_rectangle(x: Array, y: Array, box: tuple[Array, Array, Array, Array]) -> Array:
    """Return the plan distance of a point from a rectangle (x low, x high, y low, y high); negative inside."""
    x_low, x_high, y_low, y_high = box
    along = np.maximum(x_low - x, x - x_high)
    across = np.maximum(y_low - y, y - y_high)
    return apart(along, across)


def rectangles(a: tuple[Array, Array, Array, Array], b: tuple[Array, Array, Array, Array]) -> Array:
    """Return the plan distance of two rectangles with sides along x and y; negative where they overlap."""
    return apart(interval_gap(a[0], a[1], b[0], b[1]), interval_gap(a[2], a[3], b[2], b[3]))


def point_segment(px: Array, py: Array, a: tuple[Array, Array], b: tuple[Array, Array]) -> tuple[Array, Array, Array]:
    """Return distance from a point to a segment, and the nearest point."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    length = dx * dx + dy * dy
    t = np.clip(((px - a[0]) * dx + (py - a[1]) * dy) / np.where(length > 0, length, 1.0), 0.0, 1.0)
    qx, qy = a[0] + t * dx, a[1] + t * dy
    return np.hypot(px - qx, py - qy), qx, qy


def point_sector(px: Array, py: Array, sector: Sector) -> Array:
    """Return the distance of a point from a sector; zero inside."""
    dx, dy = (px - sector.x) * sector.facing, py - sector.y
    radius, angle = np.hypot(dx, dy), np.abs(np.arctan2(dy, dx))
    apex, low, high = sector.corners()
    edges = np.minimum(point_segment(px, py, apex, low)[0], point_segment(px, py, apex, high)[0])
    return np.where(angle <= sector.half, np.maximum(radius - sector.radius, 0.0), edges)


def _faces(sector: Sector, x: Array, y: Array) -> Array:
    angle = np.abs(np.arctan2(y - sector.y, (x - sector.x) * sector.facing))
    return np.asarray(angle <= sector.half)


def sector_rectangle(sector: Sector, box: tuple[Array, Array, Array, Array]) -> Array:
    """Return the plan distance of a sector from a rectangle; where they overlap, minus the apex's way out or zero."""
    near_x, near_y = np.clip(sector.x, box[0], box[1]), np.clip(sector.y, box[2], box[3])
    direct = np.hypot(sector.x - near_x, sector.y - near_y)
    best = np.where(_faces(sector, near_x, near_y), direct - sector.radius, np.inf)
    for x, y in sector.corners():
        best = np.minimum(best, point_rectangle(x, y, box))
    for x in box[:2]:
        for y in box[2:]:
            finite = np.isfinite(x) & np.isfinite(y)
            corner = point_sector(np.where(finite, x, 0.0), np.where(finite, y, 0.0), sector)
            best = np.minimum(best, np.where(finite, corner, np.inf))
    return best


def sectors(a: Sector, b: Sector) -> Array:
    """Return the plan distance of two sectors over every pair of their angles; zero or less where they meet."""
    best = np.full(np.broadcast_shapes(a.x.shape, b.x.shape), np.inf)
    for one, other in ((a, b), (b, a)):
        for x, y in one.corners():
            best = np.minimum(best, point_sector(x, y, other))
        apex, *ends = one.corners()
        for end in ends:
            direct, x, y = point_segment(other.x, other.y, apex, end)
            best = np.minimum(best, np.where(_faces(other, x, y), direct - other.radius, np.inf))
    across = np.hypot(a.x - b.x, a.y - b.y) - a.radius - b.radius
    meet = _faces(a, b.x, b.y) & _faces(b, a.x, a.y)
    return np.where(meet, np.minimum(best, across), best)


def segment_rectangle_profile(z: Array, x: Array, front: Array, low: Array, high: Array) -> Array:
    """Return the least distance in a vertical plane from a polyline to an upright face.

    The polyline runs through (x, z), both (K, N), solid forward of it; the face stands at `front` (N,) from `low` to
    `high` and everything aft of it is the moving thing. Negative where the face stands forward of the skin at a
    height they share.
    """
    zc = np.clip(z, low, high)
    gap = front - x
    shared = (z >= low) & (z <= high)
    best = np.where(shared, gap, np.hypot(np.maximum(gap, 0.0), z - zc)).min(axis=0)
    for corner in (low, high):
        for k in range(z.shape[0] - 1):
            a, b = (x[k], z[k]), (x[k + 1], z[k + 1])
            distance, _, _ = point_segment(front, corner, a, b)
            at = np.clip((corner - z[k]) / np.where(z[k + 1] != z[k], z[k + 1] - z[k], 1.0), 0.0, 1.0)
            inside = (corner >= np.minimum(z[k], z[k + 1])) & (corner <= np.maximum(z[k], z[k + 1]))
            signed = front - (x[k] + at * (x[k + 1] - x[k]))
            best = np.minimum(best, np.where(inside & (signed < 0), signed, distance))
    return best
