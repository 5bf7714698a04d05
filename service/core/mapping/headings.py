"""A heading as somebody wrote it -> its words and the unit it names: "Rake (deg)", "LOA [ft]", "Höhe cm", "loa_mm"."""

from __future__ import annotations

import re
from dataclasses import dataclass

from service.core import units
from service.core.reading.lexis import fold

_BRACKETED = re.compile(r"^(?P<words>.*\S)\s*[(\[{]\s*(?:in\s+)?(?P<unit>[^()\[\]{}]{1,12}?)\s*[)\]}]\s*$")
_LAST = re.compile(r"^(?P<words>.*?\w[)\]]?)(?:\s*[/,]\s*|[\s_.-]+(?:in\s+)?)(?P<unit>[^\W\d_]{1,12}|°|\"|')\.?$")
_CAMEL = re.compile(r"(?<=[a-zà-ÿ]{2})(?=[A-Z][a-zà-ÿ]{2})")
_APART = re.compile(r"[^\w°]+|_")


@dataclass(frozen=True)
class Heading:
    """What it says, folded and with one blank between words, and the unit where it names one."""

    words: str
    unit: units.Unit | None = None


def read_heading(text: str) -> Heading:
    """Return a heading's words and unit.

    >>> read_heading("Höhe cm").words, read_heading("Displacement in kg").unit.symbol, read_heading("Port of call").unit
    ('hohe', 'kg', None)
    """
    for shape in (_BRACKETED, _LAST):
        found = shape.match(text.strip())
        unit = units.UNITS.get(found["unit"].casefold()) if found else None
        if found and unit is not None:
            return Heading(_plain(found["words"]), unit)
    return Heading(_plain(text))


def _plain(text: str) -> str:
    return " ".join(fold(word) for word in _APART.split(_CAMEL.sub(" ", text)) if word)
