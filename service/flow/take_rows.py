"""Some rows of a file -> what becomes of each, and the records written or revised accordingly."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from service.core.batch import RowOutcome
from service.core.boat import BoatForm
from service.core.measurement import Measurement
from service.core.record import Record
from service.core.revision import Revision
from service.core.words import nearest
from service.files.columns import MEASUREMENTS, values
from service.files.read.record_rows import RecordRow, Rejected
from service.files.read.tables import RowError
from service.flow.reader import Read, Ready
from service.store.unit import UnitOfWork
from service.store.written import Written

Decide = Callable[[BoatForm], str | None]
"""Says which hull model a boat is of, by id; None where it cannot."""


@dataclass
class Hulls:
    """Which hull models there are, and which a boat is of; what was found once is not asked again."""

    decide: Decide | None
    known: set[str] = field(default_factory=set)
    decided: dict[tuple[Any, ...], str | None] = field(default_factory=dict)

    def look_up(self, uow: UnitOfWork, rows: Iterable[Read]) -> None:
        """See which of the ids the rows name exist."""
        asked = {hull for hull in map(_hull_of, rows) if hull is not None}
        if asked - self.known:
            self.known |= set(uow.hulls.among(asked - self.known))

    def of(self, form: BoatForm) -> str | None:
        """Return the hull model of a boat whose row names none."""
        boat = form.boat
        key = (boat.builder, boat.model, boat.year, boat.loa_mm, boat.beam_mm)
        if key not in self.decided:
            self.decided[key] = self.decide(form) if self.decide else None
        return self.decided[key]


def _hull_of(row: Read) -> str | None:
    if isinstance(row, Ready):
        hull: str | None = row.what.row["hull_id"]
        return hull
    return row.record.hull if isinstance(row, RecordRow) else None


@dataclass(frozen=True)
class Standing:
    """What the ledger holds under the references of some rows."""

    records: Mapping[str, Record]
    heads: Mapping[str, int]
    histories: Mapping[str, Sequence[Revision]]
    measured: Mapping[str, Sequence[Measurement]]
    merged: Mapping[str, str]


@dataclass
class _Writing:
    new: list[Written] = field(default_factory=list)
    fresh: list[Sequence[Revision]] = field(default_factory=list)
    further: list[Sequence[Revision]] = field(default_factory=list)
    measured: dict[str, Sequence[Measurement]] = field(default_factory=dict)


def take_rows(
    uow: UnitOfWork, rows: Sequence[Read], first: int, hulls: Hulls, *, who: str, why: str, preview: bool
) -> list[RowOutcome]:
    """Return what becomes of each row, the first of which is the file's `first`-th, and write it unless `preview`.

    A row is the whole of a record as it now stands; what a known record was before stays in its history.
    """
    hulls.look_up(uow, rows)
    writing, now = _Writing(), uow.now()
    settled = _settle_ready(uow, rows, first, hulls, writing)
    left = [(number, row) for number, row in enumerate(rows, start=first) if number not in settled]
    others = [(number, row.as_record() if isinstance(row, Ready) else row) for number, row in left]
    standing = _standing(uow, [row for _, row in others if isinstance(row, RecordRow)])
    for number, row in others:
        if isinstance(row, Rejected):
            settled[number] = _rejected(number, row.sheet, row.row, row.errors, row.reference)
            continue
        problem, record = _with_hull(row, standing, hulls, uow)
        if problem is not None:
            settled[number] = _rejected(number, row.sheet, row.row, (problem,), row.record.reference)
        else:
            state = Revision.model_construct(number=1, who=who, at=now, why=why, record=record)
            settled[number] = _take(number, row, record, standing, writing, state)
    if not preview:
        _write(uow, writing, who, why)
    return [settled[number] for number in range(first, first + len(rows))]


def _settle_ready(
    uow: UnitOfWork, rows: Sequence[Read], first: int, hulls: Hulls, writing: _Writing
) -> dict[int, RowOutcome]:
    """Return what becomes of the rows that are ready and of a known hull model: those new, and those as they stand."""
    ready = [
        (number, row)
        for number, row in enumerate(rows, start=first)
        if isinstance(row, Ready) and _hull_of(row) in hulls.known
    ]
    standing = uow.records.as_written([row.what.reference for _, row in ready]) if ready else {}
    settled = {}
    for number, row in ready:
        what = row.what
        known = standing.get(what.reference)
        if known is None:
            writing.new.append(what)
            settled[number] = RowOutcome(number, row.sheet, row.row, "created", what.reference, 0, 1)
        elif (known.document, known.person) == (what.document, what.person):
            head = known.head
            settled[number] = RowOutcome(number, row.sheet, row.row, "unchanged", what.reference, head, head)
    return settled


def _write(uow: UnitOfWork, writing: _Writing, who: str, why: str) -> None:
    if writing.new:
        uow.records.add_written(writing.new, who=who, why=why)
    if writing.fresh:
        uow.records.add_histories(writing.fresh)
    if writing.further:
        uow.records.extend_histories(writing.further)
    if writing.measured:
        uow.records.measurements.add(writing.measured)


def _standing(uow: UnitOfWork, rows: Sequence[RecordRow]) -> Standing:
    references = [row.record.reference for row in rows]
    records = uow.records
    heads = records.heads(references)
    known = [reference for reference in references if reference in heads]
    storied = [row.record.reference for row in rows if row.revisions and row.record.reference in heads]
    measured = [row.record.reference for row in rows if row.measurements and row.record.reference in heads]
    return Standing(
        records.among(known) if known else {},
        heads,
        records.histories_among(storied) if storied else {},
        records.measurements.among(measured) if measured else {},
        {reference: merge.into for reference, merge in records.merges.all().items()} if known else {},
    )


def _with_hull(row: RecordRow, standing: Standing, hulls: Hulls, uow: UnitOfWork) -> tuple[RowError | None, Record]:
    """Return the record with its hull model: as the row says, else as it was known, else as is decided."""
    record = row.record
    if record.hull is None:
        before = standing.records.get(record.reference)
        hull = (before and before.hull) or hulls.of(record.form)
        return None, record if hull is None else record.model_copy(update={"hull": hull})
    if record.hull in hulls.known:
        return None, record
    near = nearest(record.hull, (hull.id for hull in uow.hulls.all()))
    hint = f" (did you mean {near!r}?)" if near else ""
    problem = f"there is no hull model with this id{hint}; import the hull models first, or leave the cell empty"
    return RowError(row.sheet, row.row, "record.hull", record.hull, problem), record


def _take(
    number: int, row: RecordRow, record: Record, standing: Standing, writing: _Writing, now: Revision
) -> RowOutcome:  # fmt: skip
    reference = record.reference
    head = standing.heads.get(reference, 0)
    last = standing.records.get(reference)
    history = standing.histories.get(reference, ())
    steps = list(_news(history, row.revisions))
    said = steps[-1].record if steps else last
    if said != record and not (last is not None and _behind(history, row)):
        steps.append(now)
    known = standing.measured.get(reference, ())
    measured = [one for one in row.measurements if one not in known]
    if last is not None and (steps or measured) and reference in standing.merged:
        problem = f"this record was merged into {standing.merged[reference]!r}; change that one"
        error = RowError(row.sheet, row.row, "record.reference", reference, problem)
        return _rejected(number, row.sheet, row.row, (error,), reference)
    if measured:
        writing.measured[reference] = measured
    if last is None:
        writing.fresh.append(steps)
        return RowOutcome(number, row.sheet, row.row, "created", reference, 0, len(steps))
    if not steps and not measured:
        return RowOutcome(number, row.sheet, row.row, "unchanged", reference, head, head)
    changes = [*(_differing(last, record) if steps else ()), *((MEASUREMENTS,) if measured else ())]
    if steps:
        writing.further.append(steps)
    return RowOutcome(number, row.sheet, row.row, "updated", reference, head, head + len(steps), changes)


def _rejected(
    number: int, sheet: str | None, row: int, errors: Sequence[RowError], reference: str | None
) -> RowOutcome:  # fmt: skip
    detail = [{"column": e.column, "value": e.value, "expected": e.expected} for e in errors]
    return RowOutcome(number, sheet, row, "rejected", reference, 0, 0, detail)


def _news(before: Sequence[Revision], brought: Sequence[Revision]) -> Sequence[Revision]:
    """Return the states brought along that follow the known ones; none where the two histories went different ways."""
    return brought[len(before) :] if tuple(brought[: len(before)]) == tuple(before) else ()


def _behind(before: Sequence[Revision], row: RecordRow) -> bool:
    """Say whether the row is only an earlier state of a record that has moved on since the file was written."""
    brought = row.revisions
    return bool(brought) and tuple(before[: len(brought)]) == brought and _same_but_hull(brought[-1].record, row.record)


def _same_but_hull(one: Record, other: Record) -> bool:
    return one.model_copy(update={"hull": None}) == other.model_copy(update={"hull": None})


def _differing(before: Record, after: Record) -> list[str]:
    old, new = values(before), values(after)
    return [name for name in dict.fromkeys((*old, *new)) if old.get(name) != new.get(name)]
