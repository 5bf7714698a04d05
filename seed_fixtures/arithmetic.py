"""A fitter's own sums: where a pair of brackets reaches an upright shaft, and what the shaft must clear.

Written apart from the service that it helps to try out, and coarser: a grid of centimetres, no probability.
Millimetres and degrees throughout. `kit` is the catalogue as TOML gives it.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sin, tan
from typing import Any

import numpy as np
from numpy.typing import NDArray

from seed_fixtures.boats import Boat, Numbers, Stern, Thing

Kit = dict[str, Any]
Item = dict[str, Any]
Truths = NDArray[np.bool_]
STEP = 10.0
ROOT_DEPTH = 70.0
"""How far under water a fitter likes the top of the blade, boat at rest."""


@dataclass(frozen=True)
class Way:
    """One way to hang the gear: which metal, and where it goes."""

    gear: str
    lower: str
    upper: str
    shaft: str
    offset: float
    shaft_aft: float
    lower_height: float
    upper_height: float
    shaft_bottom: float
    pads: float
    struts: int
    reach: float
    length: float


def rule(kit: Kit, name: str) -> float:
    """Return the value of one of the catalogue's rules."""
    return float(kit["rules"][name]["value"])


def nearest_shaft(boat: Boat, gear: Item, y: float, kit: Kit) -> float:
    """Least x at which an upright shaft at y clears skin, main rudder and what stands aft of the stern."""
    blade, gap = gear["blade"], rule(kit, "fixed_gap")
    stern, rudder = boat.stern, boat.rudder
    under = np.arange(-ROOT_DEPTH - blade["span_mm"], -ROOT_DEPTH + STEP, STEP)
    above = np.arange(-ROOT_DEPTH, stern.top + STEP, STEP)
    least = max(
        float(stern.skin(y, under).max()) + blade["balance_mm"] + gap,
        float(stern.skin(y, above).max()) + gear["tube"]["outside_mm"] / 2 + gap,
    )
    sweep = (blade["chord_mm"] - blade["balance_mm"]) * sin(radians(blade["max_angle_deg"]))
    apart = rule(kit, "main_rudder_gap")
    beside = rudder.number == 1 and abs(y) - sweep >= rudder.swing + apart
    if not beside and rudder.number == 1:
        least = max(least, rudder.trailing + apart + blade["balance_mm"] + 15)
    return float(max([least, *(_clear_of(thing, gear, y, kit) for thing in boat.things)]))


def _clear_of(thing: Thing, gear: Item, y: float, kit: Kit) -> float:
    """Least x for what the shaft can pass by standing further aft: stays and rails."""
    gap = rule(kit, "fixed_gap")
    radius = {"stay": gear["vane"]["radius_mm"], "rail": max(gear["head"]["radius_mm"], gear["tiller"]["radius_mm"])}
    if thing.kind not in radius:
        return float("-inf")
    wide = radius[thing.kind] + gap
    if y + wide <= thing.starboard[0] or y - wide >= thing.starboard[1]:
        return float("-inf")
    return float(thing.aft[1] + wide)


def blocked(boat: Boat, y: float, half: float, shaft_aft: float, kit: Kit) -> Thing | None:
    """Return the first thing that stands where arms, shaft or blade would go; one that may go is no hindrance."""
    for thing in boat.things:
        if thing.kind in ("stay", "rail") or (thing.removable and not thing.keep):
            continue
        gap = rule(kit, "fixed_gap" if thing.moves == "fixed" else "moving_gap")
        beside = y - half - gap >= thing.starboard[1] or y + half + gap <= thing.starboard[0]
        ahead = thing.aft[1] <= 0 or thing.aft[0] >= shaft_aft + 300
        if not beside and not ahead:
            return thing
    return None


def _pad(bracket: Item, lean: Numbers, slope: float) -> Numbers:
    """Thickness of pad, at the flange's centre, that squares what the flange does not take by itself."""
    low, high = bracket["tilt_deg"]
    skin = np.tan(np.radians(lean))
    tilt = np.abs(skin - np.clip(skin, tan(radians(low)), tan(radians(high))))
    swing = abs(slope - min(max(slope, tan(radians(bracket["swing_deg"][0]))), tan(radians(bracket["swing_deg"][1]))))
    flange = bracket["flange"]
    return np.asarray(flange["height_mm"] / 2 * tilt + flange["width_mm"] / 2 * swing)


def reaches(bracket: Item, boat: Boat, y: float, shaft: Numbers, collar: Numbers, kit: Kit) -> tuple[Numbers, Numbers]:
    """Return (may it hold a shaft at shaft[i] with its collar at collar[j], pad thickness at collar[j])."""
    stern, edge = boat.stern, rule(kit, "edge_distance")
    if bracket["kind"] == "step":
        return _stands(bracket, stern, y, shaft, collar, edge), np.zeros_like(collar)
    foot = collar - bracket["collar"]["rise_mm"]
    lean, slope = stern.lean(foot), stern.plan_slope(y) * (1 if y >= 0 else -1)
    pad = _pad(bracket, lean, 0.0 if bracket["kind"] == "cheek" else slope)
    tall = bracket["flange"]["height_mm"] / 2 * np.cos(np.radians(lean))
    holes = max(-z for _, z in bracket["bolts"]["pattern_mm"])
    good = (
        (foot + tall + edge <= stern.top)
        & (foot - tall - edge >= stern.bottom)
        & (foot - holes >= rule(kit, "hole_above_water"))
        & (2 * pad <= rule(kit, "pad_max"))
    )
    if stern.step_height is not None:
        good &= (foot - tall - edge >= stern.step_height) | (foot + tall + edge <= stern.step_height)
    if bracket["kind"] == "cheek":
        low, high = bracket["gap_mm"]
        good &= y == 0 and stern.post_width is not None and low <= stern.post_width <= high
    else:
        half = bracket["flange"]["width_mm"] / 2 + edge
        post = stern.post_width / 2 if stern.post_width else float("-inf")
        good &= (abs(y) + half <= stern.half_breadth(foot)) & (abs(y) - half >= post)
    reach = shaft[:, None] - (stern.skin(y, foot) + pad)[None, :]
    low, high = bracket["reach_mm"]
    fine = good[None, :] & (reach >= low) & (reach <= high)
    if bracket["kind"] == "strutted":
        fine &= _struts(bracket, stern, y, shaft, collar, edge)
    return fine.astype(float), pad


def _stands(bracket: Item, stern: Stern, y: float, shaft: Numbers, collar: Numbers, edge: float) -> Numbers:
    if stern.step_height is None or abs(y) + bracket["flange"]["width_mm"] / 2 + edge > stern.step_width / 2:
        return np.zeros((len(shaft), len(collar)))
    deep = bracket["flange"]["height_mm"] / 2 + edge
    front, back = stern.riser_foot + deep, stern.riser_foot + stern.step_depth - deep
    low, high = bracket["reach_mm"]
    far = (np.maximum(front, shaft - high) <= np.minimum(back, shaft - low)) & (front <= back)
    stands = collar - stern.step_height
    tall = (stands >= bracket["stands_mm"][0]) & (stands <= bracket["stands_mm"][1])
    return np.asarray(far[:, None] & tall[None, :], float)


def _struts(bracket: Item, stern: Stern, y: float, shaft: Numbers, collar: Numbers, edge: float) -> Truths:
    struts = bracket["struts"]
    foot = collar - bracket["collar"]["rise_mm"] + struts["foot_rise_mm"]
    room = stern.half_breadth(foot) - edge - abs(y)
    inside = (foot + edge <= stern.top) & (foot - edge >= stern.bottom) & (2 * room >= struts["spread_mm"][0])
    if stern.step_height is not None:
        inside &= foot - edge >= stern.step_height
    half = np.minimum(room, struts["spread_mm"][1] / 2)
    ahead = shaft[:, None] - stern.skin(y, foot)[None, :]
    length = np.sqrt(ahead**2 + half[None, :] ** 2 + (foot - collar)[None, :] ** 2)
    low, high = struts["length_mm"]
    return np.asarray(inside[None, :] & (length >= low) & (length <= high), bool)


def over_the_rudder(boat: Boat, y: float, half: float, kit: Kit) -> float:
    """Least height of a collar whose arm passes over a rudder hung outside; minus infinity beside one or without."""
    rudder, gap = boat.rudder, rule(kit, "main_rudder_gap")
    if rudder.hung != "transom" or abs(y) - half >= rudder.swing + gap:
        return float("-inf")
    return rudder.top + gap


def shaft_top_needed(boat: Boat, gear: Item, upper_height: float, collar: float, shaft_aft: float, kit: Kit) -> float:
    """Least height of the shaft's top end: head above the collar, tiller over the deck, vane over a rail."""
    gap = rule(kit, "fixed_gap")
    needed = upper_height + gear["head_mm"] + collar / 2
    if shaft_aft < gear["tiller"]["radius_mm"] + gap:
        needed = max(needed, boat.stern.top + gap + gear["tiller"]["height_mm"])
    if shaft_aft < gear["vane"]["radius_mm"] + gap:
        needed = max(needed, boat.stern.top + gap - gear["vane"]["bottom_mm"])
    for thing in boat.things:
        if thing.kind == "rail" and shaft_aft - gear["vane"]["radius_mm"] - gap < thing.aft[1]:
            needed = max(needed, thing.height[1] + gap - gear["vane"]["bottom_mm"])
    return float(needed)


def blade_top(lower_height: float, gear: Item, y: float, kit: Kit) -> float | None:
    """Height of the blade's top: as deep as liked, higher where the overhang asks it; None where it would come out."""
    span = gear["blade"]["span_mm"]
    heel = abs(y) * sin(radians(rule(kit, "heel_angle")))
    deep = max(-ROOT_DEPTH - heel / 3, heel - rule(kit, "root_depth_max") + 10)
    top = max(deep, lower_height - rule(kit, "overhang_max") + span / 2 + 10)
    out = (1 - rule(kit, "immersed_share_min")) * span
    weather = (1 - rule(kit, "immersed_share_heeled_min")) * span
    return float(top) if top <= out - 10 and top * cos(radians(rule(kit, "heel_angle"))) + heel <= weather else None
