"""A record's life from the command line: from an answer that was sent to how it went, and looking things up."""

from __future__ import annotations

import csv
import json
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

if TYPE_CHECKING:
    from tests.cli.conftest import Database, Run


@pytest.fixture(scope="module")
def kit() -> dict[str, str]:
    return {"gear": "gear-720", "lower": "hinge-60-170", "upper": "hinge-60-170", "shaft": "shaft-1350"}


@pytest.fixture
def answers(tmp_path: Path, form: Path, kit: dict[str, str]) -> Path:
    """Return the file of an answer for two boats, as it would have been sent."""
    spot = {
        "offset_mm": 0,
        "shaft_aft_mm": 250,
        "lower_height_mm": 300,
        "upper_height_mm": 800,
        "shaft_bottom_mm": -200,
    }
    one = {
        "schema": "answer/1",
        "form": {**json.loads(form.read_text()), "contact": {"name": "Ada Holm"}},
        "suggestions": [{"rank": 1, "configuration": kit, "fit": {"verdict": "fits", "placement": spot}}],
        "provenance": {"catalogue": "demo-1"},
    }
    file = tmp_path / "answers.json"
    file.write_text(json.dumps({"schema": "answers/1", "answers": [one, one]}), encoding="utf-8")
    return file


def test_from_a_kept_answer_to_the_outcome(
    run: Run, database: Database, mail: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("TRANSOM_WHO", "Ada")
    sent = run("answer", mail, "--json", "--db", database.url).document["answers"][0]
    made = run("records", "propose", sent["id"], "--json", "--db", database.url)
    assert made.status == 0
    name, record = made.document["reference"], made.document["record"]
    assert record["configuration"] == sent["suggestions"][0]["configuration"]
    assert record["answer"] == sent["id"]
    assert record["hull"] == sent["hull"]["model"]["id"]
    twice = run("records", "propose", sent["id"], "--db", database.url)
    assert (twice.status, f"made into record {name} already" in twice.err) == (2, True)
    assert run("records", "step", name, "shipped", "--date", "2026-04-02", "--db", database.url).status == 0
    early = run("records", "step", name, "proposed", "--db", database.url)
    assert (early.status, "goes to installed or withdrawn" in early.err) == (2, True)
    site = tmp_path / "site.toml"
    site.write_text(
        'changed = "the ladder was moved"\n[form.transom]\nrake_deg = "-22.5°"\n[form.methods]\n"transom.rake_deg" = "inclinometer"\n',
        encoding="utf-8",
    )
    on = run("records", "step", name, "installed", "--as-installed", site, "--db", database.url, "--json")
    assert on.document["revision"] == 3
    assert {c["field"] for c in on.document["changes"]} >= {"record.status", "outcome.changed", "transom.rake_deg"}
    went = run("records", "outcome", name, "--fitted-as-proposed", "--note", "dry and quiet", "--db", database.url)
    assert went.status == 0
    told = run("records", "history", name, "--db", database.url)
    for words in ("REVISION 4", "Ada", "installed", "the ladder was moved", "dry and quiet", "-22.5°"):
        assert words in told.out
    shown = run("records", "show", name, "--db", database.url)
    assert "-22.5°" in shown.out
    assert "inclinometer" in shown.out
    back = run("records", "restore", name, "2", "--why", "wrong boat", "--json", "--db", database.url).document
    assert back["record"]["status"] == "shipped"
    document = run("records", "show", name, "--json", "--db", database.url).document
    assert (document["revision"], document["who"]) == (5, "Ada")
    assert document["measurements"][-1]["text"] == "-22.5°"


def test_an_answers_file_with_two_boats_asks_which(run: Run, database: Database, answers: Path) -> None:
    asked = run("records", "propose", answers, "--who", "bo", "--db", database.url)
    assert (asked.status, "--boat" in asked.err, asked.out) == (2, True, "")
    done = run("records", "propose", answers, "--boat", 2, "--who", "bo", "--db", database.url)
    assert (done.status, "proposed: gear-720" in done.out) == (0, True)
    wrong = run("records", "propose", database.file, "--who", "bo", "--db", database.url)
    assert (wrong.status, "this is no answer" in wrong.err) == (2, True)


def test_who_comes_second_is_told_in_words_and_as_a_document(run: Run, database: Database) -> None:
    at = ("--db", database.url)
    run("records", "correct", "2001-001", "boat.year=1981", "--why", "papers", "--who", "ada", *at)
    told = run(
        "records", "correct", "2001-001", "boat.year=1983", "--why", "call", "--who", "bo", "--expect", 1, "--json", *at
    )
    assert told.status == 2
    assert "was 1980, ada made it 1981" in told.err
    assert told.document["schema"] == "record-conflict/1"
    (clash,) = told.document["clashes"]
    assert (clash["field"], clash["was"], clash["now"], clash["yours"]) == ("boat.year", 1980, 1981, 1983)


def test_merging_previews_and_comes_apart(run: Run, database: Database) -> None:
    at = ("--who", "bo", "--db", database.url)
    seen = run("records", "merge", "2001-001", "2001-002", "--preview", "--json", *at).document
    assert (seen["preview"], seen["into"]) == (True, "2001-001")
    assert run("records", "merge", "2001-001", "2001-002", *at).status == 0
    assert "2001-002 was merged into 2001-001" in run("records", "show", "2001-002", "--db", database.url).out
    undone = run("records", "merge", "2001-001", "2001-002", "--undo", *at)
    assert (undone.status, "--why" in undone.err) == (2, True)
    assert run("records", "merge", "2001-001", "2001-002", "--undo", "--why", "two boats", *at).status == 0


def test_finding(run: Run, database: Database, form: Path, kit: dict[str, str]) -> None:
    def found(*asked: object) -> Any:  # noqa: ANN401 - JSON is any
        ran = run("records", "find", *asked, "--json", "--db", database.url)
        assert ran.status == 0
        return ran.document

    sisters = found("--hull", "tarnholt36", "--limit", 500)["records"]
    assert {r["hull"] for r in sisters} == {"tarnholt-36"}
    some = found("--hull", "tarnholt-36", "--year", "1985..1990", "--status", "installed")["records"]
    assert some
    assert all(1985 <= r["form"]["boat"]["year"] <= 1990 and r["status"] == "installed" for r in some)
    metal = found("--configuration", f"{kit['gear']} {kit['shaft']}")["records"]
    assert all((r["configuration"]["gear"], r["configuration"]["shaft"]) == (kit["gear"], kit["shaft"]) for r in metal)
    near = found("--near", form, "--limit", 3)
    assert [one["record"] for one in near["near"]] == [r["reference"] for r in near["records"]]
    assert near["near"][0]["likeness"] > 0.8
    first = found("--stern", "scoop", "--limit", 2)
    second = found("--stern", "scoop", "--limit", 2, "--after", first["next"])
    assert not {r["reference"] for r in first["records"]} & {r["reference"] for r in second["records"]}
    page = run("records", "find", "--near", form, "--limit", 2, "--db", database.url)
    assert "compared by" in page.out
    unsure = run("records", "find", "--hull", "Quimby 77", "--db", database.url)
    assert (unsure.status, "not known" in unsure.out) == (1, True)
    wrong = run("records", "find", "--year", "198", "--db", database.url)
    assert (wrong.status, "1984..1990" in wrong.err) == (2, True)


def test_the_quality_report_proposes_what_then_mends(run: Run, database: Database, tmp_path: Path) -> None:
    folder = tmp_path / "out"
    found = run("report", "quality", "--no-fit", "--out", folder, "--json", "--db", database.url).document
    with (folder / "quality.csv").open(encoding="utf-8", newline="") as lines:
        rows = list(csv.DictReader(lines))
    assert [row["record"] for row in rows] == [one["record"] for one in found["findings"]]
    assert (folder / "quality.xlsx").read_bytes().startswith(b"PK")
    wrong = [one for one in found["findings"] if one["kind"] == "impossible"]
    assert len(wrong) > 3
    for one in wrong:
        words = one["command"].split(" --why ")
        assert run(*words[0].split()[1:], "--why", words[1].strip("'"), "--who", "bo", "--db", database.url).status == 0
    again = run("report", "quality", "--no-fit", "--json", "--db", database.url).document
    assert "impossible" not in again["counts"]
    page = run("report", "quality", "--no-fit", "--kind", "outlier", "--db", database.url)
    assert "unlike sister ships" in page.out.lower().replace("\n", " ") or "unlike sister" in page.out.lower()
    assert run("report", "quality", "--kind", "odd", "--db", database.url).status == 2


def test_photos_come_and_go_with_a_record(run: Run, database: Database, tmp_path: Path) -> None:
    photo, folder = tmp_path / "stern.txt", tmp_path / "out"
    photo.write_bytes(b"\x89PNG\r\n\x1a\n photo")
    at = ("--db", database.url)
    kept = run("attachments", "add", "2001-001", photo, "--who", "bo", "--json", *at)
    assert [(one["name"], one["type"]) for one in kept.document["attachments"]] == [("stern.txt", "image/png")]
    assert "image/png" in run("attachments", "list", "2001-001", *at).out
    assert run("attachments", "export", "2001-001", "--out", folder, *at).status == 0
    assert (folder / "2001-001-001-stern.png").read_bytes() == photo.read_bytes()
    assert run("attachments", "check", *at).status == 0
    (stands,) = [p for p in (database.file.parent / f"{database.file.name}.files").rglob("*") if p.is_file()]
    stands.write_bytes(b"x")
    found = run("attachments", "check", "--json", *at)
    assert found.status == 1
    assert [one["health"] for one in found.document["faults"]] == ["damaged"]
    photo.write_bytes(b"#!/bin/sh")
    refused = run("attachments", "add", "2001-001", photo, "--who", "bo", *at)
    assert (refused.status, "it is a script" in refused.err) == (2, True)
