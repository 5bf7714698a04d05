"""A Parquet file -> rows of cells as text, batch by batch."""

from __future__ import annotations

import io
import json
from collections.abc import Callable, Iterator
from datetime import date, datetime, time
from decimal import Decimal
from typing import Any

import pyarrow as pa
import pyarrow.parquet as pq

from service.files.cells import number_text
from service.files.read.errors import Unreadable

BATCH = 2_000
MOST_ROWS_A_GROUP = 20_000_000
MOST_UNPACKED = 1_000_000_000


def columnar(data: bytes, name: str) -> Iterator[tuple[int, list[str]]]:
    """Yield the headings as row 1, and each row's cells after it. Unreadable where it cannot be opened."""
    try:
        file = pq.ParquetFile(io.BytesIO(data))
        _refuse_burst(file, name)
        yield 1, [str(field.name) for field in file.schema_arrow]
        number = 1
        for batch in file.iter_batches(batch_size=BATCH):
            columns = [[_as_text(value) for value in column.to_pylist()] for column in batch.columns]
            for row in zip(*columns, strict=True):
                number += 1
                yield number, list(row)
    except (pa.ArrowException, OSError, ValueError, OverflowError) as error:
        raise Unreadable(f"{name}: this Parquet file cannot be read ({str(error)[:200]}); write it anew") from None


def _refuse_burst(file: pq.ParquetFile, name: str) -> None:
    groups = [file.metadata.row_group(n) for n in range(file.metadata.num_row_groups)]
    if sum(group.total_byte_size for group in groups) > MOST_UNPACKED or any(
        group.num_rows > MOST_ROWS_A_GROUP for group in groups
    ):
        raise Unreadable(f"{name}: it unpacks to more than {MOST_UNPACKED / 1e6:.0f} MB; split it")


def _as_text(value: Any) -> str:  # noqa: ANN401 - a cell of any type
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    for kinds, written in _WRITTEN:
        if isinstance(value, kinds):
            return str(written(value))
    return json.dumps(value, ensure_ascii=False, default=str)


_WRITTEN: tuple[tuple[tuple[type, ...], Callable[[Any], str]], ...] = (
    ((str, Decimal), str),
    ((int, float), number_text),
    ((date, datetime, time), lambda value: value.isoformat()),
    ((bytes,), lambda value: value.decode("utf-8", "replace")),
)
