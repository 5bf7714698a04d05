"""HTML -> a stream of tags and texts, in time that grows with the length alone, however broken the HTML is.

The standard library's parser takes minutes on 200 kB of unclosed tags; a mail reader cannot afford that.
"""

from __future__ import annotations

from collections.abc import Iterator
from html import unescape
from typing import Literal

Piece = tuple[Literal["open", "close", "text"], str]
_RAW = frozenset({"script", "style"})


class _Finder:
    """`str.find` that never searches the same stretch twice for the same needle."""

    def __init__(self, text: str) -> None:
        self._text = text
        self._found: dict[str, int] = {}

    def __call__(self, needle: str, at: int) -> int:
        """Return where `needle` next stands at or after `at`; the text's length where nowhere. `at` must not fall."""
        known = self._found.get(needle, -1)
        if known < at:
            known = self._text.find(needle, at)
            self._found[needle] = known = known if known >= 0 else len(self._text)
        return known


def pieces(html: str) -> Iterator[Piece]:
    """Yield ("open" | "close", tag name) and ("text", decoded text); comments and declarations are left out."""
    find, low = _Finder(html), _Finder(html.lower())
    at = 0
    while at < len(html):
        angle = find("<", at)
        if angle > at:
            yield "text", unescape(html[at:angle])
        if angle == len(html):
            return
        at = angle + 1
        if html.startswith("!--", at):
            at = find("-->", at + 3) + 3
        elif html[at : at + 1] in ("!", "?"):
            at = find(">", at) + 1
        else:
            name_at = at + 1 if html[at : at + 1] == "/" else at
            name = _name(html, name_at)
            if not name:
                yield "text", "<"
                continue
            yield "close" if name_at > at else "open", name
            at = _tag_end(html, find, name_at + len(name))
            if name in _RAW and name_at == angle + 1:
                at = low(f"</{name}", at)


def _name(html: str, at: int) -> str:
    end = at
    while end < len(html) and end - at < 20 and html[end].isascii() and html[end].isalnum():  # noqa: PLR2004 - no tag is longer
        end += 1
    return html[at:end].lower() if end > at and html[at].isalpha() else ""


def _tag_end(html: str, find: _Finder, at: int) -> int:
    """Return the place behind the tag's ">", one inside a quoted attribute value excepted."""
    while True:
        close = find(">", at)
        quote = min(find('="', at), find("='", at))
        if quote > close or close == len(html):
            return close + 1
        at = find(html[quote + 1], quote + 2) + 1
        if at > len(html):
            return close + 1  # the quotation never ends: the first ">" is the best guess
