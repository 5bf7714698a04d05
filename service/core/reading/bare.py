"""Measures told another way: a number without unit right behind its label, and a lean told as so much on so much."""

from __future__ import annotations

import re
from math import atan2, degrees

from service.core.reading.claims import RANGES, Claim, Notes
from service.core.reading.lean import rake_sign
from service.core.reading.lexis import words_of
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_thing, view
from service.core.units import Found, Quantity, parse

_GOES_ON = r"(?:e|y|et|und|en|och|og|and|with|mit|avec|con|met|med)\s"
_BEHIND = re.compile(
    rf"[ \t]{{0,3}}[:=]?[ \t]{{0,3}}(\d{{1,5}}(?:[.,]\d{{1,2}})?)(?=[ \t]{{0,3}}(?:$|[\n;)/|]|[,.](?:\s|$)|{_GOES_ON}))"
)
METRIC = ("mm", "cm", "m")
UNITS = (*METRIC, "in", "ft")
IMPERIAL = frozenset({"in", "ft"})
_AHEAD = re.compile(r"(?<![\d.,])(\d{1,2}[.,]\d{1,2})[ ]$")
LONG = 8
LABELS = {"LOA": "boat.loa_mm", "BEAM": "boat.beam_mm", "DRAFT": "boat.draft_mm", "LWL": "boat.lwl_mm"}
SKINS = frozenset({"PLUMB_LINE", "TRANSOM", "HULL", "GRP"})
PAIR = 2
DOWN_NEAR = 12
_DOWN = "down lower below tiefer runter hinunter unten bas abajo lager omlaag basso sotto ner ned nedenfor nedanfor under weiter"
DOWN = frozenset(_DOWN.split())
RUDDERS = frozenset({"RUDDER", "TRAILING", "STOCK"})


def read_bare(sheet: Sheet, notes: Notes) -> None:
    """Add a claim for a bare number behind a label where one unit alone makes sense, else a doubt."""
    written = {f.read.unit for c in sheet.clauses for f in c.found if isinstance(f.read, Quantity)}
    metric = written & {*METRIC, "kg", "t"} and not written & {*IMPERIAL, "lb"}
    units = METRIC if metric else UNITS  # a letter keeps to one tape
    for clause in sheet.clauses:
        if clause.foreign or "OTHER_BOAT" in clause.concepts:
            continue
        for mark in clause.marks:
            match = _BEHIND.match(sheet.clean, mark.end, clause.end)
            if match is not None and any(f.start <= match.start(1) < f.end for f in clause.found):
                continue  # already a length, by the letter's tape
            if mark.concept in ("LENGTH", "WIDTH") and match is None:  # "10,40 lang, 2,80 bred"
                match = _AHEAD.search(sheet.clean, max(clause.start, mark.start - LONG), mark.start)
            name = _field(clause, mark.concept) if match else None
            if match is None or name is None:
                continue
            low, high = RANGES[name]
            read = [parse(f"{match[1]} {unit}", "length") for unit in (METRIC if "," in match[1] else units)]
            values = tuple(q.value for q in read if isinstance(q, Quantity) and low <= q.value <= high)
            if len(values) == 1:
                notes.claims.append(Claim(name, values[0], match.start(1), match.end(1), clause.depth, 0.6))
            else:
                notes.doubt(match.start(1), name, "unit_unknown", match[1], values)


def _field(clause: Clause, concept: str) -> str | None:
    """Return the field of a label; a width in a list of lengths overall is the beam."""
    if concept == "WIDTH" and {"LOA", "LENGTH"} & clause.concepts and "TRANSOM" not in clause.concepts:
        return LABELS["BEAM"]
    if (
        {"TOP", "TRANSOM", "WATER"} <= clause.concepts
        and concept == "WATER"
        and not clause.concepts & {"BOTTOM", "WIDTH"}
    ):
        return "transom.top_height_mm"
    if concept == "LENGTH" and not any(is_thing(c) and c != "BOAT" for c in clause.concepts):
        return LABELS["LOA"]
    return LABELS.get(concept)


def read_slope(sheet: Sheet, notes: Notes) -> None:
    """Add a rake told as a fall: so far forward or aft on such a height, the way it leans said in the same thought."""
    for clause in sheet.clauses:
        lengths = [f for f in clause.found if f.dimension == "length" and isinstance(f.read, Quantity)]
        if clause.foreign or len(lengths) != PAIR or "OTHER_BOAT" in clause.concepts or RUDDERS & clause.concepts:
            continue
        along = [_role(sheet, clause, found) for found in lengths]
        if along == ["down", "down"]:  # "going down it runs forward, 12 cm in 25 cm of height"
            tall = ["HEIGHT" in view(sheet.clean, clause, found).near for found in lengths]
            along = ["down" if each else "across" for each in tall]
        sign = fall_sign(clause)
        if sorted(map(str, along)) != ["across", "down"] or sign is None:
            continue
        down, across = (lengths[along.index(role)] for role in ("down", "across"))
        value = round(sign * degrees(atan2(_mm(across), _mm(down))), 2)
        low, high = RANGES["transom.rake_deg"]
        if low <= value <= high and not {"TOP", "WATER"} <= view(sheet.clean, clause, down).near:
            start, end = min(down.start, across.start), max(down.end, across.end)
            below = "STEP" in clause.concepts and "DOWNWARD" in clause.concepts
            name = "transom.lower_rake_deg" if below else "transom.rake_deg"
            notes.claims.append(Claim(name, value, start, end, clause.depth, 0.7))
            if below:
                continue
            notes.claims.append(Claim("boat.stern", "raked" if sign > 0 else "reverse", start, end, clause.depth, 0.7))


def fall_sign(clause: Clause) -> float | None:
    """Return which way it leans: going down forward is aft at the top."""
    about = {"TRANSOM", "POST", "LEAN", "TOP", "STEP"} & (clause.concepts | frozenset(clause.topic) | clause.question)
    aft = next((m for m in clause.marks if m.concept == "AFT"), None)
    if "PLUMB_LINE" in clause.concepts and about and aft is not None and "FORWARD" not in clause.concepts:
        told = [m.concept for m in clause.marks if m.concept in SKINS and m.end <= aft.start]
        return (
            1.0 if told[-1:] == ["PLUMB_LINE"] else -1.0
        )  # the line hangs aft of the skin, or the skin stands aft of it
    if "DOWNWARD" in clause.concepts and about:
        ways = {m.concept for m in clause.marks if m.concept in ("FORWARD", "AFT")}
        first = next((m.concept for m in clause.marks if m.concept in ("FORWARD", "AFT")), None)
        tops = "TOP" in clause.concepts and len(ways) > 1
        return None if first is None or (len(ways) > 1 and not tops) else 1.0 if first == "FORWARD" else -1.0
    return rake_sign(clause) if about and {"LEAN", "TOP", "BOTTOM"} & clause.concepts else None


def read_offset(sheet: Sheet, notes: Notes) -> None:
    """Add a rake told as how much further aft or forward the top edge lies, where both edges' heights are said."""
    heights = [
        {c.value for c in notes.claims if c.field == f"transom.{edge}_height_mm" and isinstance(c.value, float)}
        for edge in ("top", "bottom")
    ]
    if any(len(values) != 1 for values in heights) or any(c.field == "transom.rake_deg" for c in notes.claims):
        return
    down = heights[0].pop() - heights[1].pop()
    for clause in sheet.clauses:
        lengths = [f for f in clause.found if f.dimension == "length"]
        edges = {"TOP", "BOTTOM"} <= clause.concepts and not clause.concepts & {"WATER", "RUDDER", "TRAILING", "THICK"}
        sign = rake_sign(clause)
        if not edges or sign is None or len(lengths) != 1 or clause.foreign or "OTHER_BOAT" in clause.concepts:
            continue
        value = round(sign * degrees(atan2(_mm(lengths[0]), down)), 2)
        if down > 0 and abs(value) <= RANGES["transom.rake_deg"][1]:
            start, end = lengths[0].start, lengths[0].end
            notes.claims.append(Claim("transom.rake_deg", value, start, end, clause.depth, 0.7))


def _role(sheet: Sheet, clause: Clause, found: Found) -> str | None:
    seen = view(sheet.clean, clause, found)
    behind = words_of(sheet.clean[found.end : found.end + DOWN_NEAR])[:1]
    if "PLUMB_LINE" in clause.concepts and behind and behind[0].fold in DOWN:
        return "down"
    if {"FORWARD", "AFT"} & set(seen.after[:1]):
        return "across"
    if "DOWNWARD" in seen.before[:1] or "DOWNWARD" in seen.after[:1]:
        return "down"
    if {"FORWARD", "AFT"} & {*seen.after[:1], *(c for c in seen.before[:1] if "HEIGHT" not in seen.after[:1])}:
        return "across"
    return "down" if "HEIGHT" in seen.after[:1] or "HEIGHT" in seen.before[:1] else None


def _mm(found: Found) -> float:
    return found.read.value if isinstance(found.read, Quantity) else 0.0
