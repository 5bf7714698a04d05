"""What was measured on boats, row by row; nothing is ever changed or dropped."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import sqlalchemy as sa

from service.core.measurement import Measurement
from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.schema import measurements, record_merges, records

_FIELDS = tuple(Measurement.model_fields)
Rows = dict[str, tuple[Measurement, ...]]


class Measurements:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, rows: Mapping[str, Sequence[Measurement]]) -> None:
        """Add to what was measured under each reference, in order. Conflict for a reference that is not there."""
        given = {reference: list(some) for reference, some in rows.items() if some}
        c = measurements.c
        count = sa.select(sa.func.count()).where(c.record_id == records.c.id).scalar_subquery()
        asked = sa.select(records.c.id, records.c.reference, count.label("known"))
        known = {row.reference: row for row in self._desk.among(asked, records.c.reference, sorted(given))}
        missing = sorted(set(given) - set(known))
        if missing:
            raise Conflict("there is no such record", repr(missing[0]), "Add it before what was measured on its boat")
        self._desk.write(
            measurements.insert(),
            [
                {"record_id": known[reference].id, "number": known[reference].known + n, **_values(row)}
                for reference, some in given.items()
                for n, row in enumerate(some, start=1)
            ],
        )

    def all(self) -> Rows:
        """Return all that was measured, by reference."""
        return _by_reference(self._desk.all(_EVERY))

    def among(self, references: Iterable[str]) -> Rows:
        """Return what was measured under each of the references; nothing for those under which nothing was."""
        return _by_reference(self._desk.among(_EVERY, records.c.reference, sorted(set(references))))

    def of_boat(self, reference: str) -> tuple[Measurement, ...]:
        """Return all that was measured on a record's boat: under it, its boat's other records and what it took in."""
        one = sa.select(records.c.id, records.c.boat_id).where(records.c.reference == reference).subquery()
        taken_in = sa.select(record_merges.c.record_id).where(record_merges.c.into_id.in_(sa.select(one.c.id)))
        same = sa.or_(records.c.boat_id.in_(sa.select(one.c.boat_id)), records.c.id.in_(taken_in))
        found = _by_reference(self._desk.all(_EVERY.where(same)))
        return tuple(sorted((row for some in found.values() for row in some), key=lambda row: row.at))


def _values(row: Measurement) -> dict[str, Any]:
    return {name: getattr(row, name) for name in _FIELDS}


def _by_reference(rows: Iterable[sa.Row[Any]]) -> Rows:
    found = defaultdict[str, list[Measurement]](list)
    for row in rows:
        found[row.reference].append(Measurement.model_validate({name: getattr(row, name) for name in _FIELDS}))
    return {reference: tuple(some) for reference, some in found.items()}


_EVERY = (
    sa.select(records.c.reference, *(measurements.c[name] for name in _FIELDS))
    .join(records, records.c.id == measurements.c.record_id)
    .order_by(records.c.reference, measurements.c.number)
)
