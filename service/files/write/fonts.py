"""The letters of everything that goes out as PDF: two DejaVu faces, embedded, Latin, Greek and Cyrillic.

What they cannot set right is never lost: a character they lack, and one of a script written from right to left or
joined up, comes out as its Unicode number, `<U+65E5>`, which anybody can look up and any program can turn back.
"""

from __future__ import annotations

import re
import unicodedata
from functools import cache
from importlib.util import find_spec
from pathlib import Path

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

SANS, BOLD = "DejaVuSans", "DejaVuSans-Bold"
FALLBACK = "Characters this sheet's letters cannot set are written as their Unicode numbers, such as <U+65E5>."
"""To be said on a page on which `lacking` is true of any text."""
JOINED = ("R", "AL", "AN")
"""Bidirectional classes of scripts whose letters run from right to left."""
SHAPED = range(0x0900, 0x10A0)
"""Scripts from Devanagari to Burmese, whose signs change place and shape with their neighbours."""
_NUMBER = re.compile(r"<U\+([0-9A-F]{4,6})>")


@cache
def register() -> None:
    """Make both faces known to the PDF writer; costs something once a process."""
    for name in (SANS, BOLD):
        pdfmetrics.registerFont(TTFont(name, str(folder() / f"{name}.ttf")))
    pdfmetrics.registerFontFamily(SANS, normal=SANS, bold=BOLD, italic=SANS, boldItalic=BOLD)


def folder() -> Path:
    """Return where the faces lie: among matplotlib's data, found without loading matplotlib."""
    spec = find_spec("matplotlib")
    if spec is None or spec.origin is None:
        raise FileNotFoundError("matplotlib is not installed: its data folder holds the DejaVu fonts")
    return Path(spec.origin).parent / "mpl-data" / "fonts" / "ttf"


def written(text: str) -> str:
    """Return the text as it can be set: composed, without control characters, what cannot be set as numbers.

    >>> written("Ναυσικά Чайка ñ")
    'Ναυσικά Чайка ñ'
    >>> written("日 7")
    '<U+65E5> 7'
    """
    return "".join(c if _settable(c) else f"<U+{ord(c):04X}>" for c in _clean(text))


def lacking(text: str) -> bool:
    """Say whether something of the text comes out as numbers: the page then says so (`FALLBACK`).

    >>> lacking("Ναυσικά"), lacking("日")
    (False, True)
    """
    return not all(_settable(c) for c in _clean(text))


def back(text: str) -> str:
    """Return what `written` was given, as far as it was composed and had no control characters.

    >>> back(written("日本 7"))
    '日本 7'
    """
    return _NUMBER.sub(lambda found: chr(int(found.group(1), 16)), text)


def width(text: str, size: float, face: str = SANS) -> float:
    """Return how wide a settable text is, in the unit of the size."""
    register()
    return float(pdfmetrics.stringWidth(text, face, size))


def _clean(text: str) -> str:
    """Compose, and let every control character be a space: a line of print has none."""
    plain = unicodedata.normalize("NFC", text)
    return "".join(" " if unicodedata.category(c) in ("Cc", "Zl", "Zp") else c for c in plain)


@cache
def _covered() -> frozenset[int]:
    """Return the characters that both faces have."""
    register()
    both = [frozenset(pdfmetrics.getFont(name).face.charToGlyph) for name in (SANS, BOLD)]
    return both[0] & both[1]


@cache
def _settable(char: str) -> bool:
    return (
        ord(char) in _covered()
        and unicodedata.bidirectional(char) not in JOINED
        and ord(char) not in SHAPED
        and unicodedata.category(char) != "Cf"
    )
