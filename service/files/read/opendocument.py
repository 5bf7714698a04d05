"""An OpenDocument spreadsheet -> rows of cells as text, one after the other.

Read by the standard's own attributes (OpenDocument 1.3, part 3, 9.1 and 19.385): numbers, dates and yes or no stand in
them as a program wrote them, whatever the cell shows. What is said to be repeated is repeated when it is asked for.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterator
from xml.etree.ElementTree import Element, ParseError, iterparse

from service.files.cells import number_text
from service.files.read.errors import Unreadable
from service.files.read.workbook import Numbered

OFFICE = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}"
TABLE = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}"
TEXT = "{urn:oasis:names:tc:opendocument:xmlns:text:1.0}"
MOST_COLUMNS = 16_384
MOST_ROWS = 1_048_576


def opendocument(data: bytes, name: str) -> Iterator[tuple[str, Numbered]]:
    """Yield each sheet's name, and its rows with their numbers from 1. Unreadable where it cannot be opened."""
    for sheet in _names(data, name):
        yield sheet, _rows(data, sheet, name)


def _names(data: bytes, name: str) -> list[str]:
    return [element.get(f"{TABLE}name", "") for event, element in _walk(data, name, start=True) if event == "table"]


def _rows(data: bytes, sheet: str, name: str) -> Numbered:
    number, inside = 0, False
    for event, element in _walk(data, name):
        if event == "table":
            inside = element.get(f"{TABLE}name", "") == sheet
        elif event == "/table" and inside:
            return
        elif event == "/row" and inside:
            row = _cells(element)
            times = _times(element, "number-rows-repeated", MOST_ROWS)
            if not row:
                number += times
                continue
            if number + times > MOST_ROWS:
                raise Unreadable(f"{name}, sheet {sheet!r}, row {number + 1}: it is repeated {times} times; delete it")
            for _ in range(times):
                number += 1
                yield number, list(row)


def _walk(data: bytes, name: str, *, start: bool = False) -> Iterator[tuple[str, Element]]:
    """Yield where tables begin ("table") and end, and each row at its end; what was passed is let go of."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive, archive.open("content.xml") as stream:
            depth = 0
            for event, element in iterparse(stream, events=("start", "end")):  # noqa: S314 - sizes were looked at before
                if element.tag == f"{TABLE}table":
                    depth += 1 if event == "start" else -1
                    if depth == (1 if event == "start" else 0):  # a table inside a cell is not one of the book's
                        yield ("table" if event == "start" else "/table"), element
                elif event == "end" and element.tag == f"{TABLE}table-row":
                    if depth == 1 and not start:
                        yield "/row", element
                    element.clear()
                elif event == "end" and depth == 0:
                    element.clear()
    except KeyError:
        raise Unreadable(f"{name}: it holds no content.xml; save it anew as ODS, XLSX or CSV") from None
    except (ParseError, zipfile.BadZipFile, OSError, EOFError, ValueError) as error:
        raise Unreadable(f"{name}: this workbook cannot be opened ({error}); save it anew as ODS or CSV") from None


def _cells(row: Element) -> list[str]:
    cells: list[str] = []
    for cell in row:
        if cell.tag not in (f"{TABLE}table-cell", f"{TABLE}covered-table-cell"):
            continue
        text = _text(cell)
        times = _times(cell, "number-columns-repeated", MOST_COLUMNS)
        cells += [text] * times if text else [""] * min(times, MOST_COLUMNS - len(cells))
        if len(cells) > MOST_COLUMNS:
            raise ValueError(f"a row has more than {MOST_COLUMNS} cells")
    while cells and not cells[-1]:
        cells.pop()
    return cells


def _times(element: Element, attribute: str, most: int) -> int:
    said = element.get(TABLE + attribute, "1")
    if not said.isdecimal() or len(said) > 8:  # noqa: PLR2004 - more than any sheet has
        return most + 1
    return int(said)


def _text(cell: Element) -> str:
    kind = cell.get(f"{OFFICE}value-type")
    if kind in ("float", "percentage", "currency"):
        return number_text(float(cell.get(f"{OFFICE}value", "nan")))
    if kind == "boolean":
        return cell.get(f"{OFFICE}boolean-value", "")
    if kind == "date":
        return cell.get(f"{OFFICE}date-value", "")
    said = cell.get(f"{OFFICE}string-value")
    return said if said is not None else "\n".join(_words(p) for p in cell.iter(f"{TEXT}p") if p is not None)


def _words(paragraph: Element) -> str:
    parts = [paragraph.text or ""]
    for inner in paragraph:
        if inner.tag == f"{TEXT}s":
            parts.append(" " * min(_count(inner), 2_000))
        elif inner.tag == f"{TEXT}tab":
            parts.append("\t")
        elif inner.tag == f"{TEXT}line-break":
            parts.append("\n")
        else:
            parts.append(_words(inner))
        parts.append(inner.tail or "")
    return "".join(parts)


def _count(spaces: Element) -> int:
    said = spaces.get(f"{TEXT}c", "1")
    return int(said) if said.isdecimal() and len(said) < 6 else 1  # noqa: PLR2004 - longer than any cell
