"""`parse` reads a text that is one quantity; `scan` finds the quantities in running text."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import isfinite
from typing import Literal

from service.core.units.grammar import Hit, hit_at, single
from service.core.units.lexicon import BY_SYMBOL, PLAUSIBLE, RANGE_WORDS, UNITS, Dimension, Unit
from service.core.units.numbers import Number, Tokens, gap, number_at, text_at
from service.core.units.tokens import tokenize

LONGEST = 200
HOW: dict[Dimension, str] = {
    "length": "write a number and a unit, such as 1270 mm, 1.27 m or 4 ft 2 1/2 in",
    "angle": "write a number and °, such as 18° or 12.5°",
    "mass": "write a number and a unit, such as 7200 kg, 7.2 t or 16,000 lb",
    "speed": "write a number and a unit, such as 6 kn or 3 m/s",
}


@dataclass(frozen=True)
class Quantity:
    """A value in the SI unit of its dimension, with the unit and the words it was written in.

    `note` says what was taken for granted (a ton for a metric one).
    """

    value: float
    dimension: Dimension
    unit: str
    text: str
    note: str | None = None


@dataclass(frozen=True)
class Unread:
    """A text that gives no single value: why, and the readings (SI) it could have."""

    reason: Literal["ambiguous", "unreadable"]
    why: str
    text: str
    readings: tuple[float, ...] = ()


@dataclass(frozen=True)
class Found:
    """A quantity in running text at [start, end). `shared`: the number has its unit from a range's second number."""

    start: int
    end: int
    read: Quantity | Unread
    dimension: Dimension
    shared: bool = False


def parse(text: str, dimension: Dimension, *, assumed: str | None = None) -> Quantity | Unread:
    """Return the quantity in `text` (SI), or why there is none; never raises on any text.

    `assumed` is the unit of a bare number (a symbol such as "mm"); without it a bare number is ambiguous. ValueError
    for an `assumed` that is no unit of the dimension.

    >>> parse("4 ft 2 1/2 in", "length").value
    1282.7
    >>> parse("1.270 mm", "length").readings
    (1.27, 1270.0)
    """
    unit = _assumed(assumed, dimension) if assumed is not None else None
    if len(text) > LONGEST:
        return Unread("unreadable", f"longer than {LONGEST} characters; {HOW[dimension]}", text[:LONGEST])
    tokens = tokenize(text)
    if tokens and tokens[-1].text == ".":
        tokens.pop()
    if not tokens:
        return Unread("unreadable", f"nothing is written; {HOW[dimension]}", text)
    hit = hit_at(tokens, 0, loose_sign=True)
    if hit is None:
        return _bare(tokens, text, dimension, unit)
    if hit.end < len(tokens):
        return Unread("unreadable", f"{text[tokens[hit.end].start :].strip()!r} is too much; {HOW[dimension]}", text)
    if hit.unit.dimension != dimension:
        why = f"{hit.unit.symbol} is no unit of {dimension}; {HOW[dimension]}"
        return Unread("unreadable", why, text)
    return _read(hit, text)


def _assumed(symbol: str, dimension: Dimension) -> Unit:
    unit = BY_SYMBOL.get(symbol) or UNITS.get(symbol)
    if unit is None or unit.dimension != dimension:
        raise ValueError(f"{symbol!r} is no unit of {dimension}")
    return unit


def _read(hit: Hit, text: str) -> Quantity | Unread:
    readings = tuple(round(value, 9) for value in hit.readings if isfinite(value))
    if hit.problem or len(readings) != 1:
        why = hit.problem or "the number is too large"
        return Unread("ambiguous" if len(readings) > 1 else "unreadable", why, text, readings)
    return Quantity(readings[0], hit.unit.dimension, hit.unit.symbol, text, hit.note)


def _bare(tokens: Tokens, text: str, dimension: Dimension, unit: Unit | None) -> Quantity | Unread:
    start = 1 if text_at(tokens, 0) in ("-", "+") else 0
    number = number_at(tokens, start)
    if number is None or number.end < len(tokens):
        return Unread("unreadable", HOW[dimension], text)
    if start and tokens[0].text == "-":
        number = Number(tuple(0.0 - value for value in number.values), number.end, number.digits)
    if unit is not None:
        return _read(single(0, number, unit, number.end), text)
    known = [u for u in BY_SYMBOL.values() if u.dimension == dimension and dimension != "angle"]
    readings = {v * u.factor for u in known for v in number.values if abs(v * u.factor) <= PLAUSIBLE[dimension]}
    return Unread("ambiguous", f"no unit; {HOW[dimension]}", text, tuple(sorted(readings)) or number.values)


def scan(text: str) -> list[Found]:
    """Return every quantity in running text, in order, decimal comma and point alike; numbers without unit are left.

    Of a range (25-60 cm, between 12 and 22 inches) the first number comes too, `shared`. Linear in the text's length.

    >>> [(f.read.value, text) for text in ["a rail, 2,35 m up"] for f in scan(text)]
    [(2350.0, 'a rail, 2,35 m up')]
    """
    tokens = tokenize(text)
    found: list[Found] = []
    at, free = 0, 0
    while at < len(tokens):
        hit = hit_at(tokens, at) if _may_start(tokens, at) else None
        if hit is None:
            number = number_at(tokens, at)
            at = max(at + 1, number.end if number else 0)
            continue
        first = _first_of_range(tokens, hit, free)
        if first is not None:
            found.append(_found(tokens, first, text, shared=True))
        found.append(_found(tokens, hit, text))
        at = free = hit.end
    return found


def _may_start(tokens: Tokens, at: int) -> bool:
    """Say whether a quantity may start here: a number glued to a word or a broken number is part of a code."""
    glued = at > 0 and gap(tokens, at) == 0
    return not (glued and tokens[at].kind in ("num", "frac") and tokens[at - 1].kind in ("word", "bad"))


def _found(tokens: Tokens, hit: Hit, text: str, *, shared: bool = False) -> Found:
    start, end = tokens[hit.start].start, tokens[hit.end - 1].end
    return Found(start, end, _read(hit, text[start:end]), hit.unit.dimension, shared)


def _first_of_range(tokens: Tokens, hit: Hit, free: int) -> Hit | None:
    """Return the number in front of a joining word or dash, in the unit of the quantity behind it."""
    joint = hit.start - 1
    if joint <= free or not (text_at(tokens, joint) in RANGE_WORDS or text_at(tokens, joint) == "-"):
        return None
    for start in (joint - 4, joint - 3, joint - 2, joint - 1):
        number = number_at(tokens, start) if start >= free else None
        if number is not None and number.end == joint and _may_start(tokens, start):
            return replace(single(start, number, hit.unit, joint), note=hit.note)
    return None
