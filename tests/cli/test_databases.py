"""A database that cannot be worked with: exit status 3, a message that says why, and not a byte changed."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from service.cli import faults, outbox

if TYPE_CHECKING:
    from tests.cli.conftest import Database, Run

CODES = ("--gear", "gear-720", "--lower", "hinge-60-170", "--upper", "hinge-60-170", "--shaft", "shaft-1350")


def commands(form: Path, fixtures: Path) -> list[tuple[object, ...]]:
    """Every command that works with the database."""
    return [
        ("resolve", "Tarnholt 36"),
        ("recall", form),
        ("fit", form, *CODES),
        ("answer", form),
        ("records", "import", fixtures / "fleet.jsonl"),
        ("records", "export"),
        ("hulls", "import", fixtures / "hulls.csv"),
        ("hulls", "list"),
        ("hulls", "show", "tarnholt-36"),
        ("hulls", "alias", "tarnholt-36", "Grey Lady"),
        ("hulls", "merge", "tarnholt-36", "tressick-36"),
        ("hulls", "duplicates"),
        ("hulls", "undo", "1"),
        ("catalogue", "load", fixtures / "catalogue.toml"),
    ]


def test_a_newer_database_is_left_as_it_is(run: Run, newer: Database, form: Path, fixtures: Path) -> None:
    before = newer.digest
    for command in [*commands(form, fixtures), ("read", form), ("db", "upgrade")]:
        ran = run(*command, "--db", newer.url)
        assert (ran.status, ran.out) == (3, ""), command
        assert "newer version" in ran.err
        assert "Update the program" in ran.err
    assert run("db", "check", "--db", newer.url).status == 3
    assert run("db", "check", "--db", newer.url, "--json").document["state"] == "newer"
    assert newer.digest == before


def test_no_database_yet_is_told_how_to_make_one(run: Run, form: Path, fixtures: Path, tmp_path: Path) -> None:
    for command in commands(form, fixtures):
        ran = run(*command)
        assert (ran.status, ran.out) == (3, ""), command
        assert "transom db upgrade" in ran.err
    assert not list((tmp_path / "home").rglob("*"))


def test_the_database_is_made_in_the_users_data_folder(run: Run, tmp_path: Path) -> None:
    made = run("db", "upgrade", "--json")
    assert made.status == 0
    assert made.document["before"] == "new"
    file = tmp_path / "home/.local/share/transom/ledger.db"  # XDG Base Directory Specification
    assert file.is_file()
    assert run("db", "upgrade", "--json").document["before"] == "ok"
    assert run("db", "check").status == 0


def test_the_environment_names_the_database_and_the_option_goes_before_it(
    run: Run, database: Database, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("TRANSOM_DB", database.url)
    assert run("db", "check").status == 0
    assert run("db", "check", "--db", f"sqlite:///{tmp_path / 'other.sqlite'}").status == 3


@pytest.mark.parametrize(
    ("address", "status", "fragment"),
    [
        ("nonsense", 2, "sqlite:////"),
        ("mysql://a@b/c", 2, "SQLite or PostgreSQL"),
        ("sqlite://", 2, "memory"),
        ("sqlite:////no/such/folder/x.db", 3, "transom db upgrade"),
    ],
)
def test_addresses(address: str, status: int, fragment: str, run: Run) -> None:
    ran = run("hulls", "list", "--db", address)
    assert (ran.status, ran.out) == (status, "")
    assert fragment in ran.err


def test_a_folder_another_programs_file_and_a_locked_one(run: Run, form: Path, tmp_path: Path) -> None:
    assert run("hulls", "list", "--db", f"sqlite:///{tmp_path}").status == 3
    before = form.read_bytes()
    ran = run("hulls", "list", "--db", f"sqlite:///{form}")
    assert ran.status == 3
    assert "Traceback" not in ran.err
    assert run("db", "upgrade", "--db", f"sqlite:///{form}").status == 3
    assert form.read_bytes() == before


def test_an_empty_database_knows_no_catalogue(run: Run, form: Path, tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'empty.sqlite'}"
    assert run("db", "upgrade", "--db", url).status == 0
    ran = run("answer", form, "--db", url)
    assert (ran.status, ran.out) == (3, "")
    assert "transom catalogue load" in ran.err
    assert run("hulls", "list", "--db", url, "--json").document == []
    assert run("resolve", "Tarnholt 36", "--db", url, "--json").document["status"] == "unknown"


def test_a_full_disk_is_said_in_one_line(tmp_path: Path) -> None:
    with Path("/dev/full").open("wb") as full:  # Linux: every write to it fails as on a full disk
        ended = subprocess.run(
            [sys.executable, "-c", "from service.cli.main import run; run()", "schema", "boat-form"],
            stdout=full,
            stderr=subprocess.PIPE,
            cwd=tmp_path,
            check=False,
        )
    assert ended.returncode == 3
    assert b"disk is full" in ended.stderr
    assert b"Traceback" not in ended.stderr


def test_whoever_stops_reading_is_no_fault(tmp_path: Path) -> None:
    with subprocess.Popen(
        [sys.executable, "-c", "from service.cli.main import run; run()", "schema", "answers"],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        cwd=tmp_path,
    ) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        assert process.stderr.read() == b""


def test_a_fault_of_the_program_is_one_line_and_a_trace_only_where_asked(
    run: Run, monkeypatch: pytest.MonkeyPatch, database: Database, form: Path
) -> None:
    def broken(*_given: object, **_named: object) -> None:
        raise KeyError("something quite unforeseen")

    monkeypatch.setattr("service.flow.answer.answer_file", broken)
    ran = run("answer", form, "--db", database.url)
    assert (ran.status, ran.out) == (3, "")
    assert ran.err.count("\n") == 1
    assert "TRANSOM_DEBUG=1" in ran.err
    monkeypatch.setenv("TRANSOM_DEBUG", "1")
    assert "Traceback" in run("answer", form, "--db", database.url).err


def test_errors_of_the_system_say_how_to_mend_them() -> None:
    assert faults.explain(OSError(28, "No space left on device", "/x/y"))[0] == 3
    assert "Make room" in faults.explain(OSError(28, "No space left on device", "/x/y"))[1]
    assert "Allow writing" in faults.explain(PermissionError(13, "Permission denied", "/x/y"))[1]
    assert faults.explain(MemoryError())[0] == 3


def test_a_file_half_written_is_never_found(tmp_path: Path) -> None:
    target = tmp_path / "records.csv"
    target.write_bytes(b"as it was")

    def full() -> None:
        with outbox.written(target) as stream:
            stream.write(b"half")
            raise OSError(28, "No space left on device")

    with pytest.raises(OSError, match="No space"):
        full()
    assert target.read_bytes() == b"as it was"
    assert list(tmp_path.iterdir()) == [target]
