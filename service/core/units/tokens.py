"""Text -> tokens, one pass, positions kept. A number token holds every reading its separators allow."""

from __future__ import annotations

import unicodedata
from typing import Literal, NamedTuple

Kind = Literal["num", "frac", "word", "mark", "bad"]
DIGITS = frozenset("0123456789")
MOST_DIGITS = 12
GROUP = 3
_ALIKE = {
    **dict.fromkeys("\u2032\u2019\u2018\u02b9\u00b4\u0060\u201b\u2035", "'"),
    **dict.fromkeys("\u2033\u201d\u201c\u201e\u02ba\u201f\u2036", '"'),
    **dict.fromkeys("\u2212\u2012\u2013\u2014\u2010\u2011\ufe63\uff0d", "-"),
    **dict.fromkeys("\u00ba\u02da", "°"),
    **dict.fromkeys("\u2044\u2215", "/"),
}


class Token(NamedTuple):
    """A piece of the text at [start, end). `values`: a number's readings, decimal first.

    `closes`: ends a quotation. `first`: first of its line. `capital`: a word with a capital letter.
    """

    kind: Kind
    start: int
    end: int
    text: str
    values: tuple[float, ...] = ()
    closes: bool = False
    first: bool = False
    capital: bool = False

    @property
    def digits(self) -> bool:
        """Say whether it is a plain whole number."""
        return self.kind == "num" and self.text.isdigit()


def tokenize(text: str) -> list[Token]:
    """Return the tokens of `text`; white space separates and is left out. Linear in the text's length."""
    found: list[Token] = []
    opened: dict[str, bool] = {}
    at, first = 0, True
    while at < len(text):
        char = _ALIKE.get(text[at], text[at])
        if char.isspace():
            if char == "\n":
                opened.clear()
                first = True
            at += 1
            continue
        token = _token(text, at, char, opened)
        found.append(token._replace(first=True) if first else token)
        first = False
        at = token.end
    return found


def _token(text: str, at: int, char: str, opened: dict[str, bool]) -> Token:
    if char in DIGITS or (char in ".," and _starts_decimal(text, at)):
        return _number(text, at)
    if unicodedata.category(char) == "No" and "<fraction>" in unicodedata.decomposition(char):
        return Token("frac", at, at + 1, char, (unicodedata.numeric(char),))
    if char.isalpha():
        end = at + 1
        while end < len(text) and text[end].isalpha() and text[end] not in _ALIKE:
            end += 1
        return Token("word", at, end, text[at:end].casefold(), capital=char.isupper())
    if char in "'\"":
        return _quote(text, at, char, opened)
    return Token("mark", at, at + 1, char)


def _quote(text: str, at: int, char: str, opened: dict[str, bool]) -> Token:
    end = at + 1
    if char == "'" and end < len(text) and _ALIKE.get(text[end], text[end]) == "'":
        char, end = '"', end + 1
    before = text[at - 1] if at else " "
    after = text[end] if end < len(text) else " "
    closes = opened.pop(char, False)
    if not closes and (before.isspace() or before in "([{") and after.isalpha():
        opened[char] = True
    return Token("mark", at, end, char, closes=closes)


def _starts_decimal(text: str, at: int) -> bool:
    follows = at + 1 < len(text) and text[at + 1] in DIGITS
    return follows and text[at] == "." and (at == 0 or not (text[at - 1].isalnum() or text[at - 1] in ".,"))


def _number(text: str, at: int) -> Token:
    """Read digits and the separators between them; readings are decided by where the separators stand."""
    cuts, end = [at - 1], at
    while end < len(text):
        if text[end] in DIGITS:
            end += 1
        elif text[end] in ".,'\u2019" and end + 1 < len(text) and text[end + 1] in DIGITS:
            if text[end] in "'\u2019" and not _swiss(text, end):
                break
            cuts.append(end)
            end += 1
        else:
            break
    ends = [*cuts[1:], end]
    groups = [text[a + 1 : b] for a, b in zip(cuts, ends, strict=True)]
    seps = "".join(text[cut] for cut in cuts[1:]).replace("\u2019", "'")
    values = _readings(groups, seps)
    return Token("num" if values else "bad", at, end, text[at:end], values)


def _swiss(text: str, at: int) -> bool:
    """Say whether the apostrophe at `at` groups thousands: exactly three digits and no inch mark behind."""
    run = text[at + 1 : at + 2 + GROUP]
    three = len(run) >= GROUP and all(c in DIGITS for c in run[:GROUP])
    return three and not (len(run) > GROUP and (run[GROUP] in DIGITS or _ALIKE.get(run[GROUP], run[GROUP]) in "'\"/"))


def _readings(groups: list[str], seps: str) -> tuple[float, ...]:  # noqa: PLR0911 - one for each separator
    if sum(map(len, groups)) > MOST_DIGITS:
        return ()
    if not seps:
        return (float(groups[0]),)
    grouped = 1 <= len(groups[0]) <= GROUP and groups[0][0] != "0"
    last, rest = seps[-1], seps[:-1]
    if not rest:
        decimal = float(f"{groups[0] or 0}.{groups[1]}")
        if grouped and len(groups[1]) == GROUP:
            thousands = float(groups[0] + groups[1])
            return (thousands,) if last == "'" else (decimal, thousands)
        return () if last == "'" else (decimal,)
    if not grouped or any(len(group) != GROUP for group in groups[1:-1]) or len(set(rest)) > 1:
        return ()
    if last == rest[0]:
        return (float("".join(groups)),) if len(groups[-1]) == GROUP else ()
    return (float("".join(groups[:-1]) + "." + groups[-1]),)
