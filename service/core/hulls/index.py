"""The hull models made ready for looking up: parsed once, with exact keys, aliases and candidates by letter groups."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import NDArray

from service.core.hulls.ngrams import Trigrams
from service.core.hulls.parse import ParsedName, fold, parse_name
from service.core.hulls.vocabulary import YARD
from service.core.record import HullModel

_SAME_NUMBER = 24
_OTHER_NUMBER = 6
_ANY_NUMBER = 30
_MOST_EXACT = 40
_SHORT = 4


@dataclass(frozen=True, slots=True)
class Surface:
    """One way a model is written: its name or an alias, parsed, and the yard's words."""

    model: int
    name: ParsedName
    yard: tuple[str, ...]
    alias: str | None


@dataclass(frozen=True, eq=False)
class HullIndex:
    """Hull models for looking up by name; build anew where the models change."""

    models: tuple[HullModel, ...]
    surfaces: tuple[Surface, ...]
    numbers: NDArray[np.int32]  # of each surface, a place in number_ids; -1 without a number
    number_ids: dict[str, int]
    pointed: dict[str, tuple[int, ...]]  # digits, of numbers written with a point -> number ids
    keys: dict[str, tuple[int, ...]]  # exact key -> surfaces
    aliases: dict[str, tuple[int, ...]]  # folded alias -> surfaces
    grams: Trigrams

    @classmethod
    def build(cls, models: Sequence[HullModel]) -> Self:
        """Return the index of `models`; time and memory grow in line with their number."""
        surfaces = tuple(_surfaces(models))
        number_ids: dict[str, int] = {}
        numbers = np.full(len(surfaces), -1, np.int32)
        keys: dict[str, list[int]] = {}
        aliases: dict[str, list[int]] = {}
        pointed: dict[str, list[int]] = {}
        for place, surface in enumerate(surfaces):
            number = surface.name.number
            if number is not None:
                numbers[place] = number_ids.setdefault(number, len(number_ids))
                for digits in surface.name.digits if surface.name.pointed else ():
                    pointed.setdefault(digits, []).append(int(numbers[place]))
            for key in _keys(surface):
                keys.setdefault(key, []).append(place)
            if surface.alias is not None:
                aliases.setdefault(surface.alias, []).append(place)
        texts = [" ".join((*s.yard, *s.name.words, *s.name.suffix)) for s in surfaces]
        return cls(
            tuple(models), surfaces, numbers, number_ids, _frozen(pointed), _frozen(keys), _frozen(aliases),
            Trigrams.build(texts),
        )  # fmt: skip

    def candidates(self, name: ParsedName, extra: tuple[str, ...]) -> list[int]:
        """Return the surfaces worth scoring, best first: exact ones, then alike with the same number, then others."""
        exact = [
            *self.keys.get(name.key, ())[:_MOST_EXACT],
            *(p for key in _short_keys(name.words, name.number) for p in self.keys.get(key, ())[:_MOST_EXACT]),
        ]
        likeness = self.grams.likeness(" ".join((*name.builder, *name.words, *name.suffix, *extra)))
        if name.number is None:
            return _merged(exact, _best(likeness, _ANY_NUMBER))
        same = {self.number_ids.get(name.number, -1), *self.digits_like(name)}
        agrees = np.isin(self.numbers, np.array([*same, -1], np.int32))
        return _merged(
            exact,
            _best(np.where(agrees, likeness, 0.0), _SAME_NUMBER),
            _best(np.where(agrees, 0.0, likeness), _OTHER_NUMBER),
        )

    def digits_like(self, name: ParsedName) -> tuple[int, ...]:
        """Return the numbers written with the same digits once the point is gone (10.50 and 1050)."""
        if name.pointed:
            return tuple(self.number_ids[digits] for digits in name.digits if digits in self.number_ids)
        return tuple(i for digits in name.digits for i in self.pointed.get(digits, ()))


def _surfaces(models: Sequence[HullModel]) -> Iterator[Surface]:
    for place, model in enumerate(models):
        yard = tuple(fold(model.builder or "").split())
        yield Surface(place, _own_words(model.model, yard), yard, None)
        for alias in model.aliases:
            yield Surface(place, _own_words(alias, yard), yard, fold(alias))


def _own_words(text: str, yard: tuple[str, ...]) -> ParsedName:
    """Parse a model's name without its yard's words where others are left."""
    name = parse_name(text, ())
    if any(w in yard for w in name.words) and any(w not in yard for w in name.words):
        return parse_name(text, yard)
    return name


def _keys(surface: Surface) -> set[str]:
    number = surface.name.number
    return {surface.name.key, *_short_keys(surface.name.words, number), *_short_keys(surface.yard, number)}


def _short_keys(words: tuple[str, ...], number: str | None) -> set[str]:
    """Return the keys by which "HR 34" and "Hedda Rosenvik 34" meet: initials, and a short first word as it is."""
    own = [w for w in words if w not in YARD] or list(words)
    if number is None or not own:
        return set()
    short = {own[0]} if len(own[0]) <= _SHORT else set()
    return {f"^{key}|{number}" for key in ({"".join(w[0] for w in own)} if len(own) > 1 else set()) | short}


def _frozen(lists: dict[str, list[int]]) -> dict[str, tuple[int, ...]]:
    return {key: tuple(places) for key, places in lists.items()}


def _best(score: NDArray[np.float64], most: int) -> list[int]:
    """Return the places of the highest scores above 0, highest first, equal ones in order of place."""
    found = np.flatnonzero(score > 0)
    if found.size > most:
        least = np.partition(score[found], found.size - most)[found.size - most]
        found = found[score[found] >= least]
    return [int(i) for i in found[np.argsort(-score[found], kind="stable")][:most]]


def _merged(*lists: Iterable[int]) -> list[int]:
    return list(dict.fromkeys(place for places in lists for place in places))
