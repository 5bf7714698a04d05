"""What wakes workers on a server: procrastinate's queue, which reaches several machines. A file has none.

The queue stands in a schema of its own and holds nothing but the names of jobs to look at; what a job is, who has it and
how far it is stands in our tables alone, the same on every database. So the queue is no part of a backup, and may be
thrown away and made anew whenever the library wants another shape of it. Where it cannot be made or used, workers look
at the table, as they do on a file.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from importlib.metadata import version
from threading import Event

import sqlalchemy as sa

SCHEMA = "transom_queue"

Work = Callable[[str], object]
"""Looks at a job, by its id, and does it where it may."""


@cache
def made_by() -> str:
    """Return what stands beside a queue that this version of the library made."""
    return f"procrastinate {version('procrastinate')}"


def prepare(connection: sa.Connection) -> bool:
    """Make the queue, or make it anew where another version of the library made it; say whether there is one."""
    if connection.dialect.name == "sqlite":
        return False
    if not usable(connection):
        from service.store import job_calls  # noqa: PLC0415 - the library is large, and a file needs none

        job_calls.make(connection)
    return usable(connection)


def remove(connection: sa.Connection) -> None:
    """Take the queue away, where there is one."""
    if connection.dialect.name != "sqlite":
        connection.exec_driver_sql(f"DROP SCHEMA IF EXISTS {SCHEMA} CASCADE")


def usable(connection: sa.Connection) -> bool:
    """Say whether there is a queue that this version of the library made, and we may use it."""
    if connection.dialect.name == "sqlite":
        return False
    asked = sa.text(
        "SELECT obj_description(oid, 'pg_namespace') FROM pg_namespace "
        "WHERE nspname = :name AND has_schema_privilege(oid, 'USAGE')"
    )
    return bool(connection.execute(asked, {"name": SCHEMA}).scalar() == made_by())


def call(connection: sa.Connection, job_id: str) -> None:
    """Call a worker to a job, once this transaction is committed. Nothing where there is no queue, or it was called."""
    if usable(connection):
        from service.store import job_calls  # noqa: PLC0415 - the library is large, and a file needs none

        job_calls.call(connection, job_id)


def answer(url: sa.URL, work: Work, stop: Event, *, name: str, hands: int) -> None:
    """Come when called, until `stop`: `work` is called in a thread for each job, at most `hands` at a time.

    Where the server goes away it is tried again until it is back.
    """
    from service.store import job_calls  # noqa: PLC0415 - the library is large, and a file needs none

    job_calls.answer(url, work, stop, name=name, hands=hands)
