"""Numbers without units in a letter that says once which unit they all have: "everything in millimetres unless I say so"."""

from __future__ import annotations

import re
from collections.abc import Sequence

from service.core.reading.unitless import Thought, add_length, is_free

_ALL = (
    "all|everything|measurements?|measures|dimensions?|figures|numbers|sizes|alles|alle ma\u00dfe|ma\u00dfe|masse|angaben|zahlen|"
    "tout|toutes|"
    "cotes|mesures|todo|todas?|medidas|cotas|tutto|tutte|misure|quote|alle|maten|alla|allt|m\u00e5tten|m\u00e5tt|alt|m\u00e5lene|m\u00e5l"
)
_UNIT = (
    "(mm|cm|inches|inch|zoll|(?:milli|centi|zenti)met(?:res?|ers?|ern|er|ros?|ri)|millim\u00e8tres?|centim\u00e8tres?|mil\u00edmetros?|"
    "cent\u00edmetros?|pouces|pulgadas|pollici|tum|tommer)"
)
_SAYS = re.compile(rf"\b(?:{_ALL})\b[ \n][^.\n\d]{{0,28}}?\b(?:in|en|i|in:)[ ]{_UNIT}\b", re.IGNORECASE)
_HEADED = re.compile(
    rf"(?:\(|\b(?:{_ALL})[ ]\()(?:all |alles |alle |tout |todo |tutto |allt |alt )(?:in |en |i )?{_UNIT}[),]",
    re.IGNORECASE,
)
_NUMBER = re.compile(r"(?<![\w.,'\u2019/+\u00b0#:-])\d{2,4}(?:[.,]\d)?(?![\w/'\"\u2032\u2033\u00b0%:]|[.,]\d)")
_COUNTS = re.compile(
    r"[ ](?:years?|jahre?n?|ans?|a\u00f1os|anni|jaar|\u00e5r|times|degrees?|grad|days|people|hours)\b", re.IGNORECASE
)
INCH = frozenset({"inches", "inch", "zoll", "pouces", "pulgadas", "pollici", "tum", "tommer"})
LEAST = {"mm": 20.0, "cm": 2.0, "in": 2.0}


def add_declared(clean: str, clauses: Sequence[Thought]) -> None:
    """Give clauses the lengths whose unit the writer declares for the whole letter."""
    said = _SAYS.search(clean) or _HEADED.search(clean)
    if said is None:
        return
    word = said[1].casefold()
    unit = "in" if word in INCH else "mm" if word[:3] in ("mm", "mil") else "cm"
    for clause in (c for c in clauses if not c.foreign and not c.depth):
        for match in _NUMBER.finditer(clean, clause.start, clause.end):
            counts = _COUNTS.match(clean, match.end())
            if counts is None and is_free(clean, clause, match) and float(match[0].replace(",", ".")) >= LEAST[unit]:
                add_length(clause, match, unit)
