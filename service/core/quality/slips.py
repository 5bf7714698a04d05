"""Slips of the pen: what a value may have been meant to be, given about what it should be."""

from __future__ import annotations

from collections.abc import Iterator

INCH_MM = 25.4
FOOT_MM = 304.8
POUND_KG = 0.45359237
_TWO_DIGITS = 2


def meant(field: str, value: float, low: float, high: float) -> tuple[float, str] | None:
    """Return the value in [low, high] that a common slip would turn into `value`, and which slip; None where none does.

    Where several would, the one nearest to the middle.

    >>> meant("transom.width_top_mm", 55.5, 1300, 1500)
    (1409.7, 'written in inches')
    >>> meant("transom.top_height_mm", 1800, 1000, 1120)
    (1080, 'two digits swapped')
    """
    middle = (low + high) / 2
    found = [(abs(guess - middle), guess, slip) for guess, slip in _guesses(field, value) if low <= guess <= high]
    if not found:
        return None
    _, guess, slip = min(found)
    return guess, slip


def _guesses(field: str, value: float) -> Iterator[tuple[float, str]]:
    unit = field.rpartition("_")[2]
    if value:
        yield -value, "a lost sign"
    if unit == "mm":
        yield round(value * INCH_MM, 1), "written in inches"
        yield round(value * FOOT_MM, 1), "written in feet"
        yield round(value * 10, 1), "written in centimetres"
        yield round(value * 1000, 1), "written in metres"
        yield round(value / 10, 1), "a nought too many"
    if unit == "kg":
        yield round(value * 1000, 1), "written in tonnes"
        yield round(value * POUND_KG, 1), "written in pounds"
        yield round(value * 10, 1), "a nought too few"
        yield round(value / 10, 1), "a nought too many"
    yield from _swapped(value)


def _swapped(value: float) -> Iterator[tuple[float, str]]:
    text = f"{abs(value):.10g}"
    if not text.isdigit() or len(text) < _TWO_DIGITS:
        return
    sign = -1 if value < 0 else 1
    for place in range(len(text) - 1):
        if text[place] != text[place + 1]:
            other = text[:place] + text[place + 1] + text[place] + text[place + 2 :]
            yield sign * int(other), "two digits swapped"
