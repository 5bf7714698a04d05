"""A centreline profile told as rows of two numbers: height above the water and distance aft of the top edge."""

from __future__ import annotations

import re
from itertools import pairwise

from service.core.reading.claims import Claim
from service.core.reading.lines import Line
from service.core.reading.sheet import Clause, Sheet
from service.core.units import UNITS

_ROW = re.compile(
    r"[ \t|*-]{0,40}(-?\d{1,5}(?:[.,]\d{1,2})?)(?:[ ]?(mm|cm|m|in)\b)?(?:[ ]{0,3}\([^()\d\n]{1,30}\))?[ \t|;:]{1,60}"
    r"(-?\d{1,5}(?:[.,]\d{1,2})?)(?:[ ]?(mm|cm|m|in)\b)?[ \t|]{0,60}"
)
_BOTTOM = re.compile(r"\b(\d{1,4})\b")
_WORDS = re.compile(r"[^\W\d_]+")
LEAST = 3
HEAD = 400


def read_profile(sheet: Sheet) -> list[Claim]:
    """Return claims for profile, top and bottom where at least three rows follow words that say what they are.

    The words must name a height above the water, a distance aft of the top edge, and the unit, in this order.
    """
    rows: list[tuple[Line, float, float]] = []
    runs: list[list[tuple[Line, float, float]]] = []
    units: set[str | None] = set()
    for line in sheet.lines:
        match = _ROW.fullmatch(sheet.clean, line.start, line.end) if line.zone in ("own", "quoted") else None
        if match is not None:
            rows.append((line, float(match[1].replace(",", ".")), float(match[3].replace(",", "."))))
            units |= {match[2], match[4]}
        elif sheet.clean[line.start : line.end].strip():
            runs, rows = ([*runs, rows], []) if rows else (runs, rows)
    runs = [run for run in [*runs, rows] if len(run) >= LEAST]
    unit = next(iter(units)) if len(units) == 1 else None
    return _claims(sheet, runs[0], unit) if len(runs) == 1 and (unit or units <= {None}) else []


def _claims(sheet: Sheet, run: list[tuple[Line, float, float]], unit: str | None) -> list[Claim]:
    start, end, depth = run[0][0].start, run[-1][0].end, run[0][0].depth
    head = [m for c in sheet.clauses for m in c.marks if start - HEAD <= m.start < start and not c.foreign]
    order = [m.concept for m in head if m.concept in ("HEIGHT", "WATER", "AFT")]
    factor = UNITS[unit].factor if unit else _unit(sheet.clean[max(0, start - HEAD) : start])
    said = {m.concept for m in head}
    top = max(run, key=lambda row: row[1])
    plain = top[2] == 0 and all(h > 0 for _, h, _ in run)  # at the greatest height the distance is nothing: no doubt
    gaps = plain and "PLUMB_LINE" in said and "AFT" not in said  # from a line off the top edge forward to the skin
    if factor is None or "WATER" not in order or not ("AFT" in order or gaps):
        return []
    lined = not plain and top[2] > 0 and {"PLUMB_LINE", "AFT"} <= said
    if lined:  # gaps to a line that hangs so far aft of the top edge
        run = [(line, h, top[2] - a) for line, h, a in run]
    elif not plain and (order.index("WATER") > order.index("AFT") or top[2] > 0):
        return []
    run = [(line, h, -a) for line, h, a in run] if gaps else run
    points = [{"height_mm": h * factor, "aft_mm": a * factor + 0.0} for _, h, a in run]
    heights = [p["height_mm"] for p in points]
    steps = [b - a for a, b in pairwise(heights)]
    if not (all(s > 0 for s in steps) or all(s < 0 for s in steps)):
        return []
    claims = [Claim("transom.profile", points, start, end, depth, 0.8)]
    at = next((i for i, p in enumerate(points) if p["aft_mm"] == 0 and p["height_mm"] == max(heights)), None)
    if at is not None:
        row = run[at][0]
        claims.append(Claim("transom.top_height_mm", points[at]["height_mm"], row.start, row.end, depth))
    edges = [m.start for c in sheet.clauses for m in c.marks if m.concept == "BOTTOM" and start <= m.start < end]
    for line, height, _ in run:
        if len(edges) == 1 and line.start <= edges[0] < line.end:
            return [*claims, Claim("transom.bottom_height_mm", height * factor, line.start, line.end, depth)]
    return claims + _bottom(sheet, end, factor, {h: h * factor for _, h, _ in run}, depth)


def _unit(head: str) -> float | None:
    """Return the factor of the one length unit in words before the rows; None where there is none or several."""
    words = set(_WORDS.findall(head.lower()))
    units = {UNITS[w] for w in words if w in UNITS and w not in ("in", "a", "pie") and UNITS[w].dimension == "length"}
    return units.pop().factor if len(units) == 1 else None


def _bottom(sheet: Sheet, after: int, factor: float, heights: dict[float, float], depth: int) -> list[Claim]:
    """Read "the 60 is the bottom edge": a number of the rows, named as the bottom."""
    clause: Clause | None = next((c for c in sheet.clauses if c.end > after and {"BOTTOM", "ENDS"} & c.concepts), None)
    if clause is None or clause.found:
        return []
    for match in _BOTTOM.finditer(sheet.clean, max(clause.start, after), clause.end):
        if float(match[1]) in heights:
            return [Claim("transom.bottom_height_mm", float(match[1]) * factor, match.start(), match.end(), depth)]
    return []
