"""What concerns SQLite's files alone."""

from __future__ import annotations

import hashlib
import os
import re
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from service.core.record import HullModel
from service.store import dialect
from service.store.errors import NewerSchema, NotOurs, StoreAway
from service.store.ids import random_id
from service.store.unit import Store
from tests.support.databases import Files, file_of


@pytest.fixture
def url(tmp_path: Path) -> str:
    return Files(tmp_path).migrated()


def put(store: Store, *ids: str) -> None:
    with store.writing() as uow:
        uow.hulls.put([HullModel(id=name, model=name) for name in ids], who="test", why="test")
        uow.commit()


def pragma(store: Store, name: str) -> Any:  # noqa: ANN401 - whatever SQLite says
    with store.reading() as uow:
        assert uow._connection is not None
        return uow._connection.exec_driver_sql(f"PRAGMA {name}").scalar()


def test_connections_are_as_they_should_be(store: Store) -> None:
    assert pragma(store, "journal_mode") == "wal"
    assert pragma(store, "foreign_keys") == 1
    assert pragma(store, "busy_timeout") == dialect.BUSY_MS


def test_wal_is_taken_up_again_after_a_restore(url: str, make_store: Callable[[], Store]) -> None:
    make_store().close()
    raw = sqlite3.connect(file_of(url))
    assert raw.execute("PRAGMA journal_mode = DELETE").fetchone() == ("delete",)
    raw.close()
    assert pragma(make_store(), "journal_mode") == "wal"


def test_only_writers_take_the_lock(store: Store, statements: list[str]) -> None:
    with store.reading() as uow:
        uow.hulls.all()
    with store.writing() as uow:
        uow.hulls.all()
    assert [s for s in statements if s.startswith("BEGIN")] == ["BEGIN", "BEGIN IMMEDIATE"]


def test_a_full_disk_is_named_and_nothing_is_half_written(store: Store) -> None:
    with store.writing() as uow:
        assert uow._connection is not None
        pages = uow._connection.exec_driver_sql("PRAGMA page_count").scalar_one()
        uow._connection.exec_driver_sql(f"PRAGMA max_page_count = {pages}")
    with pytest.raises(StoreAway, match=r"disk is full.*Make room"):
        put(store, *(f"{n:080d}" for n in range(2000)))
    with store.reading() as uow:
        assert uow.hulls.all() == ()


def test_a_damaged_file_is_named(url: str, make_store: Callable[[], Store]) -> None:
    store = make_store()
    put(store, *(f"hull {n}" for n in range(2000)))
    store.close()
    path = file_of(url)
    raw = sqlite3.connect(path)
    raw.execute("PRAGMA journal_mode = DELETE")
    raw.close()
    content = bytearray(path.read_bytes())
    content[4096 * 2 :] = b"\xa5" * (len(content) - 4096 * 2)
    path.write_bytes(content)
    with pytest.raises(StoreAway, match=r"damaged.*backup"), make_store().reading() as uow:
        uow.hulls.all()


def test_a_newer_database_left_by_a_crash_is_refused_untouched(url: str, make_store: Callable[[], Store]) -> None:
    make_store().close()
    path = file_of(url)
    code = (
        "import os, sqlite3, sys; c = sqlite3.connect(sys.argv[1]); c.execute('PRAGMA wal_autocheckpoint = 0');"
        "c.execute(\"UPDATE ledger_version SET version_num = '9999'\"); c.commit(); os._exit(0)"
    )
    subprocess.run([sys.executable, "-c", code, str(path)], check=True)  # noqa: S603 - our own interpreter
    assert path.with_name("ledger.db-wal").stat().st_size > 0
    before = {p.name: hashlib.sha256(p.read_bytes()).hexdigest() for p in path.parent.iterdir() if "shm" not in p.name}
    with pytest.raises(NewerSchema):
        make_store()
    after = {p.name: hashlib.sha256(p.read_bytes()).hexdigest() for p in path.parent.iterdir() if "shm" not in p.name}
    assert after == before


def test_a_file_that_may_only_be_read(url: str, make_store: Callable[[], Store]) -> None:
    store = make_store()
    put(store, "a")
    with store.writing() as uow:
        assert uow._connection is not None
        uow._connection.exec_driver_sql("PRAGMA query_only = ON")
        with pytest.raises(Exception, match="readonly") as caught:
            uow.hulls.put([HullModel(id="b", model="b")], who="test", why="test")
        uow._connection.exec_driver_sql("PRAGMA query_only = OFF")
    told = dialect.explain(caught.value, dialect.address(url))  # type: ignore[arg-type] # the driver's, as matched
    assert re.search(r"only be read.*Allow writing", str(told))


def test_a_file_that_is_no_database(tmp_path: Path) -> None:
    path = tmp_path / "picture.db"
    path.write_bytes(b"\x89PNG\r\n\x1a\n" + os.urandom(4096))
    before = path.read_bytes()
    with pytest.raises(NotOurs):
        Store(f"sqlite:///{path}", now=lambda: datetime(2024, 1, 1, tzinfo=UTC), new_id=random_id)
    assert path.read_bytes() == before


def test_a_folder_instead_of_a_file(tmp_path: Path) -> None:
    with pytest.raises(StoreAway, match=r"a folder.*Name the file"):
        Store(f"sqlite:///{tmp_path}", now=lambda: datetime(2024, 1, 1, tzinfo=UTC), new_id=random_id)


def test_a_copy_of_the_file_is_a_whole_database(url: str, tmp_path: Path, make_store: Callable[[], Store]) -> None:
    store = make_store()
    put(store, "a")
    store.close()
    shutil.copy(file_of(url), tmp_path / "copy.db")
    copy = Store(f"sqlite:///{tmp_path / 'copy.db'}", now=lambda: datetime(2024, 1, 1, tzinfo=UTC), new_id=random_id)
    with copy.reading() as uow:
        assert [hull.id for hull in uow.hulls.all()] == ["a"]
    copy.close()
