"""What JSON lines bring along beside records and their states: what was measured, and which were merged."""

from __future__ import annotations

from collections.abc import Sequence

from service.files.columns import MERGED
from service.files.read.record_rows import RecordRow
from service.files.read.tables import RowError
from service.store.merges import Merge
from service.store.unit import UnitOfWork


def keep_measured(uow: UnitOfWork, rows: Sequence[RecordRow]) -> int:
    """Keep the measurements that rows bring and are not there yet; return how many. Their records must be there."""
    brought = {row.record.reference: row.measurements for row in rows if row.measurements}
    known = uow.records.measurements.among(brought)
    fresh = {name: [one for one in some if one not in known.get(name, ())] for name, some in brought.items()}
    uow.records.measurements.add(fresh)
    return sum(map(len, fresh.values()))


def keep_merged(uow: UnitOfWork, rows: Sequence[RecordRow]) -> list[RowError]:
    """Redirect the references that rows say were merged, once every record is there; return what cannot be."""
    said = {row.record.reference: (row, row.merged) for row in rows if row.merged is not None}
    if not said:
        return []
    there = uow.records.histories_among(into for _, (into, _) in said.values())
    known = uow.records.merges.all()
    errors, fresh = [], list[Merge]()
    for name, (row, (into, number)) in said.items():
        if name in known:
            continue  # redirected already: where to is decided here
        if into not in there or number > len(there[into]):
            problem = "there is no such record (or it has no such revision); import that one too"
            errors.append(RowError(row.sheet, row.row, MERGED, into, problem))
        else:
            fresh.append(Merge(name, into, number))
    uow.records.merges.put(fresh)
    return errors
