"""The rules as plain numbers for compiled code, and the places of the checks in a row of margins."""

from __future__ import annotations

import math
from enum import IntEnum
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules

Terms = NDArray[np.float64]
"""Limits and scales by the columns of T."""


class T(IntEnum):
    """Columns of the rules: limits (mm, shares, radians), then scales."""

    SPACING = 0
    OVERHANG = 1
    PAD_MAX = 2
    EDGE = 3
    SHARE = 4
    HEEL = 5
    SHARE_HEELED = 6
    ROOT_DEPTH = 7
    RUDDER_GAP = 8
    FIXED_GAP = 9
    MOVING_GAP = 10
    WAKE_GAP = 11
    WAKE_REACH = 12
    S_REACH = 13
    S_PAD = 14
    S_SEAT = 15
    S_SPACING = 16
    S_OVERHANG = 17
    S_HEAD = 18
    S_SHARE = 19
    S_ROOT = 20
    S_RUDDER = 21
    S_HULL = 22
    S_OBSTACLE = 23
    S_DISPLACEMENT = 24
    S_STRUT = 25
    S_GAP = 26
    S_STANDS = 27
    S_FOOT = 28
    HOLE = 29
    """Least height of a bolt hole above water; minus infinity where a caution is said instead."""


def terms(rules: Rules, *, dry: bool = False) -> Terms:
    """Return the rules of a catalogue as numbers. KeyError names a rule that is missing.

    `dry` makes the bolt holes' height above water part of a seat: so a placement is sought first.
    """
    scale = rules.scale
    return np.array([
        rules["bracket_spacing_min"], rules["overhang_max"], rules["pad_max"], rules["edge_distance"],
        rules["immersed_share_min"], math.radians(rules["heel_angle"]), rules["immersed_share_heeled_min"],
        rules["root_depth_max"], rules["main_rudder_gap"], rules["fixed_gap"], rules["moving_gap"],
        rules["wake_gap"], rules["wake_reach"], scale["reach"], scale["pad"], scale["seat"], scale["spacing"],
        scale["overhang"], scale["head"], scale["immersion"], scale["root_depth"], scale["main_rudder"],
        scale["hull"], scale["obstacle"], scale["displacement"], scale["strut"], scale["gap"], scale["stands"],
        scale["foot"], rules["hole_above_water"] if dry else -math.inf,
    ])  # fmt: skip


REACH, PAD, SEAT, STRUT, GAP, STANDS = range(6)
"""Checks of one bracket, counted from LOWER or UPPER."""
LOWER, UPPER = 0, 6
SPACING, OVERHANG, HEAD, FOOT = 12, 13, 14, 15
REST, WEATHER, ROOT_REST, ROOT_LEE = 16, 17, 18, 19
RUDDER_BLADE, RUDDER_SHAFT = 20, 21
HULL_BLADE, HULL_SHAFT, HULL_HEAD, HULL_TILLER, HULL_VANE = 22, 23, 24, 25, 26
DISPLACEMENT, WAKE = 27, 28
FIXED = 29
"""Checks every boat has; one for each obstacle follows."""


class Kind(NamedTuple):
    """How a check is published: id, the scale's name, unit, rule and case; whether it binds and a placement moves it."""

    id: str
    scale: str
    unit: str
    rule: str
    case: str = "at rest"
    binds: bool = True
    constant: bool = False


def _bracket(role: str) -> tuple[Kind, ...]:
    return (
        Kind(f"{role}.reach", "reach", "mm", "bracket.reach_mm"),
        Kind(f"{role}.pad", "pad", "mm", "pad_max"),
        Kind(f"{role}.seat", "seat", "mm", "edge_distance"),
        Kind(f"{role}.strut", "strut", "mm", "bracket.struts"),
        Kind(f"{role}.gap", "gap", "mm", "bracket.gap_mm", constant=True),
        Kind(f"{role}.stands", "stands", "mm", "bracket.stands_mm"),
    )


KINDS = (
    *_bracket("lower"),
    *_bracket("upper"),
    Kind("spacing", "spacing", "mm", "bracket_spacing_min"),
    Kind("overhang", "overhang", "mm", "overhang_max"),
    Kind("head", "head", "mm", "gear.head_mm"),
    Kind("foot", "foot", "mm", "bracket.collar"),
    Kind("immersion.rest", "immersion", "1", "immersed_share_min"),
    Kind("immersion.weather", "immersion", "1", "immersed_share_heeled_min", "heeled, gear to weather"),
    Kind("root_depth.rest", "root_depth", "mm", "root_depth_max"),
    Kind("root_depth.leeward", "root_depth", "mm", "root_depth_max", "heeled, gear to leeward"),
    Kind("main_rudder.blade", "main_rudder", "mm", "main_rudder_gap", "every pair of angles"),
    Kind("main_rudder.shaft", "main_rudder", "mm", "main_rudder_gap", "every angle of the main rudder"),
    *(Kind(f"hull.{part}", "hull", "mm", "fixed_gap", part) for part in ("blade", "shaft", "head", "tiller", "vane")),
    Kind("displacement", "displacement", "kg", "gear.max_displacement_kg", constant=True),
    Kind("wake", "wake_gap", "mm", "wake_gap", "under way", binds=False),
)
