"""A report: period, filters, counts, what was left out and why, and tables with the plots drawn from them.

One shape for every report, so that each format is written once. A plot names the table and the columns it is drawn
from: there is none without a table behind it.
"""

from __future__ import annotations

from datetime import date as Date  # noqa: N812 - the fields are called dates
from typing import Literal

from pydantic import Field

from service.core.boat import Shape

Kind = Literal["text", "whole", "number", "share"]
Cell = str | int | float | None


class Column(Shape):
    """A column: its name for programs, its heading for people, what it holds, and in which unit. Shares are 0 to 1."""

    name: str
    heading: str
    kind: Kind = "text"
    unit: str | None = None


class Table(Shape):
    """Rows of cells; a cell that does not apply is null. `shown` rows go on a page, all of them into every file."""

    id: str
    title: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[Cell, ...], ...]
    note: str = ""
    shown: int = 12

    def column(self, name: str) -> tuple[Cell, ...]:
        """Return the cells of a column; StopIteration where there is none of that name."""
        at = self.place(name)
        return tuple(row[at] for row in self.rows)

    def place(self, name: str) -> int:
        """Return which column has that name, from 0."""
        return next(n for n, column in enumerate(self.columns) if column.name == name)


class Plot(Shape):
    """A plot of a table: `label` and `value` are columns of it, `low` and `high` those of an interval.

    bars: one a row, in order; series: along time, where `label` is the quarter and rows with an interval are expected;
    calibration: said (`label`) against what came true (`value`); histogram: `value` by `label`, beside `level` where
    all should stand.
    """

    id: str
    table: str
    title: str
    form: Literal["bars", "series", "calibration", "histogram"]
    label: str
    value: str
    low: str | None = None
    high: str | None = None
    axis: str = ""
    level: float | None = None
    most: int = 14


class LeftOut(Shape):
    """What is not counted in the report, how many, and why."""

    what: str
    count: int
    why: str


class Report(Shape):
    """A report as published. `first` and `last` bound the period; null where nothing bounds it."""

    schema_: Literal["report/1"] = Field("report/1", alias="schema")
    name: Literal["demand", "unmet", "accuracy"]
    title: str
    as_of: Date
    first: Date | None
    last: Date | None
    filters: dict[str, str]
    counts: dict[str, int]
    left_out: tuple[LeftOut, ...]
    findings: tuple[str, ...]
    tables: tuple[Table, ...]
    plots: tuple[Plot, ...]
    sources: tuple[str, ...]
    catalogue: str | None
    software: str

    def table(self, id_: str) -> Table:
        """Return the table of that id; StopIteration where there is none."""
        return next(table for table in self.tables if table.id == id_)


def period(first: Date | None, last: Date | None) -> str:
    """Say a period for people.

    >>> period(None, None), period(Date(2020, 1, 1), None)
    ('all dates', 'from 2020-01-01')
    """
    ends = [word for word in (first and f"from {first}", last and f"to {last}") if word]
    return " ".join(ends) or "all dates"


def about(report: Report) -> tuple[tuple[str, Cell], ...]:
    """Return what a report says of itself, line by line: what stands on its first page and in a file of its own."""
    return (
        ("report", report.title),
        ("as of", report.as_of.isoformat()),
        ("period", period(report.first, report.last)),
        *((f"filter: {name}", text) for name, text in report.filters.items()),
        *((f"count: {name}", count) for name, count in report.counts.items()),
        *((f"left out: {one.what}", f"{one.count}: {one.why}") for one in report.left_out),
        *(("finding", text) for text in report.findings),
        *(("source", text) for text in report.sources),
        ("catalogue", report.catalogue or "none loaded"),
        ("software", report.software),
    )
