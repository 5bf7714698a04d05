"""What is to be told to whom: written in the transaction of the thing itself, sent when that stands."""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

import sqlalchemy as sa

from service.store.desk import Desk, chunks
from service.store.edge_schema import outbox, webhooks
from service.store.happening import Happening

EVENTS = {"answer": "answer.ready", "record": "record.changed"}
"""Kinds of things that webhooks are told of, and what the event is called."""
MOST_TOLD = 200
"""Things named in one message."""


@dataclass(frozen=True)
class Letter:
    """One message to one address, to be signed and sent. `message` stays the same however often it is tried."""

    id: str
    message: str
    webhook: str
    url: str
    secret: str
    body: str
    created: datetime
    attempts: int


class Outbox:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def put(self, happened: Sequence[Happening]) -> None:
        """Write a message to everybody who wants to be told of any of this, and may be."""
        told = [one for one in happened if one.kind in EVENTS and one.action != "read"]
        if not told:
            return
        c = webhooks.c
        listening = self._desk.all(sa.select(c.id, c.owner, c.events).where(c.stopped.is_(None)))
        rows = []
        for hook in listening:
            by_event = defaultdict(list)
            for one in told:
                event = EVENTS[one.kind]
                if event in hook.events.split() and (hook.owner in ("", one.owner) or one.owner is None):
                    by_event[event].append(dict(one.told))
            rows += [
                self._row(hook.id, event, list(part))
                for event, things in by_event.items()
                for part in chunks(things, MOST_TOLD)
            ]
        self._desk.write(outbox.insert(), rows)

    def _row(self, webhook: str, event: str, things: list[dict[str, object]]) -> dict[str, object]:
        now = self._desk.now()
        body = {"type": event, "timestamp": now.isoformat(), "data": {f"{event.partition('.')[0]}s": things}}
        return {
            "id": self._desk.new_id("outbox"),
            "webhook_id": webhook,
            "message": self._desk.new_id("msg"),
            "body": json.dumps(body, ensure_ascii=False, separators=(",", ":")),
            "created": now,
            "due": now,
            "attempts": 0,
        }

    def take(self, until: datetime, limit: int = 20) -> tuple[Letter, ...]:
        """Return what is due, and let nobody else take it before `until`."""
        o, w = outbox.c, webhooks.c
        chosen = (
            sa.select(o.id, o.message, w.id.label("webhook"), w.url, w.secret, o.body, o.created, o.attempts)
            .join(webhooks, w.id == o.webhook_id)
            .where(o.due <= self._desk.now())
            .order_by(o.due, o.id)
            .limit(limit)
        )
        letters = tuple(Letter(**row._mapping) for row in self._desk.all(chosen))  # noqa: SLF001 - its public name
        for letter in letters:
            said = {"due": until, "attempts": letter.attempts + 1}
            self._desk.connection.execute(outbox.update().where(o.id == letter.id).values(**said))
        return letters

    def note(self, letter_id: str, told: str, due: datetime | None) -> None:
        """Write down what an attempt came to, and when to try again; None for never."""
        self._desk.connection.execute(outbox.update().where(outbox.c.id == letter_id).values(due=due, told=told))

    def due(self) -> bool:
        """Say whether anything is to be sent now."""
        return self._desk.one(sa.select(outbox.c.id).where(outbox.c.due <= self._desk.now()).limit(1)) is not None

    def waiting(self) -> int:
        """Return how many messages are still to be sent."""
        counted = sa.select(sa.func.count()).select_from(outbox).where(outbox.c.due.is_not(None))
        return int(self._desk.connection.execute(counted).scalar_one())
