"""A report on paper, A4: what it says, what was counted and what was not, and each plot with its table."""

from __future__ import annotations

import io
from collections.abc import Iterator
from typing import Any

from reportlab.lib.colors import HexColor
from reportlab.lib.enums import TA_RIGHT
from reportlab.lib.pagesizes import A4
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import CondPageBreak, Flowable, Image, KeepTogether, Paragraph, SimpleDocTemplate, Spacer
from reportlab.platypus import Table as Grid
from reportlab.platypus.tables import TableStyle

from service.core.report import Cell, Plot, Report, Table, period
from service.files.write import fonts
from service.files.write.charts import DPI, chart
from service.files.write.report_words import cell_text, rest, shown_rows
from service.files.write.report_xlsx import headed

MARGIN, FOOT = 18 * mm, 12 * mm
WIDE = A4[0] - 2 * MARGIN
INK, FAINT, LINE = HexColor("#111111"), HexColor("#555555"), HexColor("#BBBBBB")
SMALLER = 0.86
"""Plots on paper, so that more of them stand beside their tables."""
KEPT = 16
"""Rows of a table that is not broken over two pages."""
MOST_BEHIND = 8
"""Rows of a table that stands on paper only because a plot is drawn from it."""


def _style(size: float, lead: float, **more: Any) -> ParagraphStyle:  # noqa: ANN401 - reportlab has no types
    said = {"fontName": fonts.SANS, "fontSize": size, "leading": lead, "textColor": INK, **more}
    return ParagraphStyle(f"{size}-{sorted(more)}", **said)


TITLE = _style(15, 19, fontName=fonts.BOLD)
HEAD = _style(10.5, 14, fontName=fonts.BOLD, spaceBefore=10, spaceAfter=3)
BODY = _style(8.5, 12)
POINT = _style(8.5, 12, leftIndent=8, bulletIndent=0)
NOTE = _style(7.5, 10, textColor=FAINT)
NOTE_POINT = _style(7.5, 10, textColor=FAINT, leftIndent=8, bulletIndent=0)
CELL = _style(7.5, 9.5)
RIGHT = _style(7.5, 9.5, alignment=TA_RIGHT)
CELL_HEAD = _style(7.5, 9.5, fontName=fonts.BOLD)
RIGHT_HEAD = _style(7.5, 9.5, fontName=fonts.BOLD, alignment=TA_RIGHT)


def paper(report: Report) -> bytes:
    """Return the report as PDF with embedded letters; the same report gives the same bytes."""
    fonts.register()
    out = io.BytesIO()
    document = SimpleDocTemplate(
        out, pagesize=A4, leftMargin=MARGIN, rightMargin=MARGIN, topMargin=MARGIN, bottomMargin=MARGIN + FOOT,
        title=report.title, author=report.software, subject=f"as of {report.as_of}", invariant=1,
    )  # fmt: skip

    def foot(canvas: Canvas, _document: object) -> None:
        canvas.setFont(fonts.SANS, 7.5)
        canvas.setFillColor(FAINT)
        canvas.drawString(MARGIN + 6, FOOT, fonts.written(f"{report.title} · as of {report.as_of} · {report.software}"))
        canvas.drawRightString(A4[0] - MARGIN - 6, FOOT, str(canvas.getPageNumber()))

    document.build(list(_story(report)), onFirstPage=foot, onLaterPages=foot)
    return out.getvalue()


def _story(report: Report) -> Iterator[Flowable]:
    yield _words(report.title, TITLE)
    yield _words(f"As of {report.as_of}, {period(report.first, report.last)}", NOTE)
    yield Spacer(1, 4 * mm)
    yield from (_words(line, POINT, "•") for line in report.findings)
    yield _words("What is counted", HEAD)
    yield _counted(report)
    for table in report.tables:
        plots = [plot for plot in report.plots if plot.table == table.id]
        if table.shown or plots:
            yield from _part(report, table, plots)
    yield _words("Sources", HEAD)
    yield from (_words(line, NOTE_POINT, "•") for line in report.sources)
    yield _words(f"Catalogue: {report.catalogue or 'none loaded'}", NOTE)
    if any(fonts.lacking(str(cell)) for table in report.tables for row in table.rows for cell in row):
        yield _words(fonts.FALLBACK, NOTE)


def _counted(report: Report) -> Grid:
    rows: list[tuple[str, str]] = [(name, str(count)) for name, count in report.counts.items()]
    rows += list(report.filters.items())
    rows += [(f"left out: {one.what}", f"{one.count} ({one.why})") for one in report.left_out]
    grid = Grid(
        [[_words(a, CELL), _words(b, CELL)] for a, b in rows], colWidths=[60 * mm, WIDE - 66 * mm], hAlign="LEFT"
    )
    tight = [(name, (0, 0), (-1, -1), by) for name, by in (("LEFTPADDING", 0), ("TOPPADDING", 1), ("BOTTOMPADDING", 1))]
    grid.setStyle(TableStyle(tight))
    return grid


def _part(report: Report, table: Table, plots: list[Plot]) -> Iterator[Flowable]:
    head: list[Flowable] = [_words(table.title, HEAD)]
    if table.note:
        head.append(_words(table.note, NOTE))
    head += [_image(report, plot) for plot in plots]
    yield KeepTogether(head) if plots else CondPageBreak(45 * mm)
    if not plots:
        yield from head
    rows = shown_rows(table) if table.shown else table.rows[-MOST_BEHIND:]
    if not table.rows:
        yield _words("Nothing to show.", NOTE)
        return
    body: list[Flowable] = [Spacer(1, 1.5 * mm), _grid(table, rows)]
    left = len(table.rows) - len(rows)
    if left > 0:
        text = rest(table) if table.shown else f"the last {len(rows)} rows; {left} earlier ones are in the other files"
        body.append(_words(text, NOTE))
    yield from [KeepTogether(body)] if len(rows) <= KEPT else body


def _image(report: Report, plot: Plot) -> Image:
    found = Image(io.BytesIO(chart(report, plot, "png", titled=False)))
    scale = min(SMALLER * 72 / DPI, WIDE / found.imageWidth, 200 * mm / found.imageHeight)
    found.drawWidth, found.drawHeight = found.imageWidth * scale, found.imageHeight * scale
    found.hAlign = "LEFT"
    return found


def _grid(table: Table, rows: tuple[tuple[Cell, ...], ...]) -> Grid:
    heads = [_words(headed(column), CELL_HEAD if column.kind == "text" else RIGHT_HEAD) for column in table.columns]
    body = [
        [
            _words(cell_text(cell, column), CELL if column.kind == "text" else RIGHT)
            for cell, column in zip(row, table.columns, strict=True)
        ]
        for row in rows
    ]
    grid = Grid([heads, *body], colWidths=_widths(table, rows), repeatRows=1, hAlign="LEFT")
    grid.setStyle(
        TableStyle(
            [
                ("VALIGN", (0, 0), (-1, -1), "TOP"),
                ("VALIGN", (0, 0), (-1, 0), "BOTTOM"),
                ("LINEBELOW", (0, 0), (-1, 0), 0.6, INK),
                ("LINEBELOW", (0, 1), (-1, -1), 0.25, LINE),
                ("LEFTPADDING", (0, 0), (-1, -1), 0),
                ("RIGHTPADDING", (0, 0), (-1, -1), 6),
                ("TOPPADDING", (0, 0), (-1, -1), 1.5),
                ("BOTTOMPADDING", (0, 0), (-1, -1), 1.5),
            ]
        )
    )
    return grid


def _widths(table: Table, rows: tuple[tuple[Cell, ...], ...]) -> list[float]:
    """Return the columns' widths: as wide as what stands in them; where the paper is too narrow, text is broken."""
    wanted, least = [], []
    for at, column in enumerate(table.columns):
        cells = [fonts.written(cell_text(row[at], column)) for row in rows]
        heads = [fonts.width(word, 7.5, fonts.BOLD) for word in headed(column).split()]
        words = [
            fonts.width(word, 7.5) for cell in cells for word in (cell.split() if column.kind == "text" else [cell])
        ]
        least.append(max([*heads, *words]) + 9)
        wanted.append(max([*heads, *(fonts.width(cell, 7.5) for cell in cells)]) + 9)
    room = WIDE - 12
    over, give = sum(wanted) - room, sum(wanted) - sum(least)
    if over <= 0:
        return wanted
    if over <= give:  # columns of several words give way, in the measure of what they can
        return [wide - (wide - narrow) * over / give for wide, narrow in zip(wanted, least, strict=True)]
    return [narrow * room / sum(least) for narrow in least]


def _words(text: str, style: ParagraphStyle, bullet: str | None = None) -> Paragraph:
    safe = fonts.written(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return Paragraph(safe, style, bulletText=bullet)
