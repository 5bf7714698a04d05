"""The page of a reading: every value points at its words, pictures stand beside questions, nothing from outside is code."""

from __future__ import annotations

import re
from html import escape
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from service.core.boat import is_path
from service.core.reading import Letter
from service.core.reading.gaps import KEY_FIELDS
from service.core.reading.highlight import pieces, witnesses
from service.core.reading.pictures import PICTURES, picture_of
from service.core.reading.reader import read
from service.files.write.picture_svg import picture_svg
from service.files.write.reading_html import reading_html
from service.flow.read import read_file

MAILS = sorted((Path(__file__).parents[1] / "core/reading/mails").glob("*/*.eml"))
ASK = "Hello,\n\nwhat would suit our Corvane 33? "


def said(_field: str, value: object) -> str:
    return str(value)


@pytest.mark.parametrize("mail", MAILS[::3], ids=lambda m: m.stem)
def test_values_and_words_point_at_each_other(mail: Path) -> None:
    got = read_file(None, mail.read_bytes(), mail.name)
    seen = witnesses(got)
    assert "".join(piece.text for piece in pieces(got.text, seen)) == got.text
    page = reading_html(got, mail.name, said)
    anchors = set(re.findall(r' id="([wv]\d+)"', page))
    links = set(re.findall(r'href="#([wv]\d+)"', page))
    assert links <= anchors
    assert {f"w{w.number}" for w in seen} <= anchors
    assert {f"v{w.number}" for w in seen} <= anchors
    stated = {f"obstacles[{i}]" for form in got.forms for i in range(len(form.obstacles))}
    for form in got.forms:
        for part in ("boat", "transom", "main_rudder", "preferences", "methods", "uncertainties"):
            stated |= {f"{part}.{key}" for key in form.document().get(part, {})}
    assert stated <= {e.field for e in got.evidence}


def test_what_came_from_outside_is_never_code() -> None:
    evil = "<script>alert(1)</script> \"'><img src=x onerror=y> the transom is 12 mm <b>thick</b>"
    page = reading_html(read(Letter(body=ASK + evil, subject="<b>x</b>")), "<i>name</i>", said)
    assert "<script" not in page
    assert not re.search(r"<(b|i|img)[ >]", page)
    assert "&lt;script&gt;" in page


def test_each_question_has_the_picture_of_what_it_asks_for() -> None:
    got = read_file(
        None, (ASK + "The transom top is 1.1 m above the water, or 1.3 m above the water?").encode(), "x.txt"
    )
    page = reading_html(got, "x", said)
    assert got.asks[0] == "transom.top_height_mm", "what was left in doubt is asked first"
    assert len(got.questions) == len(got.asks) == 3
    items = page.split("<ol>")[1].split("<li>")[1:]
    for item, question, field in zip(items, got.questions, got.asks, strict=True):
        picture = picture_of(field)
        assert escape(question) in item
        assert picture is not None
        assert picture_svg(picture, picture.says) in item


@pytest.mark.parametrize("picture", PICTURES.values(), ids=list(PICTURES))
def test_a_picture_is_whole_and_stays_in_its_frame(picture: object) -> None:
    drawn = picture_of(getattr(picture, "field", ""))
    assert drawn is not None
    assert is_path(drawn.field)
    tree = ET.fromstring(picture_svg(drawn, 'a < b "c"'))  # noqa: S314 - made here
    left, top, width, height = map(float, str(tree.get("viewBox")).split())
    assert any(stroke.sort == "arrow" for stroke in drawn.strokes) or drawn.field in (
        "main_rudder.hung",
        "boat.stern",
        "boat.displacement_kg",
    )
    for stroke in drawn.strokes:
        assert all(left <= x <= left + width and top <= -y <= top + height for x, y in stroke.points)


def test_every_measurement_that_is_asked_for_has_a_picture() -> None:
    assert [field for field in KEY_FIELDS if field != "boat.model" and picture_of(field) is None] == []
