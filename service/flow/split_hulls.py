"""One hull model turned out to be two: records and aliases move into a new one, or back into one that is there."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from service.core.record import HullModel
from service.core.registry import Cell
from service.core.words import nearest
from service.flow.merge_hulls import standing
from service.flow.refusal import Refused
from service.flow.undo_hulls import move_records
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Into:
    """Where things move: `hull`, the id of a model that is there, or else a new one of this name."""

    hull: str | None = None
    model: str | None = None
    builder: str | None = None


@dataclass(frozen=True)
class SplitHull:
    """What moved, from which model into which (`fresh`: it is new), and the change's number; None in a preview."""

    source: HullModel
    into: HullModel
    fresh: bool
    records: tuple[str, ...]
    aliases: tuple[str, ...]
    number: int | None


def split_hull(
    uow: UnitOfWork,
    hull_id: str,
    into: Into,
    *,
    records: Sequence[str] = (),
    aliases: Sequence[str] = (),
    who: str,
    why: str,
    preview: bool = False,
) -> SplitHull:
    """Move records and aliases from one hull model into another and commit; each record gets a revision that says so.

    Refused where something is not there, or is not the model's.
    """
    with uow:
        source = standing(uow, hull_id)
        if not records and not aliases:
            raise Refused("nothing was named to be moved; name records, aliases or both")
        target = _target(uow, source, into)
        family = uow.hulls.family(source.id)
        cells = [*_records(uow, source, family, records, target.id), *_aliases(uow, source, family, aliases, target.id)]
        number = None
        if not preview:
            if into.hull is None:
                cells.insert(0, uow.hulls.create(target, who=who, why=why))
            move_records(uow, cells, who=who, why=why)
            number = uow.hulls.change("split", cells, who=who, why=why)
            uow.commit()
    return SplitHull(source, target, into.hull is None, tuple(records), tuple(aliases), number)


def _target(uow: UnitOfWork, source: HullModel, into: Into) -> HullModel:
    if into.hull is not None:
        target = standing(uow, into.hull)
        if target.id == source.id:
            raise Refused(f"{into.hull!r} and {source.id!r} are one hull model; name another, or a new one")
        return target
    name = " ".join((into.model or "").split())
    if not name:
        raise Refused("the new hull model has no name; give one, or the id of one that is there")
    return HullModel(id=uow.new_id("hull"), model=name, builder=into.builder or source.builder)


def _records(
    uow: UnitOfWork, source: HullModel, family: Sequence[str], references: Sequence[str], target: str
) -> list[Cell]:
    found, cells = uow.records.among(references), []
    for reference in dict.fromkeys(references):
        record = found.get(reference)
        if record is None:
            raise Refused(f"there is no record {reference!r}; `transom records find --hull {source.id}` lists its own")
        if record.hull not in family:
            raise Refused(f"record {reference!r} is of {record.hull or 'no hull model'}, not of {source.id}")
        cells.append(Cell("record", (reference,), record.hull, target))
    return cells


def _aliases(
    uow: UnitOfWork, source: HullModel, family: Sequence[str], names: Sequence[str], target: str
) -> list[Cell]:
    known = {one.alias: one for one in uow.hulls.aliases(family)}
    there = {one.alias for one in uow.hulls.aliases([target])}
    cells = []
    for name in dict.fromkeys(names):
        if name not in known:
            near = nearest(name, known)
            meant = f" (did you mean {near!r}?)" if near else ""
            raise Refused(f"{name!r} is no alias of {source.id}{meant}; `transom hulls show {source.id}` lists them")
        one = known[name]
        said = [one.who, one.at.isoformat(), one.why]
        cells.append(Cell("alias", (one.hull, name), said, None))
        if name not in there:
            cells.append(Cell("alias", (target, name), None, said))
    return cells
