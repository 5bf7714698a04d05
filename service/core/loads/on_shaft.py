"""Checks of the shaft: stress, deflection, frequency."""

from __future__ import annotations

import numpy as np

from service.core.loads import shaft, tube, vibration
from service.core.loads.cases import wet_part
from service.core.loads.forces import CollarForces
from service.core.loads.materials import METALS, UNKNOWN_METAL, Metal
from service.core.loads.rows import About, at_least, at_most
from service.core.loads.shapes import CaseLoad, Inputs, Result, TubeSize
from service.core.loads.standard import Numbers
from service.core.loads.validity import Array, Finding
from service.core.loads.water import VISCOSITY, hull_speed

STEEL_DENSITY = 7.98e-6
"""kg/mm³ of austenitic stainless steel (EN 10088, from memory)."""


def metal_of(size: TubeSize) -> tuple[Metal, tuple[Finding, ...]]:
    """Return a tube's metal; the weakest steel, with a finding, where the catalogue names one that is not known."""
    if size.material in METALS:
        return METALS[size.material], ()
    text = f"{size.material!r} is not in the table of metals: taken as {UNKNOWN_METAL}; known: {', '.join(METALS)}"
    return METALS[UNKNOWN_METAL], (Finding("metal", "tube.material", text),)


def shaft_results(
    inputs: Inputs, load: CaseLoad, forces: CollarForces, numbers: Numbers
) -> tuple[tuple[Result, ...], tuple[Finding, ...]]:
    """Return stress, deflection and both frequencies of the shaft."""
    metal, found = metal_of(inputs.gear.tube)
    size = {"outside_mm": inputs.gear.tube.outside_mm, "wall_mm": inputs.gear.tube.wall_mm}
    section = tube.section.checked(**size)
    bending = tube.bending_stress(forces.bending_nm, section.value.modulus)
    twist = tube.torsion_stress(forces.torque_nm, section.value.modulus)
    weight = np.abs(forces.lower[..., 2]) / section.value.area
    stress = at_most(
        About(
            "load.shaft_stress", "stress in the shaft at its collars, bending, torsion and weight together", "MPa",
            "sqrt((M/W + N/A)² + 3 (T/2W)²)", f"{metal.source}; {numbers.source('safety_metal_yield')}",
        ),
        tube.von_mises(bending + weight, twist), metal.proof / numbers["safety_metal_yield"], load.names, numbers,
    )  # fmt: skip
    deflection, bent = _deflection(inputs, load, metal, section.value, numbers)
    frequencies, beat = _frequencies(inputs, metal, section.value, numbers)
    return (stress, deflection, *frequencies), (*found, *section.findings, *bent, *beat)


def _spans(inputs: Inputs) -> tuple[Array, Array]:
    """Return spacing of the collars and overhang to the blade's wet middle, mm."""
    lower = np.asarray(inputs.spot.lower_mm, dtype=float)
    return np.asarray(inputs.spot.upper_mm - lower), np.asarray(lower - wet_part(inputs).middle_mm)


def _deflection(
    inputs: Inputs, load: CaseLoad, metal: Metal, section: tube.Section, numbers: Numbers
) -> tuple[Result, tuple[Finding, ...]]:
    spacing, overhang = _spans(inputs)
    bend = shaft.tip_deflection.checked(
        force_n=np.hypot(load.along_n, load.side_n), spacing_mm=spacing, overhang_mm=overhang, young_mpa=metal.young,
        inertia_mm4=section.inertia,
    )  # fmt: skip
    about = About(
        "load.shaft_deflection", "deflection of the shaft at the blade's middle", "mm", "P b² (a + b) / 3EI",
        f"{shaft.OVERHANG_CASE}; {numbers.source('tip_deflection_share')}",
    )  # fmt: skip
    limit = numbers["tip_deflection_share"] * np.maximum(overhang, 1.0)
    return at_most(about, bend.value, limit, load.names, numbers), bend.findings


def _frequencies(
    inputs: Inputs, metal: Metal, section: tube.Section, numbers: Numbers
) -> tuple[tuple[Result, ...], tuple[Finding, ...]]:
    """Return the first frequency athwartships and fore and aft, each against the eddies' push in that direction.

    A boat sails at every speed up to hull speed, so the shaft's frequency should lie above the eddies' at hull speed;
    where it does not, some lower speed shakes it. Advice: water damps what a short length of tube can drive.
    """
    gear, (spacing, overhang) = inputs.gear, _spans(inputs)
    wet = wet_part(inputs).span_mm
    in_water = np.maximum(-np.asarray(inputs.spot.shaft_bottom_mm, dtype=float), 0.0)
    area = 0.685 * gear.thickness_share * gear.chord_mm**2  # a four-digit section's area is 0.685 t c
    own = numbers["blade_density"] * area * gear.span_mm / 1e9
    speed = hull_speed(inputs.hull.lwl_mm)
    eddies = vibration.shedding_frequency.checked(
        speed_ms=speed, outside_mm=gear.tube.outside_mm, reynolds=speed * gear.tube.outside_mm / 1000 / VISCOSITY
    )
    widths = {"": gear.chord_mm, "_along": gear.thickness_share * gear.chord_mm}
    rows, found = [], list(eddies.findings) if np.any(in_water > 0) else []
    for (suffix, width), times, way in zip(widths.items(), (1, 2), ("athwartships", "fore and aft"), strict=True):
        tube_water = vibration.added_mass(gear.tube.outside_mm, in_water)
        natural = vibration.first_frequency.checked(
            end_mass_kg=own + vibration.added_mass(width, wet) + tube_water,
            tube_kg_m=section.area * STEEL_DENSITY * 1000, spacing_mm=spacing, overhang_mm=overhang,
            young_mpa=metal.young, inertia_mm4=section.inertia,
        )  # fmt: skip
        about = About(
            f"load.shaft_frequency{suffix}", f"first frequency of the shaft {way} above the eddies of its tube", "Hz",
            "Rayleigh with added water; 0.2 V / D" + (", twice fore and aft" if times > 1 else ""),
            f"{vibration.first_frequency.source}; {vibration.shedding_frequency.source}; {numbers.source('shedding_factor')}",
            binds=False,
        )  # fmt: skip
        limit = np.where(in_water > 0, numbers["shedding_factor"] * times * eddies.value, 0.0)
        rows.append(at_least(about, natural.value, np.asarray(limit), ("every speed up to hull speed",), numbers))
    return tuple(rows), tuple(found)
