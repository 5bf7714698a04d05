"""Worksheets -> rows of cells as text."""

from __future__ import annotations

import io
from collections.abc import Iterator
from datetime import date, datetime, timedelta
from datetime import time as clock_time

from python_calamine import CalamineError, CalamineWorkbook

from service.files.cells import number_text
from service.files.read.errors import Unreadable

Numbered = Iterator[tuple[int, list[str]]]


def worksheets(data: bytes, name: str) -> Iterator[tuple[str, Numbered]]:
    """Yield each sheet's name, and its rows with their numbers from 1. Unreadable where it cannot be opened."""
    try:
        book = CalamineWorkbook.from_filelike(io.BytesIO(data))
        names = book.sheet_names
    except (CalamineError, OSError) as error:
        raise _damaged(name, error) from None
    for sheet in names:
        yield sheet, _rows(book, sheet, name)


def _rows(book: CalamineWorkbook, sheet: str, name: str) -> Numbered:
    try:
        found = book.get_sheet_by_name(sheet)
    except (CalamineError, OSError) as error:
        raise _damaged(f"{name}, sheet {sheet!r}", error) from None
    down, across = found.start or (0, 0)
    before = [""] * across
    for number, row in enumerate(found.iter_rows(), start=1):
        if number > down:  # empty rows above the first cell are given too, empty columns before it are not
            yield number, before + [cell if type(cell) is str else _as_text(cell) for cell in row]


def _damaged(name: str, error: Exception) -> Unreadable:
    return Unreadable(f"{name}: this workbook cannot be opened ({error}); save it anew as XLSX or CSV")


def _as_text(cell: float | str | bool | clock_time | date | datetime | timedelta) -> str:  # noqa: FBT001 - a cell
    if isinstance(cell, bool):
        return "true" if cell else "false"
    if isinstance(cell, (int, float)):
        return number_text(cell)
    return cell.isoformat() if isinstance(cell, (date, datetime, clock_time)) else str(cell)
