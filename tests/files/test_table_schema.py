from __future__ import annotations

import csv
import io
import json
import re
from pathlib import Path

from service.files.columns import REQUIRED, columns
from service.files.read.records_file import read_records
from service.files.table_schema import records_table
from service.files.write.tables import write_csv


def test_every_column_is_described_in_the_standards_own_types() -> None:
    described = records_table()
    assert [field["name"] for field in described["fields"]] == [column.name for column in columns()]
    types = {field["name"]: field["type"] for field in described["fields"]}
    # Frictionless Table Schema, "Field types"; from memory
    assert types["transom.rake_deg"] == "number"
    assert types["boat.year"] == "integer"
    assert types["record.date"] == "date"
    assert types["obstacles"] == "array"
    assert types["methods"] == "object"
    assert described["primaryKey"] == ["record.reference"]
    required = {f["name"] for f in described["fields"] if f.get("constraints", {}).get("required")}
    assert required == set(REQUIRED)


LEXICAL = {
    "string": r"(?s).+",
    "number": r"-?\d+(\.\d+)?([eE][-+]?\d+)?",
    "integer": r"-?\d+",
    "boolean": r"true|false",
    "date": r"\d{4}-\d\d-\d\d",
    "datetime": r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)?",
}
"""How values of each type are written by default (Frictionless Table Schema 2, "Field types"; from memory)."""


def test_an_exported_fleet_is_as_described() -> None:
    seed = Path(__file__).parents[2] / "seed_fixtures" / "fleet.jsonl"
    fleet = [row.record for row in read_records(seed.read_bytes(), "fleet").rows]
    rows = list(csv.DictReader(io.StringIO(write_csv(fleet).decode(), newline="")))
    seen = set[str]()
    for field in records_table()["fields"]:
        cells = [row[field["name"]] for row in rows if row[field["name"]] != ""]
        seen |= {field["type"]} if cells else set()
        if field.get("constraints", {}).get("required"):
            assert len(cells) == len(rows), field["name"]
        if field["type"] in ("array", "object"):
            kind = list if field["type"] == "array" else dict
            assert all(isinstance(json.loads(cell), kind) for cell in cells), field["name"]
        else:
            wrong = [cell for cell in cells if not re.fullmatch(LEXICAL[field["type"]], cell)]
            assert wrong == [], field["name"]
    assert len({row["record.reference"] for row in rows}) == len(rows) == 600
    assert seen == {"string", "number", "integer", "boolean", "date", "array", "object"}
