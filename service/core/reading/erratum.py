"""A number the writer puts right by both: "I wrote 12 degrees, it is 21", "not 12 but 21"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import islice

from service.core.reading.claims import Claim, Notes
from service.core.reading.corrections import mended
from service.core.reading.sheet import Clause, Sheet
from service.core.units import Quantity

_NUMBER = r"(\d{1,5}(?:[.,]\d{1,2})?)"
_UNIT = r"[ ]?(?:[^\W\d]{1,12}\b|[\u00b0\"'\u2032\u2033])?"
_WROTE = (
    "wrote|typed|gave|said|put|told you|\u00e9crit|mis|indiqu\u00e9|dit|not\u00e9|donn\u00e9|schrieb|geschrieben|angegeben|gesagt|"
    "escrib\u00ed|escrito|"
    "puse|puesto|dije|dicho|scritto|messo|detto|indicato|geschreven|opgegeven|gezegd|schreef|skrev|skrivit|angav|angivit|oppga|"
    "oppgitt|skrevet|angivet"
)
_IS = (
    "it's|it\u2019s|it is|is|should be|should read|should have been|make it|make that|but it's|c'est|c\u2019est|ce sont|ce serait|"
    "lire|es|son|"
    "es ist|es sind|sind|ist|richtig sind|richtig ist|\u00e8|sono|dovrebbe essere|het is|is|moet|moet zijn|det \u00e4r|\u00e4r|"
    "ska vara|det er|er|skal v\u00e6re"
)
_BUT = "but|sondern|sino|mais|ma|bens\u00ec|maar|utan|men"
_DENIAL = "not|nicht|pas|niet|no|non|inte|ikke"
_SAID = re.compile(
    rf"\b(?:{_WROTE})\b[^\d.;!?]{{0,24}}[ \n]{_NUMBER}{_UNIT}[,;. \n-]{{1,3}}"
    rf"[^\d;!?]{{0,48}}?\b(?:{_IS})\b[^\d.;!?]{{0,16}}[ \n]{_NUMBER}",
    re.IGNORECASE,
)
_SUT = re.compile(
    rf"\b(?:{_DENIAL})\b[ \n](?:[^\W\d]{{1,10}}[ ])?{_NUMBER}{_UNIT},?[ \n](?:{_BUT})\b[ \n](?:[^\W\d]{{1,10}}[ ])?{_NUMBER}",
    re.IGNORECASE,
)
_AFTER = re.compile(
    rf"{_NUMBER}{_UNIT}[ \n](?:{_WROTE})\b[,;. \n-]{{1,3}}[^\d;!?]{{0,12}}?\b(?:{_IS})\b[^\d.;!?]{{0,16}}[ \n]{_NUMBER}",
    re.IGNORECASE,
)
_NOT = re.compile(
    rf"{_NUMBER}{_UNIT},?[ \n](?:and[ ]not|rather[ ]than|instead[ ]of|et[ ]non|{_DENIAL})[ \n](?:[^\W\d]{{1,10}}[ ])?{_NUMBER}",
    re.IGNORECASE,
)
ENDS = {"length": "_mm", "angle": "_deg", "mass": "_kg"}
MOST, NEAR = 5, 24


def put_errata_right(sheet: Sheet, notes: Notes) -> None:
    """Replace what was said of the old number, here or in an older mail, by the new; nothing else of such a thought counts."""
    for clause in sheet.clauses:
        if clause.foreign or clause.quoted:
            continue
        _take_back(sheet, clause, notes)
        for match in _errata(sheet.clean, clause):
            first, last = (1, 2) if match.re is not _NOT else (2, 1)  # the old number, and the new
            old, new = (float(match.group(at).replace(",", ".")) for at in (first, last))
            ends = {
                ENDS[f.dimension]
                for f in clause.found
                if f.dimension in ENDS and match.start(1) <= f.start <= match.end(2)
            }
            kept: list[Claim] = []
            hits = 0
            for claim in notes.claims:
                here = match.start(1) <= claim.start < match.end()
                own = clause.start <= claim.start < clause.end and claim.field in ("transom.rake_deg", "boat.stern")
                if (ends and not claim.field.endswith(tuple(ends))) and not own:
                    kept.append(claim)
                    continue
                fresh = claim if here else mended(sheet, claim, new, old, match.start(last), match.end(last))
                hits += fresh is not claim
                kept += [] if here or (own and ends == {"_deg"}) else [fresh]
            notes.claims = kept if hits else notes.claims


def _take_back(sheet: Sheet, clause: Clause, notes: Notes) -> None:
    """Drop the one value that "forget the 13 mm" speaks of, wherever it was said before."""
    marks = [m for m in clause.marks if m.concept == "WITHDRAW"]
    for found in clause.found if marks else ():
        led = any(
            0 <= found.start - m.end <= NEAR and not set(",:;") & set(sheet.clean[m.end : found.start]) for m in marks
        )
        value = found.read.value if isinstance(found.read, Quantity) else None
        same = [c for c in notes.claims if isinstance(c.value, float) and value is not None and abs(c.value) == value]
        same = [c for c in same if c.field.endswith(ENDS.get(found.dimension, "?"))]
        if led and len({c.field for c in same}) == 1:
            notes.claims = [c for c in notes.claims if c not in same]
            notes.doubt(found.start, same[0].field, "withdrawn", sheet.text[found.start : found.end], (value,))


def _errata(clean: str, clause: Clause) -> Iterator[re.Match[str]]:
    for pattern in (_SAID, _SUT, _AFTER, _NOT):
        yield from islice(pattern.finditer(clean, clause.start, clause.end), MOST)
