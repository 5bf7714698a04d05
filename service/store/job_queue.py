"""What wakes workers on a server: procrastinate's queue, which reaches several machines. A file has none.

The queue stands in a schema of its own and holds nothing but the names of jobs to look at; what a job is, who has it and
how far it is stands in our tables alone, the same on every database. So the queue is no part of a backup, and may be
thrown away and made anew whenever the library wants another shape of it. Where it cannot be made or used, workers look
at the table, as they do on a file.
"""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Callable
from contextlib import suppress
from importlib.metadata import version
from threading import Event
from typing import Any

import sqlalchemy as sa
from procrastinate import App, PsycopgConnector
from procrastinate.connector import BaseConnector
from procrastinate.exceptions import AlreadyEnqueued, ConnectorException
from procrastinate.jobs import DeleteJobCondition, Status
from procrastinate.schema import SchemaManager
from procrastinate.sync_psycopg_connector import wrap_exceptions
from psycopg.rows import dict_row
from psycopg.types.json import Jsonb
from psycopg_pool import AsyncConnectionPool

SCHEMA = "transom_queue"
_QUEUE, _TASK = "jobs", "transom.work"
_MADE_BY = f"procrastinate {version('procrastinate')}"
_LOOK_S, _REST_S, _FETCH_S, _PATIENCE_S = 0.2, 2.0, 5.0, 3.0

Work = Callable[[str], object]
"""Looks at a job, by its id, and does it where it may."""


class _Joined(BaseConnector):
    """Lets the library speak in a transaction that is open already, in the queue's schema."""

    def __init__(self, connection: sa.Connection) -> None:
        self._driver: Any = connection.connection.driver_connection

    def get_sync_connector(self) -> BaseConnector:
        return self

    @wrap_exceptions()
    def execute_query(self, query: str, **arguments: Any) -> None:  # noqa: ANN401 - the library's own shape
        self._driver.execute(query, _wrapped(arguments))

    @wrap_exceptions()
    def execute_query_all(self, query: str, **arguments: Any) -> list[dict[str, Any]]:  # noqa: ANN401 - the same
        with self._driver.cursor(row_factory=dict_row) as cursor:
            found: list[dict[str, Any]] = cursor.execute(query, _wrapped(arguments)).fetchall()
            return found


def _wrapped(value: Any) -> Any:  # noqa: ANN401 - whatever the library hands over
    """Return arguments as the driver takes them: the innermost mappings are JSON."""
    return {key: [tuple(map(_cell, row)) for row in rows] for key, rows in value.items()}


def _cell(value: Any) -> Any:  # noqa: ANN401 - the same
    return Jsonb(value) if isinstance(value, dict) else value


def prepare(connection: sa.Connection) -> bool:
    """Make the queue, or make it anew where another version of the library made it; say whether there is one."""
    if connection.dialect.name == "sqlite":
        return False
    if usable(connection):
        return True
    with suppress(ConnectorException, sa.exc.DBAPIError), connection.begin_nested():
        remove(connection)
        connection.exec_driver_sql(f"CREATE SCHEMA {SCHEMA}")
        connection.exec_driver_sql(f"COMMENT ON SCHEMA {SCHEMA} IS '{_MADE_BY}'")
        before = _stand_in_queue(connection)
        SchemaManager(_Joined(connection)).apply_schema()
        _stand_in(connection, before)
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
    return bool(connection.execute(asked, {"name": SCHEMA}).scalar() == _MADE_BY)


def call(connection: sa.Connection, job_id: str) -> None:
    """Call a worker to a job, once this transaction is committed. Nothing where there is no queue, or it was called."""
    if not usable(connection):
        return
    with suppress(AlreadyEnqueued, ConnectorException), connection.begin_nested():
        before = _stand_in_queue(connection)
        task = App(connector=_Joined(connection)).configure_task(_TASK, queue=_QUEUE, queueing_lock=job_id)
        task.defer(job=job_id)
        _stand_in(connection, before)


def _stand_in_queue(connection: sa.Connection) -> str:
    before = str(connection.exec_driver_sql("SHOW search_path").scalar())
    _stand_in(connection, SCHEMA)
    return before


def _stand_in(connection: sa.Connection, path: str) -> None:
    connection.execute(sa.text("SELECT set_config('search_path', :path, true)"), {"path": path})


def answer(url: sa.URL, work: Work, stop: Event, *, name: str, hands: int) -> None:
    """Come when called, until `stop`: `work` is called in a thread for each job, at most `hands` at a time.

    Where the server goes away it is tried again until it is back.
    """
    for noisy in ("procrastinate", "psycopg.pool"):
        logging.getLogger(noisy).setLevel(logging.CRITICAL)  # what befalls a job stands in the job
    while not stop.is_set():
        with suppress(Exception):  # whatever it is: jobs are found by looking, too
            asyncio.run(_answering(url, work, stop, name, hands))
        stop.wait(_REST_S)


async def _answering(url: sa.URL, work: Work, stop: Event, name: str, hands: int) -> None:
    _, settings = sa.create_engine(url).dialect.create_connect_args(url)
    options = f"{settings.pop('options', '')} -c search_path={SCHEMA}".strip()
    settings = {**settings, "options": options, "application_name": "transom"}
    asyncio.get_running_loop().set_exception_handler(lambda _loop, _said: None)  # as for the loggers
    pool = AsyncConnectionPool(
        kwargs=settings,
        min_size=1,
        max_size=hands + 2,
        timeout=_PATIENCE_S,
        check=AsyncConnectionPool.check_connection,
        open=False,
    )
    app = App(connector=PsycopgConnector(kwargs=settings))

    def one(job: str) -> None:
        work(job)

    app.task(name=_TASK)(one)
    async with pool, app.open_async(pool):
        await pool.wait(_PATIENCE_S)
        # Workers that died left these; what is to be done about them our own table says.
        for left in await app.job_manager.get_stalled_jobs():
            if left.id is not None:
                await app.job_manager.finish_job_by_id_async(left.id, Status.FAILED, delete_job=True)
        worker = asyncio.ensure_future(
            app.run_worker_async(
                queues=[_QUEUE],
                name=name,
                concurrency=hands,
                delete_jobs=DeleteJobCondition.ALWAYS,
                install_signal_handlers=False,
                fetch_job_polling_interval=_FETCH_S,
            )
        )
        while not stop.is_set() and not worker.done():
            await asyncio.wait({worker}, timeout=_LOOK_S)
        worker.cancel()
        with suppress(asyncio.CancelledError):
            await worker
