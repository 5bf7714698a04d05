"""The drilling template by its pages' own geometry: the bar, the holes, the crosses and where sheets overlap."""

from __future__ import annotations

import ctypes
import io
import math
import re
from dataclasses import replace
from itertools import combinations
from typing import Any, NamedTuple

import pypdfium2
import pytest
from pypdf import PdfReader
from pypdfium2 import raw
from reportlab.lib.units import mm

from service.core.drawing.scene import Scene, scene
from service.core.drawing.template import before_drilling, templates
from service.files.write import fonts
from service.files.write.template_pdf import EDGE, MEASURE_ME, STRIP, write_template
from tests.support.boats import boat
from tests.support.drawn import Case, random_case, rng, set_near

TENTH = 0.1
Point = tuple[float, float]


class Page(NamedTuple):
    """What is drawn on a page, in mm from its lower left corner: straight lines, circles by middle and radius, words.

    `crosses`: registration crosses by the letter beside each.
    """

    size: Point
    lines: list[tuple[Point, Point]]
    circles: list[tuple[Point, float]]
    crosses: dict[str, Point]
    text: str


def pages(data: bytes) -> list[Page]:
    with pypdfium2.PdfDocument(data) as document:
        return [_page(page) for page in document]


def _page(page: Any) -> Page:  # noqa: ANN401 - pypdfium2 has no types
    lines, circles = [], []
    for one in page.get_objects(filter=[raw.FPDF_PAGEOBJ_PATH]):
        points = _points(one)
        kinds = {kind for kind, _ in points}
        at = [point for _, point in points]
        if raw.FPDF_SEGMENT_BEZIERTO in kinds:
            xs, ys = zip(*at, strict=True)
            circles.append((((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2), (max(xs) - min(xs)) / 2))
        elif len(at) == 2:
            lines.append((at[0], at[1]))
    words = page.get_textpage()
    found = {
        words.get_text_bounded(*(v * mm for v in (x + 0.3, y + 0.3, x + 7.0, y + 4.0))).strip(): (x, y)
        for x, y in _crossings(lines)
    }
    return Page((page.get_width() / mm, page.get_height() / mm), lines, circles, found, words.get_text_bounded())


def _crossings(lines: list[tuple[Point, Point]]) -> list[Point]:
    """Return the middles of registration crosses: two lines of 12 mm that cross in the middle of both."""
    flat, tall = (
        [
            ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
            for a, b in lines
            if abs(a[n] - b[n]) < 1e-3 and abs(math.dist(a, b) - 12.0) < 0.01
        ]
        for n in (1, 0)
    )
    return [p for p in flat if any(math.dist(p, q) < 0.01 for q in tall)]


def _points(one: Any) -> list[tuple[int, Point]]:  # noqa: ANN401 - the same
    """Return the points of a path on the page (mm), with what leads to each."""
    a, b, c, d, e, f = one.get_matrix().get()
    found = []
    for n in range(raw.FPDFPath_CountSegments(one)):
        segment = raw.FPDFPath_GetPathSegment(one, n)
        x, y = ctypes.c_float(), ctypes.c_float()
        raw.FPDFPathSegment_GetPoint(segment, x, y)
        px, py = a * x.value + c * y.value + e, b * x.value + d * y.value + f
        found.append((raw.FPDFPathSegment_GetType(segment), (px / mm, py / mm)))
    return found


def made(
    case: Case, *, letter: bool = False, heading: str = "Argo", overlap: float | None = None
) -> tuple[bytes, Scene]:
    shown = scene(case.form, case.fit, case.catalogue)
    if overlap is not None:
        shown = replace(
            shown, lower=replace(shown.lower, overlap_mm=overlap), upper=replace(shown.upper, overlap_mm=overlap)
        )
    return write_template(templates(shown, inches=letter), heading, before_drilling(shown), letter=letter), shown


@pytest.fixture(scope="module")
def case() -> Case:
    """Return a boat with a plumb stern and two flanges on it."""
    return set_near(boat(transom={"rake_deg": 12}), rng(4))


def long_lines(page: Page, length: float) -> list[tuple[Point, Point]]:
    return [
        (a, b)
        for a, b in page.lines
        if abs(abs(b[0] - a[0]) + abs(b[1] - a[1]) - length) < 1.0 and (a[0] == b[0] or a[1] == b[1])
    ]


@pytest.mark.parametrize("letter", [False, True])
def test_the_bar_on_every_sheet_is_100_mm_long(case: Case, letter: bool) -> None:  # noqa: FBT001 - a parameter
    found = pages(made(case, letter=letter)[0])
    assert len(found) >= 3
    for page in found:
        assert MEASURE_ME in page.text
        bars = [b[0] - a[0] for a, b in long_lines(page, 100.0) if a[1] == b[1]]
        assert any(abs(bar - 100.0) <= TENTH for bar in bars), bars
    upright = [b[1] - a[1] for a, b in found[0].lines if abs(abs(b[1] - a[1]) - 100.0) < 1.0]
    assert any(abs(bar - 100.0) <= TENTH for bar in upright)


def test_paper_is_a4_or_letter(case: Case) -> None:
    """ISO 216: A4 is 210 x 297 mm; ANSI/ASME Y14.1: Letter is 8.5 x 11 in."""
    for letter, size in ((False, (210.0, 297.0)), (True, (215.9, 279.4))):
        for page in pages(made(case, letter=letter)[0]):
            assert sorted(page.size) == pytest.approx(sorted(size), abs=0.2)


def test_holes_are_where_the_bracket_has_them_and_as_large(case: Case) -> None:
    """Clearance holes of ISO 273, medium: 11 mm for M10."""
    data, shown = made(case)
    for page, mounted in zip(
        [p for p in pages(data) if "sheet 1 of 1" in p.text and "backing" not in p.text], shown.mounts, strict=True
    ):
        holes = [(at, radius) for at, radius in page.circles if abs(radius - 5.5) < 0.05]
        assert len(holes) == len(mounted.bracket.bolts.pattern_mm)
        x0 = sum(at[0] for at, _ in holes) / len(holes)
        y0 = sum(at[1] for at, _ in holes) / len(holes)
        found = sorted((round(at[0] - x0, 1), round(at[1] - y0, 1)) for at, _ in holes)
        for hole, bolt in zip(found, sorted(mounted.bracket.bolts.pattern_mm), strict=True):
            assert hole == pytest.approx(bolt, abs=TENTH)


@pytest.mark.parametrize("letter", [False, True])
def test_sheets_that_overlap_show_the_same_where_they_do(case: Case, letter: bool) -> None:  # noqa: FBT001 - a parameter
    """With a large plate: moved so that crosses of one letter meet, two sheets show every hole in the same place."""
    data, _ = made(case, overlap=120.0, letter=letter)
    sheets = [page for page in pages(data) if re.search(r"LOWER backing[^\n]*of [2-9]", page.text)]
    assert len(sheets) > 2
    pairs = 0
    for one, two in combinations(sheets, 2):
        shared = one.crosses.keys() & two.crosses.keys()
        if not shared:
            continue
        pairs += 1
        moves = [(one.crosses[k][0] - two.crosses[k][0], one.crosses[k][1] - two.crosses[k][1]) for k in sorted(shared)]
        dx, dy = moves[0]
        for move in moves:
            assert move == pytest.approx((dx, dy), abs=0.02)
        assert sum(radius > 2.0 for _, radius in two.circles) == 4  # the rest are dots of leaders
        for (x, y), radius in two.circles:
            assert any(math.dist((x + dx, y + dy), at) < TENTH and abs(radius - r) < 0.01 for at, r in one.circles)
        overlap = one.size[0] - 2 * EDGE - abs(dx) if abs(dy) < 1 else one.size[1] - 2 * EDGE - STRIP - abs(dy)
        assert overlap == pytest.approx(20.0, abs=TENTH)
    assert pairs >= len(sheets) - 1


def test_every_sheet_says_which_way_round_and_how_many_there_are(case: Case) -> None:
    found = pages(made(case)[0])
    for page in found[1:]:
        for word in ("UP", "PORT", "STARBOARD"):
            assert word in page.text
        assert re.search(r"sheet \d+ of \d+", page.text)
    assert "surveyor" in found[0].text
    assert "plumb" in found[0].text


def test_a_stand_is_drilled_from_above_and_cheeks_from_the_side() -> None:
    step = boat(
        boat={"stern": "scoop"},
        transom={"step_height_mm": 250, "step_depth_mm": 600, "step_width_mm": 1400, "lower_rake_deg": 0},
    )
    text = "".join(page.text for page in pages(made(set_near(step, rng(4)))[0]))
    assert "FORWARD" in text
    assert "You look down at the step" in text
    post = boat(boat={"stern": "double_ended"}, transom={"post_width_mm": 80, "rake_deg": 10})
    text = "".join(page.text for page in pages(made(set_near(post, rng(4)))[0]))
    assert "turn the sheet over for the port side" in text


def test_bookmarks_lead_to_every_template(case: Case) -> None:
    data, shown = made(case)
    names = [str(one.title) for one in PdfReader(io.BytesIO(data)).outline if not isinstance(one, list)]
    assert names[0] == "Before you drill"
    assert len(names) == 1 + len(templates(shown, inches=False))


@pytest.mark.parametrize("heading", ["Ναυσικά", "日本丸", "W" * 200, "Чайка " * 30, ""])
def test_any_name_is_set_within_the_page(case: Case, heading: str) -> None:
    data, _ = made(case, heading=heading)
    with pypdfium2.PdfDocument(data) as document:
        for page in [document[0]]:
            for one in page.get_objects(filter=[raw.FPDF_PAGEOBJ_TEXT]):
                left, low, right, high = one.get_bounds()
                assert left >= 0
                assert low >= 0
                assert high <= page.get_height()
                assert right <= page.get_width()
    said = "".join(PdfReader(io.BytesIO(data)).pages[0].extract_text().split())
    assert "".join(fonts.written(heading).split()) in said


def test_the_same_scene_gives_the_same_bytes(case: Case) -> None:
    assert made(case)[0] == made(case)[0]


@pytest.mark.parametrize("seed", range(3))
def test_any_boat_has_a_template(seed: int) -> None:
    found = pages(made(random_case(seed))[0])
    assert all(MEASURE_ME in page.text for page in found)
