"""The boat as arrays: one row a draw (or one row alone), in the frame of the boat form."""

from __future__ import annotations

from dataclasses import dataclass, fields, replace

import numpy as np
from numpy.typing import NDArray

from service.core.fit import pchip

Array = NDArray[np.float64]
Index = NDArray[np.intp]


@dataclass(frozen=True)
class Curve:
    """A measured centreline or level cuts: distance below the top edge against x.

    `below` (K,) rising from the top; `half` (H,) half-breadths common to all cuts, empty for a centreline profile;
    `aft` (N, K) or, with cuts, (N, K, H).
    """

    below: Array
    aft: Array
    half: Array

    def take(self, rows: Index) -> Curve:
        """Return the curve with other rows."""
        return self if self.aft.shape[0] == 1 else replace(self, aft=self.aft[rows])


@dataclass(frozen=True)
class ObstacleBox:
    """What a box belongs to: the obstacle's place in the form, the rule that keeps it away, whether it moves.

    `binds` is False for what may be taken off: reported as a trade, never a refusal.
    """

    index: int
    gap: str
    moves: bool
    binds: bool


@dataclass(frozen=True)
class Site:
    """What the checks need of a boat. Every array is (N,) or (1,); heights above water, x and y in the frame."""

    stern: str
    top: Array
    bottom: Array
    rake: Array
    half_top: Array
    half_water: Array
    camber: Array
    step_height: Array
    step_depth: Array
    half_step: Array
    lower_rake: Array
    post: Array
    hung_outside: Array
    stock: Array
    leading: Array
    trailing: Array
    rudder_top: Array
    rudder_bottom: Array
    deflection: Array
    rudder_offset: Array
    displacement: Array
    box_from: Array
    box_to: Array
    """Obstacles (M, 6, N): aft, starboard, height, low ends first; `box_to` is where a moving one ends."""
    curve: Curve | None = None
    boxes: tuple[ObstacleBox, ...] = ()

    @property
    def rows(self) -> int:
        """Return how many rows the longest array has."""
        return int(max(getattr(self, name).shape[-1] for name in ROWS))

    def take(self, rows: Index) -> Site:
        """Return the site with the given rows; an array of one row stays one row."""
        picked = {name: _rows(getattr(self, name), rows) for name in ROWS}
        return replace(self, **picked, curve=self.curve and self.curve.take(rows))

    @property
    def stepped(self) -> bool:
        """Say whether the skin has a step moulded in."""
        return self.stern == "scoop"


ROWS = tuple(field.name for field in fields(Site) if field.name not in ("stern", "curve", "boxes"))


def _rows(array: Array, rows: Index) -> Array:
    return array if array.shape[-1] == 1 else array[..., rows]


# --- the skin: x = X(y, z) --------------------------------------------------------------------------------


@dataclass(frozen=True)
class SkinPoint:
    """The skin at (y, z): x, and the tangents of local rake (dX/dz) and plan angle (dX/dy)."""

    x: Array
    rake: Array
    plan: Array


def skin(site: Site, y: Array, z: Array) -> SkinPoint:
    """Return the skin at (y, z), z held between bottom and top edge; below the bottom the hull reaches as far aft.

    From sections where there are any, else a profile, else one rake: X = Xc(z) - c (2y/W)^2, Xc = (z - top) tan r
    (FIT, exact meanings). Arrays broadcast over the rows of the site.
    """
    z = np.clip(z, np.minimum(site.bottom, site.top), site.top)
    if site.curve is not None and site.curve.half.size:
        return _from_sections(site, y, z)
    centre, rake = _profile(site, z) if site.curve is not None else _raked(site, z)
    width = 2 * site.half_top
    bow = site.camber * (2 * y / width) ** 2
    return SkinPoint(centre - bow, rake, -8 * site.camber * y / width**2 + np.zeros_like(centre))


def _raked(site: Site, z: Array) -> tuple[Array, Array]:
    slope = np.tan(np.radians(site.rake)) + np.zeros_like(z)
    centre = (z - site.top) * slope
    if not site.stepped:
        return centre, slope
    low = np.tan(np.radians(site.lower_rake)) + np.zeros_like(z)
    edge = (site.step_height - site.top) * slope + site.step_depth
    under = z < site.step_height
    return np.where(under, edge + (z - site.step_height) * low, centre), np.where(under, low, slope)


def _profile(site: Site, z: Array) -> tuple[Array, Array]:
    curve = site.curve
    assert curve is not None  # noqa: S101 - for the type checker
    x, slope = pchip.evaluate(curve.below, curve.aft, pchip.slopes(curve.below, curve.aft), site.top - z)
    return x, -slope


def _from_sections(site: Site, y: Array, z: Array) -> SkinPoint:
    """Interpolate along each cut in half-breadth, then between the cuts in height."""
    curve = site.curve
    assert curve is not None  # noqa: S101 - for the type checker
    shape = np.broadcast_shapes(np.shape(y), np.shape(z))
    y, z = np.broadcast_to(y, shape), np.broadcast_to(z, shape)
    side, across = np.abs(y), pchip.slopes(curve.half, curve.aft)
    at, plan = [], []
    for level in range(curve.below.size):
        x, slope = pchip.evaluate(curve.half, curve.aft[:, level], across[:, level], side)
        at.append(x)
        plan.append(slope)
    columns = np.stack(at, axis=-1)
    if columns.ndim == 1:
        columns = columns[None]
    flat = columns.reshape(-1, curve.below.size)
    x, down = pchip.evaluate(curve.below, flat, pchip.slopes(curve.below, flat), (site.top - z).reshape(-1))
    bend = np.stack(plan, axis=-1).reshape(-1, curve.below.size)
    turn, _ = pchip.evaluate(curve.below, bend, pchip.slopes(curve.below, bend), (site.top - z).reshape(-1))
    return SkinPoint(x.reshape(shape), -down.reshape(shape), turn.reshape(shape) * np.sign(y))


def half_breadth(site: Site, z: Array) -> Array:
    """Return the skin's half-breadth at height z: linear from the waterline's to the top's, never negative."""
    share = z / np.maximum(site.top, 1.0)
    half = site.half_water + (site.half_top - site.half_water) * share
    return np.maximum(half, 0.0)
