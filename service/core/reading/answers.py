"""A bare number below a quoted question that names its unit: "> How wide is the transom at the top (in m)?", then "1.84"."""

from __future__ import annotations

import re

from service.core.reading.claims import RANGES, Claim, Notes
from service.core.reading.sheet import Clause, Sheet
from service.core.units import Quantity, parse

_BARE = re.compile(
    r"\s{0,40}(?:(?:ca\.?|about|etwa|circa|environ|unos|ongeveer|cirka|omtrent)[ ])?(\d{1,5}(?:[.,]\d{1,2})?)[.!]?\s{0,9}",
    re.IGNORECASE,
)
_UNIT = re.compile(r"\((?:in|en|i)?[ ]?(mm|cm|m|t|kg)\)|\b(?:in|en)[ ](mm|cm|m|kg)\b(?=[ ]?[?,.])")
ASKED: tuple[tuple[frozenset[str], frozenset[str], str], ...] = (
    (frozenset({"WIDTH", "TOP"}), frozenset({"WATER", "HEIGHT"}), "transom.width_top_mm"),
    (frozenset({"WATER", "TOP"}), frozenset({"WIDTH", "BOTTOM"}), "transom.top_height_mm"),
    (frozenset({"WATER", "BOTTOM"}), frozenset({"WIDTH", "TOP"}), "transom.bottom_height_mm"),
    (frozenset({"THICK"}), frozenset({"WATER", "WIDTH"}), "transom.thickness_mm"),
    (frozenset({"DISPLACEMENT"}), frozenset({"LOA", "BEAM"}), "boat.displacement_kg"),
    (frozenset({"LOA"}), frozenset({"DISPLACEMENT", "BEAM"}), "boat.loa_mm"),
)  # fmt: skip
OTHERS = frozenset({"RUDDER", "TRAILING", "STOCK", "STEP", "OTHER_BOAT"})


def read_answers(sheet: Sheet, notes: Notes) -> None:
    """Add a claim for each bare number that stands right below a question for one measure and its unit."""
    question: Clause | None = None
    for clause in sheet.clauses:
        if clause.parent is not None:
            continue
        if clause.foreign or clause.quoted:
            question = clause if "?" in sheet.clean[clause.start : clause.end] else None
            continue
        bare = _BARE.fullmatch(sheet.clean, clause.start, clause.end) if question is not None else None
        if question is not None and bare is not None:
            notes.claims += _answer(sheet, question, bare)
        question = None


def _answer(sheet: Sheet, question: Clause, bare: re.Match[str]) -> list[Claim]:
    inner = [c for c in sheet.clauses if c.parent is question]
    asked = question.concepts.union(*(c.concepts for c in inner))
    names = [name for has, lacks, name in ASKED if has <= asked and not lacks & asked]
    unit = _UNIT.search(sheet.clean, question.start, question.end)
    if unit is None or len(names) != 1 or OTHERS & asked:
        return []
    read = parse(f"{bare[1]} {unit[1] or unit[2]}", "mass" if names[0].endswith("_kg") else "length")
    low, high = RANGES[names[0]]
    if not isinstance(read, Quantity) or not low <= read.value <= high:
        return []
    return [Claim(names[0], read.value, bare.start(1), bare.end(1), 0, 0.7)]
