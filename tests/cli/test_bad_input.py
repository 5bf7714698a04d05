"""What cannot be worked with is refused with what, where and how to mend it; nothing is written."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
import pytest

if TYPE_CHECKING:
    from tests.cli.conftest import Database, Ran, Run

CODES = ("--gear", "gear-720", "--lower", "hinge-60-170", "--upper", "hinge-60-170", "--shaft", "shaft-1350")
TAKERS = {"read": (), "answer": (), "recall": (), "fit": CODES}
"""Every command that takes a mail or a form, with what else it needs."""


def _noise() -> bytes:
    return np.random.default_rng(5).bytes(50_000_000)


BYTES: dict[str, tuple[Callable[[], bytes], str]] = {
    "empty.eml": (lambda: b"", "it is empty"),
    "blank.txt": (lambda: b" \r\n\t\n", "it is empty"),
    "picture.eml": (lambda: b"\x89PNG\r\n\x1a\n" + bytes(200), "a PNG picture"),
    "noise.eml": (_noise, "more than the 25 MB"),
    "small-noise.eml": (lambda: _noise()[:10_000], "binary"),
    "broken.json": (lambda: b'{"schema": "boat-form/1",\n "boat": {', "broken JSON at line 2"),
    "list.json": (lambda: b'{"schema": "boat-form/1", "boat": []}', "boat"),
}
FORMS: dict[str, tuple[dict[str, object], tuple[str, ...]]] = {
    "misspelt key": ({"transom": {"top_heigth_mm": 985}}, ("transom.top_heigth_mm", "did you mean 'top_height_mm'")),
    "negative height": ({"transom": {"top_height_mm": -985}}, ("transom.top_height_mm", "-985")),
    "rake of 95 degrees": ({"transom": {"rake_deg": 95}}, ("transom.rake_deg", "80", "95")),
    "profile folds back": (
        {
            "transom": {
                "profile": [
                    {"height_mm": 900, "aft_mm": 0},
                    {"height_mm": 400, "aft_mm": 120},
                    {"height_mm": 500, "aft_mm": 180},
                ]
            }
        },
        ("transom.profile", "folds back"),
    ),
    "not a number": ({"transom": {"top_height_mm": "rather high"}}, ("transom.top_height_mm", "rather high")),
    "two faults": ({"boat": {"stern": "round", "yaer": 1990}}, ("2 faults", "boat.stern", "boat.yaer", "'year'")),
}


def refused(ran: Ran, *fragments: str, status: int = 2) -> None:
    assert ran.status == status, ran
    assert ran.out == ""
    assert ran.err.startswith("transom: ")
    assert "Traceback" not in ran.err
    for fragment in fragments:
        assert fragment in ran.err


@pytest.mark.parametrize("name", BYTES)
def test_bytes_that_are_no_mail_and_no_form(name: str, run: Run, database: Database, tmp_path: Path) -> None:
    make, problem = BYTES[name]
    file = tmp_path / name
    file.write_bytes(make())
    before = database.digest
    for command, more in TAKERS.items():
        refused(run(command, file, *more, "--db", database.url), name, problem)
    assert database.digest == before


@pytest.mark.parametrize("name", FORMS)
@pytest.mark.parametrize("json", [False, True])
def test_forms_with_faults(name: str, json: bool, run: Run, database: Database, put: Callable[..., Path]) -> None:  # noqa: FBT001 - a parameter of the test
    parts, fragments = FORMS[name]
    file = put(**parts)
    before = database.digest
    for command, more in TAKERS.items():
        ran = run(command, file, *more, "--db", database.url, *(["--json"] if json else []))
        refused(ran, file.name, "transom schema boat-form", *fragments)
    assert database.digest == before


@pytest.mark.parametrize("command", TAKERS)
def test_files_that_are_not_there(command: str, run: Run, database: Database, tmp_path: Path) -> None:
    more = (*TAKERS[command], "--db", database.url)
    refused(run(command, tmp_path / "none.eml", *more), "none.eml", "no such file")
    refused(run(command, tmp_path, *more), "folder")
    refused(run(command, "a\0b", *more), "cannot be opened")
    refused(run(command, "-", *more), "standard input", "it is empty")


def test_a_catalogue_with_faults_is_explained_and_not_loaded(
    run: Run, database: Database, fixtures: Path, tmp_path: Path
) -> None:
    good = (fixtures / "catalogue.toml").read_text(encoding="utf-8")
    at = good.index("reach_mm = [", good.index("[[bracket]]"))
    end = good.index("]", at)
    low, high = good[at:end].removeprefix("reach_mm = [").split(",")
    bad = tmp_path / "upside-down.toml"
    bad.write_text(f"{good[:at]}reach_mm = [{high.strip()}, {low.strip()}{good[end:]}", encoding="utf-8")
    before = database.digest
    wanted = (bad.name, "bracket[0].reach_mm", "upside down", "[least, most]")
    refused(run("catalogue", "check", bad), *wanted)
    refused(run("catalogue", "load", bad, "--db", database.url), *wanted)
    as_json = run("catalogue", "check", bad, "--json")
    assert as_json.status == 2
    assert [d["field"] for d in as_json.document["defects"]] == ["bracket[0].reach_mm"]
    assert database.digest == before


@pytest.mark.parametrize(
    ("data", "problem"),
    [
        (b"", "it is empty"),
        (b"\x89PNG\r\n\x1a\n\xff\xfe", "TOML"),
        (b"[catalogue\nname = 1", "line 1"),
        (b"[[gear]]", "catalogue"),
    ],
)
def test_what_is_no_catalogue(data: bytes, problem: str, run: Run, database: Database, tmp_path: Path) -> None:
    file = tmp_path / "c.toml"
    file.write_bytes(data)
    before = database.digest
    refused(run("catalogue", "check", file), "c.toml", problem)
    refused(run("catalogue", "load", file, "--db", database.url), "c.toml", problem)
    assert database.digest == before


def test_a_changed_catalogue_needs_a_version_of_its_own(
    run: Run, database: Database, fixtures: Path, tmp_path: Path
) -> None:
    changed = tmp_path / "changed.toml"
    good = (fixtures / "catalogue.toml").read_text(encoding="utf-8")
    changed.write_text(good.replace('name = "Demo maker"', 'name = "Another"'), encoding="utf-8")
    before = database.digest
    refused(run("catalogue", "load", changed, "--db", database.url), "version", "of its own")
    assert database.digest == before


@pytest.mark.parametrize("group", ["records", "hulls"])
@pytest.mark.parametrize(
    ("data", "problem"),
    [
        (b"", "empty"),
        (b"\x89PNG\r\n\x1a\n", "PNG"),
        (b"modle\nTern 31\n", "modle"),
        (b'"open\n', ""),
        (bytes(range(256)), ""),
    ],
)
def test_what_is_no_table(group: str, data: bytes, problem: str, run: Run, database: Database, tmp_path: Path) -> None:
    file = tmp_path / "table.csv"
    file.write_bytes(data)
    before = database.digest
    refused(run(group, "import", file, "--db", database.url), "table.csv", problem)
    assert database.digest == before


@pytest.mark.parametrize(
    ("data", "fragments"),
    [
        (b"", ("name",)),
        (b"nmae,year\nTern 31,1979\n", ("nmae", "'name'")),
        (b"builder\nTern\n", ("name",)),
        (b"name,year\nTern 31,old\n", ("row 2", "year", "'old'")),
        (b"name,loa_mm\nTern 31,long\n", ("row 2", "loa_mm", "'long'")),
        (b"name,year\nTern 31," + b"9" * 5000 + b"\n", ("row 2", "year")),
        (b"name\n" + b"x" * 200_000 + b"\n", ("names.csv",)),
        (b"\x89PNG\r\n\x1a\n\xff", ("names.csv",)),
    ],
)
def test_names_that_are_no_table(
    data: bytes, fragments: tuple[str, ...], run: Run, database: Database, tmp_path: Path
) -> None:
    file = tmp_path / "names.csv"
    file.write_bytes(data)
    refused(run("resolve", "--file", file, "--db", database.url), *fragments)


def test_resolve_wants_a_name_or_a_file(run: Run, database: Database) -> None:
    refused(run("resolve", "--db", database.url), "NAME", "--file")
    refused(run("resolve", "Tern 31", "--file", "x.csv", "--db", database.url), "NAME", "--file")
    refused(run("resolve", "--file", "x.csv", "--year", 1979, "--db", database.url), "columns")
    refused(run("resolve", "Tern 31", "--loa-mm", "long", "--db", database.url), "--loa-mm", "'long'", "30 ft")


def test_fit_names_the_nearest_code(run: Run, database: Database, form: Path) -> None:
    codes = [code.replace("hinge-60-170", "hinge-60-171") for code in CODES]
    refused(run("fit", form, *codes, "--db", database.url), "hinge-60-171", "did you mean 'hinge-60-170'")
    refused(run("fit", form, *CODES[:-1], "", "--db", database.url), "shaft")
    wrong_role = [*CODES[:2], "--lower", "riser-190-380", *CODES[4:]]
    refused(run("fit", form, *wrong_role, "--db", database.url), "riser-190-380", "lower")


def test_schema_names_the_nearest(run: Run) -> None:
    refused(run("schema", "boat-from"), "boat-from", "'boat-form'")


def test_an_out_folder_that_is_a_file_stops_before_any_work(run: Run, database: Database, form: Path) -> None:
    before = database.digest
    refused(run("answer", form, "--out", form, "--db", database.url), str(form), "folder")
    assert database.digest == before


def test_what_is_no_format_of_records(run: Run, database: Database, tmp_path: Path) -> None:
    refused(run("records", "export", tmp_path / "fleet.odt", "--db", database.url), "odt", "csv", "jsonl")
    refused(run("records", "export", "--format", "pdf", "--db", database.url), "pdf")
    assert not list(tmp_path.glob("fleet*"))


def test_no_text_from_outside_steers_the_terminal(run: Run, database: Database, put: Callable[..., Path]) -> None:
    sly = "Tarnholt\x1b[2J 36\x9b31m\u202e"
    file = put(boat={"model": sly, "yaer": 1})
    shown = run("recall", file, "--db", database.url).err
    file = put(boat={"model": sly}, contact={"name": sly})
    page = run("answer", file, "--db", database.url)
    document = run("answer", file, "--json", "--db", database.url)
    for text in (shown, page.out, page.err, document.out):
        assert not set(text) & {"\x1b", "\x9b", "\u202e"}
    assert document.document["answers"][0]["form"]["boat"]["model"] == sly


def test_json_said_twice(run: Run, database: Database, tmp_path: Path) -> None:
    file = tmp_path / "twice.json"
    file.write_text('{"schema": "boat-form/1", "boat": {"year": 1990, "year": 1991}}', encoding="utf-8")
    refused(run("answer", file, "--db", database.url), "'year'", "twice")
    assert json.loads('{"a": 1, "a": 2}') == {"a": 2}  # what the plain reader would have made of it
