"""Bytes of a table in text -> how they are encoded. What is taken for granted is said."""

from __future__ import annotations

import codecs
import io
from dataclasses import dataclass

from service.files.read.errors import Unreadable

PIECE = 1 << 20
_SHOWN = 24
_MARKS = {b"\xef\xbb\xbf": "utf-8-sig", b"\xff\xfe": "utf-16", b"\xfe\xff": "utf-16"}


@dataclass(frozen=True)
class Encoding:
    """An encoding by Python's name for it, and what was taken for granted in choosing it."""

    name: str
    remark: str | None = None


def encoding_of(data: bytes, name: str, declared: str | None = None) -> Encoding:
    """Return how a text is encoded: as declared, as its mark says, UTF-8 where all of it is, else Windows-1252.

    The last is a guess, and the remark says where it rests on what. Unreadable where the declared one does not hold,
    and where bytes stand that neither has.
    """
    mark = next((mark for mark in _MARKS if data.startswith(mark)), None)
    if mark is not None:
        return _holding(data, _MARKS[mark], name)
    if declared is not None:
        return _holding(data, _known(declared, name), name)
    wide = _wide(data[:4096])
    if wide is not None:
        return _holding(data, wide, name, f"read as {wide.upper()}, for every other byte of its beginning is nothing")
    broken = _first_broken(data, "utf-8")
    if broken is None:
        return Encoding("utf-8")
    return _western(data, broken, name)


def line_at(data: bytes, place: int) -> int:
    """Return the number of the line in which a byte stands."""
    return data.count(b"\n", 0, place) + 1


def _western(data: bytes, broken: int, name: str) -> Encoding:
    mend = "save the table as CSV UTF-8 or XLSX, or say its encoding in a mapping file"
    neither = _first_broken(data, "cp1252")
    if neither is not None:
        where = f"{name}, line {line_at(data, neither)}"
        raise Unreadable(f"{where}: this is not UTF-8, and byte 0x{data[neither]:02x} is no Windows-1252; {mend}")
    mixed = _also_utf8(data)
    if mixed is not None:
        lines = f"line {line_at(data, broken)} is not UTF-8, but line {mixed} is"
        raise Unreadable(f"{name}: {lines}; two encodings are mixed. Write it in one: {mend}")
    word = data[max(broken - _SHOWN // 2, 0) : broken + _SHOWN // 2].decode("cp1252", "replace")
    words = " ".join(word.split())
    return Encoding("cp1252", f"read as Windows-1252, for it is no UTF-8: line {line_at(data, broken)} has {words!r}")


def _also_utf8(data: bytes) -> int | None:
    """Return the first line that holds letters beyond ASCII as valid UTF-8 of two bytes or more: chance would not."""
    for number, line in enumerate(io.BytesIO(data), start=1):
        if not line.isascii():
            try:
                line.decode("utf-8")
            except UnicodeDecodeError:
                continue
            return number
    return None


def _known(declared: str, name: str) -> str:
    try:
        found = codecs.lookup(declared.strip())
    except (LookupError, ValueError):
        raise Unreadable(f"{name}: there is no encoding {declared!r}; write utf-8, utf-16 or cp1252, say") from None
    if not found._is_text_encoding:  # noqa: SLF001 - no other way to tell base64 from an encoding
        raise Unreadable(f"{name}: {declared!r} is no encoding of text; write utf-8, utf-16 or cp1252, say")
    return "utf-8-sig" if found.name == "utf-8" else found.name


def _holding(data: bytes, encoding: str, name: str, remark: str | None = None) -> Encoding:
    broken = _first_broken(data, encoding)
    if broken is not None:
        where = f"{name}, line {line_at(data, broken)}"
        raise Unreadable(
            f"{where}: this is not {encoding.removesuffix('-sig').upper()}; save the table as CSV UTF-8 or XLSX"
        )
    return Encoding(encoding, remark)


def _first_broken(data: bytes, encoding: str) -> int | None:
    decoder = codecs.getincrementaldecoder(encoding)()
    for start in range(0, len(data), PIECE):
        held = len(decoder.getstate()[0])
        try:
            decoder.decode(data[start : start + PIECE], final=start + PIECE >= len(data))
        except UnicodeDecodeError as error:
            return max(start - held + error.start, 0)
    return None


def _wide(start: bytes) -> str | None:
    """Return utf-16-le or -be where nearly every other byte is nothing: text without its mark."""
    half = len(start) // 2
    if half < 2:  # noqa: PLR2004 - too little to tell
        return None
    for name, nothing in (("utf-16-le", start[1::2]), ("utf-16-be", start[0::2])):
        if nothing.count(0) > 0.8 * half and start.count(0) < 1.2 * half:
            return name
    return None
