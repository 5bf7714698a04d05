"""Measures that are told to be nothing: no rake, a trailing edge right under the top edge."""

from __future__ import annotations

from service.core.reading.claims import Claim, Notes
from service.core.reading.sheet import Clause
from service.core.reading.view import denied, is_obstacle


def note_zeros(clause: Clause, notes: Notes) -> None:
    """Add claims of 0 for what a thought says is nothing."""
    _even(clause, notes)
    _no_rake(clause, notes)


def _no_rake(clause: Clause, notes: Notes) -> None:
    """Note a rake that is told to be none: "rake: nil"."""
    zero = next((m for m in clause.marks if m.concept == "ZERO" or (m.concept == "NOT" and clause.shaped)), None)
    about = "RAKE" in clause.concepts and not any(is_obstacle(c) for c in clause.concepts)
    if zero is not None and about and not clause.found and not {"LEAN", "REVERSE", "COUNTER"} & clause.concepts:
        notes.claims.append(Claim("transom.rake_deg", 0.0, zero.start, zero.end, clause.depth, 0.7))


def _even(clause: Clause, notes: Notes) -> None:
    """Note a trailing edge that lies right under the transom's top edge: nothing aft of it."""
    about = clause.concepts | (clause.question if "TRAILING" in clause.question else frozenset())
    lengths = any(f.dimension == "length" for f in clause.found)
    edge = bool({"TOP", "TRANSOM", "POST"} & clause.concepts) and "WATER" not in clause.concepts
    mark = next((m for m in clause.marks if m.concept == "EVEN"), None)
    if mark is not None and "TRAILING" in about and edge and not lengths and not denied(clause, mark.start):
        notes.claims.append(Claim("main_rudder.trailing_edge_aft_mm", 0.0, mark.start, mark.end, clause.depth, 0.7))
