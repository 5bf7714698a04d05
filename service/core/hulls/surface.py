"""One way a hull model is written, and what can say which of them a name could mean."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache
from typing import Protocol

from service.core.hulls.fold import fold
from service.core.hulls.parse import ParsedName, parse_name
from service.core.hulls.sound import sound
from service.core.hulls.vocabulary import CODES, KEPT_HULL, RIGS, TRIM, YARD
from service.core.record import HullModel

SHORT = 4
"""A first word of up to so many letters may stand for initials."""
_SHORT_WORD = 6
_BRACKETS = re.compile(r"[(\[][^()\[\]]*[)\]]")
_TELLING = CODES | KEPT_HULL | RIGS | TRIM


@dataclass(frozen=True, slots=True)
class Surface:
    """A model's name or an alias, parsed, with the yard's words and what else is weighed. Lengths in mm."""

    id: str
    name: ParsedName
    yard: tuple[str, ...]
    alias: str | None
    loa_mm: float | None
    beam_mm: float | None
    first_year: float | None
    last_year: float | None
    shaped: Callable[[], HullModel] = field(compare=False)


class Candidates(Protocol):
    """Anything that knows hull models: an index in memory, or a database that is asked."""

    def candidates(self, name: ParsedName, extra: tuple[str, ...], folded: frozenset[str]) -> Sequence[Surface]:
        """Return the surfaces worth weighing for a name, in any order.

        `extra` are the words of a builder said apart; `folded` the folded texts under which an alias would be known.
        Too many cost time, too few cost answers: what is left out is not known to exist.
        """
        ...


def surfaces_of(model: HullModel) -> Iterator[Surface]:
    """Return every way a model is written: its name, then its aliases."""
    for name, yard, alias in ways_of(model):
        yield Surface(
            model.id, name, yard, alias, model.loa_mm, model.beam_mm, model.first_year, model.last_year, lambda: model
        )


def ways_of(model: HullModel) -> Iterator[tuple[ParsedName, tuple[str, ...], str | None]]:
    """Return (parsed name, the yard's words, folded alias or None) of a model's name and its aliases.

    What a registry adds in brackets to tell namesakes apart, a designer or a yard, may be left out: such a name is
    written in two ways.
    """
    yard = _yard_words(model.builder or "")
    whole = _own_words(model.model, yard)
    yield whole, yard, None
    bare = _BRACKETS.sub(" ", model.model)
    if bare != model.model:
        short = _own_words(bare, yard)
        added = set(whole.suffix) - set(short.suffix)
        if _TELLING.isdisjoint(added) and all(len(w) >= SHORT for w in added) and _alike(whole, short):
            yield short, yard, None
    for alias in model.aliases:
        yield _own_words(alias, yard), yard, fold(alias)


def _alike(whole: ParsedName, short: ParsedName) -> bool:
    """Say whether two ways of writing have the same words, number and generation."""
    parts = (whole.words, whole.number, whole.generation, whole.others)
    return parts == (short.words, short.number, short.generation, short.others) and whole.suffix != short.suffix


@lru_cache(4096)
def _yard_words(builder: str) -> tuple[str, ...]:
    return tuple(fold(builder).split())


def _own_words(text: str, yard: tuple[str, ...]) -> ParsedName:
    """Parse a model's name without its yard's words where others are left."""
    name = parse_name(text, ())
    if any(w in yard for w in name.words) and any(w not in yard for w in name.words):
        name = parse_name(text, yard)
    behind = tuple(w for w in name.suffix if w not in yard or len(w) < SHORT)
    return name if behind == name.suffix else replace(name, suffix=behind)


def own(words: Sequence[str]) -> tuple[str, ...]:
    """Return the words without what any yard calls itself by, or all where nothing else is left; each once."""
    return tuple(dict.fromkeys(w for w in words if w not in YARD)) or tuple(dict.fromkeys(words))


def compared(words: Sequence[str]) -> str:
    """Return words as the text that is compared by its letter groups."""
    return " ".join(own(words))


def asked_forms(name: ParsedName, extra: tuple[str, ...]) -> list[str]:
    """Return the forms under which what a name means could be met exactly; `extra` is a builder said apart."""
    said = {"".join(w) for w in (name.words, own(name.words), (*name.builder, *name.words), own(extra))}
    said |= {"".join((*own(extra), *name.words)), "".join((*name.words, *name.suffix))}
    short = {*initials(name.words), *initials(extra), *(s for s in said if len(s) <= SHORT)}
    return sorted({s for s in said if s} | {f"^{s}" for s in short if s} | shaken((*name.words, *extra)))


def forms(yard: Sequence[str], words: Sequence[str]) -> set[str]:
    """Return the texts under which a yard's model can be met exactly: glued, by initials, and by its short words."""
    maker, named = own(yard), own(words)
    glued = {"".join(words), "".join(named), "".join((*maker, *named)), "".join((*maker[:1], *named))}
    if set(words) <= set(yard) or "".join(words) in initials(yard):
        glued |= {"".join(maker), "".join(yard)}
    short = {f"^{form}" for form in (*initials(yard), *initials(words))}
    return {form for form in glued if form} | short | shaken(named or maker)


def shaken(words: Sequence[str]) -> set[str]:
    """Return what of short words a slip leaves alone, for they share too few letter groups: sound, and letters sorted."""
    short = [w for w in words if SHORT <= len(w) <= _SHORT_WORD]
    return {f"~{''.join(sorted(w))}" for w in short} | {f"%{sound(w)}" for w in short}


def initials(words: Sequence[str]) -> set[str]:
    """Return the initials of several words, and a short first word as it is: "HR" for "Hedda Rosenvik" and "HR"."""
    mine = own(words)
    short = {mine[0]} if mine and len(mine[0]) <= SHORT else set()
    return short | ({"".join(w[0] for w in mine)} if len(mine) > 1 else set())
