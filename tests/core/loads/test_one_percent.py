"""Each input of each formula moved by 1 %: the result moves as the formula says."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
import pytest

from service.core.loads import blade, bolts, plate, shaft, skin, struts, tube, vibration, water

B, A = 800.0, 600.0
BEAM = {"force_n": 1000.0, "spacing_mm": A, "overhang_mm": B, "young_mpa": 193000.0, "inertia_mm4": 136141.0}
NUMBER = 2 * np.pi / 8.0

# formula, its inputs, and by input the power it acts with (a closed form where the formula is no pure power).
POWERS: list[tuple[Callable[..., Any], dict[str, float], dict[str, float]]] = [
    (water.hull_speed, {"lwl_mm": 9350.0}, {"lwl_mm": 0.5}),
    (water.dynamic_pressure, {"speed_ms": 4.0}, {"speed_ms": 2.0}),
    (
        water.orbital_speed,
        {"height_m": 3.0, "period_s": 8.0, "depth_mm": 400.0},
        {"height_m": 1.0, "depth_mm": -(NUMBER**2) / water.GRAVITY * 0.4,
         "period_s": -1.0 + 2 * NUMBER**2 / water.GRAVITY * 0.4},
    ),
    (blade.wet_area, {"chord_mm": 220.0, "wet_span_mm": 640.0}, {"chord_mm": 1.0, "wet_span_mm": 1.0}),
    (
        blade.lift_slope,
        {"aspect": 3.0},
        {"aspect": 1 - 9 / (np.sqrt(13) * (np.sqrt(13) + 1.8))},
    ),
    (
        blade.balance_torque,
        {"normal_n": 2000.0, "centre": 0.3, "chord_mm": 220.0, "balance_mm": 48.0},
        {"normal_n": 1.0, "centre": 66 / 18, "chord_mm": 66 / 18, "balance_mm": -48 / 18},
    ),
    (
        shaft.tip_deflection,
        BEAM,
        {"force_n": 1.0, "overhang_mm": 2 + B / (A + B), "spacing_mm": A / (A + B), "young_mpa": -1.0, "inertia_mm4": -1.0},
    ),
    (
        shaft.tip_slope,
        BEAM,
        {"force_n": 1.0, "overhang_mm": 1 + 3 * B / (2 * A + 3 * B), "spacing_mm": 2 * A / (2 * A + 3 * B), "young_mpa": -1.0},
    ),
    (shaft.back_bow, BEAM, {"force_n": 1.0, "overhang_mm": 1.0, "spacing_mm": 2.0, "inertia_mm4": -1.0}),
    (vibration.added_mass, {"chord_mm": 220.0, "wet_span_mm": 640.0}, {"chord_mm": 2.0, "wet_span_mm": 1.0}),
    (vibration.shedding_frequency, {"speed_ms": 4.0, "outside_mm": 50.8}, {"speed_ms": 1.0, "outside_mm": -1.0}),
    (
        vibration.first_frequency,
        {"end_mass_kg": 30.0, "tube_kg_m": 0.0, "spacing_mm": A, "overhang_mm": B, "young_mpa": 193000.0, "inertia_mm4": 136141.0},
        {"end_mass_kg": -0.5, "overhang_mm": -1 - B / (A + B) / 2, "spacing_mm": -A / (A + B) / 2, "young_mpa": 0.5, "inertia_mm4": 0.5},
    ),
    (
        vibration.resonant_force,
        {"frequency_hz": 7.0, "speed_ms": 4.0, "outside_mm": 50.8, "in_water_mm": 100.0, "damping": 0.01, "coefficient": 1.0},
        {"frequency_hz": 2.0, "speed_ms": 0.0, "outside_mm": 3.0, "in_water_mm": 1.0, "damping": -1.0, "coefficient": 1.0},
    ),
    (tube.bending_stress, {"moment_nm": 800.0, "modulus_mm3": 5360.0}, {"moment_nm": 1.0, "modulus_mm3": -1.0}),
    (tube.torsion_stress, {"torque_nm": 80.0, "modulus_mm3": 5360.0}, {"torque_nm": 1.0, "modulus_mm3": -1.0}),
    (tube.von_mises, {"normal_mpa": 100.0, "shear_mpa": 50.0}, {"normal_mpa": 1 / 1.75, "shear_mpa": 0.75 / 1.75}),
    (
        struts.euler_load,
        {"young_mpa": 193000.0, "inertia_mm4": 10137.0, "length_mm": 800.0},
        {"young_mpa": 1.0, "inertia_mm4": 1.0, "length_mm": -2.0},
    ),
    (bolts.tension_resistance, {"area_mm2": 58.0, "ultimate_mpa": 700.0}, {"area_mm2": 1.0, "ultimate_mpa": 1.0}),
    (
        bolts.combined,
        {"shear_n": 8.0, "tension_n": 12.0, "shear_resistance_n": 19.5, "tension_resistance_n": 29.2},
        {"shear_n": (8 / 19.5) / (8 / 19.5 + 12 / 29.2 / 1.4), "tension_n": 1 - (8 / 19.5) / (8 / 19.5 + 12 / 29.2 / 1.4)},
    ),
    (
        skin.bearing_stress,
        {"shear_n": 5000.0, "diameter_mm": 10.0, "skin_mm": 12.0},
        {"shear_n": 1.0, "diameter_mm": -1.0, "skin_mm": -1.0},
    ),
    (skin.punching_stress, {"pull_n": 5000.0, "spread_mm": 42.0, "skin_mm": 12.0}, {"pull_n": 1.0, "spread_mm": -1.0, "skin_mm": -1.0}),
    (
        plate.bending_from_moment,
        {"moment_nm": 800.0, "boss_mm": 100.0, "share": 0.4},
        {"moment_nm": 1.0, "boss_mm": -1.0, "share": -4 * 0.16 / (1 - 0.16**2)},
    ),
    (plate.solid_stress, {"moment_n": 600.0, "skin_mm": 12.0}, {"moment_n": 1.0, "skin_mm": -2.0}),
    (
        plate.sandwich_stress,
        {"moment_n": 600.0, "skin_mm": 20.0, "core_mm": 14.0},
        {"moment_n": 1.0, "skin_mm": -20 / 6 - 20 / 34, "core_mm": 14 / 6 - 14 / 34},
    ),
]  # fmt: skip
CASES = [
    pytest.param(formula, inputs, name, power, id=f"{formula.__name__}-{name}")
    for formula, inputs, powers in POWERS
    for name, power in powers.items()
]


@pytest.mark.parametrize(("formula", "inputs", "name", "power"), CASES)
def test_one_percent(formula: Callable[..., Any], inputs: dict[str, float], name: str, power: float) -> None:
    """By central difference in logarithms: 1 % up and 1 % down, so that what is not a power is met at its middle."""
    up, down = (float(formula(**(inputs | {name: inputs[name] * factor}))) for factor in (1.01, 1 / 1.01))
    assert np.log(up / down) / (2 * np.log(1.01)) == pytest.approx(power, abs=2e-3)


def test_lift_moves_as_its_two_terms_do() -> None:
    slope, cross = float(blade.lift_slope(3.0)), float(blade.cross_flow(1.0, faired=False)) / 3
    angle = np.radians(12.0)
    first, second = slope * angle, cross * angle**2
    up, down = (float(blade.coefficients(3.0, angle * factor).lift) for factor in (1.01, 1 / 1.01))
    power = (first + 2 * second) / (first + second)
    assert np.log(up / down) / (2 * np.log(1.01)) == pytest.approx(power, abs=1e-4)
