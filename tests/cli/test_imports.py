"""Somebody's own spreadsheet: guessed, confirmed, imported, mended, undone; and imports that cannot go on."""

from __future__ import annotations

import resource
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from tests.cli.conftest import Database, Run

OLD_LIST = """\
Job no;Boat;Year;LOA (ft);Transom height (cm);Rake (deg);Stern;Gear;Lower;Upper;Shaft;Fitted on;Owner;Berth
N-17;Tarnholt 36;1991;36;98,5;-23;reverse;gear-720;hinge-60-170;hinge-270-420;shaft-1350;04.06.2009;I. Rathwick;B 12
N-18;Selmarrow 31;1979;31;91;29;raked;gear-720;hinge-60-170;hinge-60-170;shaft-1470;30.08.2009;K. Oldfield;
N-19;Vrijlande 44;1986;44 ft 2 in;104;about 5;Badestufe;gear-720;hinge-60-170;hinge-60-170;shaft-1350;12.09.2010;P. Maas;C 3
"""


@pytest.fixture
def old_list(tmp_path: Path) -> Path:
    file = tmp_path / "old-list.csv"
    file.write_text(OLD_LIST, encoding="cp1252")
    return file


def test_from_ones_own_spreadsheet_to_records(run: Run, database: Database, old_list: Path, tmp_path: Path) -> None:
    map_, mend, db = tmp_path / "map.toml", tmp_path / "mend.csv", ("--db", database.url)
    guessed = run("records", "import", old_list, "--guess", map_, *db)
    assert guessed.status == 0
    assert "boat.loa_mm            97 %  ft" in guessed.out
    again = run("records", "import", old_list, "--guess", map_, *db)
    assert again.status == 2
    assert "what you confirmed may be in it" in again.err
    preview = run("records", "import", old_list, "--map", map_, "--preview", "--json", *db)
    assert preview.status == 1
    assert [(one["outcome"], one["reference"]) for one in preview.document["rows"]] == [
        ("created", "N-17"), ("created", "N-18"), ("rejected", "N-19"),
    ]  # fmt: skip
    assert preview.document["rejected"][0] | {"expected": ""} == {
        "sheet": None, "row": 4, "column": "Rake (deg)", "value": "about 5", "expected": "",
    }  # fmt: skip
    done = run("records", "import", old_list, "--map", map_, "--errors", mend, "--who", "ada", *db)
    assert done.status == 1
    assert "Berth" in done.out
    record = run("records", "show", "N-17", "--json", *db).out
    assert '"Berth: B 12"' in record
    mend.write_bytes(mend.read_bytes().replace(b"about 5", b"5"))
    assert run("records", "import", mend, "--map", map_, *db).status == 0
    (second, first) = run("imports", "list", "--json", *db).document[:2]
    assert (first["who"], first["counts"]["created"], second["counts"]["created"]) == ("ada", 2, 1)
    assert first["id"] in run("imports", "list", *db).out
    shown = run("imports", "show", first["id"], *db)
    assert "about 5" in shown.out
    assert run("imports", "resume", first["id"], "--json", *db).status == 1  # done, with the row that was not taken
    undone = run("imports", "undo", first["id"], "--json", *db)
    assert (undone.status, [one["undo"] for one in undone.document["rows"]]) == (0, ["undone", "undone"])
    assert run("records", "show", "N-17", *db).status == 2
    assert run("records", "show", "N-19", *db).status == 0


def test_undoing_what_was_edited_since_is_a_no(run: Run, database: Database, old_list: Path, tmp_path: Path) -> None:
    map_, db = tmp_path / "map.toml", ("--db", database.url)
    run("records", "import", old_list, "--guess", map_, *db)
    run("records", "import", old_list, "--map", map_, *db)
    batch = run("imports", "list", "--json", *db).document[0]["id"]
    assert run("records", "step", "N-18", "withdrawn", "--why", "sold", "--who", "bo", *db).status == 0
    undone = run("imports", "undo", batch, *db)
    assert undone.status == 1
    assert "it was edited since: revision 2" in undone.out


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("records", "import", "{list}", "--map", "{none}"), "no such file"),
        (("records", "import", "{list}", "--map", "{list}"), "old-list.csv: this is no TOML"),
        (("records", "import", "{list}", "--sheet", "x"), "--sheet goes with --guess"),
        (("records", "import", "{list}"), "unknown heading 'Job no'"),
        (("imports", "show", "import-0"), "there is no such import: 'import-0'. `transom imports list`"),
        (("imports", "undo", "import-0"), "there is no such import"),
        (("imports", "resume", "import-0"), "there is no such import"),
    ],
)
def test_what_cannot_be_done_is_said(
    arguments: tuple[str, ...], says: str, run: Run, database: Database, old_list: Path, tmp_path: Path
) -> None:
    before = database.digest
    given = [one.format(list=old_list, none=tmp_path / "none.toml") for one in arguments]
    ran = run(*given, "--db", database.url)
    assert (ran.status, ran.out) == (2, "")
    assert says in ran.err
    assert database.digest == before


def test_where_nothing_may_be_written_is_said(run: Run, database: Database, old_list: Path) -> None:
    for arguments in (("export", "/proc/fleet.csv"), ("import", old_list, "--guess", "/proc/map.toml")):
        ran = run("records", *arguments, "--db", database.url)
        assert ran.status == 3, ran
        assert "/proc/" in ran.err


def many(folder: Path, count: int) -> Path:
    file = folder / "many.csv"
    head = "record.reference,record.status,configuration.gear,configuration.lower,configuration.upper,configuration.shaft,notes"
    rows = (f"M-{n},installed,g,l,u,s,remark {n}" for n in range(count))
    file.write_text("\n".join([head, *rows]), encoding="utf-8")
    return file


def transom(*arguments: str, limit: Callable[[], None] | None = None) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-c", "from service.cli.main import run; run()", *arguments]
    return subprocess.run(command, capture_output=True, text=True, check=False, preexec_fn=limit)  # noqa: S603 - our own


def test_a_disk_that_fills_up_half_way_loses_nothing(run: Run, database: Database, tmp_path: Path) -> None:
    file = many(tmp_path, 9_000)
    room = database.file.stat().st_size + 4_500_000  # enough for the first thousands, and not for all

    def small() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (room, room))

    ran = transom("records", "import", str(file), "--db", database.url, limit=small)
    assert (ran.returncode, ran.stdout) == (3, ""), ran
    assert "of 9000 rows are in; go on with `transom imports resume import-" in ran.stderr
    (batch,) = [
        one for one in run("imports", "list", "--json", "--db", database.url).document if one["state"] == "running"
    ]
    assert 0 < batch["done"] < 9_000
    with sqlite3.connect(database.file) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        (came,) = connection.execute("SELECT count(*) FROM records WHERE reference LIKE 'M-%'").fetchone()
    connection.close()
    assert came == batch["done"]
    resumed = run("imports", "resume", batch["id"], "--json", "--db", database.url)
    assert resumed.status == 0
    assert len(resumed.document["created"]) == 9_000
