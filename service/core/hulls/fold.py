"""What writers vary is taken away: case, diacritics, ligatures, punctuation, ways of writing a number."""

from __future__ import annotations

import re
import unicodedata

_SAME = str.maketrans(
    {
        "æ": "ae",
        "œ": "oe",
        "ø": "o",
        "đ": "d",
        "ð": "d",
        "þ": "th",
        "ł": "l",
        "\u0131": "i",
        "ħ": "h",
        "ŧ": "t",
        "ŋ": "n",
    }
)

TICK = "['\u2019\u00b4`]"
_HALF = re.compile(r"(?<=\d) 1/2(?!\d)|(?<=\d) ?½")
_O_FOR_NOUGHT = re.compile(r"(?<=\d)o(?=\d|o?(?!\w))")
_THOUSANDS = re.compile(r"(?<!\d)(\d),(\d{3})(?![\d.,])")
_DECIMAL = re.compile(r"(?<=\d)[.,](?=\d)")
_POINT = "\u0001"
SET_APART = "\u0002"
_PREFIX = re.compile(r"^\W*s\W?[yv](?=\W+[^\W\d_]|\W*$)", re.IGNORECASE)
_OWN_MARKS = str.maketrans({_POINT: " ", SET_APART: " "})
_APOSTROPHE = re.compile(rf"(?<=[^\W\d_]){TICK}(?=[^\W\d_])")
_OTHER = re.compile(rf"[\W_]+(?<!{_POINT})|{_POINT}(?!\d)")


def fold(name: str) -> str:
    """Return the name in lower case without diacritics, ligatures and punctuation; a decimal between digits stays.

    >>> fold("  HAVDUN-Båt 33 D.S. ")
    'havdun bat 33 d s'
    >>> fold("Lobrac 10,50"), fold("S/Y Œil de Mer's №7")
    ('lobrac 10.50', 'oeil de mers no7')
    """
    text = _PREFIX.sub(" ", name.translate(_OWN_MARKS))
    text = _HALF.sub(".5", text)
    if not text.isascii():
        text = _plain(text)
    text = _THOUSANDS.sub(r"\1\2", text.casefold())
    text = _O_FOR_NOUGHT.sub("0", text)
    text = _DECIMAL.sub(_POINT, _APOSTROPHE.sub("", text))
    return " ".join(_OTHER.sub(" ", text).replace(_POINT, ".").split())


def _plain(text: str) -> str:
    """Return the text without marks: letters to their base, foreign digits to 0-9, raised ones set apart."""
    out: list[str] = []
    for char in text:
        raised = unicodedata.decomposition(char).startswith(("<super>", "<sub>", "<fraction>"))
        for part in unicodedata.normalize("NFKD", char.casefold()).translate(_SAME):
            kind = unicodedata.category(part)
            if kind in ("Mn", "Me", "Cf"):
                continue
            plain = str(unicodedata.decimal(part)) if kind == "Nd" else part
            out.append(f" {plain}" if raised else plain)
    return "".join(out)


def bare_number(text: str) -> str:
    """Return a number without what does not change it: 010.50 -> 10.5.

    >>> bare_number("10.50"), bare_number("105"), bare_number("4.0")
    ('10.5', '105', '4')
    """
    whole, _, part = text.partition(".")
    part = part.rstrip("0")
    whole = whole.lstrip("0") or "0"
    return f"{whole}.{part}" if part else whole
