"""Angles and masses -> fields: the transom's rake, how far the rudder turns, what the boat weighs."""

from __future__ import annotations

from service.core.reading.lean import edge_leans, rake_sign
from service.core.reading.rudders import Decision
from service.core.reading.sheet import Clause
from service.core.reading.view import View, is_obstacle
from service.core.units import Found, Quantity

LEAST_KG = 1000.0


def read_angle(seen: View, clause: Clause, hints: frozenset[str]) -> Decision:
    """Return the measure an angle is, and its sign; `hints`: what the letter says of the stern."""
    to_each = "EACH_SIDE" in seen.near and not seen.near & {"RAKE", "LEAN", "TRANSOM"}
    if to_each or "TURN" in seen.near or ("RUDDER" in seen.topic[:1] and "TURN" in seen.whole):
        return "main_rudder.max_deflection_deg", 1.0
    about = {"RAKE", "LEAN", "PLUMB", "REVERSE", "COUNTER"} & (seen.whole | seen.question)
    if not about and not {"TRANSOM", "POST"} & (seen.near | set(seen.topic)) and not edge_leans(clause):
        return None
    if "PLUMB" in seen.whole and not {"FORWARD", "AFT"} & seen.whole:
        return "transom.rake_deg", 1.0
    sign = rake_sign(clause)
    if sign is None and clause.parent is not None:
        sign = rake_sign(clause.parent)
    if sign is None:
        way = hints & {"REVERSE", "COUNTER"}
        sign = None if len(way) != 1 else -1.0 if "REVERSE" in way else 1.0
    return "transom.rake_deg", sign if sign is not None else "sign_unknown"


def read_mass(seen: View, found: Found) -> Decision:
    """Return the displacement where a mass is the boat's own."""
    if seen.thing == "BALLAST" and "DISPLACEMENT" not in seen.near:
        return None
    if not seen.whole - {"YEAR"} and found.read.value >= LEAST_KG if isinstance(found.read, Quantity) else False:
        return "boat.displacement_kg", 1.0  # "3.1 tonnes." and nothing else
    listed = {"LOA", "BEAM", "DRAFT", "LWL"} & seen.whole and not any(
        is_obstacle(c) or c == "BALLAST" for c in seen.whole
    )
    if listed and isinstance(found.read, Quantity) and found.read.value >= LEAST_KG:
        return "boat.displacement_kg", 1.0  # "39 ft overall, 12 ft beam, 17,000 lb"
    alone = (
        not any(is_obstacle(c) for c in seen.whole | seen.left) and not {"BALLAST", "KEEL", "OTHER_BOAT"} & seen.whole
    )
    if alone and seen.thing != "BALLAST" and isinstance(found.read, Quantity) and found.read.value >= LEAST_KG:
        return "boat.displacement_kg", 1.0  # nothing else aboard weighs as much
    near = seen.near | (seen.left if not is_obstacle(seen.thing or "") else frozenset())
    return ("boat.displacement_kg", 1.0) if "DISPLACEMENT" in near else None
