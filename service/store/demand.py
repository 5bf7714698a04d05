"""Records counted by configuration: by month, and by where and how they stand. The database counts; rows that come are few.

Every statement reads one index that holds all the columns it asks for. A server counts all configurations in one
statement; a file, which sorts whatever it groups, in one statement a configuration, which is three times as fast.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

import sqlalchemy as sa

from service.store import dialect
from service.store.desk import Desk
from service.store.schema import record_merges, records

CENTRE_MM = 25.0
"""A shaft this near the centreline stands on it, as far as anybody measures."""
BANDS = ((8000.0, "under 8 m"), (10000.0, "8 to 10 m"), (12000.0, "10 to 12 m"), (14000.0, "12 to 14 m"))
LONGEST = "14 m and over"
Codes = tuple[str, str, str, str]
"""Gear, lower bracket, upper bracket, shaft."""
Conditions = Sequence[sa.ColumnElement[bool]]
Place = tuple[str | None, str | None, str | None, str | None]
"""Country, band of the hull's length, stern, and where the shaft stands: port, centre or starboard; None: not said."""


@dataclass(frozen=True)
class Counting:
    """Which records count: those of these statuses with a date from `first` to `last`, both included.

    Without `first`, undated ones count too where `undated` says so.
    """

    statuses: tuple[str, ...]
    first: date | None
    last: date
    undated: bool = True


class Demand:
    """What was needed, counted."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def by_month(self, asked: Counting) -> dict[tuple[Codes, int | None], int]:
        """Return how many records there are by configuration and month, as 12 times the year plus the month from 0."""
        return self._counted(asked, [_MONTH.label("month")], lambda row: row.month)

    def by_place(self, asked: Counting) -> dict[tuple[Codes, Place], int]:
        """Return how many records there are by configuration, country, length, stern and side."""
        columns = [records.c.country, _BAND.label("band"), records.c.stern, _SIDE.label("side")]
        return self._counted(asked, columns, lambda row: (row.country, row.band, row.stern, row.side))

    def statuses(self, asked: Counting) -> dict[tuple[str, str], int]:
        """Return how many records there are by status and date: within, before, after or undated, whatever counts."""
        c = records.c
        before = [(c.date < asked.first, "before")] if asked.first else []
        when = sa.case((c.date.is_(None), "undated"), *before, (c.date > asked.last, "after"), else_="within")
        chosen = sa.select(_STATUS.label("status"), when.label("date"), sa.func.count().label("n"))
        chosen = chosen.group_by(sa.text("1, 2"))
        return self._less_merged(
            lambda only: (((row.status, row.date), row.n) for row in self._desk.all(chosen.where(*only)))
        )

    def merged(self) -> int:
        """Return how many records were merged into others."""
        return int(self._desk.connection.execute(sa.select(sa.func.count()).select_from(record_merges)).scalar_one())

    def _counted(
        self, asked: Counting, columns: Sequence[sa.ColumnElement[Any]], place: Callable[[Any], Any]
    ) -> dict[Any, int]:
        counted = sa.select(*columns, sa.func.count().label("n")).where(*_conditions(asked)).group_by(*columns)
        every = counted.add_columns(*_CODES).group_by(*_CODES)
        alone = counted.where(*(c == sa.bindparam(f"the_{c.name}") for c in _CODES))
        by_hand = dialect.sorts_groups(self._desk.connection)

        def rows(only: Conditions) -> Iterator[tuple[Any, int]]:
            if not by_hand or only:
                for row in self._desk.all(every.where(*only)):
                    yield ((row.gear, row.lower, row.upper, row.shaft), place(row)), row.n
                return
            for codes in self._desk.all(sa.select(*_CODES).distinct()):
                names = {f"the_{c.name}": code for c, code in zip(_CODES, codes, strict=True)}
                for one in self._desk.connection.execute(alone, names):
                    yield (tuple(codes), place(one)), one.n

        return self._less_merged(rows)

    def _less_merged(self, rows: Callable[[Conditions], Iterable[tuple[Any, int]]]) -> dict[Any, int]:
        """Return the counts without those of records that were merged into others, which are few and counted apart."""
        found: Counter[Any] = Counter()
        for key, count in rows(()):
            found[key] += count
        if self.merged():
            for key, count in rows((records.c.id.in_(sa.select(record_merges.c.record_id)),)):
                found[key] -= count
        return {one: count for one, count in found.items() if count}


def _conditions(asked: Counting) -> Iterator[sa.ColumnElement[bool]]:
    yield _STATUS.in_(asked.statuses)
    counts = asked.last if asked.undated and asked.first is None else date.max
    day = sa.func.coalesce(records.c.date, sa.literal(counts, sa.Date))
    yield day <= asked.last
    if asked.first is not None:
        yield day >= asked.first


_STATUS = records.c.status.concat("")
"""The status in a way that no index of its own answers: a file would walk that one, and then look up every record."""
_CODES = (records.c.gear, records.c.lower, records.c.upper, records.c.shaft)
_MONTH = sa.cast(sa.extract("year", records.c.date) * 12 + sa.extract("month", records.c.date) - 1, sa.Integer)
_BAND = sa.case(
    (records.c.loa_mm.is_(None), None),
    *((records.c.loa_mm < below, name) for below, name in BANDS),
    else_=LONGEST,
)
_SIDE = sa.case(
    (records.c.offset_mm.is_(None), None),
    (sa.func.abs(records.c.offset_mm) <= CENTRE_MM, "centre"),
    (records.c.offset_mm > 0, "starboard"),
    else_="port",
)
