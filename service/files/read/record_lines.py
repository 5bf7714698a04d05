"""JSON lines -> records, with the states they were in and what was measured."""

from __future__ import annotations

import io
import re
from collections.abc import Iterator, Mapping
from typing import Any

from service.core.form import FormError, parse_shape
from service.core.measurement import Measurement
from service.core.record import Record
from service.core.revision import Revision
from service.core.words import nearest
from service.files.cells import BadCell, parse_json, read_cell
from service.files.columns import ATTACHED, MEASUREMENTS, MERGED, REVISIONS, by_name
from service.files.read.encoding import encoding_of
from service.files.read.errors import Unreadable
from service.files.read.record_rows import Place, RecordRow, WrongRow, shaped

_NUL = re.compile(r"\0|(?<!\\)(?:\\\\)*\\u0000")
_NUL_SAID = "there is a NUL character, which is no text; take it out"
Said = Mapping[str, Any] | BadCell


def lines(data: bytes, name: str) -> Iterator[tuple[int, Said]]:
    """Yield the number of each line that is not empty, and what stands in it. Unreadable where the first is no JSON."""
    encoding = encoding_of(data, name)
    first = True
    with io.TextIOWrapper(io.BytesIO(data), encoding=encoding.name, newline="\n") as text:
        for number, line in enumerate(text, start=1):
            if not line.strip():
                continue
            try:
                said = BadCell(_NUL_SAID) if _NUL.search(line) else parse_json(line)
            except BadCell as problem:
                if first:
                    raise Unreadable(f"{name}, line {number}: {problem}; give one JSON object a line") from None
                said = problem
            first = False
            yield number, said


def record_of(number: int, said: Said) -> RecordRow:
    """Return the record in a line. WrongRow with an error for each value that keeps it from being one."""
    place = Place(None, number, lambda _: "")
    if not isinstance(said, Mapping):
        raise WrongRow([place.error("", str(said) if isinstance(said, BadCell) else "expected a JSON object")])
    parts = {}
    for key in (REVISIONS, MEASUREMENTS):
        parts[key] = said.get(key) or ()
        if not isinstance(parts[key], (list, tuple)):
            raise WrongRow([place.error(key, "expected a JSON list")])
    apart = {*parts, MERGED, ATTACHED}
    record = _record(place, {key: value for key, value in said.items() if key not in apart})
    revisions = tuple(_revisions(place, record.reference, list(parts[REVISIONS])))
    measurements = tuple(_measurements(place, list(parts[MEASUREMENTS])))
    return RecordRow(None, number, record, revisions, measurements, _merged(place, record, said.get(MERGED)))


def _merged(place: Place, record: Record, said: object) -> tuple[str, int] | None:
    if said is None:
        return None
    into, revision = (said.get("reference"), said.get("revision")) if isinstance(said, dict) else (None, None)
    if not isinstance(into, str) or type(revision) is not int or into == record.reference:
        raise WrongRow(
            [place.error(MERGED, "expected the reference of another record, and its revision that took this in")]
        )
    return into, revision


def _revisions(place: Place, reference: str, states: list[Any]) -> Iterator[Revision]:
    for number, state in enumerate(states, start=1):
        where = f"{REVISIONS}[{number - 1}]"
        if not isinstance(state, dict) or not isinstance(state.get("row"), dict):
            raise WrongRow([place.error(where, "expected number, who, at, why and row")])
        record = _record(place, state["row"], where + ".row.")
        said = {key: value for key, value in state.items() if key != "row"}
        try:
            revision = parse_shape(Revision, {**said, "record": record})
        except FormError as error:
            raise WrongRow([place.error(f"{where}.{d.field}", d.problem, d.value) for d in error.defects]) from None
        if revision.number != number or record.reference != reference:
            raise WrongRow([place.error(where, f"expected revision {number} of {reference!r}", revision.number)])
        yield revision


def _measurements(place: Place, rows: list[Any]) -> Iterator[Measurement]:
    for number, row in enumerate(rows):
        where = f"{MEASUREMENTS}[{number}]"
        try:
            yield parse_shape(Measurement, row)
        except FormError as error:
            raise WrongRow([place.error(f"{where}.{d.field}", d.problem, d.value) for d in error.defects]) from None


def _record(place: Place, said: Mapping[str, Any], stem: str = "") -> Record:
    document: dict[str, Any] = {"form": {}}
    errors = []
    for name, value in _flat(said):
        column = by_name().get(name)
        if column is None:
            near = nearest(name, by_name())
            problem = "unknown field" + (f"; did you mean {near!r}?" if near else "")
            errors.append(place.error(stem + name, problem))
            continue
        try:
            _set(document, column.path, read_cell(column, value))
        except BadCell as problem:
            errors.append(place.error(stem + name, str(problem), value))
    return shaped(document, place, errors, stem)


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
        elif name == "error":
            continue  # a line of a file of faults that comes back
        elif isinstance(value, dict):
            yield from _flat(value, "" if name == "form" else f"{name}.")
        else:
            yield name, value


def _set(document: dict[str, Any], path: tuple[str, ...], value: object) -> None:
    *parts, last = path
    for part in parts:
        document = document.setdefault(part, {})
    document[last] = value
