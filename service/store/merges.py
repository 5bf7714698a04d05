"""Records that turned out to be another one written down twice."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.schema import record_merges, records


@dataclass(frozen=True)
class Merge:
    """`reference` is `into` written down twice; revision `number` of that one took it in."""

    reference: str
    into: str
    number: int


class Merges:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def all(self) -> dict[str, Merge]:
        """Return every merge by the reference that was taken in."""
        return _shaped(self._desk.all(_SELECT))

    def of(self, reference: str) -> Merge | None:
        """Return what became of a reference, None where it stands for itself (or is not there)."""
        return _shaped(self._desk.all(_SELECT.where(_TAKEN.c.reference == reference))).get(reference)

    def into(self, reference: str) -> tuple[str, ...]:
        """Return the references that a record took in."""
        return tuple(sorted(_shaped(self._desk.all(_SELECT.where(_INTO.c.reference == reference)))))

    def put(self, merges: Iterable[Merge]) -> None:
        """Redirect references. Conflict where one is not there, or is redirected already."""
        given = list(merges)
        wanted = sorted({name for one in given for name in (one.reference, one.into)})
        found = self._desk.among(sa.select(records.c.id, records.c.reference), records.c.reference, wanted)
        ids = {row.reference: row.id for row in found}
        missing = [name for name in wanted if name not in ids]
        if missing:
            raise Conflict("there is no such record", repr(missing[0]), "Only records that are there can be merged")
        rows = [{"record_id": ids[m.reference], "into_id": ids[m.into], "number": m.number} for m in given]
        self._desk.write(record_merges.insert(), rows)

    def drop(self, reference: str) -> None:
        """Let a reference stand for itself again."""
        own = sa.select(records.c.id).where(records.c.reference == reference).scalar_subquery()
        self._desk.connection.execute(record_merges.delete().where(record_merges.c.record_id == own))


_TAKEN, _INTO = records.alias("taken"), records.alias("into_record")
_SELECT = (
    sa.select(_TAKEN.c.reference, _INTO.c.reference.label("into"), record_merges.c.number)
    .select_from(record_merges)
    .join(_TAKEN, _TAKEN.c.id == record_merges.c.record_id)
    .join(_INTO, _INTO.c.id == record_merges.c.into_id)
    .order_by(_TAKEN.c.reference)
)


def _shaped(rows: Iterable[sa.Row[Any]]) -> dict[str, Merge]:
    return {row.reference: Merge(row.reference, row.into, row.number) for row in rows}
