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


_PART_OF = re.compile(
    r"(?:\b(\d{1,2})/(\d{1,2})|\b(a|one|two|three|five|seven)[ -](quarter|eighth|sixteenth|third)s?|(half))[ ]of[ ](?:an?[ ])?$",
    re.IGNORECASE,
)
_COUNTS = {"a": 1, "one": 1, "two": 2, "three": 3, "five": 5, "seven": 7}
_SHARES = {"quarter": 4, "eighth": 8, "sixteenth": 16, "third": 3}
BEFORE = 24
_TAIL = re.compile(r"[ ]\d(?!\d|[.,/]\d)[ ]?(?:[.,;)\n]|$)")


def is_cut_short(clean: str, found: Found) -> bool:
    """Say whether one digit follows metres and closes: "1 meter 5" is 1.05 or 1.5, nobody knows."""
    metres = isinstance(found.read, Quantity) and found.read.unit == "m" and found.dimension == "length"
    return metres and _TAIL.match(clean, found.end) is not None and "." not in clean[found.start : found.end]


def with_half(clean: str, found: Found) -> Found:
    """Return a whole number of a unit with the half that stands behind it."""
    found = _part_of(clean, found)
    half = _HALF.match(clean, found.end)
    unit = BY_SYMBOL.get(found.read.unit) if isinstance(found.read, Quantity) else None
    if half is None or unit is None or not isinstance(found.read, Quantity) or not _WHOLE.match(clean, found.start):
        return found
    read = replace(found.read, value=round(found.read.value + unit.factor / 2, 6), text=clean[found.start : half.end()])
    return replace(found, end=half.end(), read=read)


def _part_of(clean: str, found: Found) -> Found:
    """Return one of a unit with the fraction in front of it: "3/8 of an inch", "three eighths of an inch"."""
    part = _PART_OF.search(clean, max(0, found.start - BEFORE), found.start)
    one = isinstance(found.read, Quantity) and found.read.text.casefold().startswith(("an ", "a ", "one "))
    unit = BY_SYMBOL.get(found.read.unit) if isinstance(found.read, Quantity) else None
    if part is None or not one or unit is None or not isinstance(found.read, Quantity):
        return found
    share = int(part[1]) / max(1, int(part[2])) if part[1] else 0.5
    if part[3]:
        share = _COUNTS[part[3].casefold()] / _SHARES[part[4].casefold()]
    read = replace(found.read, value=round(unit.factor * share, 6), text=clean[part.start() : found.end])
    return replace(found, start=part.start(), read=read)
