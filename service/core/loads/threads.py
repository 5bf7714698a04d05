"""Threads: what a bolt's stressed section is, metric and inch. mm, MPa."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

INCH = 25.4
METRIC_NOTE = "ISO 898-1 (formula, table values read through another library)"
INCH_NOTE = "ASME B1.1 stress area, from memory"


@dataclass(frozen=True)
class Size:
    """A size of bolt: diameter, pitch, hole, width across flats and outside of the wide washer (mm)."""

    diameter_mm: float
    pitch_mm: float
    hole_mm: float
    flats_mm: float
    washer_mm: float
    metric: bool

    @property
    def area_mm2(self) -> float:
        """Return the stressed section in mm², by the formula of its own standard."""
        return float((metric_area if self.metric else inch_area)(self.diameter_mm, self.pitch_mm))


@formula(METRIC_NOTE, diameter_mm=Valid(3, 39, "mm"), pitch_mm=Valid(0.5, 4, "mm"))
def metric_area(diameter_mm: Num, pitch_mm: Num) -> Array:
    """Return the stress area of an ISO thread in mm²: π/4 ((d2 + d3)/2)², d2 = d - 3H/4, d3 = d - 5H/4 - H/6.

    H = (√3/2) P; arguments broadcast; coarse and fine threads of 3 to 39 mm. Source: ISO 898-1 and ISO 724.

    >>> round(float(metric_area(10.0, 1.5)), 2)
    57.99
    """
    d, high = np.asarray(diameter_mm, dtype=float), np.sqrt(3) / 2 * np.asarray(pitch_mm)
    middle, root = d - 0.75 * high, d - 1.25 * high - high / 6
    return np.asarray(np.pi / 4 * ((middle + root) / 2) ** 2)


@formula(INCH_NOTE, diameter_mm=Valid(3, 39, "mm"), pitch_mm=Valid(0.5, 4, "mm"))
def inch_area(diameter_mm: Num, pitch_mm: Num) -> Array:
    """Return the stress area of a unified thread in mm²: π/4 (d - 0.9743 P)²; broadcasts. Source: ASME B1.1.

    >>> round(float(inch_area(25.4 * 3 / 8, 25.4 / 16)), 2)
    49.99
    """
    return np.asarray(np.pi / 4 * (np.asarray(diameter_mm, dtype=float) - 0.9743 * np.asarray(pitch_mm)) ** 2)


SIZES = {
    "M6": Size(6, 1.0, 6.6, 10, 18, metric=True),
    "M8": Size(8, 1.25, 9, 13, 24, metric=True),
    "M10": Size(10, 1.5, 11, 16, 30, metric=True),
    "M12": Size(12, 1.75, 13.5, 18, 37, metric=True),
    "M16": Size(16, 2.0, 17.5, 24, 50, metric=True),
    "1/4": Size(INCH / 4, INCH / 20, 7.1, 11.1, 18.6, metric=False),
    "5/16": Size(INCH * 5 / 16, INCH / 18, 8.7, 12.7, 22.2, metric=False),
    "3/8": Size(INCH * 3 / 8, INCH / 16, 10.3, 14.3, 25.4, metric=False),
    "1/2": Size(INCH / 2, INCH / 13, 14.3, 19.1, 34.9, metric=False),
    "5/8": Size(INCH * 5 / 8, INCH / 11, 17.5, 23.8, 44.5, metric=False),
}
"""Holes: ISO 273 medium and common inch clearance (from memory). Flats: ISO 4032; ASME B18.2.2 (from memory).
Wide washers: ISO 7093 (read in bd-warehouse 0.4.0); ASME B18.21.1 type A wide (from memory)."""


@dataclass(frozen=True)
class Grade:
    """Tensile strength and proof stress of a class of stainless bolts, in MPa."""

    ultimate_mpa: float
    proof_mpa: float


GRADES = {"A4-50": Grade(500, 210), "A4-70": Grade(700, 450), "A4-80": Grade(800, 600)}
"""ISO 3506-1: that 70 and 80 mean 700 and 800 MPa was read; proof stresses from memory."""


def size_of(name: str) -> Size:
    """Return a size by name; KeyError says which are known.

    >>> round(size_of("M10").area_mm2, 2), size_of("3/8").washer_mm
    (57.99, 25.4)
    """
    if name not in SIZES:
        raise KeyError(f"no bolt size {name!r}; known: {', '.join(SIZES)}")
    return SIZES[name]
