"""Everything that is held about somebody, wherever it stands, and taking it away again."""

from __future__ import annotations

import hashlib
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import sqlalchemy as sa

from service.core.traces import Traces
from service.store.desk import Desk, chunks
from service.store.desk_schema import enquiry_steps, working_answers
from service.store.dialect import MOST_BOUND
from service.store.happening import Happening
from service.store.schema import answers, attachments, contacts, enquiries, metadata, record_revisions, records

KEPT = frozenset(
    {
        "who", "owner", "dealer", "reference", "gear", "lower", "upper", "shaft", "hull", "catalogue", "answer", "schema",
        "builder", "model", "status", "kind", "state", "secret", "digest", "fingerprint", "token", "sha256", "url",
    }
)  # fmt: skip
"""Columns, and keys in documents, that something else goes by: what stands there is counted, not changed."""
_REGISTRY = {
    "hull_models",
    "hull_aliases",
    "hull_surfaces",
    "hull_forms",
    "catalogues",
    "recall_weights",
    "stamps",
    "users",
}


@dataclass(frozen=True)
class Known:
    """A contact: one person as they signed once. `created` is when that was first kept."""

    id: str
    name: str | None
    email: str | None
    phone: str | None
    role: str | None
    created: datetime


@dataclass(frozen=True)
class Asking:
    """An enquiry of somebody as it is written: the form without them, and the mail as it came."""

    id: str
    created: datetime
    received: datetime | None
    message_id: str | None
    source: str
    form: str
    contact: str


@dataclass(frozen=True)
class Sent:
    """An answer as it is written."""

    id: str
    enquiry: str
    created: datetime
    document: str


@dataclass(frozen=True)
class State:
    """One revision of a record that names somebody; `status` is the record's as it stands."""

    reference: str
    record: str
    number: int
    status: str
    document: str
    contact: str


@dataclass(frozen=True)
class Done:
    """A step of an enquiry at the desk, as it is written."""

    enquiry: str
    number: int
    form: str | None
    said: str | None


class People:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def all(self) -> Iterator[Known]:
        """Yield every contact, by name."""
        c = contacts.c
        for row in self._desk.stream(sa.select(contacts).order_by(c.name, c.id)):
            yield Known(**row._mapping)  # noqa: SLF001 - its public name

    def enquiries(self, ids: Sequence[str]) -> tuple[Asking, ...]:
        """Return the enquiries of these contacts, oldest first."""
        c = enquiries.c
        columns = (c.id, c.created, c.received, c.message_id, c.source, c.form, c.contact_id.label("contact"))
        found = [Asking(**row._mapping) for row in self._desk.among(sa.select(*columns), c.contact_id, ids)]  # noqa: SLF001
        return tuple(sorted(found, key=lambda one: (one.created, one.id)))

    def answers(self, ids: Sequence[str]) -> tuple[Sent, ...]:
        """Return the answers to these enquiries, oldest first."""
        c = answers.c
        columns = (c.id, c.enquiry_id.label("enquiry"), c.created, c.document)
        found = [Sent(**row._mapping) for row in self._desk.among(sa.select(*columns), c.enquiry_id, ids)]  # noqa: SLF001
        return tuple(sorted(found, key=lambda one: (one.created, one.id)))

    def states(self, ids: Sequence[str]) -> tuple[State, ...]:
        """Return the revisions that name these contacts, by record and number."""
        c, r = record_revisions.c, records.c
        columns = (
            r.reference, c.record_id.label("record"), c.number, r.status, c.document, c.contact_id.label("contact")
        )  # fmt: skip
        asked = sa.select(*columns).join(records, r.id == c.record_id)
        found = [State(**row._mapping) for row in self._desk.among(asked, c.contact_id, ids)]  # noqa: SLF001
        return tuple(sorted(found, key=lambda one: (one.reference, one.number)))

    def documents(self, record_ids: Sequence[str]) -> Iterator[tuple[str, str]]:
        """Yield a record's id with its document, of every revision of these records."""
        c = record_revisions.c
        for row in self._desk.among(sa.select(c.record_id, c.document), c.record_id, record_ids):
            yield row.record_id, row.document

    def steps(self, ids: Sequence[str]) -> tuple[Done, ...]:
        """Return what was done with these enquiries at the desk."""
        c = enquiry_steps.c
        asked = sa.select(c.enquiry_id.label("enquiry"), c.number, c.form, c.said)
        return tuple(Done(**row._mapping) for row in self._desk.among(asked, c.enquiry_id, ids))  # noqa: SLF001

    def write_step(self, step: Done, *, form: str | None, said: str | None) -> None:
        """Write over the form and the words of a step."""
        c = enquiry_steps.c
        mine = sa.and_(c.enquiry_id == step.enquiry, c.number == step.number)
        self._desk.connection.execute(enquiry_steps.update().where(mine).values(form=form, said=said))

    def drop_drafts(self, ids: Sequence[str]) -> None:
        """Take away what there would have been to answer to these enquiries: it can be worked out again."""
        for part in chunks(ids, MOST_BOUND):
            self._desk.connection.execute(working_answers.delete().where(working_answers.c.enquiry_id.in_(part)))

    def write_enquiry(self, enquiry_id: str, **columns: str | None) -> None:
        """Write over columns of an enquiry."""
        self._desk.connection.execute(enquiries.update().where(enquiries.c.id == enquiry_id).values(**columns))

    def write_answer(self, answer_id: str, document: str) -> None:
        """Write over an answer, with the hash that tells whether it was tampered with."""
        said = {"document": document, "sha256": hashlib.sha256(document.encode()).hexdigest()}
        self._desk.connection.execute(answers.update().where(answers.c.id == answer_id).values(**said))

    def write_state(self, record_id: str, number: int, document: str) -> None:
        """Write over a revision, naming nobody in it."""
        c = record_revisions.c
        mine = sa.and_(c.record_id == record_id, c.number == number)
        self._desk.connection.execute(record_revisions.update().where(mine).values(document=document, contact_id=None))

    def write_file(self, reference: str, number: int, note: bytes, sha256: str) -> None:
        """Put a note in the place of an attachment."""
        c = attachments.c
        own = sa.select(records.c.id).where(records.c.reference == reference).scalar_subquery()
        said = {"sha256": sha256, "bytes": len(note), "type": "text/plain", "name": "erased.txt", "note": None}
        mine = sa.and_(c.record_id == own, c.number == number)
        self._desk.connection.execute(attachments.update().where(mine).values(**said))

    def forget(self, ids: Sequence[str]) -> None:
        """Take contacts away. Nothing may speak of them any more."""
        for part in chunks(ids, MOST_BOUND):
            self._desk.connection.execute(contacts.delete().where(contacts.c.id.in_(part)))
        self._desk.happened.extend(Happening("removed", "contact", one, "") for one in ids)

    def sweep(self, traces: Traces, *, write: bool) -> tuple[Counter[str], Counter[str]]:
        """Look at every text of every table but the contacts, and take the people out of it.

        Returns in how many cells of each `table.column` they were redacted, and in how many they are left because
        something else goes by what stands there. Nothing is changed unless `write`.
        """
        redacted, left = Counter[str](), Counter[str]()
        for table in metadata.sorted_tables:
            if table is not contacts:
                self._sweep_one(table, traces, redacted, left, write=write)
        return redacted, +left

    def _sweep_one(
        self, table: sa.Table, traces: Traces, redacted: Counter[str], left: Counter[str], *, write: bool
    ) -> None:
        keys = [*table.primary_key.columns]
        texts = [column for column in table.columns if isinstance(column.type, sa.String) and not column.foreign_keys]
        fixed = {c.name for c in texts if table.name in _REGISTRY or c.name in KEPT or c.primary_key or c.name == "key"}
        changed = []
        for row in self._desk.stream(sa.select(*keys, *(column for column in texts if not column.primary_key))):
            said = dict(row._mapping)  # noqa: SLF001 - its public name
            fresh = {}
            for column in texts:
                was = said[column.name]
                if was is None or (clean := traces.cleaned(was)) == was:
                    continue
                now = was if column.name in fixed else traces.cleaned(was, KEPT)
                left[f"{table.name}.{column.name}"] += now != clean
                if now == was:
                    continue
                redacted[f"{table.name}.{column.name}"] += 1
                fresh[column.name] = _same_for_same(was) if column.name == "message_id" else now
            if fresh:
                changed.append(({key: said[key.name] for key in keys}, fresh))
        for where, fresh in changed if write else ():
            mine = sa.and_(*(key == value for key, value in where.items()))
            self._desk.connection.execute(table.update().where(mine).values(**_with_hash(table, fresh)))


def _same_for_same(message_id: str) -> str:
    return f"erased-{hashlib.sha256(message_id.encode()).hexdigest()[:32]}"


def _with_hash(table: sa.Table, fresh: dict[str, Any]) -> dict[str, Any]:
    """Return the columns with the hash of an answer's document where it is one."""
    if table is answers and "document" in fresh:
        return {**fresh, "sha256": hashlib.sha256(fresh["document"].encode()).hexdigest()}
    return fresh
