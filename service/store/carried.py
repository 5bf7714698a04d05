"""What records carry, by the codes of their configurations alone."""

from __future__ import annotations

from collections.abc import Iterator

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.schema import record_merges, records


class Carried:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def each(self) -> Iterator[tuple[str, str, str, str, str]]:
        """Yield reference, gear, lower, upper and shaft of every record that was neither withdrawn nor merged away."""
        c = records.c
        merged = sa.exists().where(record_merges.c.record_id == c.id)
        asked = sa.select(c.reference, c.gear, c.lower, c.upper, c.shaft).where(c.status != "withdrawn", ~merged)
        for row in self._desk.stream(asked.order_by(c.reference)):
            yield row.reference, row.gear, row.lower, row.upper, row.shaft
