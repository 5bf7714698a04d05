"""What metals, laminates, woods and cores bear. MPa; each with its source and how it is known."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

ISO_LAMINATE = "ISO 12215-5 annex C form for glass mat and E-glass, from memory; agrees with another rule at 0.30"


@dataclass(frozen=True)
class Metal:
    """A metal of tubes: modulus, yield (0.2 % proof) and tensile strength in MPa."""

    young: float
    proof: float
    ultimate: float
    source: str


METALS = {
    "stainless 316L": Metal(193_000, 220, 530, "EN 10088 1.4404 (from memory); ranges 170-290 and 485-700 read"),
    "stainless 2205": Metal(200_000, 450, 640, "lower ends of 450-500 and 640-950, read in a summary"),
    "aluminium 6082-T6": Metal(70_000, 240, 290, "lower ends of 240-280 and 290-340, read in a summary"),
}
UNKNOWN_METAL = "stainless 316L"
"""Taken for a metal that is not in the table: the weakest steel in it. A finding says so."""


@dataclass(frozen=True)
class Skin:
    """A hull's skin: bending, through-thickness shear and bearing strength in MPa.

    `measure`: "ultimate" (the rules' skin safety on it) or "yield" (the rules' metal safety on it).
    """

    bending: float
    shear: float
    bearing: float
    measure: str
    source: str


@formula(ISO_LAMINATE, glass_share=Valid(0.25, 0.6))
def laminate_bending(glass_share: Num) -> Array:
    """Return the bending strength of hand-laid E-glass in MPa: 502 ψ² + 107, ψ glass by mass, 0.25 to 0.6.

    >>> round(float(laminate_bending(0.30)), 1)
    152.2
    """
    return np.asarray(502 * np.asarray(glass_share, dtype=float) ** 2 + 107)


@formula(ISO_LAMINATE, glass_share=Valid(0.25, 0.6))
def laminate_tension(glass_share: Num) -> Array:
    """Return the tensile strength in MPa: 800 ψ² - 80 ψ + 37.

    >>> round(float(laminate_tension(0.30)), 1)
    85.0
    """
    share = np.asarray(glass_share, dtype=float)
    return np.asarray(800 * share**2 - 80 * share + 37)


@formula(ISO_LAMINATE, glass_share=Valid(0.25, 0.6))
def laminate_compression(glass_share: Num) -> Array:
    """Return the compressive strength in MPa: 150 ψ + 72. The standard's defaults are held to be optimistic here.

    >>> round(float(laminate_compression(0.40)), 1)
    132.0
    """
    return np.asarray(150 * np.asarray(glass_share, dtype=float) + 72)


@formula(ISO_LAMINATE, glass_share=Valid(0.25, 0.6))
def laminate_shear(glass_share: Num) -> Array:
    """Return the shear strength in MPa: 80 ψ + 38.

    >>> round(float(laminate_shear(0.30)), 1)
    62.0
    """
    return np.asarray(80 * np.asarray(glass_share, dtype=float) + 38)


def skin_of(material: str | None, glass_share: float, bearing_mpa: float = 200.0) -> tuple[Skin, str]:
    """Return a hull's skin by the boat form's material, and what to say where it is not known.

    >>> skin_of("frp_solid", 0.30)[0].bending
    152.2
    >>> skin_of(None, 0.30)[1]
    'hull material not known: taken as solid laminate'
    """
    if material in METAL_AND_WOOD:
        return METAL_AND_WOOD[material], ""
    laminate = Skin(
        round(float(laminate_bending(glass_share)), 1), round(float(laminate_shear(glass_share)), 1), bearing_mpa,
        "ultimate", f"{ISO_LAMINATE}; bearing {bearing_mpa:g} MPa from memory",
    )  # fmt: skip
    known = material in ("frp_solid", "frp_cored")
    return laminate, "" if known else "hull material not known: taken as solid laminate"


METAL_AND_WOOD = {
    "aluminium": Skin(125, 72, 340, "yield", "5083 welded, proof 125, shear proof/√3, bearing 1.25 of tensile 275; from memory"),
    "steel": Skin(235, 135, 450, "yield", "S235, shear yield/√3; bearing 1.25 of tensile 360; from memory"),
    "wood": Skin(40, 5, 20, "ultimate", "marine plywood along its face grain, from memory"),
}  # fmt: skip

CORES = {
    "foam 60": 0.9, "foam 80": 1.4, "foam 100": 2.0, "balsa 150": 10.0, "plug": 50.0,
}  # fmt: skip
"""Compressive strength in MPa, from memory: PVC foam by kg/m³, end-grain balsa, thickened epoxy as a plug or sleeve."""
