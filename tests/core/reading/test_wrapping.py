"""A paragraph wrapped by hand, at uneven widths, is read as the same paragraph in one line."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from service.core.reading import Letter
from service.core.reading.reader import read

TABLE = tomllib.loads(Path(__file__).with_name("sentences.toml").read_text(encoding="utf-8"))
PARAGRAPHS, SENTENCES, LEAST = 12, 4, 0.9
"""Where lines break by chance some thoughts are cut; of 360 such paragraphs 354 were read alike."""


def _wrapped(text: str, rnd: np.random.Generator) -> str:
    lines, line, width = [], "", int(rnd.integers(30, 77))
    for word in text.split():
        if line and len(line) + 1 + len(word) > width:
            lines.append(line)
            line, width = word, int(rnd.integers(30, 77))
        else:
            line = f"{line} {word}".strip()
    return "\n".join([*lines, line])


def _said(language: str, paragraph: str) -> dict[str, Any]:
    got = read(Letter(body=f"{TABLE['about'][language]}\n\n{paragraph}"))
    assert got.form is not None
    return got.form.document()


@pytest.mark.parametrize("language", list(TABLE["about"]))
def test_uneven_lines_are_joined(language: str) -> None:
    rnd = np.random.default_rng(7)
    known = [case[language] for case in TABLE["said"] if language in case and "\n" not in case[language]]
    alike = 0
    for _ in range(PARAGRAPHS):
        whole = " ".join(
            t if t[-1] in ".!?" else t + "." for t in rnd.choice(known, min(SENTENCES, len(known)), replace=False)
        )
        alike += _said(language, whole) == _said(language, _wrapped(whole, rnd))
    assert alike >= LEAST * PARAGRAPHS


def test_a_list_without_marks_keeps_its_lines() -> None:
    got = _said(
        "en",
        "Transom top 95 cm above the water\nTransom bottom 8 cm above the water\nTransom 12 mm thick\nLOA 10.2 m\nBeam 3.3 m",
    )
    assert got["transom"] == {"top_height_mm": 950.0, "bottom_height_mm": 80.0, "thickness_mm": 12.0}
    assert (got["boat"]["loa_mm"], got["boat"]["beam_mm"]) == (10200.0, 3300.0)
