"""A skin bent through its thickness by a stiff patch bolted to it: flange, pad and backing plate together.

Model: a round plate of radius a (the unsupported panel), held at its edge, with a stiff round boss of radius b in its
middle (the patch, of equal area) that carries a pull and a moment. Thin plate theory; closed forms of the annular plate
with a guided inner edge and of the trunnion-loaded plate, outer edge fixed (Roark's Formulas for Stress and Strain,
chapter on flat plates; solved anew here: w = (A r + B r³ + C/r + E r ln r) cos θ). A flat plate: the camber of a
transom helps and is left out, on the safe side; so is the boss's own give, which is not.
"""

from __future__ import annotations

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

ROARK = "Roark's Formulas for Stress and Strain, annular plate held at its rim with a stiff boss, solved anew"
SHARE = Valid(0.05, 0.9)


@formula(ROARK, share=SHARE)
def bending_from_moment(moment_nm: Num, boss_mm: Num, share: Num) -> Array:
    """Return the greatest radial moment a unit of width at the boss, in N (N·mm/mm): M (1 - s²) / 2πb (1 + s²).

    s = b / a, the boss's radius over the panel's, 0.05 to 0.9. The stress in a solid plate is 6 m / t². Broadcasts.
    The value does not depend on Poisson's ratio.

    >>> round(6 * float(bending_from_moment(0.001, 0.5, 0.5)), 3)
    1.146
    """
    s = np.asarray(share, dtype=float) ** 2
    return np.asarray(1000 * np.asarray(moment_nm) * (1 - s) / (2 * np.pi * np.asarray(boss_mm) * (1 + s)))


@formula(ROARK, share=SHARE)
def bending_from_pull(pull_n: Num, share: Num) -> Array:
    """Return the radial moment a unit of width at the boss under a pull, in N: P/4π [2 ln(1/s) / (1 - s²) - 1].

    Broadcasts; s = b / a as above.

    >>> round(float(bending_from_pull(1000.0, 0.5)), 2)
    67.51
    """
    s = np.asarray(share, dtype=float)
    return np.asarray(np.asarray(pull_n) / (4 * np.pi) * (2 * np.log(1 / s) / (1 - s**2) - 1))


def boss_radius(width_mm: Num, height_mm: Num) -> Array:
    """Return the radius in mm of the circle that has a rectangle's area; broadcasts.

    >>> round(float(boss_radius(160.0, 130.0)), 1)
    81.4
    """
    return np.asarray(np.sqrt(np.asarray(width_mm, dtype=float) * height_mm / np.pi))


def panel_moment(moment_nm: Num, pull_n: Num, boss_mm: Num, panel_mm: Num) -> Array:
    """Return moment and pull together, a unit of width at the boss, in N. The boss is held to 0.05-0.9 of the panel."""
    share = np.clip(np.asarray(boss_mm, dtype=float) / panel_mm, SHARE.least, SHARE.most)
    return np.asarray(
        bending_from_moment(np.abs(moment_nm), share * panel_mm, share) + bending_from_pull(np.abs(pull_n), share)
    )


@formula("elementary mechanics of materials", skin_mm=Valid(2, 80, "mm"))
def solid_stress(moment_n: Num, skin_mm: Num) -> Array:
    """Return 6 m / t² in MPa for a solid skin; broadcasts.

    >>> float(solid_stress(600.0, 10.0))
    36.0
    """
    return np.asarray(6 * np.asarray(moment_n) / np.asarray(skin_mm, dtype=float) ** 2)


@formula("sandwich theory, thin faces (any text)", core_share=Valid(0.3, 0.95))
def sandwich_stress(moment_n: Num, skin_mm: Num, core_mm: Num, core_share: Num | None = None) -> Array:
    """Return the stress in the faces of a sandwich in MPa: m / (tf d), tf = (t - c)/2 each, d = c + tf. Broadcasts.

    `core_share`, core over whole, is there for its range: thin faces. Faces of equal thickness are assumed.

    >>> round(float(sandwich_stress(600.0, 30.0, 20.0)), 2)
    4.8
    """
    del core_share
    face = np.maximum((np.asarray(skin_mm, dtype=float) - core_mm) / 2, 0.1)
    return np.asarray(np.asarray(moment_n) / (face * (core_mm + face)))
