"""A report's tables and plots, for its page: what the other formats show, in the desk's own clothes."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from service.core.report import Plot, Report, Table
from service.files.write.plain_svg import plain_svg
from service.files.write.report_words import cell_text, rest, shown_rows

MOST_BEHIND = 400
"""Rows of a table that is folded away under its plot; a longer one is in the files."""
KINDS = {
    "impossible": "cannot be true",
    "duplicate": "written down twice",
    "outlier": "unlike sister ships",
    "disagreeing": "measurements contradict each other",
    "fails_fit": "fails its own fit",
    "missing": "missing, and matters",
}


@dataclass(frozen=True)
class Figure:
    """A plot, drawn; `label` says what it shows."""

    label: str
    drawing: Markup


@dataclass(frozen=True)
class Part:
    """A table with its plots. `folded`: the plots say it, and the numbers are opened by whoever wants them."""

    id: str
    title: str
    note: str
    figures: tuple[Figure, ...]
    headings: tuple[tuple[str, bool], ...]
    rows: tuple[tuple[tuple[str, bool], ...], ...]
    more: str
    folded: bool


def parts(report: Report) -> list[Part]:
    """Return what of a report goes on its page, in order."""
    plotted = {plot.table for plot in report.plots}
    return [_part(report, table) for table in report.tables if table.shown or table.id in plotted]


def _part(report: Report, table: Table) -> Part:
    rows = shown_rows(table) if table.shown else table.rows[:MOST_BEHIND]
    left = len(table.rows) - len(rows)
    numbers = [column.kind != "text" for column in table.columns]
    more = rest(table) if table.shown else f"{left} further rows are in the files" if left else ""
    return Part(
        table.id,
        table.title,
        table.note,
        tuple(_figure(report, plot) for plot in report.plots if plot.table == table.id),
        tuple((_headed(c.heading, c.unit), number) for c, number in zip(table.columns, numbers, strict=True)),
        tuple(
            tuple((cell_text(cell, c), n) for cell, c, n in zip(row, table.columns, numbers, strict=True))
            for row in rows
        ),
        more or "",
        not table.shown,
    )


def _headed(heading: str, unit: str | None) -> str:
    return f"{heading} ({unit})" if unit else heading


def _figure(report: Report, plot: Plot) -> Figure:
    from service.files.write.charts import chart  # noqa: PLC0415 - plots take a large library

    drawn = plain_svg(chart(report, plot, titled=False).decode())
    return Figure(f"{plot.title}; the table has its numbers", Markup(_own(drawn, plot.id)))  # noqa: S704 - our own drawing


def _own(drawing: str, stem: str) -> str:
    """Return a drawing whose ids are its own among several on a page."""
    for before in ('id="', 'xlink:href="#', "url(#"):
        drawing = drawing.replace(before, f"{before}{stem}-")
    return drawing
