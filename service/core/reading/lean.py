"""Which way a transom leans, by the words of one clause."""

from __future__ import annotations

from service.core.reading.lexis import Mark
from service.core.reading.sheet import Clause

BESIDE = 3

OTHERS = frozenset({"RUDDER", "TRAILING", "STOCK", "STEP", "WATER"})
RUDDERS = ("TRAILING", "STOCK")
ALONE = frozenset({"TOP", "FORWARD", "AFT", "HEIGHT", "BOTTOM"})


def _other_edge(clause: Clause, at: int, edge: float) -> bool:
    """Say whether the other edge is named behind a place: what the first sticks out over."""
    return any(m.concept == ("BOTTOM" if edge > 0 else "TOP") and m.start >= at for m in clause.marks)


def rake_sign(clause: Clause) -> float | None:
    """Return +1 where the clause has the top edge aft of the bottom, -1 forward of it; None where unsaid or at odds.

    "Top further aft than the bottom" outranks "leans aft", and that outranks the names for such sterns.
    """
    edges: set[float] = set()
    leans: set[float] = set()
    names: set[float] = set()
    edge, leaning = 0.0, False
    for mark in clause.marks:
        if mark.concept == "TOP" or (mark.concept == "BOTTOM" and not edges):
            edge = 1.0 if mark.concept == "TOP" else -1.0
        elif mark.concept in ("LEAN", "RAKE", *RUDDERS):
            edge, leaning = 0.0, mark.concept not in RUDDERS
        elif mark.concept in ("FORWARD", "AFT"):
            way = 1.0 if mark.concept == "AFT" else -1.0
            (edges if edge else leans if leaning else set()).add(way * (edge or 1.0))
        elif mark.concept == "STICK_OUT" and edge and _other_edge(clause, mark.end, edge):
            edges.add(edge)  # "the top overhangs the bottom by 9 in"
        elif mark.concept in ("REVERSE", "COUNTER"):
            names.add(-1.0 if mark.concept == "REVERSE" else 1.0)
    if "DOWNWARD" in clause.concepts:
        leans = {-way for way in leans}  # "going down it runs forward"
    edges = edges or (set() if leans else _told_after(clause))
    for signs in (edges, leans, names):
        if signs:
            return next(iter(signs)) if len(signs) == 1 and not names - signs else None
    return None


def _told_after(clause: Clause) -> set[float]:
    """Return the way where the edge is named behind it: "it sticks out further aft at the top than at the bottom"."""
    marks = [m for m in clause.marks if m.concept in ("FORWARD", "AFT", "TOP", "BOTTOM")]
    ways = [at for at, m in enumerate(marks) if m.concept in ("FORWARD", "AFT")]
    if (
        len(ways) != 1
        or not {"TOP", "BOTTOM"} <= clause.concepts
        or OTHERS & clause.concepts
        or ways[0] + 1 == len(marks)
    ):
        return set()
    way, edge = marks[ways[0]], marks[ways[0] + 1]
    return {(1.0 if way.concept == "AFT" else -1.0) * (1.0 if edge.concept == "TOP" else -1.0)}


def edge_leans(clause: Clause) -> bool:
    """Say whether a line of a list tells of the top edge alone which way it lies: "- 20 degrees, top aft"."""
    told = clause.concepts - {"YEAR"}
    return clause.shaped and {"TOP"} <= told <= ALONE and len(told & {"FORWARD", "AFT"}) == 1


def is_a_way_of_measuring(clause: Clause, mark: Mark) -> bool:
    """Say whether "vertical" tells how a length was measured: "over 70 cm vertical", "measured plumb"."""
    lengths = [f for f in clause.found if f.dimension == "length"]
    beside = any(0 <= mark.start - f.end <= BESIDE for f in lengths)
    taken = any(
        m.concept == "MEASURED" and min(abs(mark.start - m.end), abs(m.start - mark.end)) <= BESIDE
        for m in clause.marks
    )
    return bool(lengths) and (beside or taken) and "LEAN" not in {m.concept for m in clause.marks if m.start > mark.end}
