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


NEWEST = (records.c.date.desc(), records.c.reference.desc())


def condition(asked: Asked) -> Iterator[sa.ColumnElement[bool]]:
    """Give the conditions, all of which must hold."""
    c = records.c
    if asked.hull is not None:
        yield _of_family(asked.hull)
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


def _of_family(hull_id: str) -> sa.ColumnElement[bool]:
    """Say that a record is of a hull model, or of one that the same hull model stands for: merged ones are one."""
    c = hull_models.c
    head = sa.select(sa.func.coalesce(c.survivor, c.id)).where(c.id == hull_id).scalar_subquery()
    return records.c.hull_id.in_(sa.select(c.id).where(sa.or_(c.id == head, c.survivor == head)))


def page(asked: Asked, after: Place | None, *, dated: bool) -> list[sa.ColumnElement[bool]] | None:
    """Return the conditions for what comes behind `after` among records with a date, or without; None where none can.

    In the order of NEWEST, and undated ones after all dated ones.
    """
    c, found = records.c, list(condition(asked))
    found.append(c.date.is_not(None) if dated else c.date.is_(None))
    if after is None or (after.date is not None and not dated):
        return found
    if after.date is None:
        return None if dated else [*found, c.reference < after.reference]
    place = sa.tuple_(sa.literal(after.date, sa.Date), sa.literal(after.reference, sa.String))
    return [*found, sa.tuple_(c.date, c.reference) < place]
