"""What a fit is, as published: placement, checks, pads, fasteners, parts and verdict."""

from __future__ import annotations

from typing import Any, Literal

from service.core.boat import Shape
from service.core.catalogue import Configuration

Verdict = Literal["fits", "tight", "does_not_fit", "undecided"]


class Placement(Shape):
    """Where the configuration sits: offset to starboard, shaft axis aft, collar centres, both shaft ends."""

    offset_mm: float
    shaft_aft_mm: float
    lower_height_mm: float
    upper_height_mm: float
    shaft_bottom_mm: float
    shaft_top_mm: float


class Check(Shape):
    """One check as it came out. margin >= 0 passes; scale is the margin that counts as 1; `binds` says it can refuse."""

    id: str
    value: float | None
    limit: float | None
    margin: float | None
    unit: str
    scale: float | None
    probability: float | None
    status: Literal["pass", "fail", "unknown"]
    case: str
    why: str
    source: str
    binds: bool = True


class Filled(Shape):
    """A value nobody gave, and where it was taken from."""

    field: str
    from_: Literal["sister_ships", "neighbours", "prior"]
    value: float | str
    spread: float | None

    model_config = {**Shape.model_config, "alias_generator": lambda name: name.rstrip("_")}


class Doubt(Shape):
    """The share of the smallest scaled margin's variance that one measurement brings."""

    field: str
    share: float


class Pad(Shape):
    """A pad between flange and skin: thickness at the centre, at four corners, and its two bevel angles."""

    role: Literal["lower", "upper"]
    centre_mm: float
    corners_mm: dict[str, float]
    rake_bevel_deg: float
    plan_bevel_deg: float
    width_mm: float
    height_mm: float
    blank_mm: float


class Fastener(Shape):
    """Bolts of one bracket: what the grip is made of and the length to order."""

    role: Literal["lower", "upper"]
    size: str
    count: int
    grip_mm: float
    made_of: dict[str, float]
    length_mm: float | None
    length_inch: float | None
    note: str


class PartLine(Shape):
    code: str
    name: str
    quantity: int
    carton: str
    small: bool


class Fit(Shape):
    """A configuration, placed and checked on one boat."""

    configuration: Configuration
    verdict: Verdict
    probability: float | None
    placement: Placement | None
    checks: tuple[Check, ...]
    filled: tuple[Filled, ...] = ()
    doubt: tuple[Doubt, ...] = ()
    first_order: float | None = None
    disagrees: bool = False
    cures: tuple[str, ...] = ()
    trades: tuple[str, ...] = ()
    loads: dict[str, Any] = {}
    pads: tuple[Pad, ...] = ()
    fasteners: tuple[Fastener, ...] = ()
    cuts: tuple[dict[str, Any], ...] = ()
    parts: tuple[PartLine, ...] = ()
    owner_supplies: tuple[str, ...] = ()
    smallest_margin: float | None = None
    why: str = ""

    def check(self, id_: str) -> Check:
        """Return the check of that id; StopIteration where there is none."""
        return next(check for check in self.checks if check.id == id_)
