"""A view into a box of a PDF page, at a scale of the series: vector lines, letters embedded, readable in grey."""

from __future__ import annotations

from typing import NamedTuple

from reportlab.lib.colors import HexColor, white
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from service.core.drawing.ink import CLASH_WEIGHT, DOT_MM, HATCH_WEIGHT, INKS, TICK_MM, hatching, ordered
from service.core.drawing.laid import Laid, Measure, Text
from service.core.drawing.lay import Manner, fitted, lay
from service.core.drawing.shapes import Layer, Outline, Point, View
from service.files.write import fonts as letters

Fonts = tuple[str, str]
Box = tuple[float, float, float, float]
"""x, y, width, height in points, from the page's lower left corner."""
FOOT_GAP = 1.0
"""From what is measured to its extension line (mm of paper)."""


class Drawn(NamedTuple):
    """What was drawn: the N of its scale 1:N, and the box it really takes (points)."""

    one_to: float
    box: Box


def draw_view(
    canvas: Canvas, view: View, box: Box, *, scale: float | None = None, fonts: Fonts = (letters.SANS, letters.BOLD)
) -> Drawn:
    """Draw a view into a box (points), centred in it; nothing is drawn outside.

    `scale`: the N of 1:N; without one the largest of the series at which all of it fits. Where it does not fit at the
    scale asked for (or at any), all of it is made smaller, words too, and the true N comes back.
    """
    letters.register()
    wide, high = box[2] / mm, box[3] / mm
    laid = (
        fitted(view, wide, high, letters.written) if scale is None else lay(view, 1.0 / scale, Manner(letters.written))
    )
    shrink = min(1.0, wide / laid.size[0], high / laid.size[1])
    if shrink < 1.0:  # its title must not say the scale it was laid out for
        laid = lay(view, laid.scale, Manner(letters.written, told=laid.one_to / shrink, short=laid.short))
        shrink = min(1.0, wide / laid.size[0], high / laid.size[1])
    factor = laid.scale * mm * shrink
    x = box[0] + (box[2] - laid.size[0] * mm * shrink) / 2
    y = box[1] + (box[3] - laid.size[1] * mm * shrink) / 2
    canvas.saveState()
    canvas.translate(x - laid.box[0] * factor, y - laid.box[2] * factor)
    Pen(canvas, laid, factor, shrink, fonts).draw()
    canvas.restoreState()
    return Drawn(laid.one_to / shrink, (x, y, laid.size[0] * mm * shrink, laid.size[1] * mm * shrink))


class Pen:
    """Draws a laid view: points of the view in mm times `factor` are points of the page."""

    def __init__(self, canvas: Canvas, laid: Laid, factor: float, shrink: float, fonts: Fonts) -> None:
        self.canvas, self.laid, self.factor, self.fonts = canvas, laid, factor, fonts
        self.paper = mm * shrink

    def draw(self) -> None:
        """Draw all of it about the canvas' origin."""
        for outline in ordered(self.laid.view):
            self._outline(outline)
        for disc in self.laid.view.discs:
            self._ink(disc.layer)
            x, y = self._at(disc.centre)
            self.canvas.circle(x, y, disc.radius * self.factor, stroke=1, fill=0)
        for measure in self.laid.measures:
            self._measure(measure)
        self._ink("note")
        for leader in self.laid.leaders:
            self._line(leader.start, leader.end)
            x, y = self._at(leader.end)
            self.canvas.setFillColor(HexColor(INKS["note"].stroke))
            self.canvas.circle(x, y, DOT_MM * self.paper, stroke=0, fill=1)
        for ring in self.laid.rings:
            x, y = self._at(ring.centre)
            self.canvas.setFillColor(white)
            self.canvas.circle(x, y, ring.radius * self.factor, stroke=1, fill=1)
        for text in self.laid.texts:
            self._text(text)

    def _at(self, point: Point) -> Point:
        return point[0] * self.factor, point[1] * self.factor

    def _ink(self, layer: Layer) -> None:
        ink = INKS[layer]
        self.canvas.setStrokeColor(HexColor(ink.stroke))
        self.canvas.setLineWidth(ink.weight * self.paper)
        self.canvas.setDash([dash * self.paper for dash in ink.dashes])

    def _line(self, start: Point, end: Point) -> None:
        self.canvas.line(*self._at(start), *self._at(end))

    def _outline(self, outline: Outline) -> None:
        self._ink(outline.layer)
        path = self.canvas.beginPath()
        path.moveTo(*self._at(outline.points[0]))
        for point in outline.points[1:]:
            path.lineTo(*self._at(point))
        fill = INKS[outline.layer].fill if outline.closed else None
        if outline.closed:
            path.close()
        if fill is not None:
            self.canvas.setFillColor(HexColor(fill))
        self.canvas.drawPath(path, stroke=1, fill=int(fill is not None))
        self.canvas.setDash()
        self.canvas.setLineWidth((CLASH_WEIGHT if outline.layer == "clash" else HATCH_WEIGHT) * self.paper)
        for stroke in hatching(outline, self.laid.scale):
            self._line(*stroke)

    def _measure(self, measure: Measure) -> None:
        self._ink("dimension")
        self._line(*measure.line)
        tick = TICK_MM / self.laid.scale
        for x, y in measure.line:
            self._line((x - tick, y - tick), (x + tick, y + tick))
        gap = FOOT_GAP / self.laid.scale
        for start, end in measure.feet:
            far = max(abs(end[0] - start[0]), abs(end[1] - start[1]))
            if far > gap:
                share = gap / far
                self._line((start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share), end)
        self._text(measure.figure)

    def _text(self, text: Text) -> None:
        canvas = self.canvas
        if text.blank:
            left, right, low, high = text.box
            canvas.setFillColor(white)
            canvas.rect(
                *self._at((left, low)), (right - left) * self.factor, (high - low) * self.factor, stroke=0, fill=1
            )
        canvas.saveState()
        canvas.translate(*self._at(text.at))
        if text.turned:
            canvas.rotate(90)
        canvas.setFillColor(HexColor(INKS["clash"].stroke if text.layer == "clash" else "#111111"))
        canvas.setFont(self.fonts[int(text.bold)], text.size * self.factor)
        if text.anchor == "middle":
            canvas.drawCentredString(0, 0, text.text)
        else:
            canvas.drawString(0, 0, text.text)
        canvas.restoreState()
