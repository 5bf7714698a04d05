"""Views in a PDF: true to scale by the page's own geometry, inside their box, their words to be read out again."""

from __future__ import annotations

import io

import pypdfium2
import pytest
from pypdf import PdfReader
from reportlab.lib.pagesizes import A4
from reportlab.lib.units import mm
from reportlab.pdfgen.canvas import Canvas

from service.core.drawing import View
from service.files.write.pdf_view import Drawn, draw_view
from tests.support.drawn import Case, random_case

HAIR = 0.5
BOX = (60.0, 200.0, 400.0, 500.0)


@pytest.fixture(scope="module")
def case() -> Case:
    return random_case(5)


def page(view: View, scale: float | None = None, box: tuple[float, float, float, float] = BOX) -> tuple[bytes, Drawn]:
    out = io.BytesIO()
    canvas = Canvas(out, pagesize=A4, invariant=1)
    done = draw_view(canvas, view, box, scale=scale)
    canvas.save()
    return out.getvalue(), done


def bounds(data: bytes) -> list[tuple[float, float, float, float]]:
    """Return left, bottom, right, top of everything on the page (points)."""
    with pypdfium2.PdfDocument(data) as document:
        return [one.get_bounds() for one in document[0].get_objects()]


def test_nothing_is_drawn_outside_its_box(case: Case) -> None:
    for view in case.views():
        data, _ = page(view)
        for left, low, right, high in bounds(data):
            assert left >= BOX[0] - HAIR
            assert low >= BOX[1] - HAIR
            assert right <= BOX[0] + BOX[2] + HAIR
            assert high <= BOX[1] + BOX[3] + HAIR


def test_the_shaft_is_as_long_on_paper_as_its_scale_says(case: Case) -> None:
    at = case.fit.placement
    assert at is not None
    for scale in (10.0, 15.0, 20.0):
        data, done = page(case.views()[0], scale, (20.0, 20.0, 2000.0, 2000.0))
        assert done.one_to == scale
        tall = {round((high - low) / mm * scale, 0) for _, low, _, high in bounds(data)}
        length = at.shaft_top_mm - at.shaft_bottom_mm
        stroke = 0.4 * scale  # bounds take in the line's own weight
        assert any(abs(one - length) <= stroke + 1 for one in tall)


def test_where_there_is_little_room_all_of_it_shrinks_and_the_true_scale_comes_back(case: Case) -> None:
    view = case.views()[0]
    box = (60.0, 200.0, 120.0, 120.0)
    data, done = page(view, 10.0, box)
    assert done.one_to > 10.0
    assert f"1:{done.one_to:.3g}" in PdfReader(io.BytesIO(data)).pages[0].extract_text()
    assert max(b[2] for b in bounds(data)) <= box[0] + box[2] + HAIR


def test_the_words_can_be_read_out_and_the_letters_travel_along(case: Case) -> None:
    data, _ = page(case.views()[0])
    text = PdfReader(io.BytesIO(data)).pages[0].extract_text()
    for word in ("From starboard", "lower bracket", "loaded waterline"):
        assert word in text
    assert b"/FontFile2" in data


def test_the_same_view_gives_the_same_bytes(case: Case) -> None:
    assert page(case.views()[1])[0] == page(case.views()[1])[0]
