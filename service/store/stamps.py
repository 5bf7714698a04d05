"""A stamp on what answers are made from, new with every transaction that changes any of it, in whatever process.

Whoever builds something from records, hull models, catalogues or weights keeps it with the stamp, and builds it anew
when the stamp is another. The stamp is written in the transaction of the change itself, by the unit of work, which sees
every statement pass: no repository can forget it.
"""

from __future__ import annotations

import sqlalchemy as sa
from sqlalchemy import event
from sqlalchemy.sql.dml import Insert, UpdateBase

from service.store.desk import Desk
from service.store.schema import (
    catalogues,
    contacts,
    hull_aliases,
    hull_models,
    recall_weights,
    record_merges,
    record_revisions,
    records,
    stamps,
)

FLEET = "fleet"
_MADE_FROM = {
    table.name
    for table in (records, record_revisions, record_merges, hull_models, hull_aliases, catalogues, recall_weights)
}


class Stamps:
    """The stamp, and whether this transaction makes it out of date."""

    def __init__(self, desk: Desk) -> None:
        """Watch the statements of the desk's connection."""
        self._desk, self._changed = desk, False
        event.listen(desk.connection, "before_execute", self._see)

    def fleet(self) -> str | None:
        """Return the stamp of what answers are made from; None where this transaction has changed it and not settled."""
        if self._changed:
            return None
        row = self._desk.one(sa.select(stamps.c.stamp).where(stamps.c.name == FLEET))
        return None if row is None else str(row.stamp)

    def settle(self) -> None:
        """Write a new stamp where this transaction changed something."""
        if not self._changed:
            return
        self._changed = False
        before = (self.fleet() or "").split(" ")[0]
        number = int(before) + 1 if before.isdecimal() else 1
        stamp = f"{number} {self._desk.new_id('stamp')}"  # the number grows; the id tells one history from another
        told = self._desk.connection.execute(stamps.update().where(stamps.c.name == FLEET).values(stamp=stamp))
        if told.rowcount == 0:
            self._desk.write(stamps.insert(), [{"name": FLEET, "stamp": stamp}])

    def _see(self, _connection: object, statement: object, *_rest: object) -> None:
        if isinstance(statement, UpdateBase):
            name = getattr(statement.table, "name", "")
            # A person who is new is in no record until a record says so.
            written_over = name == contacts.name and not isinstance(statement, Insert)
            self._changed |= name in _MADE_FROM or written_over
