"""What concerns PostgreSQL's servers alone: whose fault it is, told so that a person can mend it."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from datetime import UTC, datetime
from urllib.parse import quote

import pytest
import sqlalchemy as sa

from service.core.record import HullModel
from service.store import dialect, migrate
from service.store.check import state_of
from service.store.errors import NotOurs, StoreAway
from service.store.ids import random_id
from service.store.unit import Store
from tests.support.databases import Databases, Served, tidy
from tests.support.postgres import Server, server

RIGHT, WRONG = "right", "wr:on/g"


@pytest.fixture
def own(served: Served) -> Iterator[Databases]:
    with tidy(served) as mine:
        yield mine


@pytest.fixture
def url(own: Databases) -> str:
    return own.migrated()


def opened(url: str) -> Store:
    return Store(url, now=lambda: datetime(2024, 1, 1, tzinfo=UTC), new_id=random_id)


def put(store: Store, name: str) -> None:
    with store.writing() as uow:
        uow.hulls.put([HullModel(id=name, model=name)], who="test", why="test")
        uow.commit()


def raw(url: str, *statements: str) -> None:
    engine = dialect.connect(dialect.address(url))
    with dialect.rebuilding(engine) as connection:
        for statement in statements:
            connection.exec_driver_sql(statement)
    engine.dispose()


def test_readers_see_one_moment_and_writers_take_the_lock(store: Store) -> None:
    asked = sa.text("SELECT current_setting('transaction_isolation'), current_setting('transaction_read_only')")
    found = []
    for unit in (store.reading(), store.writing()):
        with unit as uow:
            assert uow._connection is not None
            found.append(tuple(uow._connection.execute(asked).one()))
    assert found == [("repeatable read", "on"), ("read committed", "off")]


def test_every_column_of_text_sorts_by_code_points(store: Store) -> None:
    asked = sa.text(
        "SELECT table_name, column_name, collation_name FROM information_schema.columns "
        "WHERE table_schema = 'public' AND data_type IN ('text', 'character varying')"
    )
    with store.reading() as uow:
        assert uow._connection is not None
        found = uow._connection.execute(asked).all()
    assert len(found) > 40
    assert [row for row in found if row.collation_name != "C"] == []


def test_a_reader_waits_for_no_writer(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(dialect, "BUSY_MS", 50)
    with store.writing() as writer:
        writer.hulls.put([HullModel(id="a", model="a")], who="test", why="test")
        with store.reading() as reader:
            assert reader.hulls.all() == ()


@pytest.mark.parametrize(
    ("address", "says"),
    [
        ("postgresql://127.0.0.1:1/ledger", "does not answer.*See that it runs"),
        ("postgresql:///ledger?host=/nowhere/at/all", "does not answer.*See that it runs"),
    ],
)
def test_a_server_that_is_away_is_named(address: str, says: str) -> None:
    with pytest.raises(StoreAway, match=says):
        opened(address)


def test_a_wrong_user_password_and_database_are_named_without_the_password(served: Served, postgres: Server) -> None:
    served.run("DROP ROLE IF EXISTS keyed")
    served.run(f"CREATE ROLE keyed LOGIN PASSWORD '{RIGHT}'")
    for address, says in (
        (postgres.url("postgres", user="keyed", password=WRONG), "lets nobody in.*right user and password"),
        (postgres.url("postgres", user="keyed"), "lets nobody in.*right user and password"),
        (postgres.url("postgres", user="nobody_of_that_name"), "no such user or database.*Make it there"),
        (postgres.url("none_of_that_name"), "no such user or database.*Make it there"),
    ):
        with pytest.raises(StoreAway, match=says) as caught:
            opened(address)
        assert WRONG not in str(caught.value)
        assert quote(WRONG, safe="") not in str(caught.value)
    assert state_of(dialect.address(postgres.url("postgres", user="keyed", password=RIGHT))) == "new"


def test_another_programs_database_is_refused_untouched(own: Databases) -> None:
    url = own.empty()
    raw(url, "CREATE TABLE letters (id INTEGER)")
    for attempt in (opened, migrate.upgrade, migrate.downgrade):
        with pytest.raises(NotOurs, match="another program"):
            attempt(url)
    engine = dialect.connect(dialect.address(url))
    assert sa.inspect(engine).get_table_names() == ["letters"]
    engine.dispose()


def test_a_database_that_cannot_hold_every_letter_is_refused(served: Served, postgres: Server) -> None:
    served.run("DROP DATABASE IF EXISTS latin")
    served.run("CREATE DATABASE latin TEMPLATE template0 ENCODING LATIN1 LOCALE_PROVIDER libc LOCALE 'C'")
    try:
        with pytest.raises(StoreAway, match=r"holds text as LATIN1.*ENCODING 'UTF8'"):
            migrate.upgrade(postgres.url("latin"))
    finally:
        served.run("DROP DATABASE latin WITH (FORCE)")


def test_a_user_who_may_only_look_is_told_so(served: Served, postgres: Server, url: str) -> None:
    served.run("DROP ROLE IF EXISTS looker")
    served.run("CREATE ROLE looker LOGIN")
    raw(url, "GRANT SELECT ON ALL TABLES IN SCHEMA public TO looker")
    store = opened(postgres.url(dialect.address(url).database or "", user="looker"))
    with store.reading() as uow:
        assert uow.hulls.all() == ()
    with pytest.raises(StoreAway, match=r"user may not do this.*GRANT"):
        put(store, "a")
    store.close()
    raw(url, "DROP OWNED BY looker")


@pytest.mark.parametrize(
    ("code", "says"),
    [
        ("disk_full", r"disk is full.*Make room"),
        ("out_of_memory", "not enough of something"),
        ("read_only_sql_transaction", "only be read.*takes changes"),
        ("deadlock_detected", "another program changed.*Try again"),
        ("io_error", "server's disk"),
        ("data_corrupted", "damaged"),
    ],
)
def test_what_the_server_complains_of_is_told_and_nothing_is_half_written(
    store: Store, url: str, code: str, says: str
) -> None:
    raw(
        url,
        f"""CREATE FUNCTION complain() RETURNS trigger LANGUAGE plpgsql AS
            $$ BEGIN RAISE EXCEPTION 'as it came' USING ERRCODE = '{code}'; END $$""",
        "CREATE TRIGGER complain BEFORE INSERT ON hull_aliases FOR EACH ROW EXECUTE FUNCTION complain()",
    )
    with pytest.raises(StoreAway, match=says), store.writing() as uow:
        uow.hulls.put([HullModel(id="a", model="a", aliases=("b",))], who="test", why="test")
    with store.reading() as uow:
        assert uow.hulls.all() == ()


def test_a_server_that_ends_the_connection_is_told_and_the_next_attempt_works(store: Store, served: Served) -> None:
    with pytest.raises(StoreAway, match=r"went away.*undone"), store.writing() as uow:  # noqa: PT012 - as it happens
        uow.hulls.put([HullModel(id="a", model="a")], who="test", why="test")
        served.run("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'transom'")
        uow.hulls.all()
    put(store, "b")
    with store.reading() as uow:
        assert [hull.id for hull in uow.hulls.all()] == ["b"]


def test_a_desk_that_fell_asleep_gives_up_its_turn(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(dialect, "IDLE_MS", 50)
    with pytest.raises(StoreAway, match=r"waiting too long|went away"), store.writing() as uow:  # noqa: PT012 - as it happens
        uow.hulls.put([HullModel(id="a", model="a")], who="test", why="test")
        put(store, "b")  # waits until the other one has lost its turn
        uow.hulls.all()
    with store.reading() as uow:
        assert [hull.id for hull in uow.hulls.all()] == ["b"]


def test_two_upgrades_at_once_are_one(own: Databases) -> None:
    url, faults = own.empty(), list[BaseException]()

    def work() -> None:
        try:
            migrate.upgrade(url)
        except BaseException as error:  # noqa: BLE001 - told to the test below
            faults.append(error)

    threads = [threading.Thread(target=work) for _ in range(2)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert faults == []
    assert state_of(dialect.address(url)) == "ok"


def test_a_server_that_stops_is_told() -> None:
    with server() as short:
        databases = Served(short)
        store = opened(databases.migrated())
        put(store, "a")
        databases.close()
    with pytest.raises(StoreAway, match="does not answer"):
        put(store, "b")
    store.close()
    assert not short.socket.exists()
