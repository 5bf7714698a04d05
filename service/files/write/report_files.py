"""A report as files, each format by its own writer: the same report gives the same bytes."""

from __future__ import annotations

import io
from collections.abc import Callable, Sequence
from typing import BinaryIO, Literal, get_args

from service.core.report import Cell, Report, Table, about
from service.files.columns import Kind
from service.files.write.grids import Sheet, put_csv

Format = Literal["csv", "xlsx", "parquet", "json", "html", "pdf"]
FORMATS: tuple[Format, ...] = get_args(Format)
_KINDS: dict[str, Kind] = {"whole": "whole", "number": "number", "share": "number"}


def report_files(report: Report, formats: Sequence[Format] = FORMATS) -> dict[str, bytes]:
    """Return the report's files by name.

    CSV and Parquet have a file for each table, and one for what the report says of itself; the others hold everything.
    """
    found: dict[str, bytes] = {}
    for one in FORMATS:
        if one in formats:
            found |= _WRITERS[one](report)
    return found


def sheets(report: Report) -> list[Sheet]:
    """Return the tables as sheets, what the report says of itself first."""
    first = Sheet("about", ("what", "is"), [(name, _text(cell)) for name, cell in about(report)], ("text", "text"))
    return [first, *(_sheet(table) for table in report.tables)]


def _sheet(table: Table) -> Sheet:
    names = [column.name for column in table.columns]
    kinds: list[Kind] = [_KINDS.get(column.kind, "text") for column in table.columns]
    return Sheet(table.id, names, table.rows, kinds)


def _text(cell: Cell) -> str:
    return "" if cell is None else str(cell)


def _tables(report: Report, ending: str, put: Callable[[BinaryIO, Sheet], None]) -> dict[str, bytes]:
    """Return a file for each sheet."""
    found = {}
    for sheet in sheets(report):
        out = io.BytesIO()
        put(out, sheet)
        found[f"{report.name}-{sheet.name}.{ending}"] = out.getvalue()
    return found


def _csv(report: Report) -> dict[str, bytes]:
    return _tables(report, "csv", put_csv)


def _parquet(report: Report) -> dict[str, bytes]:
    from service.files.write.columnar import put_parquet  # noqa: PLC0415 - large, and rarely needed

    return _tables(report, "parquet", put_parquet)


def _json(report: Report) -> dict[str, bytes]:
    return {f"{report.name}.json": report.model_dump_json(by_alias=True, indent=1).encode() + b"\n"}


def _xlsx(report: Report) -> dict[str, bytes]:
    from service.files.write.report_xlsx import workbook  # noqa: PLC0415 - rarely needed

    return {f"{report.name}.xlsx": workbook(report)}


def _html(report: Report) -> dict[str, bytes]:
    from service.files.write.report_html import page  # noqa: PLC0415 - plots take a large library

    return {f"{report.name}.html": page(report)}


def _pdf(report: Report) -> dict[str, bytes]:
    from service.files.write.report_pdf import paper  # noqa: PLC0415 - plots take a large library

    return {f"{report.name}.pdf": paper(report)}


_WRITERS: dict[Format, Callable[[Report], dict[str, bytes]]] = {
    "csv": _csv,
    "xlsx": _xlsx,
    "parquet": _parquet,
    "json": _json,
    "html": _html,
    "pdf": _pdf,
}
