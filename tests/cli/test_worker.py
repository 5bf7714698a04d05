"""Jobs from the command line: begun, looked at, worked, cancelled, gone on with; and a worker killed in one."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from service.flow.import_hulls import import_hulls
from service.flow.work_jobs import Pace
from service.store import migrate
from tests.flow.conftest import opened
from tests.support.waiting import until

if TYPE_CHECKING:
    from tests.cli.conftest import Run
    from tests.support.databases import Databases

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"
TOP = Path(__file__).resolve().parents[2]
SLOW_WORKER = """
import sys, time
from service.flow import import_records as imports
from service.cli.main import status
take = imports.take_rows
def slowly(*given, **more):
    time.sleep(0.2)
    return take(*given, **more)
imports.CHUNK, imports.take_rows = 50, slowly
sys.exit(status(["jobs", "work", "--db", sys.argv[1]]))
"""


def fill(url: str) -> None:
    migrate.upgrade(url)
    store = opened(url)
    import_hulls(store.writing(), (FIXTURES / "hulls.csv").read_bytes(), "hulls.csv")
    store.close()


@pytest.fixture
def url(databases: Databases) -> str:
    """Return a ledger with hull models alone."""
    return databases.like(fill)


def test_an_import_is_left_to_a_worker(run: Run, url: str) -> None:
    fleet = FIXTURES / "fleet.jsonl"
    told = run("records", "import", fleet, "--job", "--who", "bo", "--json", "--db", url).document
    assert (told["state"], told["kind"], told["who"], told["total"]) == ("waiting", "import", "bo", 600)
    listed = run("jobs", "list", "--db", url)
    assert told["id"] in listed.out
    assert "waiting" in listed.out
    assert "fleet.jsonl" in listed.out
    assert "0 of 600" in listed.out
    ran = run("jobs", "work", "--until-idle", "--db", url)
    assert (ran.status, ran.out) == (0, "")
    assert "works on jobs" in ran.err
    shown = run("jobs", "show", told["id"], "--json", "--db", url).document
    assert (shown["state"], shown["done"], shown["result"]["created"]) == ("done", 600, 600)
    page = run("jobs", "show", told["id"], "--db", url).out
    assert "600 of 600 (100 %)" in page
    assert max(map(len, page.splitlines())) <= 100


def test_jobs_are_cancelled_and_gone_on_with(run: Run, url: str) -> None:
    db = ("--db", url)
    job = run("records", "import", FIXTURES / "fleet.jsonl", "--job", "--json", *db).document["id"]
    assert run("jobs", "cancel", job, *db).out == f"{job}: cancelled\n"
    assert f"transom jobs resume {job}" in run("jobs", "show", job, *db).out
    assert run("jobs", "work", "--until-idle", *db).status == 0
    again = run("jobs", "cancel", job, *db)
    assert again.status == 2
    assert "nothing to cancel" in again.err
    assert run("jobs", "resume", job, *db).out == f"{job}: waits for a worker\n"
    assert run("jobs", "show", "job-none", *db).status == 2


def test_a_recheck_that_cannot_begin_says_why(run: Run, url: str, tmp_path: Path) -> None:
    assert run("recheck", "--job", "--db", url).status == 3  # no catalogue is loaded
    bad = tmp_path / "bad.toml"
    bad.write_text("[catalogue]\nname = 3", encoding="utf-8")
    ran = run("recheck", "--catalogue", bad, "--job", "--db", url)
    assert ran.status == 2
    assert "bad.toml" in ran.err
    assert run("jobs", "list", "--json", "--db", url).document == []
    assert "There are none" in run("jobs", "list", "--db", url).out


def test_a_worker_killed_in_a_job_loses_nothing(run: Run, url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("service.flow.work_jobs.Pace", lambda: Pace(patience=1.0))
    job = run("records", "import", FIXTURES / "fleet.jsonl", "--job", "--json", "--db", url).document["id"]
    store = opened(url)

    def done() -> int:
        with store.reading() as uow:
            return uow.imports.all()[0].done

    with subprocess.Popen([sys.executable, "-c", SLOW_WORKER, url], cwd=TOP, stderr=subprocess.PIPE) as worker:  # noqa: S603 - our own
        until(lambda: done() >= 100, 60.0)
        os.kill(worker.pid, signal.SIGKILL)
        worker.communicate()
    acknowledged = done()
    assert 100 <= acknowledged < 600
    with store.reading() as uow:
        assert uow.records.count() == acknowledged
        assert uow.jobs.get(job).state == "running"
    assert run("jobs", "work", "--until-idle", "--db", url).status == 0
    with store.reading() as uow:
        after = uow.jobs.get(job)
        assert (after.state, after.turn, uow.records.count()) == ("done", 2, 600)
        assert len(list(uow.imports.outcomes(after.arguments["import"]))) == 600
    store.close()
