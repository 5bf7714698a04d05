"""From the catalogue's parts and a placement to what the loads are given."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from service.core.catalogue import Bracket, Catalogue, Configuration, Gear, Shaft
from service.core.loads.mount import CHEEK_AXES, STEP_AXES, plain_axes
from service.core.loads.shapes import GearSize, Hull, Inputs, Mount, Spot, StrutSet, TubeSize
from service.core.loads.validity import Array, Num

USUAL_THICKNESS = 0.15


@dataclass(frozen=True)
class Seat:
    """How one bracket sits (...): reach from the flange, slopes that the flange itself takes (radians), pad, struts' feet.

    `stands_mm`: collar above a step. `feet_mm` (..., 2, 3): port and starboard foot from the collar's centre.
    """

    reach_mm: Num
    rake_rad: Num = 0.0
    plan_rad: Num = 0.0
    pad_mm: Num = 0.0
    stands_mm: Num = 0.0
    feet_mm: Array | None = None


LEAST_SPACING_MM = 1.0
"""A miss may be placed with both collars at one height: the loads, endless there, are those of collars so far apart."""


@dataclass(frozen=True)
class Place:
    """Heights of a placement (...): both collars and the shaft's bottom end."""

    lower_mm: Num
    upper_mm: Num
    shaft_bottom_mm: Num


def inputs_of(
    catalogue: Catalogue, configuration: Configuration, place: Place, seats: tuple[Seat, Seat], hull: Hull
) -> Inputs:
    """Return the loads' inputs of a placed configuration. KeyError names a code the catalogue does not hold.

    The gear's whole mass is taken at the middle of its head, above the shaft: blade and tiller hang lower, so the moment
    comes out too great rather than too small.
    """
    gear, shaft = catalogue.gear(configuration.gear), catalogue.shaft(configuration.shaft)
    top = np.asarray(place.shaft_bottom_mm, dtype=float) + shaft.length_mm
    lower_mm = np.asarray(place.lower_mm, dtype=float)
    spot = Spot(
        lower_mm, np.maximum(place.upper_mm, lower_mm + LEAST_SPACING_MM), place.shaft_bottom_mm, top,
        np.asarray(place.shaft_bottom_mm, dtype=float) - gear.blade.root_gap_mm, top + gear.head.height_mm / 2,
    )  # fmt: skip
    lower, upper = (
        mount_of(catalogue.bracket(code), seat)
        for code, seat in zip((configuration.lower, configuration.upper), seats, strict=True)
    )
    return Inputs(_gear_size(gear, shaft), spot, lower, upper, hull)


def _gear_size(gear: Gear, shaft: Shaft) -> GearSize:
    blade = gear.blade
    return GearSize(
        TubeSize(gear.tube.outside_mm, gear.tube.wall_mm, gear.tube.material), blade.chord_mm, blade.span_mm,
        blade.balance_mm, blade.max_angle_deg, section_thickness(blade.section), gear.mass_kg, shaft.mass_kg,
    )  # fmt: skip


def section_thickness(section: str) -> float:
    """Return a section's thickness over its chord: the last two digits of a four-digit name, 0.15 where it has none.

    >>> section_thickness("NACA 0012"), section_thickness("flat")
    (0.12, 0.15)
    """
    digits = section.strip()[-4:]
    share = int(digits[2:]) / 100 if digits.isdigit() and len(digits) == len("0015") else 0.0
    return share or USUAL_THICKNESS


def mount_of(bracket: Bracket, seat: Seat) -> Mount:
    """Return a bracket as placed. A cheek's bolts lie half its width forward of the post's aft face.

    A strutted bracket with other than two struts is taken without them: its arm then bears all.
    """
    reach = np.asarray(seat.reach_mm, dtype=float)
    rise = np.asarray(seat.stands_mm if bracket.kind == "step" else bracket.collar.rise_mm, dtype=float)
    arm = np.zeros((*np.broadcast(reach, rise).shape, 3))
    arm[..., 0], arm[..., 2] = reach, rise
    if bracket.kind == "cheek":
        arm[..., 0] += bracket.flange.width_mm / 2
    axes = {"cheek": CHEEK_AXES, "step": STEP_AXES}.get(bracket.kind)
    struts = None
    if bracket.struts and bracket.struts.count == 2 and seat.feet_mm is not None:  # noqa: PLR2004 - a pair holds a joint
        size = bracket.struts.tube
        struts = StrutSet(
            np.asarray(seat.feet_mm, dtype=float), TubeSize(size.outside_mm, size.wall_mm, size.material),
            bracket.struts.foot_bolts.size, bracket.struts.foot_bolts.count,
        )  # fmt: skip
    return Mount(
        bracket.kind, arm,
        plain_axes(seat.rake_rad, seat.plan_rad) if axes is None else axes,
        np.array(bracket.bolts.pattern_mm, dtype=float), bracket.bolts.size, bracket.flange.width_mm,
        bracket.flange.height_mm, bracket.allowable.along_n, bracket.allowable.side_n, bracket.allowable.moment_nm,
        bracket.mass_kg, seat.pad_mm, struts,
    )  # fmt: skip
