"""Configurations as arrays: one entry a configuration, so that one call places many."""

from __future__ import annotations

import math
from collections.abc import Sequence
from enum import IntEnum
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Bracket, Catalogue, Configuration, Gear

Array = NDArray[np.float64]
Index = NDArray[np.intp]
PLAIN, STRUTTED, CHEEK, STEP = 0, 1, 2, 3
KINDS = {"hinged": PLAIN, "outrigger": PLAIN, "strutted": STRUTTED, "cheek": CHEEK, "step": STEP}


class M(IntEnum):
    """Columns of a bracket: slopes as tangents, everything else in mm."""

    KIND = 0
    REACH_LOW = 1
    REACH_HIGH = 2
    TILT_LOW = 3
    TILT_HIGH = 4
    SWING_LOW = 5
    SWING_HIGH = 6
    WIDTH = 7
    HEIGHT = 8
    COLLAR = 9
    RISE = 10
    SPREAD_LOW = 11
    SPREAD_HIGH = 12
    STRUT_LOW = 13
    STRUT_HIGH = 14
    STRUT_RADIUS = 15
    FOOT_RISE = 16
    GAP_LOW = 17
    GAP_HIGH = 18
    STANDS_LOW = 19
    STANDS_HIGH = 20
    LOWEST_HOLE = 21
    """Lowest bolt hole, above the flange's centre."""
    THICKNESS = 22


class G(IntEnum):
    """Columns of gear and shaft together: mm and kg; cosine and sine of how far the blade turns each way."""

    LENGTH = 0
    TUBE = 1
    HEAD_ROOM = 2
    VANE_RADIUS = 3
    VANE_BOTTOM = 4
    VANE_TOP = 5
    HEAD_RADIUS = 6
    HEAD_HEIGHT = 7
    TILLER_RADIUS = 8
    TILLER_HEIGHT = 9
    BALANCE = 10
    TAIL = 11
    SPAN = 12
    ROOT_GAP = 13
    BLADE_COS = 14
    BLADE_SIN = 15
    MAX_DISPLACEMENT = 16


class Kit(NamedTuple):
    """Gear and shaft (C, columns of G) and both brackets (C, columns of M) of every configuration."""

    gear: Array
    lower: Array
    upper: Array


def build(catalogue: Catalogue, configurations: Sequence[Configuration]) -> Kit:
    """Return the arrays of the given configurations; KeyError names a code the catalogue does not hold."""
    gears = {(c.gear, c.shaft) for c in configurations}
    turned = {both: _gear_row(catalogue.shaft(both[1]).length_mm, catalogue.gear(both[0])) for both in gears}
    codes = {code for c in configurations for code in (c.lower, c.upper)}
    mounts = {code: _mount_row(catalogue.bracket(code)) for code in codes}
    return Kit(
        np.array([turned[c.gear, c.shaft] for c in configurations]),
        np.array([mounts[c.lower] for c in configurations]),
        np.array([mounts[c.upper] for c in configurations]),
    )


def _gear_row(length: float, gear: Gear) -> tuple[float, ...]:
    blade, vane = gear.blade, gear.vane
    turn = math.radians(blade.max_angle_deg)
    return (
        length, gear.tube.outside_mm / 2, gear.head_mm, vane.radius_mm, vane.bottom_mm, vane.top_mm, gear.head.radius_mm,
        gear.head.height_mm, gear.tiller.radius_mm, gear.tiller.height_mm, blade.balance_mm,
        blade.chord_mm - blade.balance_mm, blade.span_mm, blade.root_gap_mm, math.cos(turn), math.sin(turn),
        gear.max_displacement_kg,
    )  # fmt: skip


def _mount_row(b: Bracket) -> tuple[float, ...]:
    tilt, swing = (
        [math.tan(math.radians(min(max(a, -89.0), 89.0))) for a in pair] for pair in (b.tilt_deg, b.swing_deg)
    )
    struts, gap, stands = (0.0,) * 6, b.gap_mm or (0.0, 0.0), b.stands_mm or (0.0, 0.0)
    if b.struts:
        spread = b.struts.spread_mm if b.struts.count > 1 else (0.0, 0.0)
        struts = (*spread, *b.struts.length_mm, b.struts.tube.outside_mm / 2, b.struts.foot_rise_mm)
    return (
        KINDS[b.kind], *b.reach_mm, *tilt, *swing, b.flange.width_mm, b.flange.height_mm, b.collar.height_mm,
        b.collar.rise_mm, *struts, *gap, *stands, min(z for _, z in b.bolts.pattern_mm),
        b.flange.thickness_mm,
    )  # fmt: skip
