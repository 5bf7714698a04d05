"""What the maker sells and the rules it is fitted by. No number of a catalogue stands in code.

A catalogue is read from TOML by `service.files`; here is its shape and what can be wrong with it.
Lengths in mm, angles in degrees, masses in kg, forces in N, moments in N·m.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Annotated, Literal, Protocol, Self, TypeVar

from pydantic import AfterValidator, Field, model_validator

from service.core.boat import Shape
from service.core.words import nearest


class Coded(Protocol):
    """Anything of the catalogue that goes by a code."""

    @property
    def code(self) -> str:
        """Return the code."""
        ...


CodedThing = TypeVar("CodedThing", bound=Coded)
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
    """What goes along with a gear, a bracket or a shaft. `plumbs`: it stands for the shaft while the brackets are set plumb."""

    code: Code
    name: str
    quantity: Annotated[int, Field(ge=1)]
    carton: str
    small: bool = False
    goes_with: tuple[str, ...] = Field(min_length=1)
    plumbs: bool = False


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
    """What a field is likely to be where nothing is known: normal about mean + per_loa · (LOA - 10 m), cut."""

    mean: Number
    spread: NotNegative
    per_loa: Number = 0.0
    least: Number | None = None
    most: Number | None = None


class ObstaclePrior(Shape):
    """Where an obstacle of a kind usually is. Heights are above the top edge; spread moves the whole box."""

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


def _one(things: Iterable[CodedThing], code: str, what: str) -> CodedThing:
    known = {thing.code: thing for thing in things}
    if code not in known:
        near = nearest(code, known)
        raise KeyError(f"no {what} {code!r} in the catalogue" + (f"; did you mean {near!r}?" if near else ""))
    return known[code]
