"""Loads on the blade. Reported with a fit; no check rests on them yet.

Blade force: low-aspect-ratio lift with cross-flow drag (L. F. Whicker and L. F. Fehlner, DTMB report 933, 1958,
formula from memory; see also Principles of Naval Architecture, 1989, vol. III). No mirror image: the blade pierces
the surface. Water density 1025 kg/m³.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
SEA_WATER = 1025.0
KNOT = 1852 / 3600
PARASITE = 0.0065
"""Profile drag coefficient of a NACA 0015 section."""
OSWALD = 0.9
STALL_CAP = 1.33
"""Greatest lift coefficient: about what such blades reach at aspect ratios of 1 to 4 (from memory)."""


def hull_speed(lwl_m: Array | float) -> Array:
    """Return hull speed in m/s: 2.43 sqrt(LWL) knots, LWL in m > 0.

    >>> round(float(hull_speed(9.35)) / KNOT, 2)
    7.43
    """
    return np.asarray(2.43 * np.sqrt(lwl_m) * KNOT)


def normal_coefficient(
    aspect: Array | float, angle_rad: Array | float, taper: float = 1.0, *, faired: bool = False
) -> Array:
    """Return the normal-force coefficient of an all-movable blade of effective aspect ratio 0.5 to 6.

    CL = CLa a + (CDc/AR) a |a|, CLa = 1.8 pi AR / (sqrt(AR² + 4) + 1.8) without sweep; CN = CL cos a + CD sin a.
    Lift is capped where the blade stalls. Source: Whicker and Fehlner 1958, from memory.

    >>> round(float(normal_coefficient(2.0, np.radians(10.0), faired=True)), 3)
    0.439
    """
    aspect, angle = np.asarray(aspect, dtype=float), np.asarray(angle_rad, dtype=float)
    slope = 1.8 * np.pi * aspect / (np.sqrt(aspect**2 + 4) + 1.8)
    cross = 0.1 + (0.7 if faired else 1.6) * taper
    lift = np.clip(slope * angle + cross / aspect * angle * np.abs(angle), -STALL_CAP, STALL_CAP)
    drag = PARASITE + lift**2 / (np.pi * OSWALD * aspect)
    return np.asarray(lift * np.cos(angle) + drag * np.sin(angle))


def blade_force(
    speed_ms: Array | float, chord_mm: float, wet_span_mm: Array | float, angle_rad: Array | float
) -> Array:
    """Return the normal force on the wet part of a rectangular blade in N: CN ½ rho A V²."""
    area = chord_mm * np.asarray(wet_span_mm) / 1e6
    aspect = np.maximum(np.asarray(wet_span_mm) / chord_mm, 0.1)
    return np.asarray(normal_coefficient(aspect, angle_rad) * 0.5 * SEA_WATER * area * np.asarray(speed_ms) ** 2)
