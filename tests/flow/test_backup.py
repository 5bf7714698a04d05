"""A backup is one moment, comes back whole on either kind of database, and what is wrong with one is told first."""

from __future__ import annotations

import fcntl
import signal
import subprocess
import sys
import threading
import zipfile
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa

from service.files.read.errors import Unreadable
from service.files.vault import Vault
from service.flow.attach import attach
from service.flow.back_up import back_up
from service.flow.merge_records import merge_records
from service.flow.refusal import Refused
from service.flow.restore import restore
from service.flow.verify_backup import verify_backup
from service.store import dialect, schema
from service.store.edge_schema import audit
from service.store.errors import Conflict
from tests.flow.conftest import opened, seed
from tests.support.databases import Databases, Served, fingerprint, tidy

AT = datetime(2026, 3, 1, 9, tzinfo=UTC)
NOTE = b"The owner says the ladder moves to port next winter.\n"


@dataclass(frozen=True)
class Desk:
    """A database with everything in it, its files, and an archive of both."""

    url: str
    vault: Vault
    archive: Path


@pytest.fixture(scope="module")
def desk(tmp_path_factory: pytest.TempPathFactory) -> Desk:
    folder = tmp_path_factory.mktemp("desk")
    url, vault = f"sqlite:///{folder / 'ledger.db'}", Vault(folder / "files")
    seed(url)
    store = opened(url)
    with store.reading() as uow:
        first, second, third = sorted(one.reference for one in uow.records.all())[:3]
    merge_records(store.writing(), first, second, who="bo", why="written down twice")
    attach(store.writing(), vault, third, [("note.txt", NOTE)], who="bo")
    store.close()
    _refer_forward(url)
    made = back_up(url, vault, folder / "whole.zip", at=AT)
    filled = {table.name for table in made.tables if table.rows}
    assert filled >= {"records", "record_revisions", "record_merges", "attachments", "imports", "kept_file_parts"}
    assert (len(made.files), made.lost) == (1, ())
    return Desk(url, vault, folder / "whole.zip")


def _refer_forward(url: str) -> None:
    """Let the first hull model stand for nothing but the last one, so that its row comes before the one it needs."""
    engine = dialect.connect(dialect.address(url))
    models = schema.hull_models
    with engine.begin() as connection:
        ids = connection.execute(sa.select(models.c.id).order_by(models.c.id)).scalars().all()
        connection.execute(models.update().where(models.c.id == ids[0]).values(merged_into=ids[-1]))
        connection.execute(models.update().where(models.c.id == ids[1]).values(model="Nul \0 and \ue000, ½\u2028"))
    engine.dispose()


@pytest.fixture
def servers(served: Served) -> Databases:
    return served


def test_everything_comes_back_from_a_file_to_a_server_and_to_a_file_again(
    desk: Desk, servers: Databases, tmp_path: Path
) -> None:
    with tidy(servers) as databases:
        server = databases.empty()
        restore(desk.archive, server, Vault(tmp_path / "a"))
        assert fingerprint(server) == fingerprint(desk.url)
        back_up(server, Vault(tmp_path / "a"), tmp_path / "second.zip", at=AT)
        last = f"sqlite:///{tmp_path / 'last.db'}"
        restore(tmp_path / "second.zip", last, Vault(tmp_path / "b"))
        assert fingerprint(last) == fingerprint(desk.url)
        assert [Vault(tmp_path / "b").read(name) for name in Vault(tmp_path / "b").names()] == [NOTE]
        with pytest.raises(Conflict, match="something in this database"):
            restore(desk.archive, server, Vault(tmp_path / "c"))
        opened(server).close()  # this program's, at its revision
        assert _deferrable(server) == 0
        assert _sequences(server) == []  # counters are rows; a sequence would have to be set by hand


def _deferrable(url: str) -> int:
    return int(
        _asked(url, lambda c: c.exec_driver_sql("SELECT count(*) FROM pg_constraint WHERE condeferrable").scalar())
    )


def _sequences(url: str) -> list[str]:
    return list(_asked(url, lambda c: sa.inspect(c).get_sequence_names()))


def _asked(url: str, what: Callable[[sa.Connection], Any]) -> Any:  # noqa: ANN401 - whatever was asked for
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection:
        found = what(connection)
    engine.dispose()
    return found


def test_a_backup_while_others_write_is_one_moment(databases: Databases, tmp_path: Path) -> None:
    url = databases.like(seed)
    stop, written = threading.Event(), [0]

    def write() -> None:
        """Add to two tables in each transaction: in any one moment both have as many."""
        engine = dialect.connect(dialect.address(url))
        while not stop.is_set():
            name = f"w{written[0] + 1}"
            with dialect.begun(engine, writes=True) as connection:
                connection.execute(audit.insert(), _audit(name))
                connection.execute(schema.stamps.insert(), {"name": name, "stamp": name})
                connection.commit()
            written[0] += 1
        engine.dispose()

    writer = threading.Thread(target=write)
    writer.start()
    try:
        before = written[0]
        steps: list[int] = []
        made = back_up(url, Vault(tmp_path / "files"), tmp_path / "b.zip", at=AT, progress=steps.append)
        assert written[0] > before  # it held nobody up
    finally:
        stop.set()
        writer.join()
    assert sum(steps) == made.rows
    copy = f"sqlite:///{tmp_path / 'copy.db'}"
    restore(tmp_path / "b.zip", copy, Vault(tmp_path / "other"))  # foreign keys hold, or this fails
    names = _asked(copy, lambda c: set(c.execute(sa.select(audit.c.thing)).scalars()))
    stamps = _asked(copy, lambda c: set(c.execute(sa.select(schema.stamps.c.name)).scalars()))
    assert {one for one in stamps if one in names} == names
    assert {one for one in stamps if one[0] == "w" and one[1:].isdecimal()} == names


def _audit(name: str) -> dict[str, object]:
    return {"id": name, "at": AT, "who": "bo", "action": "wrote", "kind": "record", "thing": name}


@pytest.mark.parametrize("share", [0.0, 0.3, 0.9, 0.999])
def test_a_truncated_archive_is_refused_before_anything_is_touched(desk: Desk, share: float, tmp_path: Path) -> None:
    data = desk.archive.read_bytes()
    cut = tmp_path / "cut.zip"
    cut.write_bytes(data[: int(len(data) * share)])
    with pytest.raises((Unreadable, Refused)):
        restore(cut, f"sqlite:///{tmp_path / 'new.db'}", Vault(tmp_path / "files"))
    assert [path.name for path in tmp_path.iterdir()] == ["cut.zip"]
    assert verify_backup(cut).faults


@pytest.mark.parametrize("member", ["manifest.json", "tables/records.jsonl", "tables/kept_file_parts.jsonl", "files/"])
def test_a_flipped_bit_is_found_where_it_is(desk: Desk, member: str, tmp_path: Path) -> None:
    data = bytearray(desk.archive.read_bytes())
    with zipfile.ZipFile(desk.archive) as pack:
        info = next(one for one in pack.infolist() if one.filename.startswith(member))
    data[info.header_offset + 30 + len(info.filename) + len(info.extra) + info.compress_size // 2] ^= 4
    bad = tmp_path / "bad.zip"
    bad.write_bytes(data)
    found = verify_backup(bad).faults
    assert any(member in fault.where or member in fault.what for fault in found), found
    with pytest.raises((Unreadable, Refused), match=member):
        restore(bad, f"sqlite:///{tmp_path / 'new.db'}", Vault(tmp_path / "files"))
    assert [path.name for path in tmp_path.iterdir()] == ["bad.zip"]


def test_a_file_that_is_gone_is_told_and_the_rest_is_kept(desk: Desk, tmp_path: Path) -> None:
    made = back_up(desk.url, Vault(tmp_path / "none"), tmp_path / "b.zip", at=AT)
    assert [one.health for one in made.lost] == ["missing"]
    assert verify_backup(tmp_path / "b.zip").faults == ()


def test_one_that_is_there_is_replaced_only_when_asked(desk: Desk, tmp_path: Path) -> None:
    (tmp_path / "b.zip").write_bytes(b"precious")
    with pytest.raises(Refused, match="--overwrite"):
        back_up(desk.url, desk.vault, tmp_path / "b.zip", at=AT)
    assert (tmp_path / "b.zip").read_bytes() == b"precious"
    back_up(desk.url, desk.vault, tmp_path / "b.zip", at=AT, overwrite=True)
    assert verify_backup(tmp_path / "b.zip").faults == ()


def test_what_another_database_left_beside_the_file_is_not_taken_for_its_own(desk: Desk, tmp_path: Path) -> None:
    (tmp_path / "new.db-wal").write_bytes(b"old")
    with pytest.raises(Conflict, match=r"new\.db-wal"):
        restore(desk.archive, f"sqlite:///{tmp_path / 'new.db'}", Vault(tmp_path / "files"))
    assert [path.name for path in tmp_path.iterdir()] == ["new.db-wal"]


KILLED = """
import os, signal, sys
from datetime import UTC, datetime
from pathlib import Path
from service.files.vault import Vault
from service.flow.back_up import back_up
done = 0
def stop(more):
    global done
    done += more
    if done > int(sys.argv[4]):
        os.kill(os.getpid(), signal.SIGKILL)
back_up(sys.argv[1], Vault(Path(sys.argv[2])), Path(sys.argv[3]), at=datetime(2026, 3, 1, tzinfo=UTC), progress=stop)
"""


@pytest.mark.parametrize("rows", [0, 1500])
def test_killed_half_way_nothing_stands_under_the_name(desk: Desk, rows: int, tmp_path: Path) -> None:
    target = tmp_path / "b.zip"
    command = [sys.executable, "-c", KILLED, desk.url, str(desk.vault.folder), str(target), str(rows)]
    ended = subprocess.run(command, check=False, timeout=60)  # noqa: S603 - this very program
    assert ended.returncode == -signal.SIGKILL
    assert not target.exists()
    assert len(list(tmp_path.glob(".b.zip.*.half"))) == 1
    alive = tmp_path / ".b.zip.1.half"
    with alive.open("wb") as held:  # another backup to that name, still being written
        fcntl.flock(held, fcntl.LOCK_EX)
        back_up(desk.url, desk.vault, target, at=AT)
    assert verify_backup(target).faults == ()
    assert sorted(path.name for path in tmp_path.iterdir()) == [alive.name, "b.zip"]


class Stopped(BaseException):
    """As when somebody presses Ctrl-C."""


def test_a_restore_that_fails_leaves_no_database(desk: Desk, tmp_path: Path) -> None:
    target = tmp_path / "new.db"

    def stop(_: int) -> None:
        if target.exists():
            raise Stopped

    with pytest.raises(Stopped):
        restore(desk.archive, f"sqlite:///{target}", Vault(tmp_path / "files"), progress=stop)
    assert [path.name for path in tmp_path.iterdir()] == ["files"]
    restore(desk.archive, f"sqlite:///{target}", Vault(tmp_path / "files"))
    assert fingerprint(f"sqlite:///{target}") == fingerprint(desk.url)
