"""A half told behind number and unit: "3 tonnellate e mezzo", "6 tons and a half"."""

from __future__ import annotations

import re
from dataclasses import replace

from service.core.units import BY_SYMBOL, Found, Quantity

_HALF = re.compile(
    r"[ \n](?:e mezz[oa]|y medi[oa]|et demie?|and a half|en een halve?|og en halv|och en halv|und eine?[nr]? halbe?[nr]?)\b",
    re.IGNORECASE,
)
_WHOLE = re.compile(r"\d{1,3}[ ]?[^\W\d]")


_TAIL = re.compile(r"[ ]\d(?!\d|[.,/]\d)[ ]?(?:[.,;)\n]|$)")


def is_cut_short(clean: str, found: Found) -> bool:
    """Say whether one digit follows metres and closes: "1 meter 5" is 1.05 or 1.5, nobody knows."""
    metres = isinstance(found.read, Quantity) and found.read.unit == "m" and found.dimension == "length"
    return metres and _TAIL.match(clean, found.end) is not None and "." not in clean[found.start : found.end]


def with_half(clean: str, found: Found) -> Found:
    """Return a whole number of a unit with the half that stands behind it."""
    half = _HALF.match(clean, found.end)
    unit = BY_SYMBOL.get(found.read.unit) if isinstance(found.read, Quantity) else None
    if half is None or unit is None or not isinstance(found.read, Quantity) or not _WHOLE.match(clean, found.start):
        return found
    read = replace(found.read, value=round(found.read.value + unit.factor / 2, 6), text=clean[found.start : half.end()])
    return replace(found, end=half.end(), read=read)
