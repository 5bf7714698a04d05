"""The registry from the command line, on both databases, and what PostgreSQL's faults look like there."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from service.store import migrate
from tests.support.databases import fingerprint

if TYPE_CHECKING:
    from tests.cli.conftest import Run
    from tests.support.databases import Databases, Served
    from tests.support.postgres import Server

HULLS = (
    "id,builder,model,aliases,first_year,last_year,loa_mm\n"
    "tern,Ostrel Yard,Tern 31,T31,1971,1980,9450\n"
    "tern2,Ostrel,Tern31,,1972,,9460\n"
    "kittar,Kittar,Kittar 28,,,,\n"
)
RECORDS = (
    "record.reference,record.status,record.hull,configuration.gear,configuration.lower,configuration.upper,"
    "configuration.shaft,boat.model\n"
    "R-1,installed,tern,a,b,c,d,Tern 31\nR-2,installed,tern2,a,b,c,d,Tern31\n"
)


@pytest.fixture
def made(run: Run, databases: Databases, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """Return a database with a few hull models and two records, which the commands of this test use."""
    url = databases.migrated()
    for name, text in (("hulls", HULLS), ("records", RECORDS)):
        (tmp_path / f"{name}.csv").write_text(text, encoding="utf-8")
        assert run(name, "import", tmp_path / f"{name}.csv", "--db", url).status == 0
    monkeypatch.setenv("TRANSOM_DB", url)
    monkeypatch.setenv("TRANSOM_WHO", "ada")
    return url


def done(run: Run, *arguments: object) -> Any:  # noqa: ANN401 - JSON is any
    ran = run(*arguments, "--json")
    assert ran.status == 0, ran.err
    return ran.document


def test_a_duplicate_is_found_merged_shown_and_parted(run: Run, made: str) -> None:
    (pair,) = done(run, "hulls", "duplicates")["pairs"]
    assert (pair["one"]["id"], pair["other"]["id"]) == ("tern", "tern2")
    assert "the number 31 agrees" in run("hulls", "duplicates").out
    before = fingerprint(made)
    preview = done(run, "hulls", "merge", "tern", "tern2", "--preview")
    assert (preview["change"], preview["uses"]["records"]) == (None, 1)
    assert "nothing was written" in run("hulls", "merge", "tern", "tern2", "--preview").out
    assert fingerprint(made) == before
    merged = done(run, "hulls", "merge", "tern", "tern2", "--why", "one mould")
    shown = done(run, "hulls", "show", "tern2")
    assert (shown["asked"], shown["hull"]["id"], [m["id"] for m in shown["merged"]]) == ("tern2", "tern", ["tern2"])
    assert shown["uses"] == {"records": 2, "boats": 2, "enquiries": 0}
    assert [(c["who"], c["why"]) for c in shown["changes"]][-1] == ("ada", "one mould")
    page = run("hulls", "show", "tern2").out
    for said in ("was merged into tern", "2 records", "one mould", "T31"):
        assert said in page
    found = done(run, "records", "find", "--hull", "tern2")["records"]
    assert {one["reference"] for one in found} == {"R-1", "R-2"}
    assert {hull["id"] for hull in done(run, "hulls", "list")} == {"tern", "kittar"}
    parted = done(run, "hulls", "unmerge", "tern2")
    assert (parted["undoes"], parted["kept"]) == (merged["change"], [])
    assert {hull["id"] for hull in done(run, "hulls", "list")} == {"tern", "tern2", "kittar"}


def test_a_name_is_taken_split_off_told_apart_and_all_of_it_logged_and_taken_back(run: Run, made: str) -> None:
    del made
    assert "taken for Ostrel Yard Tern 31 (tern) from now on" in run("hulls", "alias", "tern", "Grey Lady").out
    assert "known for tern already" in run("hulls", "alias", "tern", "Grey Lady").out
    assert "asked which" in run("hulls", "alias", "kittar", "Grey Lady").out
    assert done(run, "hulls", "alias", "kittar", "Grey Lady", "--remove")["removed"]
    split = done(run, "hulls", "split", "tern", "--new", "Tern 31 Mk II", "--record", "R-1", "--alias", "Grey Lady")
    assert split["into"]["builder"] == "Ostrel Yard"
    assert done(run, "resolve", "Grey Lady")["model"]["id"] == split["into"]["id"]
    preview = done(run, "hulls", "split", "tern2", "--into", "kittar", "--record", "R-2", "--preview")
    assert (preview["records"], preview["new"], preview["change"]) == (["R-2"], False, None)
    assert done(run, "hulls", "distinct", "tern", "tern2", "--why", "two moulds")["change"]
    assert done(run, "hulls", "duplicates")["pairs"] == []
    log = done(run, "hulls", "log")["changes"]
    assert [change["kind"] for change in log] == ["distinct", "split", "alias", "alias", "alias", "import"]
    undone = run("hulls", "undo", split["change"])
    assert "taken back" in undone.out
    assert "record R-1" in undone.out
    assert done(run, "resolve", "Grey Lady")["model"]["id"] == "tern"
    assert "taken back" in run("hulls", "log").out


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("merge", "tern", "tren2"), r"did you mean 'tern2'"),
        (("merge", "tern", "tern"), "one hull model already"),
        (("unmerge", "tern"), "was not merged"),
        (("undo", "77"), "no change 77"),
        (("show", "nowhere"), "hulls list"),
        (("split", "tern", "--record", "R-1"), "--new MODEL or --into ID"),
        (("alias", "tern", "..."), "no letters or digits"),
    ],
)
def test_what_cannot_be_done_ends_with_2_and_says_how(
    run: Run, made: str, arguments: tuple[str, ...], says: str
) -> None:
    before = fingerprint(made)
    ran = run("hulls", *arguments)
    assert (ran.status, ran.out) == (2, "")
    assert says in ran.err
    assert "Traceback" not in ran.err
    assert fingerprint(made) == before


def test_nothing_there_yet_is_told(run: Run, databases: Databases) -> None:
    url = databases.migrated()
    for command in ("duplicates", "log", "list"):
        ran = run("hulls", command, "--db", url)
        assert ran.status == 0
        assert "none" in ran.out


MERGES = """
import sys
from service.cli.main import status
for n in range(10_000):
    for words in (("merge", "tern", "tern2"), ("unmerge", "tern2")):
        if status(["hulls", *words, "--db", sys.argv[1], "--who", "x", "--json"]):
            sys.exit(1)
"""


FIRST = 3
"""So many changes are told before the kill."""


@pytest.mark.parametrize("delay", [0.011, 0.053])
def test_a_kill_leaves_no_merge_half_done(run: Run, made: str, delay: float) -> None:
    """Killed in the middle of merging and parting over and over: what was told done is there, and nothing half."""
    with subprocess.Popen(  # noqa: S603 - our own interpreter
        [sys.executable, "-c", MERGES, made], stdout=subprocess.PIPE, env={**os.environ, "PYTHONUNBUFFERED": "1"}
    ) as process:
        assert process.stdout is not None
        told = 0
        while told < FIRST:
            line = process.stdout.readline()
            assert line, "it ended by itself"
            told += b'"change":' in line
        time.sleep(delay)
        process.send_signal(signal.SIGKILL)
        told += process.stdout.read().count(b'"change":')
    changes = done(run, "hulls", "log", "--limit", "10000")["changes"]
    assert len(changes) - 1 - told in (0, 1)  # the last may have been written and not yet told
    ids = {hull["id"] for hull in done(run, "hulls", "list")}
    assert ids == {"tern", "kittar"} | (set() if changes[0]["kind"] == "merge" else {"tern2"})
    assert len(done(run, "records", "find", "--hull", "tern")["records"]) == (2 if "tern2" not in ids else 1)


def test_what_a_server_complains_of_ends_with_3_and_one_line(run: Run, served: Served, postgres: Server) -> None:
    served.run("DROP ROLE IF EXISTS keyed")
    served.run("CREATE ROLE keyed LOGIN PASSWORD 'right'")
    for url, says in (
        ("postgresql://127.0.0.1:1/ledger", "does not answer"),
        (postgres.url("none_of_that_name"), "no such user or database"),
        (postgres.url("postgres", user="keyed", password="guessed"), "lets nobody in"),  # noqa: S106 - a wrong one
        (postgres.url("postgres"), "transom db upgrade"),
    ):
        ran = run("hulls", "list", "--db", url)
        assert (ran.status, ran.out) == (3, ""), url
        assert says in ran.err
        assert "guessed" not in ran.err
        assert ran.err.count("\n") == 1


def test_the_database_is_made_upgraded_and_looked_at(run: Run, databases: Databases) -> None:
    url = databases.empty()
    assert run("db", "check", "--db", url).status == 3
    assert done(run, "db", "upgrade", "--db", url)["before"] == "new"
    checked = done(run, "db", "check", "--db", url)
    assert checked == {"database": url, "state": "ok"}
    migrate.downgrade(url, "0001")
    assert run("hulls", "list", "--db", url).status == 3
    assert done(run, "db", "upgrade", "--db", url)["before"] == "old"
