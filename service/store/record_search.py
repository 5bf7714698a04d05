"""What records are searched for by, as conditions on the table, and the place in a long list to go on from."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date
from typing import Any, Literal, Self
from urllib.parse import quote, unquote

import sqlalchemy as sa

from service.store.schema import hull_aliases, hull_models, record_merges, records

_MARK = "~"
OWN = ~sa.exists().where(record_merges.c.record_id == records.c.id)
"""What was merged into another record is left out wherever records are counted or searched for."""
Side = Literal["port", "centre", "starboard"]
CENTRE_MM = 1.0
"""A shaft nearer to the centreline than this stands on it."""


@dataclass(frozen=True)
class Asked:
    """What is asked of records; None (or nothing) asks for any. `codes` must all be among a configuration's four.

    Each of `words` must be in the reference, the hull model's names, the stern, the status, the year, a code or the dealer;
    `dealers_of`: of no other dealer's records does the dealer's name count, so that none is told by it. `hull_words` must be
    in the names of the hull model.
    """

    hull: str | None = None
    years: tuple[int | None, int | None] = (None, None)
    stern: str | None = None
    status: str | None = None
    dealer: str | None = None
    codes: tuple[str, ...] = ()
    words: tuple[str, ...] = ()
    side: Side | None = None
    dealers_of: str | None = None
    hull_words: tuple[str, ...] = ()


ASKED = Asked()


@dataclass(frozen=True)
class Order:
    """One way to sort: by a column, upwards or down, then by reference the same way. Without a column, by reference."""

    column: sa.ColumnElement[Any] | None = None
    down: bool = False
    read: Callable[[str], Any] = str

    def by(self) -> tuple[sa.ColumnElement[Any], ...]:
        """Return what to order by."""
        every = (*([] if self.column is None else [self.column]), records.c.reference)
        return tuple(one.desc() if self.down else one.asc() for one in every)

    def behind(self, place: Place) -> sa.ColumnElement[bool]:
        """Return the condition for what comes behind a place that has a value."""
        own, text = records.c.reference, sa.literal(place.reference, sa.String)
        if self.column is None or place.value is None:
            return own < text if self.down else own > text
        here = sa.tuple_(self.column, own)
        there = sa.tuple_(sa.literal(place.value, self.column.type), text)
        return here < there if self.down else here > there


@dataclass(frozen=True)
class Place:
    """The last record of a page, with the value the list is sorted by: the next page begins behind it."""

    value: Any
    reference: str

    def __str__(self) -> str:
        """Return the place as text, for whoever asks for the next page."""
        said = self.value.isoformat() if isinstance(self.value, date) else self.value
        return f"{'' if said is None else quote(str(said)).replace(_MARK, '%7E')}{_MARK}{self.reference}"

    @classmethod
    def read(cls, text: str, value: Callable[[str], Any] = date.fromisoformat) -> Self:
        """Return the place that was written; ValueError for what is none. `value` reads what the list is sorted by.

        >>> Place.read("2024-05-01~2024-007").reference, Place.read("~old-7").value, Place.read("9.5~a", float).value
        ('2024-007', None, 9.5)
        """
        said, mark, reference = text.partition(_MARK)
        if not mark or not reference:
            raise ValueError(f"{text!r} is no place in a list of records; give the cursor as it was returned")
        return cls(value(unquote(said)) if said else None, reference)


NEWEST = Order(records.c.date, down=True, read=date.fromisoformat)
ORDERS: dict[str, Order] = {
    "newest": NEWEST,
    "oldest": Order(records.c.date, read=date.fromisoformat),
    "reference": Order(),
    "boat": Order(records.c.hull_id),
    "year": Order(records.c.year, read=int),
    "offset": Order(records.c.offset_mm, read=float),
}


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
    if asked.side is not None:
        yield _beside(asked.side)
    yield from (_has(word, asked.dealers_of) for word in asked.words)
    yield from (c.hull_id.in_(_called(word)) for word in asked.hull_words)


def _beside(side: Side) -> sa.ColumnElement[bool]:
    offset = records.c.offset_mm
    if side == "centre":
        return sa.func.abs(offset) < CENTRE_MM
    return offset <= -CENTRE_MM if side == "port" else offset >= CENTRE_MM


def _of_family(hull_id: str) -> sa.ColumnElement[bool]:
    """Say that a record is of a hull model, or of one that the same hull model stands for: merged ones are one."""
    c = hull_models.c
    head = sa.select(sa.func.coalesce(c.survivor, c.id)).where(c.id == hull_id).scalar_subquery()
    return records.c.hull_id.in_(sa.select(c.id).where(sa.or_(c.id == head, c.survivor == head)))


def _has(word: str, dealers_of: str | None) -> sa.ColumnElement[bool]:
    """Say that a word is somewhere in a record, or in a name of its hull model or of one merged with that."""
    c = records.c
    plain = word.replace("-", "_")
    found = [one.icontains(word, autoescape=True) for one in (c.reference, c.gear, c.lower, c.upper, c.shaft, c.status)]
    found.append(c.stern.icontains(plain, autoescape=True))
    dealer = c.dealer.icontains(word, autoescape=True)
    found.append(dealer if dealers_of is None else sa.and_(c.dealer == dealers_of, dealer))
    if word.isdecimal() and word.isascii():
        found.append(sa.cast(c.year, sa.String) == word)
    return sa.or_(*found, c.hull_id.in_(_called(word)))


def _called(word: str) -> sa.Select[Any]:
    """Return the ids of hull models that have a word in a name, and of all that are one with them."""
    own, every, alias = hull_models.alias(), hull_models.alias(), hull_aliases.c
    named = sa.or_(
        own.c.model.icontains(word, autoescape=True),
        own.c.builder.icontains(word, autoescape=True),
        own.c.id.in_(sa.select(alias.hull_id).where(alias.alias.icontains(word, autoescape=True))),
    )
    heads = sa.select(sa.func.coalesce(own.c.survivor, own.c.id)).where(named)
    return sa.select(every.c.id).where(sa.func.coalesce(every.c.survivor, every.c.id).in_(heads))


def page(
    asked: Asked, after: Place | None, order: Order = NEWEST, *, valued: bool
) -> list[sa.ColumnElement[bool]] | None:
    """Return the conditions for what comes behind `after` among records with a value to sort by, or without.

    None where none can come: those without a value stand after all that have one.
    """
    found = list(condition(asked))
    if order.column is None:
        return None if not valued else [*found, *([] if after is None else [order.behind(after)])]
    found.append(order.column.is_not(None) if valued else order.column.is_(None))
    if after is None or (after.value is not None and not valued):
        return found
    if after.value is None and valued:
        return None
    return [*found, order.behind(after)]
