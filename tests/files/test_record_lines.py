from __future__ import annotations

import json
from datetime import UTC, datetime
from typing import Any

import pytest

from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.record import Record
from service.core.revision import Revision
from service.files.read.records_file import read_records
from service.files.write.tables import write_jsonl

MADE = Configuration(gear="Gear 60", lower="Hinge 200", upper="Arm 400", shaft="Shaft 1800")


def record(**form: Any) -> Record:  # noqa: ANN401 - parts of a form
    return Record(reference="R-1", status="installed", form=parse_form(form), configuration=MADE)


def history(record: Record, *earlier: Record) -> tuple[Revision, ...]:
    at = datetime(2024, 1, 1, 1, 2, 3, 4, tzinfo=UTC)
    return tuple(
        Revision(number=n, who="ada", at=at, why="=why", record=r) for n, r in enumerate((*earlier, record), start=1)
    )


def test_a_line_is_an_installation_with_every_state() -> None:
    now, then = record(transom={"rake_deg": 12}), record(transom={"rake_deg": 10})
    (line,) = write_jsonl([history(now, then)]).splitlines()
    said = json.loads(line)
    assert (said["record.reference"], said["transom.rake_deg"]) == ("R-1", 12)
    assert [state["row"]["transom.rake_deg"] for state in said["record.revisions"]] == [10, 12]


def test_nested_objects_are_taken_too() -> None:
    one = record(boat={"model": "Tern 31"}, obstacles=[{"kind": "ladder"}], methods={"*": "tape"})
    nested = one.model_dump(mode="json", by_alias=True)
    flat = {"record.reference": "R-2", "record": {"status": "installed"}, "boat": {"model": "X"}, **MADE_FLAT}
    read = read_records("\n\n".join(map(json.dumps, (nested, flat))).encode(), "fleet")
    assert read.rejected == ()
    assert read.rows[0].record == one
    assert (read.rows[1].row, read.rows[1].record.form.boat.model) == (3, "X")


MADE_FLAT = {f"configuration.{name}": code for name, code in MADE.model_dump().items()}


@pytest.mark.parametrize(
    ("said", "column", "says"),
    [
        ({"boat.modle": "x"}, "boat.modle", "did you mean 'boat.model'"),
        ({"form": {"boat": {"modle": "x"}}}, "boat.modle", "did you mean 'boat.model'"),
        ({"transom.rake_deg": [1]}, "transom.rake_deg", "single value"),
        ({"boat.model": True}, "boat.model", "expected text"),
        ({"record.date": 20200304}, "record.date", "YYYY-MM-DD"),
        ({"obstacles": "no JSON"}, "obstacles", "expected JSON"),
        ({"schema": "boat-form/2"}, "schema", "unknown field"),
        ({"record.revisions": 3}, "record.revisions", "JSON list"),
        ({"record.revisions": [{"number": 1}]}, "record.revisions[0]", "expected number, who, at, why and row"),
    ],
)
def test_a_wrong_line_is_named(said: dict[str, Any], column: str, says: str) -> None:
    line = {"record.reference": "R-1", "record.status": "installed", **MADE_FLAT}
    read = read_records("\n".join(map(json.dumps, (line, {**line, "record.reference": "R-2", **said}))).encode(), "x")
    assert [row.record.reference for row in read.rows] == ["R-1"]
    (error,) = read.rejected
    assert (error.row, error.column) == (2, column)
    assert says in error.expected


def test_a_broken_line_is_one_row_and_not_the_end() -> None:
    line = json.dumps({"record.reference": "R-1", "record.status": "installed", **MADE_FLAT})
    read = read_records(f'{line}\n{{"a": NaN}}\n[1]\n{{"a":'.encode(), "x")
    assert len(read.rows) == 1
    assert [error.row for error in read.rejected] == [2, 3, 4]


def test_a_revision_out_of_step_or_without_a_zone_is_named() -> None:
    row = {"record.reference": "R-1", "record.status": "installed", **MADE_FLAT}
    state = {"number": 2, "who": "a", "at": "2020-01-01T00:00:00Z", "why": "b", "row": row}
    for wrong, says in (({}, "expected revision 1"), ({"number": 1, "at": "2020-01-01T00:00:00"}, "timezone")):
        line = {**row, "record.revisions": [{**state, **wrong}]}
        (error,) = read_records(json.dumps(line).encode(), "x").rejected
        assert error.column.startswith("record.revisions[0]")
        assert says in error.expected
