"""Bringing a database to another revision: all of it or nothing."""

from __future__ import annotations

import io
from importlib import resources

import sqlalchemy as sa
from alembic import command
from alembic.config import Config
from alembic.script import ScriptDirectory

from service.store import dialect, job_queue
from service.store.check import NEW, OLD, refuse, state_of
from service.store.errors import StoreAway


def configuration(connection: sa.Connection | None = None) -> Config:
    """Return alembic's configuration, whatever folder one stands in; it writes nothing to stdout."""
    config = Config(stdout=io.StringIO(), output_buffer=io.StringIO())
    config.set_main_option("script_location", str(resources.files("migrations")).replace("%", "%%"))
    config.set_main_option("path_separator", "os")
    config.attributes["connection"] = connection
    return config


def current_head() -> str:
    """Return the newest revision in `migrations`."""
    return str(ScriptDirectory.from_config(configuration()).get_current_head())


def upgrade(url: str, revision: str = "head") -> str:
    """Bring the database to `revision`, creating it where there is none, and return that revision.

    A database of another program, or of a newer version, is refused untouched (NotOurs, NewerSchema). The folder
    of an SQLite file must exist (StoreAway).
    """
    target = dialect.address(url)
    state = state_of(target)
    if state not in (NEW, OLD, "ok"):
        refuse(target, state)
    engine = dialect.connect(target)
    try:
        see_folder(target)
        if state != "ok":
            dialect.use_wal(engine)
        with dialect.rebuilding(engine) as connection:
            command.upgrade(configuration(connection), revision)
            if revision in ("head", current_head()):
                job_queue.prepare(connection)
        return current_head() if revision == "head" else revision
    finally:
        engine.dispose()


def downgrade(url: str, revision: str = "base") -> None:
    """Take the database back to `revision`; `base` removes every table and what is in it."""
    target = dialect.address(url)
    state = state_of(target)
    if state not in (OLD, "ok"):
        refuse(target, state)
    engine = dialect.connect(target)
    try:
        with dialect.rebuilding(engine) as connection:
            command.downgrade(configuration(connection), revision)
    finally:
        engine.dispose()


def see_folder(url: sa.URL) -> None:
    """Return where the folder of an SQLite file is there; else StoreAway."""
    path = dialect.file_of(url)
    if path is not None and not path.absolute().parent.is_dir():
        raise StoreAway("there is no such folder", str(path.absolute().parent), "Make it, or give another address")
