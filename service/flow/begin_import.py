"""Take in a file of records: look it through, keep it, and leave its rows to be taken over afterwards."""

from __future__ import annotations

from service.core.batch import Batch
from service.files.read.records_file import open_records
from service.store.unit import UnitOfWork


def begin_import(uow: UnitOfWork, data: bytes, name: str, *, who: str) -> Batch:
    """Keep the file as an import of which no row is done yet, and commit; `resume_import` does them.

    Unreadable where the file is no table of records.
    """
    file = open_records(data, name)
    with uow:
        batch = uow.imports.begin(data, name, mapping=None, who=who, rows=file.count)
        uow.commit()
    return batch
