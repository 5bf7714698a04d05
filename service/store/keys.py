"""Keys to the service, without what is secret of them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.edge_schema import api_keys
from service.store.errors import Conflict
from service.store.happening import Happening

SEEN_EVERY = timedelta(minutes=5)
"""How exactly it is known when a key was last used: a write with every request would cost more than the request."""


@dataclass(frozen=True)
class ApiKey:
    """A key. `dealer` is None for the maker's own desk; `digest` is the SHA-256 of all of its text."""

    id: str
    digest: str
    name: str
    dealer: str | None
    scopes: tuple[str, ...]
    who: str
    created: datetime
    expires: datetime | None = None
    used: datetime | None = None
    revoked: datetime | None = None
    replaces: str | None = None

    def valid(self, now: datetime) -> bool:
        """Say whether it opens anything at that time."""
        return self.revoked is None and (self.expires is None or now < self.expires)


class Keys:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(self, key: ApiKey) -> None:
        """Keep a new key."""
        self._desk.write(api_keys.insert(), [{**vars(key), "scopes": " ".join(key.scopes)}])
        self._desk.happened.append(Happening("created", "key", key.id, key.dealer or ""))

    def get(self, key_id: str) -> ApiKey | None:
        """Return one key, None where there is no such id."""
        row = self._desk.one(sa.select(api_keys).where(api_keys.c.id == key_id))
        return None if row is None else _shaped(row)

    def all(self) -> tuple[ApiKey, ...]:
        """Return every key, the newest first, revoked and expired ones too."""
        c = api_keys.c
        return tuple(map(_shaped, self._desk.all(sa.select(api_keys).order_by(c.created.desc(), c.id))))

    def note_used(self, key_id: str, at: datetime) -> None:
        """Write down that a key was used."""
        self._desk.connection.execute(api_keys.update().where(api_keys.c.id == key_id).values(used=at))

    def set(self, key_id: str, **values: datetime | None) -> ApiKey:
        """Set `expires` or `revoked` and return the key. Conflict where there is no such id."""
        self._desk.connection.execute(api_keys.update().where(api_keys.c.id == key_id).values(**values))
        key = self.get(key_id)
        if key is None:
            raise Conflict("there is no such key", repr(key_id), "`transom keys list` shows them")
        self._desk.happened.append(Happening("changed", "key", key_id, key.dealer or ""))
        return key


def _shaped(row: sa.Row[Any]) -> ApiKey:
    said = dict(row._mapping)  # noqa: SLF001 - its public name
    return ApiKey(**{**said, "scopes": tuple(said["scopes"].split())})
