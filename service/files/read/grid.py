"""Any file of a table -> its sheets: headings, and rows of text one after the other, as often as they are asked for.

All cells are text. What was found out about the file rather than said is kept with what was taken for granted.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass, replace
from typing import IO

from service.core.words import nearest
from service.files.read.delimited import SEPARATORS, delimited, separator_of
from service.files.read.encoding import encoding_of
from service.files.read.errors import Unreadable
from service.files.read.kinds import Kind, kind_of
from service.files.read.opendocument import opendocument
from service.files.read.packed import look_inside
from service.files.read.workbook import Numbered, worksheets

MOST_COLUMNS = 2_000


@dataclass(frozen=True)
class Layout:
    """How a file is laid out, as far as it is said; the rest is found. Row 1 holds the headings unless said otherwise."""

    encoding: str | None = None
    separator: str | None = None
    sheets: tuple[str, ...] | None = None
    heading_row: int = 1


@dataclass(frozen=True)
class Grid:
    """One sheet: its headings, and its rows with their numbers, empty ones left out."""

    sheet: str | None
    headings: tuple[str, ...]
    rows: Numbered


@dataclass(frozen=True)
class TableFile:
    """A file of one or more tables; `layout` is what was said and found, `remarks` what was taken for granted.

    Text may come from a `stream` in place of the data, once.
    """

    data: bytes
    name: str
    kind: Kind
    layout: Layout
    remarks: tuple[str, ...] = ()
    stream: IO[bytes] | None = None

    @property
    def book(self) -> bool:
        """Say whether it has sheets."""
        return self.kind in ("xlsx", "ods", "xls")

    def grids(self) -> Iterator[Grid]:
        """Yield each sheet asked for that has rows. Unreadable where the file breaks off or a sheet is not there."""
        for sheet, rows in self._sheets():
            grid = self._grid(sheet, rows)
            if grid is not None:
                yield grid

    def named(self, sheet: str | None) -> str:
        """Return what to call a place in the file."""
        return self.name if sheet is None else f"{self.name}, sheet {sheet!r}"

    def _sheets(self) -> Iterator[tuple[str | None, Numbered]]:
        if self.kind == "csv":
            layout = self.layout
            yield (
                None,
                delimited(self.stream or self.data, layout.encoding or "utf-8", layout.separator or ",", self.name),
            )
        elif self.kind == "parquet":
            from service.files.read.columnar import columnar  # noqa: PLC0415 - large, and rarely needed

            yield None, columnar(self.data, self.name)
        else:
            yield from self._chosen()

    def _chosen(self) -> Iterator[tuple[str, Numbered]]:
        found = opendocument(self.data, self.name) if self.kind == "ods" else worksheets(self.data, self.name)
        asked, there = self.layout.sheets, []
        for sheet, rows in found:
            there.append(sheet)
            if asked is None or sheet in asked:
                yield sheet, rows
        for sheet in asked or ():
            if sheet not in there:
                hint = nearest(sheet, there) or ", ".join(there)
                raise Unreadable(f"{self.name}: there is no sheet {sheet!r}; there is {hint!r}")

    def _grid(self, sheet: str | None, rows: Numbered) -> Grid | None:
        wanted = self.layout.heading_row
        for number, cells in rows:
            if number >= wanted and any(map(str.strip, cells)):
                if number > wanted > 1:
                    where = f"{self.named(sheet)}, row {wanted}"
                    raise Unreadable(f"{where}: it is empty; say in the mapping file which row holds the headings")
                headings = [cell.strip() for cell in cells]
                while not headings[-1]:
                    headings.pop()
                if len(headings) > MOST_COLUMNS:
                    where = f"{self.named(sheet)}, row {number}"
                    raise Unreadable(f"{where}: {len(headings)} columns are more than the {MOST_COLUMNS} taken")
                return Grid(sheet, tuple(headings), _filled(rows))
        return None


def _filled(rows: Numbered) -> Numbered:
    return ((number, cells) for number, cells in rows if any(cells))


def open_table(data: bytes, name: str, layout: Layout | None = None, *, known: Collection[str] = ()) -> TableFile:
    """Return the file as a table. `known` headings help to find the separator.

    Unreadable for what is no table of one of the kinds, is damaged, bursts when unpacked, or is JSON lines: these have
    no headings and are read by themselves.
    """
    layout = layout or Layout()
    kind = kind_of(data, name)
    if kind == "csv":
        return _of_text(data, name, layout, known)
    remarks = tuple(look_inside(data, name).remarks) if kind in ("xlsx", "ods") else ()
    return TableFile(data, name, kind, layout, remarks)


def _of_text(data: bytes, name: str, layout: Layout, known: Collection[str]) -> TableFile:
    encoding = encoding_of(data, name, layout.encoding)
    separator = layout.separator or separator_of(data, encoding.name, known)
    if separator not in SEPARATORS:
        raise Unreadable(f"{name}: cells are not separated by {separator!r}; take a comma, semicolon, tab or bar")
    found = replace(layout, encoding=encoding.name, separator=separator)
    return TableFile(data, name, "csv", found, (encoding.remark,) if encoding.remark else ())
