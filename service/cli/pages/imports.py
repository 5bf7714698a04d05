"""What an import did, as a page and as a document."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Any

from service.cli.sheet import Sheet, hanging, listed, share, table
from service.core.batch import OUTCOMES, Batch, RowOutcome
from service.core.mapping import KEEP
from service.files.read.tables import RowError
from service.flow.guess_mapping import Guessed
from service.flow.import_report import ImportReport, faults_of
from service.flow.undo_import import Undone

MOST_LISTED = 40


def show(sheet: Sheet, report: ImportReport, name: str, things: str) -> None:
    """Print the page of one import; `things` is what was imported, in the plural."""
    sheet.title(name, "preview: nothing was written" if report.preview else report.batch.id if report.batch else "")
    rows = [
        (str(count), label)
        for label, count in (
            (f"{things} {'would be ' if report.preview else ''}added", len(report.created)),
            ("changed", len(report.updated)),
            ("as they were", len(report.unchanged)),
            (_not_taken(len(report.rejected)), _rows_of(report.rejected)),
        )
    ]
    sheet.part("import", table((">", ""), rows))
    if report.remarks:
        sheet.part("note", listed(report.remarks))
    aside = [
        *((heading, "put into the record's notes") for heading in report.kept),
        *((heading, "not read, as the mapping says") for heading in report.left_out),
    ]
    if aside:
        sheet.part("columns aside", table(("column", ""), aside))
    changed = [(key, ", ".join(columns)) for key, columns in list(report.changes.items())[:MOST_LISTED]]
    if changed:
        sheet.part("changed", table(("which", "in"), changed))
    if report.preview and report.rows:
        sheet.part("row by row", table((">row", "would be", "reference"), _previewed(report.rows)))
    if report.rejected:
        sheet.part("not taken", table((">row", "column", "stood there", "expected"), _faults(report.rejected)))


def _not_taken(faults: int) -> str:
    return "rows not taken" + (f", with {faults} {'fault' if faults == 1 else 'faults'}" if faults else "")


def _rows_of(rejected: Iterable[RowError]) -> int:
    return len({(error.sheet, error.row) for error in rejected})


def _previewed(rows: Sequence[RowOutcome]) -> list[tuple[str, str, str]]:
    lines: list[tuple[str, str, str]] = [
        (_place(one.sheet, one.row), one.outcome, one.reference or "") for one in rows[:MOST_LISTED]
    ]
    if len(rows) > MOST_LISTED:
        lines.append(("", "", f"and {len(rows) - MOST_LISTED} more; --json lists all"))
    return lines


def _place(sheet: str | None, row: int) -> str:
    return f"{sheet} {row}" if sheet else str(row)


def _faults(rejected: Iterable[RowError]) -> list[tuple[str, str, str, str]]:
    rows = list(rejected)
    found = [(_place(e.sheet, e.row), e.column, e.value, e.expected) for e in rows[:MOST_LISTED]]
    if len(rows) > MOST_LISTED:
        found.append(("", "", "", f"and {len(rows) - MOST_LISTED} more; --json lists all"))
    return found


def document(report: ImportReport) -> dict[str, Any]:
    """Return the import as JSON values."""
    return {
        "schema": "import/1",
        "preview": report.preview,
        "import": batch(report.batch) if report.batch else None,
        "created": list(report.created),
        "updated": list(report.updated),
        "unchanged": list(report.unchanged),
        "changes": {key: list(columns) for key, columns in report.changes.items()},
        "rejected": [
            {"sheet": e.sheet, "row": e.row, "column": e.column, "value": e.value, "expected": e.expected}
            for e in report.rejected
        ],
        "rows": [row(one) for one in report.rows],
        "remarks": list(report.remarks),
        "kept": list(report.kept),
        "left_out": list(report.left_out),
    }


def batch(one: Batch) -> dict[str, Any]:
    """Return an import as JSON values, without its rows."""
    return {
        "id": one.id,
        "file": one.name,
        "sha256": one.sha256,
        "mapping": one.mapping,
        "who": one.who,
        "started": one.started.isoformat(),
        "changed": one.changed.isoformat(),
        "state": one.state,
        "of_rows": one.rows,
        "done": one.done,
        "counts": {name: one.counts[name] for name in OUTCOMES},
    }


def row(one: RowOutcome) -> dict[str, Any]:
    """Return what became of a row as JSON values."""
    said = {
        "sheet": one.sheet,
        "row": one.row,
        "outcome": one.outcome,
        "reference": one.reference,
        "revision": one.after or None,
        "columns": one.detail if one.outcome == "updated" else None,
        "faults": one.detail if one.outcome == "rejected" else None,
        "undo": one.undo,
        "why": one.why,
    }
    return {key: value for key, value in said.items() if value is not None}


def guesses(found: Guessed, target: str) -> dict[str, Any]:
    """Return what was guessed as JSON values."""
    return {
        "schema": "mapping-guess/1",
        "mapping": target,
        "columns": [
            {"heading": one.heading, "to": one.to or KEEP, "sure": one.sure, "unit": one.unit} for one in found.guesses
        ],
        "remarks": list(found.remarks),
    }


def show_guesses(sheet: Sheet, found: Guessed, name: str, target: str) -> None:
    """Print what was guessed, and what is to be done with it."""
    sheet.title(name, target)
    rows = [
        (one.heading, one.to or f"{KEEP} (in the notes)", share(one.sure) if one.to else "-", one.unit or "")
        for one in found.guesses
    ]
    sheet.part("columns", table(("heading", "stands for", ">sure", "unit"), rows, wraps=(0,)))
    if found.remarks:
        sheet.part("note", listed(found.remarks))
    sheet.line(f"Look at {target} and mend it; then: transom records import {name} --map {target} --preview")


def show_list(sheet: Sheet, found: Sequence[Batch]) -> None:
    """Print the list of imports."""
    sheet.title("Imports", str(len(found)))
    if not found:
        sheet.line("none yet; records come in with `transom records import FILE`")
        return
    for one in found:
        counts = zip(OUTCOMES, ("new", "changed", "as they were", "not taken"), strict=True)
        said = ", ".join(f"{one.counts[name]} {label}" for name, label in counts)
        first, state = f"{one.started:%Y-%m-%d %H:%M} UTC  {one.name}", f"{one.who}, {_state(one)}: {said}"
        sheet.whole(hanging(first, one.id, state))


def _state(one: Batch) -> str:
    return one.state if one.state != "running" else f"row {one.done} of {one.rows}"


def show_batch(sheet: Sheet, one: Batch, rows: Sequence[RowOutcome]) -> None:
    """Print one import with what became of its rows."""
    sheet.title(one.name, one.id)
    facts = [
        ("by", f"{one.who}, {one.started:%Y-%m-%d %H:%M} UTC"),
        ("state", _state(one)),
        *(
            (label, str(one.counts[name]))
            for name, label in zip(OUTCOMES, ("added", "changed", "same", "not taken"), strict=True)
        ),
        ("file", f"kept under {one.sha256}"),
    ]
    sheet.part("import", table(("", ""), facts))
    if one.state == "running":
        sheet.line(f"It is being read, or broke off; go on with: transom imports resume {one.id}\n")
    touched = [row for row in rows if row.outcome in ("created", "updated")]
    if touched:
        sheet.part("rows", table((">row", "", "record", "columns"), _touched(touched)))
    faults = faults_of(rows)
    if faults:
        sheet.part("not taken", table((">row", "column", "stood there", "expected"), _faults(faults)))
        sheet.line(f"To mend them: transom imports show {one.id} --errors FILE, then import that file")


def _touched(rows: Sequence[RowOutcome]) -> list[tuple[str, str, str, str]]:
    lines: list[tuple[str, str, str, str]] = [
        (
            _place(one.sheet, one.row),
            one.undo or one.outcome,
            one.reference or "",
            one.why or (", ".join(one.detail or ()) if one.outcome == "updated" else ""),
        )
        for one in rows[:MOST_LISTED]
    ]
    if len(rows) > MOST_LISTED:
        lines.append(("", "", "", f"and {len(rows) - MOST_LISTED} more; --json lists all"))
    return lines


def show_undone(sheet: Sheet, done: Undone) -> None:
    """Print what undoing came to."""
    sheet.title(done.batch.name, done.batch.id)
    counts = Counter(str(one.undo) for one in done.rows)
    labels = (("undone", "undone"), ("kept", "kept, edited since"), ("failed", "failed"))
    sheet.part("undo", table((">", ""), [(str(counts[name]), label) for name, label in labels]))
    left = [one for one in done.rows if one.undo != "undone"]
    if left:
        sheet.part("kept", table((">row", "", "record", "why"), _touched(left)))
