"""Bytes -> text, whatever character set was declared."""

from __future__ import annotations

import codecs
from contextlib import suppress
from email.errors import HeaderParseError
from email.header import decode_header

_TRUSTED = ("utf", "iso8859", "cp125", "koi8", "mac", "gb", "big5", "shift_jis", "euc", "latin", "cp437", "cp850")
_WESTERN = ("iso8859-1", "cp1252", "ascii", "latin-1")
LONGEST_HEADER = 4_000


def text_of(data: bytes, declared: str | None) -> str:
    """Return `data` as text: the declared set where it holds, else UTF-8, else Windows-1252; never raises.

    Bytes above ASCII that form valid UTF-8 are UTF-8 even where a western set was declared: chance would not.
    """
    name = _codec(declared)
    for candidate in ("utf-8", name) if name is None or name in _WESTERN else (name, "utf-8"):
        if candidate is None:
            continue
        try:
            return _clean(data.decode("cp1252" if candidate in _WESTERN else candidate))
        except (UnicodeError, LookupError):
            continue
    return _clean(data.decode("cp1252", "replace"))


def _codec(declared: str | None) -> str | None:
    try:
        name = codecs.lookup((declared or "").strip()).name
    except (LookupError, ValueError):
        return None
    return name if name.startswith(_TRUSTED) or name in _WESTERN else None


def _clean(text: str) -> str:
    text = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    return "".join(c if c.isprintable() or c in "\n\t" or c.isspace() else " " for c in text).replace("\u00ad", "")


def header_text(raw: object) -> str:
    """Return a raw header value as text on one line: encoded words decoded, raw 8-bit guessed; never raises."""
    value = " ".join(str(raw)[:LONGEST_HEADER].split())
    with suppress(UnicodeEncodeError):  # already text beyond ASCII: nothing to guess
        value = text_of(value.encode("ascii", "surrogateescape"), None)
    try:
        parts = decode_header(value)
    except (HeaderParseError, ValueError):
        return value
    joined = "".join(p if isinstance(p, str) else text_of(p, charset) for p, charset in parts)
    return " ".join(joined.split())
