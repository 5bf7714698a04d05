"""A table in text with separators -> rows of cells, one after the other."""

from __future__ import annotations

import csv
import io
from collections.abc import Collection, Generator
from typing import IO

from service.files.read.errors import Unreadable

LARGEST_CELL = 2_000_000
SEPARATORS = ",;\t|"
_LOOKED_AT = 65_536

# The csv module has one limit for the whole process, too low for long measurements in one cell. It is set here once and never
# set back: readers are generators that several threads may have open at a time, and each would undo the others' limit.
csv.field_size_limit(LARGEST_CELL)


def delimited(data: bytes | IO[bytes], encoding: str, separator: str, name: str) -> Generator[tuple[int, list[str]]]:
    """Yield the number of each row, from 1, and its cells as they stand.

    Unreadable names the row: a quote left open, a cell too long for one.
    """
    text = io.TextIOWrapper(io.BytesIO(data) if isinstance(data, bytes) else data, encoding=encoding, newline="")
    number = 0
    rows = csv.reader(text, delimiter=separator, strict=True)
    try:
        for number, row in enumerate(rows, start=1):
            yield number, row
    except csv.Error as error:
        if "field limit" in str(error):
            what = f"a cell has more than {LARGEST_CELL / 1e6:.0f} million characters (field larger than field limit)"
        else:
            what = str(error)
        mend = "see that every quote is closed, and doubled inside text"
        raise Unreadable(f"{name}, row {number + 1}: {what}; {mend}") from None


def separator_of(data: bytes, encoding: str, known: Collection[str] = ()) -> str:
    """Return what separates the cells: what splits the first line into the most known headings, else the most cells.

    Semicolons come from where commas are decimal.
    """
    text = io.TextIOWrapper(io.BytesIO(data[: 4 * _LOOKED_AT]), encoding=encoding, errors="ignore", newline="")
    lines = [line for line in text.read(_LOOKED_AT).splitlines() if line.strip()][:20]
    first = lines[0] if lines else ""

    def merit(mark: str) -> tuple[int, int, int]:
        headings = sum(cell.strip().strip('"') in known for cell in first.split(mark))
        counts = [len(_split(line, mark)) for line in lines]
        steady = max(counts, default=1) if counts and min(counts) == max(counts) > 1 else 0
        return headings, steady, counts[0] if counts else 0

    return max(SEPARATORS, key=merit)


def _split(line: str, mark: str) -> list[str]:
    try:
        return next(csv.reader([line], delimiter=mark), [])
    except csv.Error:
        return line.split(mark)
