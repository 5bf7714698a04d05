"""What the maker sells and the rules it is fitted by. No number of a catalogue stands in code.

A catalogue is read from TOML by `service.files`; here is its shape and what can be wrong with it.
Lengths in mm, angles in degrees, masses in kg, forces in N, moments in N·m.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Annotated, Any, Literal, Self

from pydantic import AfterValidator, Field, model_validator

from service.core.boat import METHODS, OBSTACLE_KINDS, STERNS, Defect, FormError, Shape, is_path, parse_shape
from service.core.words import nearest

Role = Literal["lower", "upper"]
Kind = Literal["hinged", "outrigger", "strutted", "cheek", "step"]
Number = Annotated[float, Field(allow_inf_nan=False)]
Positive = Annotated[Number, Field(gt=0)]
NotNegative = Annotated[Number, Field(ge=0)]
Code = Annotated[str, Field(pattern=r"^[A-Za-z0-9][A-Za-z0-9 ._-]{0,60}$")]


def _rising(pair: tuple[float, float]) -> tuple[float, float]:
    if pair[0] > pair[1]:
        raise ValueError(f"is upside down: {pair[0]:g} comes before {pair[1]:g}; write [least, most]")
    return pair


Range = Annotated[tuple[Number, Number], AfterValidator(_rising)]


class Tube(Shape):
    outside_mm: Positive
    wall_mm: Positive
    material: str

    @model_validator(mode="after")
    def _hollow(self) -> Self:
        if 2 * self.wall_mm >= self.outside_mm:
            raise ValueError(f"wall_mm {self.wall_mm:g} leaves no bore in a tube of {self.outside_mm:g} mm")
        return self


class Turned(Shape):
    radius_mm: Positive
    height_mm: Positive


class Vane(Shape):
    axis_mm: Number
    radius_mm: Positive
    bottom_mm: Number
    top_mm: Number

    @model_validator(mode="after")
    def _upright(self) -> Self:
        if self.bottom_mm >= self.top_mm:
            raise ValueError("vane.bottom_mm must be below vane.top_mm")
        return self


class Blade(Shape):
    chord_mm: Positive
    span_mm: Positive
    balance_mm: NotNegative
    root_gap_mm: NotNegative
    section: str
    max_angle_deg: Annotated[Positive, Field(le=90)]

    @model_validator(mode="after")
    def _balanced(self) -> Self:
        if self.balance_mm >= self.chord_mm:
            raise ValueError("balance_mm must be less than chord_mm")
        return self


class Gear(Shape):
    code: Code
    name: str
    max_displacement_kg: Positive
    mass_kg: Positive
    price: NotNegative
    tube: Tube
    head_mm: NotNegative
    vane: Vane
    head: Turned
    tiller: Turned
    blade: Blade


class Shaft(Shape):
    code: Code
    length_mm: Positive
    gears: tuple[Code, ...]
    mass_kg: Positive
    price: NotNegative
    carton: str


class Flange(Shape):
    width_mm: Positive
    height_mm: Positive
    thickness_mm: Positive


class Collar(Shape):
    height_mm: Positive
    rise_mm: Number


class Bolts(Shape):
    size: Annotated[str, Field(pattern=r"^(M\d+|\d+/\d+|1/4|5/16|3/8|1/2)$")]
    pattern_mm: tuple[tuple[Number, Number], ...] = Field(min_length=1)


class Allowable(Shape):
    along_n: Positive
    side_n: Positive
    moment_nm: Positive


class FootBolts(Shape):
    size: str
    count: Annotated[int, Field(ge=1)]


class Struts(Shape):
    count: Annotated[int, Field(ge=1, le=4)]
    tube: Tube
    spread_mm: Range
    foot_rise_mm: Number
    length_mm: Range
    foot_bolts: FootBolts


class Bracket(Shape):
    code: Code
    name: str
    kind: Kind
    roles: tuple[Role, ...] = Field(min_length=1)
    gears: tuple[Code, ...] = Field(min_length=1)
    mass_kg: Positive
    price: NotNegative
    carton: str
    reach_mm: Range
    tilt_deg: Range
    swing_deg: Range
    flange: Flange
    collar: Collar
    bolts: Bolts
    allowable: Allowable
    struts: Struts | None = None
    gap_mm: Range | None = None
    stands_mm: Range | None = None

    @model_validator(mode="after")
    def _by_kind(self) -> Self:
        needs = {"strutted": "struts", "cheek": "gap_mm", "step": "stands_mm"}
        own = needs.get(self.kind)
        if own and getattr(self, own) is None:
            raise ValueError(f"a {self.kind} bracket needs {own}")
        for name in set(needs.values()) - {own}:
            if getattr(self, name) is not None:
                raise ValueError(f"{name} belongs to another kind than {self.kind}")
        return self


class Part(Shape):
    code: Code
    name: str
    quantity: Annotated[int, Field(ge=1)]
    carton: str
    small: bool = False
    goes_with: tuple[str, ...] = Field(min_length=1)


class Method(Shape):
    """Standard uncertainty (one standard deviation) of a way of measuring."""

    code: str
    mm: NotNegative
    deg: NotNegative
    kg: NotNegative


class Rule(Shape):
    value: Number
    unit: str
    source: str


class Prior(Shape):
    """What a field is likely to be where nothing is known: normal about mean + per_loa · (LOA − 10 m), cut to least/most."""

    mean: Number
    spread: NotNegative
    per_loa: Number = 0.0
    least: Number | None = None
    most: Number | None = None


class ObstaclePrior(Shape):
    """Where an obstacle of a kind usually is. Heights stand above the transom's top edge; spread moves the whole box."""

    aft_mm: Range
    starboard_mm: Range
    above_top_mm: Range
    spread_mm: NotNegative


SIMPLE_RULES: dict[str, str] = {
    "bracket_spacing_min": "mm",
    "overhang_max": "mm",
    "pad_max": "mm",
    "edge_distance": "mm",
    "immersed_share_min": "1",
    "heel_angle": "deg",
    "immersed_share_heeled_min": "1",
    "root_depth_max": "mm",
    "main_rudder_gap": "mm",
    "fixed_gap": "mm",
    "moving_gap": "mm",
    "wake_gap": "mm",
    "wake_reach": "mm",
    "waterline_tolerance": "mm",
    "probability_threshold": "1",
    "hole_above_water": "mm",
}
"""Rules every catalogue must state, with the unit each is in."""

SCALES = (
    "reach", "pad", "seat", "spacing", "overhang", "head", "immersion", "root_depth", "main_rudder", "hull", "obstacle",
    "displacement", "strut", "gap", "stands", "foot",
)  # fmt: skip
"""Kinds of check that the rules give a scale: the margin that counts as 1."""


class Rules(Shape):
    """Rules by name; scales, field priors (`"any"` or a stern) and obstacle priors (`"any"` or a side).

    `prior_hung` holds priors that go before `prior` where it is known how the main rudder is hung.
    """

    rule: dict[str, Rule]
    scale: dict[str, Positive]
    prior: dict[str, dict[str, Prior]] = {}
    prior_hung: dict[Literal["inboard", "transom"], dict[str, dict[str, Prior]]] = {}
    obstacle: dict[str, dict[str, ObstaclePrior]] = {}

    def __getitem__(self, name: str) -> float:
        """Return a rule's value; KeyError names a rule the catalogue does not state."""
        return self.rule[name].value

    def scale_of(self, check: str) -> float:
        """Return the scale of a check, by its whole id or by its last part (`lower.reach` -> `reach`)."""
        return self.scale.get(check) or self.scale[check.rsplit(".", 1)[-1]]

    def prior_of(self, path: str, stern: str | None, hung: Literal["inboard", "transom"] | None = None) -> Prior | None:
        """Return what `path` is likely to be on such a stern, with a main rudder hung so."""
        own = self.prior_hung.get(hung, {}).get(path) if hung else None
        by_stern = own or self.prior.get(path, {})
        return by_stern.get(stern or "any") or by_stern.get("any")

    def obstacle_prior_of(self, kind: str, side: str | None) -> ObstaclePrior | None:
        """Return where an obstacle of a kind usually is on that side."""
        by_side = self.obstacle.get(kind, {})
        return by_side.get(side or "any") or by_side.get("any")


class Catalogue(Shape):
    """One version of what the maker sells. An answer and a record keep the version they were made with."""

    name: str
    version: str
    currency: Annotated[str, Field(pattern=r"^[A-Z]{3}$")]
    gears: tuple[Gear, ...] = Field(min_length=1)
    shafts: tuple[Shaft, ...] = Field(min_length=1)
    brackets: tuple[Bracket, ...] = Field(min_length=1)
    parts: tuple[Part, ...] = ()
    methods: tuple[Method, ...] = Field(min_length=1)
    rules: Rules

    def gear(self, code: str) -> Gear:
        """Return the gear of that code; KeyError names the nearest."""
        return _one(self.gears, code, "gear")

    def shaft(self, code: str) -> Shaft:
        """Return the shaft of that code; KeyError names the nearest."""
        return _one(self.shafts, code, "shaft")

    def bracket(self, code: str) -> Bracket:
        """Return the bracket of that code; KeyError names the nearest."""
        return _one(self.brackets, code, "bracket")

    def method(self, code: str | None) -> Method:
        """Return the uncertainty of a method; `unsaid` where nobody said how it was measured."""
        return next((m for m in self.methods if m.code == code), None) or _one(self.methods, "unsaid", "method")

    def configurations(self) -> tuple[Configuration, ...]:
        """Every gear, lower and upper bracket and shaft that the catalogue lets go together."""
        return tuple(
            Configuration(gear=gear.code, lower=lower.code, upper=upper.code, shaft=shaft.code)
            for gear in self.gears
            for lower in self.brackets
            if "lower" in lower.roles and gear.code in lower.gears
            for upper in self.brackets
            if "upper" in upper.roles and gear.code in upper.gears
            for shaft in self.shafts
            if gear.code in shaft.gears
        )

    def misfit(self, configuration: Configuration) -> str | None:
        """Say why a configuration cannot be made from this catalogue, None where it can."""
        try:
            gear, shaft = self.gear(configuration.gear), self.shaft(configuration.shaft)
            pair = {"lower": self.bracket(configuration.lower), "upper": self.bracket(configuration.upper)}
        except KeyError as error:
            return str(error.args[0])
        for role, bracket in pair.items():
            if role not in bracket.roles:
                return f"bracket {bracket.code!r} is not made for the {role} role"
            if gear.code not in bracket.gears:
                return f"bracket {bracket.code!r} does not take gear {gear.code!r}"
        if gear.code not in shaft.gears:
            return f"shaft {shaft.code!r} does not take gear {gear.code!r}"
        return None


class Configuration(Shape):
    """Gear, lower bracket, upper bracket and shaft, by code."""

    gear: Code
    lower: Code
    upper: Code
    shaft: Code

    def __str__(self) -> str:
        """Return the four codes on one line."""
        return f"{self.gear} · {self.lower} · {self.upper} · {self.shaft}"


def _one(things: Iterable[Any], code: str, what: str) -> Any:  # noqa: ANN401 - gear, shaft or bracket
    found = next((thing for thing in things if thing.code == code), None)
    if found is None:
        near = nearest(code, [thing.code for thing in things])
        raise KeyError(f"no {what} {code!r} in the catalogue" + (f"; did you mean {near!r}?" if near else ""))
    return found


# --- TOML document -> catalogue -------------------------------------------------------------------------


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
        place if "." in place or "[" in place or place in ("rules",) else f"catalogue.{place}",
        defect.value,
        defect.problem,
    )


def _cross_checks(catalogue: Catalogue) -> Iterable[Defect]:
    gears = {gear.code for gear in catalogue.gears}
    for table, things in (
        ("gear", catalogue.gears), ("shaft", catalogue.shafts), ("bracket", catalogue.brackets),
        ("part", catalogue.parts), ("method", catalogue.methods),
    ):  # fmt: skip
        seen: set[str] = set()
        for index, thing in enumerate(things):  # type: ignore[var-annotated, arg-type]
            if thing.code in seen:
                yield Defect(f"{table}[{index}].code", repr(thing.code), "the code is used twice")
            seen.add(thing.code)
            for code in getattr(thing, "gears", ()):
                if code not in gears:
                    yield Defect(
                        f"{table}[{index}].gears", repr(code), f"no such gear; known: {', '.join(sorted(gears))}"
                    )
    for role in ("lower", "upper"):
        if not any(role in bracket.roles for bracket in catalogue.brackets):
            yield Defect("bracket", "", f"no bracket has the {role} role")
    yield from _check_parts(catalogue)
    if "unsaid" not in {method.code for method in catalogue.methods}:
        yield Defect("method", "", "one method must be `unsaid`: what is taken where nobody said how it was measured")
    for index, method in enumerate(catalogue.methods):
        if method.code not in METHODS and method.code != "unsaid":
            yield Defect(
                f"method[{index}].code",
                repr(method.code),
                f"unknown method; did you mean {nearest(method.code, METHODS)!r}?",
            )
    yield from _check_rules(catalogue.rules)


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
    for name, rule in rules.rule.items():
        if not rule.source.strip():
            yield Defect(f"rules.{name}.source", "", "every rule names its source; 'common practice, no source' is one")
    for name in SCALES:
        if name not in rules.scale:
            yield Defect(f"rules.scale.{name}", "", "the scale is missing")
    yield from _check_priors("rules.prior", rules.prior)
    for hung, priors in rules.prior_hung.items():
        yield from _check_priors(f"rules.prior_hung.{hung}", priors)
    for kind in rules.obstacle:
        if kind not in OBSTACLE_KINDS:
            yield Defect(
                f"rules.obstacle.{kind}", "", f"is no kind of obstacle; did you mean {nearest(kind, OBSTACLE_KINDS)!r}?"
            )


def _check_priors(table: str, priors: dict[str, dict[str, Prior]]) -> Iterable[Defect]:
    for path, by_stern in priors.items():
        if not is_path(path):
            yield Defect(f"{table}.{path}", "", "is no field of the boat form")
        yield from (
            Defect(f"{table}.{path}.{stern}", "", f"is no stern; use any, {', '.join(STERNS)}")
            for stern in by_stern
            if stern != "any" and stern not in STERNS
        )
