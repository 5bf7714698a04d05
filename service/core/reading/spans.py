"""Stretches that a thing on the stern takes up, told from one end to the other: "70 to 100 cm off centre, 1.4 to 1.9 m up"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Any

from service.core.reading.sheet import Clause
from service.core.reading.view import view
from service.core.units import Found, Quantity

_UP = re.compile(r"[ \n]up(?=\s{0,3}(?:[.,;:)\n]|and\b|$))", re.IGNORECASE)
FAR_MM = 6000.0
CLOSE, PAIR = 16, 2
AXES = {"AFT": "aft_mm", "CENTRE": "starboard_mm", "WATER": "height_mm"}
Stretch = tuple[str, float, float, Found, Found]


def stretched(
    clean: str, told: Sequence[tuple[Clause, Found]], box: tuple[dict[str, Any], dict[str, tuple[int, int]]]
) -> tuple[list[tuple[float, Found]], set[int]]:
    """Set in `box` (what is said, and where) the ranges aft and in height; return those athwartships, and who they are by id."""
    sideways: list[tuple[float, Found]] = []
    ends: set[int] = set()
    for axis, low, high, first, last in stretches(clean, told):
        ends |= {id(first), id(last)}
        if axis == "starboard_mm" and high <= FAR_MM:
            sideways += [(low, first), (high, last)]
        elif axis and axis not in box[0] and high <= FAR_MM:
            box[0][axis], box[1][axis] = [low, high], (first.start, last.end)
    return sideways, ends


def stretches(clean: str, told: Sequence[tuple[Clause, Found]]) -> Iterator[Stretch]:
    """Yield axis, low, high (mm, no signs) and both ends of each range among what is told; athwartships counts from the middle."""
    own = {id(found) for _, found in told}
    seen: set[int] = set()
    for clause, _ in told:
        if id(clause) in seen:
            continue
        seen.add(id(clause))
        for low, high in clause.ranges:
            if not {id(low), id(high)} <= own or not isinstance(low.read, Quantity):
                continue
            if isinstance(high.read, Quantity) and 0 <= low.read.value <= high.read.value:
                axis = _axis(clean, clause, low, high)
                if axis is not None:
                    yield axis.rstrip("+"), 0.0 if axis.endswith("+") else low.read.value, high.read.value, low, high
        yield from _from_to(clean, clause, own)


def _from_to(clean: str, clause: Clause, own: set[int]) -> Iterator[Stretch]:
    """Yield the stretch of "it starts 30 cm behind the edge and finishes 85 cm behind"."""
    ends = []
    for concept in ("BEGIN", "ENDS"):
        mark = next((m for m in clause.marks if m.concept == concept), None)
        found = [f for f in clause.found if mark is not None and 0 <= f.start - mark.end <= CLOSE and id(f) in own]
        ends += found[:1]
    if len(ends) != PAIR or ends[0].start >= ends[1].start:
        return
    low, high = ends
    around = {*view(clean, clause, low).after[:1], *view(clean, clause, high).after[:1]}
    axis = (
        AXES.get(around.pop())
        if len(around) == 1
        else AXES.get(view(clean, clause, low).after[:1][0])
        if around
        else None
    )
    if axis is not None and isinstance(low.read, Quantity) and isinstance(high.read, Quantity):
        value, other = low.read.value, high.read.value
        if 0 <= value <= other:
            yield axis, value, other, low, high


def _axis(clean: str, clause: Clause, low: Found, high: Found) -> str | None:
    """Return which way a range runs, by the words behind it, else by those in front; "+" where it begins at the transom.

    None for a size, nothing where it reaches below the water.
    """
    if "BELOW" in view(clean, clause, high).after:
        return ""
    after, before = view(clean, clause, high).after, view(clean, clause, low).before
    if "WATER" in after or _UP.match(clean, high.end, clause.end):
        return "height_mm"
    if after[:1] == ("CENTRE",):
        return "starboard_mm"
    if "STICK_OUT" in {*after, *before} or "AFT" in after:
        return "aft_mm+" if "STICK_OUT" in {*after, *before} else "aft_mm"
    if {"WIDTH", "DEPTH", "HEIGHT", "LENGTH", "THICK"} & {*after, *before[:1]}:
        return None
    around = "aft_mm" if before[:1] == ("AFT",) else "starboard_mm"
    return "height_mm" if "WATER" in before else around
