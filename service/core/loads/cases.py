"""Load cases: how fast, at what angle, where on the wave, and what force the blade takes there.

Ahead, the blade stands at its greatest angle or where it stalls, whichever comes first. Broach: the flow comes square to
the blade's side. Astern: the flow comes from behind, so the centre of pressure lies near the trailing edge. Each case
is taken to both sides. Forces act at the middle of the immersed span.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple

import numpy as np

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


class Wet(NamedTuple):
    """The part of the blade under water: its span and the height of its middle (...), mm."""

    span_mm: Array
    middle_mm: Array


def wet_part(inputs: Inputs) -> Wet:
    """Return how much of the blade is under water at rest and the height of its middle (negative)."""
    bottom = np.asarray(inputs.spot.blade_top_mm, dtype=float) - inputs.gear.span_mm
    span = np.clip(-bottom, 0.0, inputs.gear.span_mm)
    return Wet(np.asarray(span), np.asarray(bottom + span / 2))


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
    rows, findings = [], list(_ranges(inputs, numbers))
    cases = blade_cases(inputs, numbers)
    for case in cases:
        row, found = _one(case, inputs, numbers)
        rows.append(row)
        findings += [Finding(f.formula, f.input, f"{case.name}: {f.text}") for f in found]
    shape = np.broadcast_shapes(*(value.shape for row in rows for value in row))
    speed, angle, along, side, torque = (
        np.stack([np.broadcast_to(row[k], shape) for row in rows]) for k in range(len(rows[0]))
    )
    names = tuple(f"{case.name}, to {way}" for way in ("starboard", "port") for case in cases)
    return (
        CaseLoad(
            names, np.concatenate([speed, speed]), np.concatenate([angle, -angle]), np.concatenate([along, along]),
            np.concatenate([side, -side]), np.concatenate([torque, -torque]), (FORCE,) * (2 * len(cases)),
            tuple(case.source for case in cases) * 2,
        ),
        tuple(findings),
    )  # fmt: skip


def _ranges(inputs: Inputs, numbers: Numbers) -> tuple[Finding, ...]:
    """Return what is out of range before any case: the hull's length, the wave's steepness, the wet blade."""
    steepness = numbers["load_wave_height"] / water.wave_length(numbers["load_wave_period"])
    wet = wet_part(inputs)
    return (
        *water.hull_speed.findings(lwl_mm=inputs.hull.lwl_mm),
        *water.gentle.findings(steepness=steepness),
        *blade.aspect_ratio.findings(wet_span_mm=wet.span_mm),
        *blade.lift_slope.findings(aspect=blade.aspect_ratio(inputs.gear.chord_mm, wet.span_mm)),
    )


def _one(case: Case, inputs: Inputs, numbers: Numbers) -> tuple[tuple[Array, ...], tuple[Finding, ...]]:
    """Return flow speed, angle (deg), force aft and to starboard (N) and torque (N·m) of a case to starboard."""
    gear, wet = inputs.gear, wet_part(inputs)
    depth = np.maximum(-wet.middle_mm, 0.0)
    orbital = water.orbital_speed.checked(
        height_m=numbers["load_wave_height"], period_s=numbers["load_wave_period"], depth_mm=depth
    )
    speed = water.flow_speed.checked(boat_ms=case.speed_ms, orbital_ms=orbital.value, phase=case.phase)
    plan = _planform(numbers)
    aspect = blade.aspect_ratio(gear.chord_mm, wet.span_mm)
    limit = np.radians(gear.max_angle_deg)
    angle = np.full_like(aspect, np.pi / 2) if case.flow == "sideways" else np.minimum(
        blade.stall_angle(aspect, plan), limit
    )  # fmt: skip
    k = blade.coefficients(aspect, angle, plan)
    push = water.dynamic_pressure.checked(speed_ms=speed.value)
    unit = push.value * blade.wet_area(gear.chord_mm, wet.span_mm) * np.maximum(1.0, case.floor / np.abs(k.normal))
    centre = 1 - k.centre if case.flow == "astern" else k.centre
    torque = blade.balance_torque(k.normal * unit, centre, gear.chord_mm, gear.balance_mm)
    along, side = (np.zeros_like(k.drag), k.normal) if case.flow == "sideways" else (k.drag, k.lift)
    way = -1.0 if case.flow == "astern" else 1.0
    return (
        (speed.value, np.degrees(angle), way * along * unit, side * unit, torque),
        (*orbital.findings, *speed.findings, *push.findings),
    )


def _planform(numbers: Numbers) -> blade.Planform:
    """Return the blade's form as the rules state it: rectangular, square or rounded at its tip."""
    return blade.Planform(
        1.0, faired=numbers["load_tip_faired"] > 0, lift_cap=numbers["load_lift_cap"],
        broadside=numbers["load_force_coefficient"],
    )  # fmt: skip
