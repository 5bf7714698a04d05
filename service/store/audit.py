"""Who wrote what, and who read what of people."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.edge_schema import audit
from service.store.happening import Actor, Happening


@dataclass(frozen=True)
class Entry:
    """One line of the audit."""

    at: datetime
    who: str
    key: str | None
    request: str | None
    action: str
    kind: str
    thing: str


@dataclass(frozen=True)
class Sought:
    """Which lines of the audit are asked for; what is empty may be anything. `who` is a part of a name."""

    who: str = ""
    action: str = ""
    kind: str = ""
    thing: str = ""


class Audit:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def note(self, actor: Actor, happened: Iterable[Happening]) -> None:
        """Write down what `actor` did, in this transaction."""
        now = self._desk.now()
        rows = [
            {
                "id": self._desk.new_id("audit"),
                "at": now,
                "who": actor.who,
                "key": actor.key,
                "request": actor.request,
                "action": one.action,
                "kind": one.kind,
                "thing": one.thing,
            }
            for one in happened
        ]
        self._desk.write(audit.insert(), rows)

    def of(self, thing: str) -> tuple[Entry, ...]:
        """Return what was done with one thing, oldest first."""
        c = audit.c
        columns = (c.at, c.who, c.key, c.request, c.action, c.kind, c.thing)
        rows = self._desk.all(sa.select(*columns).where(c.thing == thing).order_by(c.id))
        return tuple(Entry(**row._mapping) for row in rows)  # noqa: SLF001 - its public name

    def page(self, sought: Sought, *, after: tuple[datetime, str] | None, limit: int) -> tuple[tuple[str, Entry], ...]:
        """Return lines with their ids, the newest first, from behind the time and id of the last one before."""
        c = audit.c
        said = [c[name] == text for name in ("action", "kind", "thing") if (text := getattr(sought, name))]
        if sought.who:
            said.append(c.who.icontains(sought.who, autoescape=True))
        if after is not None:
            at, line = after
            said.append(sa.or_(c.at < at, sa.and_(c.at == at, c.id < line)))
        columns = (c.at, c.who, c.key, c.request, c.action, c.kind, c.thing)
        asked = sa.select(c.id, *columns).where(*said).order_by(c.at.desc(), c.id.desc()).limit(limit)
        return tuple(
            (row.id, Entry(row.at, row.who, row.key, row.request, row.action, row.kind, row.thing))
            for row in self._desk.all(asked)
        )

    def kinds(self) -> tuple[str, ...]:
        """Return the kinds of things that stand in the audit, in order."""
        return tuple(row.kind for row in self._desk.all(sa.select(audit.c.kind).distinct().order_by(audit.c.kind)))
