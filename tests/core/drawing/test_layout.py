"""No word over another, none over a figure, none cut off: on random boats, forty obstacles, long names, other scripts."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from service.core.drawing import Dimension, Outline, View, letters
from service.core.drawing.laid import Laid
from service.core.drawing.lay import Manner, fitted, lay
from service.files.write import fonts
from tests.support.boats import boat
from tests.support.drawn import Case, random_case, rng, set_near
from tests.support.words import cut_off, meeting, printed, printed_over

BOATS = 32
ROOM = 190.0, 270.0
NAMES = ("Ναυσικά ΤΗΣ ΙΘΑΚΗΣ", "Щука и Ёж Большой", "Ñandú Œuvre", "日本丸", "שלום", "W" * 200)


def scale_of(view: View) -> float:
    return 1 / 4 if view.key.endswith("plate") else 1 / 20


def flaws(views: Sequence[View]) -> list[object]:
    laid = [lay(view, scale_of(view)) for view in views]
    return [flaw for one in laid for flaw in (*meeting(one), *cut_off(one))]


def said(laid: Laid) -> str:
    """Return all words of a view as one text, however they were broken into lines."""
    return "".join("".join(text.text.split()) for text in laid.texts)


@pytest.mark.parametrize("seed", range(BOATS))
def test_no_word_stands_on_another_and_none_is_cut_off(seed: int) -> None:
    assert flaws(random_case(seed).views(inches=seed % 3 == 0)[: 3 + 2 * (seed % 4 == 0)]) == []


def crowded(count: int = 40) -> Case:
    """Return a boat with forty things on its stern, many of them in one place."""
    kinds = ("ladder", "stay", "rail", "davits", "outboard", "exhaust", "locker", "other")
    draws = rng(7)
    things = []
    for n in range(count):
        x, y, z = (float(v) for v in draws.uniform((-300, -900, 100), (500, 900, 1800)))
        note = {"note": f"thing number {n} with a name that takes a line and a half"} if n % 8 == 7 else {}
        box = {"aft_mm": [x, x + 150], "starboard_mm": [y, y + 200], "height_mm": [z, z + 300]}
        things.append({"kind": kinds[n % 8], **box, **note})
    return set_near(boat(obstacles=things), rng(7))


def test_forty_obstacles_are_numbered_and_each_is_named_once() -> None:
    for view in crowded().views()[:3]:
        laid = fitted(view, *ROOM)
        assert meeting(laid) == []
        assert cut_off(laid) == []
        assert laid.size[0] <= ROOM[0]
        assert laid.size[1] <= ROOM[1]
        numbers = [t.text for t in laid.texts if t.anchor == "middle"]
        listed = sum(note.listed for note in view.notes)
        assert listed >= 38  # all but what lies beyond the view, and that is a remark
        assert {str(n) for n in range(1, listed + 1)} <= set(numbers)
        for number in (7, 15, 23, 31, 39):
            name = "".join(f"thing number {number} with a name that takes a line and a half".split())
            assert name in said(laid)


@pytest.mark.parametrize("name", NAMES)
def test_any_name_is_set_whole(name: str) -> None:
    box = {"aft_mm": [0, 300], "starboard_mm": [-300, 0], "height_mm": [1000, 1500]}
    case = set_near(boat(obstacles=[{"kind": "other", "note": name, **box}]), rng(3))
    for view in case.views()[:3]:
        laid = lay(view, 1 / 20, Manner(fonts.written))
        assert meeting(laid) == []
        assert cut_off(laid) == []
        assert "".join(fonts.written(name).split()) in said(laid)


def test_what_is_said_of_letters_is_never_less_than_they_take() -> None:
    """Bound against the advance widths of the faces themselves (DejaVu 2.37, read from their own files)."""
    samples = ["".join(chr(c) for c in range(32, 127)), "ÀÉÎÕÜßàéîõüñøåæ", "ΑΒΓΔΕΖΗΘαβγδεζηθω", "ЖЩЮЯФДжщюяфд", "·—…°½"]
    for text in samples:
        for char in text:
            for bold in (False, True):
                took = fonts.width(char, 1.0, fonts.BOLD if bold else fonts.SANS)
                assert took <= letters.width(char, 1.0, bold=bold) + 1e-3, (char, bold)


def test_a_larger_sheet_gives_a_larger_drawing() -> None:
    view = random_case(1).views()[0]
    small, large = fitted(view, 140, 200), fitted(view, 400, 600)
    assert large.scale > small.scale
    assert small.size[0] <= 140
    assert small.size[1] <= 200


@pytest.mark.parametrize("seed", range(100, 104))
def test_on_paper_no_letters_cover_others(seed: int) -> None:
    """By the page itself: another library (PDFium) says where every line of letters lies."""
    for view in random_case(seed).views()[:3]:
        data = printed(view, *ROOM)
        assert printed_over(data) == []


def test_figures_of_two_sides_do_not_meet_in_the_corner() -> None:
    """Two short dimensions whose figures have to stand beyond their ends, below and to the right."""
    marks = (
        Dimension((900.0, 0.0), (1000.0, 0.0), "x", "-129 (-5 1/16 in)", "below"),
        Dimension((1000.0, 0.0), (1000.0, 60.0), "y", "520 (20 1/2 in)", "right"),
        Dimension((1000.0, 0.0), (1000.0, 30.0), "y", "260 (10 1/4 in)", "right"),
    )
    body = Outline("hull", ((0.0, 0.0), (1000.0, 0.0), (1000.0, 800.0), (0.0, 800.0)))
    for one_to in (5, 10, 15, 20, 30, 50, 100):
        laid = lay(View("plan", "Corner", "", (body,), (), marks), 1 / one_to)
        assert meeting(laid) == []
        assert cut_off(laid) == []
