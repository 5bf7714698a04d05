"""Every way a fitter could hang the gear on one boat at one distance off the centreline."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import product

import numpy as np

from seed_fixtures.arithmetic import (
    STEP,
    Item,
    Kit,
    Way,
    blade_top,
    blocked,
    nearest_shaft,
    over_the_rudder,
    reaches,
    rule,
    shaft_top_needed,
)
from seed_fixtures.boats import Boat, Numbers

LOWER_LIKED = 260.0
"""Height above water at which a fitter likes the lower collar: dry to work at, short overhang."""
BELOW_TOP_LIKED = 130.0
"""How far under the top edge a fitter likes the upper collar."""
OVER_DECK_LIKED = 220.0
"""How far above the top edge a fitter likes the shaft's end, so that lines lead clear over the deck."""
PLAY = 4
"""Steps of the grid that a fitter moves the shaft aft of the nearest that works: room to adjust."""


@dataclass(frozen=True)
class _Held:
    bracket: Item
    fine: Numbers
    pad: Numbers


def gear_for(boat: Boat, kit: Kit) -> Item | None:
    """Return the smallest gear that takes the boat's weight."""
    fit = [gear for gear in kit["gear"] if gear["max_displacement_kg"] >= boat.displacement]
    return min(fit, key=lambda gear: float(gear["max_displacement_kg"])) if fit else None


def ways(boat: Boat, gear: Item, y: float, kit: Kit) -> list[Way]:
    """Return every pair of brackets that works at y, each with the shaft and heights a fitter would choose."""
    start = nearest_shaft(boat, gear, y, kit)
    shaft = np.arange(start, start + 260.0, STEP)
    collar = np.arange(90.0, boat.stern.top + 260.0, STEP)
    held: dict[str, list[_Held]] = {"lower": [], "upper": []}
    for bracket in kit["bracket"]:
        if gear["code"] not in bracket["gears"] or blocked(boat, y, _half(bracket), start, kit):
            continue
        fine, pad = reaches(bracket, boat, y, shaft, collar, kit)
        passes = collar - bracket["collar"]["height_mm"] / 2 >= over_the_rudder(boat, y, _half(bracket), kit)
        for role in bracket["roles"]:
            dry = np.array([role == "upper" or blade_top(z, gear, y, kit) is not None for z in collar])
            sound = fine * (passes & dry)[None, :]
            if sound.any():
                held[role].append(_Held(bracket, sound, pad))
    found = (
        _way(boat, gear, (y, lower, upper), (shaft, collar), kit)
        for lower, upper in product(held["lower"], held["upper"])
    )
    return [way for way in found if way is not None]


def _half(bracket: Item) -> float:
    return float(bracket["flange"]["width_mm"]) / 2


def _way(
    boat: Boat, gear: Item, where: tuple[float, _Held, _Held], grid: tuple[Numbers, Numbers], kit: Kit
) -> Way | None:
    y, lower, upper = where
    shaft, collar = grid
    chosen = _settled(boat, lower, upper, collar, rule(kit, "bracket_spacing_min") + 20)
    if chosen is None:
        return None
    at, low, high = chosen
    top = blade_top(float(collar[low]), gear, y, kit)
    if top is None:
        return None
    bottom = top + gear["blade"]["root_gap_mm"]
    needed = shaft_top_needed(
        boat, gear, float(collar[high]), upper.bracket["collar"]["height_mm"], float(shaft[at]), kit
    )
    liked = max(needed, boat.stern.top + OVER_DECK_LIKED)
    rod = _shaft(gear, liked - bottom, kit) or _shaft(gear, needed - bottom, kit)
    if rod is None:
        return None
    return Way(
        gear=gear["code"],
        lower=lower.bracket["code"],
        upper=upper.bracket["code"],
        shaft=rod["code"],
        offset=y,
        shaft_aft=float(shaft[at]),
        lower_height=float(collar[low]),
        upper_height=float(collar[high]),
        shaft_bottom=bottom,
        pads=float(lower.pad[low] + upper.pad[high]),
        struts=sum(held.bracket["kind"] == "strutted" for held in (lower, upper)),
        reach=float(lower.bracket["reach_mm"][1] + upper.bracket["reach_mm"][1]),
        length=float(rod["length_mm"]),
    )


def _settled(boat: Boat, lower: _Held, upper: _Held, collar: Numbers, apart: float) -> tuple[int, int, int] | None:
    """Return where on the grid shaft, lower and upper collar go: near the stern, with room to adjust."""
    lowest = np.where(lower.fine > 0, collar[None, :], np.inf).min(axis=1)
    highest = np.where(upper.fine > 0, collar[None, :], -np.inf).max(axis=1)
    works = np.flatnonzero(highest - lowest >= apart)
    if not len(works):
        return None
    at = int(works[min(PLAY, len(works) // 2)])
    low = _liked(lower.fine[at], collar, LOWER_LIKED, most=highest[at] - apart)
    high = _liked(upper.fine[at], collar, boat.stern.top - BELOW_TOP_LIKED, least=collar[low] + apart)
    return at, low, high


def _liked(fine: Numbers, collar: Numbers, target: float, least: float = -np.inf, most: float = np.inf) -> int:
    """Index of the height nearest to the one liked, among those that work."""
    good = np.flatnonzero((fine > 0) & (collar >= least) & (collar <= most))
    return int(good[np.argmin(np.abs(collar[good] - target))])


def _shaft(gear: Item, length: float, kit: Kit) -> Item | None:
    fit = [rod for rod in kit["shaft"] if gear["code"] in rod["gears"] and rod["length_mm"] >= length]
    return min(fit, key=lambda rod: float(rod["length_mm"])) if fit else None


def longer(way: Way, kit: Kit) -> str:
    """Return the next longer shaft for the same gear, the same one where there is none."""
    fit = [rod for rod in kit["shaft"] if way.gear in rod["gears"] and rod["length_mm"] > way.length]
    return str(min(fit, key=lambda rod: float(rod["length_mm"]))["code"]) if fit else way.shaft
