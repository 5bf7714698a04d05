"""Builds the service from its settings: the store, the clock, the maker of ids. The edges start here."""

from __future__ import annotations

import os
from collections.abc import Mapping
from datetime import UTC, datetime

from service.files.vault import Vault
from service.settings import Settings, settings_from
from service.store import dialect, migrate
from service.store.check import State, state_of
from service.store.ids import random_id
from service.store.unit import Store


def settings(database: str | None = None, environment: Mapping[str, str] | None = None) -> Settings:
    """Return the settings of this run: `database` as given, else what the environment says (the process's own)."""
    return settings_from(os.environ if environment is None else environment, database=database)


def clock() -> datetime:
    """Return the time, in UTC."""
    return datetime.now(UTC)  # noqa: TID251 - the one place that reads the clock; all else is handed the time


def open_store(chosen: Settings) -> Store:
    """Return the database, looked at and found fit for work.

    NeedsUpgrade, NewerSchema, NotOurs, BadAddress or StoreAway say why not; nothing is changed then.
    """
    return Store(chosen.database, now=clock, new_id=random_id)


def vault(chosen: Settings) -> Vault:
    """Return the folder of attachments; it is made when the first one is kept."""
    return Vault(chosen.files)


def upgrade(chosen: Settings) -> str:
    """Bring the database to this program's revision, making it (and the user's data folder) where there is none."""
    if chosen.folder is not None:
        chosen.folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    return migrate.upgrade(chosen.database)


def state(chosen: Settings) -> State:
    """Return the state of the database, without touching it. StoreAway or BadAddress where it cannot be looked at."""
    return state_of(dialect.address(chosen.database))


def shown(chosen: Settings) -> str:
    """Return the database's address for people, without a password."""
    return dialect.shown(dialect.address(chosen.database))
