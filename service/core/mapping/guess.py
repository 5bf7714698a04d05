"""Headings of somebody's own table -> the columns of records they most likely stand for, with how sure that is.

Evidence: the column's own name, the words lists and letters have for it in nine languages, the unit the heading names,
and what stands in the cells. Each column is given to one heading, the surest first; what nothing speaks for is kept.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from rapidfuzz import fuzz

from service.core import units
from service.core.mapping.dates import formats_of
from service.core.mapping.headings import Heading, read_heading
from service.core.mapping.words import CONCEPTS, PHRASES, VALUES
from service.core.reading.lexis import fold, words_of
from service.core.reading.words import MATCHERS

LEAST = 0.62
"""Below it no guess is made."""
DIMENSIONS: dict[str, units.Dimension] = {"mm": "length", "deg": "angle", "kg": "mass"}
_EXACT, _NAMED, _LAST, _CONCEPTS, _MORE = 0.97, 0.99, 0.84, 0.9, 0.75
_FUZZY_FROM = 0.84
_SHORTEST_FUZZY = 4
_HALF = 0.5


@dataclass(frozen=True)
class Target:
    """A column a heading may stand for: name, kind (text, number, whole, flag, date, ...) and the words it takes."""

    name: str
    kind: str
    words: tuple[str, ...] = ()

    @property
    def dimension(self) -> units.Dimension | None:
        """What its numbers measure; None where they are no quantity."""
        return DIMENSIONS.get(self.name.rpartition("_")[2]) if self.kind == "number" else None


@dataclass(frozen=True)
class Seen:
    """A heading and some of the cells under it."""

    heading: str
    samples: tuple[str, ...] = ()


@dataclass(frozen=True)
class Guess:
    """What a heading stands for (None: nothing is likely), 0 to 1 how sure, the unit and the date formats found.

    `values` says for each word in the cells that is none of the column's own what it stands for, "" where unknown.
    """

    heading: str
    to: str | None = None
    sure: float = 0.0
    unit: str | None = None
    formats: tuple[str, ...] = ()
    values: Mapping[str, str] | None = None


def guess(seen: Sequence[Seen], targets: Sequence[Target]) -> tuple[Guess, ...]:
    """Return a guess for each heading, in order. No column is guessed twice."""
    scored = sorted(
        ((_score(one, target), -at, target) for at, one in enumerate(seen) for target in targets),
        key=lambda found: (-found[0], -found[1], found[2].name),
    )
    best = dict[int, tuple[float, Target]]()
    second = dict[int, float]()
    taken = set[str]()
    for score, place, target in scored:
        if score < LEAST:
            break
        at = -place
        if at in best:
            second.setdefault(at, score)
        elif target.name not in taken:
            best[at] = (score, target)
            taken.add(target.name)
    return tuple(
        _told(one, best[at][1], _sureness(best[at][0], second.get(at, 0.0))) if at in best else Guess(one.heading)
        for at, one in enumerate(seen)
    )


def _sureness(score: float, second: float) -> float:
    """Return less where another column would do nearly as well."""
    return round(score if second < score - 0.1 else score - 0.25 * (second - score + 0.1) / 0.1 * score, 2)


def _told(seen: Seen, target: Target, sure: float) -> Guess:
    heading = read_heading(seen.heading)
    fits = heading.unit is not None and heading.unit.dimension == target.dimension
    values = None
    if target.words or target.kind == "flag":
        own = set(target.words)
        said = dict.fromkeys(text.strip() for text in seen.samples if text.strip() and text.strip() not in own)
        values = {text: value_of(target, text) or "" for text in list(said)[:30]}
    return Guess(
        seen.heading,
        target.name,
        sure,
        unit=heading.unit.symbol if fits and heading.unit else None,
        formats=formats_of([text for text in seen.samples if text.strip()]) if target.kind == "date" else (),
        values=values,
    )


def value_of(target: Target, text: str) -> str | None:
    """Return what a word in a cell stands for in this column; None where that is not known."""
    folded = _folded(text)
    if folded in {_folded(word) for word in target.words}:
        return next(word for word in target.words if _folded(word) == folded)
    for value, phrases in VALUES.get(target.name, {}).items():
        if folded in {_folded(phrase) for phrase in phrases.split("|")}:
            return value
    return None


def _score(seen: Seen, target: Target) -> float:
    heading = _heading(seen.heading)
    if heading.unit is not None and target.dimension != heading.unit.dimension:
        if target.dimension is not None:
            return 0.0
        heading = Heading(_folded(seen.heading))  # the last word was no unit after all
    score = max(_by_name(seen.heading, heading, target), _by_phrase(heading, target), _by_concept(heading, target))
    return score * _cells_agree(seen.samples, target) if score >= LEAST else 0.0


@cache
def _heading(text: str) -> Heading:
    return read_heading(text)


@cache
def _folded(text: str) -> str:
    return " ".join(fold(word) for word in re.split(r"[\W_]+", text) if word)


def _by_name(written: str, heading: Heading, target: Target) -> float:
    if written.strip().casefold() == target.name:
        return 1.0
    full = _folded(target.name)
    bare = full.rpartition(" ")[0] if target.dimension else full
    if heading.words in (full, bare) or _folded(written) == full:
        return _NAMED
    last = _folded(target.name.rpartition(".")[2])
    last = last.rpartition(" ")[0] if target.dimension else last
    return _LAST if heading.words == last else 0.0


@cache
def _phrases(name: str) -> tuple[str, ...]:
    return tuple(_folded(phrase) for phrase in PHRASES.get(name, "").split("|") if phrase)


def _by_phrase(heading: Heading, target: Target) -> float:
    words = heading.words
    best = 0.0
    for phrase in _phrases(target.name):
        if words == phrase:
            return _EXACT
        if min(len(words), len(phrase)) >= _SHORTEST_FUZZY:
            likeness = max(fuzz.ratio(words, phrase), fuzz.token_sort_ratio(words, phrase)) / 100
            best = max(best, likeness * 0.93 if likeness >= _FUZZY_FROM else 0.0)
    return best


def _by_concept(heading: Heading, target: Target) -> float:
    wanted = CONCEPTS.get(target.name)
    if wanted is None:
        return 0.0
    best = 0.0
    for concepts, rest in _meant(heading.words):
        for together in wanted.split("|"):
            needed = frozenset(together.split())
            if needed <= concepts:
                spare = len(concepts - needed)
                whole = _CONCEPTS if not rest and not spare else _MORE
                best = max(best, whole + 0.02 * len(needed) - 0.03 * spare)
    return best


@cache
def _meant(words: str) -> tuple[tuple[frozenset[str], bool], ...]:
    """Return for each language what concepts the words mean in it, and whether words are left over."""
    found = []
    for matcher in MATCHERS.values():
        marks = [mark for mark in matcher.marks(words, words_of(words)) if mark.concept in _USED]
        if marks:
            covered = sum(mark.end - mark.start for mark in {(m.start, m.end): m for m in marks}.values())
            found.append((frozenset(mark.concept for mark in marks), covered < len(words.replace(" ", "")) - 3))
    return tuple(found)


_USED = frozenset(concept for sets in CONCEPTS.values() for part in sets.split("|") for concept in part.split())


def _cells_agree(samples: Iterable[str], target: Target) -> float:
    """Return 1 where what stands in the cells could be such values, less where it could not."""
    said = [text.strip() for text in samples if text.strip()]
    if not said:
        return 1.0
    good = sum(_could_be(text, target) for text in said) / len(said)
    return 1.0 if good > _HALF else 0.6 + 0.4 * good


def _could_be(text: str, target: Target) -> bool:
    if target.kind in ("number", "whole"):
        return bool(re.search(r"\d", text)) and (target.kind == "number" or bool(re.fullmatch(r"\d{1,6}(\.0)?", text)))
    if target.words or target.kind == "flag":
        return value_of(target, text) is not None
    if target.kind in ("date", "time"):
        return bool(re.search(r"\d{4}|\d\d[./-]\d\d", text))
    if target.kind in ("list", "map"):
        return text[:1] in "[{"
    return True
