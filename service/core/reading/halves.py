"""A width told by its half: "from the middle to the top corner it is 82 cm", "half the width at the top is 82 cm"."""

from __future__ import annotations

import re
from dataclasses import replace

from service.core.reading.claims import Claim, Notes, plausible
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_obstacle
from service.core.units import Found

_HALF = re.compile(
    r"\b(?:half (?:the |its |the total )?(?:width|breadth|beam)|half[ -](?:width|breadth)|(?:die )?halbe breite|demi[ -]largeur|"
    r"moiti\u00e9 de la largeur|(?:media|mitad de la|mitad del) (?:anchura|ancho)|semi(?:anchura|larghezza)|"
    r"met\u00e0 (?:della )?larghezza|mezza larghezza|halve breedte|halva bredden|halve bredden|"
    r"halv bredde|halvbredd(?:en)?|halvbredde(?:n)?)\b",
    re.IGNORECASE,
)
_CORNER = re.compile(
    r"\b(?:corner|outer (?:edge|corner)|ecke|au\u00dfenkante|seitenkante|coin|angle|esquina|angolo|spigolo|(?:boven)?hoek|h\u00f6rnet?|"
    r"\u00f6verh\u00f6rnet|hj\u00f8rnet?)\b",
    re.IGNORECASE,
)
WIDTHS = frozenset({"transom.width_top_mm", "transom.width_waterline_mm"})
OTHERS = frozenset(
    {"RUDDER", "TRAILING", "STOCK", "STEP", "OTHER_BOAT", "BOTTOM", "LEAN", "DEPTH", "COCKPIT", "TOERAIL"}
)


def read_halves(sheet: Sheet, notes: Notes) -> None:
    """Double the widths that are told as halves, and add those told from the middle to a top corner."""
    for clause in sheet.clauses:
        if clause.foreign or clause.parent is not None:
            continue
        if _HALF.search(sheet.clean, clause.start, clause.end):
            notes.claims = [_doubled(c, clause) for c in notes.claims]
            continue
        found = _corner(sheet, clause)
        values = plausible("transom.width_top_mm", found, 2.0) if found is not None else ()
        if found is not None and len(values) == 1:
            notes.claims.append(Claim("transom.width_top_mm", values[0], found.start, found.end, clause.depth, 0.75))


def _doubled(claim: Claim, clause: Clause) -> Claim:
    half = claim.field in WIDTHS and clause.start <= claim.start < clause.end and isinstance(claim.value, float)
    return replace(claim, value=claim.value * 2) if half else claim


def _corner(sheet: Sheet, clause: Clause) -> Found | None:
    """Return the one length of a thought that runs from the middle to a corner at the top."""
    lengths = [f for f in clause.found if f.dimension == "length"]
    middles = [m for m in clause.marks if m.concept == "CENTRE"]
    if len(lengths) != 1 or not middles or OTHERS & clause.concepts or any(map(is_obstacle, clause.concepts)):
        return None
    corner = _CORNER.search(sheet.clean, middles[0].end, clause.end)
    top = "TOP" in clause.concepts and "WATER" not in clause.concepts
    return lengths[0] if corner is not None and top else None
