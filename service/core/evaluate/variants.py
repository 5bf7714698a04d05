"""Queries made of a registry's own names, the way people write them, and of models taken out of it."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator, Sequence

from service.core.evaluate.names import NameQuery, has_sibling
from service.core.hulls import parse_name
from service.core.record import HullModel

ROMAN = {"2": "II", "3": "III", "4": "IV"}
TAKEN_OUT = 5
"""Every so manieth model is taken out in turn, and asked for as one that is not known."""
_LONG = 4


def of_known(models: Sequence[HullModel]) -> list[NameQuery]:
    """Return queries for models that are in the registry: their aliases, and their names written in other ways."""
    return [query for model in models for query in (*_aliases(model), *_ways(model))]


def of_absent(models: Sequence[HullModel]) -> Iterator[tuple[list[HullModel], list[NameQuery]]]:
    """Give registries with some models taken out, and queries for those, each marked where a numbered sibling stays."""
    for turn in range(min(TAKEN_OUT, len(models))):
        out = [model for n, model in enumerate(models) if n % TAKEN_OUT == turn]
        kept = [model for n, model in enumerate(models) if n % TAKEN_OUT != turn]
        yield kept, [_absent(model, kept) for model in out if not _shares_name(model, kept)]


def bare(models: Sequence[HullModel]) -> list[HullModel]:
    """Return the models without aliases, as if nobody had ever decided."""
    return [model.model_copy(update={"aliases": ()}) for model in models]


def _absent(model: HullModel, kept: Sequence[HullModel]) -> NameQuery:
    """Ask for a model that was taken out. Another version of it (Mk II, a trim) is no numbered sibling."""
    mine = parse_name(model.model, ())
    version = any(
        (other.words, other.number) == (mine.words, mine.number)
        for other in (parse_name(one.model, ()) for one in kept)
    )
    family = "not known, another version is" if version else "not known"
    sibling = not version and has_sibling(model, kept)
    return NameQuery(str(model), frozenset(), loa_mm=model.loa_mm, family=family, sibling=sibling)


def _shares_name(model: HullModel, kept: Sequence[HullModel]) -> bool:
    return any(other.model.casefold() == model.model.casefold() for other in kept)


def _aliases(model: HullModel) -> Iterator[NameQuery]:
    for alias in model.aliases:
        yield NameQuery(alias, frozenset({model.id}), family="alias, as if nobody had said so")


def _ways(model: HullModel) -> Iterator[NameQuery]:
    wanted, name = frozenset({model.id}), model.model
    yield NameQuery(name.upper(), wanted, family="capitals")
    yield NameQuery(re.sub(r"\s+", "", name), wanted, builder=model.builder, family="glued")
    yield NameQuery(_plain(str(model)), wanted, loa_mm=model.loa_mm, family="without accents, with length")
    if model.builder:
        yield NameQuery(name, wanted, builder=model.builder.split()[0][:4], family="builder cut short")
    for written in {_roman(name), _arabic(name)} - {name}:
        yield NameQuery(written, wanted, loa_mm=model.loa_mm, family="generation written the other way")
    slip = _slip(name)
    if slip != name:
        yield NameQuery(slip, wanted, loa_mm=model.loa_mm, family="two letters swapped")


def _plain(text: str) -> str:
    return "".join(c for c in unicodedata.normalize("NFKD", text) if not unicodedata.combining(c))


def _roman(name: str) -> str:
    return re.sub(r"\bMk\s*([234])\b", lambda m: f"Mk {ROMAN[m[1]]}", name, flags=re.IGNORECASE)


def _arabic(name: str) -> str:
    back = {roman: number for number, roman in ROMAN.items()}
    return re.sub(r"\b(Mk\s+)?(II|III|IV)\b", lambda m: f"Mk {back[m[2]]}", name)


def _slip(name: str) -> str:
    """Swap the second and third letters of the first long word."""
    for word in name.split():
        if len(word) >= _LONG and word.isalpha() and word[1] != word[2]:
            return name.replace(word, word[0] + word[2] + word[1] + word[3:], 1)
    return name
