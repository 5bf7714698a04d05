"""A length -> the boat's own length or beam, where nothing but the boat was spoken of."""

from __future__ import annotations

from service.core.reading.claims import plausible
from service.core.reading.rudders import Decision
from service.core.reading.view import View
from service.core.units import Found

MATERIALS = frozenset({"SOLID", "CORED", "GRP", "ALU", "WOOD", "STEEL"})
PARTICULARS = frozenset(
    {"BOAT", "MODEL", "YEAR", "OURS", "LENGTH", "WIDTH", "DISPLACEMENT", "BEAM", "DRAFT", "LOA", "STICK_OUT"}
)
OVERALL = {"LENGTH": "boat.loa_mm", "WIDTH": "boat.beam_mm"}
BEAM_MM = 1500


def read_overall(seen: View, found: Found) -> Decision:
    """Return length or beam where nothing but the boat was spoken of: "the yacht is 11.2 m long and 3.85 m wide"."""
    listed = "WATER" in seen.before[:2] and "LOA" in seen.left and not seen.left & {"TRANSOM", "WIDTH", "TOP", "BOTTOM"}
    if listed and plausible("boat.lwl_mm", found):
        return "boat.lwl_mm", 1.0  # "10.20 m overall, 7.65 m on the waterline"
    told = next((c for c in (*seen.before[:1], *seen.after[:1]) if c in OVERALL), "")
    name = OVERALL.get(told)
    of_boat = (
        not seen.left - PARTICULARS - MATERIALS
        and "OTHER_BOAT" not in seen.topic
        and (seen.subject == "BOAT" or not seen.whole - PARTICULARS - MATERIALS)
    )
    fits = bool(name and of_boat) and min(plausible(name or "", found), default=0.0) >= BEAM_MM
    return (name, 1.0) if name and fits else None
