"""Everything that is drawn of an answer: which files, the same bytes each time, inches and Letter where people use them."""

from __future__ import annotations

import io
from datetime import UTC, datetime
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from pypdf import PdfReader

from service.core.answer import Answer
from service.flow.answer import answer_file
from service.flow.draw import draw_answer, draw_file, draw_files
from service.store.unit import Store

NOW = datetime(2026, 1, 20, 12, 0, tzinfo=UTC)
A4_WIDE, LETTER_WIDE = 595, 612
"""Points: 210 mm and 8.5 in."""


@pytest.fixture
def answer(seeded: Store, mails: Path) -> Answer:
    file = mails / "demo.eml"
    return answer_file(seeded, file.read_bytes(), file.name, now=NOW, keep=False).answers[0]


def from_country(answer: Answer, country: str) -> Answer:
    form = answer.form.model_copy(update={"enquiry": answer.form.enquiry.model_copy(update={"country": country})})
    return answer.model_copy(update={"form": form})


def test_every_drawing_is_made_and_twice_the_same(seeded: Store, answer: Answer) -> None:
    with seeded.reading() as uow:
        files = draw_files(uow, answer)
        assert draw_files(uow, answer) == files
        assert draw_answer(uow, answer) == files[0].content.decode()
        assert draw_file(uow, answer, "plan.svg") == files[3]
        assert draw_file(uow, answer, "nothing.svg") is None
        letter = {file.name: file.content for file in draw_files(uow, from_country(answer, "US"))}
        bare = answer.model_copy(update={"suggestions": ()})
        assert draw_answer(uow, bare) is None
        assert draw_files(uow, bare) == ()
    names = [file.name for file in files]
    assert names[:8] == [
        "drawing.svg", "side.svg", "stern.svg", "plan.svg", "lower-plate.svg", "upper-plate.svg", "drawing.dxf", "template.pdf",
    ]  # fmt: skip
    assert names[8:] == [f"{pad.role}-pad.stl" for pad in answer.suggestions[0].fit.pads]
    for file in files:
        if file.name.endswith(".svg"):
            assert ET.fromstring(file.content).tag.endswith("svg")  # noqa: S314 - our own drawing
    for made, inches, wide in (({f.name: f.content for f in files}, False, A4_WIDE), (letter, True, LETTER_WIDE)):
        assert (" in)" in made["side.svg"].decode()) is inches
        assert (" in)" in made["drawing.dxf"].decode()) is inches
        assert int(PdfReader(io.BytesIO(made["template.pdf"])).pages[0].mediabox.width) == wide
