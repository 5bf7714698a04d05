"""References for new records: readable, and none given twice, whatever became of its record."""

from __future__ import annotations

import re

import sqlalchemy as sa
from sqlalchemy.exc import IntegrityError

from service.store.desk import Desk
from service.store.schema import record_series, records

_DIGITS = 3


class Series:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def next(self, series: str) -> str:
        """Return the next free reference of a series: `2026-014` of "2026". Others who ask wait until this unit ends."""
        c = record_series.c
        last = self._last(series)
        if last is None:
            self._begin(series)
            last = self._last(series) or 0
        number = last + 1
        while self._taken(named(series, number)):
            number += 1
        self._desk.connection.execute(record_series.update().where(c.series == series).values(last=number))
        return named(series, number)

    def _last(self, series: str) -> int | None:
        c = record_series.c
        row = self._desk.one(sa.select(c.last).where(c.series == series).with_for_update())
        return None if row is None else int(row.last)

    def _begin(self, series: str) -> None:
        """Begin a series behind what records that came in from elsewhere carry; where another has just begun it, join."""
        like = records.c.reference.startswith(f"{series}-", autoescape=True)
        rows = self._desk.all(sa.select(records.c.reference).where(like))
        shape = re.compile(re.escape(series) + r"-(\d{1,9})", re.ASCII)
        used = [int(found[1]) for row in rows if (found := shape.fullmatch(row.reference))]
        begun = {"series": series, "last": max(used, default=0)}
        try:
            with self._desk.connection.begin_nested():
                self._desk.connection.execute(record_series.insert().values(**begun))
        except IntegrityError:
            return

    def _taken(self, reference: str) -> bool:
        return self._desk.one(sa.select(records.c.id).where(records.c.reference == reference)) is not None


def named(series: str, number: int) -> str:
    """Return the reference of a number in a series.

    >>> named("2026", 14), named("2026", 1203)
    ('2026-014', '2026-1203')
    """
    return f"{series}-{number:0{_DIGITS}d}"
