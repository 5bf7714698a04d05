"""Tokens -> numbers: with fractions, grouped thousands, in words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from service.core.units.lexicon import NUMBER_WORDS
from service.core.units.tokens import Token

Tokens = Sequence[Token]
LARGEST_DENOMINATOR = 64


@dataclass(frozen=True)
class Number:
    """One written number: its readings (in the unit to come), where it ends, and the digits of a plain whole one."""

    values: tuple[float, ...]
    end: int
    digits: str | None = None


def gap(tokens: Tokens, at: int) -> int:
    """Return how much white space stands before token `at`; a large number where there is no token on either side."""
    return tokens[at].start - tokens[at - 1].end if 0 < at < len(tokens) else 1_000


def text_at(tokens: Tokens, at: int) -> str:
    """Return the token's text, "" beyond the end."""
    return tokens[at].text if at < len(tokens) else ""


def number_at(tokens: Tokens, at: int) -> Number | None:  # noqa: PLR0911 - one return for each way of writing
    """Return the number at token `at`: 12, 1,27, 16,000, 1 270, 2 1/2, 2-1/2, 2½, ½, 5/8."""
    if at >= len(tokens):
        return None
    first = tokens[at]
    if first.kind == "frac":
        return Number(first.values, at + 1)
    if first.kind == "word":
        return _with_unit(tokens, spoken_number(tokens, at))
    if first.kind != "num":
        return None
    after = at + 1
    if after < len(tokens) and tokens[after].kind == "frac" and first.digits and gap(tokens, after) <= 1:
        return Number((first.values[0] + tokens[after].values[0],), after + 1)
    if text_at(tokens, after) == "/" and first.digits:
        part = _fraction(tokens, at)
        return Number((part,), at + 3) if part is not None else None
    hyphen = text_at(tokens, after) == "-" and gap(tokens, after) == 0 == gap(tokens, after + 1)
    start = after + 1 if hyphen else after
    part = _fraction(tokens, start) if first.digits and (hyphen or gap(tokens, after) == 1) else None
    if part is not None and part < 1:
        return Number((first.values[0] + part,), start + 3)
    spaced = _spaced_thousands(tokens, at)
    return spaced or Number(first.values, after, first.text if first.digits else None)


def spoken_number(tokens: Tokens, at: int) -> Number | None:
    """Return a number in words: seven, seven and a half, half a, an."""
    text = text_at(tokens, at)
    value, end = NUMBER_WORDS.get(text), at + 1
    if text == "half" and text_at(tokens, end) in ("a", "an"):
        value, end = 0.5, at + 2
    elif text in ("a", "an") and not (at and tokens[at - 1].text in ("half", "of", "quarter", "and")):
        value = 1.0
    elif value is not None and [text_at(tokens, end + k) for k in range(3)] == ["and", "a", "half"]:
        value, end = value + 0.5, at + 4
    return None if value is None else Number((value,), end)


def _with_unit(tokens: Tokens, number: Number | None) -> Number | None:
    """Return the number where a unit in words follows, and none of "an inch and a half", "a foot or two"."""
    if number is None or number.end >= len(tokens):
        return None
    unit = tokens[number.end]
    more = [text_at(tokens, number.end + 1 + k) for k in range(2)]
    short = unit.kind != "word" or len(unit.text) < 3  # noqa: PLR2004 - no symbol follows a number in words
    return None if short or (more[0] in ("or", "and") and more[1] in ("a", "two")) else number


def _fraction(tokens: Tokens, at: int) -> float | None:
    if at + 2 >= len(tokens) or not (tokens[at].digits and tokens[at + 2].digits and tokens[at + 1].text == "/"):
        return None
    tight = gap(tokens, at + 1) == 0 == gap(tokens, at + 2)
    over, under = tokens[at].values[0], tokens[at + 2].values[0]
    again = text_at(tokens, at + 3) == "/" and gap(tokens, at + 3) == 0
    return over / under if tight and not again and 1 < under <= LARGEST_DENOMINATOR and over < under else None


def _spaced_thousands(tokens: Tokens, at: int) -> Number | None:
    """1 270: up to three digits, one space, exactly three more; a second group of that sort is a table or a phone."""
    if not (at + 1 < len(tokens) and tokens[at].digits and tokens[at + 1].digits and gap(tokens, at + 1) == 1):
        return None
    head, tail = tokens[at].text, tokens[at + 1].text
    if len(head) > 3 or len(tail) != 3 or head.startswith("0"):  # noqa: PLR2004 - groups are of three
        return None
    if at and tokens[at - 1].digits and gap(tokens, at) == 1:
        return None
    return Number((float(head + tail),), at + 2)
