"""Whose database is this, and of which age? Looked at without changing a byte."""

from __future__ import annotations

from typing import Literal, NoReturn

import sqlalchemy as sa

from service.store import dialect
from service.store.errors import NeedsUpgrade, NewerSchema, NotOurs, StoreAway
from service.store.schema import HEAD, KNOWN, VERSION_TABLE

State = Literal["ok", "new", "old", "newer", "not_ours"]
"""ok; new: nothing there yet; old: needs an upgrade; newer than this program; another program's."""
NEW: State = "new"
OLD: State = "old"


def check_schema(engine: sa.Engine) -> State:
    """Return the state of the engine's database. StoreAway where it cannot be opened."""
    return state_of(engine.url)


def state_of(url: sa.URL) -> State:
    """Return the state of the database at `url`, opened for reading only. StoreAway where it cannot be opened."""
    path = dialect.file_of(url)
    if path is not None and not path.exists():
        return NEW
    if path is not None and path.is_dir():
        raise StoreAway("this is a folder, no database", dialect.shown(url), "Name the file in it")
    engine = dialect.connect(url, read_only=True)
    try:
        with dialect.told(url), engine.connect() as connection:
            _see_suited(connection, url)
            return state_in(connection)
    except NotOurs:
        return "not_ours"
    finally:
        engine.dispose()


def _see_suited(connection: sa.Connection, url: sa.URL) -> None:
    problem = dialect.unsuited(connection)
    if problem is not None:
        raise StoreAway(problem[0], dialect.shown(url), problem[1])


def state_in(connection: sa.Connection) -> State:
    """Return the state of the database that is connected to."""
    tables = sa.inspect(connection).get_table_names()
    if not tables:
        return NEW
    if VERSION_TABLE not in tables:
        return "not_ours"
    at = connection.execute(sa.text(f"SELECT version_num FROM {VERSION_TABLE}")).scalars().all()  # noqa: S608 - a constant
    if not at:
        return OLD
    if any(revision not in KNOWN for revision in at):
        return "newer"
    return "ok" if list(at) == [HEAD] else OLD


def require(url: sa.URL) -> None:
    """Return where the database is at this program's revision; else NeedsUpgrade, NewerSchema or NotOurs."""
    state = state_of(url)
    if state != "ok":
        refuse(url, state)


def refuse(url: sa.URL, state: State) -> NoReturn:
    """Raise the error that says why a database in this state is not worked with."""
    where = dialect.shown(url)
    if state == "newer":
        raise NewerSchema(
            "this database was made by a newer version of transom", where, "Update the program; nothing was changed"
        )
    if state == "not_ours":
        raise NotOurs(
            "this database (or file) is another program's", where, "Give the right address; nothing was changed"
        )
    what = "there is no database yet" if state == "new" else "this database was made by an older version of transom"
    raise NeedsUpgrade(what, where, "Run `transom db upgrade`; nothing was changed")
