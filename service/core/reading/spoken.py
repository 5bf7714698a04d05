"""Quantities whose number is in words: "a foot and a half", "einen Meter zwanzig", "anderhalve meter", "elva ton"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import product

from service.core.reading.lexis import Numbers, Word, fold, parts_of
from service.core.units import UNITS, Found, Quantity, Unit

_WHOLE = re.compile(r"(?<![\w.,/])(\d{1,3})[ \n]$")
WHOLE = 6
SHORT = frozenset({"cm", "mm", "kg"})
LEAST_LETTERS = 3
TEN, TWENTY, HUNDRED = 10, 20, 100
HALF = 0.5
METRE, CM = 1000.0, 10.0
THOUSAND = frozenset({"thousand", "tausend", "mille", "mil", "duizend", "mila", "tusen", "tusind"})
_DIGITS = re.compile(r"(?<![\w.,/])(\d{1,3}(?:[.,]\d{1,2})?)[ \n]$")
TONNE, TENTH = 1000.0, 100.0
_UNITS = {fold(word): unit for word, unit in UNITS.items()}
_WITH = frozenset({"with", "mit", "avec", "con", "met", "med"})  # "con un metro": the tool, not the length


def numerals(numbers: Numbers) -> dict[tuple[str, ...], float]:
    """Return every phrase of a language that is a number from 0 to 99 or a fraction, folded, with its value.

    >>> table = numerals(Numbers("null ein", "zwanzig", "{one}und{ten}", "hundert", "halb", "und"))
    >>> table["einundzwanzig",]
    21.0
    """
    table: dict[tuple[str, ...], float] = {}
    ones = [group.split("/") for group in numbers.ones.split()]
    for value, forms in enumerate(ones):
        table.update({parts_of(form): float(value) for form in forms})
    for value, form in enumerate(numbers.tens.split(), start=2):
        table[parts_of(form)] = float(value * TEN)
        reach = TWENTY if form in ("soixante", "quatre-vingt") else TEN  # French counts on by twenties there
        for (one, forms), way in product(enumerate(ones[1:reach], start=1), numbers.joint.split("|")):
            for written in (way.format(one=one_form, ten=form) for one_form in forms):
                table.setdefault(parts_of(written), float(value * TEN + one))
    return table | dict(_wholes(numbers, ones))


def _wholes(numbers: Numbers, ones: list[list[str]]) -> Iterator[tuple[tuple[str, ...], float]]:
    for entry in numbers.whole.split():
        phrase, _, value = entry.replace("_", " ").partition("=")
        if "{one}" not in phrase:
            yield parts_of(phrase), float(value)
            continue
        for one, forms in enumerate(ones[1:TWENTY], start=1):
            for form in forms:
                yield parts_of(phrase.format(one=form)), one + float(value)


@dataclass(frozen=True)
class _Read:
    value: float
    end: int


class Speller:
    """Finds quantities in words in one language, in one pass."""

    def __init__(self, numbers: Numbers) -> None:
        self._said = numbers
        self._hundred = frozenset(map(fold, numbers.hundred.split("/")))
        self._half = frozenset(map(fold, numbers.half.split("/")))
        self._and = fold(numbers.and_)

    @cached_property
    def _numbers(self) -> dict[tuple[str, ...], float]:
        """Work the numerals out, once somebody writes in this language."""
        return numerals(self._said)

    @cached_property
    def _longest(self) -> int:
        return max(map(len, self._numbers))

    def found(self, text: str, words: list[Word]) -> list[Found]:
        """Return the quantities in order of place, none within another."""
        made: list[Found] = []
        at = 0
        while at < len(words):
            got = self._quantity(text, words, at)
            if got is None:
                at += 1
            else:
                made.append(got[0])
                at = got[1]
        return made

    def _number(self, text: str, words: list[Word], at: int) -> _Read | None:
        for size in range(min(self._longest, len(words) - at), 0, -1):
            value = self._numbers.get(tuple(w.fold for w in words[at : at + size]))
            if value is not None and _joined(text, words, at, at + size - 1):
                return _Read(value, at + size)
        return None

    def _amount(self, text: str, words: list[Word], at: int) -> _Read | None:
        """Return a number with halves and hundreds: "half", "one half", "hundred and twenty"."""
        read = self._number(text, words, at)
        if read is None:
            if words[at].fold in self._half:
                return _Read(HALF, at + 1)
            if words[at].fold not in self._hundred:
                return None
            read = _Read(1.0, at)
        if _word(words, read.end) in self._half and read.value == 1:
            return _Read(HALF, read.end + 1)
        at_half = read.end + (_word(words, read.end) == self._and)
        one = at_half < len(words) and self._numbers.get((words[at_half].fold,)) == 1
        if (one or at_half > read.end) and _word(
            words, at_half + one
        ) in self._half:  # "vijf en een halve", "fire et halvt"
            return _Read(read.value + HALF, at_half + one + 1)
        if _word(words, read.end) in self._hundred:
            more = read.end + 1 + (_word(words, read.end + 1) == self._and)
            rest = self._number(text, words, more) if more < len(words) else None
            small = rest is not None and rest.value < HUNDRED
            return _Read(read.value * HUNDRED + (rest.value if rest and small else 0), rest.end if rest else more)
        return read

    def _quantity(self, text: str, words: list[Word], at: int) -> tuple[Found, int] | None:
        read = self._thousands(text, words, at) or self._amount(text, words, at)
        if read is None or read.end >= len(words) or (at and words[at - 1].fold in _WITH):
            return None
        unit = _unit(words[read.end])
        if unit is None or not _joined(text, words, at, read.end):
            return None
        whole = self._before_half(text, words, at) if read.value == HALF else None
        if words[at].fold in THOUSAND and (
            digits := _DIGITS.search(text, max(0, words[at].start - WHOLE), words[at].start)
        ):
            more_than_one = float(digits[1].replace(",", ".")) - 1
            whole, read = digits, _Read(read.value + more_than_one * (TONNE - 1) - 1, read.end)
        value, end = (read.value + (float(whole[1].replace(",", ".")) if whole else 0.0)) * unit.factor, read.end + 1
        more = self._rest(text, words, end, unit)
        value, end = (value + more.value, more.end) if more else (value, end)
        start, stop = whole.start() if whole else words[at].start, words[end - 1].end
        quantity = Quantity(round(value, 6), unit.dimension, unit.symbol, text[start:stop], unit.note)
        return Found(start, stop, quantity, unit.dimension), end

    def _thousands(self, text: str, words: list[Word], at: int) -> _Read | None:
        """Return thousands with what follows: "siebentausend", "six thousand five hundred", "17 thousand"."""
        word = words[at].fold
        glued = next((t for t in THOUSAND if word.endswith(t) and word != t), None)
        if glued is not None:
            before = self._numbers.get((word.removesuffix(glued),))
            read = _Read(before, at + 1) if before else None
        elif word in THOUSAND:
            read = _Read(1.0, at + 1)
        else:
            read = self._amount(text, words, at)
            named = read is not None and _word(words, read.end) in THOUSAND
            read = _Read(read.value, read.end + 1) if read is not None and named else None
        if read is None or not _joined(text, words, at, read.end - 1):
            return None
        rest = self._amount(text, words, read.end) if read.end < len(words) else None
        if rest is not None and rest.value >= 1 and _joined(text, words, read.end - 1, rest.end - 1):
            return _Read(read.value * TONNE + rest.value, rest.end)
        return _Read(read.value * TONNE, read.end)

    def _before_half(self, text: str, words: list[Word], at: int) -> re.Match[str] | None:
        """Return the whole number in figures that a half goes with: "6 and half tons", "6 y media"."""
        if not at or (words[at - 1].fold != self._and and self._numbers.get((words[at].fold,)) != 1):
            return None
        if words[at - 1].fold != self._and:  # "4 et halvt tonn"
            return _WHOLE.search(text, max(0, words[at].start - WHOLE), words[at].start)
        return _WHOLE.search(text, max(0, words[at - 1].start - WHOLE), words[at - 1].start)

    def _rest(self, text: str, words: list[Word], end: int, unit: Unit) -> _Read | None:
        """Return what follows the unit: "and a half", "twenty" behind a metre."""
        at = end + (_word(words, end) == self._and)
        if at >= len(words) or not _joined(text, words, end - 1, at):
            return None
        one = self._numbers.get((words[at].fold,)) == 1
        if _word(words, at + one) in self._half and _joined(text, words, at, at + one):
            return _Read(unit.factor / 2, at + one + 1)
        rest = self._number(text, words, at)
        if rest is None or not 1 <= rest.value < HUNDRED or not _joined(text, words, at, rest.end - 1):
            return None
        if unit.factor == TONNE and unit.dimension == "mass" and at == end:  # "dix tonnes deux"
            return _Read(rest.value * (TENTH if rest.value < TEN else TEN), rest.end)
        own = _unit(words[rest.end]) if rest.end < len(words) and _joined(text, words, at, rest.end) else None
        if unit.factor != METRE or (own is not None and own.factor != CM):
            return None
        article = (
            rest.value == 1 and own is None and at == end
        )  # "ein Meter sieben" is 1.07 m; "ein Meter ein ..." goes on
        return None if article else _Read(rest.value * CM, rest.end + (own is not None))


def _word(words: list[Word], at: int) -> str:
    return words[at].fold if at < len(words) else ""


def _unit(word: Word) -> Unit | None:
    unit = _UNITS.get(word.fold)
    return unit if unit is not None and (len(word.fold) >= LEAST_LETTERS or word.fold in SHORT) else None


def _joined(text: str, words: list[Word], first: int, last: int) -> bool:
    return all(not text[words[k].end : words[k + 1].start].strip(" \t\n>-\u2010\u2011") for k in range(first, last))


def merged(written: list[Found], spoken: list[Found]) -> list[Found]:
    """Return both in order of place; where two overlap the longer stands, the written one of two that are alike."""
    kept: list[Found] = []
    for one in sorted([*written, *spoken], key=lambda f: (f.start, -f.end)):
        if kept and one.start < kept[-1].end:
            if one.end - one.start > kept[-1].end - kept[-1].start:
                kept[-1] = one
            continue
        kept.append(one)
    return kept
