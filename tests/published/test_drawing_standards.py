"""Drawings beside the standards of technical drawing: scales, weights of lines, heights of letters, holes, paper."""

from __future__ import annotations

import pytest
from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.units import mm

from service.core.drawing.ink import CLASH_WEIGHT, HATCH_WEIGHT, INKS
from service.core.drawing.lay import LETTER as LETTERS
from service.core.drawing.lay import SERIES, TITLE
from service.core.drawing.lengths import tape
from service.core.loads.threads import SIZES

ISO_5455 = (1, 2, 5, 10, 20, 50, 100, 200, 500)
"""Reductions that ISO 5455:1979 recommends, full size first (from memory)."""
ISO_128_20 = (0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0)
"""Widths of lines in mm, ISO 128-20:1996 (from memory)."""
ISO_3098 = (1.8, 2.5, 3.5, 5.0, 7.0, 10.0, 14.0, 20.0)
"""Heights of capitals in mm, ISO 3098-1 (from memory)."""
CAPITALS = 1493 / 2048
"""Height of capitals of DejaVu Sans as a share of its size: sCapHeight of the OS/2 table of the face."""
ISO_273 = {"M6": 6.6, "M8": 9.0, "M10": 11.0, "M12": 13.5, "M16": 17.5}
"""Clearance holes in mm, ISO 273:1979, medium series (from memory)."""
TAPES = {25.4: "1 in", 38.1: "1 1/2 in", 1000.0: "39 3/8 in", 304.8: "12 in", 6.35: "1/4 in", 914.4: "36 in"}
"""25.4 mm an inch exactly (international yard and pound agreement, 1959); one metre is 39.370 in."""


def test_the_scales_are_the_standards_own_and_some_between() -> None:
    assert set(ISO_5455) <= set(SERIES)
    assert list(SERIES) == sorted(SERIES)


def test_lines_are_as_wide_as_the_standard_has_them() -> None:
    widths = {ink.weight for ink in INKS.values() if ink.weight} | {HATCH_WEIGHT, CLASH_WEIGHT}
    assert widths <= set(ISO_128_20)


@pytest.mark.parametrize("size", [LETTERS, TITLE])
def test_capitals_are_as_high_as_the_standard_has_them(size: float) -> None:
    assert min(abs(size * CAPITALS - height) for height in ISO_3098) < 0.05


@pytest.mark.parametrize(("size", "hole"), ISO_273.items())
def test_holes_are_of_the_medium_series(size: str, hole: float) -> None:
    assert SIZES[size].hole_mm == hole


def test_paper_is_of_the_standards_sizes() -> None:
    """ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: Letter (A) is 8.5 x 11 in."""
    assert [side / mm for side in A4] == pytest.approx([210.0, 297.0], abs=0.01)
    assert [side / mm for side in LETTER] == pytest.approx([215.9, 279.4], abs=0.01)


@pytest.mark.parametrize(("length", "said"), TAPES.items())
def test_inches_are_as_a_tape_shows_them(length: float, said: str) -> None:
    assert tape(length) == said
