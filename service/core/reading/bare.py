"""Measures told another way: a number without unit right behind its label, and a lean told as so much on so much."""

from __future__ import annotations

import re
from math import atan2, degrees

from service.core.reading.claims import RANGES, Claim, Notes
from service.core.reading.measures import rake_sign
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import view
from service.core.units import Found, Quantity, parse

_BEHIND = re.compile(r"[ \t]{0,3}[:=]?[ \t]{0,3}(\d{1,5}(?:[.,]\d{1,2})?)(?=[ \t]*(?:$|[\n;)]|[,.](?:\s|$)))")
UNITS = ("mm", "cm", "m", "in", "ft")
LABELS = {"LOA": "boat.loa_mm", "BEAM": "boat.beam_mm", "DRAFT": "boat.draft_mm", "LWL": "boat.lwl_mm"}
PAIR = 2


def read_bare(sheet: Sheet, notes: Notes) -> None:
    """Add a claim for a bare number behind a label where one unit alone makes sense, else a doubt."""
    for clause in sheet.clauses:
        if clause.foreign or "OTHER_BOAT" in clause.concepts:
            continue
        for mark in clause.marks:
            match = _BEHIND.match(sheet.clean, mark.end, clause.end)
            name = _field(clause, mark.concept) if match else None
            if match is None or name is None:
                continue
            low, high = RANGES[name]
            read = [parse(f"{match[1]} {unit}", "length") for unit in UNITS]
            values = tuple(q.value for q in read if isinstance(q, Quantity) and low <= q.value <= high)
            if len(values) == 1:
                notes.claims.append(Claim(name, values[0], match.start(1), match.end(1), clause.depth, 0.6))
            else:
                notes.doubt(match.start(1), name, "unit_unknown", match[1], values)


def _field(clause: Clause, concept: str) -> str | None:
    """Return the field of a label; a width in a list of lengths overall is the beam."""
    if concept == "WIDTH" and "LOA" in clause.concepts and "TRANSOM" not in clause.concepts:
        return LABELS["BEAM"]
    if (
        {"TOP", "TRANSOM", "WATER"} <= clause.concepts
        and concept == "WATER"
        and not clause.concepts & {"BOTTOM", "WIDTH"}
    ):
        return "transom.top_height_mm"
    return LABELS.get(concept)


def read_slope(sheet: Sheet, notes: Notes) -> None:
    """Add a rake told as a fall: so far forward or aft on such a height, the way it leans said in the same thought."""
    for clause in sheet.clauses:
        lengths = [f for f in clause.found if f.dimension == "length" and isinstance(f.read, Quantity)]
        sign = rake_sign(clause)
        if clause.foreign or sign is None or len(lengths) != PAIR or "LEAN" not in clause.concepts:
            continue
        along = [_role(sheet, clause, found) for found in lengths]
        if sorted(map(str, along)) != ["across", "down"]:
            continue
        down, across = (lengths[along.index(role)] for role in ("down", "across"))
        value = round(sign * degrees(atan2(_mm(across), _mm(down))), 2)
        low, high = RANGES["transom.rake_deg"]
        if low <= value <= high and not {"TOP", "WATER"} <= view(sheet.clean, clause, down).near:
            start, end = min(down.start, across.start), max(down.end, across.end)
            notes.claims.append(Claim("transom.rake_deg", value, start, end, clause.depth, 0.7))
            notes.claims.append(Claim("boat.stern", "raked" if sign > 0 else "reverse", start, end, clause.depth, 0.7))


def _role(sheet: Sheet, clause: Clause, found: Found) -> str | None:
    seen = view(sheet.clean, clause, found)
    if {"FORWARD", "AFT"} & {*seen.after[:1], *(c for c in seen.before[:1] if "HEIGHT" not in seen.after[:1])}:
        return "across"
    return "down" if "HEIGHT" in seen.after[:1] or "HEIGHT" in seen.before[:1] else None


def _mm(found: Found) -> float:
    return found.read.value if isinstance(found.read, Quantity) else 0.0
