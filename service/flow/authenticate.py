"""Who asks? From a key's text to who may do what."""

from __future__ import annotations

import hmac
from contextlib import suppress
from dataclasses import dataclass

from service.core.api_key import digest, key_id
from service.store.errors import StoreError
from service.store.keys import SEEN_EVERY, ApiKey
from service.store.unit import Store


@dataclass(frozen=True)
class Caller:
    """Who asks. `dealer` is None for the maker's own desk, which sees every dealer's enquiries."""

    key: str
    name: str
    dealer: str | None
    scopes: tuple[str, ...]

    @property
    def owner(self) -> str:
        """Return whose what this caller writes is."""
        return self.dealer or ""

    @property
    def who(self) -> str:
        """Return the name that stands in histories."""
        return f"{self.dealer or 'desk'} ({self.name})"

    def may(self, scope: str) -> bool:
        """Say whether the key opens this."""
        return scope in self.scopes or "admin" in self.scopes

    def sees(self, owner: str) -> bool:
        """Say whether what belongs to `owner` may be shown."""
        return self.dealer is None or self.dealer == owner


def authenticate(store: Store, text: str) -> Caller | None:
    """Return who a key stands for; None for what is no key, an unknown, revoked or expired one."""
    name = key_id(text)
    if name is None:
        return None
    with store.reading() as uow:
        key, now = uow.keys.get(name), uow.now()
    if key is None or not hmac.compare_digest(key.digest, digest(text)) or not key.valid(now):
        return None
    if key.used is None or now - key.used > SEEN_EVERY:
        _note_used(store, key)
    return Caller(key.id, key.name, key.dealer, key.scopes)


def _note_used(store: Store, key: ApiKey) -> None:
    with suppress(StoreError), store.writing() as uow:  # a database that is busy keeps nobody out
        uow.keys.note_used(key.id, uow.now())
        uow.commit()
