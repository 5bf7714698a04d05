"""Hull models that may be one and the same, written down twice: for a person to look at."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from service.core.hulls import Candidates, HullCandidate, HullIndex, ParsedName, Surface, resolve
from service.core.record import HullModel
from service.core.registry import Cell, differs
from service.flow.import_report import Advance, silent
from service.flow.merge_hulls import standing
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Duplicate:
    """A pair that would be taken for each other if the other were not there; and where they say different things."""

    one: HullModel
    other: HullModel
    probability: float
    why: str
    differs: tuple[tuple[str, Any, Any], ...]


@dataclass(frozen=True)
class _Without:
    """All hull models but one."""

    known: Candidates
    left_out: str

    def candidates(self, name: ParsedName, extra: tuple[str, ...], folded: frozenset[str]) -> Sequence[Surface]:
        """Return what the others would offer."""
        return [s for s in self.known.candidates(name, extra, folded) if s.id != self.left_out]


@dataclass(frozen=True)
class _Seen:
    probability: float
    alias: bool
    why: str


def find_duplicates(uow: UnitOfWork, *, progress: Advance = silent) -> tuple[Duplicate, ...]:
    """Return the pairs that may be one hull model, likeliest first.

    Each model's own name, years and measures are looked up among the others, as a stranger's would be: a pair is
    proposed where each is taken for the other, or one's name is an alias of the other. What somebody said are two is
    left out. The work grows with the number of models, not of pairs: only what the index offers is looked at.
    """
    with uow:
        models, distinct = uow.hulls.all(), uow.hulls.distinct()
        apart = uow.hulls.survivors()
    two = {_pair(apart.get(one, one), apart.get(other, other)) for one, other in distinct}
    index = HullIndex.build(models)
    by_id, seen = {hull.id: hull for hull in models}, dict[tuple[str, str], _Seen]()
    for hull in models:
        for found in _taken_for(index, hull):
            reasons = ", ".join(e.why for e in found.saw if e.score > 0 and not e.why.startswith("neither"))
            by_alias = any(e.about == "alias" for e in found.saw)
            seen[hull.id, found.model.id] = _Seen(found.probability, by_alias, reasons)
        progress(1)
    pairs = {_pair(*key) for key, one in seen.items() if one.alias or key[::-1] in seen} - two
    proposed = [_duplicate(by_id, pair, seen) for pair in pairs]
    return tuple(sorted(proposed, key=lambda d: (-d.probability, d.one.id, d.other.id)))


def kept_duplicates(uow: UnitOfWork) -> tuple[Duplicate, ...]:
    """Return the same, found anew only when anybody changed the registry since."""
    with uow:
        return uow.kept.get("duplicate hulls", uow.hulls.log.mark(), lambda: find_duplicates(uow))


def say_distinct(uow: UnitOfWork, one: str, other: str, *, who: str, why: str) -> int | None:
    """Remember that two hull models are two, whatever they look like, and commit. None where that was known."""
    with uow:
        first, second = standing(uow, one), standing(uow, other)
        if first.id == second.id:
            raise Refused(f"{one!r} and {other!r} are one hull model; unmerge them first")
        cell = Cell("distinct", _pair(first.id, second.id), None, [who, uow.now().isoformat(), why])
        if uow.hulls.present(cell) is not None:
            return None
        number = uow.hulls.change("distinct", [cell], who=who, why=why)
        uow.commit()
    return number


def _pair(one: str, other: str) -> tuple[str, str]:
    return (one, other) if one < other else (other, one)


def _taken_for(index: HullIndex, hull: HullModel) -> Iterator[HullCandidate]:
    """Return what a model would be taken for if it were not there itself, and everything it could be."""
    found = resolve(
        _Without(index, hull.id),
        hull.model,
        builder=hull.builder,
        year=hull.first_year or hull.last_year,
        loa_mm=hull.loa_mm,
        beam_mm=hull.beam_mm,
    )
    if found.model is not None:
        yield HullCandidate(model=found.model, probability=found.probability, saw=found.saw)
    if found.status != "unknown":
        yield from found.alternatives


def _duplicate(by_id: dict[str, HullModel], pair: tuple[str, str], seen: dict[tuple[str, str], _Seen]) -> Duplicate:
    best = max((seen[key] for key in (pair, pair[::-1]) if key in seen), key=lambda one: one.probability)
    one, other = by_id[pair[0]], by_id[pair[1]]
    return Duplicate(one, other, best.probability, best.why, tuple(differs(one, other)))
