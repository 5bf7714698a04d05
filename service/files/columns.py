"""The columns of a table of records: the record's fields with dots, and how a value stands in a cell.

An empty cell is what nobody said; an empty word cannot be told from it in a table.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime
from functools import cache
from typing import Any, Literal, get_args, get_origin

from pydantic import BaseModel

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.record import Outcome, Proposed, Record, RecordedPlacement

Kind = Literal["text", "number", "whole", "flag", "date", "time", "list", "map"]
Cell = str | float | bool | None
"""What a cell holds when it is written: text, a number, yes or no, or nothing."""


@dataclass(frozen=True)
class Column:
    """A heading, where its value stands in a record, and what kind of value that is."""

    name: str
    path: tuple[str, ...]
    kind: Kind
    default: object = None

    @property
    def field(self) -> str:
        """Return the path as errors of the record's shape name it."""
        return ".".join(self.path)


class BadCell(ValueError):  # noqa: N818 - named for what it is
    """A cell that is not what its column holds; the message says what was expected."""


@cache
def columns() -> tuple[Column, ...]:
    """Return every column, in the order in which they are written."""
    head = [
        Column(f"record.{name}", (name,), _kind(name)) for name in ("reference", "status", "date", "dealer", "hull")
    ]
    return (
        *head,
        *_walk(BoatForm, "", ("form",)),
        *_walk(Configuration, "configuration.", ("configuration",)),
        *_walk(RecordedPlacement, "placement.", ("placement",)),
        *_walk(Outcome, "outcome.", ("outcome",)),
        Column("record.catalogue", ("catalogue",), "text"),
        *_walk(Proposed, "proposed.", ("proposed",)),
        Column("record.answer", ("answer",), "text"),
    )


@cache
def by_name() -> dict[str, Column]:
    """Return the columns by heading."""
    return {column.name: column for column in columns()}


REVISIONS = "record.revisions"
"""In JSON lines only: every state, each with number, who, at, why and row."""
REQUIRED = (
    "record.reference",
    "record.status",
    "configuration.gear",
    "configuration.lower",
    "configuration.upper",
    "configuration.shaft",
)
"""Headings a table of records cannot do without."""


def _kind(name: str) -> Kind:
    return _kind_of(Record.model_fields[name].annotation)


def _walk(model: type[BaseModel], stem: str, path: tuple[str, ...]) -> Iterator[Column]:
    for name, info in model.model_fields.items():
        key = info.alias or name
        annotation = info.annotation
        if key == "schema":
            continue
        if isinstance(annotation, type) and issubclass(annotation, BaseModel):
            yield from _walk(annotation, f"{stem}{key}.", (*path, name))
        else:
            yield Column(stem + key, (*path, name), _kind_of(annotation), info.default)


def _kind_of(annotation: object) -> Kind:
    origin = get_origin(annotation)
    if origin is tuple:
        return "list"
    if origin is dict:
        return "map"
    if origin is Literal:
        return "whole" if all(isinstance(value, int) for value in get_args(annotation)) else "text"
    simple: dict[object, Kind] = {
        str: "text", float: "number", int: "whole", bool: "flag", date: "date", datetime: "time",
    }  # fmt: skip
    if annotation in simple:
        return simple[annotation]
    inner = [arg for arg in get_args(annotation) if arg is not type(None)]
    return _kind_of(inner[0])


# --- record -> cells ------------------------------------------------------------------------------------


def values(record: Record) -> dict[str, Any]:
    """Return what the record says, by heading, as JSON values; nothing for what nobody said."""
    said = {}
    for column in columns():
        value: Any = record
        for part in column.path:
            value = getattr(value, part)
        if value is not None and value != column.default:
            said[column.name] = _plain(value)
    return said


def _plain(value: Any) -> Any:  # noqa: ANN401 - a field of any type
    if isinstance(value, BaseModel):
        return value.model_dump(mode="json", by_alias=True, exclude_none=True)
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    if isinstance(value, (date, datetime)):
        return value.isoformat()
    return value


def cells(record: Record) -> list[Cell]:
    """Return one row: a cell a column, JSON text where a column holds a list or a map."""
    said = values(record)
    return [_cell(said.get(column.name), column.kind) for column in columns()]


def _cell(value: Any, kind: Kind) -> Cell:  # noqa: ANN401 - JSON is any
    if value is None:
        return None
    if kind in ("list", "map"):
        return json.dumps(value, ensure_ascii=False, separators=(",", ":"))
    return value  # type: ignore[no-any-return] # the column's kind says it is one of Cell's


# --- cells -> record ------------------------------------------------------------------------------------

_DATE = re.compile(r"\d{4}-\d\d-\d\d(?:[T ]00:00(?::00(?:\.0+)?)?)?")
_TIME = re.compile(r"\d{4}-\d\d-\d\d[T ]\d\d:\d\d(?::\d\d(?:\.\d+)?)?(?:Z|[+-]\d\d:?\d\d)?")
_FLAGS = {"true": True, "yes": True, "1": True, "false": False, "no": False, "0": False}


def read_cell(column: Column, value: Any) -> Any:  # noqa: ANN401 - JSON is any
    """Return a cell's text (or a JSON value) as its column's kind. BadCell says what was expected.

    A quantity with a unit stays text here: the record's shape converts it.
    """
    if column.kind in ("list", "map"):
        return _structure(value, list if column.kind == "list" else dict)
    if isinstance(value, (dict, list)):
        raise BadCell("expected a single value, not a list or a map")
    if column.kind == "text":
        return value if isinstance(value, str) else _word(value)
    if column.kind in ("date", "time"):
        pattern, shape = (_DATE, "YYYY-MM-DD") if column.kind == "date" else (_TIME, "YYYY-MM-DDThh:mm:ssZ")
        if not isinstance(value, str) or not pattern.fullmatch(value.strip()):
            raise BadCell(f"expected a {column.kind} written {shape}")
        return value.strip()[:10] if column.kind == "date" else value.strip()
    if not isinstance(value, str):
        return value
    return _reader[column.kind](value.strip())


def _word(value: object) -> str:
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        raise BadCell("expected text")
    return number_text(value)


def number_text(value: float) -> str:
    """Return a number as text, whole ones without a point.

    >>> number_text(1985.0), number_text(0.1)
    ('1985', '0.1')
    """
    return str(int(value)) if abs(value) < 1e15 and value == int(value) else repr(value)  # noqa: PLR2004 - exact so far


def _number(text: str) -> float | str:
    # What a program writes is a number as it stands; how a person writes one is for the record's shape to judge.
    try:
        value = float(text)
    except ValueError:
        return text
    return value if text in (repr(value), repr(value).removesuffix(".0")) else text


def _whole(text: str) -> int | str:
    return int(text.split(".", maxsplit=1)[0]) if re.fullmatch(r"[+-]?\d{1,15}(\.0*)?", text) else text


def _flag(text: str) -> bool:
    if text.casefold() not in _FLAGS:
        raise BadCell("expected true or false")
    return _FLAGS[text.casefold()]


_reader = {"number": _number, "whole": _whole, "flag": _flag}


def _structure(value: Any, wanted: type) -> Any:  # noqa: ANN401 - JSON is any
    found = parse_json(value) if isinstance(value, str) else value
    if not isinstance(found, wanted):
        raise BadCell(f"expected a JSON {'list, such as [...]' if wanted is list else 'map, such as {...}'}")
    return found


def parse_json(text: str) -> Any:  # noqa: ANN401 - JSON is any
    """Return the JSON value in `text`; BadCell for what is none, NaN and infinities among it."""
    try:
        return json.loads(text, parse_constant=_refuse)
    except RecursionError:
        raise BadCell("expected JSON; this is nested too deep") from None
    except ValueError as error:
        raise BadCell(f"expected JSON; {error}") from None


def _refuse(word: str) -> float:
    raise ValueError(f"{word} is no number")


# --- what a spreadsheet would take for a formula ----------------------------------------------------------

_FORMULA = "=+-@\t\r\n\0＝＋－＠"  # noqa: RUF001 - the full-width forms are meant: some spreadsheets take them too


def guard(text: str) -> str:
    """Return text that no spreadsheet takes for a formula, by one apostrophe where it needs one; `unguard` undoes it.

    >>> guard("=1+1"), guard("'=1+1"), guard("it's"), guard("'t")
    ("'=1+1", "''=1+1", "it's", "'t")
    """
    return f"'{text}" if text.lstrip("'")[:1] in _FORMULA and text.strip("'") else text


def unguard(text: str) -> str:
    """Return text without exactly one guard, if it has one.

    >>> unguard("'=1+1"), unguard("''=1+1"), unguard("'t")
    ('=1+1', "'=1+1", "'t")
    """
    return text[1:] if text[:1] == "'" and guard(text[1:]) == text else text
