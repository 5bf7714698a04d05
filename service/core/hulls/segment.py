"""A part of the registry made ready for looking up, in arrays: built once, never changed.

Models that are written with the same words are one *family*: "Corrin 31", "Corrin 31 Mk II" and "Corrin 34" of one
yard. Words are compared by family, of which there are several times fewer than models; a family with a number is a
*pair*, and holds the surfaces that differ in what follows the number.
"""

from __future__ import annotations

from array import array
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple, Self

import numpy as np
from numpy.typing import NDArray

from service.core.hulls.columns import Columns
from service.core.hulls.fold import bare_number
from service.core.hulls.ngrams import Trigrams
from service.core.hulls.parse import ParsedName
from service.core.hulls.surface import Surface, compared, forms, ways_of
from service.core.hulls.vocabulary import CODES
from service.core.record import HullModel

Places = NDArray[np.signedinteger]
_LONG = 4


class Family(NamedTuple):
    """The words models are written with: the yard's, those of the yard within the name, its own, long ones behind."""

    yard: tuple[str, ...]
    builder: tuple[str, ...]
    words: tuple[str, ...]
    behind: tuple[str, ...]

    @property
    def text(self) -> str:
        """Return what a name's words are compared with."""
        return compared((*self.yard, *self.words, *self.behind))


class Tail(NamedTuple):
    """What tells surfaces of one family and number apart."""

    written: str | None
    generation: int | None
    suffix: tuple[str, ...]
    others: tuple[str, ...]
    year: int | None
    marked: bool
    alias: str | None


@dataclass(frozen=True, eq=False)
class Segment:
    """Hull models by family and number. Surfaces run by pair, pairs by family."""

    models: Columns
    families: tuple[Family, ...]
    numbers: dict[str | None, int]
    digits: dict[str, tuple[int, ...]]  # digits without the point, of numbers written with one -> numbers
    tails: tuple[Tail, ...]
    model: Places  # of each surface
    tail: Places  # of each surface
    starts: Places  # pair p's surfaces: starts[p]:starts[p + 1]
    family: Places  # of each pair
    number: Places  # of each pair
    by_number: Places  # number n's pairs: by_number[number_starts[n]:number_starts[n + 1]]
    number_starts: Places
    keys: _Hashed  # (form, number) -> pairs
    aliases: _Hashed  # folded alias -> surfaces
    texts: dict[str, int]  # different texts of families, by place in grams
    text: Places  # of each pair
    by_text: Places  # text t's pairs: by_text[text_starts[t]:text_starts[t + 1]]
    text_starts: Places
    grams: Trigrams

    @classmethod
    def build(cls, models: Iterable[HullModel]) -> Self:
        """Return the segment of `models`; time and memory grow in line with their number."""
        read = _Reader()
        for model in models:
            read.take(model)
        number, family = np.array(read.number, np.intp), np.array(read.family, np.intp)
        order = np.lexsort((number, family))
        number, family, tail = number[order], family[order], np.array(read.tail, np.intp)[order]
        first = np.ones(order.size, bool)
        first[1:] = (number[1:] != number[:-1]) | (family[1:] != family[:-1])
        begins = np.flatnonzero(first)
        number, family = number[begins], family[begins]
        by_number = np.argsort(number, kind="stable")
        families, numbers, tails = tuple(read.families), tuple(read.numbers), tuple(read.tails)
        texts: dict[str, int] = {}
        text = np.array([texts.setdefault(one.text, len(texts)) for one in families], np.int32)
        by_text = np.argsort(text[family], kind="stable")
        return cls(
            models=read.models,
            families=families,
            numbers=read.numbers,
            digits=_digits(tails, read.numbers),
            tails=tails,
            model=np.array(read.model, np.int32)[order].astype(np.int32),
            tail=tail.astype(np.int32),
            starts=np.append(begins, order.size).astype(np.int32),
            family=family.astype(np.int32),
            number=number.astype(np.int32),
            by_number=by_number.astype(np.int32),
            number_starts=np.searchsorted(number[by_number], np.arange(len(numbers) + 1)),
            keys=_Hashed.build(_keys(families, numbers, family, number)),
            aliases=_Hashed.build((a, i) for i, t in enumerate(tail.tolist()) if (a := tails[t].alias) is not None),
            texts=texts,
            text=text[family],
            by_text=by_text.astype(np.int32),
            text_starts=np.searchsorted(text[family][by_text], np.arange(len(texts) + 1)),
            grams=Trigrams.build(tuple(texts)),
        )

    @cached_property
    def place_of(self) -> dict[str, int]:
        """Return each model's place by its id; the last where an id comes twice."""
        return {hull_id: place for place, hull_id in enumerate(self.models.ids())}

    def numbered(self, name: ParsedName) -> list[int]:
        """Return the numbers a name's number could be: it, none, and those of the same digits but for the point."""
        found = {self.numbers[n] for n in (name.number, None) if n in self.numbers}
        for digits in name.digits:
            if name.pointed:
                found |= {self.numbers[digits]} if digits in self.numbers else set()
            else:
                found.update(self.digits.get(digits, ()))
        return sorted(found)

    def pairs_of_numbers(self, numbers: Iterable[int]) -> Places:
        """Return every pair with one of the numbers."""
        of = [self.by_number[self.number_starts[n] : self.number_starts[n + 1]] for n in numbers]
        return np.concatenate(of) if of else np.empty(0, np.int32)

    def pairs_of_text(self, text: int) -> Places:
        """Return every pair of the families with one text."""
        return self.by_text[self.text_starts[text] : self.text_starts[text + 1]]

    def surface(self, place: int, pair: int) -> Surface:
        """Return one surface, made whole again."""
        family, tail = self.families[self.family[pair]], self.tails[self.tail[place]]
        model, said = int(self.model[place]), self.models.said
        number = self.number_text[self.number[pair]]
        name = ParsedName(
            "",
            family.builder,
            family.words,
            number,
            tail.written,
            tail.generation,
            tail.suffix,
            tail.others,
            tail.year,
            tail.marked,
        )
        return Surface(
            self.models.id(model), name, family.yard, tail.alias, said(model, "loa_mm"), said(model, "beam_mm"),
            said(model, "first_year"), said(model, "last_year"), lambda: self.models.shaped(model),
        )  # fmt: skip

    @cached_property
    def text_of(self) -> tuple[str, ...]:
        """Return the families' texts, by place."""
        return tuple(self.texts)

    @cached_property
    def number_text(self) -> tuple[str | None, ...]:
        """Return the numbers as texts, by place."""
        return tuple(self.numbers)


@dataclass(frozen=True, eq=False)
class _Hashed:
    """Places by what they are called, through hashes: two that share one are both returned, and weighed apart later."""

    hashes: NDArray[np.int64]
    places: Places

    @classmethod
    def build(cls, named: Iterable[tuple[object, int]]) -> Self:
        hashes, places = array("q"), array("i")
        for name, place in named:
            hashes.append(hash(name))
            places.append(place)
        order = np.argsort(np.array(hashes, np.int64), kind="stable")
        return cls(np.array(hashes, np.int64)[order], np.array(places, np.int32)[order])

    def get(self, name: object) -> Places:
        """Return the places called `name`."""
        wanted = hash(name)
        return self.places[np.searchsorted(self.hashes, wanted) : np.searchsorted(self.hashes, wanted, "right")]


class _Reader:
    """What is gathered of each model while they pass by."""

    def __init__(self) -> None:
        self.models = Columns()
        self.families: dict[Family, int] = {}
        self.numbers: dict[str | None, int] = {}
        self.tails: dict[Tail, int] = {}
        self.model, self.family, self.number, self.tail = array("i"), array("i"), array("i"), array("i")

    def take(self, model: HullModel) -> None:
        place = len(self.models)
        self.models.add(model)
        for name, yard, alias in ways_of(model):
            behind = tuple(w for w in name.suffix if len(w) >= _LONG and w not in CODES)
            family = Family(yard, name.builder, name.words, behind)
            tail = Tail(name.written, name.generation, name.suffix, name.others, name.year, name.marked, alias)
            self.model.append(place)
            self.family.append(self.families.setdefault(family, len(self.families)))
            self.number.append(self.numbers.setdefault(name.number, len(self.numbers)))
            self.tail.append(self.tails.setdefault(tail, len(self.tails)))


def _digits(tails: Iterable[Tail], numbers: dict[str | None, int]) -> dict[str, tuple[int, ...]]:
    found: dict[str, set[int]] = {}
    for written in {tail.written for tail in tails if "." in (tail.written or "")}:
        name = ParsedName("", written=written, number=bare_number(written or ""))
        for digits in name.digits:
            found.setdefault(digits, set()).add(numbers[name.number])
    return {digits: tuple(sorted(places)) for digits, places in found.items()}


def _keys(
    families: tuple[Family, ...], numbers: tuple[str | None, ...], family: Places, number: Places
) -> Iterator[tuple[object, int]]:
    """Return ((form, number), pair) for all forms of every pair; pairs run by family."""
    last, met = -1, set[str]()
    for pair, (f, n) in enumerate(zip(family.tolist(), number.tolist(), strict=True)):
        if f != last:
            last, met = f, forms(families[f].yard, families[f].words)
        for form in met:
            yield (form, numbers[n]), pair
