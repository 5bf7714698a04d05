"""Records counted by configuration: by month, and by where and how they stand. The database counts; rows that come are few.

Each count reads one index that holds all the columns it asks for. A server groups by hashing, in one statement for all
configurations. A file sorts whatever it groups, so it groups within one configuration after another, which the index
holds side by side; it writes all of that into one row of JSON, for while a single row is made nothing waits for Python.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import compress
from typing import Any, get_args

import sqlalchemy as sa

from service.core.record import Status
from service.store import dialect
from service.store.desk import Desk
from service.store.schema import record_merges, records

CENTRE_MM = 25.0
"""A shaft this near the centreline stands on it, as far as anybody measures."""
BANDS = ((8000.0, "under 8 m"), (10000.0, "8 to 10 m"), (12000.0, "10 to 12 m"), (14000.0, "12 to 14 m"))
LONGEST = "14 m and over"
STATUSES: tuple[str, ...] = get_args(Status)
AFTER, BEFORE = -1, -2
"""What stands in a month's place where a record lies outside the period."""
WHEN = {AFTER: "after", BEFORE: "before", None: "undated"}
Columns = Sequence[sa.ColumnElement[Any]]
Conditions = Sequence[sa.ColumnElement[bool]]
Codes = tuple[str, str, str, str]
"""Gear, lower bracket, upper bracket, shaft."""
Place = tuple[str | None, str | None, str | None, str | None]
"""Country, band of the hull's length, stern, and where the shaft stands: port, centre or starboard; None: not said."""


@dataclass(frozen=True)
class Counting:
    """Which records count: those of these statuses with a date from `first` to `last`, both included.

    Without `first`, undated ones count too.
    """

    statuses: tuple[str, ...]
    first: date | None
    last: date


@dataclass(frozen=True)
class Counted:
    """How many records count, by configuration and month and by configuration and place, and how many there are.

    A month is 12 times the year plus the month from 0; None: undated. `statuses`: by status, and by within, before,
    after or undated, whatever counts. `merged`: those left out of everything, for they were merged into others.
    """

    by_month: Mapping[tuple[Codes, int | None], int]
    by_place: Mapping[tuple[Codes, Place], int]
    statuses: Mapping[tuple[str, str], int]
    merged: int


class Demand:
    """What was needed, counted."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def counted(self, asked: Counting) -> Counted:
        """Return all counts, of one moment."""
        connection = self._desk.connection
        groups = (_by_month(connection, asked), _by_place(asked))
        found = _Tally(asked)
        if dialect.sorts_groups(connection):
            for *codes, months, places in json.loads(connection.execute(_at_once(groups)).scalar_one()):
                found.add(1, ((*codes, *row) for row in months), ((*codes, *row) for row in places))
        else:
            dialect.hash_groups(connection)
            found.add(1, *(self._desk.all(group.select(_CODES)) for group in groups))
        merged = sa.select(record_merges.c.record_id)
        count = len(self._desk.all(merged))
        if count:  # few, and counted apart: nobody has to look at every record for them
            only = records.c.id.in_(merged)
            found.add(-1, *(self._desk.all(group.select(_CODES, only)) for group in groups))
        return found.told(count)


@dataclass(frozen=True)
class _Group:
    """What is grouped by, what is counted of each group, and which records are looked at."""

    keys: Columns
    counts: Columns
    where: Conditions = ()

    def select(self, codes: Columns = (), *more: sa.ColumnElement[bool]) -> sa.Select[Any]:
        """Select the groups, within each of the codes where they are named."""
        chosen = sa.select(*codes, *self.keys, *self.counts).where(*self.where, *more)
        return chosen.group_by(*codes, *self.keys)


def _by_month(connection: sa.Connection, asked: Counting) -> _Group:
    """Group by month, or what stands in its place, and count the records of each status."""
    day = records.c.date
    outside = [(day > asked.last, AFTER), *([(day < asked.first, BEFORE)] if asked.first else [])]
    month = sa.case(*outside, else_=dialect.month_of(connection, day)).label("month")
    return _Group((month,), [sa.func.count().filter(records.c.status == one).label(one) for one in STATUSES])


def _by_place(asked: Counting) -> _Group:
    keys = (records.c.country, _BAND.label("band"), records.c.stern, _SIDE.label("side"))
    day = records.c.date
    within = day <= asked.last
    dated = sa.and_(within, day >= asked.first) if asked.first else sa.or_(within, day.is_(None))
    return _Group(keys, (sa.func.count().label("n"),), (records.c.status.in_(asked.statuses), dated))


def _at_once(groups: Iterable[_Group]) -> sa.Select[Any]:
    """Select a list of configurations, each with a list of rows for each of some groups, as JSON."""
    made = sa.select(*_CODES).distinct().subquery("made")
    lists = []
    for group in groups:
        mine = group.select((), *(one == made.c[one.name] for one in _CODES)).correlate(made).subquery()
        rows = sa.func.json_group_array(sa.func.json_array(*mine.c))
        lists.append(sa.func.json(sa.select(rows).scalar_subquery()))
    return sa.select(sa.func.json_group_array(sa.func.json_array(*made.c, *lists)))


class _Tally:
    """Adds up rows of counts."""

    def __init__(self, asked: Counting) -> None:
        self._asked, self._counts = asked, [status in asked.statuses for status in STATUSES]
        self._months, self._places, self._statuses = (Counter[Any]() for _ in range(3))

    def add(self, sign: int, by_month: Iterable[Any], by_place: Iterable[Any]) -> None:
        months, places, statuses = self._months, self._places, self._statuses
        undated = self._asked.first is None
        for gear, lower, upper, shaft, month, *each in by_month:
            when = WHEN.get(month, "within")
            for status, n in zip(STATUSES, each, strict=True):
                statuses[status, when] += sign * n
            if when == "within" or (when == "undated" and undated):
                months[(gear, lower, upper, shaft), month] += sign * sum(compress(each, self._counts))
        for gear, lower, upper, shaft, country, band, stern, side, n in by_place:
            places[(gear, lower, upper, shaft), (country, band, stern, side)] += sign * n

    def told(self, merged: int) -> Counted:
        return Counted(_some(self._months), _some(self._places), _some(self._statuses), merged)


def _some(counts: Mapping[Any, int]) -> dict[Any, int]:
    return {key: n for key, n in counts.items() if n}


_CODES = (records.c.gear, records.c.lower, records.c.upper, records.c.shaft)
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
