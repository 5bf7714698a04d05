"""What a backup holds: its manifest, and how a row of a table is written as one line of JSON."""

from __future__ import annotations

import json
import math
from base64 import b64decode, b64encode
from collections.abc import Sequence
from datetime import date, datetime
from typing import Annotated, Any, Literal

from pydantic import Field

from service.core.boat import Shape

SCHEMA = "backup/1"
Kind = Literal["text", "integer", "real", "boolean", "time", "date", "bytes"]
Sha256 = Annotated[str, Field(pattern=r"^[0-9a-f]{64}$")]
Name = Annotated[str, Field(pattern=r"^[a-z][a-z0-9_]{0,62}$")]
Count = Annotated[int, Field(ge=0)]


class Column(Shape):
    """A column and the kind of what stands in it; null may stand in any."""

    name: Name
    kind: Kind


class TableMember(Shape):
    """A table: its rows stand in the archive one a line, in `bytes` bytes that have this hash."""

    name: Name
    columns: tuple[Column, ...]
    rows: Count
    bytes: Count
    sha256: Sha256


class FileMember(Shape):
    """A file that belongs to records, named by its content."""

    sha256: Sha256
    bytes: Count


class Lost(Shape):
    """A file that records speak of and that could not be put in: it was missing, or no longer what it was."""

    sha256: Sha256
    health: Literal["missing", "damaged"]


class Manifest(Shape):
    """What is in an archive. `head` is the revision of the database it was taken from, `taken` the moment."""

    schema_: Literal["backup/1"] = Field(default="backup/1", alias="schema")
    software: str
    head: str
    taken: datetime
    tables: tuple[TableMember, ...]
    files: tuple[FileMember, ...]
    lost: tuple[Lost, ...] = ()

    @property
    def rows(self) -> int:
        """Return how many rows all tables have."""
        return sum(table.rows for table in self.tables)


def written(row: Sequence[Any], kinds: Sequence[Kind]) -> bytes:
    r"""Return a row as one line of JSON: a list in the order of the columns, nothing of any value lost.

    >>> written(["ä", 1.5, float("inf"), b"x"], ["text", "real", "real", "bytes"])
    b'["\\u00e4",1.5,"inf","eA=="]\n'
    """
    cells = [
        value if value is None or kind in _AS_IT_IS else _WRITTEN[kind](value)
        for value, kind in zip(row, kinds, strict=True)
    ]
    return json.dumps(cells, separators=(",", ":"), allow_nan=False).encode() + b"\n"


def read(line: bytes, kinds: Sequence[Kind]) -> list[Any]:
    """Return what `written` was given. ValueError where the line is no such row."""
    cells = json.loads(line)
    if not isinstance(cells, list) or len(cells) != len(kinds):
        raise ValueError(f"this is no list of {len(kinds)} values")
    return [None if cell is None else _value(cell, kind) for cell, kind in zip(cells, kinds, strict=True)]


def _value(cell: object, kind: Kind) -> Any:  # noqa: ANN401 - of the column's own kind
    if kind in _AS_IT_IS:
        if type(cell) is not _AS_IT_IS[kind]:
            raise ValueError(f"{str(cell)[:40]!r} is no {kind}")
        return cell
    if kind == "real":
        if isinstance(cell, bool) or not (isinstance(cell, int | float) or cell in _NO_NUMBERS):
            raise ValueError(f"{str(cell)[:40]!r} is no number")
        return float(cell)
    if not isinstance(cell, str):
        raise ValueError(f"{str(cell)[:40]!r} is no {kind}")  # noqa: TRY004 - callers take one error for all bad rows
    if kind == "bytes":
        return b64decode(cell, validate=True)
    if kind == "date":
        return date.fromisoformat(cell)
    found = datetime.fromisoformat(cell)
    if found.tzinfo is None:
        raise ValueError(f"{cell!r} has no time zone")
    return found


def _real(value: float) -> float | str:
    return float(value) if math.isfinite(value) else str(float(value))


_AS_IT_IS: dict[Kind, type] = {"text": str, "integer": int, "boolean": bool}
_NO_NUMBERS = ("inf", "-inf", "nan")
_WRITTEN: dict[Kind, Any] = {
    "real": _real,
    "bytes": lambda value: b64encode(value).decode(),
    "date": date.isoformat,
    "time": datetime.isoformat,
}
