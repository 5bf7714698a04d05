"""Rows of cells -> an OpenDocument spreadsheet (1.3), written as they come. The same rows give the same bytes."""

from __future__ import annotations

import re
import zipfile
from collections.abc import Iterable, Iterator, Sequence
from typing import IO
from xml.sax.saxutils import escape

from service.files.cells import number_text
from service.files.columns import Cell
from service.files.write.grids import MOST_ROWS, Sheet, Unwritable, fits

_MIME = "application/vnd.oasis.opendocument.spreadsheet"
_MADE = (2000, 1, 1, 0, 0, 0)
_HEAD = (
    '<?xml version="1.0" encoding="UTF-8"?>\n<office:document-content office:version="1.3" '
    'xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
    'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
    'xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><office:body><office:spreadsheet>'
)
_TAIL = "</office:spreadsheet></office:body></office:document-content>"
_MANIFEST = (
    '<?xml version="1.0" encoding="UTF-8"?>\n<manifest:manifest manifest:version="1.3" '
    'xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0">'
    f'<manifest:file-entry manifest:full-path="/" manifest:version="1.3" manifest:media-type="{_MIME}"/>'
    '<manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>'
)
_NO_XML = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")
_SPACES = re.compile(r"^ +| {2,}| +$")
_MOST_HELD = 1 << 20


def put_ods(stream: IO[bytes], sheets: Iterable[Sheet]) -> None:
    """Write a spreadsheet; text stands as text, never as a formula.

    Unwritable names a cell that one cannot hold: control characters, which XML has no way to write, among them.
    """
    with zipfile.ZipFile(stream, "w") as book:
        book.writestr(zipfile.ZipInfo("mimetype", _MADE), _MIME, zipfile.ZIP_STORED)
        book.writestr(zipfile.ZipInfo("META-INF/manifest.xml", _MADE), _MANIFEST, zipfile.ZIP_DEFLATED)
        part = zipfile.ZipInfo("content.xml", _MADE)
        part.compress_type = zipfile.ZIP_DEFLATED
        with book.open(part, "w", force_zip64=True) as content:
            for piece in _gathered(_content(sheets)):
                content.write(piece.encode())


def _gathered(pieces: Iterable[str]) -> Iterator[str]:
    held: list[str] = []
    size = 0
    for piece in pieces:
        held.append(piece)
        size += len(piece)
        if size > _MOST_HELD:
            yield "".join(held)
            held, size = [], 0
    yield "".join(held)


def _content(sheets: Iterable[Sheet]) -> Iterator[str]:
    yield _HEAD
    for sheet in sheets:
        yield f"<table:table table:name={_quoted(sheet.name)}>"
        yield f'<table:table-column table:number-columns-repeated="{len(sheet.headings)}"/>'
        if sheet.above:
            yield f'<table:table-row table:number-rows-repeated="{sheet.above}"><table:table-cell/></table:table-row>'
        yield f"<table:table-row>{''.join(_cell(heading, heading) for heading in sheet.headings)}</table:table-row>"
        for number, row in enumerate(sheet.rows, start=1):
            if number >= MOST_ROWS:
                raise Unwritable(f"more rows than a worksheet's {MOST_ROWS - 1}; export CSV, Parquet or JSON lines")
            cells = "".join(_cells(sheet, row))
            yield f"<table:table-row>{cells}</table:table-row>"
        yield "</table:table>"
    yield _TAIL


def _cells(sheet: Sheet, row: Sequence[Cell]) -> Iterator[str]:
    empty = 0
    for index, cell in enumerate(row):
        if cell is None:
            empty += 1
            continue
        if empty:
            yield f'<table:table-cell table:number-columns-repeated="{empty}"/>'
            empty = 0
        yield _cell(cell, sheet.where(row, index) if isinstance(cell, str) else "")


def _cell(cell: Cell, where: str) -> str:
    if isinstance(cell, bool):
        said = "true" if cell else "false"
        return f'<table:table-cell office:value-type="boolean" office:boolean-value="{said}"/>'
    if isinstance(cell, str):
        fits(cell, where)
        if _NO_XML.search(cell):
            raise Unwritable(f"{where}: it holds a character that a workbook cannot; export CSV or JSON lines")
        lines = "".join(f"<text:p>{_text(line)}</text:p>" for line in cell.split("\n"))
        return f'<table:table-cell office:value-type="string">{lines}</table:table-cell>'
    said = number_text(cell or 0.0)
    return (
        f'<table:table-cell office:value-type="float" office:value="{said}"><text:p>{said}</text:p></table:table-cell>'
    )


def _text(line: str) -> str:
    safe = escape(line, {"\r": "&#13;"})
    spaced = _SPACES.sub(lambda found: f'<text:s text:c="{len(found[0])}"/>', safe)
    return spaced.replace("\t", "<text:tab/>")


def _quoted(name: str) -> str:
    return '"' + escape(name, {'"': "&quot;", "\n": " "}) + '"'
