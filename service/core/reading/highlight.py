"""The letter's text parted at the words that values were taken from, for whoever shows them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from service.core.reading.shape import Evidence, Reading


@dataclass(frozen=True)
class Piece:
    """A stretch of the text; `numbers`: the witnesses it belongs to, none for words that gave no value."""

    text: str
    numbers: tuple[int, ...] = ()
    ends: tuple[int, ...] = ()
    """The witnesses whose words end with this piece: where their number is set."""


@dataclass(frozen=True)
class Witness:
    """Words at one place of the text, numbered from 1 in reading order, and what was taken from them."""

    number: int
    start: int
    end: int
    values: tuple[Evidence, ...]


def witnesses(reading: Reading) -> tuple[Witness, ...]:
    """Return the places that gave values; several values of the same words share one number."""
    by_place: dict[tuple[int, int], list[Evidence]] = {}
    for one in reading.evidence:
        if one.end > one.start:
            by_place.setdefault((one.start, one.end), []).append(one)
    places = sorted(by_place)
    return tuple(Witness(n, *place, tuple(by_place[place])) for n, place in enumerate(places, start=1))


def pieces(text: str, seen: Sequence[Witness]) -> tuple[Piece, ...]:
    """Part the text at the beginnings and ends of all witnesses; joined again the pieces are the text.

    >>> from service.core.reading.shape import Evidence
    >>> [p.text for p in pieces("top 98 cm up", [Witness(1, 4, 9, ())])]
    ['top ', '98 cm', ' up']
    """
    cuts = sorted({0, len(text), *(w.start for w in seen), *(w.end for w in seen)})
    opens: dict[int, list[int]] = {}
    closes: dict[int, list[int]] = {}
    for one in seen:
        opens.setdefault(one.start, []).append(one.number)
        closes.setdefault(one.end, []).append(one.number)
    found: list[Piece] = []
    inside: list[int] = []
    for low, high in pairwise(cuts):
        inside = [n for n in inside if n not in closes.get(low, ())] + opens.get(low, [])
        found.append(Piece(text[low:high], tuple(inside), tuple(closes.get(high, ()))))
    return tuple(found)
