"""Pin-jointed bars that meet at a collar, and how much a round tube bears as a strut. mm, N, MPa.

Tension is positive throughout.
"""

from __future__ import annotations

import numpy as np

from service.core.loads.validity import Array, Num, Valid, cross, formula

PERRY = "EN 1993-1-1, 6.3.1.2 (Ayrton and Perry 1886), read in guides, not in the standard"
COLD_FORMED_IMPERFECTION = 0.49
COLD_FORMED_PLATEAU = 0.40
"""Buckling curve of cold-formed stainless hollow sections, EN 1993-1-4 table 5.3 (from memory)."""
LEAST_VOLUME = 1e-3
NOTHING = 1e-12


@formula("statics of a joint: equilibrium of three bars", volume=Valid(LEAST_VOLUME, 1))
def bar_forces(directions: Array, load_n: Array, volume: Num | None = None) -> Array:
    """Return the forces in three bars that hold one joint, in N, tension positive; shape (..., 3).

    `directions` (..., 3 components, 3 bars): unit vectors from the joint along each bar; `load_n` (..., 3). The bars
    pull: D t = -F, by Cramer's rule. A support that is no bar goes in as its own direction. Bars in one plane hold nothing
    square to it: `volume` (what the three span, 0 to 1, of `bar_volume`) is there for its range; at 0 forces are immense.

    >>> import numpy as np
    >>> up, out = np.array([0, 0, 1.0]), np.array([[-450, 300, 150], [-450, -300, 150]]) / 561.248608
    >>> [round(float(v), 2) for v in bar_forces(np.array([*out, up]).T, np.array([700, 2333.3333, 0]))]
    [-1746.11, 2619.16, -233.33]
    """
    del volume
    one, two, three = (directions[..., k] for k in range(3))
    faces = (cross(two, three), cross(three, one), cross(one, two))
    spanned = (one * faces[0]).sum(axis=-1)
    spanned = np.where(np.abs(spanned) < NOTHING, NOTHING, spanned)
    force = np.asarray(load_n, dtype=float)
    x, y, z = (force[..., k] for k in range(3))
    return np.stack([-(x * f[..., 0] + y * f[..., 1] + z * f[..., 2]) / spanned for f in faces], axis=-1)


def bar_volume(directions: Array) -> Array:
    """Return the volume that three unit directions (..., 3, 3) span: 1 square to each other, 0 in one plane."""
    return np.asarray(np.abs(np.linalg.det(directions)))


@formula("L. Euler 1744", length_mm=Valid(20, 5000, "mm"))
def euler_load(young_mpa: Num, inertia_mm4: Num, length_mm: Num) -> Array:
    """Return the load in N at which a bar pinned at both ends buckles: π² E I / L². Broadcasts.

    >>> round(float(euler_load(193000.0, 10136.7, 1000.0)))
    19309
    """
    return np.asarray(np.pi**2 * np.asarray(young_mpa) * inertia_mm4 / np.asarray(length_mm, dtype=float) ** 2)


@formula(PERRY, slenderness=Valid(0, 3))
def buckling_share(
    slenderness: Num, imperfection: Num = COLD_FORMED_IMPERFECTION, plateau: Num = COLD_FORMED_PLATEAU
) -> Array:
    """Return chi, the share of its squash load that a strut bears: 1 / (Φ + sqrt(Φ² - λ²)), at most 1.

    Φ = (1 + alpha(λ - λ0) + λ²) / 2; λ = sqrt(A fy / N_Euler), 0 to 3. Broadcasts.

    >>> round(float(buckling_share(1.0, 0.49, 0.2)), 4), round(float(buckling_share(0.1)), 1)
    (0.5399, 1.0)
    """
    lam = np.asarray(slenderness, dtype=float)
    phi = (1 + np.asarray(imperfection) * (lam - plateau) + lam**2) / 2
    return np.asarray(np.minimum(1 / (phi + np.sqrt(np.maximum(phi**2 - lam**2, 0.0))), 1.0))


@formula(PERRY)
def strut_capacity(area_mm2: Num, inertia_mm4: Num, length_mm: Num, young_mpa: Num, yield_mpa: Num) -> Array:
    """Return what a pinned round strut bears in compression, in N, without any safety: chi A fy. Broadcasts.

    >>> round(float(strut_capacity(147.03, 10136.7, 800.0, 193000.0, 220.0)))
    18154
    """
    squash = np.asarray(area_mm2, dtype=float) * yield_mpa
    return np.asarray(buckling_share(np.sqrt(squash / euler_load(young_mpa, inertia_mm4, length_mm))) * squash)


@formula("safety over capacity", safety=Valid(1, 10))
def strut_unity(force_n: Num, squash_n: Num, capacity_n: Num, safety_tension: Num, safety: Num) -> Array:
    """Return force over what is allowed, 1 at the limit: compression against chi A fy, tension against A fy. Broadcasts.

    >>> round(float(strut_unity(-7000.0, 32000.0, 17500.0, 1.5, 2.5)), 3)
    1.0
    """
    force = np.asarray(force_n, dtype=float)
    pressed, pulled = np.maximum(-force, 0.0) * safety / capacity_n, np.maximum(force, 0.0) * safety_tension / squash_n
    return np.asarray(np.maximum(pressed, pulled))
