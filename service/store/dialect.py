"""Everything in which databases differ: addresses, connections, locks, stored times, and how they fail."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import Any
from urllib.parse import quote

import sqlalchemy as sa
from sqlalchemy import event
from sqlalchemy.exc import ArgumentError, DBAPIError, IntegrityError, NoSuchModuleError
from sqlalchemy.types import TypeDecorator

from service.store.errors import BadAddress, Conflict, NotOurs, StoreAway, StoreError

BUSY_MS = 5000
"""How long a writer waits for another one."""
MOST_BOUND = 500
"""Values in one IN (...): under every database's limit on bound parameters."""


class UtcTime(TypeDecorator[datetime]):
    """A time with its zone, kept in UTC; SQLite, which knows no zones, gets it bare and gives it back as UTC."""

    impl = sa.DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: sa.Dialect) -> datetime | None:
        """Return the time in UTC; ValueError for a time without a zone."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError(f"{value.isoformat()} has no time zone")
        utc = value.astimezone(UTC)
        return utc.replace(tzinfo=None) if dialect.name == "sqlite" else utc

    def process_result_value(self, value: datetime | None, dialect: sa.Dialect) -> datetime | None:
        """Return the time in UTC, with its zone."""
        del dialect
        if value is None or value.tzinfo is not None:
            return value
        return value.replace(tzinfo=UTC)


def address(text: str) -> sa.URL:
    """Return the database's URL; BadAddress says what one looks like."""
    try:
        url = sa.make_url(text)
        url.get_dialect()
    except (ArgumentError, NoSuchModuleError, ValueError):
        raise BadAddress(
            "this is no address of a database this program knows",
            repr(text.rsplit("@", 1)[-1]),
            "Write sqlite:////folder/ledger.db or postgresql://user@host/name, in --db or TRANSOM_DB",
        ) from None
    if url.get_backend_name() not in ("sqlite", "postgresql"):
        raise BadAddress("this kind of database is not supported", shown(url), "Use SQLite or PostgreSQL")
    if url.get_backend_name() == "sqlite" and file_of(url) is None:
        raise BadAddress("a database in memory keeps nothing", shown(url), "Name a file: sqlite:////folder/ledger.db")
    return url


def shown(url: sa.URL) -> str:
    """Return the address for people, without a password."""
    return url.render_as_string(hide_password=True)


def file_of(url: sa.URL) -> Path | None:
    """Return the file of an SQLite address; None for a server or for memory."""
    if url.get_backend_name() != "sqlite" or url.database in (None, "", ":memory:"):
        return None
    return Path(str(url.database))


def connect(url: sa.URL, *, read_only: bool = False) -> sa.Engine:
    """Return an engine. `read_only` never creates nor changes a file: to look before touching."""
    settings: dict[str, Any] = {}
    path = file_of(url)
    if read_only and path is not None:
        place = f"file:{quote(str(path.absolute()))}?mode=ro"
        settings["creator"] = lambda: sqlite3.connect(place, uri=True, check_same_thread=False)
        settings["poolclass"] = sa.NullPool
    try:
        engine = sa.create_engine(url, **settings)
    except ModuleNotFoundError as error:
        raise BadAddress("the driver for this database is not installed", shown(url), f"Install {error.name}") from None
    if url.get_backend_name() == "sqlite":
        event.listen(engine, "connect", _prepare)
        event.listen(engine, "begin", _begin)
    return engine


def _prepare(connection: sqlite3.Connection, _record: object) -> None:
    connection.isolation_level = None  # BEGIN is said below, not guessed by the driver
    connection.execute(f"PRAGMA busy_timeout = {BUSY_MS}")
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute("PRAGMA synchronous = NORMAL")


def _begin(connection: sa.Connection) -> None:
    # A writer takes its lock at once: one that starts as a reader cannot wait for its turn later.
    writes = connection.get_execution_options().get("writes", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


def use_wal(engine: sa.Engine) -> None:
    """Let readers and a writer of an SQLite file work side by side. The file remembers it."""
    if file_of(engine.url) is None:
        return
    with told(engine.url):
        raw = engine.raw_connection()
        try:
            driver = raw.driver_connection
            if isinstance(driver, sqlite3.Connection):
                driver.execute("PRAGMA journal_mode = WAL")
        finally:
            raw.close()


@contextmanager
def rebuilding(engine: sa.Engine) -> Iterator[sa.Connection]:
    """Yield a connection in one transaction in which tables may be rebuilt; committed when it leaves without error.

    SQLite changes a table by copying it, and with foreign keys on would drop what refers to it: they are off
    meanwhile, and checked before the commit.
    """
    sqlite = engine.dialect.name == "sqlite"
    with told(engine.url), engine.connect().execution_options(writes=True) as connection:
        driver = connection.connection.driver_connection
        if isinstance(driver, sqlite3.Connection):
            driver.execute("PRAGMA foreign_keys = OFF")
        try:
            with connection.begin():
                yield connection
                if sqlite and connection.exec_driver_sql("PRAGMA foreign_key_check").first():
                    raise StoreAway("the upgrade would leave dangling references", shown(engine.url), "Nothing changed")
        finally:
            if isinstance(driver, sqlite3.Connection):
                driver.execute("PRAGMA foreign_keys = ON")


@contextmanager
def told(url: sa.URL) -> Iterator[None]:
    """Turn the driver's errors into the store's own, which say what, where and how to mend it."""
    try:
        yield
    except (DBAPIError, sqlite3.Error) as error:
        raise explain(error, url) from error


def explain(error: DBAPIError | sqlite3.Error, url: sa.URL) -> StoreError:
    """Return the store's error for a driver's one."""
    where = shown(url)
    if isinstance(error, (IntegrityError, sqlite3.IntegrityError)):
        reason = str(getattr(error, "orig", error))
        return Conflict("the database refuses what contradicts it", where, f"Nothing was written ({reason})")
    cause = error.orig if isinstance(error, DBAPIError) else error
    code = getattr(cause, "sqlite_errorname", "")
    if code.startswith("SQLITE_NOTADB"):
        return NotOurs("this file is no database of this program", where, "Give the right file; it was left as it was")
    for start, (what, mend) in _FAILURES.items():
        if code.startswith(start):
            return StoreAway(what, where, mend)
    return StoreAway("the database does not work", where, f"It said: {cause}")


_FAILURES = {
    "SQLITE_BUSY": ("the database is locked by another program", "Wait until that one has finished, then try again"),
    "SQLITE_LOCKED": ("the database is locked by another program", "Wait until that one has finished, then try again"),
    "SQLITE_FULL": ("the disk is full", "Make room and try again; what was begun is undone"),
    "SQLITE_CANTOPEN": ("the database cannot be opened", "See that its folder exists and may be written to"),
    "SQLITE_READONLY": ("the database may only be read", "Allow writing to the file and to its folder"),
    "SQLITE_PERM": ("the database may not be touched", "Allow reading and writing of the file and of its folder"),
    "SQLITE_CORRUPT": ("the database's file is damaged", "Restore it from a backup"),
    "SQLITE_IOERR": ("the disk cannot be read or written", "See to the disk, then try again"),
}
