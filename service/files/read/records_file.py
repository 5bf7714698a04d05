"""Records from CSV, workbooks or JSON lines. A good row is not lost because of a bad one."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from service.core.boat import Defect, FormError, parse_shape
from service.core.record import Record
from service.core.revision import Revision
from service.core.words import nearest
from service.files.columns import REQUIRED, BadCell, by_name, columns, parse_json, read_cell
from service.files.read.errors import Unreadable
from service.files.read.tables import Row, RowError, content_of, decode, read_table

REVISIONS = "record.revisions"


@dataclass(frozen=True)
class RecordRow:
    """A record, and where it stood. `revisions` are its states so far, where the file carries them."""

    sheet: str | None
    row: int
    record: Record
    revisions: tuple[Revision, ...] = ()


@dataclass(frozen=True)
class ReadRecords:
    rows: tuple[RecordRow, ...]
    rejected: tuple[RowError, ...]


class _Rejected(Exception):  # noqa: N818 - carries what was rejected
    def __init__(self, errors: list[RowError]) -> None:
        super().__init__()
        self.errors = errors


def read_records(data: bytes, name: str) -> ReadRecords:
    """Return the records in a file and an error for each cell that kept a row from being one.

    Unreadable where the file as a whole is no table of records.
    """
    good: list[RecordRow] = []
    bad: list[RowError] = []
    seen: dict[str, int] = {}
    for row in _rows(data, name):
        try:
            found = row if isinstance(row, RecordRow) else _record_row(*row)
            first = seen.setdefault(found.record.reference, found.row)
            if first != found.row:
                bad.append(
                    RowError(found.sheet, found.row, "record.reference", found.record.reference, f"row {first} has it too; keep one")
                )
                continue
            good.append(found)
        except _Rejected as rejected:
            bad += rejected.errors
    return ReadRecords(tuple(good), tuple(bad))


def _rows(data: bytes, name: str) -> Iterator[Any]:
    if content_of(data, name) == "lines":
        yield from _lines(decode(data, name), name)
        return
    for row in read_table(data, name, known=by_name(), required=REQUIRED).rows:
        yield row, row.cells


def _lines(text: str, name: str) -> Iterator[tuple[Row, Mapping[str, Any]]]:
    lines = [(number, line) for number, line in enumerate(text.split("\n"), start=1) if line.strip()]
    for number, line in lines:
        row = Row(None, number, {})
        try:
            said = parse_json(line)
        except BadCell as problem:
            if len(lines) == 1:
                raise Unreadable(f"{name}, line {number}: {problem}; give one JSON object a line") from None
            yield row, {"": problem}
            continue
        yield row, said if isinstance(said, dict) else {"": BadCell("expected one JSON object a line")}
