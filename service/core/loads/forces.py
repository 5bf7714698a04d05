"""From cases to what the two collars and the shaft carry: blade, the gear's own mass in a seaway, its weight.

The weight hangs from whichever collar is clamped; each bracket is taken to carry all of it. Gravity acts in every case,
the heave of the stern only in those of the seaway.
"""

from __future__ import annotations

from itertools import product
from typing import NamedTuple

import numpy as np

from service.core.loads.cases import blade_loads, wet_part
from service.core.loads.shaft import collar_loads, collar_moments
from service.core.loads.shapes import CaseLoad, Inputs
from service.core.loads.standard import Numbers
from service.core.loads.validity import Array, Finding, Num, formula
from service.core.loads.water import GRAVITY

SEAWAY = "mass · acceleration: m a along and across, m (g + a) down"


class CollarForces(NamedTuple):
    """By case and place (C, ..., 3): force on the lower and the upper collar; (C, ...): bending N·m, torque N·m, weight N."""

    lower: Array
    upper: Array
    bending_nm: Array
    torque_nm: Array
    down_g: Array
    """Downward acceleration in m/s², gravity included."""


@formula("I. Newton")
def inertia(mass_kg: Num, acceleration_ms2: Num) -> Array:
    """Return m a in N; broadcasts.

    >>> float(inertia(24.0, 6.0))
    144.0
    """
    return np.asarray(np.asarray(mass_kg, dtype=float) * acceleration_ms2)


def all_cases(inputs: Inputs, numbers: Numbers) -> tuple[CaseLoad, CollarForces, tuple[Finding, ...]]:
    """Return the cases of the blade and of the seaway, and what collars and shaft carry in each."""
    load, findings = blade_loads(inputs, numbers)
    ways = tuple(product((1.0, -1.0), (1.0, -1.0)))
    count, shape = len(load.names), load.side_n.shape[1:]
    pitch, roll = (
        np.concatenate([np.zeros(count), [way[k] * numbers[rule] for way in ways]])
        for k, rule in enumerate(("load_pitch_acceleration", "load_roll_acceleration"))
    )
    down = np.full(count + len(ways), GRAVITY)
    down[count:] += numbers["load_heave_acceleration"]
    load = _with_seaway(load, shape, numbers, len(ways))
    forces = _collars(inputs, load, tuple(a.reshape(-1, *(1,) * len(shape)) for a in (pitch, roll, down)))
    return load, forces, (*findings, *_ranges(inputs))


def _with_seaway(load: CaseLoad, shape: tuple[int, ...], numbers: Numbers, ways: int) -> CaseLoad:
    """Return the cases with the seaway's added: no force on the blade there."""
    none = np.zeros((ways, *shape))
    source = "; ".join(numbers.source(f"load_{name}_acceleration") for name in ("pitch", "roll", "heave"))
    sides = ("aft and to starboard", "aft and to port", "forward and to starboard", "forward and to port")
    speed, angle, along, side, torque = (
        np.concatenate([part, none])
        for part in (load.speed_ms, load.angle_deg, load.along_n, load.side_n, load.torque_nm)
    )
    return CaseLoad(
        (*load.names, *(f"own mass in a seaway, {way}" for way in sides)), speed, angle, along, side, torque,
        (*load.formulas, *(SEAWAY,) * ways), (*load.sources, *(source,) * ways),
    )  # fmt: skip


def _ranges(inputs: Inputs) -> tuple[Finding, ...]:
    spot = inputs.spot
    return collar_loads.findings(spacing_mm=np.asarray(spot.upper_mm) - np.asarray(spot.lower_mm))


def _collars(inputs: Inputs, load: CaseLoad, accelerations: tuple[Array, ...]) -> CollarForces:
    """Return forces at both collars and the greatest bending at either, case by case."""
    pitch, roll, down = accelerations
    spot, gear = inputs.spot, inputs.gear
    lower = np.asarray(spot.lower_mm, dtype=float)
    spacing = np.asarray(spot.upper_mm, dtype=float) - lower
    middle = (np.asarray(spot.shaft_bottom_mm, dtype=float) + spot.shaft_top_mm) / 2
    acting = (
        (load.along_n, load.side_n, wet_part(inputs).middle_mm - lower),
        (inertia(gear.gear_kg, pitch), inertia(gear.gear_kg, roll), np.asarray(spot.mass_mm, dtype=float) - lower),
        (inertia(gear.shaft_kg, pitch), inertia(gear.shaft_kg, roll), middle - lower),
    )
    at_collars, moments = [], []
    for plane in (0, 1):
        loads = [collar_loads(force[plane], force[2], spacing) for force in acting]
        bends = [collar_moments(force[plane], force[2], spacing) for force in acting]
        at_collars.append([sum(one[end] for one in loads) for end in (0, 1)])
        moments.append([sum(one[end] for one in bends) for end in (0, 1)])
    shape = np.broadcast_shapes(np.shape(at_collars[0][0]), load.side_n.shape, np.shape(spacing))
    weight = -inertia(gear.gear_kg + gear.shaft_kg, down)
    lower_force, upper_force = (
        np.stack([np.broadcast_to(part, shape) for part in (at_collars[0][end], at_collars[1][end], weight)], axis=-1)
        for end in (0, 1)
    )
    bending = np.maximum(*(np.hypot(moments[0][end], moments[1][end]) for end in (0, 1)))
    return CollarForces(
        lower_force, upper_force, np.asarray(np.broadcast_to(bending, shape)),
        np.asarray(np.broadcast_to(load.torque_nm, shape)), np.asarray(np.broadcast_to(down, shape)),
    )  # fmt: skip
