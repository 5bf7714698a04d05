"""Solids as triangle meshes, and how far apart two of them are, by a collision library.

Meshes are surfaces, so one solid wholly inside another is found by its corners. Round things are drawn with corners
on the true circle, one every `step` degrees: never larger than the thing itself, by radius · (1 - cos(step / 2)).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import fcl
import numpy as np
from numpy.typing import NDArray
from scipy.spatial import ConvexHull

Array = NDArray[np.float64]
TOUCH = 1e-9


@dataclass(frozen=True)
class Solid:
    """A convex solid: its corners (n, 3)."""

    corners: Array

    @cached_property
    def hull(self) -> ConvexHull:
        return ConvexHull(self.corners)

    @cached_property
    def model(self) -> Any:  # noqa: ANN401 - the library has no types
        return model(self.corners, self.hull.simplices)

    def holds(self, points: Array) -> bool:
        """Say whether any of the points (n, 3) lies inside."""
        faces = self.hull.equations
        return bool((points @ faces[:, :3].T + faces[:, 3] <= TOUCH).all(axis=1).any())


def model(corners: Array, triangles: NDArray[np.int64] | NDArray[np.int32]) -> Any:  # noqa: ANN401 - the library has no types
    """Return a mesh as the library wants it."""
    made = fcl.BVHModel()
    made.beginModel(len(corners), len(triangles))
    made.addSubModel(np.ascontiguousarray(corners), np.ascontiguousarray(triangles))
    made.endModel()
    return fcl.CollisionObject(made, fcl.Transform())


def gap(a: Any, b: Any) -> float:  # noqa: ANN401 - the library has no types
    """Return the distance of two meshes; zero where their surfaces cross."""
    return max(float(fcl.distance(a, b, fcl.DistanceRequest(), fcl.DistanceResult())), 0.0)


def apart(a: Solid, b: Solid) -> float:
    """Return the distance of two convex solids; zero where they overlap."""
    if a.holds(b.corners) or b.holds(a.corners):
        return 0.0
    return gap(a.model, b.model)


def upright(plan: Array, low: float, high: float) -> Solid:
    """Return what stands on a convex plan (n, 2) from low to high."""
    ends = [np.column_stack([plan, np.full(len(plan), z)]) for z in (low, high)]
    return Solid(np.concatenate(ends))


def cylinder(x: float, y: float, radius: float, low: float, high: float, step: float) -> Solid:
    """Return an upright cylinder."""
    turn = np.radians(np.arange(0.0, 360.0, step))
    return upright(np.column_stack([x + radius * np.cos(turn), y + radius * np.sin(turn)]), low, high)


def swung(
    x: float, y: float, length: float, angle: float, facing: float, low: float, high: float, step: float
) -> Solid | None:
    """Return all that a flat blade from the axis out to `length` sweeps through ± angle (degrees); None of no length."""
    if length <= 0.0:
        return None
    count = max(math.ceil(2.0 * angle / step), 1)
    turn = np.radians(np.linspace(-angle, angle, count + 1))
    edge = np.column_stack([x + facing * length * np.cos(turn), y + length * np.sin(turn)])
    return upright(np.concatenate([[[x, y]], edge]), low, high)


def box(ends: list[tuple[float, float]]) -> Array:
    """Return the eight corners of a box given by its ends along x, y and z."""
    return np.array([[x, y, z] for x in ends[0] for y in ends[1] for z in ends[2]])


def rod(start: Array, end: Array, radius: float, step: float, *, round_ends: bool) -> Solid:
    """Return a rod between two points: a cylinder, or with round ends all that is within `radius` of its axis."""
    axis = (end - start) / np.linalg.norm(end - start)
    side = np.cross(axis, [0.0, 0.0, 1.0] if abs(axis[2]) < 0.9 else [1.0, 0.0, 0.0])
    side /= np.linalg.norm(side)
    other = np.cross(axis, side)
    turn = np.radians(np.arange(0.0, 360.0, step))
    ring = np.cos(turn)[:, None] * side + np.sin(turn)[:, None] * other
    rings = [start + radius * ring, end + radius * ring]
    if round_ends:
        for tilt in np.radians(np.arange(step, 90.0, step)):
            rings += [start + radius * (math.cos(tilt) * ring - math.sin(tilt) * axis)]
            rings += [end + radius * (math.cos(tilt) * ring + math.sin(tilt) * axis)]
        rings += [(start - radius * axis)[None], (end + radius * axis)[None]]
    return Solid(np.concatenate(rings))
