"""What belongs to records: which files, of what kind, brought by whom. The content stands elsewhere, by its hash."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.schema import attachments, records

_FIELDS = ("number", "sha256", "name", "type", "bytes", "who", "at", "note")


@dataclass(frozen=True)
class Attachment:
    """One file of a record; `number` counts from 1 within the record."""

    reference: str
    number: int
    sha256: str
    name: str
    type: str
    bytes: int
    who: str
    at: datetime
    note: str | None = None


class Attachments:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, attachment: Attachment) -> None:
        """Keep what is known of a file. Conflict where there is no such record."""
        own = self._desk.one(sa.select(records.c.id).where(records.c.reference == attachment.reference))
        if own is None:
            raise Conflict("there is no such record", repr(attachment.reference), "Add it before what belongs to it")
        row = {name: getattr(attachment, name) for name in _FIELDS}
        self._desk.write(attachments.insert(), [{"record_id": own.id, **row}])

    def of(self, references: Iterable[str]) -> tuple[Attachment, ...]:
        """Return what belongs to the records, by reference and number."""
        found = self._desk.among(_SELECT, records.c.reference, sorted(set(references)))
        return tuple(Attachment(row.reference, *(getattr(row, name) for name in _FIELDS)) for row in found)

    def all(self) -> tuple[Attachment, ...]:
        """Return what belongs to any record."""
        rows = self._desk.all(_SELECT)
        return tuple(Attachment(row.reference, *(getattr(row, name) for name in _FIELDS)) for row in rows)


_SELECT = (
    sa.select(records.c.reference, *(attachments.c[name] for name in _FIELDS))
    .join(records, records.c.id == attachments.c.record_id)
    .order_by(records.c.reference, attachments.c.number)
)
