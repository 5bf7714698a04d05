"""A whole database at one moment, as rows; and an empty one filled with such rows, in one transaction."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any

import sqlalchemy as sa
from alembic import command

from service.core.archive import Column, Kind
from service.store import dialect, job_queue
from service.store.check import NEW, require, state_of
from service.store.errors import Conflict
from service.store.migrate import configuration, see_folder
from service.store.schema import HEAD, KNOWN, VERSION_TABLE, attachments, metadata
from service.store.stored import UtcTime

_KINDS: tuple[tuple[type[Any], Kind], ...] = (
    (UtcTime, "time"),
    (sa.Boolean, "boolean"),
    (sa.Date, "date"),
    (sa.LargeBinary, "bytes"),
    (sa.Float, "real"),
    (sa.Integer, "integer"),
    (sa.String, "text"),
)
_TYPES: dict[Kind, type[Any]] = {kind: type_ for type_, kind in _KINDS} | {"text": sa.Text}
_AT_ONCE, _AT_ONCE_LARGE = 500, 2
_LEFT_OVERS = ("-wal", "-shm", "-journal")


class Snapshot:
    """A database as it was at one moment, however long it is looked at."""

    head = HEAD

    def __init__(self, connection: sa.Connection) -> None:
        """Keep the transaction."""
        self._connection = connection
        self.tables = {table.name: _columns(table) for table in metadata.sorted_tables}

    def rows(self, name: str) -> Iterator[Sequence[Any]]:
        """Give the rows of a table in the order of its key, a few held at a time."""
        table = metadata.tables[name]
        large = any(column.kind == "bytes" for column in self.tables[name])
        held = self._connection.execution_options(yield_per=_AT_ONCE_LARGE if large else _AT_ONCE)
        try:
            yield from held.execute(sa.select(table).order_by(*table.primary_key))
        finally:
            self._connection.execution_options(yield_per=None, stream_results=False)

    def files(self) -> list[str]:
        """Return the names of all attachments."""
        names = sa.select(attachments.c.sha256).distinct().order_by(attachments.c.sha256)
        return list(self._connection.execute(names).scalars())


@contextmanager
def taken(url: str) -> Iterator[Snapshot]:
    """Yield the database as it is now; others go on writing. NeedsUpgrade, NewerSchema, NotOurs, StoreAway."""
    target = dialect.address(url)
    require(target)
    engine = dialect.connect(target)
    try:
        with dialect.told(target), dialect.begun(engine, writes=False) as connection:
            yield Snapshot(connection)
    finally:
        engine.dispose()


class Filling:
    """A database that is being filled with the rows of another one."""

    def __init__(self, connection: sa.Connection, tables: sa.MetaData) -> None:
        """Keep the transaction and the tables as they are at the rows' revision."""
        self._connection, self._tables = connection, tables

    @property
    def order(self) -> list[str]:
        """Return the tables' names, each after those it refers to."""
        return [table.name for table in self._tables.sorted_tables]

    def columns(self, name: str) -> set[str]:
        """Return the names of a table's columns."""
        return set(self._tables.tables[name].columns.keys())

    def put(self, name: str, columns: Sequence[Column], rows: Sequence[Sequence[Any]]) -> None:
        """Write some rows of a table, whose columns must be those of `columns()`."""
        shape = sa.Table(name, sa.MetaData(), *(sa.Column(c.name, _TYPES[c.kind]) for c in columns))
        names = [column.name for column in columns]
        dialect.insert(self._connection, shape, [dict(zip(names, row, strict=True)) for row in rows])


def known(head: str) -> bool:
    """Say whether rows of this revision can be taken in: a newer program's cannot."""
    return head in KNOWN


def see_empty(url: str) -> None:
    """Return where nothing at all stands in the database. Conflict where something does, or is left over beside it."""
    target = dialect.address(url)
    path = dialect.file_of(target)
    stale = [] if path is None else [f"{path}{end}" for end in _LEFT_OVERS if Path(f"{path}{end}").exists()]
    if stale and path is not None and not (path.exists() and path.stat().st_size):
        raise Conflict(
            "these were left over by another database of that name, and would be taken for a part of the new one",
            ", ".join(stale),
            "Move them away (with the database they belong to, if you still have it), or name another file",
        )
    if state_of(target) != NEW:
        raise Conflict(
            "there is something in this database", dialect.shown(target), "Name an empty one; nothing was changed"
        )
    see_folder(target)


@contextmanager
def filling(url: str, head: str) -> Iterator[Filling]:
    """Yield an empty database at the revision `head`; on leaving it is at this program's, and all of it is there.

    All in one transaction: where anything goes wrong the database is empty as before. Conflict where it is not empty.
    """
    see_empty(url)
    target = dialect.address(url)
    path = dialect.file_of(target)
    made = path is not None and not path.exists()
    engine, done = dialect.connect(target), False
    try:
        dialect.use_wal(engine)
        with dialect.rebuilding(engine) as connection:
            command.upgrade(configuration(connection), head)
            tables = _emptied(connection)
            with dialect.unordered(connection, tables):
                yield Filling(connection, tables)
            command.upgrade(configuration(connection), "head")
            job_queue.prepare(connection)
        done = True
    finally:
        engine.dispose()
        if made and not done and path is not None:
            for end in ("", *_LEFT_OVERS):
                with suppress(OSError):
                    Path(f"{path}{end}").unlink(missing_ok=True)


def _emptied(connection: sa.Connection) -> sa.MetaData:
    """Return the tables there are; what the making of them put in is taken out, for the rows bring it along."""
    tables = sa.MetaData()
    tables.reflect(connection)
    tables.remove(tables.tables[VERSION_TABLE])
    for table in reversed(tables.sorted_tables):
        connection.execute(sa.delete(table))
    return tables


def _columns(table: sa.Table) -> tuple[Column, ...]:
    return tuple(
        Column(name=column.name, kind=next(kind for type_, kind in _KINDS if isinstance(column.type, type_)))
        for column in table.columns
    )
