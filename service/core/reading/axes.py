"""Short names of the rudder's stock, "axis", "post", which mean it only where the rudder is spoken of and it lies so far off."""

from __future__ import annotations

import re

from service.core.reading.lexis import Mark
from service.core.reading.sheet import Clause, Sheet

RUDDER = frozenset({"RUDDER", "HUNG_IN", "TRAILING", "STOCK"})
WAYS = frozenset({"FORWARD", "AFT"})
HIDES = frozenset({"CENTRE", "POST"})
_UNDER = re.compile(r"[ \n](under|sotto|below|beneath|dessous|abajo|debajo)[ ]?(?=[.,;:)\n]|$)", re.IGNORECASE)
NEAR, CLOSE, RECENT = 48, 24, 6


def name_axes(sheet: Sheet) -> Sheet:
    """Return the sheet with an axis told as the stock: "spade rudder: axis 72 cm forward of the edge"."""
    for clause in sheet.clauses:
        _sunk(sheet.clean, clause)
        axes = [m for m in clause.marks if m.concept == "AXIS"]
        if not axes:
            continue
        parent = clause.parent.concepts if clause.parent is not None else frozenset()
        about = RUDDER & (clause.concepts | frozenset(clause.topic[:RECENT]) | parent)
        stocks = [m for m in axes if about and "STOCK" not in clause.concepts and _lies(clause, m)]
        hidden = [
            m for m in clause.marks if m.concept in HIDES and any(m.start < s.end and s.start < m.end for s in stocks)
        ]
        kept = [m for m in clause.marks if m not in axes and m not in hidden]
        clause.marks = sorted([*kept, *(Mark("STOCK", m.start, m.end) for m in stocks)], key=lambda m: (m.start, m.end))
        clause.__dict__.pop("concepts", None)
    return sheet


def _sunk(clean: str, clause: Clause) -> None:
    """Mark a bare "under" that closes what is counted from the water: "30 cm over the water, the foot 1.05 m under"."""
    below = [m for f in clause.found if (m := _UNDER.match(clean, f.end, clause.end)) is not None]
    if not below or "WATER" not in clause.concepts or "BELOW" in clause.concepts:
        return
    clause.marks = sorted([*clause.marks, *(Mark("BELOW", m.start(1), m.end(1)) for m in below)], key=lambda m: m.start)
    clause.__dict__.pop("concepts", None)


def _lies(clause: Clause, mark: Mark) -> bool:
    """Say whether a distance fore or aft follows."""
    found = next((f for f in clause.found if f.dimension == "length" and 0 <= f.start - mark.end <= NEAR), None)
    behind = [] if found is None else [m for m in clause.marks if 0 <= m.start - found.end <= CLOSE]
    return bool(behind) and behind[0].concept in WAYS
