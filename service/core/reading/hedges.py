"""How surely a quantity is said: "give or take two inches", "± 2 cm", "between 10 and 12 mm"."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from itertools import pairwise

from service.core.reading.lexis import Mark
from service.core.units import Found, Quantity
from service.core.units.lexicon import RANGE_WORDS

_SIGNS = re.compile(r"(?:\u00b1|\+[ ]?/?[ ]?[-\u2212\u2013])[ ]{0,2}$")
_BARE = re.compile(r"[ ]{0,2}(?:\u00b1|\+[ ]?/?[ ]?[-\u2212\u2013])[ ]{0,2}(\d{1,3}(?:[.,]\d{1,2})?)(?![\d.,]*\d)")
_WRITTEN = re.compile(r"-?(\d{1,6}(?:[.,]\d{1,3})?)")
_JOINTS = RANGE_WORDS | {"-", "\u2013", "\u2212", "..."}
NEAR = 14
WITHIN = 3
WIDEST = 0.5


@dataclass(frozen=True)
class Hedge:
    """Half-range `value` (SI) of a quantity, and where it is said."""

    value: float
    start: int
    end: int


@dataclass(frozen=True)
class Stated:
    """Quantities that state a measure, hedges by the place where their quantity starts, and pairs that are ranges."""

    found: list[Found]
    hedges: dict[int, Hedge]
    ranges: list[tuple[Found, Found]]


def stated(clean: str, marks: list[Mark], found: list[Found]) -> Stated:
    """Part a clause's quantities into measures and how sure they are; a range's ends stay, and are named as a pair."""
    kept: list[Found] = []
    hedges: dict[int, Hedge] = {}
    for one in found:
        owner = next((k for k in reversed(kept) if k.dimension == one.dimension), None)
        value = _value(one)
        if owner is not None and value is not None and _is_hedge(clean, marks, one):
            hedges[owner.start] = Hedge(abs(value), one.start, one.end)
            continue
        kept.append(one)
        bare = _BARE.match(clean, one.end)
        if (
            bare is not None
            and isinstance(one.read, Quantity)
            and not any(f.start <= bare.start(1) < f.end for f in found)
        ):
            unit = abs(one.read.value) / number if (number := _number(one.read.text)) else 0.0
            hedges[one.start] = Hedge(round(float(bare[1].replace(",", ".")) * unit, 6), bare.start(), bare.end())
    pairs = [(a, b) for a, b in pairwise(kept) if _is_range(clean, a, b)]
    return Stated(kept, hedges, pairs)


def middle(low: Found, high: Found) -> tuple[Found, Hedge] | None:
    """Return a range as one quantity in its middle, with half its width; None where its ends have no single reading."""
    a, b = _value(low), _value(high)
    if a is None or b is None or not isinstance(high.read, Quantity) or abs(b - a) > WIDEST * max(abs(a), abs(b)):
        return None
    read = replace(high.read, value=round((a + b) / 2, 6))
    found = Found(low.start, high.end, read, high.dimension)
    return found, Hedge(round(abs(b - a) / 2, 6), low.start, high.end)


def _value(found: Found) -> float | None:
    return found.read.value if isinstance(found.read, Quantity) else None


def _number(text: str) -> float | None:
    written = _WRITTEN.match(text)
    return float(written[1].replace(",", ".")) if written else None


def _is_hedge(clean: str, marks: list[Mark], one: Found) -> bool:
    before = clean[max(0, one.start - 6) : one.start]
    if _SIGNS.search(before) or _SIGNS.search(before + clean[one.start : one.start + 1]):
        return True
    told = any(m.concept == "GIVE_TAKE" and 0 <= one.start - m.end <= NEAR for m in marks)
    return told or any(m.concept == "WITHIN" and 0 <= m.start - one.end <= WITHIN for m in marks)


def _is_range(clean: str, low: Found, high: Found) -> bool:
    between = clean[low.end : high.start].strip().casefold()
    return low.dimension == high.dimension and (low.shared or between in _JOINTS) and len(between) <= NEAR
