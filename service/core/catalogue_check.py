"""A TOML document -> catalogue, and everything that can be wrong with one, each at its place."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Any

from service.core.boat import METHODS, OBSTACLE_KINDS, STERNS, is_path
from service.core.catalogue import SCALES, SIMPLE_RULES, Catalogue, Coded, Prior, Rules
from service.core.form import Defect, FormError, parse_shape
from service.core.loads.standard import STANDARD
from service.core.words import nearest

OPTIONAL_RULES = {name: rule.unit for name, rule in STANDARD.items()} | {"stern_wave": "mm"}
"""Rules a catalogue may state, with the unit each is in: what is usual holds where it does not."""


def parse_catalogue(document: dict[str, Any]) -> Catalogue:
    """Return the catalogue in a TOML document (CONTRACT shape). FormError lists every defect at its place."""
    head = dict(document.get("catalogue", {}))
    known = {"catalogue", "gear", "shaft", "bracket", "part", "method", "rules"}
    defects = [
        Defect(key, "", f"unknown table; did you mean {nearest(key, known) or 'one of ' + ', '.join(sorted(known))!r}?")
        for key in document
        if key not in known
    ]
    raw_rules = dict(document.get("rules", {}))
    shaped = {
        **head,
        "gears": document.get("gear", []),
        "shafts": document.get("shaft", []),
        "brackets": document.get("bracket", []),
        "parts": document.get("part", []),
        "methods": document.get("method", []),
        "rules": {
            "scale": raw_rules.pop("scale", {}),
            "prior": raw_rules.pop("prior", {}),
            "prior_hung": raw_rules.pop("prior_hung", {}),
            "obstacle": raw_rules.pop("obstacle", {}),
            "rule": raw_rules,
        },
    }
    try:
        catalogue = parse_shape(Catalogue, shaped)
    except FormError as error:
        raise FormError([*defects, *(_as_written(d) for d in error.defects)]) from None
    defects += list(_cross_checks(catalogue))
    if defects:
        raise FormError(defects)
    return catalogue


def _as_written(defect: Defect) -> Defect:
    """Name the place as it stands in the TOML: `gears[0]` is the first `[[gear]]`."""
    place = re.sub(r"^(gear|shaft|bracket|part|method)s\b", r"\1", defect.field)
    place = re.sub(r"^rules\.rule\b", "rules", place)
    return Defect(
        place if "." in place or "[" in place or place == "rules" else f"catalogue.{place}",
        defect.value,
        defect.problem,
    )


def _cross_checks(catalogue: Catalogue) -> Iterable[Defect]:
    yield from _check_codes(catalogue)
    for role in ("lower", "upper"):
        if not any(role in bracket.roles for bracket in catalogue.brackets):
            yield Defect("bracket", "", f"no bracket has the {role} role")
    yield from _check_parts(catalogue)
    yield from _check_methods(catalogue)
    yield from _check_rules(catalogue.rules)
    yield from _check_priors("rules.prior", catalogue.rules.prior)
    for hung, priors in catalogue.rules.prior_hung.items():
        yield from _check_priors(f"rules.prior_hung.{hung}", priors)


def _check_codes(catalogue: Catalogue) -> Iterable[Defect]:
    gears = {gear.code for gear in catalogue.gears}
    tables: dict[str, tuple[Coded, ...]] = {
        "gear": catalogue.gears, "shaft": catalogue.shafts, "bracket": catalogue.brackets,
        "part": catalogue.parts, "method": catalogue.methods,
    }  # fmt: skip
    for table, things in tables.items():
        seen: set[str] = set()
        for index, thing in enumerate(things):
            if thing.code in seen:
                yield Defect(f"{table}[{index}].code", repr(thing.code), "the code is used twice")
            seen.add(thing.code)
            for code in getattr(thing, "gears", ()):
                if code not in gears:
                    known = ", ".join(sorted(gears))
                    yield Defect(f"{table}[{index}].gears", repr(code), f"no such gear; known: {known}")


def _check_methods(catalogue: Catalogue) -> Iterable[Defect]:
    if "unsaid" not in {method.code for method in catalogue.methods}:
        yield Defect("method", "", "one method must be `unsaid`: what is taken where nobody said how it was measured")
    for index, method in enumerate(catalogue.methods):
        if method.code not in METHODS and method.code != "unsaid":
            near = nearest(method.code, METHODS)
            yield Defect(f"method[{index}].code", repr(method.code), f"unknown method; did you mean {near!r}?")


def _check_parts(catalogue: Catalogue) -> Iterable[Defect]:
    codes = {
        "gear": {g.code for g in catalogue.gears},
        "shaft": {s.code for s in catalogue.shafts},
        "bracket": {b.code for b in catalogue.brackets},
    }
    for index, part in enumerate(catalogue.parts):
        for target in part.goes_with:
            kind, _, code = target.partition(":")
            if target != "*" and code not in codes.get(kind, set()):
                yield Defect(
                    f"part[{index}].goes_with",
                    repr(target),
                    "names nothing in this catalogue; write gear:CODE, bracket:CODE, shaft:CODE or *",
                )


def _check_rules(rules: Rules) -> Iterable[Defect]:
    for name, unit in SIMPLE_RULES.items():
        if name not in rules.rule:
            yield Defect(f"rules.{name}", "", "the rule is missing")
        elif rules.rule[name].unit not in (unit, {"1": "share"}.get(unit, unit)):
            yield Defect(f"rules.{name}.unit", repr(rules.rule[name].unit), f"must be {unit!r}")
    yield from _check_names(rules)
    for name in SCALES:
        if name not in rules.scale:
            yield Defect(f"rules.scale.{name}", "", "the scale is missing")
    for kind in rules.obstacle:
        if kind not in OBSTACLE_KINDS:
            yield Defect(
                f"rules.obstacle.{kind}", "", f"is no kind of obstacle; did you mean {nearest(kind, OBSTACLE_KINDS)!r}?"
            )


def _check_names(rules: Rules) -> Iterable[Defect]:
    """Find slips of the pen, which would leave what is usual in force; a rule of the maker's own is kept as it is."""
    known = (*SIMPLE_RULES, *OPTIONAL_RULES)
    for name, rule in rules.rule.items():
        near = None if name in known else nearest(name, known)
        if near:
            yield Defect(f"rules.{name}", "", f"is no rule this program goes by; did you mean {near!r}?")
        elif name in OPTIONAL_RULES and rule.unit != OPTIONAL_RULES[name]:
            yield Defect(f"rules.{name}.unit", repr(rule.unit), f"must be {OPTIONAL_RULES[name]!r}")
        if not rule.source.strip():
            yield Defect(f"rules.{name}.source", "", "every rule names its source; 'common practice, no source' is one")


def _check_priors(table: str, priors: dict[str, dict[str, Prior]]) -> Iterable[Defect]:
    for path, by_stern in priors.items():
        if not is_path(path):
            yield Defect(f"{table}.{path}", "", "is no field of the boat form")
        yield from (
            Defect(f"{table}.{path}.{stern}", "", f"is no stern; use any, {', '.join(STERNS)}")
            for stern in by_stern
            if stern != "any" and stern not in STERNS
        )
