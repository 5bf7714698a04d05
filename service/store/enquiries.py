"""Enquiries as they were read, with the mail they came in, and the answers as they went out."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import sqlalchemy as sa

from service.core.boat import BoatForm, Contact
from service.store.contacts import JOINED, Contacts, with_contact
from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.happening import Happening
from service.store.persons import person_of, without_contact
from service.store.schema import answers, contacts, enquiries
from service.store.stored import UtcTime


@dataclass(frozen=True)
class Enquiry:
    """One boat asked about. `message_id` is the mail's own, `boat` counts from 0 the boats in it.

    `owner` is the dealer whose enquiry it is, empty for the maker's own desk. `version` is the number of its last step at
    the desk, `waits` whose move it is: us, them or nobody.
    """

    id: str
    form: BoatForm
    source: str
    received: datetime | None = None
    message_id: str | None = None
    boat: int = 0
    hull: str | None = None
    owner: str = ""
    created: datetime | None = None
    version: int = 0
    waits: str = "us"


class Enquiries:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self._contacts = Contacts(desk)

    def add(
        self,
        form: BoatForm,
        *,
        source: str,
        received: datetime | None = None,
        message_id: str | None = None,
        boat: int = 0,
        hull: str | None = None,
        owner: str = "",
    ) -> str:
        """Keep an enquiry and return its id.

        The same boat of the same mail of the same owner keeps its id when it is read again; what was read last stands,
        unless somebody at the desk has worked on it since.
        """
        message_id = message_id or None
        (contact,) = self._contacts.keep([person_of(form.contact)])
        values = {
            "received": received,
            "form": without_contact(form).model_dump_json(by_alias=True, exclude_none=True),
            "source": source,
            "hull_id": hull,
            "contact_id": contact,
        }
        c = enquiries.c
        same = sa.and_(c.message_id == message_id, c.boat == boat, c.owner == owner)
        known = message_id and self._desk.one(sa.select(c.id, c.version).where(same))
        if known:
            self._desk.happened.append(Happening("changed", "enquiry", str(known.id), owner))
            values = {"waits": "us"} if known.version else values
            self._desk.connection.execute(enquiries.update().where(c.id == known.id).values(**values))
            return str(known.id)
        new = self._desk.new_id("enquiry")
        row = {"id": new, "message_id": message_id, "boat": boat, "created": self._desk.now(), "owner": owner, **values}
        self._desk.write(enquiries.insert(), [row])
        self._desk.happened.append(Happening("created", "enquiry", new, owner))
        return new

    def get(self, enquiry_id: str) -> Enquiry | None:
        """Return one enquiry, None where there is no such id."""
        row = self._desk.one(_SELECT.where(enquiries.c.id == enquiry_id))
        return None if row is None else _shaped(row)

    def page(
        self, owner: str | None, *, after: tuple[datetime, str] | None, limit: int, waits: str | None = None
    ) -> tuple[Enquiry, ...]:
        """Return the enquiries of one owner (everybody's where None), the newest first, from behind `after` on.

        `waits` chooses those whose move it is.
        """
        c = enquiries.c
        chosen = sa.select(c.id).order_by(c.created.desc(), c.id.desc()).limit(limit)  # an index holds all it looks at
        if owner is not None:
            chosen = chosen.where(c.owner == owner)
        if waits is not None:
            chosen = chosen.where(c.waits == waits)
        if after is not None:
            place = sa.tuple_(sa.literal(after[0], UtcTime), sa.literal(after[1], sa.String))
            chosen = chosen.where(sa.tuple_(c.created, c.id) < place)
        asked = _SELECT.where(c.id.in_(chosen)).order_by(c.created.desc(), c.id.desc())
        return tuple(map(_shaped, self._desk.all(asked)))

    def waiting(self, owner: str | None) -> dict[str, int]:
        """Return how many enquiries of one owner (everybody's where None) wait for whom."""
        c = enquiries.c
        asked = sa.select(c.waits, sa.func.count().label("n")).group_by(c.waits)
        rows = self._desk.all(asked if owner is None else asked.where(c.owner == owner))
        return {row.waits: row.n for row in rows}

    def of_words(self, source: str, owner: str | None = None) -> tuple[str, ...]:
        """Return the ids of those among the last thousand that came in with these very words, the oldest first."""
        c = enquiries.c
        recent = sa.select(c.id).order_by(c.created.desc(), c.id.desc()).limit(_RECENT)
        last = recent if owner is None else recent.where(c.owner == owner)
        asked = sa.select(c.id).where(c.id.in_(last), c.source == source).order_by(c.created, c.boat)
        return tuple(str(row.id) for row in self._desk.all(asked))

    def contact(self, contact: Contact) -> str | None:
        """Keep who is to be answered, and return the id; None for nobody."""
        return self._contacts.keep([person_of(contact)])[0]

    def in_thread(self, message_ids: Sequence[str], owner: str | None = None) -> tuple[Enquiry, ...]:
        """Return what came in with any of these messages, oldest first, boat by boat; to `owner` alone where given."""
        chosen = _SELECT if owner is None else _SELECT.where(enquiries.c.owner == owner)
        rows = self._desk.among(chosen, enquiries.c.message_id, sorted(set(message_ids)))
        found = [(row.created, _shaped(row)) for row in rows]
        return tuple(one for _, one in sorted(found, key=lambda pair: (pair[1].received or pair[0], pair[1].boat)))


def _shaped(row: sa.Row[Any]) -> Enquiry:
    return Enquiry(
        id=row.id,
        form=with_contact(BoatForm.model_validate_json(row.form), row),
        source=row.source,
        received=row.received,
        message_id=row.message_id,
        boat=row.boat,
        hull=row.hull_id,
        owner=row.owner,
        created=row.created,
        version=row.version,
        waits=row.waits,
    )


_RECENT = 1_000
_SELECT = sa.select(enquiries, *JOINED).outerjoin(contacts, contacts.c.id == enquiries.c.contact_id)


class Answers:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def new_id(self) -> str:
        """Return an id for an answer that is about to be written into its own document."""
        return self._desk.new_id("answer")

    def add(self, enquiry_id: str, document: str, *, answer_id: str | None = None) -> str:
        """Keep an answer's JSON exactly as sent and return its id. Conflict for an enquiry that is not there."""
        row = {
            "id": answer_id or self.new_id(),
            "enquiry_id": enquiry_id,
            "document": document,
            "sha256": hashlib.sha256(document.encode()).hexdigest(),
            "created": self._desk.now(),
        }
        known = self._desk.one(sa.select(enquiries.c.owner).where(enquiries.c.id == enquiry_id))
        if known is None:
            raise Conflict("there is no such enquiry", repr(enquiry_id), "Keep the enquiry before its answer")
        self._desk.write(answers.insert(), [row])
        told = {"answer": row["id"], "enquiry": enquiry_id}
        self._desk.happened.append(Happening("created", "answer", str(row["id"]), str(known.owner), told))
        return str(row["id"])

    def owner(self, answer_id: str) -> str | None:
        """Return whose enquiry an answer answers, None where there is no such id."""
        asked = sa.select(enquiries.c.owner).join(answers, answers.c.enquiry_id == enquiries.c.id)
        row = self._desk.one(asked.where(answers.c.id == answer_id))
        return None if row is None else str(row.owner)

    def get(self, answer_id: str) -> str | None:
        """Return the JSON as sent, None where there is no such id. Conflict where it was tampered with."""
        row = self._desk.one(sa.select(answers.c.document, answers.c.sha256).where(answers.c.id == answer_id))
        if row is None:
            return None
        if hashlib.sha256(row.document.encode()).hexdigest() != row.sha256:
            raise Conflict("this answer is no longer what was sent", repr(answer_id), "Restore it from a backup")
        return str(row.document)

    def hash_of(self, answer_id: str) -> str | None:
        """Return the SHA-256 of an answer's document as sent, None where there is no such id."""
        row = self._desk.one(sa.select(answers.c.sha256).where(answers.c.id == answer_id))
        return None if row is None else str(row.sha256)

    def by_hash(self, beginning: str) -> tuple[str, ...]:
        """Return the ids of the answers whose document's SHA-256 begins so, the oldest first; ten at most."""
        c = answers.c
        last = beginning + "g"  # behind every sign a hash can have
        asked = sa.select(c.id).where(c.sha256 >= beginning, c.sha256 < last).order_by(c.created, c.id).limit(10)
        return tuple(row.id for row in self._desk.all(asked))

    def of(self, enquiry_id: str) -> tuple[str, ...]:
        """Return the ids of the answers to one enquiry, oldest first."""
        c = answers.c
        rows = self._desk.all(sa.select(c.id).where(c.enquiry_id == enquiry_id).order_by(c.created, c.id))
        return tuple(row.id for row in rows)
