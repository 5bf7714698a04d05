"""Take over records of installations."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from service.core.boat import BoatForm
from service.core.record import Record
from service.core.revision import Revision
from service.core.words import nearest
from service.files.columns import values
from service.files.read.records_file import ReadRecords, RecordRow, read_records
from service.files.read.tables import RowError
from service.flow.import_report import Advance, ImportReport, silent
from service.store.desk import uncollected
from service.store.unit import UnitOfWork

Decide = Callable[[BoatForm], str | None]
"""Says which hull model a boat is of, by id; None where it cannot."""


def import_records(
    uow: UnitOfWork,
    data: bytes,
    name: str,
    *,
    decide: Decide | None = None,
    who: str = "import",
    preview: bool = False,
    progress: Advance = silent,
) -> ImportReport:
    """Add records and revise those whose reference is known, and commit.

    A row is the whole of a record as it now stands; what a known record was before stays in its history. Where a row
    names no hull model, a known record keeps the one it has, and for others `decide` is asked. JSON lines bring
    their history along. `preview` says what would be done and writes nothing. Unreadable where the file is no table
    of records; a bad row is reported and keeps no other one out.
    """
    with uncollected(), uow:
        read = read_records(data, name)
        rows, errors = _with_hulls(uow, read, decide, progress)
        plan = _plan(uow, rows, who, f"import of {name}")
        if not preview:
            uow.records.add_histories(list(plan.fresh.values()))
            uow.records.extend_histories(list(plan.further.values()))
            uow.commit()
    return ImportReport(
        created=tuple(plan.fresh),
        updated=tuple(plan.further),
        unchanged=plan.unchanged,
        rejected=tuple(sorted((*read.rejected, *errors), key=lambda error: (error.sheet or "", error.row))),
        changes=plan.changes,
        preview=preview,
    )


def _with_hulls(
    uow: UnitOfWork, read: ReadRecords, decide: Decide | None, progress: Advance
) -> tuple[list[RecordRow], list[RowError]]:
    hulls = {hull.id for hull in uow.hulls.all()}
    known = uow.records.among(row.record.reference for row in read.rows)
    rows, errors = [], list[RowError]()
    for row in read.rows:
        record = row.record
        hull = record.hull
        if hull is None:
            before = known.get(record.reference)
            hull = (before and before.hull) or (decide(record.form) if decide else None)
        elif hull not in hulls:
            near = nearest(hull, hulls)
            hint = f" (did you mean {near!r}?)" if near else ""
            problem = (
                f"there is no hull model with this id{hint}; import the hull models first, or leave the cell empty"
            )
            errors.append(RowError(row.sheet, row.row, "record.hull", hull, problem))
            continue
        settled = record if hull == record.hull else record.model_copy(update={"hull": hull})
        rows.append(RecordRow(row.sheet, row.row, settled, row.revisions))
        progress(1)
    return rows, errors


@dataclass(frozen=True)
class _Plan:
    fresh: dict[str, Sequence[Revision]]
    further: dict[str, Sequence[Revision]]
    unchanged: tuple[str, ...]
    changes: dict[str, tuple[str, ...]]


def _plan(uow: UnitOfWork, rows: Sequence[RecordRow], who: str, why: str) -> _Plan:
    stored = uow.records.histories_among(row.record.reference for row in rows)
    plan = _Plan({}, {}, (), {})
    unchanged = []
    for row in rows:
        reference = row.record.reference
        before = stored.get(reference, ())
        steps = list(_news(before, row.revisions))
        last = (steps or before)[-1].record if steps or before else None
        if last != row.record and not (before and _behind(before, row)):
            steps.append(Revision(number=1, who=who, at=uow.now(), why=why, record=row.record))
        if not before:
            plan.fresh[reference] = steps
        elif steps:
            plan.further[reference] = steps
            plan.changes[reference] = _differing(before[-1].record, row.record)
        else:
            unchanged.append(reference)
    return _Plan(plan.fresh, plan.further, tuple(unchanged), plan.changes)


def _news(before: Sequence[Revision], brought: Sequence[Revision]) -> Sequence[Revision]:
    """Return the states brought along that follow the known ones; none where the two histories went different ways."""
    return brought[len(before) :] if tuple(brought[: len(before)]) == tuple(before) else ()


def _behind(before: Sequence[Revision], row: RecordRow) -> bool:
    """Say whether the row is only an earlier state of a record that has moved on since the file was written."""
    brought = row.revisions
    return bool(brought) and tuple(before[: len(brought)]) == brought and _same_but_hull(brought[-1].record, row.record)


def _same_but_hull(one: Record, other: Record) -> bool:
    return one.model_copy(update={"hull": None}) == other.model_copy(update={"hull": None})


def _differing(before: Record, after: Record) -> tuple[str, ...]:
    old, new = values(before), values(after)
    return tuple(name for name in dict.fromkeys((*old, *new)) if old.get(name) != new.get(name))
