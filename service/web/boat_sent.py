"""A boat form as a page sent it, into a boat form.

What a page did not send stays as it was; a value whose text was not touched stays exactly what it was, whatever the text
was rounded to.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any

from service.core.boat import BoatForm
from service.core.form import FormError, parse_form
from service.core.measurement import fields as measured
from service.web.boat_fields import LISTS, Spec, groups, row_specs, shown, texts
from service.web.posted import Posted


def sent_texts(posted: Posted) -> dict[str, str]:
    """Return every field that was sent, as `texts` does."""
    found = {key: value.strip() for key, value in posted.fields}
    if "preferences.avoid" in found:
        found["preferences.avoid"] = " ".join(posted.all("preferences.avoid"))
    return found


def read_fields(sent: Mapping[str, str], base: BoatForm) -> BoatForm:
    """Return `base` with what was sent. FormError names every defect by the name of its field on the page."""
    before, document = texts(base), base.document()
    for _, _, specs in groups():
        for spec in specs:
            if spec.path in sent and sent[spec.path] != before[spec.path]:
                _put(document, spec, sent[spec.path])
    order = {path: _rows(document, path, sent, before) for path in LISTS if f"rows.{path}" in sent}
    document |= _how(sent, base, before, order.get("obstacles"))
    try:
        return parse_form(document)
    except FormError as error:
        raise FormError([type(d)(_renamed(d.field, order), d.value, d.problem) for d in error.defects]) from None


def _how(
    sent: Mapping[str, str], base: BoatForm, before: Mapping[str, str], obstacles: list[int] | None
) -> dict[str, dict[str, Any]]:
    """Return methods and uncertainties: as sent, and without what was said of a value that is another by now."""
    methods, spread = dict[str, Any](base.methods), dict[str, Any](base.uncertainties)
    for path in measured():
        if sent.get(path, before[path]) != before[path]:
            spread.pop(path, None)
        _set(methods, path, sent.get(f"methods.{path}", before[f"methods.{path}"]))
    if obstacles is not None:
        for named in (methods, spread):
            _renumber(named, obstacles, len(base.obstacles))
        for at, was in enumerate(obstacles):
            key = f"methods.obstacles[{was}]"
            _set(methods, f"obstacles[{at}]", sent.get(key, before.get(key, "")))
    return {"methods": methods, "uncertainties": spread}


def _set(named: dict[str, Any], path: str, value: str) -> None:
    if value:
        named[path] = value
    else:
        named.pop(path, None)


def _put(document: dict[str, Any], spec: Spec, text: str) -> None:
    *parts, last = spec.path.split(".")
    at = document
    for part in parts:
        at = at.setdefault(part, {})
    at[last] = _value(spec, text)


def _value(spec: Spec, text: str) -> object:
    if not text:
        return None
    if spec.sort == "flag":
        return {"yes": True, "no": False}.get(text, text)
    if spec.sort == "several":
        return text.split()
    return int(text) if spec.path.endswith("number") and text.isdecimal() and spec.sort != "text" else text


def _rows(document: dict[str, Any], path: str, sent: Mapping[str, str], before: Mapping[str, str]) -> list[int]:
    """Put the rows of a list as they were sent, and return which of the sent rows each is: empty ones are left out."""
    *parts, last = path.split(".")
    at = document
    for part in parts:
        at = at.setdefault(part, {})
    old, rows, kept = list(at.get(last) or ()), list[Any](), list[int]()
    many = sent[f"rows.{path}"]
    for index in range(min(int(many) if many.isdecimal() else 0, 100)):
        stem = f"{path}[{index}]."
        said = {spec.path: sent.get(stem + spec.path, "") for spec in row_specs(path)}
        if sent.get(f"{stem}gone") or not any(said.values()):
            continue
        same = all(text == before.get(stem + name) for name, text in said.items())
        rows.append(
            old[index] if same and index < len(old) else _row(path, said, old[index] if index < len(old) else {})
        )
        kept.append(index)
    at[last] = rows or None
    if last == "profile" and not rows:
        del at[last]
    elif not rows:
        at[last] = []
    return kept


def _row(path: str, said: Mapping[str, str], old: Mapping[str, Any]) -> dict[str, Any]:
    row: dict[str, Any] = {}
    for spec in row_specs(path):
        value = _value(spec, said[spec.path])
        if value is None:
            continue
        known = _known(old, spec.path)
        if spec.sort == "mm" and isinstance(known, float | int) and shown(float(known)) == said[spec.path]:
            value = known
        bare, index = re.sub(r"\[[01]\]$", "", spec.path), spec.path[-2:-1]
        *parts, last = bare.split(".")
        at = row
        for part in parts:
            at = at.setdefault(part, {})
        if bare == spec.path:
            at[last] = value
        else:
            at.setdefault(last, [None, None])[int(index)] = value
    return row


def _known(old: Any, path: str) -> Any:  # noqa: ANN401 - JSON is any
    for part in re.findall(r"[^.\[\]]+|\[\d\]", path):
        if part.startswith("["):
            old = old[int(part[1])] if isinstance(old, Sequence) else None
        else:
            old = old.get(part) if isinstance(old, Mapping) else None
    return old


def _renumber(named: dict[str, Any], kept: list[int], many: int) -> None:
    """Bring what is said of obstacles by their place to where they stand now."""
    moved = {}
    for key in [key for key in named if re.match(r"obstacles\[\d+\]", key)]:
        was, rest = re.fullmatch(r"obstacles\[(\d+)\](.*)", key).groups()  # type: ignore[union-attr]  # matched above
        value = named.pop(key)
        if int(was) in kept and int(was) < many:
            moved[f"obstacles[{kept.index(int(was))}]{rest}"] = value
    named |= moved


def _renamed(field: str, order: Mapping[str, list[int]]) -> str:
    """Return a defect's field by the place of its row on the page."""
    for path, kept in order.items():
        found = re.match(re.escape(path) + r"\[(\d+)\]", field)
        if found and int(found[1]) < len(kept):
            return f"{path}[{kept[int(found[1])]}]{field[found.end() :]}"
    return field
