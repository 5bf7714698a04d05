"""The headings of one sheet -> how each cell goes into a record's document."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from operator import itemgetter
from typing import Any

from service.core import units
from service.core.mapping import IGNORE, KEEP, ColumnRule, Mapping
from service.core.mapping.dates import read_date
from service.core.mapping.decimals import Decimal, plain_number
from service.core.mapping.guess import DIMENSIONS
from service.files.cells import BadCell, reader_of
from service.files.columns import Column, by_name

Reader = Callable[[str], Any]
FAULTS = "error."
"""Headings that begin so are those of a sheet of faults that comes back: they are not read."""
NOTES = "notes"


@dataclass(frozen=True, slots=True)
class Entry:
    """One column: its place in the row, its heading, what it holds, how a cell is read, and where the value goes."""

    index: int
    heading: str
    column: Column
    read: Reader
    group: int
    key: str


@dataclass(frozen=True, slots=True)
class Part:
    """A part of the document: its path, what picks its cells from a row, and for each the key and how it is read."""

    path: tuple[str, ...]
    pick: Callable[[Sequence[str]], Sequence[str]]
    keys: Sequence[tuple[str, Reader]]


def _picker(places: Sequence[int]) -> Callable[[Sequence[str]], Sequence[str]]:
    return itemgetter(*places) if len(places) > 1 else lambda row: [row[place] for place in places]


@dataclass
class Plan:
    """What becomes of the cells of one sheet. `groups` are the parts of the document that values go into.

    `number_rows` goes before the row's number to make a reference where no cell gives one; `guarded`: text may have an
    apostrophe against being taken for a formula; `origin` is the column that says where the row of a sheet of faults
    stood first.
    """

    entries: list[Entry] = field(default_factory=list)
    kept: list[tuple[int, str]] = field(default_factory=list)
    left_out: list[str] = field(default_factory=list)
    groups: list[tuple[str, ...]] = field(default_factory=list)
    always: list[tuple[int, str, Any]] = field(default_factory=list)
    headings: tuple[str, ...] = ()
    number_rows: str | None = None
    guarded: bool = False
    origin: int | None = None

    @property
    def width(self) -> int:
        """How many columns there are."""
        return len(self.headings)

    def filled(self, row: Sequence[str]) -> Sequence[str]:
        """Return the row with a cell, if an empty one, for each heading."""
        short = len(self.headings) - len(row)
        return [*row, *[""] * short] if short > 0 else row

    @cached_property
    def parts(self) -> Sequence[Part]:
        """The entries by the part of the document they go into, for every row passes them."""
        found = []
        for group, path in enumerate(self.groups):
            mine = [entry for entry in self.entries if entry.group == group]
            pick = _picker([entry.index for entry in mine])
            found.append(Part(path, pick, [(entry.key, entry.read) for entry in mine]))
        return found

    def heading_of(self, column: str) -> str:
        """Return what the file calls a column of records; the column's own name where the file has none."""
        return next((entry.heading for entry in self.entries if entry.column.name == column), column)

    def place(self, column: Column) -> tuple[int, str]:
        """Return the group a column's value goes into, and its key there."""
        *parts, key = column.path
        path = tuple(parts)
        if path not in self.groups:
            self.groups.append(path)
        return self.groups.index(path), key


def plan_of(headings: Sequence[str], mapping: Mapping | None, decimal: Decimal | None, *, guarded: bool) -> Plan:
    """Return the plan for these headings; they were found to be known."""
    plan = Plan(headings=tuple(headings), guarded=guarded)
    rules = {rule.heading: rule for rule in mapping.column} if mapping else {}
    for index, heading in enumerate(headings):
        if heading.startswith(FAULTS) or not heading:
            plan.origin = index if heading == f"{FAULTS}row" else plan.origin
            continue
        rule = rules.get(heading) or ColumnRule(heading=heading, to=heading)
        if rule.to == IGNORE:
            plan.left_out.append(heading)
        elif rule.to == KEEP:
            plan.kept.append((index, heading))
        else:
            column = by_name()[rule.to]
            read = _reader(column, rule, decimal)
            plan.entries.append(Entry(index, heading, column, read, *plan.place(column)))
    for name, text in (mapping.always if mapping else {}).items():
        column = by_name()[name]
        plan.always.append((*plan.place(column), _reader(column, None, None)(text)))
    if plan.kept:
        plan.place(by_name()[NOTES])
    return plan


def unknown(headings: Iterable[str], mapping: Mapping) -> list[str]:
    """Return the headings that a mapping says nothing of."""
    known = {rule.heading for rule in mapping.column}
    return [heading for heading in headings if heading and heading not in known and not heading.startswith(FAULTS)]


def _reader(column: Column, rule: ColumnRule | None, decimal: Decimal | None) -> Reader:
    read = reader_of(column)
    dimension = DIMENSIONS.get(column.name.rpartition("_")[2]) if column.kind == "number" else None
    if dimension is not None and rule is not None and rule.unit is not None:
        read = _with_unit(rule.unit, dimension)
    if decimal is not None and column.kind in ("number", "whole"):
        read = _with_decimal(read, decimal)
    if rule is not None and rule.format is not None and column.kind == "date":
        read = _dated(rule.format)
    if rule is not None and rule.values:
        read = _valued(read, {word.strip().casefold(): value for word, value in rule.values.items()})
    return read


def _with_unit(unit: str, dimension: units.Dimension) -> Reader:
    def read(text: str) -> float:
        got = units.parse(text, dimension, assumed=unit)
        if isinstance(got, units.Unread):
            raise BadCell(f"{text[:80]!r} is {got.reason}: {got.why}")
        return got.value

    return read


def _with_decimal(read: Reader, decimal: Decimal) -> Reader:
    return lambda text: read(plain_number(text, decimal))


def _dated(written: str) -> Reader:
    def read(text: str) -> str:
        day = read_date(text, written) or read_date(text, "YYYY-MM-DD")
        if day is None:
            raise BadCell(f"expected a date written {written}")
        return day.isoformat()

    return read


def _valued(read: Reader, values: dict[str, str]) -> Reader:
    return lambda text: read(values.get(text.strip().casefold(), text))
