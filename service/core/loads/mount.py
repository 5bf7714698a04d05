"""From a collar to the flange: forces and moments in the flange's own axes, and what struts take of them."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from service.core.loads.bolts import FlangeLoad, bolt_shears, bolt_tensions
from service.core.loads.shapes import Mount
from service.core.loads.struts import bar_forces
from service.core.loads.validity import Array, Num, cross, formula, length_of

UP = np.array([0.0, 0.0, 1.0])


def plain_axes(rake_rad: Num, plan_rad: Num) -> Array:
    """Return the axes (..., 3, 3) of a flange on a skin: rows normal (out of the hull), across (starboard), up.

    `rake_rad` positive where the top is further aft, `plan_rad` where the starboard side is: tangents dX/dz and dX/dy.
    A flange that takes only part of the skin's slope (a pad takes the rest) goes in with what it takes.

    >>> import numpy as np
    >>> (plain_axes(np.radians(20.0), 0.0).round(3) + 0.0).tolist()
    [[0.94, 0.0, -0.342], [0.0, 1.0, 0.0], [0.342, 0.0, 0.94]]
    """
    rake, plan = -np.tan(rake_rad), -np.tan(plan_rad)
    axes = np.empty((*np.broadcast(rake, plan).shape, 3, 3))
    normal, up = axes[..., 0, :], axes[..., 2, :]
    normal[..., 0], normal[..., 1], normal[..., 2] = 1.0, plan, rake
    normal /= length_of(normal)[..., None]
    up[...] = UP - normal * normal[..., 2:]
    up /= length_of(up)[..., None]
    axes[..., 1, :] = cross(up, normal)
    return axes


STEP_AXES = np.array([[0.0, 0.0, 1.0], [0.0, 1.0, 0.0], [-1.0, 0.0, 0.0]])
"""A base flat on a step: normal up, width athwartships, height forward."""
CHEEK_AXES = np.array([[0.0, 1.0, 0.0], [-1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])
"""Plates on a sternpost: normal to starboard, width fore and aft, height up."""


@formula("statics: M = r x F")
def moment_about_flange(force_n: Array, arm_mm: Array) -> Array:
    """Return the moment (..., 3) about the flange's centre in N·m of a force (..., 3) at the end of an arm (..., 3).

    >>> import numpy as np
    >>> (moment_about_flange(np.array([0.0, 1000.0, -300.0]), np.array([400.0, 0.0, 0.0])) + 0.0).tolist()
    [0.0, 120.0, 400.0]
    """
    return np.asarray(cross(arm_mm, force_n) / 1000)


@formula("statics")
def flange_load(force_n: Array, moment_nm: Array, axes: Array) -> FlangeLoad:
    """Return force and moment (..., 3) of the boat's frame in the flange's axes (..., 3, 3).

    >>> import numpy as np
    >>> load = flange_load(np.array([100.0, 0.0, 0.0]), np.array([0.0, 0.0, 5.0]), np.eye(3))
    >>> float(load.normal_n), float(load.about_up_nm)
    (100.0, 5.0)
    """
    both = np.stack(np.broadcast_arrays(force_n, moment_nm))
    x, y, z = (axes[..., k] * both[..., k, None] for k in range(3))
    found = x + y + z
    return FlangeLoad(*(found[n, ..., k] for n in (0, 1) for k in range(3)))


class Shared(NamedTuple):
    """What the arm hands to its flange (2 C, ..., 3) and the struts' pull (2 C, ..., 2), N; both ways of sharing."""

    flange_n: Array
    struts_n: Array


@formula("statics: lower-bound sharing, each way in equilibrium by itself")
def share_with_struts(force_n: Array, arm_mm: Array, feet_mm: Array) -> Shared:
    """Return what arm and two struts bear of a force (C, ..., 3) at the collar, in two ways, one after the other.

    The arm is pinned athwartships at its flange (a hinge) and stiff upright, so side loads go to the struts and the
    weight to the arm. Fore and aft, arm and struts share by their stiffness, which nobody knows: first the arm takes
    all of it and the struts pull against each other, then the struts take all and the arm none. Each is statically
    determinate; the greater governs.
    """
    arm = -np.asarray(arm_mm, dtype=float)
    arm = arm / length_of(arm)[..., None]
    port, starboard = (feet_mm[..., k, :] / length_of(feet_mm[..., k, :])[..., None] for k in (0, 1))
    up = np.broadcast_to(UP, np.broadcast_shapes(arm.shape, port.shape))
    flat_arm = np.broadcast_to(arm, up.shape)
    shared = bar_forces(np.stack([flat_arm, np.broadcast_to(port - starboard, up.shape), up], axis=-1), force_n)
    alone = bar_forces(
        np.stack([np.broadcast_to(port, up.shape), np.broadcast_to(starboard, up.shape), up], -1), force_n
    )
    # A bar that pulls the joint towards the flange pulls the flange towards the joint.
    by_arm = -flat_arm * shared[..., :1] - up * shared[..., 2:]
    by_struts = -up * alone[..., 2:]
    pulls = np.concatenate([np.stack([shared[..., 1], -shared[..., 1]], axis=-1), alone[..., :2]])
    return Shared(np.concatenate([by_arm, by_struts]), pulls)


class Carried(NamedTuple):
    """Load on the flange in its own axes (K, ...), its moment in the boat's frame (K, ..., 3), struts' pull or None.

    And shear and pull of every bolt (n, K, ...), N.

    K is the number of cases, twice that where struts share in two ways (case k and case k + C are one case).
    """

    flange: FlangeLoad
    moment_nm: Array
    struts_n: Array | None
    shear_n: Array
    pull_n: Array


def carried(mount: Mount, collar_n: Array, down_ms2: Array) -> Carried:
    """Return what a bracket's flange and struts carry; the bracket's own weight acts half-way along its arm."""
    own = np.zeros_like(collar_n)
    own[..., 2] = -mount.mass_kg * down_ms2
    at_flange, pulls = collar_n, None
    if mount.struts is not None:
        shared = share_with_struts(collar_n, mount.arm_mm, mount.struts.feet_mm)
        at_flange, pulls, own = shared.flange_n, shared.struts_n, np.concatenate([own, own])
    arm = np.asarray(mount.arm_mm, dtype=float)
    moment = moment_about_flange(at_flange, arm) + moment_about_flange(own, arm / 2)
    load = flange_load(at_flange + own, moment, mount.axes)
    shear = bolt_shears(load, mount.pattern_mm)
    pull = bolt_tensions(load, mount.pattern_mm, mount.width_mm, mount.height_mm)
    return Carried(load, moment, pulls, shear, pull)
