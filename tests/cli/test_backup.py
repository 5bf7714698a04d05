"""`transom backup`, `backup verify` and `restore` from the command line."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from tests.support.databases import fingerprint

if TYPE_CHECKING:
    from tests.cli.conftest import Database, Run


def test_a_desk_is_backed_up_looked_at_and_restored(database: Database, tmp_path: Path, run: Run) -> None:
    file, again = tmp_path / "b.zip", f"sqlite:///{tmp_path / 'again.db'}"
    before = fingerprint(database.url)
    made = run("backup", file, "--db", database.url, "--json")
    assert (made.status, made.err) == (0, "")
    assert {one["name"]: one["rows"] for one in made.document["tables"]}["records"] == 600
    seen = run("backup", "verify", file, "--json")
    assert (seen.status, seen.document["sound"], seen.document["backup"]) == (0, True, made.document)
    assert run("restore", file, "--db", again, "--files", tmp_path / "files").status == 0
    assert fingerprint(again) == before == fingerprint(database.url)
    twice = run("restore", file, "--db", again)
    assert twice.status == 2
    assert "something in this database" in twice.err
    over = run("backup", file, "--db", database.url)
    assert over.status == 2
    assert "--overwrite" in over.err
    assert run("backup", "--overwrite", file, "--db", database.url).status == 0


def test_one_that_is_not_sound_is_told(database: Database, tmp_path: Path, run: Run) -> None:
    file = tmp_path / "b.zip"
    file.write_bytes(b"PK\x03\x04 and then nothing")
    seen = run("backup", "verify", file, "--json")
    assert (seen.status, seen.document["sound"]) == (1, False)
    assert "no whole backup" in seen.document["faults"][0]["what"]
    assert "not sound" in run("backup", "verify", file).out
    assert run("restore", file, "--db", f"sqlite:///{tmp_path / 'n.db'}").status == 2
    assert run("backup", "verify", tmp_path / "none.zip").status == 3
    assert run("backup", tmp_path / "no" / "b.zip", "--db", database.url).status == 3


def test_a_newer_database_is_not_backed_up(newer: Database, tmp_path: Path, run: Run) -> None:
    assert run("backup", tmp_path / "b.zip", "--db", newer.url).status == 3
    assert [path.name for path in tmp_path.glob("*b.zip*")] == []
