"""How far the middle of the transom stands aft of its sides: "2 1/2 in of camber, the middle aft of the sides"."""

from __future__ import annotations

from service.core.reading.claims import Claim, Notes
from service.core.reading.sheet import Sheet
from service.core.reading.view import is_obstacle
from service.core.units import Quantity

MOST_MM = 600.0
OTHERS = frozenset({"RUDDER", "HULL_NUMBER", "OTHER_BOAT", "WATER", "WIDTH"})
ABOUT = frozenset({"TRANSOM", "POST"})


def read_camber(sheet: Sheet, notes: Notes) -> None:
    """Add the camber of the transom where one length is told with a word for it; it stands aft unless forward is said."""
    for clause in sheet.clauses:
        said = clause.concepts
        lengths = [f for f in clause.found if f.dimension == "length" and isinstance(f.read, Quantity)]
        about = ABOUT & (said | frozenset(clause.topic[:4]) | clause.question)
        if "CAMBER" not in said or not about or said & OTHERS or any(map(is_obstacle, said)) or len(lengths) != 1:
            continue
        ways = said & {"AFT", "FORWARD"}
        value = lengths[0].read.value if isinstance(lengths[0].read, Quantity) else 0.0
        if clause.foreign or len(ways) > 1 or not 0 < value <= MOST_MM:
            continue
        at, end = lengths[0].start, lengths[0].end
        notes.claims = [c for c in notes.claims if c.start != at]
        sign = -1.0 if "FORWARD" in ways else 1.0
        notes.claims.append(Claim("transom.camber_mm", sign * value, at, end, clause.depth, 0.75))
