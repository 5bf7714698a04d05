"""Load cases: how fast, at what angle, where on the wave, and what force the blade takes there.

Ahead, the blade stands at its greatest angle or where it stalls, whichever comes first. Broach: the flow comes square to
the blade's side. Astern: the flow comes from behind, so the centre of pressure lies near the trailing edge. Each case
is taken to both sides. Forces act at the middle of the immersed span.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike

from service.core.loads import blade, water
from service.core.loads.shapes import CaseLoad, Inputs
from service.core.loads.standard import Numbers
from service.core.loads.validity import Array, Finding

FORCE = "CN ½ rho A V²; V = boat's speed with the wave's orbital speed of its place on the wave"
PLACES = {1: "in the trough", 0: "on the face", -1: "at the crest"}


@dataclass(frozen=True)
class Case:
    """A case of the blade: its name, where the flow comes from, boat's speed (...), phase on the wave, least CN."""

    name: str
    flow: Literal["ahead", "astern", "sideways"]
    speed_ms: Array
    phase: float
    floor: float
    source: str


def blade_cases(inputs: Inputs, numbers: Numbers) -> tuple[Case, ...]:
    """Return the five cases of the blade with the boat's speed in each."""
    own = water.hull_speed(inputs.hull.lwl_mm)
    n, say, factor = numbers, numbers.source, numbers["load_hull_speed_factor"]
    surf = np.maximum(n["load_surf_speed"], own)

    def named(name: str, rule: str) -> tuple[str, float]:
        phase = n[rule]
        return f"{name} {PLACES.get(round(phase), '')}".strip(), phase

    hull, hull_phase = named("hull speed", "load_phase_hull_speed")
    fast, fast_phase = named(f"{100 * factor:.0f} % of hull speed", "load_phase_fast")
    surfing, surf_phase = named("surfing", "load_phase_surf")
    broach, broach_phase = named("broach", "load_phase_broach")
    astern, astern_phase = named("astern", "load_phase_astern")
    broadside = n["load_force_coefficient"]
    return (
        Case(hull, "ahead", own, hull_phase, 0.0, f"{blade.WHICKER_FEHLNER}; {say('load_phase_hull_speed')}"),
        Case(fast, "ahead", factor * own, fast_phase, broadside, f"{say('load_hull_speed_factor')}; {say('load_phase_fast')}"),
        Case(surfing, "ahead", surf, surf_phase, 0.0, f"{say('load_surf_speed')}; {say('load_phase_surf')}"),
        Case(broach, "sideways", np.full_like(own, n["load_broach_speed"]), broach_phase, broadside, say("load_broach_speed")),
        Case(astern, "astern", np.full_like(own, n["load_astern_speed"]), astern_phase, 0.0, say("load_astern_speed")),
    )  # fmt: skip


def blade_loads(inputs: Inputs, numbers: Numbers) -> tuple[CaseLoad, tuple[Finding, ...]]:
    """Return the forces of every case to starboard and to port, (2 · 5, ...), and what was found about them."""
    cases = blade_cases(inputs, numbers)
    speed, found = _flow(cases, inputs, numbers)
    angle, along, side, torque = _forces(cases, speed, inputs, numbers)
    names = tuple(f"{case.name}, to {way}" for way in ("starboard", "port") for case in cases)
    return (
        CaseLoad(
            names, np.concatenate([speed, speed]), np.concatenate([angle, -angle]), np.concatenate([along, along]),
            np.concatenate([side, -side]), np.concatenate([torque, -torque]), (FORCE,) * (2 * len(cases)),
            tuple(case.source for case in cases) * 2,
        ),
        (*_ranges(inputs, numbers), *found),
    )  # fmt: skip


def _ranges(inputs: Inputs, numbers: Numbers) -> tuple[Finding, ...]:
    """Return what is out of range before any case: the hull's length, the wave's steepness, the wet blade."""
    steepness = numbers["load_wave_height"] / water.wave_length(numbers["load_wave_period"])
    wet = inputs.wet
    return (
        *water.hull_speed.findings(lwl_mm=inputs.hull.lwl_mm),
        *water.gentle.findings(steepness=steepness),
        *blade.aspect_ratio.findings(wet_span_mm=wet.span_mm),
        *blade.lift_slope.findings(aspect=blade.aspect_ratio(inputs.gear.chord_mm, wet.span_mm)),
    )


def _by_case(values: ArrayLike, shape: tuple[int, ...]) -> Array:
    """Return one value a case (K, 1, ...), to broadcast against arrays of a shape (...)."""
    return np.asarray(values).reshape(-1, *(1,) * len(shape))


def _flow(cases: Sequence[Case], inputs: Inputs, numbers: Numbers) -> tuple[Array, tuple[Finding, ...]]:
    """Return the speed of the flow over the blade in each case (K, ...), m/s, and what is out of range."""
    depth = np.maximum(-inputs.wet.middle_mm, 0.0)
    orbital = water.orbital_speed.checked(
        height_m=numbers["load_wave_height"], period_s=numbers["load_wave_period"], depth_mm=depth
    )
    shape = np.broadcast_shapes(*(case.speed_ms.shape for case in cases), orbital.value.shape)
    boat = np.empty((len(cases), *shape))
    for k, case in enumerate(cases):
        boat[k] = case.speed_ms
    speed = water.flow_speed(boat, orbital.value, _by_case([case.phase for case in cases], shape))
    outside = (
        orbital.findings + water.flow_speed.findings(boat_ms=boat) + water.dynamic_pressure.findings(speed_ms=speed)
    )
    if not outside:
        return speed, ()
    return speed, tuple(
        Finding(f.formula, f.input, f"{case.name}: {f.text}")
        for k, case in enumerate(cases)
        for f in (
            *orbital.findings,
            *water.flow_speed.findings(boat_ms=case.speed_ms),
            *water.dynamic_pressure.findings(speed_ms=speed[k]),
        )
    )


def _forces(
    cases: Sequence[Case], speed_ms: Array, inputs: Inputs, numbers: Numbers
) -> tuple[Array, Array, Array, Array]:
    """Return angle (deg), force aft and to starboard (N) and torque (N·m) of each case to starboard, (K, ...).

    The blade stands at one of two angles only, so its coefficients are worked out for those and taken from there.
    """
    gear, plan, shape = inputs.gear, _planform(numbers), speed_ms.shape[1:]
    aspect = np.broadcast_to(blade.aspect_ratio(gear.chord_mm, inputs.wet.span_mm), shape)
    turned = np.minimum(blade.stall_angle(aspect, plan), np.radians(gear.max_angle_deg))
    angles = np.stack([turned, np.full(shape, np.pi / 2)])
    which = np.array([case.flow == "sideways" for case in cases], dtype=np.intp)
    lift, drag, normal, centre = (part[which] for part in blade.coefficients(aspect, angles, plan))
    floor, sideways, astern = (
        _by_case(values, shape)
        for values in ([c.floor for c in cases], which == 1, [c.flow == "astern" for c in cases])
    )
    area = blade.wet_area(gear.chord_mm, inputs.wet.span_mm)
    unit = water.dynamic_pressure(speed_ms) * area * np.maximum(1.0, floor / np.abs(normal))
    centre = np.where(astern, 1 - centre, centre)
    torque = blade.balance_torque(normal * unit, centre, gear.chord_mm, gear.balance_mm)
    along = np.where(astern, -1.0, np.where(sideways, 0.0, 1.0)) * drag * unit
    return np.degrees(angles)[which], along, np.where(sideways, normal, lift) * unit, torque


def _planform(numbers: Numbers) -> blade.Planform:
    """Return the blade's form as the rules state it: rectangular, square or rounded at its tip."""
    return blade.Planform(
        1.0, faired=numbers["load_tip_faired"] > 0, lift_cap=numbers["load_lift_cap"],
        broadside=numbers["load_force_coefficient"],
    )  # fmt: skip
