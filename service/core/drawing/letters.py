"""How much room letters take, before any writer sets them: never less than DejaVu Sans needs, and no file read."""

from __future__ import annotations

ASCII = (
    318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361, 318, 337, 637, 637, 637, 637, 637, 637, 637,
    637, 637, 637, 337, 337, 838, 838, 838, 531, 1000, 685, 687, 699, 771, 632, 576, 775, 752, 295, 295, 656, 558, 863,
    749, 788, 604, 788, 695, 635, 611, 732, 685, 989, 686, 611, 686, 391, 337, 391, 838, 500, 500, 613, 635, 550, 635,
    616, 353, 635, 634, 278, 278, 580, 278, 975, 634, 612, 635, 635, 412, 521, 393, 634, 592, 818, 592, 592, 525, 637,
    337, 637, 838,
)  # fmt: skip
"""Advance widths of U+0020 to U+007E in thousandths of the size (DejaVu Sans, rounded up)."""
SMALL, CAPITAL, OTHER = 1.05, 1.12, 1.0
"""Width of any other letter or sign, as a share of the size: wide for most, so that nothing runs over."""
BOLDER = 1.27
"""How much wider than the plain face the bold one is at most."""
RISE, DROP, PITCH = 0.78, 0.24, 1.35
"""How far letters reach above and below their line, and from line to line, as shares of the size."""


def width(text: str, size: float, *, bold: bool = False) -> float:
    """Return a bound on how wide a line of text is, in the unit of the size.

    >>> width("il", 10) < width("WM", 10)
    True
    """
    ems = sum(_em(ord(c), c) for c in text)
    return ems * size * (BOLDER if bold else 1.0)


def wrapped(text: str, room: float, size: float, *, bold: bool = False) -> tuple[str, ...]:
    """Return the text in lines no wider than `room`; a word wider than a line is broken, never lost.

    >>> wrapped("folding ladder to port", 7.5, 1.0)
    ('folding ladder', 'to port')
    """
    lines, line = [], ""
    for word in text.split():
        joined = f"{line} {word}" if line else word
        if width(joined, size, bold=bold) <= room:
            line = joined
            continue
        if line:
            lines.append(line)
        *whole, line = _pieces(word, room, size, bold=bold)
        lines += whole
    return (*lines, line)


def _pieces(word: str, room: float, size: float, *, bold: bool) -> list[str]:
    """Return a word in pieces that fit, at least one letter each."""
    found = [""]
    for char in word:
        if found[-1] and width(found[-1] + char, size, bold=bold) > room:
            found.append("")
        found[-1] += char
    return found


def _em(code: int, char: str) -> float:
    if 32 <= code < 127:  # noqa: PLR2004 - the printable ones
        return ASCII[code - 32] / 1000
    return SMALL if char.islower() else CAPITAL if char.isupper() else OTHER
