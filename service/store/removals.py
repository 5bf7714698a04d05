"""Taking records away again as if they had never come: for undoing an import, and for nothing else."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

import sqlalchemy as sa

from service.store.boats import Boats
from service.store.desk import Desk, chunks
from service.store.dialect import MOST_BOUND
from service.store.schema import attachments, contacts, measurements, metadata, record_merges, record_revisions, records


class Removals:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def spoken_of(self, references: Sequence[str], *, since: datetime) -> dict[str, str]:
        """Return which of the references something else speaks of that came later, and what that is."""
        c = records.c
        merged = sa.select(c.reference).join(
            record_merges, sa.or_(record_merges.c.record_id == c.id, record_merges.c.into_id == c.id)
        )
        measured = sa.select(c.reference).join(measurements, measurements.c.record_id == c.id)
        measured = measured.where(measurements.c.at > since)
        attached = sa.select(c.reference).join(attachments, attachments.c.record_id == c.id)
        found = {row.reference: "it was measured since" for row in self._desk.among(measured, c.reference, references)}
        found |= {row.reference: "it was merged since" for row in self._desk.among(merged, c.reference, references)}
        found |= {row.reference: "files are attached" for row in self._desk.among(attached, c.reference, references)}
        return found

    def remove(self, references: Sequence[str]) -> None:
        """Take the records away with all their states, and boats and people that nothing speaks of any more."""
        asked = sa.select(records.c.id, records.c.boat_id)
        rows = list(self._desk.among(asked, records.c.reference, references))
        ids = [row.id for row in rows]
        people = self._people(ids)
        for table, column in (
            (measurements, measurements.c.record_id),
            (record_revisions, record_revisions.c.record_id),
            (records, records.c.id),
        ):
            for part in chunks(ids, MOST_BOUND):
                self._desk.connection.execute(table.delete().where(column.in_(part)))
        Boats(self._desk).forget_unused(sorted({row.boat_id for row in rows}))
        self._forget(people)

    def _people(self, ids: Sequence[str]) -> list[str]:
        c = record_revisions.c
        asked = sa.select(c.contact_id).distinct().where(c.contact_id.is_not(None))
        return sorted({row.contact_id for row in self._desk.among(asked, c.record_id, ids)})

    def _forget(self, people: Sequence[str]) -> None:
        spoken_of = [
            sa.select(key.parent).where(key.parent == contacts.c.id).exists()
            for table in metadata.tables.values()
            for key in table.foreign_keys
            if key.column.table is contacts
        ]
        for part in chunks(people, MOST_BOUND):
            unused = sa.and_(contacts.c.id.in_(part), *(~one for one in spoken_of))
            self._desk.connection.execute(contacts.delete().where(unused))
