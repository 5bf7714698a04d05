"""The faces of the papers: what they cover, what becomes of the rest, and that they travel within the file."""

from __future__ import annotations

import io
import unicodedata
from typing import Any

import pytest
from pypdf import PdfReader
from reportlab.pdfgen.canvas import Canvas

from service.files.write import fonts

NAMES = ("Ñandú", "Kråkenæs", "Żółw", "Ναυσικά", "Чайка", "Ἀργώ", "Їжачок", "Đuro Šćepan")


def printed(*texts: str) -> bytes:
    fonts.register()
    out = io.BytesIO()
    canvas = Canvas(out, invariant=1)
    for row, text in enumerate(texts):
        canvas.setFont(fonts.BOLD if row % 2 else fonts.SANS, 9)
        canvas.drawString(40, 800 - 14 * row, fonts.written(text))
    canvas.save()
    return out.getvalue()


@pytest.mark.parametrize("name", NAMES)
def test_latin_greek_and_cyrillic_are_set_as_they_are(name: str) -> None:
    assert fonts.written(name) == unicodedata.normalize("NFC", name)
    assert not fonts.lacking(name)


@pytest.mark.parametrize("name", ["日本丸", "שלום", "مرحبا", "हिन्दी", "ไทย"])
def test_other_scripts_come_out_as_numbers_and_come_back(name: str) -> None:
    assert fonts.lacking(name)
    assert fonts.written(name).isascii()
    assert fonts.back(fonts.written(name)) == name


def test_what_was_printed_can_be_read_out_again() -> None:
    page = PdfReader(io.BytesIO(printed(*NAMES, "日本丸"))).pages[0].extract_text()
    for name in NAMES:
        assert unicodedata.normalize("NFC", name) in page
    assert fonts.back(page.splitlines()[-1]) == "日本丸"


def test_both_faces_travel_within_the_file() -> None:
    page = PdfReader(io.BytesIO(printed("Argo", "Argo"))).pages[0]
    used: Any = page["/Resources"]
    embedded = {
        str(font["/BaseFont"]).partition("+")[2]: "/FontFile2" in font["/FontDescriptor"]
        for font in (one.get_object() for one in used["/Font"].values())
        if "/FontDescriptor" in font
    }
    assert embedded == {"DejaVuSans": True, "DejaVuSans-Bold": True}


def test_the_same_text_gives_the_same_bytes() -> None:
    assert printed("Argo", "Чайка") == printed("Argo", "Чайка")


def test_line_breaks_and_tabs_are_spaces() -> None:
    assert fonts.written("a\tb\nc\u2028d") == "a b c d"
