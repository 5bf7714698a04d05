"""Take over records of installations: as a batch, chunk by chunk, each with its progress in one transaction."""

from __future__ import annotations

import gc
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import islice

from service.core.batch import Batch, RowOutcome
from service.files.columns import MERGED
from service.files.read.mapping_file import read_mapping
from service.files.read.record_rows import RecordRow
from service.files.read.records_file import RecordsFile, open_records
from service.files.read.tables import RowError
from service.flow.brought_along import keep_merged
from service.flow.import_report import Advance, ImportReport, by_outcome, faults_of, silent
from service.flow.read_aside import read_aside, worth_it
from service.flow.reader import Read
from service.flow.take_rows import Decide, Hulls, take_rows
from service.store.desk import uncollected
from service.store.errors import StoreError
from service.store.unit import UnitOfWork

CHUNK = 2_000
"""Rows in one transaction: nobody else waits longer than for these."""


@dataclass(frozen=True)
class MappingFile:
    """A mapping file as it was given."""

    data: bytes
    name: str


def import_records(
    uow: UnitOfWork,
    data: bytes,
    name: str,
    *,
    mapping: MappingFile | None = None,
    decide: Decide | None = None,
    who: str = "import",
    preview: bool = False,
    progress: Advance = silent,
) -> ImportReport:
    """Add records and revise those whose reference is known, and commit, `CHUNK` rows at a time.

    A row is the whole of a record as it now stands; what a known record was before stays in its history. Where a row
    names no hull model, a known record keeps the one it has, and for others `decide` is asked. JSON lines bring
    their history along. `preview` says what would be done and writes nothing. Unreadable where the file is no table
    of records, before anything is written; a bad row is reported and keeps no other one out. Where the database goes
    away half way, the StoreError says how to go on.
    """
    rules = read_mapping(mapping.data, mapping.name) if mapping else None
    file = open_records(data, name, rules)
    hulls = Hulls(decide)
    if preview:
        with uow:
            rows = tuple(_previewed(uow, file, hulls, who, progress))
        return report(file, rows, None, preview=True)
    with uow:
        text = mapping.data.decode("utf-8-sig") if mapping else None
        batch = uow.imports.begin(data, name, mapping=text, who=who, rows=file.count)
        uow.commit()
    faults: list[RowError] = []
    rows = tuple(go_on(uow, batch, file, hulls, progress, faults))
    with uow:
        return report(file, rows, uow.imports.get(batch.id), faults)


def go_on(
    uow: UnitOfWork, batch: Batch, file: RecordsFile, hulls: Hulls, progress: Advance, faults: list[RowError],
    earlier: dict[str, str] | None = None,
) -> Iterator[RowOutcome]:  # fmt: skip
    """Take the rows of a batch that are not acknowledged yet; `earlier` says where references before them stood.

    Which records were merged into which is settled with the last rows, when all of them are there; `faults` gets what
    could not be.
    """
    why = f"import of {batch.name}"
    try:
        with uncollected():
            for rows in _chunks(file, batch.done, earlier):
                with uow:
                    outcomes = take_rows(uow, rows, batch.done + 1, hulls, who=batch.who, why=why, preview=False)
                    if batch.done + len(rows) == batch.rows:
                        faults += keep_merged(uow, _merged(file))
                    after = uow.imports.acknowledge(batch, outcomes)
                    uow.commit()
                batch = after
                gc.collect(0)  # what the driver's own circles hold of these rows; those before are not walked again
                progress(len(outcomes))
                yield from outcomes
    except StoreError as error:
        raise type(error)(error.what, error.where, f"{error.mend}. {_far(batch)}") from error
    except ChildProcessError as error:
        raise ChildProcessError(f"{error}; {_far(batch)}") from error


def _far(batch: Batch) -> str:
    return f"{batch.done} of {batch.rows} rows are in; go on with `transom imports resume {batch.id}`"


def _previewed(uow: UnitOfWork, file: RecordsFile, hulls: Hulls, who: str, progress: Advance) -> Iterator[RowOutcome]:
    done = 0
    with uncollected():
        for rows in _chunks(file):
            yield from take_rows(uow, rows, done + 1, hulls, who=who, why="preview", preview=True)
            done += len(rows)
            progress(len(rows))


def _merged(file: RecordsFile) -> list[RecordRow]:
    """Return the rows that say they were merged into another record: only JSON lines have such."""
    if file.table is not None or MERGED.encode() not in file.data:
        return []
    return [row for row in file.rows() if isinstance(row, RecordRow) and row.merged is not None]


def _chunks(file: RecordsFile, skip: int = 0, earlier: dict[str, str] | None = None) -> Iterator[Sequence[Read]]:
    if worth_it(file, skip):
        yield from read_aside(file, CHUNK, skip=skip, earlier=earlier)
        return
    rows = file.rows(skip=skip, earlier=earlier)
    while some := list(islice(rows, CHUNK)):
        yield some


def report(
    file: RecordsFile,
    rows: tuple[RowOutcome, ...],
    batch: Batch | None,
    faults: Sequence[RowError] = (),
    *,
    preview: bool = False,
) -> ImportReport:
    """Return the report of these rows of a file."""
    updated = [row for row in rows if row.outcome == "updated"]
    return ImportReport(
        created=by_outcome(rows, "created"),
        updated=by_outcome(rows, "updated"),
        unchanged=by_outcome(rows, "unchanged"),
        rejected=(*faults_of(rows), *faults),
        changes={row.reference or "": tuple(row.detail or ()) for row in updated},
        preview=preview,
        rows=rows,
        remarks=file.remarks,
        kept=file.kept,
        left_out=file.left_out,
        batch=batch,
    )
