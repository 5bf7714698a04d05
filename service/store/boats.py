"""Individual boats behind the records."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import sqlalchemy as sa

from service.store.desk import Desk, chunks
from service.store.dialect import MOST_BOUND
from service.store.schema import boats, records
from service.store.written import Written

_FIELDS = ("hull_id", "name", "hull_number", "sail_number", "year")


class Boats:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def keep(self, owners: Sequence[Written]) -> list[str]:
        """Return the id of each record's boat, in order. New boats are added, known ones brought up to date."""
        wanted = [(one.boat_key, one.boat) for one in owners]
        c = boats.c
        keys = sorted({key for key, _ in wanted})
        known = {row.key: row for row in self._desk.among(sa.select(c.id, c.key, *_columns()), c.key, keys)}
        ids = {key: row.id for key, row in known.items()}
        latest = dict(wanted)
        fresh, changed, now = [], [], self._desk.now()
        for key, values in latest.items():
            if key not in known:
                ids[key] = self._desk.new_id("boat")
                fresh.append({"id": ids[key], "key": key, "created": now, **values})
            elif any(getattr(known[key], name) != value for name, value in values.items()):
                changed.append({"the_id": ids[key], **values})
        self._desk.write(boats.insert(), fresh)
        self._desk.write(boats.update().where(c.id == sa.bindparam("the_id")), changed)
        return [ids[key] for key, _ in wanted]

    def forget_unused(self, boat_ids: Sequence[str]) -> None:
        """Drop those of the boats that no record speaks of any more: a record turned out to be about another one."""
        used = sa.select(records.c.id).where(records.c.boat_id == boats.c.id).exists()
        for part in chunks(boat_ids, MOST_BOUND):
            self._desk.connection.execute(boats.delete().where(boats.c.id.in_(part), ~used))


def _columns() -> list[sa.Column[Any]]:
    return [boats.c[name] for name in _FIELDS]
