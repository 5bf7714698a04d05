"""The referee's own reading of the stern: X(y, z) as FIT's exact meanings give it, and the hull as a mesh.

Shares nothing with the engine: curves come from scipy, the hull is triangles.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray
from scipy.interpolate import PchipInterpolator

from service.core.boat import BoatForm

Array = NDArray[np.float64]
FAR = 4000.0
"""Ends that are not known, and the hull below and forward, are drawn this far (mm)."""


def need(value: float | None) -> float:
    """Return a value that the form must hold."""
    if value is None:
        raise ValueError("the referee needs every value of the boat")
    return float(value)


def slope(degrees: float | None) -> float:
    """Return the tangent of an angle in degrees."""
    return math.tan(math.radians(need(degrees)))


@dataclass(frozen=True)
class Skin:
    """x = X(y, z) of one boat, and where the skin stops."""

    form: BoatForm

    @cached_property
    def top(self) -> float:
        return need(self.form.transom.top_height_mm)

    @cached_property
    def bottom(self) -> float:
        return need(self.form.transom.bottom_height_mm)

    @cached_property
    def step(self) -> float | None:
        return self.form.transom.step_height_mm if self.form.boat.stern == "scoop" else None

    @cached_property
    def broadest(self) -> float:
        """Half the width of the hull that is drawn: what was measured, at every height."""
        if self.form.transom.sections:
            return max(p.half_breadth_mm for s in self.form.transom.sections for p in s.points)
        return max(need(self.form.transom.width_top_mm), need(self.form.transom.width_waterline_mm)) / 2.0

    def _height(self, row: object) -> float:
        height = getattr(row, "height_mm", None)
        return float(height) if height is not None else self.top - float(getattr(row, "below_top_mm", 0.0))

    @cached_property
    def _profile(self) -> PchipInterpolator:
        points = [(self._height(p), p.aft_mm) for p in self.form.transom.profile or ()]
        if max(z for z, _ in points) < self.top - 1.0:
            points.append((self.top, 0.0))  # by the frame
        points.sort()
        return PchipInterpolator([z for z, _ in points], [x for _, x in points])

    @cached_property
    def _cuts(self) -> tuple[Array, list[tuple[float, PchipInterpolator]]]:
        cuts = []
        for section in sorted(self.form.transom.sections or (), key=self._height):
            at = [p.half_breadth_mm for p in section.points]
            cuts.append((at[-1], PchipInterpolator(at, [p.aft_mm for p in section.points])))
        return np.array(sorted(self._height(s) for s in self.form.transom.sections or ())), cuts

    def x(self, y: Array, z: Array) -> Array:
        """Return X at arrays of y and z of one shape; z is held between bottom and top."""
        z = np.clip(z, self.bottom, self.top)
        transom = self.form.transom
        if transom.sections:
            heights, cuts = self._cuts
            rows = np.stack([curve(np.minimum(np.abs(y), last)) for last, curve in cuts])
            return _between(heights, rows, np.clip(z, heights[0], heights[-1]))
        if transom.profile:
            curve = self._profile
            centre = curve(np.clip(z, curve.x[0], curve.x[-1]))
        else:
            centre = (z - self.top) * slope(transom.rake_deg)
            if self.step is not None:
                edge = (self.step - self.top) * slope(transom.rake_deg) + need(transom.step_depth_mm)
                below = edge + (z - self.step) * slope(transom.lower_rake_deg)
                centre = np.where(z < self.step, below, centre)
        return np.asarray(centre - need(transom.camber_mm) * (2.0 * y / need(transom.width_top_mm)) ** 2)

    def at(self, y: float, z: float) -> float:
        """Return X at one place."""
        return float(self.x(np.array([y]), np.array([z]))[0])

    def slopes(self, y: float, z: float) -> tuple[float, float]:
        """Return dX/dz by central differences, one-sided at an edge, and dX/dy towards the side y lies on.

        A skin in level cuts may have a ridge at the centreline; there the starboard side's slope is meant.
        """
        d, out = 1e-3, 1e-4 if y >= 0.0 else -1e-4
        z = min(max(z, self.bottom), self.top)
        low, high = max(z - d, self.bottom), min(z + d, self.top)
        if self.step is not None and low < self.step <= high:
            low, high = (self.step, self.step + d) if z >= self.step else (z - d, z)
        return (self.at(y, high) - self.at(y, low)) / (high - low), (self.at(y + out, z) - self.at(y, z)) / out

    def half_breadth(self, z: float) -> float:
        """Return half the width of sound skin at a height: linear from the waterline's to the top's, and measured."""
        transom = self.form.transom
        if self.form.boat.stern == "double_ended" and not transom.sections:
            return need(transom.post_width_mm) / 2.0
        water, top = need(transom.width_waterline_mm) / 2.0, need(transom.width_top_mm) / 2.0
        half = water + (top - water) * z / self.top
        if transom.sections:
            heights, cuts = self._cuts
            half = min(half, float(np.interp(z, heights, [last for last, _ in cuts])))
        return half

    def mesh(self, y: float, reach: float, size: float) -> tuple[Array, NDArray[np.int64]]:
        """Return vertices (V, 3) and triangles (T, 3) of deck, skin and what is under it, within `reach` of y."""
        left, right = max(y - reach, -self.broadest), min(y + reach, self.broadest)
        left, right = min(left, right - size), max(right, left + size)
        across = np.linspace(left, right, max(int((right - left) / size), 1) + 1)
        if left < 0.0 < right:
            across = np.unique(np.append(across, 0.0))
        up = np.linspace(self.bottom, self.top, int((self.top - self.bottom) / size) + 2)
        knots = self._profile.x if self.form.transom.profile and not self.form.transom.sections else self._cuts[0]
        up = np.unique(np.concatenate([up, knots[(knots > self.bottom) & (knots < self.top)]]))
        if self.step is not None:
            up = np.unique(np.concatenate([up, [self.step - 1e-6, self.step]]))
        rows = [
            np.stack([self.x(across, np.full_like(across, z)), across, np.full_like(across, z)], axis=1) for z in up
        ]
        under, deck = rows[0].copy(), rows[-1].copy()
        under[:, 2], deck[:, 0] = -FAR, -FAR
        return np.concatenate([under, *rows, deck]), _strips(len(rows) + 2, across.size)

    def holds(self, points: Array) -> bool:
        """Say whether any of the points (n, 3) lies in the hull."""
        below = points[(points[:, 2] < self.top) & (np.abs(points[:, 1]) <= self.broadest)]
        return bool((below[:, 0] < self.x(below[:, 1], below[:, 2])).any()) if below.size else False


def _between(heights: Array, rows: Array, z: Array) -> Array:
    """Return each column of `rows` (levels, n), a curve over `heights`, at its own z (n,)."""
    if np.all(z == z[0]):
        return np.asarray(PchipInterpolator(heights, rows, axis=0)(z[0]))
    return np.array([float(PchipInterpolator(heights, rows[:, i])(z[i])) for i in range(z.size)])


def _strips(rows: int, columns: int) -> NDArray[np.int64]:
    first = (np.arange(rows - 1)[:, None] * columns + np.arange(columns - 1)[None, :]).ravel()
    one = np.stack([first, first + 1, first + columns], axis=1)
    two = np.stack([first + 1, first + columns + 1, first + columns], axis=1)
    return np.concatenate([one, two])
