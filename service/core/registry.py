"""What is done to the registry of hull models: each change is made of cells, with what stood there before and after."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Literal

from service.core.record import HullModel

Of = Literal["model", "made", "alias", "distinct", "record"]
Kind = Literal["import", "alias", "merge", "split", "distinct", "undo"]
FIELDS = tuple(name for name in HullModel.model_fields if name not in ("id", "aliases"))
"""What a hull model says of itself."""


@dataclass(frozen=True)
class Cell:
    """One thing that a change touched, and its value before and after.

    model: key (id, field), the field's value; `merged_into` and `retired` are fields too. made: key ids of models that
    were added, False -> True. alias: key (id, alias), None or (who, when, why). distinct: key two ids in order, the
    same. record: key (reference,), the id of its hull model.
    """

    of: Of
    key: tuple[str, ...]
    before: Any
    after: Any

    def turned(self) -> Cell:
        """Return the cell that takes this one back."""
        return Cell(self.of, self.key, self.after, self.before)

    def ids(self) -> set[str]:
        """Return the hull models it concerns."""
        if self.of in ("made", "distinct"):
            return set(self.key)
        named = {self.before, self.after} - {None} if self.of == "record" or self.key[-1] == "merged_into" else set()
        return {str(name) for name in named} | (set() if self.of == "record" else {self.key[0]})


@dataclass(frozen=True)
class HullChange:
    """One change: which number, who, when, why, what was done; `undoes` is the number of the change it took back."""

    number: int
    at: datetime
    who: str
    why: str
    kind: Kind
    undoes: int | None
    cells: tuple[Cell, ...]


def in_effect(number: int, undone_by: Mapping[int, Iterable[int]]) -> bool:
    """Say whether a change still holds: nobody took it back, or whoever did was taken back himself.

    >>> in_effect(1, {}), in_effect(1, {1: [2]}), in_effect(1, {1: [2], 2: [3]})
    (True, False, True)
    """
    return not any(in_effect(later, undone_by) for later in undone_by.get(number, ()))


def survivors(merged_into: Mapping[str, str]) -> dict[str, str]:
    """Return for each merged model the one that stands for it in the end. ValueError where they go in a circle.

    >>> survivors({"a": "b", "b": "c"})
    {'a': 'c', 'b': 'c'}
    """
    found = {}
    for start in merged_into:
        seen, at = {start}, merged_into[start]
        while at in merged_into:
            if at in seen:
                raise ValueError(f"{start} would be merged into itself")
            seen.add(at)
            at = merged_into[at]
        if at in seen:
            raise ValueError(f"{start} would be merged into itself")
        found[start] = at
    return found


def with_family(model: HullModel, merged: Iterable[HullModel]) -> HullModel:
    """Return a model that also answers to the names and aliases of those that were merged into it."""
    names = [*model.aliases]
    for other in merged:
        names += [other.model, *([str(other)] if other.builder != model.builder else []), *other.aliases]
    own = {model.model, str(model)}
    return model.model_copy(update={"aliases": tuple(name for name in dict.fromkeys(names) if name not in own)})


def fills(into: HullModel, other: HullModel) -> list[Cell]:
    """Return the cells in which a model says nothing and the one merged into it does. Years go together."""
    found = []
    for name in FIELDS:
        mine, theirs = getattr(into, name), getattr(other, name)
        if mine is None and theirs is not None and name not in ("first_year", "last_year", "builder"):
            found.append(Cell("model", (into.id, name), None, theirs))
    return found


def differs(into: HullModel, other: HullModel) -> list[tuple[str, Any, Any]]:
    """Return (field, what stands, what the other says) where both say something, and not the same."""
    pairs = [(name, getattr(into, name), getattr(other, name)) for name in FIELDS]
    return [(name, mine, theirs) for name, mine, theirs in pairs if None not in (mine, theirs) and mine != theirs]
