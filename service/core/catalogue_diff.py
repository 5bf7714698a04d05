"""What differs between two catalogues, thing by thing and field by field, and which records carry what differs."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, Literal, NamedTuple, get_args

from pydantic import BaseModel

from service.core.boat import Shape
from service.core.catalogue import Catalogue, Configuration

Kind = Literal["catalogue", "gear", "shaft", "bracket", "part", "method", "rule", "scale", "prior", "obstacle"]
KINDS: tuple[Kind, ...] = get_args(Kind)
What = Literal["added", "removed", "changed"]
CARRIED: tuple[Kind, ...] = ("gear", "shaft", "bracket", "part")
"""Kinds of things that stand on a boat."""
_UNITS = {"_mm": "mm", "_deg": "deg", "_kg": "kg", "_nm": "N*m", "_n": "N"}
_UNORDERED = ("roles", "gears", "goes_with")
_EVERY = "*"

Value = str | float | int | bool | tuple[Any, ...] | None


class FieldChange(Shape):
    """One field: what stood, what stands, and the unit of each; null where there is no such field or unit."""

    field: str
    before: Value
    after: Value
    before_unit: str | None = None
    after_unit: str | None = None


class ThingChange(Shape):
    """One thing that was added, removed or changed; `fields` are those that differ, in the order of their names."""

    kind: Kind
    code: str
    what: What
    fields: tuple[FieldChange, ...]


class Carried(Shape):
    """How many records carry a thing that was removed or changed; `references` where they were asked for."""

    kind: Kind
    code: str
    what: What
    records: int
    references: tuple[str, ...] | None = None


class CatalogueDiff(Shape):
    """What differs between two catalogues; `before` and `after` are their versions, which may differ alone.

    `records` counts each record once that carries anything removed or changed, of `looked_at` records: all but those
    withdrawn. `next` is the command that says whose configuration would no longer be right.
    """

    schema_: Literal["catalogue-diff/1"] = "catalogue-diff/1"
    before: str
    after: str
    same: bool
    counts: dict[What, int]
    changes: tuple[ThingChange, ...]
    records: int
    looked_at: int
    carried: tuple[Carried, ...]
    next: str


class _Leaf(NamedTuple):
    value: Value
    unit: str | None


_Things = dict[tuple[Kind, str], dict[str, _Leaf]]


def changes(before: Catalogue, after: Catalogue) -> tuple[ThingChange, ...]:
    """Return what differs, by kind and code; empty for two with the same content, whatever their versions.

    The order in which things stand, and that of roles, gears and goes_with, says nothing and is left out.
    """
    old, new = _things(before), _things(after)
    keys = sorted({*old, *new}, key=lambda key: (KINDS.index(key[0]), key[1]))
    found = []
    for kind, code in keys:
        had, has = old.get((kind, code)), new.get((kind, code))
        if had == has:
            continue
        what: What = "added" if had is None else "removed" if has is None else "changed"
        found.append(ThingChange(kind=kind, code=code, what=what, fields=tuple(_fields(had or {}, has or {}))))
    return tuple(found)


def _fields(had: Mapping[str, _Leaf], has: Mapping[str, _Leaf]) -> Iterator[FieldChange]:
    none = _Leaf(None, None)
    for name in sorted({*had, *has}):
        was, now = had.get(name, none), has.get(name, none)
        if was != now:
            yield FieldChange(field=name, before=was.value, after=now.value, before_unit=was.unit, after_unit=now.unit)


def _things(catalogue: Catalogue) -> _Things:
    money = catalogue.currency
    found: _Things = {
        ("catalogue", "catalogue"): {"name": _Leaf(catalogue.name, None), "currency": _Leaf(money, None)},
    }
    tables: tuple[tuple[Kind, Iterable[Any]], ...] = (
        ("gear", catalogue.gears),
        ("shaft", catalogue.shafts),
        ("bracket", catalogue.brackets),
        ("part", catalogue.parts),
        ("method", catalogue.methods),
    )
    for kind, table in tables:
        for thing in table:
            found[kind, thing.code] = dict(_leaves(thing, money))
    found |= _rules(catalogue)
    return found


def _rules(catalogue: Catalogue) -> _Things:
    rules = catalogue.rules
    found: _Things = {}
    for name, rule in rules.rule.items():
        found["rule", name] = {"value": _Leaf(rule.value, rule.unit), "source": _Leaf(rule.source, None)}
    for name, scale in rules.scale.items():
        found["scale", name] = {"value": _Leaf(scale, None)}
    hung: dict[str, Mapping[str, Mapping[str, BaseModel]]] = {"": rules.prior}
    hung |= {f" (main rudder {how})": priors for how, priors in rules.prior_hung.items()}
    for how, priors in hung.items():
        for path, by_stern in priors.items():
            for stern, prior in by_stern.items():
                unit = _unit(path)
                leaves = prior.model_dump(exclude={"per_loa"}, exclude_none=True)
                said = {key: _Leaf(value, unit) for key, value in leaves.items()}
                said["per_loa"] = _Leaf(prior.model_dump()["per_loa"], f"{unit}/m" if unit else None)
                found["prior", f"{path} {stern}{how}"] = said
    for kind, by_side in rules.obstacle.items():
        for side, usual in by_side.items():
            found["obstacle", f"{kind} {side}"] = dict(_leaves(usual, catalogue.currency))
    return found


def _leaves(thing: BaseModel, money: str, stem: str = "") -> Iterator[tuple[str, _Leaf]]:
    for name in type(thing).model_fields:
        value = getattr(thing, name)
        if isinstance(value, BaseModel):
            yield from _leaves(value, money, f"{stem}{name}.")
        elif value is not None and not (name == "code" and not stem):
            value = tuple(sorted(value)) if name in _UNORDERED else value
            unit = money if name == "price" else _unit(name)
            yield f"{stem}{name}", _Leaf(value, unit)


def _unit(name: str) -> str | None:
    return name if name in _UNITS.values() else next((u for end, u in _UNITS.items() if name.endswith(end)), None)


class Carrier(NamedTuple):
    """A record and what it carries."""

    reference: str
    configuration: Configuration


def compare(
    before: Catalogue, after: Catalogue, carriers: Iterable[Carrier], *, further: str, references: bool = False
) -> CatalogueDiff:
    """Return what differs between two catalogues, and which records carry it; `further` is the command to go on with.

    A record carries the gear, the shaft and the brackets of its configuration, and every part that goes with one of
    them in the catalogue before.
    """
    found = changes(before, after)
    named = {(one.kind, one.code): one for one in found if one.what != "added" and one.kind in CARRIED}
    goes = _goes_with(before, named)
    carried: dict[tuple[Kind, str], list[str]] = defaultdict(list)
    touched = looked_at = 0
    for carrier in carriers:
        looked_at += 1
        mine = _carries(carrier.configuration, goes) & named.keys()
        touched += bool(mine)
        for key in mine:
            carried[key].append(carrier.reference)
    whats: tuple[What, ...] = get_args(What)
    return CatalogueDiff(
        before=before.version,
        after=after.version,
        same=not found,
        counts={what: sum(one.what == what for one in found) for what in whats},
        changes=found,
        records=touched,
        looked_at=looked_at,
        carried=tuple(
            Carried(
                kind=kind,
                code=code,
                what=one.what,
                records=len(carried[kind, code]),
                references=tuple(sorted(carried[kind, code])) if references else None,
            )
            for (kind, code), one in named.items()
        ),
        next=further,
    )


def _goes_with(before: Catalogue, named: Iterable[tuple[Kind, str]]) -> dict[str, list[tuple[Kind, str]]]:
    parts = {code for kind, code in named if kind == "part"}
    found: dict[str, list[tuple[Kind, str]]] = defaultdict(list)
    for part in before.parts:
        for target in part.goes_with if part.code in parts else ():
            found[target].append(("part", part.code))
    return found


def _carries(one: Configuration, goes: Mapping[str, list[tuple[Kind, str]]]) -> set[tuple[Kind, str]]:
    own: set[tuple[Kind, str]] = {
        ("gear", one.gear),
        ("shaft", one.shaft),
        ("bracket", one.lower),
        ("bracket", one.upper),
    }
    targets = [_EVERY, *(f"{kind}:{code}" for kind, code in own)]
    return own | {part for target in targets for part in goes.get(target, ())}


def listed(catalogue: Catalogue) -> dict[Kind, dict[str, dict[str, tuple[Value, str | None]]]]:
    """Return every thing by kind and code: its fields with value and unit, in the order of the shape."""
    found: dict[Kind, dict[str, dict[str, tuple[Value, str | None]]]] = {kind: {} for kind in KINDS}
    for (kind, code), leaves in _things(catalogue).items():
        found[kind][code] = {name: (leaf.value, leaf.unit) for name, leaf in leaves.items()}
    return found
