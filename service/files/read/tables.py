"""CSV and worksheets -> rows of text. The kind is told by content, never by the file's name."""

from __future__ import annotations

import csv
import io
import zipfile
from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from datetime import time as clock_time
from typing import Literal

from python_calamine import CalamineError, CalamineWorkbook

from service.core.words import nearest
from service.files.columns import number_text, unguard
from service.files.read.errors import Unreadable

Content = Literal["csv", "sheet", "lines"]
LARGEST = 256_000_000
LARGEST_CELL = 2_000_000
MOST_SHOWN = 80
_OTHERS = {
    b"\x89PNG": "a PNG picture", b"\xff\xd8\xff": "a JPEG picture", b"%PDF": "a PDF", b"\x1f\x8b": "a gzip archive",
    b"PAR1": "a Parquet file", b"SQLite format 3": "an SQLite database",
}  # fmt: skip


@dataclass(frozen=True)
class RowError:
    """One cell (or a whole row) that was not taken: where, what stood there, and what was expected."""

    sheet: str | None
    row: int
    column: str
    value: str
    expected: str

    def __str__(self) -> str:
        """Return one line for people."""
        where = f"sheet {self.sheet!r}, row {self.row}" if self.sheet else f"row {self.row}"
        return f"{where}{f', column {self.column}' if self.column else ''}: {self.expected}" + (
            f" (got {self.value!r})" if self.value else ""
        )


@dataclass(frozen=True)
class Row:
    """A row as text by heading, empty cells left out. Row 1 is the headings'."""

    sheet: str | None
    number: int
    cells: dict[str, str]
    surplus: tuple[str, ...] = ()

    def error(self, column: str, expected: str, value: object = None) -> RowError:
        """Return an error at this row; the value is the cell's where none is given."""
        shown = self.cells.get(column, "") if value is None else str(value)
        return RowError(self.sheet, self.number, column, shown[:MOST_SHOWN], expected)


@dataclass(frozen=True)
class Table:
    rows: tuple[Row, ...]
    columns: frozenset[str] = field(default_factory=frozenset)


def content_of(data: bytes, name: str) -> Content:
    """Say what the bytes hold. Unreadable for an empty file, one too large, and what is no table."""
    if len(data) > LARGEST:
        raise Unreadable(f"{name}: {len(data) / 1e6:.0f} MB, more than the {LARGEST / 1e6:.0f} MB taken; split it")
    start = data[:4096].removeprefix(b"\xef\xbb\xbf").lstrip()
    if not start:
        raise Unreadable(f"{name}: it is empty; give a table (CSV, XLSX or JSON lines) with headings and rows")
    for magic, what in _OTHERS.items():
        if data.startswith(magic):
            raise Unreadable(f"{name}: it is {what}; give a table as CSV, XLSX or JSON lines")
    if data.startswith((b"PK\x03\x04", b"\xd0\xcf\x11\xe0")):
        return "sheet"
    return "lines" if start.startswith(b"{") else "csv"


def read_table(data: bytes, name: str, *, known: Collection[str], required: Collection[str]) -> Table:
    """Return the rows of a CSV file or a workbook. Headings must be among `known`, with all of `required`.

    Unreadable names the file, the place and what to do: a heading that is unknown (with the nearest), twice there
    or missing; a quote left open; text that is not UTF-8; a workbook that is damaged.
    """
    if content_of(data, name) == "sheet":
        return _from_sheets(data, name, known, required)
    grid = _csv_rows(decode(data, name), name, known)
    table = _table(None, grid, name, known, required)
    rows = tuple(Row(r.sheet, r.number, {k: unguard(v) for k, v in r.cells.items()}, r.surplus) for r in table.rows)
    return Table(rows, table.columns)


def decode(data: bytes, name: str) -> str:
    """Return text that is UTF-8, or UTF-16 with its mark. Unreadable names the line that is neither."""
    wide = data.startswith((b"\xff\xfe", b"\xfe\xff"))
    try:
        return data.decode("utf-16" if wide else "utf-8-sig")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise Unreadable(f"{name}, line {line}: this is not UTF-8; save the table as CSV UTF-8 or XLSX") from None


def _csv_rows(text: str, name: str, known: Collection[str]) -> list[list[str]]:
    before = csv.field_size_limit(LARGEST_CELL)  # the module's own limit is too low for long measurements in one cell
    rows: list[list[str]] = []
    try:
        rows.extend(csv.reader(io.StringIO(text, newline=""), delimiter=_delimiter(text, known), strict=True))
    except csv.Error as error:
        mend = "see that every quote is closed, and doubled inside text"
        raise Unreadable(f"{name}, row {len(rows) + 1}: {error}; {mend}") from None
    finally:
        csv.field_size_limit(before)
    return rows


def _delimiter(text: str, known: Collection[str]) -> str:
    """Return what splits the first line into the most known headings; semicolons come from where commas are decimal."""
    first = text[: text.find("\n")] if "\n" in text else text
    first = first[:65_536]

    def hits(mark: str) -> int:
        return sum(cell.strip().strip('"') in known for cell in first.split(mark))

    return max(",;\t", key=hits)


def _from_sheets(data: bytes, name: str, known: Collection[str], required: Collection[str]) -> Table:
    tables, problems = [], []
    for sheet, grid in _sheets(data, name):
        if not any(any(cell for cell in row) for row in grid):
            continue
        try:
            tables.append(_table(sheet, grid, f"{name}, sheet {sheet!r}", known, required))
        except Unreadable as problem:
            problems.append(problem)
    if not tables:
        raise problems[0] if problems else Unreadable(f"{name}: every sheet is empty")
    # A workbook may hold sheets of other things beside; one that is nearly ours is still named as wrong.
    return Table(tuple(row for table in tables for row in table.rows), frozenset().union(*(t.columns for t in tables)))


def _sheets(data: bytes, name: str) -> Iterator[tuple[str, list[list[str]]]]:
    try:
        if data.startswith(b"PK") and sum(i.file_size for i in zipfile.ZipFile(io.BytesIO(data)).infolist()) > LARGEST:
            raise Unreadable(f"{name}: it unpacks to more than {LARGEST / 1e6:.0f} MB; split it")
        book = CalamineWorkbook.from_filelike(io.BytesIO(data))
        for sheet in book.sheet_names:
            rows = book.get_sheet_by_name(sheet).to_python(skip_empty_area=False)
            yield sheet, [[_as_text(cell) for cell in row] for row in rows]
    except (CalamineError, zipfile.BadZipFile, OSError) as error:
        raise Unreadable(f"{name}: this workbook cannot be opened ({error}); save it anew as XLSX or CSV") from None


def _as_text(cell: float | str | bool | clock_time | date | datetime | timedelta) -> str:  # noqa: FBT001 - a cell
    if isinstance(cell, bool):
        return "true" if cell else "false"
    if isinstance(cell, (int, float)):
        return number_text(cell)
    return cell.isoformat() if isinstance(cell, (date, datetime, clock_time)) else str(cell)


def _table(
    sheet: str | None, grid: Sequence[Sequence[str]], name: str, known: Collection[str], required: Collection[str]
) -> Table:
    headings = [cell.strip() for cell in grid[0]] if grid else []
    while headings and not headings[-1]:
        headings.pop()
    _check_headings(headings, name, known, required)
    return Table(tuple(_rows(sheet, headings, grid[1:])), frozenset(headings))


def _rows(sheet: str | None, headings: Sequence[str], grid: Iterable[Sequence[str]]) -> Iterator[Row]:
    for number, row in enumerate(grid, start=2):
        surplus = tuple(cell for cell in row[len(headings) :] if cell)
        cells = {heading: cell for heading, cell in zip(headings, row, strict=False) if cell}
        if cells or surplus:
            yield Row(sheet, number, cells, surplus)


def _check_headings(headings: Sequence[str], name: str, known: Collection[str], required: Collection[str]) -> None:
    problems = []
    for index, heading in enumerate(headings):
        if not heading:
            problems.append(f"column {index + 1} has no heading")
        elif heading not in known:
            near = nearest(heading[:MOST_SHOWN], known)
            problems.append(f"unknown heading {heading[:MOST_SHOWN]!r}" + (f", did you mean {near!r}?" if near else ""))
        elif heading in headings[:index]:
            problems.append(f"heading {heading!r} stands twice")
    problems += [f"heading {heading!r} is missing" for heading in required if heading not in headings]
    if problems:
        more = f" and {len(problems) - 5} more" if len(problems) > 5 else ""  # noqa: PLR2004 - enough to see the cause
        raise Unreadable(f"{name}, row 1: {'; '.join(problems[:5])}{more}. Mend the headings and try again")
