"""A row of cells -> a record, by the plan of its sheet."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Any

from pydantic import ValidationError

from service.core.record import Record
from service.files.cells import BadCell, unguard
from service.files.read.record_plan import NOTES, Plan
from service.files.read.record_rows import Place, RecordRow, Rejected, WrongRow, shaped
from service.files.read.tables import MOST_SHOWN, RowError

_BETWEEN, _GUARDED = "\x1f", "\x1f'"


@dataclass
class Seen:
    """Where each reference stood first."""

    places: dict[str, str] = field(default_factory=dict)

    def once(self, read: Callable[[], RecordRow], sheet: str | None, row: int) -> RecordRow | Rejected:
        """Return what `read` gives, or why it gives nothing."""
        try:
            return self.first(read())
        except WrongRow as wrong:
            return Rejected(sheet, row, tuple(wrong.errors))

    def first(self, found: RecordRow) -> RecordRow | Rejected:
        """Return the row; rejected where its reference stood in an earlier one."""
        reference = found.record.reference
        here = place_of(found.sheet, found.row)
        before = self.places.setdefault(reference, here)
        if before == here:
            return found
        problem = f"{before} has this reference too; keep one of them"
        error = RowError(found.sheet, found.row, "record.reference", reference, problem)
        return Rejected(found.sheet, found.row, (error,), reference)


def place_of(sheet: str | None, row: int) -> str:
    """Return how messages speak of a row."""
    return f"row {row} of sheet {sheet!r}" if sheet else f"row {row}"


def row_of(sheet: str | None, number: int, cells: Sequence[str], plan: Plan, seen: Seen) -> RecordRow | Rejected:
    """Return the record in a row, or an error for each cell that keeps it from being one."""
    row = plan.filled(cells)
    together = _BETWEEN.join(row)
    plain = "\0" not in together and not (plan.guarded and (_GUARDED in together or row[0][:1] == "'"))
    if plain and len(row) == plan.width:
        try:
            document = _document(row, plan)
            _complete(document, number, row, plan)
            return seen.first(RecordRow(sheet, number, Record.model_validate(document)))
        except (BadCell, ValidationError):  # said below, cell by cell
            pass
    document, problems = _read_one_by_one(row, plan)
    _complete(document, number, row, plan)
    return _explained(sheet, number, row, plan, document, problems, seen)


def _document(row: Sequence[str], plan: Plan) -> dict[str, Any]:
    """Return the document that the cells make, where none has a guard; BadCell at the first that cannot be read."""
    document: dict[str, Any] = {"form": {}}
    for part in plan.parts:
        values = {key: read(text) for (key, read), text in zip(part.keys, part.pick(row), strict=True) if text}
        if values:
            _put(document, part.path, values)
    return document


def _read_one_by_one(row: Sequence[str], plan: Plan) -> tuple[dict[str, Any], list[tuple[str, str]]]:
    """Return the same with guards taken off, and column and problem for each cell that could not be read."""
    document: dict[str, Any] = {"form": {}}
    problems = list[tuple[str, str]]()
    for entry in plan.entries:
        text = row[entry.index]
        if text:
            try:
                value = entry.read(unguard(text) if plan.guarded else text)
            except BadCell as problem:
                problems.append((entry.column.name, str(problem)))
            else:
                _put(document, plan.groups[entry.group], {entry.key: value})
    return document, problems


def _put(document: dict[str, Any], path: tuple[str, ...], values: dict[str, Any]) -> None:
    into = document
    for name in path:
        into = into.setdefault(name, {})
    into.update(values)


def _complete(document: dict[str, Any], number: int, row: Sequence[str], plan: Plan) -> None:
    """Put in what no cell says: what is the same for all rows, what is kept aside, a reference from the row's number."""
    for group, key, value in plan.always:
        _put(document, plan.groups[group], {key: value})
    if plan.kept:
        _keep_aside(row, plan, document["form"])
    if plan.number_rows is not None and "reference" not in document:
        first = row[plan.origin] if plan.origin is not None else ""
        document["reference"] = f"{plan.number_rows}{first or number}"


def _keep_aside(cells: Sequence[str], plan: Plan, form: dict[str, Any]) -> None:
    kept = [f"{heading}: {unguard(cells[at])}" for at, heading in plan.kept if at < len(cells) and cells[at].strip()]
    if kept:
        form[NOTES] = "\n".join([*([form[NOTES]] if form.get(NOTES) else []), *kept])


def _explained(
    sheet: str | None, number: int, cells: Sequence[str], plan: Plan, document: dict[str, Any],
    problems: Sequence[tuple[str, str]], seen: Seen,
) -> RecordRow | Rejected:  # fmt: skip
    at = {entry.column.name: entry.index for entry in plan.entries}

    def cell(column: str) -> str:
        index = at.get(column, len(cells))
        return cells[index] if index < len(cells) else ""

    place = Place(sheet, number, cell, plan.heading_of)
    errors = [place.error(column, problem) for column, problem in problems]
    surplus = next((text for text in cells[plan.width :] if text), None)
    if surplus is not None:
        problem = "there are more cells than headings; text with the separator in it needs quotes around it"
        errors.append(place.error("", problem, surplus))
    nothing = next((index for index, text in enumerate(cells) if "\0" in text), None)
    if nothing is not None:
        heading = plan.headings[nothing] if nothing < plan.width else ""
        shown = cells[nothing].replace("\0", "\ufffd")
        problem = "there is a NUL character, which is no text; take it out"
        errors.append(RowError(sheet, number, heading, shown[:MOST_SHOWN], problem))
    try:
        return seen.first(RecordRow(sheet, number, shaped(document, place, errors)))
    except WrongRow as wrong:
        reference = document.get("reference")
        return Rejected(sheet, number, tuple(wrong.errors), reference if isinstance(reference, str) else None)
