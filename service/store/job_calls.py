"""The queue that `job_queue` speaks of, made and used through its library, which is loaded on a server alone."""

from __future__ import annotations

import asyncio
import logging
from contextlib import suppress
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

from service.store.job_queue import SCHEMA, Work, made_by, remove

_QUEUE, _TASK = "jobs", "transom.work"
_LOOK_S, _REST_S, _FETCH_S, _PATIENCE_S = 0.2, 2.0, 5.0, 3.0


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


def make(connection: sa.Connection) -> None:
    """Make the queue anew, where we may."""
    with suppress(ConnectorException, sa.exc.DBAPIError), connection.begin_nested():
        remove(connection)
        connection.exec_driver_sql(f"CREATE SCHEMA {SCHEMA}")
        connection.exec_driver_sql(f"COMMENT ON SCHEMA {SCHEMA} IS '{made_by()}'")
        before = _stand_in_queue(connection)
        SchemaManager(_Joined(connection)).apply_schema()
        _stand_in(connection, before)


def call(connection: sa.Connection, job_id: str) -> None:
    """Call a worker to a job, once this transaction is committed. Nothing where it was called already."""
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
    """Come when called, as `job_queue.answer` says."""
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
