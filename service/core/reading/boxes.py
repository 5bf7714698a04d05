"""An obstacle as told, and the boxes it fills where distances are said."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Any

from service.core.reading.lexis import Mark
from service.core.reading.meant import PAIR
from service.core.reading.measures import MOST_MEASURES
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.spans import FAR_MM, stretched
from service.core.reading.view import view
from service.core.units import Found, Quantity
from service.core.units.lexicon import RANGE_WORDS

SLENDER = frozenset({"exhaust", "staff", "mast"})
"""Things so thin that one distance says where they are."""
_FROM = re.compile(
    r"\b(?:from|von|ab|vanaf|fr\u00e5n|fra|desde|depuis)[ ]$", re.IGNORECASE
)  # "from 10 cm above the water up to ..."
BEFORE = 8
IN_PAIRS = frozenset({"davits"})
RANGE_JOINTS = RANGE_WORDS | {"-", "\u2013"}


@dataclass
class Seen:
    """One obstacle as told: where first named, and what is said of it."""

    kind: str
    start: int
    end: int
    depth: int
    said: dict[str, Any] = field(default_factory=dict)
    places: dict[str, tuple[int, int]] = field(default_factory=dict)
    marks: list[tuple[Clause, Mark]] = field(default_factory=list)
    found: list[tuple[Clause, Found]] = field(default_factory=list)


def tell(one: Seen, key: str, value: object, place: Mark | Found, *, first: bool = False) -> None:
    """Note what is said and where; `first`: only where nothing was said before."""
    if not (first and key in one.said):
        one.said[key] = value
        one.places[key] = (place.start, place.end)


def boxes(sheet: Sheet, one: Seen) -> None:
    """Set the boxes that the distances said of a thing come to."""
    centred = any(m.concept == "CENTRE" for _, m in one.marks) and one.said.get("side") == "centre"
    sideways, ends = stretched(sheet.clean, one.found, (one.said, one.places))
    wide: tuple[float, Found] | None = None
    for clause, found in (told for told in one.found if id(told[1]) not in ends):
        if not isinstance(found.read, Quantity) or abs(found.read.value) > FAR_MM or len(clause.found) > MOST_MEASURES:
            continue
        axis, sort = _axis(sheet, clause, found)
        value = abs(found.read.value)
        if axis == "starboard_mm" and sort == "from centre":
            sideways.append((value, found))
        elif axis == "starboard_mm" and (sort == "each side" or centred):
            half = value if sort == "each side" else value / 2
            tell(one, axis, [-half, half], found, first=True)
        elif axis == "starboard_mm" and sort == "width":
            wide = value, found
        elif axis == "aft_mm":
            tell(one, axis, [0.0, value], found, first=True)
        elif axis == "height_mm" and not _FROM.search(sheet.clean, max(0, found.start - BEFORE), found.start):
            tell(one, axis, [value, value], found, first=True)
    _beside(one, sideways, wide)


def _beside(one: Seen, sideways: list[tuple[float, Found]], wide: tuple[float, Found] | None) -> None:
    """Set how far off the middle it begins and ends: two distances, where it begins and its width, or a thin thing's one."""
    side = one.said.get("side")
    if len(sideways) == 1 and one.kind in IN_PAIRS and side in (None, "both"):
        tell(one, "starboard_mm", [-sideways[0][0], sideways[0][0]], sideways[0][1], first=True)
    if side not in ("port", "starboard") or "starboard_mm" in one.said:
        return
    if len(sideways) == 1 and one.kind in SLENDER:
        sideways = sideways * PAIR
    elif len(sideways) == 1 and wide is not None and any("BEGIN" in clause.concepts for clause, _ in one.found):
        sideways = [*sideways, (sideways[0][0] + wide[0], wide[1])]
    if len(sideways) == PAIR:
        (low, a), (high, b) = sorted(sideways, key=lambda s: s[0])
        one.said["starboard_mm"] = [low, high] if side == "starboard" else [-high, -low]
        one.places["starboard_mm"] = (min(a.start, b.start), max(a.end, b.end))


def _axis(sheet: Sheet, clause: Clause, found: Found) -> tuple[str | None, str]:  # noqa: PLR0911 - one a way
    """Return which way a distance runs, and for one athwartships what it is counted from."""
    seen = view(sheet.clean, clause, found)
    around = seen.near
    if "EACH_SIDE" in around:
        return "starboard_mm", "each side"
    if {"WATER", "BELOW"} <= set(seen.after):
        return None, ""
    if "WATER" in seen.after:
        return "height_mm", ""
    if "WIDTH" in around:
        return "starboard_mm", "width"
    if "DEPTH" in around:
        return "aft_mm", ""
    if found.shared or "CENTRE" in around or _in_range(sheet, clause, found):
        return "starboard_mm", "from centre"
    if {"STICK_OUT", "AFT"} & around and "WATER" not in around:
        return "aft_mm", ""
    return ("height_mm", "") if "WATER" in around else (None, "")


def _in_range(sheet: Sheet, clause: Clause, found: Found) -> bool:
    """Say whether only a range word or dash stands between this quantity and another of its clause."""
    for other in clause.found:
        low, high = (found.end, other.start) if other.start >= found.end else (other.end, found.start)
        if other is not found and sheet.clean[low:high].strip().casefold() in RANGE_JOINTS:
            return True
    return False
