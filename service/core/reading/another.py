"""A distance counted on from the one before: "trailing edge 14 inches forward of it, the stock another 16 inches further"."""

from __future__ import annotations

import re
from dataclasses import replace

from service.core.reading.claims import RANGES, Claim, Notes
from service.core.reading.sheet import Sheet

_ANOTHER = re.compile(
    r"\b(?:another|a further|further|noch (?:einmal|mal)|nochmals?|weitere|encore|de plus|otros|m\u00e1s|altri|ancora|nog (?:eens|een)|"
    r"ytterligare|ytterligere|yderligere|enda|endnu)\s+(?:(?:about|some|etwa|rund|ca\.?|circa|environ|unos|ongeveer|cirka|omtrent)\s+)?$",
    re.IGNORECASE,
)
_FURTHER = re.compile(
    r"[ \n](?:further|farther|weiter vor|verder naar voren|"
    r"l\u00e4ngre f\u00f6r|lenger for|l\u00e6ngere frem|plus en avant|m\u00e1s a proa|pi\u00f9 a pr)",
    re.IGNORECASE,
)
STOCK, TRAILING = "main_rudder.stock_aft_mm", "main_rudder.trailing_edge_aft_mm"
BACK = 28


def count_on(sheet: Sheet, notes: Notes) -> None:
    """Count a stock's distance on from the trailing edge told before it, where the letter says so; else leave it out."""
    for stock in [c for c in notes.claims if c.field == STOCK and isinstance(c.value, float)]:
        clause = sheet.clause_at(stock.start)
        low = max(stock.start - BACK, clause.start if clause is not None else 0)
        if clause is None:
            continue
        another = _ANOTHER.search(sheet.clean, low, stock.start) is not None
        behind = [m for m in clause.marks if m.start >= stock.end and m.concept in ("TRANSOM", "TOP", "POST")]
        if not another and (behind or not _FURTHER.match(sheet.clean, stock.end, clause.end)):
            continue
        edges = [c for c in notes.claims if c.field == TRAILING and c.depth == stock.depth and c.start < stock.start]
        if another or edges:  # "40 cm further forward": than the edge, or than the transom?
            notes.claims.remove(stock)
        if another and len(edges) == 1:
            notes.claims += _sum(edges[0], stock)


def _sum(edge: Claim, stock: Claim) -> list[Claim]:
    value = round(edge.value + stock.value, 6)
    low, high = RANGES[STOCK]
    return [replace(stock, value=value, start=edge.start, confidence=0.75)] if low <= value <= high else []
