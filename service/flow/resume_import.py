"""Go on with an import that broke off."""

from __future__ import annotations

from service.core.batch import Batch
from service.files.read.mapping_file import read_mapping
from service.files.read.record_table import place_of
from service.files.read.records_file import RecordsFile, open_records
from service.files.read.tables import RowError
from service.flow.import_records import go_on, report
from service.flow.import_report import Advance, ImportReport, silent
from service.flow.take_rows import Decide, Hulls
from service.store.errors import Conflict
from service.store.unit import UnitOfWork


def resume_import(
    uow: UnitOfWork, import_id: str, *, decide: Decide | None = None, progress: Advance = silent
) -> ImportReport:
    """Take the rows that are not acknowledged yet, from the file as it was kept, and report on all of its rows.

    Nothing is done twice, whoever else goes on with it at the same time (Conflict for the later one). An import that
    is done is only reported. Conflict for one that was undone, and for an id that is not there.
    """
    with uow:
        batch = uow.imports.get(import_id)
        if batch.state == "undone":
            raise Conflict("this import was undone", import_id, "Import the file again")
        file = kept_file(uow, batch)
        earlier = {
            one.reference: place_of(one.sheet, one.row)
            for one in uow.imports.outcomes(import_id)
            if one.reference is not None and one.outcome != "rejected"
        }
    progress(batch.done)
    faults: list[RowError] = []
    if batch.state == "running":
        for _ in go_on(uow, batch, file, Hulls(decide), progress, faults, earlier):
            pass
    with uow:
        return report(file, tuple(uow.imports.outcomes(import_id)), uow.imports.get(import_id), faults)


def kept_file(uow: UnitOfWork, batch: Batch) -> RecordsFile:
    """Return the file of an import as it was kept. Conflict where this version of the program reads it otherwise."""
    data = uow.imports.files.get(batch.sha256)
    rules = read_mapping(batch.mapping.encode(), "the mapping that was kept") if batch.mapping is not None else None
    file = open_records(data, batch.name, rules)
    if file.count != batch.rows:
        what = f"this version of the program finds {file.count} rows in the file, where there were {batch.rows}"
        raise Conflict(what, batch.id, "Import the file again: rows that are in already stay as they are")
    return file
