"""Installations: as they stand, and every state they were in."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from datetime import datetime
from itertools import groupby
from typing import Any, NamedTuple

import sqlalchemy as sa

from service.core.record import Record
from service.core.revision import Revision
from service.store.attachments import Attachments
from service.store.boats import Boats
from service.store.carried import Carried
from service.store.contacts import JOINED, Contacts, with_contact
from service.store.desk import Desk, uncollected
from service.store.errors import Conflict
from service.store.happening import Happening
from service.store.measurements import Measurements
from service.store.merges import Merges
from service.store.record_counts import RecordCounts
from service.store.record_search import ASKED, NEWEST, OWN, Asked, Order, Place, condition, page
from service.store.schema import contacts, record_revisions, records
from service.store.series import Series
from service.store.written import Standing, Written, written


class Records:
    """Installations, and with them what was measured, what was merged, and the references given out."""

    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self.measurements, self.merges, self.series = Measurements(desk), Merges(desk), Series(desk)
        self.attachments, self.carried, self.counts = Attachments(desk), Carried(desk), RecordCounts(desk)
        self._boats = Boats(desk)
        self._contacts = Contacts(desk)

    def all(self) -> tuple[Record, ...]:
        """Return every record as it stands, by date and reference (undated first). One statement, however many.

        What was merged into another record is left out, here and wherever records are counted or searched for.
        """
        return _records(self._desk.all(_CURRENT.where(OWN)))

    def each(self) -> Iterator[Record]:
        """Yield what `all` returns, one after the other: nothing holds all of them at once."""
        return map(_record, self._desk.stream(_CURRENT.where(OWN)))

    def each_history(self) -> Iterator[tuple[Revision, ...]]:
        """Yield what `histories` returns, one after the other: nothing holds all of them at once."""
        rows = self._desk.stream(_EVERY)
        return (_revisions(group) for _, group in groupby(rows, lambda row: str(row.reference)))

    def count(self) -> int:
        """Return how many records there are."""
        counted = sa.select(sa.func.count()).select_from(records).where(OWN)
        return int(self._desk.connection.execute(counted).scalar_one())

    def get(self, reference: str) -> Record | None:
        """Return one record as it stands, None where there is no such reference. One that was merged, as it was."""
        return self.among([reference]).get(reference)

    def among(self, references: Iterable[str]) -> dict[str, Record]:
        """Return those of the references that exist, as they stand; merged ones as they were."""
        rows = self._desk.among(_CURRENT, records.c.reference, sorted(set(references)))
        return {record.reference: record for record in _records(rows)}

    def find(self, *, hull: str | None = None, year: int | None = None, stern: str | None = None) -> tuple[Record, ...]:
        """Return the records of a hull model, a year of building and a stern, each where given."""
        asked = Asked(hull=hull, years=(year, year), stern=stern)
        return _records(self._desk.all(_CURRENT.where(OWN, *condition(asked))))

    def search(
        self, asked: Asked = ASKED, *, after: Place | None = None, limit: int, order: Order = NEWEST
    ) -> tuple[Record, ...]:
        """Return the first `limit` records that are asked for, newest first, undated last; from behind `after` on."""
        return self.search_page(asked, after=after, limit=limit, order=order)[0]

    def search_page(
        self, asked: Asked = ASKED, *, after: Place | None = None, limit: int, order: Order = NEWEST
    ) -> tuple[tuple[Record, ...], Place | None]:
        """Return the same in any order, those without a value to sort by last, and the place of the last one."""
        found: list[sa.Row[Any]] = []
        sorts = (records.c.reference if order.column is None else order.column).label("sorts")
        for valued in (True, False):  # each follows an index; both in one statement follow none
            part = page(asked, after, order, valued=valued)
            if part is not None and len(found) < limit:
                asks = _CURRENT.add_columns(records.c.reference, sorts).where(OWN, *part).order_by(None)
                found += self._desk.all(asks.order_by(*order.by()).limit(limit - len(found)))
        last = Place(found[-1].sorts, found[-1].reference) if found else None
        return _records(found), last

    def matching(self, asked: Asked) -> frozenset[str]:
        """Return the references of all records that are asked for."""
        rows = self._desk.all(sa.select(records.c.reference).where(OWN, *condition(asked)))
        return frozenset(row.reference for row in rows)

    def dealers(self) -> tuple[str, ...]:
        """Return every dealer that a record names."""
        c = records.c.dealer
        return tuple(row.dealer for row in self._desk.all(sa.select(c).distinct().where(c.is_not(None)).order_by(c)))

    def proposed_by(self, answer: str) -> tuple[Record, ...]:
        """Return the records that an answer was made into."""
        return _records(self._desk.all(_CURRENT.where(OWN, records.c.answer == answer)))

    def of_same_boat(self, reference: str) -> tuple[str, ...]:
        """Return the references of all records of a record's boat, its own among them."""
        c = records.c
        boat = sa.select(c.boat_id).where(c.reference == reference).scalar_subquery()
        rows = self._desk.all(sa.select(c.reference).where(OWN, c.boat_id == boat).order_by(c.reference))
        return tuple(row.reference for row in rows)

    def head(self, reference: str, *, lock: bool = False) -> int | None:
        """Return the number of the current revision, None where there is no such reference.

        `lock` keeps others from changing the record until this unit of work ends, and waits for who does so already.
        """
        rows = list(self._heads([reference], lock=lock))
        return int(rows[0].head) if rows else None

    def heads(self, references: Iterable[str]) -> dict[str, int]:
        """Return the number of the current revision of those of the references that exist."""
        return {row.reference: int(row.head) for row in self._heads(sorted(set(references)))}

    def as_written(self, references: Iterable[str]) -> dict[str, Standing]:
        """Return what stands of those of the references that exist, as it is written and not read."""
        rows = self._desk.among(_WRITTEN, records.c.reference, sorted(set(references)))
        return {
            row.reference: Standing(
                row.head, row.document, (row.contact_name, row.contact_email, row.contact_phone, row.contact_role)
            )
            for row in rows
        }

    def history(self, reference: str) -> tuple[Revision, ...]:
        """Return every state of one record, oldest first; empty where there is no such reference."""
        return _revisions(self._desk.all(_EVERY.where(records.c.reference == reference)))

    def histories(self) -> dict[str, tuple[Revision, ...]]:
        """Return every state of every record by reference, in the order of `all`, those of merged ones too."""
        return _by_reference(self._desk.all(_EVERY))

    def histories_among(self, references: Iterable[str]) -> dict[str, tuple[Revision, ...]]:
        """Return every state of those of the references that exist."""
        return _by_reference(self._desk.among(_EVERY, records.c.reference, sorted(set(references))))

    def add(self, record: Record, *, who: str, why: str) -> None:
        """Add a new record. Conflict where the reference is taken."""
        self.add_many([record], who=who, why=why)

    def add_many(self, fresh: Sequence[Record], *, who: str, why: str) -> None:
        """Add new records. Conflict where a reference is taken, by another of them too."""
        self.add_histories([(self._first(record, who, why),) for record in fresh])

    def add_histories(self, histories: Sequence[Sequence[Revision]]) -> None:
        """Add new records with every state they were in, oldest first. Conflict where a reference is taken."""
        states = [_states(history) for history in histories]
        ids = self._add([history[-1].what for history in states], [len(history) for history in states])
        self._append([(record_id, 0, history) for record_id, history in zip(ids, states, strict=True)])

    def add_written(self, fresh: Sequence[Written], *, who: str, why: str) -> None:
        """Add new records of which it was worked out before what is to be written. Conflict as `add_histories`."""
        now = self._desk.now()
        ids = self._add(fresh, [1] * len(fresh))
        self._append([(record_id, 0, (_State(who, now, why, one),)) for record_id, one in zip(ids, fresh, strict=True)])

    def _add(self, current: Sequence[Written], heads: Sequence[int]) -> list[str]:
        self._refuse_taken([one.reference for one in current])
        ids, now = [self._desk.new_id("record") for _ in current], self._desk.now()
        boats = self._boats.keep(current)
        rows = [
            {"id": record_id, "head": head, "created": now, "boat_id": boat, **one.row}
            for record_id, head, boat, one in zip(ids, heads, boats, current, strict=True)
        ]
        self._desk.write(records.insert(), rows)
        return ids

    def revise(self, record: Record, *, who: str, why: str) -> bool:
        """Make `record` the current state of its reference, keeping the earlier ones. False where nothing differs."""
        return bool(self.revise_many([record], who=who, why=why))

    def revise_many(self, changed: Sequence[Record], *, who: str, why: str) -> tuple[str, ...]:
        """Make each the current state of its reference. Returns the references in which something differed."""
        standing = self.among(record.reference for record in changed)
        for record in changed:
            if record.reference not in standing:
                raise Conflict("there is no such record", repr(record.reference), "Add it before revising it")
        differing = [record for record in changed if record != standing[record.reference]]
        self.extend_histories([(self._first(record, who, why),) for record in differing])
        return tuple(record.reference for record in differing)

    def extend_histories(self, histories: Sequence[Sequence[Revision]]) -> None:
        """Put further states, oldest first, after those that known references have; they are numbered on from there."""
        states = [_states(history) for history in histories]
        current = [history[-1].what for history in states]
        heads = {row.reference: row for row in self._heads([one.reference for one in current], lock=True)}
        rows, steps = list[dict[str, Any]](), []
        for one, boat, history in zip(current, self._boats.keep(current), states, strict=True):
            known = heads[one.reference]
            row = {name: value for name, value in one.row.items() if name != "reference"}
            rows.append({**row, "the_id": known.id, "head": known.head + len(history), "boat_id": boat})
            steps.append((known.id, known.head, history))
        self._desk.write(records.update().where(records.c.id == sa.bindparam("the_id")), rows)
        self._append(steps)
        self._boats.forget_unused([row.boat_id for row in heads.values()])

    def _first(self, record: Record, who: str, why: str) -> Revision:
        return Revision(number=1, who=who, why=why, at=self._desk.now(), record=record)

    def _heads(self, references: Sequence[str], *, lock: bool = False) -> Iterable[sa.Row[Any]]:
        c = records.c
        heads = sa.select(c.id, c.reference, c.head, c.boat_id).order_by(c.reference)
        return self._desk.among(heads.with_for_update() if lock else heads, c.reference, sorted(references))

    def _refuse_taken(self, references: Sequence[str]) -> None:
        taken = [row.reference for row in self._heads(references)]
        taken += [reference for reference, times in Counter(references).items() if times > 1]
        if taken:
            raise Conflict("this reference is taken", repr(taken[0]), "Revise that record, or take another")

    def _append(self, steps: Sequence[tuple[str, int, Sequence[_State]]]) -> None:
        flat = [(record_id, head + n, one) for record_id, head, some in steps for n, one in enumerate(some, start=1)]
        people = self._contacts.keep([one.what.person for _, _, one in flat])
        rows = [
            {
                "record_id": record_id,
                "number": number,
                "who": one.who,
                "at": one.at,
                "why": one.why,
                "contact_id": contact,
                "document": one.what.document,
            }
            for (record_id, number, one), contact in zip(flat, people, strict=True)
        ]
        self._desk.write(record_revisions.insert(), rows)
        for _, head, states in steps:
            self._desk.happened.append(_happening(head, states))


class _State(NamedTuple):
    """One state of a record as it is written: who, when, why, and what."""

    who: str
    at: datetime
    why: str
    what: Written


def _states(history: Sequence[Revision]) -> tuple[_State, ...]:
    return tuple(_State(one.who, one.at, one.why, written(one.record)) for one in history)


def _happening(head: int, states: Sequence[_State]) -> Happening:
    reference = states[-1].what.reference
    told = {"reference": reference, "revision": head + len(states)}
    return Happening("changed" if head else "created", "record", reference, None, told)


def _records(rows: Iterable[sa.Row[Any]]) -> tuple[Record, ...]:
    with uncollected():
        return tuple(_record(row) for row in rows)


def _record(row: sa.Row[Any]) -> Record:
    record = Record.model_validate_json(row.document)
    form = with_contact(record.form, row)
    return record if form is record.form else record.model_copy(update={"form": form})


def _by_reference(rows: Iterable[sa.Row[Any]]) -> dict[str, tuple[Revision, ...]]:
    with uncollected():
        return {reference: _revisions(group) for reference, group in groupby(rows, lambda row: str(row.reference))}


def _revisions(rows: Iterable[sa.Row[Any]]) -> tuple[Revision, ...]:
    return tuple(Revision(number=row.number, who=row.who, at=row.at, why=row.why, record=_record(row)) for row in rows)


_REVISION = record_revisions.c
_ORDER = (records.c.date.is_not(None), records.c.date, records.c.reference)
_CURRENT = (
    sa.select(_REVISION.document, *JOINED)
    .select_from(records)
    .join(record_revisions, sa.and_(_REVISION.record_id == records.c.id, _REVISION.number == records.c.head))
    .outerjoin(contacts, contacts.c.id == _REVISION.contact_id)
    .order_by(*_ORDER)
)
_WRITTEN = (
    sa.select(records.c.reference, records.c.head, _REVISION.document, *JOINED)
    .select_from(records)
    .join(record_revisions, sa.and_(_REVISION.record_id == records.c.id, _REVISION.number == records.c.head))
    .outerjoin(contacts, contacts.c.id == _REVISION.contact_id)
)
_EVERY = (
    sa.select(
        records.c.reference, _REVISION.number, _REVISION.who, _REVISION.at, _REVISION.why, _REVISION.document, *JOINED
    )
    .select_from(records)
    .join(record_revisions, _REVISION.record_id == records.c.id)
    .outerjoin(contacts, contacts.c.id == _REVISION.contact_id)
    .order_by(*_ORDER, _REVISION.number)
)
