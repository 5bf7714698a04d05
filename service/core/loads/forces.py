"""From cases to what the two collars and the shaft carry: blade, the gear's own mass in a seaway, its weight.

The weight hangs from whichever collar is clamped; each bracket is taken to carry all of it. Gravity acts in every case,
the heave of the stern only in those of the seaway.
"""

from __future__ import annotations

from itertools import product
from typing import NamedTuple

import numpy as np

from service.core.loads.cases import blade_loads
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
    spot, gear, count = inputs.spot, inputs.gear, len(load.names)
    lower, spacing = np.asarray(spot.lower_mm, dtype=float), inputs.spans.spacing_mm
    middle = (np.asarray(spot.shaft_bottom_mm, dtype=float) + spot.shaft_top_mm) / 2
    heights = np.broadcast_arrays(
        inputs.wet.middle_mm - lower, np.asarray(spot.mass_mm, dtype=float) - lower, middle - lower
    )
    shape = np.broadcast_shapes(heights[0].shape, load.side_n.shape[1:], spacing.shape)
    force = np.empty((len(heights), 2, count, *shape))  # what acts, fore and aft and athwartships
    force[0, 0], force[0, 1] = load.along_n, load.side_n
    for n, mass in ((1, gear.gear_kg), (2, gear.shaft_kg)):
        force[n, 0], force[n, 1] = inertia(mass, pitch), inertia(mass, roll)
    above = np.stack(heights).reshape(-1, 1, 1, *(1,) * (len(shape) - heights[0].ndim), *heights[0].shape)
    at_collars = [part.sum(axis=0) for part in collar_loads(force, above, spacing)]
    moments = [part.sum(axis=0) for part in collar_moments(force, above, spacing)]
    weight = -inertia(gear.gear_kg + gear.shaft_kg, down)
    lower_force, upper_force = (np.empty((count, *shape, 3)) for _ in at_collars)
    for forces, (along, side) in zip((lower_force, upper_force), at_collars, strict=True):
        forces[..., 0], forces[..., 1], forces[..., 2] = along, side, weight
    bending = np.maximum(*(np.hypot(along, side) for along, side in moments))
    return CollarForces(
        lower_force, upper_force, bending, np.asarray(np.broadcast_to(load.torque_nm, bending.shape)),
        np.asarray(np.broadcast_to(down, bending.shape)),
    )  # fmt: skip
