"""A boat form that came along with a mail, as JSON, CSV or XLSX, told by content; anything else is None and stays listed."""

from __future__ import annotations

import io
import json
import zipfile
from collections.abc import Iterable
from itertools import islice
from typing import Any

from service.core.boat import BoatForm, is_path
from service.core.form import FormError, parse_form
from service.files.read.decode import text_of
from service.files.read.delimited import delimited, separator_of
from service.files.read.errors import Unreadable
from service.files.read.packed import look_inside
from service.files.read.workbook import worksheets

LARGEST = 2_000_000
LARGEST_UNPACKED = 20_000_000
MOST_FORMS = 12
MOST_ROWS = 300
LEAST = 2
"""Fields of the form that must be named before a table is one."""
_LISTS = ("obstacles", "transom.profile", "transom.sections", "preferences.avoid", "other_datum")
_EXTRA = {"method": "methods", "uncertainty": "uncertainties"}
Rows = list[list[str]]


def read_attached(data: bytes) -> tuple[BoatForm, ...]:
    """Return the boat forms in an attached file; none where it is something else or does not hold as a form."""
    try:
        return forms_in(data)
    except (Unreadable, FormError, ValueError, RecursionError, zipfile.BadZipFile):
        return ()


def forms_in(data: bytes) -> tuple[BoatForm, ...]:
    """Return the boat forms in a file; none where it holds something else.

    FormError, Unreadable or ValueError (broken JSON or workbook) where it is meant to be one and does not hold.
    """
    if not data.strip() or len(data) > LARGEST:
        return ()
    if data.startswith(b"PK\x03\x04"):
        return _forms(_workbook(data))
    if b"\0" in data:
        return ()
    text = text_of(data, None).strip()
    return _json(text) if text.startswith(("{", "[")) else _forms(_csv(text))


def _json(text: str) -> tuple[BoatForm, ...]:
    got = json.loads(text)
    forms = got if isinstance(got, list) else [got]
    parts = {"boat", "transom", "main_rudder", "obstacles"}
    ours = all(isinstance(f, dict) and (parts & f.keys() or f.get("schema") == "boat-form/1") for f in forms)
    return tuple(parse_form(f) for f in forms) if ours and 0 < len(forms) <= MOST_FORMS else ()


def _csv(text: str) -> Rows:
    data = text.encode()
    known = [w for w in text[:2000].replace('"', "").replace("\n", ",").replace(";", ",").split(",") if is_path(w)]
    return [row for _, row in islice(delimited(data, "utf-8", separator_of(data, "utf-8", known), "table"), MOST_ROWS)]


def _workbook(data: bytes) -> Rows:
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        if sum(part.file_size for part in archive.infolist()) > LARGEST_UNPACKED:
            return []
    look_inside(data, "workbook")
    for _, rows in worksheets(data, "workbook"):
        found = [row for _, row in islice(rows, MOST_ROWS)]
        if found:
            return found
    return []


def _forms(rows: Rows) -> tuple[BoatForm, ...]:
    """Read a table whose first row or first column names fields of the form."""
    rows = [[cell.strip() for cell in row] for row in rows if any(cell.strip() for cell in row)]
    if len(rows) < LEAST:
        return ()
    if sum(map(_named, rows[0])) >= LEAST:
        boats = [list(zip(rows[0], row, strict=False)) for row in rows[1 : MOST_FORMS + 1]]
        return tuple(parse_form(_nested(boat)) for boat in boats)
    if sum(_named(row[0]) for row in rows) < LEAST:
        return ()
    head = rows[0] if not _named(rows[0][0]) else ["field", "value"]
    pairs = [(row[0], row[1]) for row in rows if len(row) > 1 and _named(row[0])]
    for at, name in enumerate(head):
        part = _EXTRA.get(name.casefold())
        pairs += [(f"{part}|{r[0]}", r[at]) for r in rows if part and len(r) > at and _named(r[0])]
    return (parse_form(_nested(pairs)),)


def _named(heading: str) -> bool:
    return ("." in heading or heading in _LISTS) and is_path(heading)


def _nested(pairs: Iterable[tuple[str, str]]) -> dict[str, Any]:
    form: dict[str, Any] = {}
    for heading, cell in pairs:
        if not cell or not _named(heading.rpartition("|")[2]):
            continue
        value = json.loads(cell) if heading in _LISTS else cell
        whole, _, field = heading.rpartition("|")
        *parts, last = [whole, field] if whole else heading.split(".")
        at = form
        for part in parts:
            at = at.setdefault(part, {})
        at[last] = value
    return form
