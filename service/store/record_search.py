"""What records are searched for by, as conditions on the table, and the place in a long list to go on from."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from typing import Self

import sqlalchemy as sa

from service.store.schema import hull_models, records

_MARK = "~"


@dataclass(frozen=True)
class Asked:
    """What is asked of records; None (or nothing) asks for any. `codes` must all be among a configuration's four."""

    hull: str | None = None
    years: tuple[int | None, int | None] = (None, None)
    stern: str | None = None
    status: str | None = None
    dealer: str | None = None
    codes: tuple[str, ...] = ()


ASKED = Asked()


@dataclass(frozen=True)
class Place:
    """The last record of a page: the next one begins behind it."""

    date: date | None
    reference: str

    def __str__(self) -> str:
        """Return the place as text, for whoever asks for the next page."""
        return f"{self.date.isoformat() if self.date else ''}{_MARK}{self.reference}"

    @classmethod
    def read(cls, text: str) -> Self:
        """Return the place that was written; ValueError for what is none.

        >>> Place.read("2024-05-01~2024-007").reference, Place.read("~old-7").date
        ('2024-007', None)
        """
        day, mark, reference = text.partition(_MARK)
        if not mark or not reference:
            raise ValueError(f"{text!r} is no place in a list of records; give the cursor as it was returned")
        return cls(date.fromisoformat(day) if day else None, reference)


def condition(asked: Asked, after: Place | None = None) -> Iterator[sa.ColumnElement[bool]]:
    """Give the conditions, all of which must hold; `after` in the order newest first, undated last."""
    c = records.c
    if asked.hull is not None:
        yield _of_hull(asked.hull)
    for column, value in ((c.stern, asked.stern), (c.status, asked.status)):
        if value is not None:
            yield column == value
    if asked.dealer is not None:
        yield c.dealer == asked.dealer
    first, last = asked.years
    if first is not None:
        yield c.year >= first
    if last is not None:
        yield c.year <= last
    for code in asked.codes:
        yield sa.or_(c.gear == code, c.lower == code, c.upper == code, c.shaft == code)
    if after is not None and after.date is None:
        yield sa.and_(c.date.is_(None), c.reference < after.reference)
    elif after is not None:
        same_day = sa.and_(c.date == after.date, c.reference < after.reference)
        yield sa.or_(c.date.is_(None), c.date < after.date, same_day)


def _of_hull(hull_id: str) -> sa.ColumnElement[bool]:
    """Say that a record is of a hull model or of one that the same one stands for."""
    c = hull_models.c
    head = sa.select(sa.func.coalesce(c.survivor, c.id)).where(c.id == hull_id).scalar_subquery()
    family = sa.select(c.id).where(sa.or_(c.id == head, c.survivor == head))
    return records.c.hull_id.in_(family)
