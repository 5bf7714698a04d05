"""Everything in which databases differ: addresses, connections, locks, and how they fail; values are in `stored`."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from datetime import date, datetime
from operator import itemgetter
from pathlib import Path
from typing import Any
from urllib.parse import quote

import sqlalchemy as sa
from sqlalchemy import event
from sqlalchemy.exc import ArgumentError, DBAPIError, NoSuchModuleError

from service.store import failures
from service.store.errors import BadAddress, StoreAway, StoreError
from service.store.stored import Text

BUSY_MS = 5000
"""How long a writer waits for another one."""
CACHE_KB = 65_536
"""What of a file is held in memory: the indexes of a fleet, so that many rows in one go need not leave it."""
LOG_PAGES = 8_192
"""How long the log of a file grows before it is worked in: 32 MB, for that costs more than the writing."""
IDLE_MS = 900_000
"""How long a server lets a writer keep its turn without a word: a desk that fell asleep stops nobody for ever."""
CONNECT_S = 10
"""How long a server may take to answer at first."""
OLDEST_SERVER = 15
TURN = 7_233_173
"""The lock that writers on a server take in turn; any number, the same for every desk."""
GROUPING_MB = 64
"""What a server may hold in memory to group by hashing; a million records take a fifth of it."""
MOST_BOUND = 500
"""Values in one IN (...): under every database's limit on bound parameters."""
SERVERS = {"postgres", "postgresql"}


def address(text: str) -> sa.URL:
    """Return the database's URL; BadAddress says what one looks like."""
    try:
        url = sa.make_url(text)
        if url.get_backend_name() in SERVERS:
            url = url.set(drivername="postgresql+psycopg")
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
    """Return the address for people, as they wrote it and without a password."""
    secret = {key: "***" for key in url.query if "password" in key}
    bare = url.update_query_dict(secret).set(drivername=url.get_backend_name())
    return bare.render_as_string(hide_password=True)


def file_of(url: sa.URL) -> Path | None:
    """Return the file of an SQLite address; None for a server or for memory."""
    if url.get_backend_name() != "sqlite" or url.database in (None, "", ":memory:"):
        return None
    return Path(str(url.database))


def connect(url: sa.URL, *, read_only: bool = False) -> sa.Engine:
    """Return an engine. `read_only` never creates nor changes anything: to look before touching."""
    settings: dict[str, Any] = {"poolclass": sa.NullPool} if read_only else {}
    path = file_of(url)
    if path is None:
        settings |= {"pool_pre_ping": not read_only, "connect_args": _server_settings(url)}
    elif read_only:
        place = f"file:{quote(str(path.absolute()))}?mode=ro"
        settings["creator"] = lambda: sqlite3.connect(place, uri=True, check_same_thread=False)
    try:
        engine = sa.create_engine(url, **settings)
    except ModuleNotFoundError as error:
        raise BadAddress("the driver for this database is not installed", shown(url), f"Install {error.name}") from None
    if path is not None:
        event.listen(engine, "connect", _prepare)
        event.listen(engine, "begin", _begin)
    else:
        engine.dialect.colspecs = {**engine.dialect.colspecs, sa.String: Text}
        from service.store.stored_on_server import Types  # noqa: PLC0415 - a file needs nothing of a server's

        engine.dialect.type_compiler_instance = Types(engine.dialect)
        event.listen(engine, "begin", _wait_for_turn)
    return engine


def _server_settings(url: sa.URL) -> dict[str, Any]:
    ours = {"connect_timeout": CONNECT_S, "application_name": "transom"}
    return {key: value for key, value in ours.items() if key not in url.query}


def begun(engine: sa.Engine, *, writes: bool) -> sa.Connection:
    """Return a connection in a transaction. One that only reads sees one moment; those that write take turns.

    On a server a reader's transaction is REPEATABLE READ and READ ONLY. A writer's is READ COMMITTED behind one lock
    that every writer takes before it looks at anything: nobody else can commit while it holds that, so all of its
    statements see one state, and what it read still holds when it writes. That is what BEGIN IMMEDIATE gives on
    SQLite; so no use case can be right on one database and wrong on the other, and none has to be tried again.
    """
    options: dict[str, Any] = {"writes": writes}
    if file_of(engine.url) is None:
        ours = {"isolation_level": "REPEATABLE READ", "postgresql_readonly": True}
        options |= {"isolation_level": "READ COMMITTED"} if writes else ours
    connection = engine.connect()
    try:
        connection = connection.execution_options(**options)
        connection.begin()
    except BaseException:
        connection.close()
        raise
    return connection


def _prepare(connection: sqlite3.Connection, _record: object) -> None:
    connection.isolation_level = None  # BEGIN is said below, not guessed by the driver
    connection.execute(f"PRAGMA busy_timeout = {BUSY_MS}")
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute("PRAGMA synchronous = NORMAL")
    connection.execute(f"PRAGMA cache_size = -{CACHE_KB}")
    connection.execute(f"PRAGMA wal_autocheckpoint = {LOG_PAGES}")


def _begin(connection: sa.Connection) -> None:
    # A writer takes its lock at once: one that starts as a reader cannot wait for its turn later.
    writes = connection.get_execution_options().get("writes", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


def _wait_for_turn(connection: sa.Connection) -> None:
    if connection.get_execution_options().get("writes", False):
        connection.exec_driver_sql(f"SET LOCAL lock_timeout = {BUSY_MS}")
        connection.exec_driver_sql(f"SET LOCAL idle_in_transaction_session_timeout = {IDLE_MS}")
        connection.exec_driver_sql(f"SELECT pg_advisory_xact_lock({TURN})")


def insert(connection: sa.Connection, table: sa.Table, rows: Sequence[dict[str, Any]]) -> None:
    """Add many rows that have the same columns, the way the driver does it fastest: COPY on a server."""
    columns = [table.c[name] for name in rows[0]]
    names = [column.name for column in columns]
    ways = [column.type.dialect_impl(connection.dialect).bind_processor(connection.dialect) for column in columns]
    change = [(place, way) for place, way in enumerate(ways) if way is not None]
    take = itemgetter(*names)
    values = [[*take(row)] for row in rows] if len(names) > 1 else [[take(row)] for row in rows]
    for place, way in change:
        known: dict[Any, Any] = {}
        for row in values:
            value = row[place]
            if value.__class__ is datetime:  # the same for many rows, and dear to write
                if value not in known:
                    known[value] = way(value)
                row[place] = known[value]
            else:
                row[place] = way(value)
    quoted = ", ".join(f'"{name}"' for name in names)
    if connection.dialect.name == "sqlite":
        marks = ", ".join("?" * len(names))
        statement = f'INSERT INTO "{table.name}" ({quoted}) VALUES ({marks})'  # noqa: S608 - names of our own tables
        connection.exec_driver_sql(statement, [*map(tuple, values)])
        return
    statement = f'COPY "{table.name}" ({quoted}) FROM STDIN'
    driver, failed = connection.connection.driver_connection, connection.dialect.loaded_dbapi.Error
    try:
        with driver.cursor() as cursor, cursor.copy(statement) as copy:  # type: ignore[union-attr] # psycopg's own
            for row in values:
                copy.write_row(row)
    except failed as error:
        raise DBAPIError.instance(statement, None, error, failed, dialect=connection.dialect) from error


def unsuited(connection: sa.Connection) -> tuple[str, str] | None:
    """Return why a server's database cannot be worked with, and how to mend it; None where it can."""
    if connection.dialect.name == "sqlite":
        return None
    version = connection.dialect.server_version_info or (0,)
    if int(version[0]) < OLDEST_SERVER:
        return f"this PostgreSQL is version {version[0]}", f"Use version {OLDEST_SERVER} or newer"
    encoding = connection.exec_driver_sql("SHOW server_encoding").scalar()
    if encoding != "UTF8":
        return f"this database holds text as {encoding}", "Make one with ENCODING 'UTF8' TEMPLATE template0"
    return None


def sorts_groups(connection: sa.Connection) -> bool:
    """Say whether the database sorts rows in order to group them, so that few at a time are grouped faster."""
    return connection.dialect.name == "sqlite"


def hash_groups(connection: sa.Connection) -> None:
    """Give a server room in this transaction to group by hashing: by default it sorts a million rows on disk instead."""
    connection.exec_driver_sql(f"SET LOCAL work_mem = '{GROUPING_MB}MB'")


def month_of(connection: sa.Connection, day: sa.ColumnElement[date]) -> sa.ColumnElement[int]:
    """Return a day's month as 12 times the year plus the month from 0; null where there is no day."""
    if connection.dialect.name == "sqlite":  # where a day is text: to cut it is quicker than to read it
        year, month = (sa.func.substr(day, *span, type_=sa.Integer) for span in ((1, 4), (6, 2)))
    else:
        year, month = (sa.func.date_part(part, day, type_=sa.Integer) for part in ("year", "month"))
    return sa.cast(year * 12 + month - 1, sa.Integer)


def has_trigrams(connection: sa.Connection) -> bool:
    """Say whether the database can compare texts by their letter groups."""
    if connection.dialect.name == "sqlite":
        return False
    return connection.exec_driver_sql("SELECT 1 FROM pg_extension WHERE extname = 'pg_trgm'").first() is not None


def take_trigrams(connection: sa.Connection) -> bool:
    """Let a server compare texts by their letter groups, where it can and its owner lets us; say whether it does now."""
    if connection.dialect.name != "sqlite":
        with suppress(DBAPIError), connection.begin_nested():
            connection.exec_driver_sql("CREATE EXTENSION IF NOT EXISTS pg_trgm")
    return has_trigrams(connection)


def compare_from(connection: sa.Connection, least: float) -> None:
    """Say for this transaction from what likeness on, 0 to 1, two texts are alike."""
    connection.exec_driver_sql(f"SET LOCAL pg_trgm.similarity_threshold = {least}")


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
def unordered(connection: sa.Connection, tables: sa.MetaData) -> Iterator[None]:
    """Let rows of a table come before those of the same table that they refer to; all must be there on leaving.

    SQLite is asked for that by `rebuilding`. A server looks at a row when it comes, unless told to look later.
    """
    every = [(table, key) for table in tables.sorted_tables for key in table.foreign_key_constraints]
    own = [f'"{table.name}" ALTER CONSTRAINT "{key.name}"' for table, key in every if key.referred_table is table]
    if connection.dialect.name == "sqlite":
        yield
        return
    for one in own:
        connection.exec_driver_sql(f"ALTER TABLE {one} DEFERRABLE INITIALLY DEFERRED")
    yield
    connection.exec_driver_sql("SET CONSTRAINTS ALL IMMEDIATE")
    for one in own:
        connection.exec_driver_sql(f"ALTER TABLE {one} NOT DEFERRABLE")


@contextmanager
def told(url: sa.URL) -> Iterator[None]:
    """Turn the driver's errors into the store's own, which say what, where and how to mend it."""
    try:
        yield
    except (DBAPIError, sqlite3.Error) as error:
        raise explain(error, url) from error


def explain(error: DBAPIError | sqlite3.Error, url: sa.URL) -> StoreError:
    """Return the store's error for a driver's one."""
    return failures.told_of(error, shown(url))
