"""What somebody measured on one boat: rows that may disagree, and the one value that stands.

Rule: what was measured on the boat outranks what stands on paper, that what was judged from a picture or lent by a
sister ship, and that a guess or a value of which nobody said how it was got. Within one of these classes the newest
stands: by the day it was taken, else the day it was written down. Nothing that loses is dropped.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date, datetime
from functools import cache
from typing import Any

from pydantic import AwareDatetime, Field, field_validator

from service.core import units
from service.core.boat import BoatForm, Method, Shape, Text, get, paths
from service.core.days import Day
from service.core.form import merged, parse_form, stated, with_values
from service.core.revision import Revision

_RANKS: tuple[tuple[Method, ...], ...] = (
    ("tape", "laser", "phone_level", "inclinometer", "scale"),
    ("drawing", "brochure"),
    ("photo", "sister_ship"),
)
RANK: dict[Method | None, int] = {method: place for place, row in enumerate(_RANKS) for method in row}
"""0 measured on the boat, 1 on paper, 2 from afar; what is not named here ranks last."""
_LAST = len(_RANKS)
_DIMENSION: dict[str, units.Dimension] = {"mm": "length", "deg": "angle", "kg": "mass"}


class Measurement(Shape):
    """One value of one field of one boat: as written, in the field's unit, how it was got, by whom and when.

    `uncertainty` is a half-range in the field's unit, `taken` the day it was measured where somebody said, `at` when it
    was written down, `source` what it came with.
    """

    field: str
    text: str = Field(max_length=200)
    unit: str = Field(max_length=20)
    value: float = Field(allow_inf_nan=False)
    method: Method | None = None
    uncertainty: float | None = Field(None, ge=0, allow_inf_nan=False)
    who: Text
    at: AwareDatetime
    taken: Day | None = None
    source: Text | None = None

    @field_validator("field")
    @classmethod
    def _measurable(cls, path: str) -> str:
        if path not in fields():
            raise ValueError(f"{path!r} is nothing that is measured; known are {', '.join(fields())}")
        return path


@cache
def fields() -> tuple[str, ...]:
    """Return the fields of a form that are measured: single lengths, angles and masses of boat, skin and rudder."""
    parts, ends = ("boat.", "transom.", "main_rudder."), tuple(f"_{unit}" for unit in _DIMENSION)
    return tuple(path for path in paths() if path.startswith(parts) and path.endswith(ends) and "[" not in path)


def taken_from(
    form: BoatForm,
    *,
    who: str,
    at: datetime,
    written: object = None,
    day: date | None = None,
    source: str | None = None,
) -> tuple[Measurement, ...]:
    """Return what a form states as measurements; `written` is the document it was read from, with the words as written.

    A field of which the form says no method, of itself or of all, has none.
    """
    about = {"who": who, "at": at, "taken": day, "source": source}
    return tuple(_row(form, path, _written(written, path), about) for path in fields() if get(form, path) is not None)


def _row(form: BoatForm, path: str, written: object, about: Mapping[str, Any]) -> Measurement:
    value = float(get(form, path))
    unit = path.rpartition("_")[2]
    text = f"{value:.10g} {unit}"
    if isinstance(written, str):
        got = units.parse(written, _DIMENSION[unit], assumed=units.SI_UNIT[_DIMENSION[unit]])
        if isinstance(got, units.Quantity):
            unit, text = got.unit, written
    how = {
        "method": form.methods.get(path, form.methods.get("*")),
        "uncertainty": form.uncertainties.get(path, form.uncertainties.get("*")),
    }
    return Measurement.model_validate({"field": path, "text": text, "unit": unit, "value": value, **how, **about})


def _written(document: object, path: str) -> object:
    for part in path.split("."):
        document = document.get(part) if isinstance(document, Mapping) else None
    return document


def unwritten(history: Sequence[Revision], known: Iterable[Measurement], wanted: Iterable[str]) -> list[Measurement]:
    """Return as measurements what a record says of the `wanted` fields and no known measurement does.

    So nothing is lost that came in another way (a table, a correction). Each is by whoever gave the record this value.
    """
    rows, now = list(known), history[-1].record.form
    found = []
    for path in wanted:
        value = get(now, path)
        if value is None or any(row.field == path and row.value == value for row in rows):
            continue
        came = history[-1]
        for revision in reversed(history):
            if get(revision.record.form, path) != value:
                break
            came = revision
        found.append(_row(now, path, None, {"who": came.who, "at": came.at, "source": came.why}))
    return found


def rank(row: Measurement) -> tuple[int, date, datetime]:
    """Return what the rule compares, greatest first: class of method, day, and time of writing down."""
    return -RANK.get(row.method, _LAST), row.taken or row.at.date(), row.at


def standing(rows: Iterable[Measurement]) -> dict[str, Measurement]:
    """Return the one that stands for each field; of two that rank the same, the later in order."""
    found: dict[str, Measurement] = {}
    for row in rows:
        before = found.get(row.field)
        if before is None or rank(row) >= rank(before):
            found[row.field] = row
    return found


def resolved(form: BoatForm, said: BoatForm, rows: Sequence[Measurement]) -> BoatForm:
    """Return `form` brought up to date with what `said` says and, of what is measured, with what stands among `rows`.

    Each value keeps method and uncertainty it was got with. FormError where the values contradict each other.
    """
    stands = standing(rows)
    touched = [path for path in fields() if get(said, path) is not None and path in stands]
    document = with_values(said, {path: stands[path].value for path in touched}).document()
    for part, name in (("methods", "method"), ("uncertainties", "uncertainty")):
        given = dict(document.get(part, {}))
        if "*" in given:  # what is said of all must not speak for a value that stands from another day
            given = {**dict.fromkeys(stated(document), given.pop("*")), **given}
        settled = {path: getattr(stands[path], name) for path in touched}
        document[part] = {path: value for path, value in {**given, **settled}.items() if value is not None}
    return merged(parse_form(document), form)


def of_field(rows: Iterable[Measurement], path: str) -> tuple[Measurement, ...]:
    """Return the measurements of one field, the one that stands first."""
    return tuple(sorted((row for row in rows if row.field == path), key=rank, reverse=True))
