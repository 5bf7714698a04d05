"""Whether words stand on each other or run off the sheet: by a layout's own boxes, and by a printed page."""

from __future__ import annotations

import io
from itertools import combinations

import pypdfium2
from pypdfium2 import raw
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from service.core.drawing import View
from service.core.drawing.laid import Laid
from service.core.drawing.place import Rect
from service.files.write.pdf_view import draw_view

HAIR = 1e-6
TOUCH = 0.3
"""Letters may come so near in points that their boxes touch: a tenth of a mm."""


def words(laid: Laid) -> list[tuple[str, Rect]]:
    found = [(text.text, text.box) for text in laid.texts if text.text]
    return found + [(measure.figure.text, measure.figure.box) for measure in laid.measures]


def meeting(laid: Laid) -> list[tuple[str, str]]:
    """Return every pair of words that touch."""
    return [
        (one, two)
        for (one, a), (two, b) in combinations(words(laid), 2)
        if a[0] < b[1] - HAIR and b[0] < a[1] - HAIR and a[2] < b[3] - HAIR and b[2] < a[3] - HAIR
    ]


def cut_off(laid: Laid) -> list[str]:
    """Return the words that reach beyond the sheet."""
    left, right, low, high = laid.box
    return [
        t
        for t, b in words(laid)
        if b[0] < left - HAIR or b[1] > right + HAIR or b[2] < low - HAIR or b[3] > high + HAIR
    ]


def printed(view: View, wide: float, high: float) -> bytes:
    """Return a page of so many mm with the view on it."""
    out = io.BytesIO()
    canvas = Canvas(out, pagesize=(wide * mm, high * mm), invariant=1)
    draw_view(canvas, view, (0.0, 0.0, wide * mm, high * mm))
    canvas.save()
    return out.getvalue()


def printed_over(data: bytes) -> list[tuple[Rect, Rect]]:
    """Return every pair of lines of letters on the first page that cover each other, and each that leaves the page."""
    with pypdfium2.PdfDocument(data) as document:
        page = document[0]
        wide, high = page.get_size()
        boxes = [one.get_bounds() for one in page.get_objects(filter=[raw.FPDF_PAGEOBJ_TEXT])]
    rects = [(left, right, low, top) for left, low, right, top in boxes]
    over = [
        (a, b)
        for a, b in combinations(rects, 2)
        if a[0] < b[1] - TOUCH and b[0] < a[1] - TOUCH and a[2] < b[3] - TOUCH and b[2] < a[3] - TOUCH
    ]
    out = [(r, r) for r in rects if r[0] < -TOUCH or r[1] > wide + TOUCH or r[2] < -TOUCH or r[3] > high + TOUCH]
    return over + out
