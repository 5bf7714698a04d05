"""How a value stands in a cell, and how it is read from one. Cells come as text; the column says what they hold."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from functools import partial
from typing import Any

from service.files.columns import Column


class BadCell(ValueError):  # noqa: N818 - named for what it is
    """A cell that is not what its column holds; the message says what was expected."""


_DATE = re.compile(r"\d{4}-\d\d-\d\d(?:[T ]00:00(?::00(?:\.0+)?)?)?")
_TIME = re.compile(r"\d{4}-\d\d-\d\d[T ]\d\d:\d\d(?::\d\d(?:\.\d+)?)?(?:Z|[+-]\d\d:?\d\d)?")
_FLAGS = {"true": True, "yes": True, "1": True, "false": False, "no": False, "0": False}


def reader_of(column: Column) -> Callable[[str], Any]:
    """Return what reads this column's cells where they are text, quickly. BadCell says what was expected."""
    if column.kind == "text":
        return _as_it_stands
    if column.kind == "number":
        return _number
    if column.kind in ("list", "map"):
        return partial(_structure, wanted=list if column.kind == "list" else dict)
    return partial(read_cell, column)


def _as_it_stands(text: str) -> str:
    return text


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
    if text.isdecimal() and text.isascii() and len(text) < 16 and (text[0] != "0" or text == "0"):  # noqa: PLR2004 - exact so far
        return float(text)
    try:
        value = float(text)
    except ValueError:
        return text
    written = repr(value)
    return value if text in (written, written.removesuffix(".0")) else text


def _whole(text: str) -> int | str:
    return int(text.split(".", maxsplit=1)[0]) if re.fullmatch(r"[+-]?\d{1,15}(\.0*)?", text) else text


def _flag(text: str) -> bool:
    if text.casefold() not in _FLAGS:
        raise BadCell("expected true or false")
    return _FLAGS[text.casefold()]


_reader: dict[str, Callable[[str], Any]] = {"number": _number, "whole": _whole, "flag": _flag}


def _structure(value: Any, wanted: type) -> Any:  # noqa: ANN401 - JSON is any
    found = parse_json(value) if isinstance(value, str) else value
    if not isinstance(found, wanted):
        raise BadCell(f"expected a JSON {'list, such as [...]' if wanted is list else 'map, such as {...}'}")
    return found


def parse_json(text: str) -> Any:  # noqa: ANN401 - JSON is any
    """Return the JSON value in `text`; BadCell for what is none, NaN and infinities among it."""
    try:
        return _DECODER.decode(text)
    except RecursionError:
        raise BadCell("expected JSON; this is nested too deep") from None
    except ValueError as error:
        raise BadCell(f"expected JSON; {error}") from None


def _refuse(word: str) -> float:
    raise ValueError(f"{word} is no number")


_DECODER = json.JSONDecoder(parse_constant=_refuse)


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


def plain_number(text: str) -> bool:
    """Say whether a cell of text is a number as it stands, which needs no guard.

    >>> plain_number("-12.5"), plain_number("-1+1")
    (True, False)
    """
    return re.fullmatch(r"[-+]?\d{1,20}(?:[.,]\d{1,20})?(?:[eE][-+]?\d{1,3})?", text) is not None
