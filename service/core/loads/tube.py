"""Sections of round tubes and stresses in them. mm, N, N·m, MPa."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

MECHANICS = "elementary mechanics of materials"
DIAMETER = Valid(5, 300, "mm")


class Section(NamedTuple):
    """Area mm², second moment of area mm⁴, elastic and plastic modulus mm³, polar second moment mm⁴."""

    area: Array
    inertia: Array
    modulus: Array
    plastic: Array
    polar: Array


@formula(MECHANICS, outside_mm=DIAMETER, wall_mm=Valid(0.5, 50, "mm"))
def section(outside_mm: Num, wall_mm: Num) -> Section:
    """Return the section of a round tube: A = π(D² - d²)/4, I = π(D⁴ - d⁴)/64, W = 2I/D, Wpl = (D³ - d³)/6, J = 2I.

    Arguments broadcast. ValueError where a wall is not less than half of the diameter.

    >>> [round(float(v), 2) for v in section(50.8, 3.2)]
    [478.53, 136141.04, 5359.88, 7261.35, 272282.09]
    """
    outer, wall = np.asarray(outside_mm, dtype=float), np.asarray(wall_mm, dtype=float)
    if np.any(2 * wall >= outer):
        raise ValueError(f"wall_mm {wall_mm} leaves no bore in a tube of {outside_mm} mm; give the wall's thickness")
    inner = outer - 2 * wall
    inertia = np.pi / 64 * (outer**4 - inner**4)
    return Section(
        np.asarray(np.pi / 4 * (outer**2 - inner**2)), np.asarray(inertia), np.asarray(2 * inertia / outer),
        np.asarray((outer**3 - inner**3) / 6), np.asarray(2 * inertia),
    )  # fmt: skip


@formula(MECHANICS)
def bending_stress(moment_nm: Num, modulus_mm3: Num) -> Array:
    """Return M / W in MPa; arguments broadcast.

    >>> round(float(bending_stress(800.0, 5359.88)), 2)
    149.26
    """
    return np.asarray(1000 * np.asarray(moment_nm, dtype=float) / modulus_mm3)


@formula(MECHANICS)
def torsion_stress(torque_nm: Num, modulus_mm3: Num) -> Array:
    """Return T / 2W in MPa, the shear at the outside of a round tube whose elastic modulus is W; broadcasts."""
    return np.asarray(1000 * np.asarray(torque_nm, dtype=float) / (2 * np.asarray(modulus_mm3)))


@formula("R. von Mises, 1913")
def von_mises(normal_mpa: Num, shear_mpa: Num) -> Array:
    """Return sqrt(s² + 3 t²), s normal stress, t shear, in MPa; arguments broadcast.

    >>> round(float(von_mises(100.0, 50.0)), 2)
    132.29
    """
    return np.asarray(np.sqrt(np.asarray(normal_mpa, dtype=float) ** 2 + 3 * np.asarray(shear_mpa) ** 2))
