"""One state a record was in, how it came to be, and what sets two states apart, field by field."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from pydantic import AwareDatetime, Field

from service.core.boat import Shape, Text
from service.core.form import parse_shape
from service.core.record import Record

Path = tuple[str, ...]
_MAPS = ("methods", "uncertainties")  # maps from field to value: each entry is a field of its own


class Revision(Shape):
    """A record as it stood after somebody changed it. Numbers run from 1; the greatest is current."""

    number: int = Field(ge=1)
    who: Text
    at: AwareDatetime
    why: Text
    record: Record


class Change(Shape):
    """One field in which two states differ; None where it says nothing. Named as the columns of a table are."""

    field: str
    before: Any
    after: Any


class Step(Shape):
    """One revision of a history as people read it: who, when, why, and what it changed."""

    number: int
    who: str
    at: AwareDatetime
    why: str
    changes: tuple[Change, ...]


class Clash(Shape):
    """A field that somebody else changed meanwhile: as it was, as it stands now, and as it was to become."""

    field: str
    was: Any
    now: Any
    yours: Any
    who: str
    at: AwareDatetime


def changes(before: Record | None, after: Record) -> tuple[Change, ...]:
    """Return every field in which two states differ, in the form's order; all that is said where nothing was before."""
    old, new = flat(before) if before else {}, flat(after)
    return tuple(
        Change(field=named(path), before=old.get(path), after=new.get(path))
        for path in dict.fromkeys((*new, *old))
        if old.get(path) != new.get(path)
    )


def steps(history: Sequence[Revision]) -> tuple[Step, ...]:
    """Return a history with what each revision changed of the one before."""
    before = (None, *(revision.record for revision in history))
    return tuple(
        Step(number=one.number, who=one.who, at=one.at, why=one.why, changes=changes(was, one.record))
        for was, one in zip(before, history, strict=False)
    )


def moved(history: Sequence[Revision], expected: int, wanted: Record) -> tuple[Clash, ...]:
    """Return what was changed after revision `expected`, each field with who did it last and what `wanted` says.

    `wanted` is the state that somebody made of revision `expected`, who did not know of the later ones.
    """
    base, now = flat(history[expected - 1].record), flat(history[-1].record)
    mine, last = flat(wanted), dict[str, Step]()
    for step in steps(history)[expected:]:
        last |= {change.field: step for change in step.changes}
    return tuple(
        Clash(
            field=named(path),
            was=base.get(path),
            now=now.get(path),
            yours=mine.get(path),
            who=last[named(path)].who,
            at=last[named(path)].at,
        )
        for path in dict.fromkeys((*now, *base))
        if named(path) in last and base.get(path) != now.get(path)
    )


def taken_back(after: Record, before: Record, standing: Record) -> Record:
    """Return `standing` without the change from `before` to `after`: what was changed again since stays as it is."""
    undone, old, now = flat(after), flat(before), flat(standing)
    back = {
        path: old.get(path)
        for path in dict.fromkeys((*undone, *old))
        if undone.get(path) != old.get(path) and now.get(path) == undone.get(path)
    }
    return with_fields(standing, back)


def with_fields(record: Record, values: Mapping[Path, Any]) -> Record:
    """Return the record with other values at the paths `flat` gives; None takes a value away. FormError as reading."""
    document = record.model_dump(mode="json", by_alias=True, exclude_none=True)
    for path, value in values.items():
        at: dict[str, Any] = document
        for part in path[:-1]:
            at = at.setdefault(part, {})
        if value is None:
            at.pop(path[-1], None)
        else:
            at[path[-1]] = value
    return parse_shape(Record, document)


def flat(record: Shape) -> dict[Path, Any]:
    """Return every value the record (or any shape) says by its path, as JSON; a list is one value."""
    return dict(_walk(record.model_dump(mode="json", by_alias=True, exclude_none=True), ()))


def _walk(value: Mapping[str, Any], stem: Path) -> Iterator[tuple[Path, Any]]:
    for key, item in value.items():
        path = (*stem, key)
        if isinstance(item, dict):
            yield from _walk(item, path)
        elif path != ("form", "schema") and item != []:
            yield path, item


def named(path: Path) -> str:
    """Return the name of a path as a table of records writes it.

    >>> named(("form", "transom", "rake_deg")), named(("status",)), named(("form", "methods", "boat.loa_mm"))
    ('transom.rake_deg', 'record.status', 'methods[boat.loa_mm]')
    """
    bare = path[1:] if path[0] == "form" else path
    if bare[0] in _MAPS:
        return f"{bare[0]}[{bare[1]}]"
    return ".".join(bare) if len(path) > 1 else f"record.{path[0]}"
