"""The angle of the skin under a scoop's step: "below the step the hull runs forward at 40 degrees"."""

from __future__ import annotations

from service.core.reading.claims import RANGES, Claim, Notes
from service.core.reading.lean import rake_sign
from service.core.reading.lexis import words_of
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_obstacle
from service.core.units import Found, Quantity

_UNDER = (
    "under below beneath underneath darunter unterhalb unter dessous sous sotto debajo bajo onder eronder daaronder nedanfor nedenfor "
    "derunder inunder herunder dar"
)
UNDER = frozenset(_UNDER.split())
FIRST, BEFORE = 4, 24
OTHERS = frozenset({"RUDDER", "TRAILING", "STOCK", "TURN", "OTHER_BOAT"})


def read_under_step(sheet: Sheet, notes: Notes, hints: frozenset[str]) -> None:
    """Give an angle told of what lies under the step to that part, and take it from the transom."""
    for clause in sheet.clauses:
        angles = [f for f in clause.found if f.dimension == "angle" and isinstance(f.read, Quantity)]
        if len(angles) != 1 or clause.foreign or not _under(sheet.clean, clause, angles[0], hints):
            continue
        at = angles[0].start
        notes.claims = [c for c in notes.claims if not (c.field in ("transom.rake_deg", "boat.stern") and c.start >= clause.start
                        and c.end <= clause.end)]  # fmt: skip
        notes.doubts = [d for d in notes.doubts if not (d[1].field == "transom.rake_deg" and d[0] == at)]
        sign, value = _sign(clause), _value(angles[0])
        low, high = RANGES["transom.rake_deg"]
        if sign is not None and low <= value <= high:
            notes.claims.append(Claim("transom.lower_rake_deg", sign * value, at, angles[0].end, clause.depth, 0.75))


def _under(clean: str, clause: Clause, angle: Found, hints: frozenset[str]) -> bool:
    """Say whether a thought with an angle is about what lies under the step."""
    said = clause.concepts
    stepped = "SCOOP" in hints or {"STEP", "SCOOP"} & (said | frozenset(clause.topic))
    if not stepped or said & OTHERS or any(map(is_obstacle, said)):
        return False
    first = [w.fold for w in words_of(clean[clause.start : angle.start])][:FIRST]
    led = bool(UNDER & set(first)) and "WATER" not in said
    steps = [m for m in clause.marks if m.concept in ("STEP", "SCOOP") and m.start < angle.start]
    return led or any(
        UNDER & {w.fold for w in words_of(clean[max(clause.start, m.start - BEFORE) : m.start])} for m in steps
    )


def _sign(clause: Clause) -> float | None:
    """Return +1 where going down it runs forward, which has its upper edge aft."""
    ways = {m.concept for m in clause.marks if m.concept in ("FORWARD", "AFT")}
    if "TOP" in clause.concepts:
        return rake_sign(clause)
    if len(ways) != 1:
        return None  # "slopes forward": going up or down?
    return 1.0 if "FORWARD" in ways else -1.0


def _value(found: Found) -> float:
    return abs(found.read.value) if isinstance(found.read, Quantity) else 0.0
