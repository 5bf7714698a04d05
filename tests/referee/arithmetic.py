"""Every check that needs no mesh, worked out again from FIT's exact meanings in plain arithmetic."""

from __future__ import annotations

import math

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from tests.referee.measure import Mounted, Spot, arm_reach, flange_height
from tests.referee.skin import Skin, need


def margins(skin: Skin, catalogue: Catalogue, configuration: Configuration, spot: Spot) -> dict[str, float]:
    """Return the margin of each check by its id; a pad's is the smaller of what its two extreme corners leave."""
    rules, gear = catalogue.rules, catalogue.gear(configuration.gear)
    blade, length = gear.blade, catalogue.shaft(configuration.shaft).length_mm
    root = spot.bottom - blade.root_gap_mm
    tip, heel = root - blade.span_mm, math.radians(rules["heel_angle"])
    lifted = abs(spot.y) * math.sin(heel)
    found = {
        "spacing": spot.up.collar - spot.low.collar - rules["bracket_spacing_min"],
        "overhang": rules["overhang_max"] - (spot.low.collar - (root + tip) / 2.0),
        "head": spot.bottom + length - spot.up.collar - gear.head_mm - spot.up.bracket.collar.height_mm / 2.0,
        "foot": spot.low.collar - spot.bottom - spot.low.bracket.collar.height_mm / 2.0,
        "immersion.rest": _wet(root, tip, 0.0, 0.0) - rules["immersed_share_min"],
        "immersion.weather": _wet(root, tip, lifted, heel) - rules["immersed_share_heeled_min"],
        "root_depth.rest": rules["root_depth_max"] + root,
        "root_depth.leeward": rules["root_depth_max"] + (root * math.cos(heel) - lifted),
        "displacement": gear.max_displacement_kg - need(skin.form.boat.displacement_kg),
    }
    for role, one in (("lower", spot.low), ("upper", spot.up)):
        found |= {f"{role}.{name}": margin for name, margin in _bracket(skin, catalogue, spot, one).items()}
    return found


def _wet(root: float, tip: float, lifted: float, heel: float) -> float:
    """Return the share of the span below water when every point stands at z cos(heel) + lifted."""
    high, low = root * math.cos(heel) + lifted, tip * math.cos(heel) + lifted
    return min(max(-low / (high - low), 0.0), 1.0)


def _bracket(skin: Skin, catalogue: Catalogue, spot: Spot, one: Mounted) -> dict[str, float]:
    low, high = one.bracket.reach_mm
    reach = arm_reach(skin, spot, one)
    found = {"reach": min(reach - low, high - reach)}
    if one.bracket.kind == "step":
        return found | _step(skin, catalogue.rules["edge_distance"], spot, one)
    found["pad"] = _pad(skin, catalogue.rules["pad_max"], spot, one)
    found["seat"] = _seat(skin, catalogue.rules["edge_distance"], spot, one)
    if one.bracket.kind == "cheek" and one.bracket.gap_mm is not None:
        post = need(skin.form.transom.post_width_mm) if skin.form.transom.post_width_mm is not None else 0.0
        found["gap"] = min(post - one.bracket.gap_mm[0], one.bracket.gap_mm[1] - post)
    if one.bracket.struts is not None:
        found["strut"] = _strut(skin, catalogue.rules["edge_distance"], spot, one)
    return found


def _pad(skin: Skin, most: float, spot: Spot, one: Mounted) -> float:
    """Return the margin of the pad's corners: thinnest >= 0, thickest <= pad_max; a cheek has none, so it must lie true."""
    rake, plan = skin.slopes(spot.y, flange_height(one))
    swing = one.bracket.swing_deg if spot.y >= 0 else (-one.bracket.swing_deg[1], -one.bracket.swing_deg[0])
    tilt_beyond = _beyond(rake, one.bracket.tilt_deg)
    plan_beyond = 0.0 if one.bracket.kind == "cheek" else _beyond(plan, swing)
    corners = [
        one.pad
        + a * one.bracket.flange.height_mm / 2.0 * tilt_beyond
        + b * one.bracket.flange.width_mm / 2.0 * plan_beyond
        for a in (-1, 1)
        for b in (-1, 1)
    ]
    if one.bracket.kind == "cheek":
        return min(corners) if min(corners) < -1e-6 else math.inf
    return min(most - max(corners), math.inf if min(corners) >= -1e-3 else min(corners))


def _beyond(slope: float, takes: tuple[float, float]) -> float:
    nearest = min(max(math.atan(slope), math.radians(takes[0])), math.radians(takes[1]))
    return slope - math.tan(nearest)


def _seat(skin: Skin, edge: float, spot: Spot, one: Mounted) -> float:
    """Return how far the footprint and its edge distance stay inside sound skin."""
    centre = flange_height(one)
    low, high = centre - one.bracket.flange.height_mm / 2.0 - edge, centre + one.bracket.flange.height_mm / 2.0 + edge
    stretches = [(skin.bottom, skin.top)] if skin.step is None else [(skin.bottom, skin.step), (skin.step, skin.top)]
    upright = max(min(low - first, last - high) for first, last in stretches)
    if one.bracket.kind == "cheek":
        return upright if spot.y == 0.0 else min(upright, -abs(spot.y))
    side = abs(spot.y) + one.bracket.flange.width_mm / 2.0 + edge
    return min(upright, min(skin.half_breadth(low), skin.half_breadth(high)) - side)


def _strut(skin: Skin, edge: float, spot: Spot, one: Mounted) -> float:
    struts = one.bracket.struts
    assert struts is not None
    z = flange_height(one) + struts.foot_rise_mm
    feet = (spot.y - one.spread / 2.0, spot.y + one.spread / 2.0)
    lengths = [math.dist((skin.at(y, z), y, z), (spot.x, spot.y, one.collar)) for y in feet]
    spread = struts.spread_mm if struts.count > 1 else (0.0, 0.0)
    return min(
        min(lengths) - struts.length_mm[0], struts.length_mm[1] - max(lengths), skin.top - z - edge,
        z - edge - skin.bottom, *(skin.half_breadth(z) - abs(y) - edge for y in feet),
        math.inf if spread[0] - 1e-6 <= one.spread <= spread[1] + 1e-6 else -math.inf,
    )  # fmt: skip


def _step(skin: Skin, edge: float, spot: Spot, one: Mounted) -> dict[str, float]:
    """Return seat and height of a base that stands flat on the step; on a boat without one there is nothing."""
    if skin.step is None or one.bracket.stands_mm is None:
        return {"seat": -math.inf}
    wide, deep = one.bracket.flange.width_mm / 2.0, one.bracket.flange.height_mm / 2.0
    base, sides = spot.x - one.base, (spot.y - wide, spot.y, spot.y + wide)
    risers = [skin.at(y, skin.step) for y in ((*sides, 0.0) if sides[0] < 0.0 < sides[2] else sides)]
    depth = need(skin.form.transom.step_depth_mm)
    room = min(base - deep - edge - max(risers), min(risers) + depth - base - deep - edge)
    across = need(skin.form.transom.step_width_mm) / 2.0 - abs(spot.y) - wide - edge
    stands = one.collar - skin.step
    return {
        "seat": min(room, across),
        "stands": min(stands - one.bracket.stands_mm[0], one.bracket.stands_mm[1] - stands),
    }  # fmt: skip


def limits(catalogue: Catalogue, form: BoatForm) -> dict[str, float]:
    """Return the least clearance of each check that is measured on meshes."""
    rules = catalogue.rules
    found = {f"hull.{part}": rules["fixed_gap"] for part in ("blade", "shaft", "head", "tiller", "vane")}
    found |= {"main_rudder.blade": rules["main_rudder_gap"], "main_rudder.shaft": rules["main_rudder_gap"]}
    for index, one in enumerate(form.obstacles):
        moving = one.moves in ("folds", "swings", "slides")
        found[f"obstacle[{index}]"] = rules["moving_gap" if moving else "fixed_gap"]
    return found
