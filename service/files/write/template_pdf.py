"""A drilling template at full size, on as many sheets of A4 or Letter as it takes: they overlap, and say so themselves."""

from __future__ import annotations

import io
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from service.core.drawing.laid import Laid
from service.core.drawing.lay import Manner, lay
from service.core.drawing.shapes import Template
from service.files.write import fonts
from service.files.write.pdf_view import Pen

Size = tuple[float, float]
EDGE, STRIP, OVERLAP = 8.0, 30.0, 20.0
"""Paper no printer reaches, the strip of words under a tile, and how far tiles overlap (mm)."""
BAR = 100.0
MEASURE_ME = "measure me: 100 mm"
CROSS, SPACING = 6.0, 60.0
"""Half of a registration cross, and how far apart they stand along an overlap (mm)."""
SMALL, TEXT, LARGE = 7.0, 9.0, 14.0
"""Sizes of letters (points)."""
MAP = 30.0
"""How wide the map of a template's sheets is drawn (mm)."""


@dataclass(frozen=True)
class Tile:
    """One sheet's window onto a template: row and column from the upper left, and its edges in the template's mm."""

    row: int
    column: int
    left: float
    right: float
    low: float
    high: float


@dataclass(frozen=True)
class Mark:
    """A registration cross in the template's mm, with its letter."""

    letter: str
    x: float
    y: float


def write_template(
    templates: Sequence[Template], heading: str, cautions: Sequence[str], *, letter: bool = False
) -> bytes:
    """Return the PDF: what to do before drilling, then each template's sheets, row by row. The heading may be any name."""
    fonts.register()
    out = io.BytesIO()
    size = LETTER if letter else A4
    canvas = Canvas(out, pagesize=size, invariant=1, pageCompression=1)
    canvas.setTitle(f"Drilling template: {heading}")
    canvas.setSubject("Full size: print at 100 %, measure the bar on every sheet")
    laid = [lay(template.view, 1.0, Manner(fonts.written, tight=True)) for template in templates]
    sheets = [_turned(one, size) for one in laid]
    _first(canvas, size, heading, cautions, [(t, found) for t, (found, _) in zip(templates, sheets, strict=True)])
    for template, one, (found, turned) in zip(templates, laid, sheets, strict=True):
        for n, tile in enumerate(found):
            canvas.setPageSize(turned)
            if n == 0:
                canvas.bookmarkPage(template.name)
                canvas.addOutlineEntry(fonts.written(template.name), template.name, level=0)
            _sheet(canvas, template, one, tile, found)
    canvas.save()
    return out.getvalue()


def tiles(laid: Laid, wide: float, high: float) -> list[Tile]:
    """Return the windows of a template's sheets, row by row from the upper left, neighbours overlapping."""
    left, right, low, top = laid.box
    columns = _count(right - left, wide)
    rows = _count(top - low, high)
    across, down = wide - OVERLAP, high - OVERLAP
    spare = (columns * across + OVERLAP - (right - left)) / 2, (rows * down + OVERLAP - (top - low)) / 2
    return [
        Tile(
            row, column, left - spare[0] + column * across, left - spare[0] + column * across + wide,
            top + spare[1] - row * down - high, top + spare[1] - row * down,
        )
        for row in range(rows)
        for column in range(columns)
    ]  # fmt: skip


def _turned(laid: Laid, size: Size) -> tuple[list[Tile], Size]:
    """Return the tiles of a template and the page, upright or on its side: whichever takes fewer sheets, upright if equal."""
    choices = [
        (tiles(laid, wide / mm - 2 * EDGE, high / mm - 2 * EDGE - STRIP), (wide, high))
        for wide, high in (size, size[::-1])
    ]
    return min(choices, key=lambda choice: len(choice[0]))


def _count(length: float, sheet: float) -> int:
    return max(math.ceil((length - OVERLAP) / (sheet - OVERLAP)), 1)


def marks(found: Sequence[Tile]) -> list[Mark]:
    """Return the crosses in the middle of every overlap, lettered in order; each stands on every sheet that shows it."""
    rows, columns = max(t.row for t in found) + 1, max(t.column for t in found) + 1
    at = {(t.row, t.column): t for t in found}
    places: list[tuple[float, float]] = []
    for row in range(rows):
        tile = at[row, 0]
        places += [
            (at[row, column].left + OVERLAP / 2, y) for column in range(1, columns) for y in _along(tile.low, tile.high)
        ]
    for row in range(1, rows):
        for column in range(columns):
            tile = at[row, column]
            places += [(x, tile.high - OVERLAP / 2) for x in _along(tile.left, tile.right)]
    return [Mark(_letter(n), x, y) for n, (x, y) in enumerate(dict.fromkeys(places))]


def _along(low: float, high: float) -> Iterator[float]:
    """Give places for crosses along an overlap, clear of the corners where four sheets meet."""
    inner = high - low - 3 * OVERLAP
    count = max(int(inner / SPACING), 1)
    for n in range(count + 1):
        yield low + 1.5 * OVERLAP + inner * n / count


def _letter(n: int) -> str:
    """Return A to Z, then AA and so on.

    >>> [_letter(n) for n in (0, 25, 26)]
    ['A', 'Z', 'AA']
    """
    return (chr(64 + n // 26) if n >= 26 else "") + chr(65 + n % 26)  # noqa: PLR2004 - letters of the alphabet


def _sheet(canvas: Canvas, template: Template, laid: Laid, tile: Tile, found: Sequence[Tile]) -> None:
    """Draw one tile: the template through its window, crosses, the strip under it."""
    canvas.saveState()
    x, y = EDGE * mm, (EDGE + STRIP) * mm
    canvas.setLineWidth(0.3)
    canvas.rect(x, y, (tile.right - tile.left) * mm, (tile.high - tile.low) * mm)
    window = canvas.beginPath()
    window.rect(x, y, (tile.right - tile.left) * mm, (tile.high - tile.low) * mm)
    canvas.clipPath(window, stroke=0, fill=0)
    canvas.translate(x - tile.left * mm, y - tile.low * mm)
    Pen(canvas, laid, mm, 1.0, (fonts.SANS, fonts.BOLD)).draw()
    _crosses(canvas, tile, marks(found))
    canvas.restoreState()
    _strip(canvas, template, tile, found)
    canvas.showPage()


def _crosses(canvas: Canvas, tile: Tile, every: Sequence[Mark]) -> None:
    canvas.setDash()
    canvas.setStrokeGray(0.0)
    canvas.setFillGray(0.0)
    canvas.setLineWidth(0.2 * mm)
    canvas.setFont(fonts.BOLD, SMALL)
    for mark in every:
        if tile.left <= mark.x <= tile.right and tile.low <= mark.y <= tile.high:
            canvas.line((mark.x - CROSS) * mm, mark.y * mm, (mark.x + CROSS) * mm, mark.y * mm)
            canvas.line(mark.x * mm, (mark.y - CROSS) * mm, mark.x * mm, (mark.y + CROSS) * mm)
            canvas.drawString((mark.x + 1.0) * mm, (mark.y + 1.0) * mm, mark.letter)


def _strip(canvas: Canvas, template: Template, tile: Tile, found: Sequence[Tile]) -> None:
    """Set the words under a tile: what it is, the bar, which way round."""
    rows, columns = max(t.row for t in found) + 1, max(t.column for t in found) + 1
    x, y = EDGE * mm, EDGE * mm
    canvas.setFillGray(0.0)
    sheet = f"sheet {tile.row * columns + tile.column + 1} of {rows * columns}"
    if rows * columns > 1:
        sheet += f" (row {tile.row + 1}, column {tile.column + 1})"
    canvas.setFont(fonts.BOLD, TEXT)
    canvas.drawString(x, y + 25.5 * mm, fonts.written(f"{template.name}: {sheet}"))
    canvas.setFont(fonts.SANS, SMALL)
    for n, line in enumerate(template.lines):
        canvas.drawString(x, y + (21.8 - 3.4 * n) * mm, fonts.written(line))
    bar(canvas, x + 2 * mm, y + 3 * mm)
    _compass(canvas, template, canvas._pagesize[0] - (EDGE + 28) * mm, y + 4 * mm)  # noqa: SLF001 - it has no other name


def bar(canvas: Canvas, x: float, y: float, *, upright: bool = False) -> None:
    """Draw the bar that is to be measured: 100 mm between its end lines."""
    canvas.saveState()
    canvas.translate(x, y)
    if upright:
        canvas.rotate(90)
    canvas.setDash()
    canvas.setStrokeGray(0.0)
    canvas.setLineWidth(0.25 * mm)
    canvas.line(0, 0, BAR * mm, 0)
    for n in range(11):
        tall = 4.0 if n in (0, 10) else 3.0 if n == 5 else 1.6  # noqa: PLR2004 - ends, middle, the rest
        canvas.line(n * BAR / 10 * mm, 0, n * BAR / 10 * mm, tall * mm)
    canvas.setFont(fonts.BOLD, TEXT)
    canvas.drawCentredString(BAR / 2 * mm, 4.6 * mm, MEASURE_ME)
    canvas.restoreState()


def _compass(canvas: Canvas, template: Template, x: float, y: float) -> None:
    """Draw an arrow to the upper edge with its word, and what is left and right."""
    canvas.setLineWidth(0.6 * mm)
    canvas.line(x, y, x, y + 11 * mm)
    canvas.line(x, y + 11 * mm, x - 2.4 * mm, y + 7 * mm)
    canvas.line(x, y + 11 * mm, x + 2.4 * mm, y + 7 * mm)
    canvas.setFont(fonts.BOLD, LARGE if len(template.up) < 3 else TEXT)  # noqa: PLR2004 - UP is short
    canvas.drawCentredString(x, y + 12.5 * mm, template.up)
    canvas.setFont(fonts.SANS, SMALL)
    canvas.drawRightString(x - 3 * mm, y + 2 * mm, template.left)
    canvas.drawString(x + 3 * mm, y + 2 * mm, template.right)


def _first(
    canvas: Canvas, size: Size, heading: str, cautions: Sequence[str],
    sheets: Sequence[tuple[Template, list[Tile]]],
) -> None:  # fmt: skip
    """Draw the first page: heading, what to do before drilling, both bars, and a map of the sheets that follow."""
    canvas.bookmarkPage("before")
    canvas.addOutlineEntry("Before you drill", "before", level=0)
    left, right, y = (EDGE + 6) * mm, size[0] - (EDGE + 6) * mm, size[1] - (EDGE + 12) * mm
    y = _paragraph(canvas, f"Drilling template: {heading}", (left, right, y), fonts.BOLD, LARGE) - 3 * mm
    y = _paragraph(canvas, "Before you drill", (left, right, y), fonts.BOLD, TEXT + 2) - 1 * mm
    for n, caution in enumerate(cautions, start=1):
        y = _paragraph(canvas, f"{n}. {caution}", (left, right, y), fonts.SANS, TEXT) - 1.4 * mm
    if fonts.lacking(heading):
        y = _paragraph(canvas, fonts.FALLBACK, (left, right, y), fonts.SANS, SMALL)
    base = (EDGE + 14) * mm
    bar(canvas, left, base)
    bar(canvas, right - 2 * mm, base, upright=True)
    for n, (template, found) in enumerate(sheets):
        _map(canvas, template, found, left + n * (MAP + 12) * mm, base + 26 * mm)
    canvas.showPage()


def _paragraph(canvas: Canvas, text: str, place: tuple[float, float, float], face: str, size: float) -> float:
    """Set a text between left and right from y down, broken where it must be; return where the next one begins."""
    left, right, y = place
    canvas.setFont(face, size)
    line = ""
    for word in _broken(fonts.written(text), right - left, face, size):
        joined = f"{line} {word}".strip()
        if line and fonts.width(joined, size, face) > right - left:
            canvas.drawString(left, y, line)
            y -= size * 1.3
            line = word
        else:
            line = joined
    canvas.drawString(left, y, line)
    return y - size * 1.3


def _broken(text: str, room: float, face: str, size: float) -> Iterator[str]:
    """Give the words of a text, those wider than a line in pieces."""
    for word in text.split():
        piece = ""
        for char in word:
            if piece and fonts.width(piece + char, size, face) > room:
                yield piece
                piece = ""
            piece += char
        yield piece


def _map(canvas: Canvas, template: Template, found: Sequence[Tile], x: float, y: float) -> None:
    """Draw how the sheets of a template lie, numbered."""
    wide = max(t.right for t in found) - min(t.left for t in found)
    left, low = min(t.left for t in found), min(t.low for t in found)
    factor = MAP * mm / max(wide, max(t.high for t in found) - low)
    canvas.setFont(fonts.BOLD, SMALL - 1)
    canvas.drawString(x, y - 4 * mm, template.short)
    canvas.setLineWidth(0.3)
    for n, tile in enumerate(found, start=1):
        a, b = x + (tile.left - left) * factor, y + (tile.low - low) * factor
        w, h = (tile.right - tile.left) * factor, (tile.high - tile.low) * factor
        canvas.rect(a, b, w, h)
        canvas.drawCentredString(a + w / 2, b + h / 2, str(n))
