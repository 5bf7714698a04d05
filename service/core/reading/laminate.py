"""A skin told by its layers: the whole where it is said, else the layers summed where it is plain that they are all."""

from __future__ import annotations

import re
from collections.abc import Sequence

from service.core.reading.claims import Claim, Notes
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_obstacle
from service.core.units import Found, Quantity

_TOTAL = (
    "in all|altogether|all told|in total|total|overall|all up|insgesamt|zusammen|gesamt|in summe|en tout|au total|soit|en total|total de|"
    "in tutto|in totale|totale|complessivi|samen|totaal|in totaal|bij elkaar|totalt|sammanlagt|tillsammans|i alt|til sammen|tilsammen|"
    "sammenlagt"
)
_WHOLE = re.compile(rf"\b(?:{_TOTAL})\b", re.IGNORECASE)
_TWICE = re.compile(
    r"\b(?:2[ ]?[x\u00d7]|twice|two|zweimal|zwei|deux fois|deux|dos|due|twee|tv\u00e5|to|2)[ ](?:[^\W\d]{2,12}[ ]){0,3}$",
    re.IGNORECASE,
)
_BOTH = re.compile(
    r"[^.;:]{0,24}\b(?:either side|each side|both sides|beidseits|beiderseits|je seite|jeder seite|de chaque c\u00f4t\u00e9|a cada lado|"
    r"per lato|per parte|aan beide kanten|aan weerszijden|p\u00e5 var sida|"
    r"p\u00e5 hver side|p\u00e5 begge sider|p\u00e5 b\u00e5da sidor)\b",
    re.IGNORECASE,
)
ELSE = frozenset(
    {"WATER", "WIDTH", "BEAM", "DRAFT", "LOA", "RUDDER", "STOCK", "TRAILING", "OTHER_BOAT", "DISPLACEMENT"}
)
SKIN = frozenset({"CORED", "SOLID", "HULL", "THICK", "GRP"})
THICKEST, AROUND, PAIR, LAYERS = 90.0, 26, 2, 3


def read_laminate(sheet: Sheet, notes: Notes) -> None:
    """Put one thickness in the place of the layers that a thought tells of."""
    for clause in sheet.clauses:
        said = clause.concepts
        if clause.foreign or not said & SKIN or said & ELSE or any(map(is_obstacle, said)):
            continue
        layers = [f for f in clause.found if f.dimension == "length"]
        if len(layers) < PAIR or any(not 0 < _mm(f) <= THICKEST for f in layers):
            continue
        whole = _told(sheet.clean, clause, layers) or _summed(sheet.clean, clause, layers)
        if whole is None:
            continue
        at = {f.start for f in layers}
        name = "transom.thickness_mm"
        notes.claims = [c for c in notes.claims if not (c.field == name and c.start in at)]
        notes.doubts = [d for d in notes.doubts if not (d[1].field == name and d[0] in at)]
        notes.claims.append(Claim(name, whole[0], whole[1], whole[2], clause.depth, 0.8))


def _told(clean: str, clause: Clause, layers: Sequence[Found]) -> tuple[float, int, int] | None:
    """Return the last length where a word beside it says that it is the whole."""
    last, before = layers[-1], layers[-2]
    low = max(before.end, last.start - AROUND)
    near = _WHOLE.search(clean, low, last.start) or _WHOLE.search(clean, last.end, min(clause.end, last.end + AROUND))
    return (_mm(last), last.start, last.end) if near and _mm(last) > max(map(_mm, layers[:-1])) else None


def _summed(clean: str, clause: Clause, layers: Sequence[Found]) -> tuple[float, int, int] | None:
    """Return two like skins and the core between: "2 x 4 mm and 15 mm foam", "4 mm, 15 mm foam, 4 mm"."""
    sizes = [_mm(f) for f in layers]
    span = layers[0].start, layers[-1].end
    if "CORED" not in clause.concepts:
        return None
    if len(sizes) == LAYERS and sizes[0] == sizes[2] < sizes[1]:
        return sum(sizes), *span
    first = layers[0]
    twice = _TWICE.search(clean, max(clause.start, first.start - AROUND), first.start)
    twice = twice or _BOTH.match(clean, first.end, min(clause.end, first.end + 2 * AROUND))
    return (2 * sizes[0] + sizes[1], *span) if len(sizes) == PAIR and twice and sizes[0] < sizes[1] else None


def _mm(found: Found) -> float:
    return found.read.value if isinstance(found.read, Quantity) else 0.0
