"""Look at somebody's own table and write down what its columns most likely are, for a person to confirm."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import islice
from typing import get_args

from service.core.mapping import Guess, Seen, Target, guess
from service.core.mapping.decimals import evidence
from service.core.record import Record
from service.files.columns import Column, by_name, columns
from service.files.read.errors import Unreadable
from service.files.read.grid import TableFile, open_table
from service.files.read.kinds import kind_of
from service.files.write.mapping_file import write_mapping

LOOKED_AT = 500
_FIRST = 12
_NEARLY = 0.6


@dataclass(frozen=True)
class Guessed:
    """The mapping file's text, and what was guessed."""

    text: str
    guesses: tuple[Guess, ...]
    remarks: tuple[str, ...]


def guess_mapping(data: bytes, name: str, *, sheet: str | None = None) -> Guessed:
    """Return a mapping file for a table: each heading with the guess, how sure it is, and some cells.

    Of a workbook the sheet named, else the one of which most headings are recognised. Unreadable for what is no table.
    """
    if kind_of(data, name) == "jsonl":
        raise Unreadable(f"{name}: JSON lines name their fields themselves; a mapping is for tables")
    file = open_table(data, name, known=by_name())
    sheets = [grid.sheet or "" for grid in file.grids()]
    asked = [sheet] if sheet is not None else sheets if file.book else [None]
    looked = [_look(file, one) for one in asked]
    best = max(looked, key=lambda found: sum(one.sure for one in found[2]), default=None)
    if best is None:
        raise Unreadable(f"{name}: every sheet is empty")
    table, seen, guesses = best
    numbers = [
        text for one, cells in zip(guesses, seen, strict=True)
        if one.to is not None and by_name()[one.to].kind == "number" for text in cells.samples
    ]  # fmt: skip
    text = write_mapping(table, sheets, list(zip(guesses, seen, strict=True)), evidence(numbers))
    return Guessed(text, guesses, table.remarks)


def _look(file: TableFile, sheet: str | None) -> tuple[TableFile, list[Seen], tuple[Guess, ...]]:
    layout = replace(file.layout, sheets=None if sheet is None else (sheet,), heading_row=1)
    table = replace(file, layout=replace(layout, heading_row=_heading_row(replace(file, layout=layout))))
    grid = next(table.grids(), None)
    if grid is None:
        return table, [], ()
    rows = [cells for _, cells in islice(grid.rows, LOOKED_AT)]
    seen = [
        Seen(heading, tuple(cells[at] for cells in rows if at < len(cells) and cells[at]))
        for at, heading in enumerate(grid.headings)
        if heading
    ]
    return table, seen, guess(seen, targets())


def _heading_row(file: TableFile) -> int:
    """Return the first row that is about as full as the fullest: what stands above it is a title."""
    grid = next(file.grids(), None)
    if grid is None:
        return 1
    first = [(None, list(grid.headings)), *islice(grid.rows, _FIRST)]
    filled = [sum(bool(cell.strip()) for cell in cells) for _, cells in first]
    for (number, _), count in zip(first, filled, strict=True):
        if count >= _NEARLY * max(filled):
            return number or 1
    return 1


def targets() -> Sequence[Target]:
    """Return the columns that a heading may stand for, with the words that some of them take."""
    return [Target(column.name, column.kind, _words(column)) for column in columns()]


def _words(column: Column) -> tuple[str, ...]:
    if column.kind != "text":
        return ()
    model: object = Record
    for part in column.path[:-1]:
        model = model.model_fields[part].annotation  # type: ignore[attr-defined] # a shape within a shape
    annotation = model.model_fields[column.path[-1]].annotation  # type: ignore[attr-defined] # the same
    choices = [arg for arg in get_args(annotation) if arg is not type(None)] if get_args(annotation) else []
    words = [word for arg in choices for word in (get_args(arg) or (arg,))]
    return tuple(word for word in words if isinstance(word, str))
