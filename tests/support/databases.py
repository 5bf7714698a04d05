"""Databases for tests, of either kind: empty, migrated, or copied from one that was filled once."""

from __future__ import annotations

import hashlib
import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Literal, Protocol

import psycopg
import sqlalchemy as sa

from service.store import dialect, migrate, schema
from tests.support.postgres import Server

Kind = Literal["sqlite", "postgresql"]
Fill = Callable[[str], object]
"""Fills the database at an address; done once for each such function, however many copies are asked for."""


class Databases(Protocol):
    """Gives out addresses of databases that nobody else has."""

    kind: Kind

    def empty(self) -> str:
        """Return the address of a database in which there is nothing yet (a file that is not there yet)."""

    def like(self, fill: Fill) -> str:
        """Return the address of a new copy of the database that `fill` filled."""

    def migrated(self) -> str:
        """Return the address of a new database at this program's revision, with nothing in it."""
        return self.like(migrate.upgrade)


class Files(Databases):
    """SQLite's, in a folder."""

    kind = "sqlite"

    def __init__(self, folder: Path) -> None:
        """Keep the folder in which files are made."""
        self._folder, self._made = folder, 0
        self._kept: dict[Fill, Path] = {}

    def empty(self) -> str:
        """Return the address of a file that is not there yet, in a folder of its own."""
        self._made += 1
        folder = self._folder / f"db{self._made}"
        folder.mkdir()
        return f"sqlite:///{folder / 'ledger.db'}"

    def like(self, fill: Fill) -> str:
        """Return a copy of the file that `fill` filled."""
        if fill not in self._kept:
            url = self.empty()
            fill(url)
            self._kept[fill] = file_of(url).parent
        url = self.empty()
        shutil.copytree(self._kept[fill], file_of(url).parent, dirs_exist_ok=True)
        return url


def file_of(url: str) -> Path:
    """Return the file of an SQLite address."""
    return Path(url.removeprefix("sqlite:///"))


def fingerprint(url: str) -> str:
    """Return a text that changes with every row of a database."""
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection:
        tables = [(t.name, sorted(map(repr, connection.execute(sa.select(t))))) for t in schema.metadata.sorted_tables]
    engine.dispose()
    return hashlib.sha256(repr(tables).encode()).hexdigest()


class Served(Databases):
    """PostgreSQL's, on one server."""

    kind = "postgresql"

    def __init__(self, server: Server) -> None:
        """Keep the server on which databases are made."""
        self.server = server
        self._made: list[str] = []
        self._kept: dict[Fill, str] = {}
        self._admin = psycopg.connect(server.url("postgres"), autocommit=True)

    def empty(self) -> str:
        """Return the address of a database without tables."""
        return self.server.url(self._create("template0"))

    def like(self, fill: Fill) -> str:
        """Return a copy of the database that `fill` filled; nobody may be connected to that one any more."""
        if fill not in self._kept:
            kept = self._create("template0")
            fill(self.server.url(kept))
            self._kept[fill] = kept
        return self.server.url(self._create(self._kept[fill]))

    def run(self, statement: str) -> None:
        """Run a statement as the server's owner, outside of every test's database."""
        self._admin.execute(statement.encode())

    def drop_since(self, count: int) -> None:
        """Drop what was made since there were `count` databases, but not what others are copied from."""
        for name in self._made[count:]:
            if name not in self._kept.values():
                self._admin.execute(f"DROP DATABASE IF EXISTS {name} WITH (FORCE)".encode())

    @property
    def count(self) -> int:
        """Return how many were made so far."""
        return len(self._made)

    def close(self) -> None:
        """Let go of the server."""
        self._admin.close()

    def _create(self, template: str) -> str:
        name = f"made{len(self._made)}"
        self._admin.execute(f"CREATE DATABASE {name} TEMPLATE {template} STRATEGY FILE_COPY".encode())
        self._made.append(name)
        return name


@contextmanager
def tidy(databases: Databases) -> Iterator[Databases]:
    """Yield the databases, and drop afterwards what was made meanwhile on a server."""
    if not isinstance(databases, Served):
        yield databases
        return
    before = databases.count
    try:
        yield databases
    finally:
        with suppress(psycopg.OperationalError):  # a test may have stopped the server
            databases.drop_since(before)
