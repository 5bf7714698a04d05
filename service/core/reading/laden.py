"""Heights measured on an empty boat: above the loaded waterline by what the letter says that she sinks."""

from __future__ import annotations

from dataclasses import replace

from service.core.reading.claims import Claim, Notes
from service.core.reading.lexis import Mark
from service.core.reading.sheet import Clause, Sheet
from service.core.units import Found, Quantity

HEIGHTS = frozenset({"transom.top_height_mm", "transom.bottom_height_mm", "transom.step_height_mm"})
PROFILE = "transom.profile"
CLOSE, DEEPEST = 40, 400.0


def read_laden(sheet: Sheet, notes: Notes) -> None:
    """Lower what was measured empty by how much deeper she lies laden; of two such heights keep the laden one."""
    sinks = [s for c in sheet.clauses if not c.foreign and "OTHER_BOAT" not in c.concepts for s in _sinks(c)]
    if len(sinks) == 1:
        _, sink = sinks[0]
        here = [c for c in notes.claims if sink.start <= c.start < sink.end and c.field in HEIGHTS]
        notes.claims = [_lowered(sheet, c, sink) for c in notes.claims if c not in here]
        return
    for name in HEIGHTS if not sinks else ():
        told = [c for c in notes.claims if c.field == name]
        empty = [c for c in told if _state(sheet, c) == "EMPTY"]
        if empty and any(_state(sheet, c) == "LADEN" for c in told):
            notes.claims = [c for c in notes.claims if c not in empty]


def _sinks(clause: Clause) -> list[tuple[Mark, Found]]:
    """Return the lengths that a clause says she lies deeper by, next to the word for it."""
    if not clause.concepts & {"LADEN", "EMPTY"}:
        return []
    words = [m for m in clause.marks if m.concept == "SINKS"]
    near = [
        (m, f)
        for m in words
        for f in clause.found
        if f.dimension == "length" and min(abs(f.start - m.end), abs(m.start - f.end)) <= CLOSE // 2
        and 0 < _mm(f) <= DEEPEST
    ]  # fmt: skip
    return near if len({f.start for _, f in near}) == 1 else []


def _lowered(sheet: Sheet, claim: Claim, sink: Found) -> Claim:
    if claim.field == PROFILE and _drawn_above(sheet, claim):
        points = [p | {"height_mm": round(p["height_mm"] - _mm(sink), 6)} for p in claim.value if "height_mm" in p]
        return replace(claim, value=points) if len(points) == len(claim.value) else claim
    if claim.field not in HEIGHTS or not (_state(sheet, claim) == "EMPTY" or _drawn_above(sheet, claim)):
        return claim
    return replace(claim, value=round(claim.value - _mm(sink), 6), confidence=0.75)


def _drawn_above(sheet: Sheet, claim: Claim) -> bool:
    """Say whether a height is off the plans, or counted down from one that is: above the drawn waterline."""
    tops = [c for c in sheet.clauses if {"M_DRAWING", "TOP", "WATER"} <= c.concepts and not c.foreign]
    clause = sheet.clause_at(claim.start)
    counted = claim.field in (PROFILE, "transom.bottom_height_mm")
    return len(tops) == 1 and clause is not None and (clause is tops[0] or (counted and "WATER" not in clause.concepts))


def _state(sheet: Sheet, claim: Claim) -> str | None:
    """Return whether a height is told of the boat empty or laden: the nearest word for it in its sentence."""
    clause = sheet.clause_at(claim.start)
    words = [m for m in clause.marks if m.concept in ("EMPTY", "LADEN")] if clause is not None else []
    between = [(max(m.start - claim.end, claim.start - m.end), m.concept) for m in words]
    return min(between)[1] if between else None


def _mm(found: Found) -> float:
    return found.read.value if isinstance(found.read, Quantity) else 0.0
