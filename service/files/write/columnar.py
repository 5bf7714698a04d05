"""Rows of cells -> Parquet, written group by group. Apart from the other formats, for its library is large."""

from __future__ import annotations

from collections.abc import Sequence
from typing import IO

import pyarrow as pa
import pyarrow.parquet as pq

from service.files.columns import Cell, Kind
from service.files.write.grids import Sheet

_GROUP = 10_000
_ARROW: dict[Kind, pa.DataType] = {"number": pa.float64(), "whole": pa.int64(), "flag": pa.bool_()}


def put_parquet(stream: IO[bytes], sheet: Sheet) -> None:
    """Write a Parquet file: numbers, whole numbers and flags as such, all else as text."""
    kinds = sheet.kinds or ["text"] * len(sheet.headings)
    fields = [(name, _ARROW.get(kind, pa.string())) for name, kind in zip(sheet.headings, kinds, strict=True)]
    schema = pa.schema(fields)
    with pq.ParquetWriter(stream, schema, compression="zstd") as writer:
        group: list[Sequence[Cell]] = []
        for row in sheet.rows:
            group.append(row)
            if len(group) == _GROUP:
                writer.write_table(_arrow(group, schema))
                group = []
        writer.write_table(_arrow(group, schema))


def _arrow(rows: Sequence[Sequence[Cell]], schema: pa.Schema) -> pa.Table:
    columns = zip(*rows, strict=True) if rows else [[] for _ in schema]
    return pa.table([pa.array(c, f.type) for c, f in zip(columns, schema, strict=True)], schema=schema)
