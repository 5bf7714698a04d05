"""The table of records described for other programs."""

from __future__ import annotations

from typing import Any

from service.files.columns import REQUIRED, columns

PROFILE = "https://datapackage.org/profiles/2.0/tableschema.json"
_TYPES = {
    "text": "string", "number": "number", "whole": "integer", "flag": "boolean", "date": "date", "time": "datetime",
    "list": "array", "map": "object",
}  # fmt: skip


def records_table() -> dict[str, Any]:
    """Return the Table Schema (Frictionless Data Package standard, version 2) of records as CSV or a worksheet."""
    fields = [
        {"name": column.name, "type": _TYPES[column.kind]}
        | ({"constraints": {"required": True}} if column.name in REQUIRED else {})
        for column in columns()
    ]
    return {"$schema": PROFILE, "fields": fields, "primaryKey": ["record.reference"], "missingValues": [""]}
