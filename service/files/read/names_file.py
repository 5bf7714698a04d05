"""A CSV of boat names to resolve: name, builder, year, loa_mm, beam_mm; only name is required."""

from __future__ import annotations

import csv
import io
import re
from dataclasses import dataclass

from service.core import units
from service.core.words import nearest
from service.files.read.decode import text_of
from service.files.read.errors import Unreadable

COLUMNS = ("name", "builder", "year", "loa_mm", "beam_mm")
LONGEST = 100_000
"""Characters in a cell: more is no list of names, a quote left open for instance."""


@dataclass(frozen=True)
class NameRow:
    name: str
    builder: str | None
    year: int | None
    loa_mm: float | None
    beam_mm: float | None


def read_names(data: bytes, name: str) -> list[NameRow]:
    """Return the rows in order. Unreadable names file, row, column, value and what was expected."""
    reader = csv.DictReader(io.StringIO(text_of(data, None), newline=""))
    headings = [h.strip() for h in reader.fieldnames or []]
    for heading in headings:
        if heading not in COLUMNS:
            raise Unreadable(
                f"{name}: unknown column {heading!r}; did you mean {nearest(heading, COLUMNS) or 'name'!r}?"
            )
    if "name" not in headings:
        raise Unreadable(f"{name}: no column `name`; the columns are {', '.join(COLUMNS)}")
    reader.fieldnames = headings
    number = 1
    rows = []
    try:
        for number, row in enumerate(reader, 2):
            rows.append(_row({k: (v or "").strip() for k, v in row.items() if k}, number, name))
    except csv.Error as error:
        raise Unreadable(f"{name}: row {number + 1}: {error}; see that every quote is closed") from None
    return rows


def _row(cells: dict[str, str], number: int, name: str) -> NameRow:
    def where(column: str, expected: str) -> Unreadable:
        return Unreadable(f"{name}: row {number}, column {column}: {cells[column][:80]!r} is not {expected}")

    def length(column: str) -> float | None:
        text = cells.get(column)
        if not text:
            return None
        got = units.parse(text, "length", assumed="mm")
        if isinstance(got, units.Unread):
            raise where(column, f"a length ({got.why})")
        return got.value

    for column, cell in cells.items():
        if len(cell) > LONGEST:
            raise where(column, f"a cell of at most {LONGEST:,} characters; see that every quote is closed")
    year = cells.get("year") or None
    if year and not re.fullmatch(r"[0-9]{4}", year):
        raise where("year", "a year, as 1979")
    return NameRow(
        cells.get("name", ""),
        cells.get("builder") or None,
        int(year) if year else None,
        length("loa_mm"),
        length("beam_mm"),
    )
