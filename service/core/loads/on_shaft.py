"""Checks of the shaft: stress, deflection, frequency."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from service.core.loads import shaft, tube, vibration
from service.core.loads.forces import CollarForces
from service.core.loads.materials import METALS, UNKNOWN_METAL, Metal
from service.core.loads.rows import About, at_least, at_most
from service.core.loads.shapes import CaseLoad, Inputs, Result, TubeSize
from service.core.loads.standard import Numbers
from service.core.loads.validity import Array, Finding
from service.core.loads.water import VISCOSITY, hull_speed

STEEL_DENSITY = 7.98e-6
"""kg/mm³ of austenitic stainless steel (EN 10088, from memory)."""

FOUR_DIGIT_AREA = 0.685
"""Area of a NACA four-digit section over thickness times chord (from its formula)."""


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


def _deflection(
    inputs: Inputs, load: CaseLoad, metal: Metal, section: tube.Section, numbers: Numbers
) -> tuple[Result, tuple[Finding, ...]]:
    spacing, overhang, _ = inputs.spans
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
    """Return the first frequency athwartships and fore and aft against the eddies' push, and what resonance does.

    A boat sails at every speed up to hull speed, so only a frequency above the eddies' at hull speed is never met. That is
    advice: a short length of tube in the water drives little, and how little is the third check.
    """
    tube_mm, speed = inputs.gear.tube.outside_mm, hull_speed(inputs.hull.lwl_mm)
    spacing, overhang, in_water = inputs.spans
    eddies = vibration.shedding_frequency.checked(
        speed_ms=speed, outside_mm=tube_mm, reynolds=speed * tube_mm / 1000 / VISCOSITY
    )
    first = (-1, *(1,) * max(np.ndim(one) for one in (speed, spacing, overhang, in_water)))
    times, push = (np.reshape(one, first) for one in ([w.times for w in _WAYS], [numbers[w.push] for w in _WAYS]))
    natural = _natural(inputs, metal, section, numbers, first)
    limits = np.where(in_water > 0, numbers["shedding_factor"] * times * eddies.value, 0.0)
    rows = [
        at_least(_above(way, numbers), natural[n], limits[n], ("every speed up to hull speed",), numbers)
        for n, way in enumerate(_WAYS)
    ]
    force = vibration.resonant_force(natural, speed, tube_mm, in_water, numbers["shaft_damping"], push, times)
    shaken = tube.bending_stress(force * overhang / 1000, section.modulus)
    about = About(
        "load.shaft_shaking", "stress in the shaft where eddies meet its frequency", "MPa", "C ½ rho V² D L b / 2 zeta W",
        f"{vibration.resonant_force.source}; {numbers.source('shaft_fatigue')}; {numbers.source('shaft_damping')}",
    )  # fmt: skip
    most = numbers["shaft_fatigue"] / numbers["safety_metal_yield"]
    rows.append(at_most(about, shaken, most, tuple(f"eddies {way.name}" for way in _WAYS), numbers))
    found = vibration.first_frequency.findings(spacing_mm=spacing, overhang_mm=overhang)
    return tuple(rows), (*found, *(eddies.findings if np.any(in_water > 0) else ()))


class _Way(NamedTuple):
    """A way to shake: what its check is called, in words, eddies a beat, the rule for their push, the blade edgewise."""

    suffix: str
    name: str
    times: int
    push: str
    edgewise: bool


_WAYS = (
    _Way("", "athwartships", 1, "eddy_push_side", edgewise=False),
    _Way("_along", "fore and aft", 2, "eddy_push_along", edgewise=True),
)


def _above(way: _Way, numbers: Numbers) -> About:
    return About(
        f"load.shaft_frequency{way.suffix}", f"first frequency of the shaft {way.name} above the eddies of its tube", "Hz",
        f"Rayleigh with added water; {way.times} · 0.2 V / D",
        f"{vibration.first_frequency.source}; {vibration.shedding_frequency.source}; {numbers.source('shedding_factor')}",
        binds=False,
    )  # fmt: skip


def _natural(inputs: Inputs, metal: Metal, section: tube.Section, numbers: Numbers, first: tuple[int, ...]) -> Array:
    """Return the first natural frequency of each way (2, ...) in Hz; edgewise the blade moves only the water of its thickness.

    `first` shapes one value a way, to broadcast against the rest.
    """
    gear, (spacing, overhang, in_water) = inputs.gear, inputs.spans
    area = FOUR_DIGIT_AREA * gear.thickness_share * gear.chord_mm**2
    own = numbers["blade_density"] * area * gear.span_mm / 1e9
    width = np.reshape([gear.chord_mm * (gear.thickness_share if way.edgewise else 1.0) for way in _WAYS], first)
    water = vibration.added_mass(width, inputs.wet.span_mm) + vibration.added_mass(gear.tube.outside_mm, in_water)
    return vibration.first_frequency(
        own + water, section.area * STEEL_DENSITY * 1000, spacing, overhang, metal.young, section.inertia
    )
