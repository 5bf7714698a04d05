"""On a server workers are called, over the library's own queue; without it they look, and nothing else is different."""

from __future__ import annotations

from collections.abc import Callable

import pytest
import sqlalchemy as sa

from service.flow.work_jobs import Crew, Pace
from service.store import dialect, job_calls, job_queue, migrate
from service.store.schema import metadata
from service.store.unit import Store
from tests.flow.jobs.conftest import BO, Steps, is_, put
from tests.support.databases import Served, tidy
from tests.support.waiting import until

Hire = Callable[..., Crew]
CALLED_ONLY = Pace(look=0.05, beat=0.1, patience=60.0, shyness=60.0)
"""A worker of this pace finds nothing by looking."""


@pytest.fixture
def url(served: Served) -> str:
    return served.migrated()


def run(url: str, statement: str) -> list[tuple[object, ...]]:
    engine = dialect.connect(dialect.address(url))
    with dialect.rebuilding(engine) as connection:
        ran = connection.exec_driver_sql(statement)
        found = [tuple(row) for row in ran] if ran.returns_rows else []
    engine.dispose()
    return found


def entries(url: str) -> list[tuple[object, ...]]:
    return run(url, f"SELECT status::text, args->>'job' FROM {job_queue.SCHEMA}.procrastinate_jobs ORDER BY id")  # noqa: S608 - a constant


def test_a_call_is_there_when_the_job_is_and_not_before(store: Store, url: str) -> None:
    job_id = put(store)
    assert entries(url) == [("todo", job_id)]
    with store.writing() as uow:
        job_queue.call(uow._connection, job_id)  # type: ignore[arg-type] # begun
        uow.commit()
    assert entries(url) == [("todo", job_id)], "one call is enough"
    with store.writing() as uow:
        uow.jobs.add("count", "undone", {}, actor=BO)
    assert entries(url) == [("todo", job_id)], "what is undone calls nobody"


def test_workers_come_when_called(
    store: Store, url: str, hire: Hire, monkeypatch: pytest.MonkeyPatch
) -> None:  # fmt: skip
    monkeypatch.setattr(job_calls, "_FETCH_S", 600.0)  # nor does the library find anything but when it is told
    steps = Steps(2)
    steps.go.set()
    early = put(store, "steps")
    crews = [hire({"steps": steps}, f"here:{number}", CALLED_ONLY) for number in (1, 2)]
    assert all(crew.called for crew in crews)
    until(is_(store, early, "done"))
    late = put(store, "steps")
    until(is_(store, late, "done"))
    assert len(steps.taken) == 4
    until(lambda: entries(url) == [])


def test_without_the_queue_workers_look(store: Store, url: str, hire: Hire) -> None:
    run(url, f"DROP SCHEMA {job_queue.SCHEMA} CASCADE")
    steps = Steps(2)
    steps.go.set()
    crew = hire({"steps": steps})
    assert not crew.called
    until(is_(store, put(store, "steps"), "done"))
    migrate.upgrade(url)
    assert hire({"steps": steps}, "here:2").called


def test_the_queue_of_another_version_of_the_library_is_made_anew(store: Store, url: str) -> None:
    put(store)
    run(url, f"COMMENT ON SCHEMA {job_queue.SCHEMA} IS 'procrastinate 0.1'")
    with store.reading() as uow:
        assert not uow.calls()
    migrate.upgrade(url)
    with store.reading() as uow:
        assert uow.calls()
        assert len(uow.jobs.signs()) == 1
    assert entries(url) == []


def test_the_queue_is_none_of_our_tables_and_goes_with_the_migration(url: str) -> None:
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection:
        assert not [name for name in sa.inspect(connection).get_table_names() if "procrastinate" in name]
        assert not [name for name in metadata.tables if "procrastinate" in name]
    engine.dispose()
    migrate.downgrade(url, "0010")
    assert run(url, f"SELECT 1 FROM pg_namespace WHERE nspname = '{job_queue.SCHEMA}'") == []  # noqa: S608 - a constant
    migrate.upgrade(url)
    assert entries(url) == []


def test_a_user_who_may_not_make_the_queue_gets_a_ledger_all_the_same(served: Served) -> None:
    with tidy(served) as databases:
        url = databases.empty()
        name = url.rsplit("/", 1)[1].partition("?")[0]
        served.run("DROP ROLE IF EXISTS plain")
        served.run("CREATE ROLE plain LOGIN")
        run(url, "GRANT CREATE, USAGE ON SCHEMA public TO plain")
        plain = served.server.url(name, user="plain")
        migrate.upgrade(plain)
        engine = dialect.connect(dialect.address(plain))
        with engine.connect() as connection:
            assert not job_queue.usable(connection)
        engine.dispose()
