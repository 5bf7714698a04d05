"""Records from CSV, workbooks or JSON lines. A good row is not lost because of a bad one."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from service.core.form import Defect, FormError, parse_shape
from service.core.record import Record
from service.core.revision import Revision
from service.core.words import nearest
from service.files.columns import REQUIRED, REVISIONS, BadCell, by_name, columns, parse_json, read_cell
from service.files.read.errors import Unreadable
from service.files.read.tables import Row, RowError, content_of, decode, read_table


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


class _RejectedError(Exception):
    def __init__(self, errors: list[RowError]) -> None:
        super().__init__()
        self.errors = errors


def read_records(data: bytes, name: str) -> ReadRecords:
    """Return the records in a file and an error for each cell that kept a row from being one.

    Unreadable where the file as a whole is no table of records.
    """
    good: dict[str, RecordRow] = {}
    bad: list[RowError] = []
    lines = content_of(data, name) == "lines"
    for row, said in _lines(decode(data, name), name) if lines else _rows(data, name):
        try:
            _put(good, row, _record_row(row, said))
        except _RejectedError as rejected:
            bad += rejected.errors
    return ReadRecords(tuple(good.values()), tuple(bad))


def _put(good: dict[str, RecordRow], row: Row, found: RecordRow) -> None:
    before = good.setdefault(found.record.reference, found)
    if before is not found:
        problem = f"row {before.row} has this reference too; keep one of them"
        raise _RejectedError([row.error("record.reference", problem, found.record.reference)])


def _rows(data: bytes, name: str) -> Iterator[tuple[Row, Mapping[str, Any]]]:
    for row in read_table(data, name, known=by_name(), required=REQUIRED).rows:
        yield row, row.cells


def _lines(text: str, name: str) -> Iterator[tuple[Row, Mapping[str, Any] | BadCell]]:
    lines = [(number, line) for number, line in enumerate(text.split("\n"), start=1) if line.strip()]
    for number, line in lines:
        try:
            said = parse_json(line)
        except BadCell as problem:
            if number == lines[0][0]:
                raise Unreadable(f"{name}, line {number}: {problem}; give one JSON object a line") from None
            said = problem
        yield Row(None, number, {}), said


def _record_row(row: Row, said: Mapping[str, Any] | BadCell) -> RecordRow:
    if not isinstance(said, Mapping):
        raise _RejectedError([row.error("", str(said) if isinstance(said, BadCell) else "expected a JSON object")])
    if row.surplus:
        problem = "there are more cells than headings; text with the separator in it needs quotes around it"
        raise _RejectedError([row.error("", problem, row.surplus[0])])
    states = said.get(REVISIONS) or ()
    record = _record(row, {key: value for key, value in said.items() if key != REVISIONS})
    if not isinstance(states, (list, tuple)):
        raise _RejectedError([row.error(REVISIONS, "expected a JSON list")])
    return RecordRow(row.sheet, row.number, record, tuple(_revisions(row, record.reference, list(states))))


def _revisions(row: Row, reference: str, states: list[Any]) -> Iterator[Revision]:
    for number, state in enumerate(states, start=1):
        place = f"{REVISIONS}[{number - 1}]"
        if not isinstance(state, dict) or not isinstance(state.get("row"), dict):
            raise _RejectedError([row.error(place, "expected number, who, at, why and row")])
        record = _record(row, state["row"], place + ".row.")
        said = {key: value for key, value in state.items() if key != "row"}
        try:
            revision = parse_shape(Revision, {**said, "record": record})
        except FormError as error:
            raise _RejectedError([row.error(f"{place}.{d.field}", d.problem, d.value) for d in error.defects]) from None
        if revision.number != number or record.reference != reference:
            raise _RejectedError([row.error(place, f"expected revision {number} of {reference!r}", revision.number)])
        yield revision


def _record(row: Row, said: Mapping[str, Any], place: str = "") -> Record:
    document: dict[str, Any] = {"form": {}}
    errors = []
    for name, value in _flat(said):
        column = by_name().get(name)
        if column is None:
            near = nearest(name, by_name())
            problem = "unknown field" + (f"; did you mean {near!r}?" if near else "")
            errors.append(row.error(place + name, problem))
            continue
        try:
            _set(document, column.path, read_cell(column, value))
        except BadCell as problem:
            errors.append(row.error(place + name, str(problem), value))
    try:
        record = parse_shape(Record, document)
    except FormError as error:
        known = {e.column for e in errors}
        found = [_as_cell(row, defect, place) for defect in error.defects]
        errors += [e for e in found if e.column not in known]
    if errors:
        raise _RejectedError(errors)
    return record


_SHORT = {name.removeprefix("record."): name for name in by_name() if name.startswith("record.")}


def _flat(said: Mapping[str, Any], stem: str = "") -> Iterator[tuple[str, Any]]:
    """Yield headings and values: of one flat object, or of parts nested as in the record's own document."""
    for key, value in said.items():
        name = stem + key
        if value is None or (name == "schema" and value == "boat-form/1"):
            continue
        if name in by_name():
            yield name, value
        elif not stem and key in _SHORT:
            yield _SHORT[key], value
        elif isinstance(value, dict):
            yield from _flat(value, "" if name == "form" else f"{name}.")
        else:
            yield name, value


def _set(document: dict[str, Any], path: tuple[str, ...], value: object) -> None:
    *parts, last = path
    for part in parts:
        document = document.setdefault(part, {})
    document[last] = value


def _as_cell(row: Row, defect: Defect, place: str) -> RowError:
    """Name the column where the shape names the field; what is inside a list or a map goes before the problem."""
    for column in columns():
        inner = defect.field.removeprefix(column.field)
        if inner != defect.field and inner[:1] in ("", ".", "["):
            problem = f"{inner.lstrip('.')}: {defect.problem}" if inner else defect.problem
            value = defect.value.strip("'") if inner or column.name not in row.cells else None
            return row.error(place + column.name, problem, value)
    return row.error(place + defect.field.removeprefix("form."), defect.problem, defect.value)
