"""A vertical shaft in two collars with an overhang below the lower one. mm, N, MPa; heights upward.

Both collars are knife edges: they hold the shaft sideways and fore and aft, not against turning over (a collar clamps
over 70 mm, which is on the safe side to leave out). Each plane on its own; a round tube bends alike in both.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

STATICS = "statics"
OVERHANG_CASE = "overhanging beam, load at the free end (AISC Manual table 3-23; Roark), closed form"
SPACING = Valid(50, 3000, "mm")
OVERHANG = Valid(0, 3000, "mm")


class Pair(NamedTuple):
    """A quantity at the lower and at the upper collar."""

    lower: Array
    upper: Array


@formula(STATICS, spacing_mm=SPACING)
def collar_loads(force_n: Num, above_lower_mm: Num, spacing_mm: Num) -> Pair:
    """Return what a sideways force on the shaft puts on the lower and the upper collar, in N, along the force.

    The force acts `above_lower_mm` above the lower collar (negative below it): upper = F h / a, lower = F - upper.
    The supports' reactions are the opposite. Arguments broadcast; spacing a > 0 (held at 1 mm, with a finding below 50).

    >>> [round(float(v), 3) for v in collar_loads(1000.0, -800.0, 600.0)]
    [2333.333, -1333.333]
    """
    upper = np.asarray(force_n, dtype=float) * above_lower_mm / np.maximum(spacing_mm, 1.0)
    return Pair(np.asarray(np.asarray(force_n) - upper), np.asarray(upper))


@formula(STATICS)
def collar_moments(force_n: Num, above_lower_mm: Num, spacing_mm: Num) -> Pair:
    """Return the bending moment that a sideways force makes in the shaft at each collar, in N·m.

    Below the lower collar it bends there (F b); above the upper one at the upper (F c); between them neither.

    >>> [float(v) for v in collar_moments(1000.0, -800.0, 600.0)]
    [800.0, 0.0]
    """
    height = np.asarray(above_lower_mm, dtype=float)
    force = np.asarray(force_n, dtype=float)
    return Pair(
        np.asarray(force * np.maximum(-height, 0.0) / 1000),
        np.asarray(force * np.maximum(height - spacing_mm, 0.0) / 1000),
    )


@formula(OVERHANG_CASE, spacing_mm=SPACING, overhang_mm=OVERHANG)
def tip_deflection(force_n: Num, spacing_mm: Num, overhang_mm: Num, young_mpa: Num, inertia_mm4: Num) -> Array:
    """Return the deflection under a force at the end of the overhang, in mm: P b² (a + b) / 3EI. Broadcasts.

    Euler-Bernoulli: for an overhang of more than about five diameters. Supports do not give.

    >>> round(float(tip_deflection(1000.0, 600.0, 800.0, 193000.0, 136140.97)), 4)
    11.3669
    """
    b = np.asarray(overhang_mm, dtype=float)
    return np.asarray(np.asarray(force_n) * b**2 * (spacing_mm + b) / (3 * np.asarray(young_mpa) * inertia_mm4))


@formula(OVERHANG_CASE, spacing_mm=SPACING, overhang_mm=OVERHANG)
def tip_slope(force_n: Num, spacing_mm: Num, overhang_mm: Num, young_mpa: Num, inertia_mm4: Num) -> Array:
    """Return the slope at the end of the overhang in radians: P b (2a + 3b) / 6EI. Broadcasts.

    >>> round(float(tip_slope(1000.0, 600.0, 800.0, 193000.0, 136140.97)), 6)
    0.018268
    """
    b, a = np.asarray(overhang_mm, dtype=float), np.asarray(spacing_mm, dtype=float)
    return np.asarray(np.asarray(force_n) * b * (2 * a + 3 * b) / (6 * np.asarray(young_mpa) * inertia_mm4))


@formula(OVERHANG_CASE, spacing_mm=SPACING, overhang_mm=OVERHANG)
def back_bow(force_n: Num, spacing_mm: Num, overhang_mm: Num, young_mpa: Num, inertia_mm4: Num) -> Array:
    """Return how far the shaft bows between the collars the other way, in mm: P b a² / (9 √3 EI). Broadcasts.

    >>> round(float(back_bow(1000.0, 600.0, 800.0, 193000.0, 136140.97)), 4)
    0.7031
    """
    a = np.asarray(spacing_mm, dtype=float)
    return np.asarray(np.asarray(force_n) * overhang_mm * a**2 / (9 * np.sqrt(3) * np.asarray(young_mpa) * inertia_mm4))


def bent_shape(share: Num, spacing_mm: Num, overhang_mm: Num) -> Array:
    """Return the deflected shape of the overhang over that of its end, at shares 0 (collar) to 1 (end) of its length.

    With x from the collar: EI v = P [x b a / 3 + x² (3b - x) / 6], 1 at x = b.

    >>> float(bent_shape(0.0, 600.0, 800.0)), round(float(bent_shape(1.0, 600.0, 800.0)), 12)
    (0.0, 1.0)
    """
    a, b = np.asarray(spacing_mm, dtype=float), np.asarray(overhang_mm, dtype=float)
    x = np.asarray(share) * b
    return np.asarray((x * b * a / 3 + x**2 * (3 * b - x) / 6) / np.maximum(b**2 * (a + b) / 3, 1e-9))


def bowed_shape(share: Num, spacing_mm: Num, overhang_mm: Num) -> Array:
    """Return the shape between the collars over that of the end, at shares 0 (upper collar) to 1 (lower collar).

    EI v = -P b x (a² - x²) / 6a with x from the upper collar.

    >>> float(bowed_shape(1.0, 600.0, 800.0))
    -0.0
    """
    a, b = np.asarray(spacing_mm, dtype=float), np.asarray(overhang_mm, dtype=float)
    x = np.asarray(share) * a
    return np.asarray(-b * x * (a**2 - x**2) / (6 * a) / np.maximum(b**2 * (a + b) / 3, 1e-9))
