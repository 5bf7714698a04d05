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
    document, problems = _document(cells, plan)
    if plan.number_rows is not None and "reference" not in document:
        first = cells[plan.origin] if plan.origin is not None and plan.origin < len(cells) else ""
        document["reference"] = f"{plan.number_rows}{first or number}"
    if not problems and len(cells) <= plan.width and "\0" not in "".join(cells):
        try:
            return seen.first(RecordRow(sheet, number, Record.model_validate(document)))
        except ValidationError:  # said below, defect by defect
            pass
    return _explained(sheet, number, cells, plan, document, problems, seen)


def _document(cells: Sequence[str], plan: Plan) -> tuple[dict[str, Any], list[tuple[str, str]]]:
    """Return the document that the cells make, and column and problem where one could not be read."""
    parts: list[dict[str, Any] | None] = [None] * len(plan.groups)
    problems = list[tuple[str, str]]()
    for group, key, value in plan.always:
        parts[group] = {**(parts[group] or {}), key: value}
    width, guarded = len(cells), plan.guarded
    for entry in plan.entries:
        if entry.index < width and (text := cells[entry.index]):
            try:
                value = entry.read(unguard(text) if guarded and text[0] == "'" else text)
            except BadCell as problem:
                problems.append((entry.column.name, str(problem)))
                continue
            into = parts[entry.group]
            if into is None:
                parts[entry.group] = {entry.key: value}
            else:
                into[entry.key] = value
    document: dict[str, Any] = {"form": {}}
    for path, part in zip(plan.groups, parts, strict=True):
        if part is not None:
            into = document
            for name in path:
                into = into.setdefault(name, {})
            into.update(part)
    if plan.kept:
        _keep_aside(cells, plan, document["form"])
    return document, problems


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
