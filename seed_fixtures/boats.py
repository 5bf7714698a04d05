"""What a boat of the demo fleet truly is: stern, rudder, and things in the way. Millimetres, degrees, kilograms.

Frame as everywhere: x aft from the top edge of the transom, y to starboard, z up from the loaded waterline.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import radians, sin, tan

import numpy as np
from numpy.typing import NDArray

Numbers = NDArray[np.float64]
Pair = tuple[float, float]


@dataclass(frozen=True)
class Stern:
    """The skin that bears the brackets: one rake, a camber, and on a scoop a step with another rake below it."""

    kind: str
    top: float
    bottom: float
    rake: float
    width_top: float
    width_water: float
    camber: float
    thickness: float
    step_height: float | None = None
    step_depth: float = 0.0
    step_width: float = 0.0
    lower_rake: float = 0.0
    post_width: float | None = None

    @property
    def riser_foot(self) -> float:
        """X of the riser's foot on the centreline (of the transom's own plane at the step's height)."""
        return ((self.step_height or 0.0) - self.top) * tan(radians(self.rake))

    def skin(self, y: float, z: Numbers) -> Numbers:
        """X of the skin at (y, z); below its bottom edge the hull reaches as far aft as at that edge."""
        z = np.maximum(z, self.bottom)
        middle = (z - self.top) * tan(radians(self.rake))
        if self.step_height is not None:
            edge = self.riser_foot + self.step_depth
            below = edge + (z - self.step_height) * tan(radians(self.lower_rake))
            middle = np.where(z <= self.step_height, below, middle)
        return middle - self.camber * (2 * y / self.width_top) ** 2

    def lean(self, z: Numbers) -> Numbers:
        """Local rake in degrees."""
        if self.step_height is None:
            return np.full_like(z, self.rake)
        return np.where(z <= self.step_height, self.lower_rake, self.rake)

    def plan_slope(self, y: float) -> float:
        """Tangent of the skin's plan angle at y."""
        return -8 * self.camber * y / self.width_top**2

    def half_breadth(self, z: Numbers) -> Numbers:
        """Half the skin's width, straight from the waterline's to the top's."""
        share = np.clip(z / self.top, 0.0, 1.0)
        return 0.5 * (self.width_water + (self.width_top - self.width_water) * share)


@dataclass(frozen=True)
class Rudder:
    """The boat's own rudder."""

    hung: str
    stock: float
    leading: float
    trailing: float
    top: float
    bottom: float
    deflection: float
    number: int = 1

    @property
    def swing(self) -> float:
        """Half the width that the trailing edge sweeps."""
        return (self.trailing - self.stock) * sin(radians(self.deflection)) + 25.0


@dataclass(frozen=True)
class Thing:
    """Something on the stern that the gear must clear."""

    kind: str
    side: str
    aft: Pair
    starboard: Pair
    height: Pair
    moves: str = "fixed"
    removable: bool = False
    keep: bool = False


@dataclass(frozen=True)
class Boat:
    """One boat afloat."""

    hull: str
    builder: str
    model: str
    year: int
    loa: float
    lwl: float
    beam: float
    draft: float
    displacement: float
    material: str
    stern: Stern
    rudder: Rudder
    things: tuple[Thing, ...] = ()
