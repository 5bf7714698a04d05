"""The boat form as fields of a page: which there are, what they are called, and how their values are written.

Names of fields are the form's own paths, methods stand under `methods.PATH`, how many rows a list has under `rows.PATH`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from types import NoneType
from typing import Annotated, Any, Literal, get_args, get_origin

from pydantic import BaseModel

from service.core.boat import (
    Asked,
    Boat,
    BoatForm,
    Box,
    Extent,
    MainRudder,
    Obstacle,
    OtherDatum,
    Preferences,
    ProfilePoint,
    Transom,
    get,
    is_path,
    title,
)
from service.core.measurement import fields as measured

Sort = Literal["mm", "deg", "kg", "number", "text", "choice", "flag", "several"]
UNITS: dict[Sort, str] = {"mm": "mm", "deg": "°", "kg": "kg"}
LISTS = ("transom.profile", "obstacles", "other_datum")
_CARRIED = frozenset({"transom.sections", "enquiry.received", "enquiry.channel", "enquiry.dealer", "enquiry.reference"})
"""Said elsewhere, or too rarely to have fields: they stay as they are."""
LABELS = {
    "boat.name": "name of the boat", "boat.sail_number": "sail number", "boat.hull_number": "hull number",
    "boat.displacement_is": "displacement is", "main_rudder.number": "number of rudders",
    "main_rudder.spacing_mm": "distance between two rudders", "preferences.side": "side wished for",
    "preferences.avoid": "sides to keep free", "preferences.strength": "how firmly", "enquiry.country": "country",
    "enquiry.language": "language", "notes": "notes on the boat", "kind": "what it is", "note": "note",
    "number": "how many", "side": "side", "removable": "can be taken off", "keep": "has to stay", "moves": "moves",
    "present": "is there", "aft_mm": "aft of the top edge", "starboard_mm": "to starboard of the middle",
    "height_mm": "above the water", "below_top_mm": "below the top edge", "size_mm.aft": "fore and aft",
    "size_mm.starboard": "athwartships", "size_mm.height": "height", "field": "which measurement",
    "value_mm": "value", "datum": "counted from", "obstacles": "what stands on the stern",
    "other_datum": "heights from elsewhere", "contact.name": "who asks", "contact.email": "mail address",
    "contact.phone": "telephone", "contact.role": "role", "swept_to": "where it ends up", "size_mm": "size",
    "enquiry.received": "received", "enquiry.dealer": "dealer", "enquiry.reference": "reference",
}  # fmt: skip


@dataclass(frozen=True)
class Spec:
    """One field: its path (within its row, for one of a list), what it holds, what it may be chosen from."""

    path: str
    sort: Sort
    options: tuple[str, ...] = ()

    @property
    def label(self) -> str:
        """Return what people call it."""
        bare, end = re.sub(r"\[([01])\]$", "", self.path), self.path[-3:]
        return named(bare.removeprefix("swept_to.")) + {"[0]": ", from", "[1]": ", to"}.get(end, "")

    @property
    def measured(self) -> bool:
        """Say whether it has a method of its own."""
        return self.path in measured()


def named(path: str) -> str:
    """Return what people call a field of the form, or of one row of a list.

    >>> named("transom.rake_deg"), named("boat.name"), named("obstacles[1].aft_mm"), named("methods[boat.loa_mm]")
    ('rake of the transom', 'name of the boat', 'obstacle 2: aft of the top edge', 'length overall, method')
    """
    for part, word in (("methods", "method"), ("uncertainties", "how far off")):
        if path.startswith((f"{part}[", f"{part}.")):
            return f"{named(path[len(part) + 1 :].removesuffix(']'))}, {word}"
    row = re.match(r"(obstacles|transom\.profile|other_datum)\[(\d+)\]\.?", path)
    if row:
        word = {"obstacles": "obstacle", "transom.profile": "profile point"}.get(row[1], "height from elsewhere")
        rest = path[row.end() :]
        return f"{word} {int(row[2]) + 1}" + (f": {named(rest)}" if rest else "")
    return LABELS.get(path) or (title(path) if is_path(path) else path)


@cache
def groups() -> tuple[tuple[str, str, tuple[Spec, ...]], ...]:
    """Return the groups of the form: key, heading, fields."""
    return (
        ("boat", "Boat", tuple(_specs(Boat, "boat."))),
        ("transom", "Transom", tuple(_specs(Transom, "transom."))),
        ("main_rudder", "Main rudder", tuple(_specs(MainRudder, "main_rudder."))),
        ("preferences", "Wishes", (*_specs(Preferences, "preferences."), Spec("notes", "text"))),
        ("enquiry", "Answer in", tuple(_specs(Asked, "enquiry."))),
    )


@cache
def row_specs(path: str) -> tuple[Spec, ...]:
    """Return the fields of one row of a list."""
    if path == "transom.profile":
        return tuple(_specs(ProfilePoint, ""))
    if path == "other_datum":
        return tuple(_specs(OtherDatum, ""))
    plain = [spec for spec in _specs(Obstacle, "") if spec.path != "kind"]
    kinds = Spec("kind", "choice", get_args(Obstacle.model_fields["kind"].annotation))
    ends = ((box, axis, n) for box in ("", "swept_to.") for axis in Box.model_fields for n in (0, 1))
    spans = [Spec(f"{box}{axis}[{n}]", "mm") for box, axis, n in ends]
    sizes = [Spec(f"size_mm.{axis}", "mm") for axis in Extent.model_fields]
    return (kinds, *plain, *spans[:6], *sizes, *spans[6:])


def _specs(model: type[BaseModel], stem: str) -> Iterator[Spec]:
    for name, info in model.model_fields.items():
        path, inner = f"{stem}{name}", _bare(info.annotation)
        if path in _CARRIED or (get_origin(inner) is tuple and name != "avoid") or _is_shape(inner):
            continue
        unit = name.rpartition("_")[2]
        if name == "avoid":
            yield Spec(path, "several", get_args(get_args(inner)[0]))
        elif get_origin(inner) is Literal:
            yield Spec(path, "choice", tuple(map(str, get_args(inner))))
        elif inner is bool:
            yield Spec(path, "flag", ("yes", "no"))
        elif unit in UNITS and inner is float:
            yield Spec(path, unit)
        else:
            yield Spec(path, "number" if inner is int else "text")


def _is_shape(inner: object) -> bool:
    return isinstance(inner, type) and issubclass(inner, BaseModel)


def _bare(annotation: Any) -> Any:  # noqa: ANN401 - a type of any kind
    """Return a field's type without its bounds and without None."""
    if get_origin(annotation) is Annotated:
        return _bare(get_args(annotation)[0])
    inner = [arg for arg in get_args(annotation) if arg is not NoneType]
    if NoneType in get_args(annotation) and len(inner) == 1:
        return _bare(inner[0])
    return annotation


# --- values as text --------------------------------------------------------------------------------------


def shown(value: object) -> str:
    """Return a value as a field of the page holds it.

    >>> shown(977.9), shown(1270.0), shown(True), shown(None), shown(313.58332)
    ('977.9', '1270', 'yes', '', '313.6')
    """
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return f"{round(value, 1) + 0.0:.1f}".removesuffix(".0")
    return str(value)


def texts(form: BoatForm) -> dict[str, str]:
    """Return every field of a form as the page holds it; lists by row, with how many rows there are."""
    found = {
        spec.path: shown(get(form, spec.path)) for _, _, specs in groups() for spec in specs if spec.sort != "several"
    }
    found |= {f"methods.{path}": form.methods.get(path, "") for path in measured()}
    found["preferences.avoid"] = " ".join(form.preferences.avoid or ())
    for path in LISTS:
        rows = get(form, path) or ()
        found[f"rows.{path}"] = str(len(rows))
        for index, row in enumerate(rows):
            found |= {f"{path}[{index}].{spec.path}": shown(_within(row, spec.path)) for spec in row_specs(path)}
    found |= {f"methods.obstacles[{n}]": form.methods.get(f"obstacles[{n}]", "") for n in range(len(form.obstacles))}
    return found


def _within(row: Any, path: str) -> Any:  # noqa: ANN401 - a field of any type
    value = row
    for part in re.findall(r"[^.\[\]]+|\[\d\]", path):
        if value is None:
            return None
        value = value[int(part[1])] if part.startswith("[") else getattr(value, part)
    return value
