"""Records as CSV, TSV, a workbook, Parquet or JSON lines, written as they come. The same records give the same bytes."""

from __future__ import annotations

import io
import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import IO, Any, Literal

from service.core.measurement import Measurement
from service.core.record import Record
from service.core.revision import Revision
from service.files.columns import ATTACHED, MEASUREMENTS, MERGED, REVISIONS, cells, columns, values
from service.files.write.grids import Sheet, Unwritable, put_csv, put_xlsx
from service.files.write.opendocument import put_ods

__all__ = ["Format", "Told", "Unwritable", "put_lines", "put_records", "write_csv", "write_jsonl", "write_xlsx"]

Format = Literal["csv", "tsv", "xlsx", "ods", "parquet", "jsonl"]


@dataclass(frozen=True)
class Told:
    """All that JSON lines say of a record: its states, what was measured, what it was merged into, which files it has."""

    history: Sequence[Revision]
    measured: Sequence[Measurement] = ()
    merged: tuple[str, int] | None = None
    attached: Sequence[Mapping[str, Any]] = ()


def put_records(stream: IO[bytes], records: Iterable[Record], format_: Format) -> None:
    """Write records as they stand, in any format but JSON lines. Unwritable names what a workbook cannot hold."""
    names = [column.name for column in columns()]
    sheet = Sheet("records", names, map(cells, records), [column.kind for column in columns()])
    if format_ in ("csv", "tsv"):
        put_csv(stream, sheet, "\t" if format_ == "tsv" else ",")
    elif format_ == "xlsx":
        put_xlsx(stream, [sheet])
    elif format_ == "ods":
        put_ods(stream, [sheet])
    elif format_ == "parquet":
        from service.files.write.columnar import put_parquet  # noqa: PLC0415 - large, and rarely needed

        put_parquet(stream, sheet)
    else:
        raise ValueError(f"{format_} holds histories; put_lines writes them")


def put_lines(stream: IO[bytes], told: Iterable[Told]) -> None:
    """Write one JSON object a record: its columns as it stands, and every state it was in (`record.revisions`).

    With it what was measured (`record.measurements`), the record it was merged into (`record.merged_into`), and which
    files belong to it (`record.attachments`).
    """
    for one in told:
        stream.write(json.dumps(_line(one), ensure_ascii=False, allow_nan=False).encode() + b"\n")


def _line(told: Told) -> dict[str, Any]:
    record = told.history[-1].record
    states = [
        {"number": r.number, "who": r.who, "at": r.at.isoformat(), "why": r.why, "row": values(r.record)}
        for r in told.history
    ]
    rows = [row.model_dump(mode="json", exclude_none=True) for row in told.measured]
    into = told.merged
    return {
        **values(record),
        REVISIONS: states,
        **({MEASUREMENTS: rows} if rows else {}),
        **({MERGED: {"reference": into[0], "revision": into[1]}} if into else {}),
        **({ATTACHED: [*map(dict, told.attached)]} if told.attached else {}),
    }


def write_csv(records: Iterable[Record]) -> bytes:
    """Return records as CSV."""
    return _written(records, "csv")


def write_xlsx(records: Iterable[Record]) -> bytes:
    """Return records as a workbook with one sheet, `records`."""
    return _written(records, "xlsx")


def _written(records: Iterable[Record], format_: Format) -> bytes:
    out = io.BytesIO()
    put_records(out, records, format_)
    return out.getvalue()


def write_jsonl(
    histories: Iterable[Sequence[Revision]],
    measured: Mapping[str, Sequence[Measurement]] | None = None,
    merged: Mapping[str, tuple[str, int]] | None = None,
) -> bytes:
    """Return histories as JSON lines, with what was measured and merged under each reference."""
    out = io.BytesIO()
    measured, merged = measured or {}, merged or {}
    names = ((history, history[-1].record.reference) for history in histories)
    put_lines(out, (Told(history, measured.get(name, ()), merged.get(name)) for history, name in names))
    return out.getvalue()
