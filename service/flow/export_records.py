"""Give records out."""

from __future__ import annotations

from service.files.write.tables import Format, write_csv, write_jsonl, write_xlsx
from service.store.desk import uncollected
from service.store.unit import UnitOfWork


def export_records(uow: UnitOfWork, format_: Format) -> bytes:
    """Return every record as it stands; as JSON lines also every state it was in, all measurements and merged ones.

    Unwritable names what a workbook cannot hold.
    """
    with uncollected(), uow:
        if format_ == "jsonl":
            merged = {name: (one.into, one.number) for name, one in uow.records.merges.all().items()}
            return write_jsonl(uow.records.histories().values(), uow.records.measurements.all(), merged)
        records = uow.records.all()
        return write_csv(records) if format_ == "csv" else write_xlsx(records)
