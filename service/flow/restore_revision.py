"""A record is made again what it was."""

from __future__ import annotations

from service.core.record import Record
from service.flow.edit_record import Desk, Edited, edit_record
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


def restore_revision(
    uow: UnitOfWork, reference: str, revision: int, *, who: str, why: str, expect: int | None = None
) -> Edited:
    """Make a new revision equal to an old one and commit; what was measured stays. Refused for no such revision."""

    def make(record: Record, desk: Desk) -> Record:
        if not 1 <= revision <= len(desk.history):
            raise Refused(f"record {record.reference} has no revision {revision}; it is at {len(desk.history)}")
        old = desk.history[revision - 1].record
        if old == record:
            desk.notes.append(f"it is as it was at revision {revision} already; nothing was written")
        return old

    return edit_record(uow, reference, make, who=who, why=f"back to revision {revision}: {why}", expect=expect)
