"""A report as a workbook: a sheet a table, numbers as numbers, headings that stay, and charts over the tables' cells."""

from __future__ import annotations

import io
import tempfile
from datetime import UTC, datetime
from typing import Any

import xlsxwriter

from service.core.report import Cell, Column, Plot, Report, Table, about
from service.files.write.grids import LONGEST_CELL, fits
from service.files.write.report_words import whole_headings

_MADE = datetime(2000, 1, 1, tzinfo=UTC).replace(tzinfo=None)
INK, FILL, FAINT = "#111111", "#8C8C8C", "#D9D9D9"
FORMATS = {"whole": "0", "number": "0.00", "share": "0.0%"}
WIDEST = 44


def workbook(report: Report) -> bytes:
    """Return the workbook. Its bytes are the same for the same report: the date in it is fixed."""
    out = io.BytesIO()
    with tempfile.TemporaryDirectory(prefix="transom-") as folder:
        book = xlsxwriter.Workbook(out, {"tmpdir": folder})
        book.set_properties({"title": report.title, "created": _MADE})
        styles = {kind: book.add_format({"num_format": text}) for kind, text in FORMATS.items()}
        styles["head"] = book.add_format({"bold": True, "bottom": 1, "text_wrap": True, "valign": "top"})
        styles["text"] = book.add_format({"text_wrap": True, "valign": "top"})
        _about(book.add_worksheet("about"), report, styles)
        for table in report.tables:
            page = book.add_worksheet(table.id)
            _printed(page, report, table)
            _table(page, table, styles)
            drawn = [_chart(book, table, plot) for plot in report.plots if plot.table == table.id]
            for number, chart in enumerate(drawn):
                page.insert_chart(1 + 22 * number, len(table.columns) + 1, chart)
        book.close()
    return out.getvalue()


def _about(page: Any, report: Report, styles: dict[str, Any]) -> None:  # noqa: ANN401 - xlsxwriter has no types
    page.set_column(0, 0, 30)
    page.set_column(1, 1, 100)
    page.write_string(0, 0, "what", styles["head"])
    page.write_string(0, 1, "is", styles["head"])
    page.freeze_panes(1, 0)
    for row, (name, cell) in enumerate(about(report), start=1):
        page.write_string(row, 0, name, styles["text"])
        if isinstance(cell, int):
            page.write_number(row, 1, cell)
        else:
            page.write_string(row, 1, str(cell)[:LONGEST_CELL], styles["text"])


def _printed(page: Any, report: Report, table: Table) -> None:  # noqa: ANN401 - the same
    """Say how a sheet is printed: across, as wide as the paper, headings on every page, and what it is below."""
    page.set_landscape()
    page.set_paper(9)  # A4
    page.fit_to_pages(1, 0)
    page.repeat_rows(0)
    foot = f"{report.title}: {table.title}, as of {report.as_of}".replace("&", "&&")
    page.set_footer(f"&L&8{foot[:200]}&R&8&P of &N")


def _table(page: Any, table: Table, styles: dict[str, Any]) -> None:  # noqa: ANN401 - the same
    page.freeze_panes(1, 1)
    for at, heading in enumerate(whole_headings(table)):
        page.write_string(0, at, heading, styles["head"])
        cells = [len(str(row[at])) for row in table.rows[:500] if isinstance(row[at], str)]
        page.set_column(at, at, min(max([9, *(n + 2 for n in cells)]), WIDEST))
    for number, row in enumerate(table.rows, start=1):
        for at, (cell, column) in enumerate(zip(row, table.columns, strict=True)):
            _cell(page, number, at, cell, column, styles)
    page.autofilter(0, 0, max(len(table.rows), 1), len(table.columns) - 1)


def _cell(page: Any, row: int, at: int, cell: Cell, column: Column, styles: dict[str, Any]) -> None:  # noqa: ANN401 - the same
    if isinstance(cell, str):
        fits(cell, f"row {row}, column {column.name}")
        page.write_string(row, at, cell)
    elif cell is not None:
        page.write_number(row, at, cell, styles.get(column.kind))


def headed(column: Column) -> str:
    """Return a heading with its unit."""
    return f"{column.heading} ({column.unit})" if column.unit else column.heading


def _chart(book: Any, table: Table, plot: Plot) -> Any:  # noqa: ANN401 - the same
    """Return a chart over the table's own cells: it follows them when somebody changes a number."""
    last = min(len(table.rows), plot.most) if plot.form == "bars" else len(table.rows)
    label, value = table.place(plot.label), table.place(plot.value)

    def span(column: int) -> list[Any]:
        # names of two levels where the column before tells what a row is by
        first = (
            column - 1 if plot.form == "bars" and column == label == 1 and table.columns[0].kind == "text" else column
        )
        return [table.id, 1, first, last, column]

    kinds = {"bars": "bar", "series": "line", "calibration": "scatter", "histogram": "column"}
    chart = book.add_chart({"type": kinds[plot.form]})
    drawn: dict[str, Any] = {"name": plot.title, "categories": span(label), "values": span(value)}
    if plot.form in ("bars", "histogram"):
        drawn |= {"fill": {"color": FILL}, "border": {"color": INK}, "gap": 60}
    elif plot.form == "calibration":
        drawn |= {"marker": {"type": "circle", "size": 7, "fill": {"color": INK}, "border": {"color": INK}}}
    else:
        drawn |= {"line": {"color": INK, "width": 1.25}}
    if plot.low and plot.high and plot.form in ("bars", "calibration"):
        ends = [_away(table, plot, last, sign) for sign in (1, -1)]
        errors = {"type": "custom", "plus_values": ends[0], "minus_values": ends[1], "line": {"color": INK}}
        drawn["y_error_bars"] = errors
    chart.add_series(drawn)
    if plot.form == "series":
        _expected(chart, table, plot, span)
    _axes(chart, table, plot, last)
    return chart


def _away(table: Table, plot: Plot, last: int, sign: int) -> list[float]:
    """Return how far an end of the interval is from the value, row by row."""
    at, end = table.place(plot.value), table.place(str(plot.high if sign > 0 else plot.low))
    return [sign * (float(row[end] or 0) - float(row[at] or 0)) for row in table.rows[:last]]


def _expected(chart: Any, table: Table, plot: Plot, span: Any) -> None:  # noqa: ANN401 - the same
    for name, style in (("expected", "solid"), (plot.low, "dash"), (plot.high, "dash")):
        if name:
            chart.add_series(
                {
                    "name": headed(table.columns[table.place(name)]),
                    "categories": span(table.place(plot.label)),
                    "values": span(table.place(name)),
                    "line": {"color": FILL, "width": 1.5, "dash_type": style},
                }
            )


def _axes(chart: Any, table: Table, plot: Plot, rows: int) -> None:  # noqa: ANN401 - the same
    share = table.columns[table.place(plot.value)].kind == "share"
    level = f", {100 * plot.level:g} % each where chances are true" if plot.level else ""
    values = {
        "name": plot.axis + level,
        "num_format": "0%" if share else "0",
        "min": 0,
        "major_gridlines": {"visible": True, "line": {"color": FAINT}},
    }
    names: dict[str, Any] = {"name": headed(table.columns[table.place(plot.label)])}
    if plot.form == "bars":
        names = {"reverse": True, "crossing": "max", "interval_unit": 1}  # the first on top, every one by its name
    elif plot.form == "calibration":
        names = {"name": "chance that was said", "num_format": "0%", "min": 0, "max": 1}
        values |= {"max": 1}
    chart.set_title({"name": plot.title, "name_font": {"size": 11}})
    chart.set_legend({"none": True} if plot.form != "series" else {"position": "bottom"})
    lying = plot.form == "bars"  # where the values' axis is x
    chart.set_x_axis(values if lying else names)
    chart.set_y_axis(names if lying else values)
    chart.set_size({"width": 680, "height": max(360, 110 + 22 * rows) if plot.form == "bars" else 420})
