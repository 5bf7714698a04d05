"""Records as CSV, a workbook or JSON lines. The same records give the same bytes."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterable, Mapping, Sequence
from datetime import UTC, datetime
from typing import Any, Literal

import xlsxwriter

from service.core.measurement import Measurement
from service.core.record import Record
from service.core.revision import Revision
from service.files.cells import guard, number_text
from service.files.columns import MEASUREMENTS, MERGED, REVISIONS, Cell, cells, columns, values

Format = Literal["csv", "xlsx", "jsonl"]
LONGEST_CELL = 32_767
MOST_ROWS = 1_048_576
"""What a worksheet holds (Office Open XML workbooks as written by spreadsheet programs)."""
_NO_XML = "\ufffe\uffff"
_MADE = datetime(2000, 1, 1, tzinfo=UTC).replace(tzinfo=None)


class Unwritable(ValueError):  # noqa: N818 - named for what it is
    """What does not fit the format; the message says what, and which format takes it."""


def write_csv(records: Iterable[Record]) -> bytes:
    """Return a CSV file (UTF-8, comma, CRLF). Text that a spreadsheet would take for a formula gets an apostrophe."""
    out = io.StringIO(newline="")
    writer = csv.writer(out)
    writer.writerow([column.name for column in columns()])
    for record in records:
        writer.writerow([_csv_cell(cell) for cell in cells(record)])
    return out.getvalue().encode()


def _csv_cell(cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, bool):
        return "true" if cell else "false"
    return guard(cell) if isinstance(cell, str) else number_text(cell)


def write_xlsx(records: Sequence[Record]) -> bytes:
    """Return a workbook with one sheet, `records`; text stands as text, never as a formula.

    Unwritable names a cell or a number of rows that a worksheet cannot hold.
    """
    if len(records) >= MOST_ROWS:
        raise Unwritable(
            f"{len(records)} records are more than a worksheet's {MOST_ROWS - 1}; export CSV or JSON lines"
        )
    out = io.BytesIO()
    book = xlsxwriter.Workbook(out, {"in_memory": True})
    book.set_properties({"created": _MADE})  # a fixed date, so that the same records give the same bytes
    sheet = book.add_worksheet("records")
    sheet.freeze_panes(1, 1)
    for index, column in enumerate(columns()):
        sheet.write_string(0, index, column.name)
    for number, record in enumerate(records, start=1):
        for index, cell in enumerate(cells(record)):
            if cell is not None:
                _write_cell(sheet, number, index, cell, record)
    book.close()
    return out.getvalue()


def _write_cell(sheet: Any, row: int, index: int, cell: str | float | bool, record: Record) -> None:  # noqa: ANN401, FBT001 - xlsxwriter has no types
    if isinstance(cell, bool):
        sheet.write_boolean(row, index, cell)
    elif not isinstance(cell, str):
        # A number cell holds 16 digits; the few numbers that need 17 stand as text, so as to come back unchanged.
        if float(f"{cell:.16G}") == cell:
            sheet.write_number(row, index, cell)
        else:
            sheet.write_string(row, index, number_text(cell))
    else:
        where = f"record {record.reference!r}, column {columns()[index].name}"
        if len(cell.encode("utf-16-le")) // 2 > LONGEST_CELL:
            raise Unwritable(
                f"{where}: {len(cell)} characters are more than a cell's {LONGEST_CELL}; export CSV or JSON lines"
            )
        if any(mark in cell for mark in _NO_XML):
            raise Unwritable(f"{where}: it holds a character that a workbook cannot; export CSV or JSON lines")
        sheet.write_string(row, index, cell)


def write_jsonl(
    histories: Iterable[Sequence[Revision]],
    measured: Mapping[str, Sequence[Measurement]] | None = None,
    merged: Mapping[str, tuple[str, int]] | None = None,
) -> bytes:
    """Return one JSON object a record: its columns as it stands, and every state it was in (`record.revisions`).

    `measured` is what was measured under a reference (`record.measurements`), `merged` the record that a reference was
    merged into and which revision took it in (`record.merged_into`).
    """
    lines = (_line(history, measured or {}, merged or {}) for history in histories)
    return b"".join(json.dumps(line, ensure_ascii=False, allow_nan=False).encode() + b"\n" for line in lines)


def _line(
    history: Sequence[Revision],
    measured: Mapping[str, Sequence[Measurement]],
    merged: Mapping[str, tuple[str, int]],
) -> dict[str, Any]:
    record = history[-1].record
    states = [
        {"number": r.number, "who": r.who, "at": r.at.isoformat(), "why": r.why, "row": values(r.record)}
        for r in history
    ]
    rows = [row.model_dump(mode="json", exclude_none=True) for row in measured.get(record.reference, ())]
    into = merged.get(record.reference)
    return {
        **values(record),
        REVISIONS: states,
        **({MEASUREMENTS: rows} if rows else {}),
        **({MERGED: {"reference": into[0], "revision": into[1]}} if into else {}),
    }
