from __future__ import annotations

from service.files.columns import REQUIRED, columns
from service.files.table_schema import records_table


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
