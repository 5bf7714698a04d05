"""The fit sheet read back by other programs: text, letters, bookmarks, room. All boats invented."""

from __future__ import annotations

import io
from collections.abc import Iterator
from functools import cache
from typing import Any

import pypdf
import pypdfium2 as pdfium
import pytest

from service.core.answer import Answer
from service.core.answer.compose import Known, compose
from service.core.drawing.scene import scene
from service.core.drawing.views import views_of
from service.core.recall.fleet import Fleet
from service.files.read.messages import speak
from service.files.write import fonts
from service.files.write.paper import EDGE
from service.files.write.sheet_pdf import Sheet, write_sheet
from tests.support.boats import bench, boat

KNOWN = Known(bench(), Fleet.build([], {}), "test", speak)
WALL = {"kind": "rail", "aft_mm": [-100, 1500], "starboard_mm": [-1500, 1500], "height_mm": [350, 950]}
MANY = [
    {
        "kind": "staff",
        "aft_mm": [-400, -380],
        "starboard_mm": [600 + n, 610 + n],
        "height_mm": [1000 + 5 * n, 1200 + 5 * n],
    }
    for n in range(40)
]
MARK = "0123456789ab"


@cache
def plain() -> Answer:
    return compose(boat(contact={"name": "Hedda Lyngvik"}, boat={"model": "Corrin 31"}), None, KNOWN)


def sheet(answer: Answer, name: str = "Corrin 31", *, letter: bool = False, drawn: bool = True) -> bytes:
    best = answer.suggestions[0]
    views = views_of(scene(answer.form, best.fit, bench())) if drawn else ()
    return write_sheet(Sheet(answer, best, bench(), MARK, name, views, speak("en", "GB"), letter=letter))


def named(**contact: str) -> Answer:
    form = plain().form
    return plain().model_copy(
        update={"form": form.model_copy(update={"contact": form.contact.model_copy(update=contact)})}
    )


@cache
def usual() -> bytes:
    return sheet(plain())


def words(data: bytes) -> list[str]:
    return [" ".join(page.extract_text().split()) for page in pypdf.PdfReader(io.BytesIO(data)).pages]


def boxes(data: bytes) -> Iterator[tuple[int, tuple[float, float], list[tuple[float, float, float, float]]]]:
    """Yield each page's number, size and the boxes of its letters."""
    document = pdfium.PdfDocument(data)
    try:
        for number, page in enumerate(document):
            text = page.get_textpage()
            signs = text.get_text_range()
            found = [
                text.get_charbox(n, loose=False)
                for n in range(text.count_chars())
                if n < len(signs) and signs[n].strip()
            ]
            yield number, page.get_size(), found
            text.close()
            page.close()
    finally:
        document.close()


def test_a_sheet_says_what_a_fitter_needs() -> None:
    data = usual()
    pages = words(data)
    assert 2 <= len(pages) <= 4
    whole = " ".join(pages)
    best = plain().suggestions[0]
    c, p = best.configuration, best.fit.placement
    assert p is not None
    for said in (
        c.gear, c.lower, c.upper, c.shaft, "Hedda Lyngvik", f"{p.lower_height_mm:.0f}", f"{p.upper_height_mm:.0f}", "Before drilling",
        "plumb it athwartships", "After fitting", "Loose small parts", "What the owner supplies", "can sink a boat",
        f"GET /v1/answers/{MARK}", "seed 1", bench().version,
    ):  # fmt: skip
        assert said in whole, said
    for check in best.fit.checks:
        title = check.why.split(": ")[0]
        assert title[1:] in whole, title
    for line in best.fit.parts:
        assert line.code in whole


def test_letters_are_embedded_and_headings_are_bookmarks() -> None:
    reader = pypdf.PdfReader(io.BytesIO(usual()))
    assert reader.metadata is not None
    assert reader.metadata.title == "fit sheet: Corrin 31: " + str(plain().suggestions[0].configuration)
    marks = [one.title for one in reader.outline if not isinstance(one, list)]
    assert {"Cautions", "Checks: value, limit, and what is left", "Parts by carton"} <= set(marks)
    for page in reader.pages:
        resources: Any = page["/Resources"]
        for font in resources["/Font"].values():
            one = font.get_object()
            if "/FontDescriptor" in one:
                assert "/FontFile2" in one["/FontDescriptor"].get_object(), one["/BaseFont"]
            else:  # the writer names its own default on every page; nothing may be set in it
                assert one["/BaseFont"] == "/Helvetica"


def test_nothing_is_set_in_a_letter_that_does_not_travel_along() -> None:
    seen: set[str] = set()

    def look(_text: str, _cm: Any, _tm: Any, font: Any, _size: float) -> None:  # noqa: ANN401 - the library's own
        if font is not None and _text.strip():
            seen.add(str(font["/BaseFont"]))

    for page in pypdf.PdfReader(io.BytesIO(usual())).pages:
        page.extract_text(visitor_text=look)
    assert seen
    assert all("DejaVu" in name for name in seen), seen


def test_the_same_answer_gives_the_same_bytes() -> None:
    assert sheet(plain()) == usual()


def test_letter_is_letter_and_the_rest_is_a4() -> None:
    sizes = [
        pypdf.PdfReader(io.BytesIO(sheet(plain(), letter=one, drawn=False))).pages[0].mediabox for one in (True, False)
    ]
    assert [(round(float(s.width)), round(float(s.height))) for s in sizes] == [(612, 792), (595, 842)]


def test_where_nothing_fits_it_says_what_is_in_the_way_and_what_cures_it() -> None:
    none = compose(boat(obstacles=[WALL]), None, KNOWN)
    pages = words(sheet(none))
    whole = " ".join(pages)
    assert "Does not fit: do not drill from this sheet" in pages[0]
    assert "What is in the way" in pages[0]
    assert "Nearest part of the gear to the rail" in pages[0]
    assert "Without the rail it would pass" in pages[0]
    assert "Nearest part of the gear to the rail" in pages[1], "and it is marked in the drawing"
    assert "Before drilling" not in whole
    assert "Parts by carton" not in whole


@pytest.mark.parametrize(
    "name",
    ["Ναυσικά Παπαδοπούλου", "Фёдор Чайка", "山田太郎", "W" * 200, "Ж" * 200, "a b " * 50, "<b>& <para>", ""],
)
def test_a_name_in_any_script_and_of_any_length_is_kept_whole(name: str) -> None:
    data = sheet(named(name=name), name or "Corrin 31", drawn=False)
    told = "".join(words(data)).replace(" ", "")
    assert fonts.written(name).replace(" ", "") in told
    assert fonts.back(fonts.written(name)) == name
    assert (fonts.FALLBACK.replace(" ", "") in told) == fonts.lacking(name)
    if not name:
        assert "Corrin31" in told


@cache
def crowded() -> bytes:
    answer = compose(boat(obstacles=MANY, contact={"name": "W" * 200}), None, KNOWN)
    return sheet(answer, "W" * 200)


def test_forty_obstacles_run_over_pages_with_their_headings() -> None:
    pages = words(crowded())
    assert sum("on the stern where, mm" in page for page in pages) >= 2
    assert sum("Flagstaff" in page for page in pages) >= 2
    assert " ".join(pages).count("Flagstaff") >= 40
    assert sum(page.count("Nearest part of the gear to the staff") for page in pages) >= 40
    assert sum("what is looked at" in page for page in pages) >= 2


@pytest.mark.parametrize("case", ["plain", "crowded"])
def test_nothing_is_cut_off_and_no_line_stands_on_another(case: str) -> None:
    data = usual() if case == "plain" else crowded()
    for number, (wide, high), found in boxes(data):
        assert found
        for left, low, right, top in found:
            assert left >= EDGE, number
            assert right <= wide - EDGE, number
            assert low >= EDGE, number
            assert top <= high - EDGE, number
        ordered = sorted(found)
        for n, one in enumerate(ordered):
            for other in ordered[n + 1 : n + 60]:
                if other[0] >= one[2]:
                    break
                wide_by = min(one[2], other[2]) - other[0]
                high_by = min(one[3], other[3]) - max(one[1], other[1])
                assert wide_by <= 1.5 or high_by <= 1.5, (number, one, other)
