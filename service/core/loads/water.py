"""Speed of the boat through the water, and of the water itself in a following sea."""

from __future__ import annotations

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

SEA_WATER = 1025.0
"""Density of sea water in kg/m³."""
GRAVITY = 9.80665
"""Standard gravity in m/s² (CGPM 1901)."""
KNOT = 1852 / 3600
"""One knot in m/s, exact."""
VISCOSITY = 1.19e-6
"""Kinematic viscosity of sea water at 15 °C in m²/s (ITTC, from memory)."""
STEEPEST = 0.1
"""Height over length up to which linear waves serve; waves break near 1/7."""


@formula("common practice: 1.34 sqrt(LWL in ft) knots", lwl_mm=Valid(3000, 25000, "mm"))
def hull_speed(lwl_mm: Num) -> Array:
    """Return hull speed in m/s of a displacement hull: 2.43 sqrt(LWL in m) knots.

    Shape: that of lwl_mm (mm, 3 000 to 25 000). A negative length gives NaN and a finding.
    Source: common practice, 1.34 sqrt(LWL in ft) knots in metres.

    >>> round(float(hull_speed(9350.0)) / KNOT, 2)
    7.43
    """
    length = np.asarray(lwl_mm, dtype=float) / 1000
    return np.asarray(2.43 * KNOT * np.sqrt(np.where(length >= 0, length, np.nan)))


@formula("definition", speed_ms=Valid(0, 12, "m/s"))
def dynamic_pressure(speed_ms: Num) -> Array:
    """Return ½ rho V² in N/m², rho = 1025 kg/m³; shape of speed_ms (m/s).

    >>> round(float(dynamic_pressure(8 * KNOT)), 1)
    8680.6
    """
    return np.asarray(0.5 * SEA_WATER * np.asarray(speed_ms, dtype=float) ** 2)


def wave_length(period_s: Num) -> Array:
    """Return the length in m of a deep-water wave: g T² / 2π (Airy). Shape and sign of period_s (s, > 0).

    >>> round(float(wave_length(8.0)), 2)
    99.89
    """
    return np.asarray(GRAVITY * np.asarray(period_s, dtype=float) ** 2 / (2 * np.pi))


@formula(
    "Airy deep-water wave (G. B. Airy 1845; any text on sea waves)",
    height_m=Valid(0, 15, "m"), period_s=Valid(2, 20, "s"), depth_mm=Valid(0, 5000, "mm"),
)  # fmt: skip
def orbital_speed(height_m: Num, period_s: Num, depth_mm: Num) -> Array:
    """Return the greatest horizontal speed of the water in m/s: (π H / T) exp(-k d), k = (2π / T)² / g.

    At the crest it goes with the wave, in the trough against it. The depth d is counted from the wave's own surface
    (stretching after J. D. Wheeler, 1970), because the boat rides on it. Arguments broadcast. Valid for d >= 0, periods
    of 2 to 20 s and waves of at most 1 in 10: `steepness` tells.

    >>> round(float(orbital_speed(3.0, 8.0, 500.0)), 4)
    1.1416
    """
    number = (2 * np.pi / np.asarray(period_s, dtype=float)) ** 2 / GRAVITY
    return np.asarray(np.pi * np.asarray(height_m) / period_s * np.exp(-number * np.asarray(depth_mm) / 1000))


@formula("Airy waves hold for gentle slopes; deep-water waves break near 1/7", steepness=Valid(0, STEEPEST))
def gentle(steepness: Num) -> Array:
    """Return the steepness itself: a place for its range (height over length, at most 1 in 10)."""
    return np.asarray(steepness, dtype=float)


@formula("vector sum, both speeds along the boat's way", boat_ms=Valid(0, 15, "m/s"))
def flow_speed(boat_ms: Num, orbital_ms: Num, phase: Num) -> Array:
    """Return the speed of the flow over the blade in m/s: boat + phase · orbital, never below zero.

    `phase` is +1 in the trough of a following sea (the water comes to meet the boat), -1 at its crest (the water goes
    along with it) and 0 half-way down its face. Arguments broadcast.

    >>> float(flow_speed(6.0, 1.0, -1.0)), float(flow_speed(6.0, 1.0, 1.0))
    (5.0, 7.0)
    """
    return np.asarray(np.maximum(np.asarray(boat_ms, dtype=float) + np.asarray(phase) * orbital_ms, 0.0))
