"""A bolt in a skin: bearing, pulling through, crushing the core. N, mm, MPa."""

from __future__ import annotations

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

MECHANICS = "elementary mechanics of materials"


@formula(MECHANICS, skin_mm=Valid(2, 80, "mm"))
def bearing_stress(shear_n: Num, diameter_mm: Num, skin_mm: Num) -> Array:
    """Return V / d t in MPa; broadcasts.

    >>> float(bearing_stress(16000.0, 10.0, 8.0))
    200.0
    """
    return np.asarray(np.asarray(shear_n, dtype=float) / (np.asarray(diameter_mm) * skin_mm))


@formula("common practice: a load spreads at 45 degrees through a plate")
def spread_diameter(washer_mm: Num, plate_mm: Num) -> Array:
    """Return the diameter in mm on which a washer presses through a backing plate: dw + 2 t; broadcasts.

    >>> float(spread_diameter(30.0, 6.0))
    42.0
    """
    return np.asarray(np.asarray(washer_mm, dtype=float) + 2 * np.asarray(plate_mm))


@formula(MECHANICS, skin_mm=Valid(2, 80, "mm"))
def punching_stress(pull_n: Num, spread_mm: Num, skin_mm: Num) -> Array:
    """Return T / π d t in MPa, the shear round the washer's rim; broadcasts. Bending usually governs instead.

    >>> round(float(punching_stress(46750.0, 30.0, 8.0)), 2)
    62.0
    """
    return np.asarray(np.asarray(pull_n, dtype=float) / (np.pi * np.asarray(spread_mm) * skin_mm))


@formula(MECHANICS)
def ring_area(outside_mm: Num, hole_mm: Num) -> Array:
    """Return the area under a washer less its hole in mm²: π/4 (d² - d0²); broadcasts.

    >>> round(float(ring_area(30.0, 11.0)), 2)
    611.83
    """
    return np.asarray(np.pi / 4 * (np.asarray(outside_mm, dtype=float) ** 2 - np.asarray(hole_mm) ** 2))


@formula(MECHANICS)
def crush_stress(press_n: Num, area_mm2: Num) -> Array:
    """Return the pressure on the core in MPa; broadcasts.

    >>> round(float(crush_stress(856.6, 611.83)), 2)
    1.4
    """
    return np.asarray(np.asarray(press_n, dtype=float) / area_mm2)


@formula("common practice, no source", share=Valid(0, 0.8))
def preload(area_mm2: Num, proof_mpa: Num, share: Num) -> Array:
    """Return what tightening puts on a bolt in N: a share of the proof load; broadcasts.

    >>> round(float(preload(57.99, 450.0, 0.3)))
    7829
    """
    return np.asarray(np.asarray(share) * np.asarray(proof_mpa) * np.asarray(area_mm2, dtype=float))
