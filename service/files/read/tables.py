"""A table with known headings -> rows of text by heading."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, field

from service.core.words import nearest
from service.files.cells import unguard
from service.files.read.errors import Unreadable
from service.files.read.grid import Grid, TableFile, open_table

MOST_SHOWN = 80


@dataclass(frozen=True, slots=True)
class RowError:
    """One cell (or a whole row) that was not taken: where, what stood there, and what was expected."""

    sheet: str | None
    row: int
    column: str
    value: str
    expected: str

    def __str__(self) -> str:
        """Return one line for people."""
        where = f"sheet {self.sheet!r}, row {self.row}" if self.sheet else f"row {self.row}"
        return f"{where}{f', column {self.column}' if self.column else ''}: {self.expected}" + (
            f" (got {self.value!r})" if self.value else ""
        )


@dataclass(frozen=True)
class Row:
    """A row as text by heading, empty cells left out. Row 1 is the headings'."""

    sheet: str | None
    number: int
    cells: dict[str, str]
    surplus: tuple[str, ...] = ()

    def error(self, column: str, expected: str, value: object = None) -> RowError:
        """Return an error at this row; the value is the cell's where none is given."""
        shown = self.cells.get(column, "") if value is None else str(value)
        return RowError(self.sheet, self.number, column, shown[:MOST_SHOWN], expected)


@dataclass(frozen=True)
class Table:
    rows: tuple[Row, ...]
    columns: frozenset[str] = field(default_factory=frozenset)


def read_table(data: bytes, name: str, *, known: Collection[str], required: Collection[str]) -> Table:
    """Return the rows of a table in any format but JSON lines. Headings must be among `known`, with all of `required`.

    Unreadable names the file, the place and what to do: a heading that is unknown (with the nearest), twice there
    or missing; a quote left open; a workbook that is damaged.
    """
    file = open_table(data, name, known=known)
    rows, columns = list[Row](), set[str]()
    for grid in usable(file, known, required):
        columns.update(grid.headings)
        rows += _rows(grid, guarded=file.kind == "csv")
    return Table(tuple(rows), frozenset(columns))


def usable(file: TableFile, known: Collection[str], required: Collection[str]) -> Iterator[Grid]:
    """Yield the sheets that have the headings. Unreadable where none has, with the first one's fault.

    A workbook may hold sheets of other things beside; one that is nearly ours is still named as wrong.
    """
    problems, found = list[Unreadable](), False
    for grid in file.grids():
        problem = _wrong(grid.headings, known, required)
        if problem:
            place = f"{file.named(grid.sheet)}, row {file.layout.heading_row}"
            problems.append(Unreadable(f"{place}: {problem}. Mend the headings and try again"))
            continue
        found = True
        yield grid
    if not found:
        raise problems[0] if problems else Unreadable(f"{file.name}: every sheet is empty")


def _rows(grid: Grid, *, guarded: bool) -> Iterator[Row]:
    for number, cells in grid.rows:
        surplus = tuple(cell for cell in cells[len(grid.headings) :] if cell)
        said = {heading: cell for heading, cell in zip(grid.headings, cells, strict=False) if cell}
        if said or surplus:
            plain = {heading: unguard(cell) for heading, cell in said.items()} if guarded else said
            yield Row(grid.sheet, number, plain, surplus)


def _wrong(headings: Sequence[str], known: Collection[str], required: Collection[str]) -> str | None:
    problems = []
    seen = set[str]()
    for index, heading in enumerate(headings):
        if not heading:
            problems.append(f"column {index + 1} has no heading")
        elif heading not in known:
            near = nearest(heading[:MOST_SHOWN], known) if len(problems) < 5 else None  # noqa: PLR2004 - as are shown
            problems.append(f"unknown heading {heading[:MOST_SHOWN]!r}" + (f", did you mean {near!r}?" if near else ""))
        elif heading in seen:
            problems.append(f"heading {heading!r} stands twice")
        seen.add(heading)
    problems += [f"heading {heading!r} is missing" for heading in required if heading not in headings]
    if not problems:
        return None
    more = f" and {len(problems) - 5} more" if len(problems) > 5 else ""  # noqa: PLR2004 - enough to see the cause
    return f"{'; '.join(problems[:5])}{more}"
