"""The tests' own server: found where it is, told how to get one where it is not, gone when the run is."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.support import postgres
from tests.support.postgres import NoServerError, Server, programs


def folder_with(place: Path, version: str) -> Path:
    """Return a folder with stand-ins for a server of that version."""
    place.mkdir(parents=True)
    for name in ("postgres", "initdb"):
        (place / name).write_text(f"#!/bin/sh\necho 'postgres (PostgreSQL) {version}'\n", encoding="ascii")
        (place / name).chmod(0o755)
    return place


@pytest.fixture
def nowhere(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Look in an empty folder alone."""
    monkeypatch.setattr(postgres, "DEBIAN", tmp_path / "debian")
    monkeypatch.setattr(postgres, "WHEELS", ())
    return tmp_path


def test_where_there_is_none_it_says_how_one_gets_one(nowhere: Path) -> None:
    with pytest.raises(NoServerError, match=r"(?s)apt-get install postgresql.*Without root.*TRANSOM_TEST_POSTGRES"):
        programs({"PATH": str(nowhere)})


def test_one_that_was_told_of_counts_first_and_has_to_be_there(nowhere: Path) -> None:
    told = folder_with(nowhere / "told", "16.2")
    folder_with(nowhere / "debian" / "17" / "bin", "17.1")
    assert programs({"TRANSOM_TEST_POSTGRES": str(told)}) == told
    with pytest.raises(NoServerError, match="no such server there"):
        programs({"TRANSOM_TEST_POSTGRES": str(nowhere)})


def test_the_newest_of_debians_that_is_new_enough_is_taken(nowhere: Path) -> None:
    folder_with(nowhere / "debian" / "9" / "bin", "9.6")
    with pytest.raises(NoServerError):
        programs({"PATH": str(nowhere)})
    newest = folder_with(nowhere / "debian" / "16" / "bin", "16.2")
    folder_with(nowhere / "debian" / "15" / "bin", "15.4")
    assert programs({"PATH": str(nowhere)}) == newest


def test_the_server_is_not_roots_and_nobody_else_may_enter(postgres: Server) -> None:
    there = postgres.socket.stat()
    assert there.st_uid != 0
    assert there.st_mode & 0o077 == 0


def test_a_run_that_is_killed_leaves_nothing_behind() -> None:
    code = (
        "import time\nfrom tests.support.postgres import server\n"
        "with server() as s:\n    print(s.socket, flush=True)\n    time.sleep(600)\n"
    )
    with subprocess.Popen([sys.executable, "-c", code], stdout=subprocess.PIPE, text=True) as run:  # noqa: S603 - our own
        assert run.stdout is not None
        socket = Path(run.stdout.readline().strip())
        process = int((socket / "data" / "postmaster.pid").read_text("ascii").splitlines()[0])
        run.send_signal(signal.SIGKILL)
    for _ in range(200):
        if not socket.exists():
            break
        time.sleep(0.05)
    assert not socket.exists()
    with pytest.raises(ProcessLookupError):
        os.kill(process, 0)
