"""The columns of a table of records: the record's fields with dots, and how a value stands in a cell.

An empty cell is what nobody said; an empty word cannot be told from it in a table.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date, datetime
from functools import cache
from operator import attrgetter
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
MEASUREMENTS = "record.measurements"
"""In JSON lines only: all that was measured, value by value."""
MERGED = "record.merged_into"
"""In JSON lines only: the record that this one is, written down twice, and the revision of that one that took it in."""
ATTACHED = "record.attachments"
"""In JSON lines only: which files belong to the record, by hash. They say what there is and bring nothing along."""
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
    return {
        column.name: _plain(value)
        for column, value in zip(columns(), _getter()(record), strict=True)
        if value is not None and value != column.default
    }


@cache
def _getter() -> Callable[[Record], tuple[Any, ...]]:
    return attrgetter(*(".".join(column.path) for column in columns()))


def _plain(value: Any) -> Any:  # noqa: ANN401 - a field of any type
    if isinstance(value, (str, int, float)):
        return value
    if isinstance(value, BaseModel):
        return value.model_dump(mode="json", by_alias=True, exclude_none=True)
    if isinstance(value, tuple):
        return [_plain(item) for item in value]
    if isinstance(value, (date, datetime)):
        return value.isoformat()
    return value


def cells(record: Record) -> list[Cell]:
    """Return one row: a cell a column, JSON text where a column holds a list or a map."""
    return [
        None if value is None or value == column.default else _cell(_plain(value), column.kind)
        for column, value in zip(columns(), _getter()(record), strict=True)
    ]


def _cell(value: Any, kind: Kind) -> Cell:  # noqa: ANN401 - JSON is any
    if value is None:
        return None
    if kind in ("list", "map"):
        return json.dumps(value, ensure_ascii=False, separators=(",", ":"))
    return value  # type: ignore[no-any-return] # the column's kind says it is one of Cell's
