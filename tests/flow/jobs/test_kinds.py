"""What jobs there are: an import and a recheck do as jobs what they do at once, and go on where they stopped."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest

from service.core.batch import RowOutcome
from service.core.job import State
from service.files.vault import Vault
from service.flow import import_records as imports
from service.flow.backup_job import start_backup
from service.flow.cancel_job import cancel_job
from service.flow.import_hulls import import_hulls
from service.flow.import_job import start_import
from service.flow.import_records import MappingFile, import_records
from service.flow.job_task import Task
from service.flow.load_catalogue import load_catalogue
from service.flow.reader import Read
from service.flow.recheck import recheck_fleet
from service.flow.recheck_job import recheck_found, start_recheck
from service.flow.refusal import Refused
from service.flow.resume_job import resume_job
from service.flow.take_rows import take_rows
from service.flow.undo_import import undo_import
from service.flow.verify_backup import verify_backup
from service.flow.work_jobs import Crew
from service.store import dialect, migrate
from service.store.unit import Store, UnitOfWork
from tests.flow.conftest import FIXTURES, opened
from tests.flow.jobs.conftest import BO, is_, job_of, put
from tests.support.databases import Databases, Served, file_of
from tests.support.waiting import until

Hire = Callable[..., Crew]
CATALOGUE = (FIXTURES / "catalogue.toml").read_bytes()
LINES = (FIXTURES / "fleet.jsonl").read_text(encoding="utf-8").splitlines()
OTHER = CATALOGUE.replace(b'version = "demo-1"', b'version = "demo-2"')
RECORDS = 6


def fill(url: str) -> None:
    """Make a ledger of half a dozen records."""
    migrate.upgrade(url)
    store = opened(url)
    load_catalogue(store.writing(), CATALOGUE, "catalogue.toml")
    import_hulls(store.writing(), (FIXTURES / "hulls.csv").read_bytes(), "hulls.csv")
    few = "\n".join(LINES[:RECORDS]).encode()
    assert len(import_records(store.writing(), few, "few.jsonl").created) == RECORDS
    store.close()


@pytest.fixture
def url(databases: Databases) -> str:
    return databases.like(fill)


FILE = "\n".join(LINES[100:110]).encode()


def test_an_import_as_a_job_does_what_one_at_once_does(store: Store, hire: Hire) -> None:
    bad = json.dumps({**json.loads(LINES[110]), "boat.stern": "roundish"})
    job = start_import(store.writing(), FILE + f"\n{bad}".encode(), "more.jsonl", actor=BO)
    assert (job.kind, job.name, job.total) == ("import", "more.jsonl", 11)
    with store.reading() as uow:
        assert uow.imports.get(job.arguments["import"]).done == 0
    hire()
    until(is_(store, job.id, "done"))
    done = job_of(store, job.id)
    import_id = job.arguments["import"]
    assert (done.done, done.total) == (11, 11)
    assert done.result == {"import": import_id, "created": 10, "updated": 0, "unchanged": 0, "rejected": 1}
    with store.reading() as uow:
        batch = uow.imports.get(import_id)
        assert (batch.state, batch.done, batch.who) == ("done", 11, "bo")
        assert uow.records.count() == RECORDS + 10
    assert undo_import(store.writing(), import_id).whole


def test_an_import_as_a_job_goes_by_its_mapping(store: Store, hire: Hire) -> None:
    table = b"ref;Boat;Gear;Lower;Upper;Shaft\nX-1;Tarnholt 36;gear-720;hinge-60-170;hinge-270-420;shaft-1350\n"
    names = {
        "ref": "record.reference", "Boat": "boat.model", "Gear": "configuration.gear",
        "Lower": "configuration.lower", "Upper": "configuration.upper", "Shaft": "configuration.shaft",
    }  # fmt: skip
    columns = "".join(f'[[column]]\nheading = "{heading}"\nto = "{to}"\n' for heading, to in names.items())
    mapping = MappingFile(f'[always]\n"record.status" = "installed"\n{columns}'.encode(), "map.toml")
    job = start_import(store.writing(), table, "old.csv", actor=BO, mapping=mapping)
    hire()
    until(is_(store, job.id, "done"))
    with store.reading() as uow:
        assert [record.hull for record in uow.records.all() if record.reference == "X-1"] == ["tarnholt-36"]


def test_a_cancelled_import_keeps_whole_chunks_and_goes_on_behind_them(
    store: Store, hire: Hire, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(imports, "CHUNK", 2)
    job = start_import(store.writing(), FILE, "more.jsonl", actor=BO)
    seen, advance = list[int](), Task.advance

    def watched(uow: UnitOfWork, rows: Sequence[Read], first: int, *rest: Any, **more: Any) -> list[RowOutcome]:  # noqa: ANN401 - handed on
        seen.append(first)
        return take_rows(uow, rows, first, *rest, **more)

    def cancelled(task: Task, more: int) -> None:
        if seen == [1, 3] and task.job.turn == 1:
            cancel_job(store.writing(), job.id)
            until(lambda: task._order)
        advance(task, more)

    monkeypatch.setattr(imports, "take_rows", watched)
    monkeypatch.setattr(Task, "advance", cancelled)
    hire()
    until(is_(store, job.id, "cancelled"))
    with store.reading() as uow:
        stopped = uow.imports.get(job.arguments["import"])
        assert (stopped.state, stopped.done, uow.records.count()) == ("running", 4, RECORDS + 4)
    resume_job(store.writing(), job.id)
    until(is_(store, job.id, "done"))
    assert seen == [1, 3, 5, 7, 9]
    with store.reading() as uow:
        assert uow.records.count() == RECORDS + 10


def test_a_recheck_as_a_job_finds_what_one_at_once_finds(store: Store, hire: Hire) -> None:
    with store.reading() as uow:
        wanted = recheck_fleet(uow, OTHER, "next.toml")
    job = start_recheck(store.writing(), OTHER, "next.toml", actor=BO)
    assert (job.name, job.total) == ("demo-1 -> demo-2", None)
    hire()
    until(is_(store, job.id, "done"))
    with store.reading() as uow:
        found = recheck_found(uow, job_of(store, job.id))
    assert {row.record: row for row in found.rows} == {row.record: row for row in wanted.rows}
    assert (found.catalogue, found.against, found.counts) == ("demo-1", "demo-2", wanted.counts)
    assert found.changes == wanted.changes == ()
    done = job_of(store, job.id)
    assert done.result == {"counts": wanted.counts, "changes": 0}
    assert done.done == done.total == len(wanted.rows)


def test_a_recheck_goes_on_behind_the_records_it_has_kept_and_by_the_catalogue_it_began_with(
    store: Store, hire: Hire
) -> None:
    job = start_recheck(store.writing(), None, "", actor=BO)
    with store.reading() as uow:
        wanted = {row.record: row for row in recheck_fleet(uow, None, "").rows}
    kept = dict(list(wanted.items())[: RECORDS - 2])
    mark = "as it was found then"
    with store.writing() as uow:
        _, held = uow.jobs.take(job.id, "dead:1") or pytest.fail("it was not there to take")
        rows = {name: f"[{row.model_copy(update={'why': mark}).model_dump_json()}]" for name, row in kept.items()}
        uow.jobs.put_items(held, rows)
        uow.jobs.end(held, "cancelled", done=len(kept))
        uow.commit()
    load_catalogue(store.writing(), OTHER, "next.toml")
    resume_job(store.writing(), job.id)
    hire()
    until(is_(store, job.id, "done"))
    with store.reading() as uow:
        found = recheck_found(uow, job_of(store, job.id))
    assert found.catalogue == "demo-1"
    assert {row.record for row in found.rows} == set(wanted)
    assert {row.record for row in found.rows if row.why == mark} == set(kept)


def test_a_backup_as_a_job_is_written_once_and_whole(store: Store, hire: Hire, tmp_path: Path) -> None:
    vault, path = Vault(tmp_path / "files"), tmp_path / "desk.zip"
    job = start_backup(store.writing(), vault, path, actor=BO)
    hire()
    until(is_(store, job.id, "done"))
    found = verify_backup(path)
    assert found.manifest is not None
    assert found.faults == ()
    assert job_of(store, job.id).result == {"file": str(path), "rows": found.manifest.rows, "files": 0, "lost": 0}
    with pytest.raises(Refused, match="--overwrite"):
        start_backup(store.writing(), vault, path, actor=BO)
    nowhere = start_backup(store.writing(), vault, tmp_path / "no" / "desk.zip", actor=BO)
    until(is_(store, nowhere.id, "failed"))
    assert "No such file or directory" in (job_of(store, nowhere.id).trouble or "")


@contextmanager
def away(url: str, served: Served) -> Iterator[None]:
    """Take the database away from whoever works with it: a server's lets nobody in, a file is held by another program."""
    if url.startswith("sqlite"):
        other = sqlite3.connect(file_of(url))
        other.execute("BEGIN IMMEDIATE")
        try:
            yield
        finally:
            other.rollback()
            other.close()
        return
    name = url.rsplit("/", 1)[1].partition("?")[0]
    served.run(f"ALTER DATABASE {name} ALLOW_CONNECTIONS false")
    served.run(f"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '{name}'")  # noqa: S608 - a test's own
    try:
        yield
    finally:
        served.run(f"ALTER DATABASE {name} ALLOW_CONNECTIONS true")


def test_the_database_goes_away_in_the_middle_of_an_import(
    url: str, store: Store, hire: Hire, served: Served, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(dialect, "BUSY_MS", 50)
    monkeypatch.setattr(imports, "CHUNK", 2)
    monkeypatch.setattr("service.flow.work_jobs._PAUSES_S", (0.2,))
    seen, troubles, close = list[int](), list[str](), Crew._close

    def broken(uow: UnitOfWork, rows: Sequence[Read], first: int, *rest: Any, **more: Any) -> list[RowOutcome]:  # noqa: ANN401 - handed on
        seen.append(first)
        outcomes = take_rows(uow, rows, first, *rest, **more)
        if seen == [1, 3, 5]:
            uow.__exit__(None, None, None)
            with away(url, served):
                uow.__enter__()
        return outcomes

    def told(crew: Crew, task: Task, state: State, *, trouble: str | None = None, **more: Any) -> None:  # noqa: ANN401 - handed on
        troubles.append(f"{state}: {trouble}")
        close(crew, task, state, trouble=trouble, **more)

    monkeypatch.setattr(imports, "take_rows", broken)
    monkeypatch.setattr(Crew, "_close", told)
    job = start_import(store.writing(), FILE, "more.jsonl", actor=BO)
    hire()
    until(lambda: len(troubles) == 2)  # to look at the job is no use meanwhile
    until(is_(store, job.id, "done"))
    assert troubles[0].startswith("waiting: ")
    assert "4 of 10 rows are in" in troubles[0]
    assert troubles[1:] == ["done: None"]
    assert seen == [1, 3, 5, 5, 7, 9]
    with store.reading() as uow:
        assert uow.records.count() == RECORDS + 10


def test_an_import_that_is_not_there_fails_and_says_so(store: Store, hire: Hire) -> None:
    job_id = put(store, "import", **{"import": "import-none"})
    hire()
    until(is_(store, job_id, "failed"))
    assert "there is no such import" in (job_of(store, job_id).trouble or "")
