"""What one place in a letter states about a boat, before it is weighed against the other places."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from service.core.reading.hedges import Hedge
from service.core.reading.shape import Doubt, Why
from service.core.units import Found, Quantity

# Where a value of a field can lie on a boat that takes such a gear (mm, deg, kg). Common practice, no source: wide on
# purpose, it only decides between two readings of the same digits and drops what cannot be.
RANGES: dict[str, tuple[float, float]] = {
    "transom.top_height_mm": (150, 3500),
    "transom.bottom_height_mm": (-1500, 1500),
    "transom.width_top_mm": (200, 7000),
    "transom.width_waterline_mm": (200, 7000),
    "transom.thickness_mm": (2, 150),
    "transom.rake_deg": (-60, 60),
    "transom.lower_rake_deg": (-60, 60),
    "transom.step_height_mm": (-100, 1500),
    "transom.step_depth_mm": (80, 3000),
    "transom.step_width_mm": (200, 7000),
    "boat.loa_mm": (4000, 40_000),
    "boat.lwl_mm": (3500, 38_000),
    "boat.beam_mm": (1200, 10_000),
    "boat.draft_mm": (200, 6000),
    "boat.displacement_kg": (300, 200_000),
    "transom.post_width_mm": (20, 600),
    "main_rudder.top_height_mm": (-2000, 3000),
    "main_rudder.bottom_height_mm": (-4000, 1500),
    "main_rudder.stock_aft_mm": (-5000, 2000),
    "main_rudder.trailing_edge_aft_mm": (-4000, 2500),
    "main_rudder.max_deflection_deg": (10, 80),
}


@dataclass(frozen=True)
class Claim:
    """`field` is said to be `value` at [start, end); `depth` 0 is the writer's own message, deeper is older."""

    field: str
    value: Any
    start: int
    end: int
    depth: int = 0
    confidence: float = 0.9
    hedge: Hedge | None = None


@dataclass
class Notes:
    """What a reader of one kind of statement gathered."""

    claims: list[Claim] = field(default_factory=list)
    doubts: list[tuple[int, Doubt]] = field(default_factory=list)

    def doubt(self, where: int, name: str, why: Why, text: str, values: tuple[Any, ...] = ()) -> None:
        """Keep a doubt said at position `where`."""
        self.doubts.append((where, Doubt(field=name, why=why, values=values, text=text)))


def plausible(name: str, found: Found, sign: float = 1.0) -> tuple[float, ...]:
    """Return the readings of a quantity that the field can have, signed; one is a value, more are a doubt."""
    low, high = RANGES.get(name, (float("-inf"), float("inf")))
    read = found.read
    readings = (read.value,) if isinstance(read, Quantity) else read.readings
    return tuple(v for v in (round(r * sign, 6) for r in readings) if low <= v <= high)
