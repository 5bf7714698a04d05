"""Requests that create something: each works once, whoever sends it again, at the same time or days later."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import timedelta
from typing import Literal

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.edge_schema import idempotency
from service.store.errors import Conflict

LEASE = timedelta(minutes=3)
"""After that long without an end a request's worker is taken for dead, and another may begin anew."""
KEPT = timedelta(days=7)
"""How long what was answered can be asked for again."""


@dataclass(frozen=True)
class Reply:
    """What was answered: nothing else is needed to answer it again."""

    status: int
    headers: Mapping[str, str]
    body: str


@dataclass(frozen=True)
class Claim:
    """A request that is being worked on, by whoever has its token."""

    owner: str
    key: str
    token: str


State = Literal["mine", "running", "done", "other"]


@dataclass(frozen=True)
class Found:
    """What became of a request: mine to do (`claim`), running, done (`reply`), or the key of another request."""

    state: State
    claim: Claim | None = None
    reply: Reply | None = None


class Idempotency:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def look(self, owner: str, key: str, operation: str, fingerprint: str) -> Found | None:
        """Say what became of a request without taking it on; None where nobody has, `mine` where I may."""
        c = idempotency.c
        row = self._desk.one(sa.select(idempotency).where(c.owner == owner, c.key == key))
        if row is None:
            return None
        if (row.operation, row.fingerprint) != (operation, fingerprint):
            return Found("other")
        if row.answered is not None:
            return Found("done", reply=Reply(row.answered, json.loads(row.headers), row.body))
        return Found("running" if row.started > self._desk.now() - LEASE else "mine")

    def claim(self, owner: str, key: str, operation: str, fingerprint: str) -> Found:
        """Take the request on, where nobody has; say what became of it, where somebody has."""
        c, now = idempotency.c, self._desk.now()
        self._desk.connection.execute(idempotency.delete().where(c.started < now - KEPT))
        found = self.look(owner, key, operation, fingerprint)
        if found is not None and found.state != "mine":
            return found
        token = self._desk.new_id("claim")
        said = {"operation": operation, "fingerprint": fingerprint, "token": token, "started": now}
        if found is None:
            self._desk.write(idempotency.insert(), [{"owner": owner, "key": key, **said}])
        else:
            mine = sa.and_(c.owner == owner, c.key == key)
            self._desk.connection.execute(idempotency.update().where(mine).values(**said))
        return Found("mine", Claim(owner, key, token))

    def finish(self, claim: Claim, reply: Reply) -> None:
        """Write down what was answered. Conflict where somebody else has taken the request over meanwhile."""
        said = {"answered": reply.status, "headers": json.dumps(dict(reply.headers)), "body": reply.body}
        if self._desk.connection.execute(idempotency.update().where(_held(claim)).values(**said)).rowcount != 1:
            raise Conflict("this request was taken for dead and done again", claim.key, "Ask for its answer again")

    def release(self, claim: Claim) -> None:
        """Forget a request that came to nothing: it may be sent again."""
        self._desk.connection.execute(idempotency.delete().where(_held(claim)))


def _held(claim: Claim) -> sa.ColumnElement[bool]:
    c = idempotency.c
    return sa.and_(c.owner == claim.owner, c.key == claim.key, c.token == claim.token, c.answered.is_(None))
