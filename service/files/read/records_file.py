"""A file of records -> one after the other. A good row is not lost because of a bad one, and no file is read half."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from itertools import islice
from typing import Any

from service.core.mapping import Mapping as Rules
from service.core.mapping.decimals import Decimal, Evidence, evidence
from service.files.columns import REQUIRED, by_name
from service.files.read.errors import Unreadable
from service.files.read.grid import Grid, Layout, TableFile, open_table
from service.files.read.kinds import kind_of
from service.files.read.record_lines import lines, record_of
from service.files.read.record_plan import FAULTS, Plan, plan_of, unknown
from service.files.read.record_rows import RecordRow, Rejected
from service.files.read.record_table import Seen, row_of
from service.files.read.tables import RowError, usable

LOOKED_AT = 2_000
"""Rows in which the decimal sign is looked for."""


@dataclass(frozen=True)
class ReadRecords:
    rows: tuple[RecordRow, ...]
    rejected: tuple[RowError, ...]


@dataclass(frozen=True)
class RecordsFile:
    """A file that was looked through once from beginning to end: nothing in it can break off later.

    `count` is how many rows it has, `remarks` what was taken for granted, `kept` the headings whose cells go to the
    notes and `left_out` those that are not read.
    """

    data: bytes
    name: str
    table: TableFile | None
    mapping: Rules | None
    count: int
    decimal: Decimal | None = None
    remarks: tuple[str, ...] = ()
    kept: tuple[str, ...] = ()
    left_out: tuple[str, ...] = ()

    def rows(self, *, skip: int = 0, earlier: Mapping[str, str] | None = None) -> Iterator[RecordRow | Rejected]:
        """Yield every row from the one after `skip` on, in the file's order.

        A reference that stands in an earlier row is rejected; `earlier` says where those of the rows skipped stood.
        """
        seen = Seen(dict(earlier or {}))
        if self.table is None:
            for number, said in islice(lines(self.data, self.name), skip, None):
                yield seen.once(partial(record_of, number, said), None, number)
            return
        for grid, plan in self._plans():
            for number, cells in grid.rows:
                if skip > 0:
                    skip -= 1
                    continue
                yield row_of(grid.sheet, number, cells, plan, seen)

    def _plans(self) -> Iterator[tuple[Grid, Plan]]:
        table = self.table
        if table is not None:
            for grid in _usable(table, self.mapping):
                plan = plan_of(grid.headings, self.mapping, self.decimal, guarded=table.kind == "csv")
                if self.mapping is not None and self.mapping.number_rows is not None:
                    several = grid.sheet is not None and len(table.layout.sheets or ()) != 1
                    plan.number_rows = self.mapping.number_rows + (f"{grid.sheet}-" if several else "")
                yield grid, plan


def open_records(data: bytes, name: str, mapping: Rules | None = None) -> RecordsFile:
    """Return the file, looked through to its end. Unreadable where it as a whole is no table of records."""
    if kind_of(data, name) == "jsonl":
        if mapping is not None:
            raise Unreadable(f"{name}: JSON lines name their fields themselves; a mapping is for tables")
        return RecordsFile(data, name, None, None, sum(1 for _ in lines(data, name)))
    table = open_table(data, name, layout_of(mapping), known=by_name())
    plan, count, marks = Plan(), 0, Evidence()
    for grid in _usable(table, mapping):
        sheet = plan_of(grid.headings, mapping, None, guarded=table.kind == "csv")
        plan.kept += sheet.kept
        plan.left_out += sheet.left_out
        first = list(islice(grid.rows, LOOKED_AT))
        found = evidence(_numbers(sheet, first))
        marks = Evidence(marks.comma or found.comma, marks.point or found.point)
        count += len(first) + sum(1 for _ in grid.rows)
    sign, remark = _decimal(mapping, marks)
    remarks = (*table.remarks, *((remark,) if remark else ()))
    kept = tuple(dict.fromkeys(heading for _, heading in plan.kept))
    return RecordsFile(data, name, table, mapping, count, sign, remarks, kept, tuple(dict.fromkeys(plan.left_out)))


def read_records(data: bytes, name: str, mapping: Rules | None = None) -> ReadRecords:
    """Return all records in a file at once, and an error for each cell that kept a row from being one."""
    good, bad = [], list[RowError]()
    for found in open_records(data, name, mapping).rows():
        if isinstance(found, RecordRow):
            good.append(found)
        else:
            bad += found.errors
    return ReadRecords(tuple(good), tuple(bad))


def layout_of(mapping: Rules | None) -> Layout:
    """Return what a mapping says of how the file is laid out."""
    if mapping is None:
        return Layout()
    return Layout(mapping.encoding, mapping.separator, mapping.sheets, mapping.heading_row)


def _usable(table: TableFile, mapping: Rules | None) -> Iterator[Grid]:
    """Yield the sheets to be read. Unreadable for headings that nothing says what to do with."""
    if mapping is None:
        known = _Known(by_name())
        yield from usable(table, known, REQUIRED)
        return
    there = False
    for grid in table.grids():
        there = True
        strange = unknown(grid.headings, mapping)
        missing = [rule.heading for rule in mapping.column if rule.heading not in grid.headings]
        where = f"{table.named(grid.sheet)}, row {table.layout.heading_row}"
        if strange:
            raise Unreadable(f'{where}: the mapping says nothing of {_list(strange)}; add it there, or "ignore" it')
        if missing:
            raise Unreadable(f"{where}: there is no heading {_list(missing)}, which the mapping speaks of")
        needed = {rule.to for rule in mapping.column} | set(mapping.always)
        lacking = [name for name in REQUIRED if name not in needed and not _numbered(mapping, name)]
        if lacking:
            raise Unreadable(
                f"{where}: nothing in the mapping becomes {_list(lacking)}; map a heading, or say it in [always]"
            )
        yield grid
    if not there:
        raise Unreadable(f"{table.name}: every sheet is empty")


class _Known(dict[str, Any]):
    """The columns by heading, with those of a sheet of faults among them."""

    def __contains__(self, heading: object) -> bool:
        return super().__contains__(heading) or (isinstance(heading, str) and heading.startswith(FAULTS))


def _numbered(mapping: Rules, name: str) -> bool:
    return name == "record.reference" and mapping.number_rows is not None


def _list(names: Sequence[str]) -> str:
    shown = ", ".join(repr(name[:80]) for name in names[:5])
    return shown + (f" and {len(names) - 5} more" if len(names) > 5 else "")  # noqa: PLR2004 - enough to see the cause


def _numbers(plan: Plan, rows: Sequence[tuple[int, list[str]]]) -> Iterator[str]:
    places = [entry.index for entry in plan.entries if entry.column.kind == "number"]
    return (cells[at] for _, cells in rows for at in places if at < len(cells) and cells[at])


def _decimal(mapping: Rules | None, marks: Evidence) -> tuple[Decimal | None, str | None]:
    if mapping is not None and mapping.decimal is not None:
        return mapping.decimal, None
    if marks.comma and marks.point:
        both = f"some numbers have a decimal comma ({marks.comma}) and some a point ({marks.point})"
        return None, f"{both}; each is read by itself, and what could be thousands is rejected"
    if marks.comma:
        return ",", f"numbers are read with a decimal comma, as in {marks.comma}"
    return None, None
