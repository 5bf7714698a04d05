"""The features by which boats are compared, how far apart two values are, and how a form gives them.

Distances lie in 0..1. A number differs by |a - b| over the fleet's spread (displacement by its logarithm), at most 1;
sterns by a table; obstacles by the share of kinds that only one of the two has; other classes by being the same or not.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal, get_args

from service.core.boat import OBSTACLE_KINDS, STERNS, BoatForm, Material, paths
from service.core.record import HullModel

OBSTACLES = "obstacles"
RAKE = "transom.rake_deg"
STERN = "boat.stern"
REGISTERED = {
    "boat.loa_mm": "loa_mm", "boat.lwl_mm": "lwl_mm", "boat.beam_mm": "beam_mm", "boat.draft_mm": "draft_mm",
    "boat.displacement_kg": "displacement_kg", STERN: "stern",
}  # fmt: skip
CLASSES: dict[str, tuple[str, ...]] = {
    STERN: STERNS,
    "main_rudder.hung": ("inboard", "transom"),
    "boat.hull_material": get_args(Material),
}
_TEXTS = {"boat.builder", "boat.model", "boat.name", "boat.sail_number", "boat.hull_number", "boat.displacement_is"}
# Every single value of boat, skin and main rudder that sister ships or neighbours can lend.
COLUMNS = tuple(
    path
    for path in paths()
    if path.startswith(("boat.", "transom.", "main_rudder.")) and "[" not in path and path not in _TEXTS
)
WHOLE = {"boat.year", "main_rudder.number"}

# An end of a step, a drop panel or a sternpost bears other brackets than a flat transom; no bracket bridges the rest.
_KIN = {
    frozenset(("plumb", "raked")): 0.5, frozenset(("plumb", "reverse")): 0.5, frozenset(("reverse", "scoop")): 0.7,
    frozenset(("scoop", "open")): 0.5, frozenset(("plumb", "open")): 0.7,
}  # fmt: skip


@dataclass(frozen=True)
class Feature:
    """One feature: its path, its sort, and for numbers the spread taken where the fleet is too small to show one."""

    path: str
    sort: Literal["number", "log", "class", "stern", "kinds"]
    spread: float = 1.0


FEATURES = (
    Feature("boat.year", "number", 40), Feature("boat.loa_mm", "number", 5000), Feature("boat.lwl_mm", "number", 4500),
    Feature("boat.beam_mm", "number", 1300), Feature("boat.displacement_kg", "log", 1.6),
    Feature("transom.top_height_mm", "number", 600), Feature("transom.bottom_height_mm", "number", 500),
    Feature(RAKE, "number", 50), Feature("transom.width_top_mm", "number", 1600),
    Feature("transom.width_waterline_mm", "number", 1500), Feature("transom.camber_mm", "number", 120),
    Feature("transom.thickness_mm", "number", 30), Feature("transom.step_height_mm", "number", 400),
    Feature("transom.step_depth_mm", "number", 600), Feature("transom.post_width_mm", "number", 150),
    Feature("main_rudder.trailing_edge_aft_mm", "number", 1200), Feature("main_rudder.stock_aft_mm", "number", 1500),
    Feature(STERN, "stern"), Feature("main_rudder.hung", "class"), Feature("boat.hull_material", "class"),
    Feature(OBSTACLES, "kinds"),
)  # fmt: skip


def stern_distance(a: str, b: str) -> float:
    """Return 0..1: how unlike two sterns are to whoever hangs a bracket there (common practice, no source)."""
    return 0.0 if a == b else _KIN.get(frozenset((a, b)), 1.0)


def sterns_mix(a: str, b: str) -> bool:
    """Say whether a boat of one stern can be a precedent for the other: a sternpost never is for a flat skin."""
    return (a == "double_ended") == (b == "double_ended")


def read_value(form: BoatForm, path: str, hull: HullModel | None = None) -> float | str | None:
    """Return what the form says at `path`, else what the profile or the hull model tells; None where nobody does."""
    part, name = path.split(".")
    value: float | str | None = getattr(getattr(form, part), name)
    if path == RAKE and form.transom.profile is not None:
        value = _chord(form)
    if value is None and hull is not None and path in REGISTERED:
        value = getattr(hull, REGISTERED[path])
    if isinstance(value, str) and value not in CLASSES[path]:
        return None  # a hull model may name a stern of an older list
    return value


def said_kinds(form: BoatForm) -> frozenset[str] | None:
    """Return the kinds of obstacles there; None where nothing was said of any."""
    if not form.obstacles:
        return None
    return frozenset(thing.kind for thing in form.obstacles if thing.present is not False)


def as_number(path: str, value: float | str | None) -> float:
    """Return a value as kept in the fleet's arrays: a class by its place in its list, NaN where unknown."""
    if value is None:
        return math.nan
    return float(CLASSES[path].index(value)) if isinstance(value, str) else float(value)


def as_value(path: str, number: float) -> float | str | None:
    """Return what `as_number` took in."""
    if math.isnan(number):
        return None
    if path in CLASSES:
        return CLASSES[path][round(number)]
    return round(number) if path in WHOLE else number


def kind_bits(kinds: frozenset[str] | None) -> int:
    """Return the kinds as bits, one a kind in the order of the form's list; 0 where nothing was said."""
    return sum(1 << OBSTACLE_KINDS.index(kind) for kind in kinds or ())


def bit_kinds(bits: int) -> Iterator[str]:
    """Give the kinds whose bits are set."""
    return (kind for place, kind in enumerate(OBSTACLE_KINDS) if bits >> place & 1)


def _chord(form: BoatForm) -> float | None:
    """Return the rake of the chord from the profile's highest to its lowest point, degrees; it outranks a rake said."""
    profile = form.transom.profile
    if profile is None:
        return form.transom.rake_deg
    heights = [(-p.below_top_mm if p.height_mm is None else p.height_mm, p.aft_mm) for p in profile if p is not None]  # type: ignore[operator] # the form holds exactly one of the two
    (high, high_aft), (low, low_aft) = max(heights), min(heights)
    return math.degrees(math.atan2(high_aft - low_aft, high - low))
