"""Rows of a plumb line without units, "250 down - 55", where the thought above names the unit; and the last of them as the foot."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import islice

from service.core.reading.claims import Claim
from service.core.reading.sheet import Clause, Sheet
from service.core.units import Found, Quantity

_ROW = re.compile(
    r"(?<![\d.,])(\d{1,4}(?:[.,]\d)?)[ ][a-z\u00e0-\u00ff ]{2,16}[ ]?[:=\u2013-][ ]{0,3}(\d{1,4}(?:[.,]\d)?)(?=[ ]{0,3}(?:\n|$))"
)
_UNIT = re.compile(r"\b(?:in|en|i)[ ](mm|cm)\b|\((mm|cm)\)")
_LAST = re.compile(
    r"\b(?:last (?:one|row|figure)|letzte[rs]?|derni[e\u00e8]re?|\u00faltim[oa]|ultim[oa]|laatste|sista|siste|sidste)\b",
    re.IGNORECASE,
)
FACTORS = {"mm": 1.0, "cm": 10.0}
MOST = 40


def bare_pairs(clean: str, head: Clause, clause: Clause) -> list[Found]:
    """Return the numbers of rows that have no units as lengths in the unit that the thought above them names."""
    unit = _UNIT.search(clean, head.start, head.end)
    if unit is None or clause.found:
        return []
    name = unit[1] or unit[2]
    rows = list(islice(_ROW.finditer(clean, clause.start, clause.end), MOST))
    text = clean[clause.start : clause.end]
    if len(rows) != sum(1 for line in text.split("\n") if line.strip()):
        return []
    return [_length(match, group, name) for match in rows for group in (1, 2)]


def _length(match: re.Match[str], group: int, unit: str) -> Found:
    value = float(match[group].replace(",", ".")) * FACTORS[unit]
    return Found(match.start(group), match.end(group), Quantity(value, "length", unit, match[group]), "length")


def last_is_bottom(sheet: Sheet, whole: Sequence[Clause], row: Clause, last: Found, top: float | None) -> list[Claim]:
    """Return where the skin ends, from "that last one is the bottom edge" right behind the rows."""
    after = next((c for c in whole if c.start > row.start), None)
    told = after is not None and "BOTTOM" in after.concepts and not after.found
    if after is None or not told or top is None or not _LAST.search(sheet.clean, after.start, after.end):
        return []
    down = last.read.value if isinstance(last.read, Quantity) else 0.0
    return [Claim("transom.bottom_height_mm", round(top - down, 6), last.start, last.end, row.depth, 0.75)]
