"""What reading a record gives: the record, or what is wrong with the row, cell by cell."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from service.core.form import Defect, FormError, parse_shape
from service.core.measurement import Measurement
from service.core.record import Record
from service.core.revision import Revision
from service.files.columns import columns
from service.files.read.tables import MOST_SHOWN, RowError


@dataclass(frozen=True, slots=True)
class RecordRow:
    """A record, and where it stood. JSON lines may bring the states it was in and what was measured along.

    `merged` is the record that it is, written down twice, and the revision of that one that took it in.
    """

    sheet: str | None
    row: int
    record: Record
    revisions: tuple[Revision, ...] = ()
    measurements: tuple[Measurement, ...] = ()
    merged: tuple[str, int] | None = None


@dataclass(frozen=True, slots=True)
class Rejected:
    """A row that is no record, with an error for each cell that keeps it from being one."""

    sheet: str | None
    row: int
    errors: tuple[RowError, ...]
    reference: str | None = None


@dataclass(frozen=True, slots=True)
class Place:
    """A row, and how its errors are made: `cell` gives the text under a column's name, `called` what it is called."""

    sheet: str | None
    row: int
    cell: Callable[[str], str]
    called: Callable[[str], str] = str

    def error(self, column: str, expected: str, value: object = None) -> RowError:
        """Return an error in a column; the value is the cell's where none is given."""
        shown = self.cell(column) if value is None else str(value)
        return RowError(self.sheet, self.row, self.called(column), shown[:MOST_SHOWN], expected)


class WrongRow(Exception):  # noqa: N818 - named for what it is
    """A row that cannot be taken, with its errors."""

    def __init__(self, errors: list[RowError]) -> None:
        """Keep the errors."""
        super().__init__()
        self.errors = errors


def shaped(document: Mapping[str, Any], place: Place, errors: list[RowError], stem: str = "") -> Record:
    """Return the record in a document. WrongRow with these errors and those of the shape, each in its column once."""
    if not errors:
        try:
            return Record.model_validate(document)
        except ValueError:  # said below, defect by defect
            pass
    try:
        record = parse_shape(Record, document)
    except FormError as error:
        known = {found.column for found in errors}
        found = [_as_cell(place, defect, stem) for defect in error.defects]
        errors += [one for one in found if one.column not in known]
    if errors:
        raise WrongRow(errors)
    return record


def _as_cell(place: Place, defect: Defect, stem: str) -> RowError:
    """Name the column where the shape names the field; what is inside a list or a map goes before the problem."""
    for column in columns():
        inner = defect.field.removeprefix(column.field)
        if inner != defect.field and inner[:1] in ("", ".", "["):
            problem = f"{inner.lstrip('.')}: {defect.problem}" if inner else defect.problem
            value = defect.value.strip("'") if inner or not place.cell(column.name) else None
            return place.error(stem + column.name, problem, value)
    return place.error(stem + defect.field.removeprefix("form."), defect.problem, defect.value)
