"""Rows of cells -> CSV, TSV or a workbook, written as they come: nothing holds all of them at once.

The same rows give the same bytes.
"""

from __future__ import annotations

import csv
import io
import tempfile
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import IO, Any

import xlsxwriter

from service.files.cells import guard, number_text, plain_number
from service.files.columns import Cell, Kind

LONGEST_CELL = 32_767
MOST_ROWS = 1_048_576
"""What a worksheet holds (Office Open XML workbooks as written by spreadsheet programs)."""
_NO_XML = "\ufffe\uffff"
_MADE = datetime(2000, 1, 1, tzinfo=UTC).replace(tzinfo=None)


class Unwritable(ValueError):  # noqa: N818 - named for what it is
    """What does not fit the format; the message says what, and which format takes it."""


@dataclass(frozen=True)
class Sheet:
    """One sheet to be written: its name, its headings, what each column holds, and its rows, of which the first cell names one.

    `above` rows are left empty over the headings.
    """

    name: str
    headings: Sequence[str]
    rows: Iterable[Sequence[Cell]]
    kinds: Sequence[Kind] = ()
    above: int = 0

    def where(self, row: Sequence[Cell], index: int) -> str:
        """Return how messages speak of a cell."""
        return f"{row[0]!r}, column {self.headings[index] if index < len(self.headings) else index + 1}"


def put_csv(
    stream: IO[bytes],
    sheet: Sheet,
    separator: str = ",",
    *,
    mark: bool = False,
    written: Callable[[Cell], str] | None = None,
) -> None:
    """Write a CSV file (UTF-8, CRLF). Text that a spreadsheet would take for a formula gets an apostrophe.

    `mark`: with a byte order mark, which spreadsheet programs need to see that it is UTF-8.
    """
    text = io.TextIOWrapper(stream, encoding="utf-8-sig" if mark else "utf-8", newline="", write_through=True)
    writer = csv.writer(text, delimiter=separator)
    for _ in range(sheet.above):
        writer.writerow(())
    writer.writerow(sheet.headings)
    as_text = written or _csv_cell
    writer.writerows([as_text(cell) for cell in row] for row in sheet.rows)
    text.flush()
    text.detach()


def _csv_cell(cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, str):
        return guard(cell)
    if isinstance(cell, bool):
        return "true" if cell else "false"
    return number_text(cell)


def put_raw(stream: IO[bytes], sheet: Sheet, separator: str) -> None:
    """Write cells of text as they came, so as to be mended in a spreadsheet: with a mark, and no guard on numbers."""
    put_csv(stream, sheet, separator, mark=True, written=_raw_cell)


def _raw_cell(cell: Cell) -> str:
    return cell if isinstance(cell, str) and plain_number(cell) else _csv_cell(cell)


def put_xlsx(stream: IO[bytes], sheets: Iterable[Sheet]) -> None:
    """Write a workbook; text stands as text, never as a formula.

    Unwritable names a cell or a number of rows that a worksheet cannot hold.
    """
    with tempfile.TemporaryDirectory(prefix="transom-") as folder:
        book = xlsxwriter.Workbook(stream, {"constant_memory": True, "tmpdir": folder})
        book.set_properties({"created": _MADE})  # a fixed date, so that the same rows give the same bytes
        try:
            for one in sheets:
                _put_page(book.add_worksheet(one.name), one)
        except BaseException:
            for page in book.worksheets():
                page.row_data_fh.close()  # what was written aside so far; the writer itself would leave it open
            raise
        book.close()


def _put_page(page: Any, sheet: Sheet) -> None:  # noqa: ANN401 - xlsxwriter has no types
    page.freeze_panes(1, 1)
    for index, heading in enumerate(sheet.headings):
        page.write_string(sheet.above, index, heading)
    for number, row in enumerate(sheet.rows, start=1 + sheet.above):
        if number >= MOST_ROWS:
            raise Unwritable(f"more rows than a worksheet's {MOST_ROWS - 1}; export CSV, Parquet or JSON lines")
        for index, cell in enumerate(row):
            if cell is not None:
                _put_cell(page, number, index, cell, sheet.where(row, index))


def _put_cell(page: Any, row: int, index: int, cell: str | float | bool, where: str) -> None:  # noqa: ANN401, FBT001 - xlsxwriter has no types
    if isinstance(cell, bool):
        page.write_boolean(row, index, cell)
    elif not isinstance(cell, str):
        # A number cell holds 16 digits; the few numbers that need 17 stand as text, so as to come back unchanged.
        if float(f"{cell:.16G}") == cell:
            page.write_number(row, index, cell)
        else:
            page.write_string(row, index, number_text(cell))
    else:
        fits(cell, where)
        page.write_string(row, index, cell)


def fits(cell: str, where: str) -> None:
    """Return where a worksheet can hold the text; else Unwritable."""
    if len(cell) > LONGEST_CELL // 2 and len(cell.encode("utf-16-le")) // 2 > LONGEST_CELL:
        raise Unwritable(
            f"{where}: {len(cell)} characters are more than a cell's {LONGEST_CELL}; export CSV or JSON lines"
        )
    if any(mark in cell for mark in _NO_XML):
        raise Unwritable(f"{where}: it holds a character that a workbook cannot; export CSV or JSON lines")
