"""Clearances of a placed gear, measured on meshes."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import product
from typing import Any

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm, Box, Obstacle
from service.core.catalogue import Bracket, Catalogue, Configuration
from tests.referee.skin import FAR, Skin, need
from tests.referee.solids import Solid, apart, box, cylinder, gap, model, rod, swung, upright

Array = NDArray[np.float64]
AXES = ("aft_mm", "starboard_mm", "height_mm")
REACH = 850.0
"""The hull is drawn this far to both sides of the shaft (mm)."""
ROD = 10.0
"""A strut is thin: its step is this many times coarser."""


@dataclass(frozen=True)
class Mounted:
    """What a placement chose for one bracket: collar height, pad, spread of struts, reach (all mm)."""

    bracket: Bracket
    collar: float
    pad: float
    spread: float
    base: float
    """Fore and aft from a step bracket's base to the shaft."""


@dataclass(frozen=True)
class Spot:
    """A placement: offset, shaft axis, both brackets, bottom of the shaft (all mm)."""

    y: float
    x: float
    low: Mounted
    up: Mounted
    bottom: float


@dataclass(frozen=True)
class Fineness:
    """Mesh size of the hull (mm) and step of angles (degrees)."""

    size: float = 16.0
    step: float = 1.0

    def halved(self) -> Fineness:
        return Fineness(self.size / 2.0, self.step / 2.0)


def flange_height(one: Mounted) -> float:
    """Return the height of a flange's centre."""
    return one.collar - one.bracket.collar.rise_mm


def arm_reach(skin: Skin, spot: Spot, one: Mounted) -> float:
    """Return how far the arm reaches from flange to shaft."""
    if one.bracket.kind == "step":
        return one.base
    return spot.x - (skin.at(spot.y, flange_height(one)) + one.pad)


def parts(
    skin: Skin, catalogue: Catalogue, configuration: Configuration, spot: Spot, fine: Fineness, *, round_ends: bool
) -> dict[str, list[Solid]]:
    """Return the gear as convex solids by part; struts with round ends or cut square."""
    gear, length = catalogue.gear(configuration.gear), catalogue.shaft(configuration.shaft).length_mm
    x, y, top = spot.x, spot.y, spot.bottom + length
    root = spot.bottom - gear.blade.root_gap_mm
    sweep = [
        swung(x, y, out, gear.blade.max_angle_deg, facing, root - gear.blade.span_mm, root, fine.step)
        for out, facing in ((gear.blade.balance_mm, -1.0), (gear.blade.chord_mm - gear.blade.balance_mm, 1.0))
    ]
    found = {
        "shaft": [cylinder(x, y, gear.tube.outside_mm / 2.0, spot.bottom, top, fine.step)],
        "head": [cylinder(x, y, gear.head.radius_mm, top, top + gear.head.height_mm, fine.step)],
        "tiller": [cylinder(x, y, gear.tiller.radius_mm, top - gear.tiller.height_mm, top, fine.step)],
        "vane": [cylinder(x, y, gear.vane.radius_mm, top + gear.vane.bottom_mm, top + gear.vane.top_mm, fine.step)],
        "blade": [one for one in sweep if one is not None],
    }
    for role, one in (("lower", spot.low), ("upper", spot.up)):
        found[f"{role} arm"] = [_arm(skin, spot, one)]
        found[f"{role} flange"] = [_flange(skin, spot, one)]
        if one.bracket.struts is not None:
            found[f"{role} struts"] = _struts(skin, spot, one, fine, round_ends=round_ends)
    return found


def _arm(skin: Skin, spot: Spot, one: Mounted) -> Solid:
    wide, high = one.bracket.flange.width_mm / 2.0, one.bracket.collar.height_mm / 2.0
    reach = arm_reach(skin, spot, one)
    fore, aft = min(spot.x - reach, spot.x), max(spot.x - reach, spot.x)
    aft = max(aft, fore + 1e-3)
    return Solid(box([(fore, aft), (spot.y - wide, spot.y + wide), (one.collar - high, one.collar + high)]))


def _flange(skin: Skin, spot: Spot, one: Mounted) -> Solid:
    """Return the box about flange and pad along the skin, or about base and column on a step."""
    wide, half = one.bracket.flange.width_mm / 2.0, one.bracket.flange.height_mm / 2.0
    across = (spot.y - wide, spot.y + wide)
    if one.bracket.kind == "step":
        base = spot.x - one.base
        floor = skin.step or 0.0  # on a boat without a step it stands nowhere: at the water, and its seat fails
        return Solid(
            box([(base - half, base + half), across, (floor, one.collar + one.bracket.collar.height_mm / 2.0)])
        )
    z = flange_height(one)
    rake, plan = skin.slopes(spot.y, z)
    lean = half * abs(rake) + wide * abs(plan)
    seat = skin.at(spot.y, z)
    aft = seat + max(one.pad, 0.0) + one.bracket.flange.thickness_mm + lean
    return Solid(box([(seat - lean, aft), across, (z - half, z + half)]))


def _struts(skin: Skin, spot: Spot, one: Mounted, fine: Fineness, *, round_ends: bool) -> list[Solid]:
    struts = one.bracket.struts
    assert struts is not None
    z = flange_height(one) + struts.foot_rise_mm
    collar = np.array([spot.x, spot.y, one.collar])
    feet = [spot.y - one.spread / 2.0, spot.y + one.spread / 2.0]
    thin = struts.tube.outside_mm / 2.0
    return [
        rod(np.array([skin.at(y, z), y, z]), collar, thin, ROD * fine.step, round_ends=round_ends) for y in feet
    ]  # fmt: skip


def sweeps(obstacle: Obstacle, spot: Spot) -> Solid:
    """Return an obstacle's box, or the convex hull of both ends of a moving one; no end is FAR from the gear."""
    places = [_ends(obstacle, obstacle)]
    if obstacle.swept_to is not None:
        places.append(_ends(obstacle.swept_to, obstacle))
    for axis in range(3):  # a hull with one unbounded end is unbounded along its whole sweep
        for end in range(2):
            if any(abs(p[axis][end]) == np.inf for p in places):
                far = (spot.x, spot.y, 0.0)[axis] + (-FAR, FAR)[end]
                for p in places:
                    p[axis] = (far, p[axis][1]) if end == 0 else (p[axis][0], far)
    return Solid(np.concatenate([box(p) for p in places]))


def _ends(one: Box, whole: Obstacle) -> list[tuple[float, float]]:
    found = []
    for axis in AXES:
        low, high = getattr(one, axis) or getattr(whole, axis)
        found.append((-np.inf if low is None else float(low), np.inf if high is None else float(high)))
    return found


def to_things(form: BoatForm, made: dict[str, list[Solid]], spot: Spot) -> list[dict[str, float]]:
    """Return each obstacle's gap from each part."""
    things = [sweeps(o, spot) for o in form.obstacles if o.present is not False]
    return [{part: min(apart(s, thing) for s in solids) for part, solids in made.items()} for thing in things]


def rudders(form: BoatForm, fine: Fineness) -> tuple[list[Solid], list[Solid]]:
    """Return what the main rudder sweeps aft of its stock, and forward of it; twice where there are two."""
    rudder = form.main_rudder
    stock, turn = need(rudder.stock_aft_mm), need(rudder.max_deflection_deg)
    low, high = need(rudder.bottom_height_mm), need(rudder.top_height_mm)
    offset = need(rudder.spacing_mm) / 2.0 if rudder.spacing_mm is not None else 0.0
    aft: list[Solid] = []
    fore: list[Solid] = []
    for y in {-offset, offset}:
        for out, facing, kept in (
            (need(rudder.trailing_edge_aft_mm) - stock, 1.0, aft),
            (stock - need(rudder.leading_edge_aft_mm), -1.0, fore),
        ):
            one = swung(stock, y, out, turn, facing, low, high, fine.step)
            if one is not None:
                kept.append(one)
    return aft, fore


def to_rudder(form: BoatForm, made: dict[str, list[Solid]], fine: Fineness) -> dict[str, float]:
    """Return the least gap of blade, and of shaft, arms and struts, from the main rudder at every pair of angles."""
    aft, fore = rudders(form, fine)
    metal = [s for part, solids in made.items() if part == "shaft" or part.endswith(("arm", "struts")) for s in solids]
    found = {"main_rudder.blade": min(apart(a, b) for a, b in product(made["blade"], aft + fore))}
    if form.main_rudder.hung == "transom":
        found["main_rudder.shaft"] = min(apart(a, b) for a, b in product(metal, aft + fore))
    return found


def to_hull(skin: Skin, made: dict[str, list[Solid]], spot: Spot, fine: Fineness) -> dict[str, float]:
    """Return the gap of blade, shaft, head, tiller and vane from skin and deck."""
    drawn: Any = model(*skin.mesh(spot.y, REACH, fine.size))
    found = {}
    for part in ("blade", "shaft", "head", "tiller", "vane"):
        solids = made[part]
        inside = any(skin.holds(s.corners) for s in solids)
        found[f"hull.{part}"] = 0.0 if inside else min(gap(s.model, drawn) for s in solids)
    return found


__all__ = [
    "Fineness", "Mounted", "Spot", "arm_reach", "flange_height", "parts", "sweeps", "to_hull", "to_rudder", "to_things",
    "upright",
]  # fmt: skip
