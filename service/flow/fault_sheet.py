"""The rows of a file that were not taken, as a file of the same kind with what is wrong in it: to be mended and imported.

Its headings are the file's own and stand in the same row, with three more in front that say where the row stood, which
column is meant, and what was expected. They are not read when it comes back.
"""

from __future__ import annotations

import io
import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import IO

from service.core.batch import Batch, RowOutcome
from service.files.read.grid import Grid
from service.files.read.mapping_file import read_mapping
from service.files.read.record_lines import lines
from service.files.read.record_plan import FAULTS
from service.files.read.records_file import RecordsFile, open_records
from service.files.write.grids import LONGEST_CELL, Sheet, put_raw, put_xlsx
from service.files.write.opendocument import put_ods
from service.flow.import_records import MappingFile
from service.flow.resume_import import kept_file
from service.store.unit import UnitOfWork

HEADINGS = (f"{FAULTS}row", f"{FAULTS}column", f"{FAULTS}expected")


@dataclass(frozen=True)
class FaultSheet:
    """The file, the ending its name should have, and how many rows are in it."""

    data: bytes
    ending: str
    rows: int


def fault_sheet(file: RecordsFile, outcomes: Sequence[RowOutcome]) -> FaultSheet:
    """Return the rejected rows of a file in its own format (a workbook of the old kind as XLSX)."""
    wrong = {(one.sheet, one.row): one for one in outcomes if one.outcome == "rejected"}
    out = io.BytesIO()
    table = file.table
    if table is None:
        _put_lines(out, file, wrong)
        return FaultSheet(out.getvalue(), "jsonl", len(wrong))
    if table.kind == "csv":
        separator = table.layout.separator or ","
        for sheet in _sheets(file, wrong):
            put_raw(out, sheet, separator)
        return FaultSheet(out.getvalue(), "tsv" if separator == "\t" else "csv", len(wrong))
    if table.kind == "parquet":
        from service.files.write.columnar import put_parquet  # noqa: PLC0415 - large, and rarely needed

        for sheet in _sheets(file, wrong):
            put_parquet(out, sheet)
    elif table.kind == "ods":
        put_ods(out, _sheets(file, wrong))
    else:
        put_xlsx(out, _sheets(file, wrong))
    return FaultSheet(out.getvalue(), "xlsx" if table.kind == "xls" else table.kind, len(wrong))


def kept_fault_sheet(uow: UnitOfWork, import_id: str) -> FaultSheet:
    """Return the same for an import that was made before. Conflict where there is no such import."""
    with uow:
        batch: Batch = uow.imports.get(import_id)
        return fault_sheet(kept_file(uow, batch), tuple(uow.imports.outcomes(import_id)))


def preview_fault_sheet(
    data: bytes, name: str, mapping: MappingFile | None, outcomes: Sequence[RowOutcome]
) -> FaultSheet:
    """Return the same for a preview, of which nothing was kept."""
    rules = read_mapping(mapping.data, mapping.name) if mapping else None
    return fault_sheet(open_records(data, name, rules), outcomes)


def _sheets(file: RecordsFile, wrong: Mapping[tuple[str | None, int], RowOutcome]) -> Iterator[Sheet]:
    table = file.table
    if table is None:
        return
    there = {sheet for sheet, _ in wrong}
    for grid in table.grids():
        if grid.sheet in there:
            above = table.layout.heading_row - 1
            yield Sheet(grid.sheet or "", [*HEADINGS, *grid.headings], _rows(grid, wrong), above=above)


def _rows(grid: Grid, wrong: Mapping[tuple[str | None, int], RowOutcome]) -> Iterator[list[str | None]]:
    width = len(grid.headings)
    for number, cells in grid.rows:
        found = wrong.get((grid.sheet, number))
        if found is not None:
            filled = [cell or None for cell in cells]
            yield [str(number), *_told(found), *filled, *[None] * (width - len(filled))]


def _told(found: RowOutcome) -> tuple[str, str]:
    faults = found.detail or ()
    columns = "; ".join(fault["column"] or "the row" for fault in faults)
    return columns[:LONGEST_CELL], "; ".join(fault["expected"] for fault in faults)[:LONGEST_CELL]


def _put_lines(out: IO[bytes], file: RecordsFile, wrong: Mapping[tuple[str | None, int], RowOutcome]) -> None:
    for number, said in lines(file.data, file.name):
        found = wrong.get((None, number))
        if found is not None:
            column, expected = _told(found)
            told = {"error": {"row": number, "column": column, "expected": expected}}
            line = {**told, **said} if isinstance(said, Mapping) else told
            out.write(json.dumps(line, ensure_ascii=False).encode() + b"\n")
