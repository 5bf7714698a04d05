"""One look into the index: which surfaces a name could mean, over all its parts as if they were one."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from service.core.hulls.ngrams import Codes, grams
from service.core.hulls.parse import ParsedName
from service.core.hulls.part import Part
from service.core.hulls.segment import Places
from service.core.hulls.surface import Surface, asked_forms, compared

_SAME_NUMBER = 20  # families and numbers, where the number is the one asked for
_ANY_NUMBER = 10  # families, where no number is asked for
_MOST_OF_A_FAMILY = 40
_MOST_OF_A_PAIR = 40
_MOST_EXACT = 40
_MOST_POSTINGS = 60_000  # reached from some hundred thousand models on
_FEWEST_GROUPS = 6
_NEAR = 2  # families of other numbers, to say what is near but not it
_NEAR_NUMBERS = 2


class _Found(NamedTuple):
    """A pair worth weighing. Sorts by worth, then by what it is called: not by where it stands."""

    unlike: float
    text: str
    number: str
    part: int
    pair: int


class Look:
    """What one name finds in the parts of an index."""

    def __init__(
        self,
        parts: tuple[Part, ...],
        texts: int,
        seen: Callable[[Codes], Codes],
        name: ParsedName,
        extra: tuple[str, ...],
    ) -> None:
        self._parts, self._name, self._extra = parts, name, extra
        text = compared((*name.builder, *name.words, *name.suffix, *extra))
        wanted = np.unique(grams([text])[1])
        often = seen(wanted)
        told = _rarest(often)
        rarity = np.log1p(texts / np.maximum(often[told], 1)) ** 2
        self._likeness = [part.segment.grams.likeness(wanted[told], rarity) for part in parts]

    def surfaces(self) -> Iterator[Surface]:
        """Return every surface worth weighing, once."""
        pairs = dict.fromkeys(
            [
                *self._exact(),
                *(self._same_number() if self._name.number else ()),
                *(self._any_number() if self._name.marked or not self._name.number else ()),
            ]
        )
        groups: dict[tuple[str, str], list[_Found]] = {}
        for one in pairs:
            groups.setdefault((one.text, one.number), []).append(one)
        for group in groups.values():
            alike = [surface for one in group for surface in self._parts[one.part].surfaces(one.pair)]
            if len(alike) > _MOST_OF_A_PAIR:
                alike.sort(key=lambda surface: (surface.id, surface.alias or ""))
            yield from alike[:_MOST_OF_A_PAIR]

    def _found(self, part: int, pairs: Places) -> list[_Found]:
        segment = self._parts[part].segment
        unlike = -self._likeness[part][segment.text[pairs]]
        return [
            _Found(u, segment.text_of[segment.text[pair]], segment.number_text[segment.number[pair]] or "", part, pair)
            for u, pair in zip(unlike.tolist(), pairs.tolist(), strict=True)
        ]

    def _exact(self) -> list[_Found]:
        """Return the pairs called just so, written in one word or in several, with their yard, or by initials."""
        name = self._name
        wanted = asked_forms(name, self._extra)
        found: list[_Found] = []
        for i, part in enumerate(self._parts):
            pairs = {int(p) for form in wanted for p in part.segment.keys.get((form, name.number))}
            found += self._found(i, part.living(np.array(sorted(pairs), np.int32)))
        return sorted(found)[:_MOST_EXACT]

    def _same_number(self) -> list[_Found]:
        found: list[_Found] = []
        for i, part in enumerate(self._parts):
            pairs = part.living(part.segment.pairs_of_numbers(part.segment.numbered(self._name)))
            found += self._best(i, pairs, _SAME_NUMBER)
        return [*_first(found, _SAME_NUMBER), *self._near()]

    def _any_number(self) -> list[_Found]:
        """Return the pairs of the families most alike, whatever their numbers."""
        found: list[_Found] = []
        for text in self._families(_ANY_NUMBER):
            found += sorted(self._pairs_of(text))[:_MOST_OF_A_FAMILY]
        return found

    def _near(self) -> list[_Found]:
        """Return the families most alike with the numbers nearest to the one asked for: none of them can be meant."""
        wanted = float(self._name.number or 0)
        found: list[_Found] = []
        for text in self._families(_NEAR):
            others = [one for one in self._pairs_of(text) if one.number not in ("", self._name.number)]
            near = sorted({(abs(float(one.number) - wanted), one.number) for one in others})[:_NEAR_NUMBERS]
            found += [one for one in others if one.number in {number for _, number in near}]
        return found

    def _families(self, most: int) -> list[str]:
        """Return the texts of the families most alike."""
        texts: list[tuple[float, str]] = []
        for part, likeness in zip(self._parts, self._likeness, strict=True):
            alive = likeness if part.text_lives is None else np.where(part.text_lives, likeness, 0.0)
            places = _highest(alive, most)
            texts += [(-float(alive[at]), part.segment.text_of[at]) for at in places.tolist()]
        return [text for _, text in sorted(set(texts))[:most]]

    def _pairs_of(self, text: str) -> Iterator[_Found]:
        for i, part in enumerate(self._parts):
            at = part.segment.texts.get(text)
            if at is not None:
                yield from self._found(i, part.living(part.segment.pairs_of_text(at)))

    def _best(self, part: int, pairs: Places, most: int) -> list[_Found]:
        likeness = self._likeness[part][self._parts[part].segment.text[pairs]]
        return self._found(part, pairs[_highest(likeness, most)])


def _rarest(often: Codes) -> Codes:
    """Return where the letter groups stand that tell most: the rarest, until what has them is enough to go through."""
    order = np.argsort(often, kind="stable")
    enough = np.cumsum(often[order]) <= _MOST_POSTINGS
    enough[:_FEWEST_GROUPS] = True
    return np.sort(order[enough])


def _highest(score: NDArray[np.float64], most: int) -> Places:
    """Return where the highest scores above 0 are, with all that equal the last of them."""
    found = np.flatnonzero(score > 0)
    if found.size > most:
        least = np.partition(score[found], found.size - most)[found.size - most]
        found = found[score[found] >= least]
    return found


def _first(found: Iterable[_Found], most: int) -> list[_Found]:
    """Return the best, as many as there are different texts and numbers among `most`."""
    kept: list[_Found] = []
    seen: set[tuple[str, str]] = set()
    for one in sorted(found):
        if (one.text, one.number) not in seen and len(seen) == most:
            break
        seen.add((one.text, one.number))
        kept.append(one)
    return kept
