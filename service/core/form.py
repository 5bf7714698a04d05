"""Reading, changing and joining boat forms, with errors that say what, where and how to mend it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from service.core.boat import BoatForm, get, inner_model
from service.core.words import nearest

S = TypeVar("S", bound=BaseModel)


def with_values(form: BoatForm, values: Mapping[str, object]) -> BoatForm:
    """Return the form with scalar fields replaced (`{"transom.rake_deg": 12}`), validated anew."""
    data = form.document()
    for path, value in values.items():
        *parts, last = path.split(".")
        at = data
        for part in parts:
            at = at.setdefault(part, {})
        at[last] = value
    return parse_form(data)


def merged(newer: BoatForm, older: BoatForm) -> BoatForm:
    """Return the newer form with its gaps filled from the older one; lists are taken whole, never mixed.

    Each measurement keeps the method and the uncertainty it was taken with, those said of a whole form included.
    """
    data = _filled(newer.document(), older.document())
    kept = [path for path in stated(data) if _said(newer, path)]
    taken = [path for path in stated(data) if not _said(newer, path)]
    for part in ("methods", "uncertainties"):
        mine, theirs = getattr(newer, part), getattr(older, part)
        data[part] = {**_of(mine, kept, spread=bool(taken)), **_of(theirs, taken, spread=True)}
    return parse_form(data)


def stated(data: Mapping[str, Any], stem: str = "") -> Iterator[str]:
    """Give the paths of what a form's document says of the boat, a list as one."""
    parts = ("boat", "transom", "main_rudder", "obstacles")
    for key, value in data.items():
        if stem or key in parts:
            if isinstance(value, dict):
                yield from stated(value, f"{key}.")
            else:
                yield f"{stem}{key}"


def _said(form: BoatForm, path: str) -> bool:
    return get(form, path) not in (None, ())


def _of(named: Mapping[str, Any], paths: list[str], *, spread: bool) -> dict[str, Any]:
    """Return what is said of these paths; `spread` puts what is said of all ("*") to each of them by name."""
    mine = {key: value for key, value in named.items() if key.partition("[")[0] in paths}
    if "*" not in named:
        return mine
    return {**dict.fromkeys(paths, named["*"]), **mine} if spread else {"*": named["*"], **mine}


def _filled(newer: dict[str, Any], older: dict[str, Any]) -> dict[str, Any]:
    out = dict(newer)
    for key, value in older.items():
        if isinstance(value, dict) and isinstance(out.get(key, {}), dict):
            out[key] = _filled(out.get(key, {}), value)
        else:
            out.setdefault(key, value)
    return out


@dataclass(frozen=True)
class Defect:
    """One thing wrong with an input: where, what was found, what is wrong and what was expected."""

    field: str
    value: str
    problem: str

    def __str__(self) -> str:
        """Return one line for people."""
        return f"{self.field}: {self.problem}" + (f" (got {self.value})" if self.value else "")


class FormError(ValueError):
    """A form that cannot be read; `defects` names every fault."""

    def __init__(self, defects: list[Defect]) -> None:
        """Keep the defects; the message is one line each."""
        super().__init__("\n".join(map(str, defects)))
        self.defects = defects


def parse_form(data: object) -> BoatForm:
    """Return the form in `data` (JSON values). FormError names each wrong field, with the nearest known key."""
    return parse_shape(BoatForm, data)


def parse_shape(shape: type[S], data: object) -> S:
    """Return `data` as `shape`; FormError lists every defect by field path."""
    try:
        return shape.model_validate(data)
    except ValidationError as error:
        raise FormError([_defect(shape, dict(item)) for item in error.errors(include_url=False)]) from None


def _defect(shape: type[BaseModel], item: dict[str, Any]) -> Defect:
    where = dotted(item["loc"])
    found = item.get("input")
    shown = "" if isinstance(found, (dict, list)) or found is None else repr(found)[:80]
    if item["type"] == "extra_forbidden":
        *stem, last = item["loc"]
        known = _keys_at(shape, stem)
        near = nearest(str(last), known)
        hint = f"; did you mean {near!r}?" if near else f"; known here: {', '.join(known)}"
        return Defect(where or repr(last), "", f"unknown field{hint}")
    message = item["msg"].removeprefix("Value error, ")
    return Defect(where or "form", shown, message[0].lower() + message[1:])


def dotted(location: tuple[int | str, ...]) -> str:
    """Write a location as `transom.profile[2].aft_mm`."""
    text = ""
    for part in location:
        text += f"[{part}]" if isinstance(part, int) else f".{part}" if text else str(part)
    return text


def _keys_at(shape: type[BaseModel], stem: list[int | str]) -> list[str]:
    model: type[BaseModel] | None = shape
    for part in stem:
        if isinstance(part, int) or model is None:
            continue
        info = next((i for n, i in model.model_fields.items() if (i.alias or n) == part), None)
        model = inner_model(info.annotation) if info else None
    return [i.alias or n for n, i in model.model_fields.items()] if model else []
