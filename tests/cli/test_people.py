"""`transom people`: found, given out, taken away, and what is past its time."""

from __future__ import annotations

import json
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from tests.cli.conftest import Database, Run

HER = "imogen@example.org"


@pytest.fixture
def asked(run: Run, database: Database, mail: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """Return the database in which the demo enquiry was answered and its answer proposed as a record."""
    monkeypatch.setenv("TRANSOM_WHO", "desk")
    (answer,) = run("answer", mail, "--json", "--db", database.url).document["answers"]
    proposed = run("records", "propose", answer["id"], "--json", "--db", database.url)
    assert proposed.status == 0
    return database.url


def test_she_is_found_given_out_and_erased_and_her_boat_stays(run: Run, asked: str, tmp_path: Path) -> None:
    (found,) = run("people", "find", "rathwick", "--json", "--db", asked).document["people"]
    assert found["email"] == HER
    file = tmp_path / "her.json"
    wrote = run("people", "export", HER, "--out", file, "--json", "--db", asked)
    assert wrote.document["counts"]["records"] == 1
    held = json.loads(file.read_text(encoding="utf-8"))
    reference = held["records"][0]["reference"]
    before = run("records", "show", reference, "--json", "--db", asked).document
    assert before["record"]["form"]["contact"]["email"] == HER

    shown = run("people", "erase", HER, "--why", "asked by letter", "--preview", "--db", asked)
    assert "cannot be undone" in shown.out
    assert run("people", "find", "rathwick", "--db", asked).status == 0
    done = run("people", "erase", HER, "--why", "asked by letter", "--json", "--db", asked)
    assert "cannot be undone" in done.err
    assert (done.status, done.document["records"], done.document["left"]) == (0, [reference], {})
    assert HER not in done.out
    assert run("people", "find", "rathwick", "--db", asked).status == 1
    after = run("records", "show", reference, "--json", "--db", asked).document
    assert not any(after["record"]["form"]["contact"].values())
    for one in (before, after):
        one["record"]["form"].pop("contact")
        one["record"]["form"].pop("notes", None)
    assert after == before
    assert run("db", "check", "--db", asked).status == 0
    again = run("people", "erase", HER, "--why", "asked by letter", "--db", asked)
    assert again.status == 2
    assert "nobody is held" in again.err


def test_nobody_is_due_where_no_time_is_set(run: Run, asked: str, monkeypatch: pytest.MonkeyPatch) -> None:
    assert run("people", "retention", "--json", "--db", asked).document == {
        "schema": "retention/1",
        "months": None,
        "due": [],
        "erased": None,
    }
    assert run("people", "retention", "--apply", "--json", "--db", asked).document["erased"] is None
    monkeypatch.setenv("TRANSOM_RETENTION_MONTHS", "1")
    (due,) = run("people", "retention", "--json", "--db", asked).document["due"]
    assert due["heard"].startswith("2026-01-17")
    assert "1 due; --apply" in run("people", "retention", "--db", asked).out
    assert (
        run("people", "retention", "--apply", "--json", "--db", asked).document["erased"]["contacts"] == due["contacts"]
    )
    assert run("people", "find", "rathwick", "--db", asked).status == 1
    monkeypatch.setenv("TRANSOM_RETENTION_MONTHS", "soon")
    wrong = run("people", "retention", "--db", asked)
    assert wrong.status == 2
    assert "whole number of months" in wrong.err
