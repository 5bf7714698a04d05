"""Who wants to be told of what."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.edge_schema import outbox, webhooks
from service.store.happening import Happening


@dataclass(frozen=True)
class Webhook:
    """An address that is told of some kinds of events. `stopped` and `why` where it is told no more."""

    id: str
    owner: str
    url: str
    events: tuple[str, ...]
    secret: str
    created: datetime
    stopped: datetime | None = None
    why: str | None = None


class Webhooks:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, owner: str, url: str, events: Sequence[str], secret: str) -> Webhook:
        """Keep a new one."""
        made = Webhook(self._desk.new_id("webhook"), owner, url, tuple(events), secret, self._desk.now())
        self._desk.write(webhooks.insert(), [{**vars(made), "events": " ".join(events)}])
        self._desk.happened.append(Happening("created", "webhook", made.id, owner))
        return made

    def of(self, owner: str | None) -> tuple[Webhook, ...]:
        """Return those of one owner, oldest first; everybody's where None."""
        chosen = sa.select(webhooks).order_by(webhooks.c.created, webhooks.c.id)
        return tuple(map(_shaped, self._desk.all(chosen if owner is None else chosen.where(webhooks.c.owner == owner))))

    def get(self, webhook_id: str) -> Webhook | None:
        """Return one, None where there is no such id."""
        row = self._desk.one(sa.select(webhooks).where(webhooks.c.id == webhook_id))
        return None if row is None else _shaped(row)

    def remove(self, webhook_id: str) -> None:
        """Remove one, with what it was still to be told."""
        self._desk.connection.execute(outbox.delete().where(outbox.c.webhook_id == webhook_id))
        self._desk.connection.execute(webhooks.delete().where(webhooks.c.id == webhook_id))
        self._desk.happened.append(Happening("removed", "webhook", webhook_id))

    def stop(self, webhook_id: str, why: str) -> None:
        """Tell one no more, and forget what it was still to be told."""
        mine = sa.and_(outbox.c.webhook_id == webhook_id, outbox.c.due.is_not(None))
        self._desk.connection.execute(outbox.update().where(mine).values(due=None, told=why))
        said = {"stopped": self._desk.now(), "why": why}
        self._desk.connection.execute(webhooks.update().where(webhooks.c.id == webhook_id).values(**said))


def _shaped(row: sa.Row[Any]) -> Webhook:
    said = dict(row._mapping)  # noqa: SLF001 - its public name
    return Webhook(**{**said, "events": tuple(said["events"].split())})
