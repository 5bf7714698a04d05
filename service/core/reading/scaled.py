"""Lengths measured on a drawing: "on the plan at 1:10 I read 118 mm for the top, 64 mm for the bottom" are ten times that."""

from __future__ import annotations

import re
from dataclasses import replace

from service.core.reading.sheet import Clause, Sheet
from service.core.units import Quantity

_SCALE = re.compile(
    r"\b(?:scale|plans?|drawings?|ma\u00dfstab|massstab|riss|plan|zeichnung|\u00e9chelle|escala|planos?|scala|disegno|piano|"
    r"schaal|tekening|skala|ritning(?:en)?|tegning(?:en)?|m\u00e5lestok|m\u00e5lestokk)\b[^\d.;!?]{0,16}"
    r"(?<!\d)1[ ]?[:/][ ]?([1-9]\d?)\b",
    re.IGNORECASE,
)
PAPER_MM = 400.0
"""Nothing longer is measured with a ruler on a drawing of a boat; what is told so of a boat is told in full."""


def scale_up(sheet: Sheet) -> Sheet:
    """Return the sheet with what was measured on a drawing in the boat's own size.

    Where a thought names a scale and holds a longer length, all of it is told in full, and nothing is changed.
    """
    for clause in sheet.clauses:
        scale = _SCALE.search(sheet.clean, clause.start, clause.end)
        if scale is not None and _on_paper(clause, scale.end()):
            times = int(scale.group(1))
            clause.found = [
                replace(f, read=replace(f.read, value=f.read.value * times))
                if f.dimension == "length" and isinstance(f.read, Quantity) and f.start >= scale.end()
                else f
                for f in clause.found
            ]
    return sheet


def _on_paper(clause: Clause, after: int) -> bool:
    lengths = [f for f in clause.found if f.dimension == "length" and f.start >= after]
    return bool(lengths) and all(
        isinstance(f.read, Quantity) and f.read.unit in ("mm", "cm") and f.read.value < PAPER_MM for f in lengths
    )
