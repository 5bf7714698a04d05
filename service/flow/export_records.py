"""Give records out."""

from __future__ import annotations

from service.files.write.tables import Format, write_csv, write_jsonl, write_xlsx
from service.store.desk import uncollected
from service.store.unit import UnitOfWork


def export_records(uow: UnitOfWork, format_: Format) -> bytes:
    """Return every record as it stands; as JSON lines also every state it was in.

    Unwritable names what a workbook cannot hold.
    """
    with uncollected(), uow:
        if format_ == "jsonl":
            return write_jsonl(uow.records.histories().values())
        records = uow.records.all()
        return write_csv(records) if format_ == "csv" else write_xlsx(records)
