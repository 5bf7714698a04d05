"""How a measure was taken: by the words for it in the same thought, or in the one that leads up to it."""

from __future__ import annotations

from bisect import bisect_left

from service.core.reading.claims import Claim
from service.core.reading.lexis import Mark
from service.core.reading.sheet import Clause, Sheet

METHODS = {
    "M_TAPE": "tape",
    "M_PHONE": "phone_level",
    "M_LASER": "laser",
    "M_INCL": "inclinometer",
    "M_DRAWING": "drawing",
    "M_BROCHURE": "brochure",
    "M_GUESS": "guess",
    "M_PHOTO": "photo",
}
LED = 6


def read_methods(sheet: Sheet, claims: list[Claim]) -> list[Claim]:
    """Return a claim `methods.FIELD` for each measure in whose clause its method is named."""
    found = []
    for claim in claims:
        clause = sheet.clause_at(claim.start)
        measured = clause is not None and claim.field.endswith(("_mm", "_deg", "_kg"))
        if clause is None or not measured:
            continue
        named = [m for m in clause.marks if m.concept in METHODS] or _carried(sheet, clause)
        if named:
            mark = min(named, key=lambda m: abs(m.start - claim.start))
            found.append(Claim(f"methods.{claim.field}", METHODS[mark.concept], mark.start, mark.end, claim.depth))
    return found


def _carried(sheet: Sheet, clause: Clause) -> list[Mark]:
    """Return the methods of the sentence that leads up to these words: "measured with a tape:", in its paragraph or list."""
    at = bisect_left(sheet.starts, clause.start)
    for before in reversed(sheet.clauses[max(0, at - LED) : at]):
        named = [m for m in before.marks if m.concept in METHODS]
        leads = not before.found and not before.foreign and before.depth == clause.depth
        if named and leads and (before.paragraph == clause.paragraph or "MEASURED" in before.concepts):
            return named
    return []
