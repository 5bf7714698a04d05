"""Each command with input it is made for."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from service.cli.schemas import SHAPES
from service.flow.papers import NAMES

if TYPE_CHECKING:
    from tests.cli.conftest import Database, Run

CODES = ("--gear", "gear-720", "--lower", "hinge-60-170", "--upper", "hinge-270-420", "--shaft", "shaft-1350")
PARTS = ("BOAT", "PRECEDENTS", "SUGGESTIONS", "CHECKS OF 1", "FILLED IN", "MISSING", "QUESTIONS", "CAUTIONS", "REPLY")


def test_read_a_form_and_a_mail_with_and_without_a_database(
    run: Run, database: Database, form: Path, mail: Path
) -> None:
    for more in ((), ("--db", database.url)):
        assert run("read", form, "--json", *more).document["form"]["boat"]["model"] == "Tarnholt 36"
        ran = run("read", mail, "--json", *more)
        assert ran.status == 0
        document = ran.document
        assert document["schema"] == "reading/1"
        assert document["is_enquiry"] is True
        assert document["form"]["transom"]["top_height_mm"] == 985  # the mail says 985 mm
        for found in document["evidence"]:
            assert document["text"][found["start"] : found["end"]] == found["text"]
    assert "985 mm" in run("read", mail, "--db", database.url).out


def test_read_from_standard_input(run: Run, form: Path, mail: Path) -> None:
    for file in (form, mail):
        assert run("read", "-", "--json", stdin=file.read_bytes()).document == run("read", file, "--json").document


def test_a_mail_that_asks_nothing_has_no_answers_and_is_done(run: Run, database: Database, fixtures: Path) -> None:
    file = fixtures / "enquiries" / "spares-order.eml"
    before = database.digest
    ran = run("answer", file, "--json", "--db", database.url)
    assert ran.status == 0
    assert ran.document["is_enquiry"] is False
    assert ran.document["answers"] == []
    assert "asks for no fit" in run("answer", file, "--db", database.url).out
    assert "asks for no fit" in run("read", file, "--db", database.url).out
    assert database.digest == before


def test_resolve_one(run: Run, database: Database) -> None:
    found = run("resolve", "tarnholt 36", "--json", "--db", database.url)
    assert found.status == 0
    assert found.document["status"] == "matched"
    assert found.document["model"]["id"] == "tarnholt-36"
    unknown = run("resolve", "Tarnholt 37", "--json", "--db", database.url)
    assert unknown.status == 0
    assert unknown.document["model"] is None
    several = run("resolve", "Selmarrow 31", "--loa-mm", "31 ft 2 in", "--beam-mm", "2,93 m", "--db", database.url)
    assert several.status == 0
    assert "Selmarrow 31 Mk II" in several.out


def test_resolve_many_in_order_one_line_each(run: Run, database: Database, tmp_path: Path) -> None:
    names = tmp_path / "names.csv"
    names.write_text(
        "name,builder,year,loa_mm,beam_mm\n"
        "Tarnholt 36,,1991,,\n"
        ",,,,\n"
        "No Such Boat 77,,,,\n"
        "Selmarrow 34,Selmarrow,,34 ft,\n",
        encoding="utf-8",
    )
    ran = run("resolve", "--file", names, "--db", database.url)
    assert ran.status == 0
    lines = [json.loads(line) for line in ran.out.splitlines()]
    assert [line["model"] and line["model"]["id"] for line in lines] == ["tarnholt-36", None, None, "selmarrow-34"]
    assert all({"status", "model", "probability", "alternatives"} <= set(line) for line in lines)
    assert run("resolve", "--file", "-", "--json", "--db", database.url, stdin=names.read_bytes()).out == ran.out


def test_recall(run: Run, database: Database, form: Path) -> None:
    document = run("recall", form, "--json", "--db", database.url).document
    assert document["hull"]["model"]["id"] == "tarnholt-36"
    assert document["precedents"][0]["sister"] is True
    assert document["votes"]
    page = run("recall", form, "--db", database.url).out
    assert document["precedents"][0]["record"] in page
    assert "differs:" in page


def test_fit_says_no_with_exit_1(run: Run, database: Database, form: Path, put: Callable[..., Path]) -> None:
    good = run("fit", form, *CODES, "--json", "--db", database.url)
    assert good.document["verdict"] in ("fits", "tight", "undecided")
    assert good.status == 0
    heavy = put(boat={"model": "Tarnholt 36", "stern": "reverse", "displacement_kg": 60_000})
    bad = run("fit", heavy, *CODES, "--json", "--db", database.url)
    assert bad.document["verdict"] == "does_not_fit"
    assert bad.status == 1
    page = run("fit", heavy, *CODES, "--db", database.url)
    assert page.status == 1
    assert "does not fit" in page.out
    assert "displacement" in page.out


def test_the_same_seed_gives_the_same_fit(run: Run, database: Database, form: Path) -> None:
    one, two, other = (run("fit", form, *CODES, "--json", "--seed", s, "--db", database.url) for s in (7, 7, 8))
    assert one.out == two.out
    assert one.document["placement"] == other.document["placement"] or one.out != other.out


def test_answer_a_form(run: Run, database: Database, form: Path, tmp_path: Path) -> None:
    folder = tmp_path / "sent" / "today"
    ran = run("answer", form, "--json", "--out", folder, "--db", database.url)
    assert ran.status == 0
    document = ran.document
    assert document["schema"] == "answers/1"
    assert document["answers"][0]["schema"] == "answer/1"
    best = document["answers"][0]["suggestions"][0]
    assert best["rank"] == 1
    assert {"gear", "lower", "upper", "shaft"} <= set(best["configuration"])
    pads = {f"{pad['role']}-pad.stl" for pad in best["fit"]["pads"]}
    due = {name for name in NAMES if not name.endswith("-pad.stl")} | pads
    assert {file.name for file in folder.iterdir()} == {"answers.json", "1-answer.json", *(f"1-{name}" for name in due)}
    assert json.loads((folder / "answers.json").read_text(encoding="utf-8")) == document
    assert json.loads((folder / "1-answer.json").read_text(encoding="utf-8")) == document["answers"][0]
    assert best["configuration"]["gear"] in (folder / "1-reply.txt").read_text(encoding="utf-8")


def test_the_page_of_an_answer(run: Run, database: Database, mail: Path) -> None:
    ran = run("answer", mail, "--db", database.url)
    assert ran.status == 0
    assert ran.err == ""
    places = [ran.out.index(f"\n{part}") for part in PARTS]
    assert places == sorted(places)
    for said in ("Tarnholt 36", "sister ship", "chance that every check passes", "that a fitter would install it",
                 "Dear Imogen Rathwick", "made with".upper()):  # fmt: skip
        assert said in ran.out
    assert "\x1b" not in ran.out
    assert max(map(len, ran.out.splitlines())) <= 100
    assert not [line for line in ran.out.splitlines() if line != line.rstrip()]


def test_nothing_fits_exits_1_and_says_what_is_nearest(run: Run, database: Database, put: Callable[..., Path]) -> None:
    file = put(boat={"model": "Tarnholt 36", "stern": "reverse", "displacement_kg": 60_000})
    ran = run("answer", file, "--db", database.url)
    assert ran.status == 1
    assert "the nearest misses" in ran.out
    document = run("answer", file, "--json", "--db", database.url)
    assert document.status == 1
    assert {s["fit"]["verdict"] for s in document.document["answers"][0]["suggestions"]} == {"does_not_fit"}


def test_two_boats_in_one_mail_are_two_pages(run: Run, database: Database, fixtures: Path, tmp_path: Path) -> None:
    ran = run("answer", fixtures / "enquiries" / "two-boats.eml", "--out", tmp_path / "o", "--db", database.url)
    assert "boat 1 of 2" in ran.out
    assert "boat 2 of 2" in ran.out
    assert (tmp_path / "o" / "2-reply.txt").is_file()


def test_every_demo_mail_is_answered(run: Run, database: Database, fixtures: Path) -> None:
    mails = sorted((fixtures / "enquiries").glob("*.eml"))
    assert len(mails) >= 12
    for file in mails:
        ran = run("answer", file, "--json", "--db", database.url)
        assert ran.status in (0, 1), (file.name, ran.err)
        assert ran.document["schema"] == "answers/1"


@pytest.mark.parametrize("ending", ["csv", "xlsx", "jsonl"])
def test_records_go_out_and_come_back(
    ending: str, run: Run, database: Database, fixtures: Path, tmp_path: Path
) -> None:
    file = tmp_path / f"fleet.{ending}"
    told = run("records", "export", file, "--json", "--db", database.url).document
    assert told["bytes"] == file.stat().st_size
    other = f"sqlite:///{tmp_path / 'other.sqlite'}"
    for step in (("db", "upgrade"), ("hulls", "import", fixtures / "hulls.csv"), ("records", "import", file)):
        ran = run(*step, "--json", "--db", other)
        assert ran.status == 0, (step, ran.err, ran.out[-2000:])
    assert len(ran.document["created"]) == 600
    again = run("records", "export", "--json", "--db", other).document["records"]
    before = run("records", "export", "--json", "--db", database.url).document["records"]
    if ending != "jsonl":  # tables carry the current state alone
        again, before = (
            [{k: v for k, v in r.items() if k != "record.revisions"} for r in rows] for rows in (again, before)
        )
    assert again == before


def test_export_to_standard_output(run: Run, database: Database) -> None:
    ran = run("records", "export", "--db", database.url)
    assert ran.out.startswith("record.reference,")
    lines = run("records", "export", "--format", "jsonl", "--db", database.url).out.splitlines()
    assert len(lines) == 600
    assert json.loads(lines[0])["record.reference"]


def test_a_bad_row_is_told_and_keeps_no_other_out(run: Run, database: Database, tmp_path: Path) -> None:
    head = (
        "record.reference,record.status,configuration.gear,configuration.lower,configuration.upper,configuration.shaft,"
    )
    made = "gear-720,hinge-60-170,hinge-270-420,shaft-1350"
    file = tmp_path / "new.csv"
    file.write_text(
        f"{head}boat.model,transom.rake_deg\n"
        f"N-1,installed,{made},Tarnholt 36,-23\n"
        f"N-2,installed,{made},Tarnholt 36,steep\n",
        encoding="utf-8",
    )
    before = database.digest
    preview = run("records", "import", file, "--preview", "--db", database.url)
    assert preview.status == 1
    assert "nothing was written" in preview.out
    assert database.digest == before
    page = run("records", "import", file, "--db", database.url)
    assert page.status == 1
    assert "transom.rake_deg" in page.out
    assert "steep" in page.out
    document = run("records", "import", file, "--json", "--db", database.url)
    assert document.status == 1
    assert document.document["unchanged"] == ["N-1"]
    assert [(e["row"], e["column"], e["value"]) for e in document.document["rejected"]] == [
        (3, "transom.rake_deg", "steep")
    ]
    kept = run("records", "export", "--json", "--db", database.url).document["records"]
    assert [r["record.hull"] for r in kept if r["record.reference"] == "N-1"] == ["tarnholt-36"]


def test_hull_models_come_in_and_are_listed(run: Run, database: Database, fixtures: Path, tmp_path: Path) -> None:
    again = run("hulls", "import", fixtures / "hulls.csv", "--json", "--db", database.url)
    assert again.status == 0
    assert len(again.document["unchanged"]) == 40
    listed = run("hulls", "list", "--json", "--db", database.url).document
    assert len(listed) == 40
    page = run("hulls", "list", "--db", database.url).out
    assert all(hull["id"] in page for hull in listed)
    fresh = tmp_path / "fresh.csv"
    fresh.write_text("model,stern\nBruvmere 29,raked\nBruvmere 30,roundish\n", encoding="utf-8")
    ran = run("hulls", "import", fresh, "--db", database.url)
    assert ran.status == 1
    assert "stern" in ran.out
    assert run("resolve", "bruvmere 29", "--json", "--db", database.url).document["status"] == "matched"


def test_a_catalogue_is_checked_and_loaded(run: Run, database: Database, fixtures: Path) -> None:
    file = fixtures / "catalogue.toml"
    checked = run("catalogue", "check", file, "--json").document
    assert checked["ok"] is True
    assert checked["brackets"] >= 10
    assert run("catalogue", "load", file, "--json", "--db", database.url).document["fresh"] is False
    assert "was loaded already" in run("catalogue", "load", file, "--db", database.url).out
    assert "in order" in run("catalogue", "check", file).out


@pytest.mark.parametrize("name", SHAPES)
def test_schemas_are_json_schema(name: str, run: Run) -> None:
    document = run("schema", name).document
    assert document["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    assert document["type"] == "object"
    assert run("schema", f"{name}/1").document == document


def test_schemas_are_listed(run: Run) -> None:
    assert set(run("schema", "--json").document) == {*SHAPES, "records"}
    assert run("schema", "records").document["primaryKey"] == ["record.reference"]
    assert all(name in run("schema").out for name in SHAPES)
