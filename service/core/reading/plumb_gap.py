"""A line hung from the top edge that hangs clear: its gap to the transom at the waterline, over the height, is the rake."""

from __future__ import annotations

from math import atan2, degrees

from service.core.reading.claims import RANGES, Claim, Notes
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_obstacle
from service.core.units import Found, Quantity

OTHERS = frozenset(
    {"RUDDER", "TRAILING", "STOCK", "STEP", "OTHER_BOAT", "FORWARD", "AFT", "BOTTOM", "REVERSE", "DRAFT"}
)
RAKE, TOP = "transom.rake_deg", "transom.top_height_mm"
STEEPEST = 0.6


def read_plumb_gap(sheet: Sheet, notes: Notes, hints: frozenset[str]) -> None:
    """Take the gap for the rake it comes to (aft at the top: the line hung free), and never for a height."""
    for clause in sheet.clauses:
        if clause.foreign or clause.parent is not None or not {"PLUMB_LINE", "WATER"} <= clause.concepts:
            continue
        gap = _gap(clause)
        if gap is None or OTHERS & clause.concepts or any(map(is_obstacle, clause.concepts)):
            continue
        tops = [c for c in notes.claims if c.field == TOP and c.start != gap.start]
        heights = {c.value for c in tops}
        if len(heights) != 1 or not _mm(gap) < STEEPEST * next(iter(heights)):
            continue
        notes.claims = [c for c in notes.claims if not (c.field == TOP and c.start == gap.start)]
        angle = round(degrees(atan2(_mm(gap), next(iter(heights)))), 2)
        told = any(c.field == RAKE for c in notes.claims) or "REVERSE" in hints
        about = {"TOP"} & (clause.concepts | frozenset(clause.topic))
        if not told and about and angle <= RANGES[RAKE][1]:
            notes.claims.append(Claim(RAKE, angle, gap.start, gap.end, clause.depth, 0.65))


def _gap(clause: Clause) -> Found | None:
    """Return the last length of the thought, behind the line's name."""
    line = next(m for m in clause.marks if m.concept == "PLUMB_LINE")
    behind = [f for f in clause.found if f.dimension == "length" and f.start > line.end]
    return behind[0] if len(behind) == 1 and isinstance(behind[0].read, Quantity) else None


def _mm(found: Found) -> float:
    return found.read.value if isinstance(found.read, Quantity) else 0.0
