"""What is said in one breath with the boat's name: "our steel Corvane 33", "Corvane 33, 1981, 9.90 m, 5 t", "36 foot 4 on deck"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from service.core.reading.claims import Claim, plausible
from service.core.reading.lexis import Mark, words_of
from service.core.reading.models import Named
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_thing
from service.core.units import Found

_ONE = (
    "a an our my this mine ein eine einer einen einem unsere unserer unsere unseren meine meiner un une notre mon ma uno una nuestro "
    "nuestra mi il la nostro nostra mio mia een onze mijn en ett et var vart min mitt vor vore vares"
)
ONE = frozenset(_ONE.split())
_NAME = re.compile(r"[ \n-](?:[A-Z\u00c0-\u00de][\w'\u2019-]{1,20}[ \n]){1,3}\d{2,3}\b")
_ON_DECK = re.compile(
    r"[ \n](?:on[ \n]deck|an[ \n]deck|sur[ \n]le[ \n]pont|en[ \n]cubierta|aan[ \n]dek|in[ \n]coperta|"
    r"p\u00e5[ \n]d\u00e4ck|p\u00e5[ \n]dekk?)\b",
    re.IGNORECASE,
)
_OF = re.compile(r"[ \n](?:of|von|mit|de|van|di|da|p\u00e5|with)[ \n]", re.IGNORECASE)  # "a Corvane 33 of 9.95 m"
SHORTEST = 5000.0
BACK, NEAR = 16, 30


def of_name(clean: str, start: int, mark: Mark) -> bool:
    """Say whether a material stands between an article or "our" and a boat's name: "a steel Corvane 33"."""
    before = words_of(clean[max(start, mark.start - BACK) : mark.start])
    return bool(before) and before[-1].fold in ONE and _NAME.match(clean, mark.end) is not None


def read_lengths(sheet: Sheet, clause: Clause, names: Sequence[Named]) -> list[Claim]:
    """Return the boat's length where it is told bare between commas beside her name, or "on deck", and no other could be."""
    things = {m.concept for m in clause.marks if is_thing(m.concept)} - {"BOAT", "RUDDER", "TRANSOM", "HULL"}
    long = [f for f in clause.found if f.dimension == "length" and _longest(f) >= SHORTEST]
    boat = len(long) == 1 and _of_boat(sheet.clean, clause, long[0])
    if len(long) != 1 or (things and not boat) or clause.concepts & {"LOA", "LWL", "LENGTH", "WIDTH", "OTHER_BOAT"}:
        return []
    on_deck = _ON_DECK.match(sheet.clean, long[0].end, clause.end) is not None
    listed = any(n.clause is clause and n.end <= long[0].start for n in names) and long[0] in _alone(sheet, clause)
    listed = listed or any(_OF.fullmatch(sheet.clean, n.end, long[0].start) for n in names)
    values = tuple(v for v in plausible("boat.loa_mm", long[0]) if v >= SHORTEST)
    if len(values) != 1 or not (on_deck or listed or boat):
        return []
    return [Claim("boat.loa_mm", values[0], long[0].start, long[0].end, clause.depth, 0.6)]


def _of_boat(clean: str, clause: Clause, found: Found) -> bool:
    """Say whether a length is right behind a word for the boat and "of": "un voilier en aluminium de 9,95 m"."""
    boats = [m for m in clause.marks if m.concept == "BOAT" and 0 <= found.start - m.end <= NEAR]
    since = {m.concept for m in clause.marks if boats and boats[-1].end <= m.start < found.start}
    joint = re.search(
        r"[ \n](?:of|von|mit|de|van|di|p\u00e5)[ \n]$", clean[max(clause.start, found.start - 6) : found.start]
    )
    return bool(boats) and joint is not None and since <= {"ALU", "STEEL", "WOOD", "GRP", "YEAR", "OURS"}


def _longest(found: Found) -> float:
    return max(plausible("boat.loa_mm", found), default=0.0)


def _alone(sheet: Sheet, clause: Clause) -> Iterator[Found]:
    """Yield the quantities that stand between commas with nothing else."""
    for found in clause.found:
        before = sheet.clean[clause.start : found.start].rstrip(" ")[-1:]
        behind = sheet.clean[found.end : clause.end].lstrip(" ")[:1]
        if before in {",", ";", "("} and behind in {",", ";", ")", ".", "\n", ""}:
            yield found
