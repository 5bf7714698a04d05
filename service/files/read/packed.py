"""What is inside a zipped workbook, looked at before anything takes it apart.

Everything is unpacked once, piece by piece and counted, because a size that an archive declares may be a lie. On the
way the sheets' own text is searched for what a reader would pass over in silence (formulas without a value, errors),
and for cells so far out that holding the rectangle up to them would take all memory.
"""

from __future__ import annotations

import io
import re
import zipfile
import zlib
from collections.abc import Iterator
from dataclasses import dataclass, field

from service.files.read.errors import Unreadable

MOST_UNPACKED = 512_000_000
MOST_PARTS = 10_000
MOST_CELLS = 20_000_000
"""The rectangle that a sheet's cells span: 100,000 rows of 200 columns."""
_PIECE = 1 << 20
_OVERLAP = 200
_PLACE = re.compile(rb"""\br=["']([A-Z]{1,3})(\d{1,7})["']""")
_UNWORKED = re.compile(rb"</f>\s*(?:<v\s*/>|<v>\s*</v>)?\s*</c>|<f[^>]*/>\s*</c>")
_FORMULA = re.compile(rb"<f[ >/]|table:formula=")
_FAULT = re.compile(rb"""<c [^>]*\bt=["']e["']""")
_SHEET = re.compile(r"xl/worksheets/[^/]+\.xml")


@dataclass
class Packed:
    """What was seen on the way."""

    remarks: list[str] = field(default_factory=list)


@dataclass
class _Seen:
    rows: int = 0
    columns: int = 0
    formulas: int = 0
    unworked: int = 0
    faults: int = 0


def look_inside(data: bytes, name: str) -> Packed:
    """Return what is to be said of a workbook. Unreadable where it is damaged, bursts, or spans too many cells."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            parts = archive.infolist()
            if len(parts) > MOST_PARTS:
                raise Unreadable(f"{name}: it packs {len(parts)} parts, more than the {MOST_PARTS} taken")
            _refuse_burst(sum(part.file_size for part in parts), name)
            seen, total = _Seen(), 0
            for part in parts:
                for piece in _pieces(archive, part, seen):
                    total += piece
                    _refuse_burst(total, name)
                _refuse_span(seen, part.filename, name)
    except (zipfile.BadZipFile, zlib.error, OSError, EOFError, NotImplementedError, RuntimeError) as error:
        raise Unreadable(f"{name}: this workbook cannot be opened ({error}); save it anew as XLSX or CSV") from None
    return Packed(_remarks(seen, name))


def _refuse_burst(size: int, name: str) -> None:
    if size > MOST_UNPACKED:
        raise Unreadable(f"{name}: it unpacks to more than {MOST_UNPACKED / 1e6:.0f} MB; split it")


def _refuse_span(seen: _Seen, part: str, name: str) -> None:
    if seen.rows * seen.columns > MOST_CELLS:
        size = f"{seen.rows} rows by {seen.columns} columns"
        raise Unreadable(f"{name}: the cells of {part} span {size}; delete what stands far outside the table")
    seen.rows = seen.columns = 0


def _pieces(archive: zipfile.ZipFile, part: zipfile.ZipInfo, seen: _Seen) -> Iterator[int]:
    sheet = _SHEET.fullmatch(part.filename) or part.filename == "content.xml"
    with archive.open(part) as stream:
        end = b""
        while piece := stream.read(_PIECE):
            yield len(piece)
            if sheet:
                end = _search(end + piece, len(end), seen)


def _search(text: bytes, before: int, seen: _Seen) -> bytes:
    """Count in a piece what ends after its first `before` bytes, which were seen before; return the end to keep."""
    places = _PLACE.findall(text)
    for letters in {letters for letters, _ in places}:
        seen.columns = max(seen.columns, _column(letters))
    seen.rows = max(seen.rows, max((int(digits) for _, digits in places), default=0))
    seen.formulas += sum(found.end() > before for found in _FORMULA.finditer(text))
    seen.unworked += sum(found.end() > before for found in _UNWORKED.finditer(text))
    seen.faults += sum(found.end() > before for found in _FAULT.finditer(text))
    return text[-_OVERLAP:]


def _column(letters: bytes) -> int:
    number = 0
    for letter in letters:
        number = number * 26 + letter - 64
    return number


def _remarks(seen: _Seen, name: str) -> list[str]:
    if seen.unworked:
        raise Unreadable(
            f"{name}: {seen.unworked} cells hold formulas that were never worked out; open it in a spreadsheet "
            "program, save it, and try again"
        )
    said = []
    if seen.formulas:
        said.append(f"{seen.formulas} cells hold formulas; the values they were last worked out to are taken")
    if seen.faults:
        said.append(f"{seen.faults} cells hold an error, such as #REF!; they are taken as empty")
    return said
