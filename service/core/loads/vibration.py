"""First natural frequency of the overhanging shaft, and the frequency at which eddies leave its tube."""

from __future__ import annotations

import numpy as np

from service.core.loads.shaft import OVERHANG, SPACING, bent_shape, bowed_shape
from service.core.loads.validity import Array, Num, Valid, formula
from service.core.loads.water import SEA_WATER

STROUHAL = 0.2
"""Eddies of a round tube, f D / V, for Reynolds numbers of about 300 to 2·10⁵ (any text on flow; from memory)."""
_POINTS, _WEIGHTS = np.polynomial.legendre.leggauss(6)
_SHARES, _PARTS = (_POINTS + 1) / 2, _WEIGHTS / 2


@formula("potential flow: a flat plate moving square to itself; a cylinder", chord_mm=Valid(5, 800, "mm"))
def added_mass(chord_mm: Num, wet_span_mm: Num) -> Array:
    """Return the mass of water that moves with a strip, in kg: π/4 rho c² L. Broadcasts.

    For a blade moving square to itself c is its chord; moving edgewise its thickness; for a tube its diameter. Strip
    theory: ends are left out, which makes the mass too great and the frequency too low, on the safe side.

    >>> round(float(added_mass(220.0, 720.0)), 2)
    28.05
    """
    return np.asarray(np.pi / 4 * SEA_WATER * np.asarray(chord_mm, dtype=float) ** 2 * wet_span_mm / 1e9)


@formula(
    "Lord Rayleigh's quotient with the shape that a force at the blade's middle bends",
    spacing_mm=SPACING, overhang_mm=OVERHANG,
)  # fmt: skip
def first_frequency(
    end_mass_kg: Num, tube_kg_m: Num, spacing_mm: Num, overhang_mm: Num, young_mpa: Num, inertia_mm4: Num
) -> Array:
    """Return the first natural frequency in Hz: sqrt(k / m) / 2π, k = 3EI / b²(a + b). Broadcasts.

    m = blade and its added water at the blade's middle + ∫ m' v² over overhang and back span, v the bent shape with 1
    at the blade's middle. Assumed: collars are knife edges that do not give, the tube's stiffness reaches to the
    blade's middle, the blade itself is stiff, the tube is not flooded. Rayleigh's quotient is never below the truth.

    >>> round(float(first_frequency(30.0, 3.82, 600.0, 800.0, 193000.0, 136140.97)), 2)
    8.5
    """
    a, b = np.asarray(spacing_mm, dtype=float), np.asarray(overhang_mm, dtype=float)
    stiffness = 3 * np.asarray(young_mpa) * inertia_mm4 / np.maximum(b**2 * (a + b), 1e-9) * 1000
    first = (-1, *(1,) * max(a.ndim, b.ndim))
    shares, parts = _SHARES.reshape(first), _PARTS.reshape(first)
    below, between = ((parts * shape(shares, a, b) ** 2).sum(axis=0) for shape in (bent_shape, bowed_shape))
    mass = np.asarray(end_mass_kg) + np.asarray(tube_kg_m) / 1000 * (b * below + a * between)
    return np.asarray(np.sqrt(stiffness / mass) / (2 * np.pi))


@formula("V. Strouhal; the value from memory", reynolds=Valid(300, 2e5))
def shedding_frequency(speed_ms: Num, outside_mm: Num, reynolds: Num | None = None) -> Array:
    """Return the frequency of eddies behind a tube in Hz, sideways: 0.2 V / D. Broadcasts.

    Fore and aft the push comes twice as often. `reynolds` (V D / nu) is there for its range: beyond 2·10⁵ eddies lose
    their beat. The blade's blunt trailing edge sheds far above this and is left out.

    >>> round(float(shedding_frequency(4.0, 50.8)), 2)
    15.75
    """
    del reynolds
    return np.asarray(STROUHAL * np.asarray(speed_ms, dtype=float) / (np.asarray(outside_mm) / 1000))


@formula("forced vibration at resonance; eddy force on a tube from memory", damping=Valid(0.002, 0.2))
def resonant_force(
    frequency_hz: Num, speed_ms: Num, outside_mm: Num, in_water_mm: Num, damping: Num, coefficient: Num, times: Num = 1
) -> Array:
    """Return the force in N that shakes as much, standing still at the blade's middle, as eddies do at resonance.

    At V = f D / 0.2 n (n = `times`: 1 sideways, 2 fore and aft), but no more than `speed_ms`, eddies push the immersed
    length L with C ½ rho V² D L; resonance makes that 1 / 2 zeta as much. All of it is taken at the blade's middle, and
    what the blade's own lift damps sideways is left out, both on the safe side. Broadcasts.

    >>> round(float(resonant_force(7.0, 4.0, 50.8, 100.0, 0.01, 1.0)), 1)
    411.5
    """
    width = np.asarray(outside_mm, dtype=float) / 1000
    speed = np.minimum(np.asarray(frequency_hz) * width / (STROUHAL * np.asarray(times)), speed_ms)
    push = np.asarray(coefficient) * 0.5 * SEA_WATER * speed**2 * width * np.asarray(in_water_mm) / 1000
    return np.asarray(push / (2 * np.asarray(damping)))
