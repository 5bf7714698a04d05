"""What a file of a table is: told by its content, never by its name."""

from __future__ import annotations

from typing import Literal

from service.files.read.errors import Unreadable

Kind = Literal["csv", "xlsx", "ods", "xls", "parquet", "jsonl"]
"""`csv` stands for every text with separators, `xls` for workbooks as they were written before 2007."""
LARGEST = 256_000_000
_TAKEN = "a table as CSV, TSV, XLSX, ODS, Parquet or JSON lines"
_OTHERS = {
    b"\x89PNG": "a PNG picture", b"\xff\xd8\xff": "a JPEG picture", b"%PDF": "a PDF", b"\x1f\x8b": "a gzip archive",
    b"SQLite format 3": "an SQLite database",
}  # fmt: skip
_ODS = b"application/vnd.oasis.opendocument.spreadsheet"


def kind_of(data: bytes, name: str) -> Kind:
    """Return what the bytes hold. Unreadable for an empty file, one too large, and what is no table."""
    if len(data) > LARGEST:
        raise Unreadable(f"{name}: {len(data) / 1e6:.0f} MB, more than the {LARGEST / 1e6:.0f} MB taken; split it")
    start = data[:4096].removeprefix(b"\xef\xbb\xbf").lstrip()
    if not start:
        raise Unreadable(f"{name}: it is empty; give {_TAKEN} with headings and rows")
    for magic, what in _OTHERS.items():
        if data.startswith(magic):
            raise Unreadable(f"{name}: it is {what}; give {_TAKEN}")
    if data.startswith(b"PAR1"):
        return "parquet"
    if data.startswith(b"PK\x03\x04"):
        return "ods" if _ODS in data[:200] else "xlsx"
    if data.startswith(b"\xd0\xcf\x11\xe0"):
        return "xls"
    return "jsonl" if _bare(start).startswith(b"{") else "csv"


def _bare(start: bytes) -> bytes:
    """Return the beginning of a text without what UTF-16 puts around its letters."""
    return start.removeprefix(b"\xff\xfe").removeprefix(b"\xfe\xff").replace(b"\0", b"").lstrip()
