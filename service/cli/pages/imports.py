"""What an import did, as a page and as a document."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from service.cli.sheet import Sheet, table
from service.files.read.tables import RowError
from service.flow.import_report import ImportReport

MOST_LISTED = 40


def show(sheet: Sheet, report: ImportReport, name: str, things: str) -> None:
    """Print the page of one import; `things` is what was imported, in the plural."""
    sheet.title(name, "preview: nothing was written" if report.preview else "")
    rows = [
        (str(len(found)), label)
        for label, found in (
            (f"{things} {'would be ' if report.preview else ''}added", report.created),
            ("changed", report.updated),
            ("as they were", report.unchanged),
            ("faults in rows that were not taken", report.rejected),
        )
    ]
    sheet.part("import", table((">", ""), rows))
    changed = [(key, ", ".join(columns)) for key, columns in list(report.changes.items())[:MOST_LISTED]]
    if changed:
        sheet.part("changed", table(("which", "in"), changed))
    if report.rejected:
        sheet.part("not taken", table((">row", "column", "stood there", "expected"), _faults(report.rejected)))


def _faults(rejected: Iterable[RowError]) -> list[tuple[str, str, str, str]]:
    rows = list(rejected)
    listed = [
        (f"{e.sheet} {e.row}" if e.sheet else str(e.row), e.column, e.value, e.expected) for e in rows[:MOST_LISTED]
    ]
    if len(rows) > MOST_LISTED:
        listed.append(("", "", "", f"and {len(rows) - MOST_LISTED} more; --json lists all"))
    return listed


def document(report: ImportReport) -> dict[str, Any]:
    """Return the import as JSON values."""
    return {
        "schema": "import/1",
        "preview": report.preview,
        "created": list(report.created),
        "updated": list(report.updated),
        "unchanged": list(report.unchanged),
        "changes": {key: list(columns) for key, columns in report.changes.items()},
        "rejected": [
            {"sheet": e.sheet, "row": e.row, "column": e.column, "value": e.value, "expected": e.expected}
            for e in report.rejected
        ],
    }
