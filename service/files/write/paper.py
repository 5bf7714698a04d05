"""The frame of every sheet: a thin border, a title strip at the foot, headings that become bookmarks, quiet tables.

Readable in grey; letters embedded; the same content gives the same bytes.
"""

from __future__ import annotations

import io
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any
from xml.sax.saxutils import escape

from reportlab.lib.colors import HexColor
from reportlab.lib.enums import TA_RIGHT
from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import (
    BaseDocTemplate,
    CondPageBreak,
    Flowable,
    Frame,
    PageTemplate,
    Paragraph,
    Spacer,
    Table,
    TableStyle,
)

from service.files.write import fonts

INK, GREY, PALE = HexColor("#111111"), HexColor("#555555"), HexColor("#efefec")
EDGE, STRIP = 8 * mm, 12 * mm
BESIDE, ABOVE, BELOW = 9, 6, 4
"""Room between the border and what stands within (points)."""
HEADED = 48
"""A heading stands with this much behind it on the page (points)."""
BODY = ParagraphStyle(
    "body",
    fontName=fonts.SANS,
    bulletFontName=fonts.SANS,
    bulletFontSize=8,
    fontSize=7.8,
    leading=9.8,
    textColor=INK,
    splitLongWords=1,
)
CELL = ParagraphStyle("cell", parent=BODY, fontSize=7.2, leading=8.8)
RIGHT = ParagraphStyle("right", parent=CELL, alignment=TA_RIGHT)
HEAD = ParagraphStyle("head", parent=CELL, fontName=fonts.BOLD, textColor=GREY)
HEAD_RIGHT = ParagraphStyle("head right", parent=HEAD, alignment=TA_RIGHT)
SECTION = ParagraphStyle(
    "section", parent=BODY, fontName=fonts.BOLD, fontSize=9.2, leading=11, spaceBefore=6, spaceAfter=2.5
)
TITLE = ParagraphStyle("title", parent=BODY, fontName=fonts.BOLD, fontSize=15, leading=18)
LEAD = ParagraphStyle("lead", parent=BODY, fontName=fonts.BOLD, fontSize=9.5, leading=13)
ITEM = ParagraphStyle("item", parent=BODY, leftIndent=15, bulletIndent=0, spaceAfter=1)
BOLD_CELL = ParagraphStyle("bold cell", parent=CELL, fontName=fonts.BOLD)
BOLD_RIGHT = ParagraphStyle("bold right", parent=RIGHT, fontName=fonts.BOLD)


@dataclass(frozen=True)
class Foot:
    """What stands in the title strip of every page: what the sheet is, of what, and where it comes from."""

    kind: str
    subject: str
    origin: str


def text(words: str, style: ParagraphStyle = BODY, *, bullet: str | None = None) -> Paragraph:
    """Return words as they stand: no mark-up of theirs counts, and no letter of theirs is lost."""
    return Paragraph(escape(fonts.written(words)), style, bulletText=bullet)


def section(words: str) -> Paragraph:
    """Return a heading, which becomes a bookmark."""
    return text(words, SECTION)


def items(lines: Sequence[str], *, numbered: bool = False, boxes: bool = False) -> list[Flowable]:
    """Return lines as a list: with dots, numbers, or boxes to tick."""
    signs = (
        [f"{n}." for n in range(1, len(lines) + 1)]
        if numbered
        else ["\N{BALLOT BOX}" if boxes else "\N{EN DASH}"] * len(lines)
    )
    return [text(line, ITEM, bullet=sign) for line, sign in zip(lines, signs, strict=True)]


def table(
    headings: Sequence[str],
    rows: Sequence[Sequence[str | Flowable]],
    widths: Sequence[float],
    bold: Sequence[int] = (),
    *,
    headed: bool = True,
) -> Table:
    """Return a table: headings that begin with `>` stand to the right, as their cells do; repeated on every page.

    `widths` are shares of the frame's width; rows in `bold` are set bold. Not `headed`: under another table, whose headings
    are its own too.
    """
    right = [heading.startswith(">") for heading in headings]
    head = [[text(h.lstrip(">"), HEAD_RIGHT if r else HEAD) for h, r in zip(headings, right, strict=True)]] * headed
    styles = {(False, False): CELL, (False, True): BOLD_CELL, (True, False): RIGHT, (True, True): BOLD_RIGHT}
    body = [
        [
            cell if isinstance(cell, Flowable) else text(cell, styles[r, n in bold])
            for cell, r in zip(row, right, strict=True)
        ]
        for n, row in enumerate(rows)
    ]
    style = [
        ("LINEBELOW", (0, 0), (-1, -1), 0.25, HexColor("#bbbbbb")),
        *[("LINEBELOW", (0, 0), (-1, 0), 0.7, INK)] * headed,
        ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LEFTPADDING", (0, 0), (-1, -1), 2),
        ("RIGHTPADDING", (0, 0), (-1, -1), 4),
        ("TOPPADDING", (0, 0), (-1, -1), 0.5),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 1.3),
        *(("BACKGROUND", (0, n + headed), (-1, n + headed), PALE) for n in bold),
    ]
    return Table(
        [*head, *body],
        colWidths=[f"{100 * w:.2f}%" for w in widths],
        repeatRows=int(headed),
        style=TableStyle(style),
        hAlign="LEFT",
    )


def gap(points: float = 4) -> Spacer:
    """Return room between two things."""
    return Spacer(1, points)


def build(story: Sequence[Flowable], foot: Foot, *, letter: bool) -> bytes:
    """Return the PDF: titled, bookmarked, each page with its number of all."""
    fonts.register()
    out = io.BytesIO()
    size = LETTER if letter else A4
    document = _Document(
        out, pagesize=size, title=fonts.written(f"{foot.kind}: {foot.subject}"), subject=fonts.written(foot.origin),
        author="", creator="transom ledger", invariant=1, pageCompression=1,
    )  # fmt: skip
    frame = Frame(
        EDGE,
        EDGE + STRIP,
        size[0] - 2 * EDGE,
        size[1] - 2 * EDGE - STRIP,
        leftPadding=BESIDE,
        rightPadding=BESIDE,
        topPadding=ABOVE,
        bottomPadding=BELOW,
    )
    document.addPageTemplates([PageTemplate("sheet", [frame])])
    document.build(list(_kept(story)), canvasmaker=lambda *given, **named: _Numbered(foot, *given, **named))
    return out.getvalue()


def room(*, letter: bool) -> tuple[float, float]:
    """Return width and height of what a page holds (points)."""
    wide, high = LETTER if letter else A4
    return wide - 2 * EDGE - 2 * BESIDE, high - 2 * EDGE - STRIP - ABOVE - BELOW


def _kept(story: Sequence[Flowable]) -> Iterator[Flowable]:
    """Let no heading stand alone at the foot of a page; a table behind it may still run over pages."""
    for one in story:
        if isinstance(one, Paragraph) and one.style.name == SECTION.name:
            yield CondPageBreak(HEADED)
        yield one


class _Document(BaseDocTemplate):  # type: ignore[misc]  # the library has no types
    """A document whose titles and section headings are bookmarks."""

    def afterFlowable(self, flowable: Flowable) -> None:  # noqa: N802 - the library's name
        if isinstance(flowable, Paragraph) and flowable.style.name in (TITLE.name, SECTION.name):
            words = flowable.getPlainText()
            key = f"{self.page}-{words}"
            self.canv.bookmarkPage(key)
            self.canv.addOutlineEntry(words, key, level=0)


class _Numbered(Canvas):  # type: ignore[misc]  # the library has no types
    """A canvas that waits with its pages until it knows how many there are."""

    def __init__(self, foot: Foot, *given: Any, **named: Any) -> None:  # noqa: ANN401 - the library's own arguments
        super().__init__(*given, **named)
        self._foot = foot
        self._pages: list[dict[str, Any]] = []

    def showPage(self) -> None:  # noqa: N802 - the library's name
        self._pages.append(dict(self.__dict__))
        self._startPage()

    def save(self) -> None:
        count = len(self._pages)
        for number, page in enumerate(self._pages, start=1):
            self.__dict__.update(page)
            self._strip(number, count)
            super().showPage()
        super().save()

    def _strip(self, number: int, count: int) -> None:
        """Draw the border and the title strip: three boxes, of which the first gives way to the others."""
        wide, high = self._pagesize
        self.setStrokeColor(INK)
        self.setLineWidth(0.8)
        self.rect(EDGE, EDGE, wide - 2 * EDGE, high - 2 * EDGE)
        self.setLineWidth(0.4)
        self.line(EDGE, EDGE + STRIP, wide - EDGE, EDGE + STRIP)
        cuts = (EDGE, EDGE + 0.55 * (wide - 2 * EDGE), wide - EDGE - 26 * mm, wide - EDGE)
        for x in cuts[1:-1]:
            self.line(x, EDGE, x, EDGE + STRIP)
        for x, right, label, words in (
            (cuts[0], cuts[1], self._foot.kind, self._foot.subject),
            (cuts[1], cuts[2], "made from", self._foot.origin),
            (cuts[2], cuts[3], "sheet", f"{number} of {count}"),
        ):
            self.setFillColor(GREY)
            self.setFont(fonts.SANS, 6)
            self.drawString(x + 4, EDGE + STRIP - 9, fonts.written(label))
            self.setFillColor(INK)
            lines = _two_lines(fonts.written(words), right - x - 8)
            for n, line in enumerate(lines):
                self.setFont(fonts.SANS, 7.4)
                self.drawString(x + 4, EDGE + STRIP - 19 - 9 * n, line)


def _two_lines(words: str, wide: float, size: float = 7.4) -> list[str]:
    """Return the words on two lines at most, the last ended by dots where more was to come: the page says it in full."""
    lines: list[str] = []
    rest = words
    while rest and len(lines) < 2:  # noqa: PLR2004 - two lines have room
        fit = len(rest)
        while fonts.width(rest[:fit], size) > wide:
            fit -= 1
        if fit < len(rest):
            space = rest.rfind(" ", 1, fit + 1)
            fit = space if space > fit // 2 else fit
        lines.append(rest[:fit].strip())
        rest = rest[fit:].strip()
    if rest:
        last = lines[-1]
        while fonts.width(last + " ...", size) > wide:
            last = last[:-1]
        lines[-1] = last + " ..."
    return lines
