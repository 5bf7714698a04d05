"""A centreline profile told as pairs of lengths: so far down from the top edge, so far aft or forward of it.

"30 cm below the edge: 7 cm", one a line or one after the other, below a thought that says from where and which way.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from service.core.reading.claims import Claim, Notes
from service.core.reading.lexis import Mark
from service.core.reading.plumb_rows import bare_pairs, last_is_bottom
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_obstacle
from service.core.units import Found, Quantity

_DOWN = re.compile(
    r"[ \n]{0,2}(?:further |weiter |verder |mer |lenger |l\u00e6ngere |m\u00e1s |pi\u00f9 |plus )?"
    r"(?:down|below|beneath|under|lower|unter|tiefer|unten|sotto|gi\u00f9|sous|dessous|bas|por debajo|debajo|abajo|bajo|onder|lager|"
    r"omlaag|naar beneden|ner|ned|nede|ner\u00e5t|nedanf\u00f6r|nedenfor|nedover|nedad|en dessous|plus bas)\b",
    re.IGNORECASE,
)
_ABOVE = re.compile(
    r"[ \n](?:above|over|off|\u00fcber|ueber|sopra|au-dessus|sobre|boven|\u00f6ver)[ \n]", re.IGNORECASE
)
_ZERO = re.compile(r"[^\d\n]{0,40}\b0(?:[.,]0)?(?:[ ]?(?:mm|cm))?[^\d\n]{0,9}\s{0,3}")
OTHERS = frozenset({"RUDDER", "TRAILING", "STOCK", "OTHER_BOAT", "STEP", "WIDTH"})
STERN = frozenset({"TRANSOM", "TOP", "POST"})
WAYS = {"AFT": 1.0, "FORWARD": -1.0}
LEAST, MOST, REACH, STEEPEST = 2, 20, 16, 1.5
Pair = tuple[Found, Found]


def read_plumbed(sheet: Sheet, notes: Notes) -> None:
    """Add profile, stern and where the skin ends, from the one list of pairs that the letter has."""
    if any(c.field == "transom.profile" for c in notes.claims):
        return
    whole = [c for c in sheet.clauses if c.parent is None and not c.foreign and not c.apart]
    lists = []
    for at, head in enumerate(whole):
        below = whole[at + 1 : at + 1 + MOST]
        way = _way(head) or _way_below(sheet.clean, head, below)
        if way is None:
            continue
        rows = _rows(sheet.clean, head, way[1], below)
        pairs = _pairs(sheet.clean, [f for _, found in rows for f in found])
        if pairs:
            lists.append((way[0], rows, pairs))
    tops = {c.value for c in notes.claims if c.field == "transom.top_height_mm"}
    if len(lists) == 1 and len(tops) <= 1:
        sign, rows, pairs = lists[0]
        notes.claims += _claims(sheet, (sign, pairs), [c for c, _ in rows], next(iter(tops), None))
        notes.claims += last_is_bottom(sheet, whole, rows[-1][0], pairs[-1][0], next(iter(tops), None))


def _way(head: Clause) -> tuple[float, Mark] | None:
    """Return which way the skin lies off the line or edge, and the word that says so."""
    said = head.concepts
    ways = [m for m in head.marks if m.concept in WAYS]
    about = said & STERN and (said & {"PLUMB_LINE"} or "TOP" in said)
    if not about or said & OTHERS or any(map(is_obstacle, said)) or len({m.concept for m in ways}) != 1:
        return None
    lines = [m for m in head.marks if m.concept == "PLUMB_LINE" and m.end <= ways[0].start]
    skins = [m for m in head.marks if m.concept == "TRANSOM" and m.end <= ways[0].start]
    if lines and not skins and any(m.concept == "TRANSOM" and m.start > ways[0].end for m in head.marks):
        return None  # "the line hangs aft of the transom by": a gap, not where the skin is
    return WAYS[ways[0].concept], ways[0]


def _way_below(clean: str, head: Clause, below: Sequence[Clause]) -> tuple[float, Mark] | None:
    """Return which way the skin lies off a hung line, said behind the rows: "... The transom is always forward of the line"."""
    said = head.concepts
    if not {"PLUMB_LINE"} <= said or not said & STERN or said & (OTHERS | set(WAYS)) or any(map(is_obstacle, said)):
        return None
    rows = _rows(clean, head, Mark("", head.end, head.end), below)
    after = next((c for c in below if rows and c.start > rows[-1][0].start), None)
    if after is None or after.found or after.concepts & OTHERS:
        return None
    told = [m.concept for m in after.marks if m.concept in {*WAYS, "TRANSOM", "TOP", "BOTTOM", "PLUMB_LINE"}]
    way = told[1] if told[:1] == ["TRANSOM"] and len(told) > 1 else ""
    return (WAYS[way], Mark("", head.end, head.end)) if way in WAYS else None


def _rows(clean: str, head: Clause, way: Mark, below: Sequence[Clause]) -> list[tuple[Clause, list[Found]]]:
    """Return the thoughts that list lengths: what stands behind the direction, then each below that is nothing else."""
    rows = []
    own = [f for f in head.found if f.start >= way.end]
    if own:
        rows.append((head, own))
    for clause in below:
        if not rows and _ZERO.fullmatch(clean, clause.start, clause.end):
            continue  # "at the edge: 0"
        lengths = [f for f in clause.found if f.dimension == "length" and isinstance(f.read, Quantity)]
        lengths = lengths or bare_pairs(clean, head, clause)
        if (
            len(clause.found) not in (0, len(lengths))
            or not lengths
            or clause.depth != head.depth
            or clause.concepts & OTHERS
        ):
            break
        ends = {"TRANSOM"} if {"ENDS", "BOTTOM"} & clause.concepts else set()  # "100 cm down, where the transom ends"
        if len(lengths) % 2 or clause.concepts & {"TRANSOM", "DRAFT", "BEAM", "LOA", "THICK"} - ends:
            break
        rows.append((clause, lengths))
    return rows


def _pairs(clean: str, found: Sequence[Found]) -> list[Pair]:
    """Return (down, across) pairs; none where the lengths do not go down step by step."""
    plain = all(f.dimension == "length" and isinstance(f.read, Quantity) for f in found)
    if not plain or len(found) % 2 or len(found) < LEAST * 2:
        return []
    firsts, seconds = list(found[::2]), list(found[1::2])
    turned = any(_DOWN.match(clean, f.end) for f in seconds) and not any(_DOWN.match(clean, f.end) for f in firsts)
    downs, across = (seconds, firsts) if turned else (firsts, seconds)
    told = any(_DOWN.match(clean, f.end) for f in downs) and not any(
        _ABOVE.match(clean, f.end, f.end + REACH) for f in downs
    )
    deeper = all(_mm(a) < _mm(b) for a, b in pairwise(downs))
    flat = all(0 <= _mm(a) <= STEEPEST * _mm(d) for d, a in zip(downs, across, strict=True))
    even = all(_mm(a) <= _mm(b) for a, b in pairwise(across))
    return list(zip(downs, across, strict=True)) if told and deeper and flat and even else []


def _claims(sheet: Sheet, told: tuple[float, list[Pair]], rows: list[Clause], top: float | None) -> list[Claim]:
    sign, pairs = told
    start = min(f.start for pair in pairs for f in pair)
    end = max(f.end for pair in pairs for f in pair)
    steps = [(0.0, 0.0), *((_mm(d), sign * _mm(a)) for d, a in pairs if _mm(d) > 0)]
    key = "below_top_mm" if top is None else "height_mm"
    points = [{key: d if top is None else round(top - d, 6), "aft_mm": round(a, 6) + 0.0} for d, a in steps]
    depth = rows[0].depth
    claims = [Claim("transom.profile", points, start, end, depth, 0.8)]
    if steps[-1][1]:
        claims.append(Claim("boat.stern", "raked" if sign < 0 else "reverse", start, end, depth, 0.7))
    inner = {m.concept for c in sheet.clauses if c.parent is rows[-1] for m in c.marks}
    if top is not None and {"BOTTOM", "ENDS"} & (rows[-1].concepts | inner):
        last = pairs[-1][0]
        claims.append(Claim("transom.bottom_height_mm", round(top - _mm(last), 6), last.start, last.end, depth, 0.8))
    return claims


def _mm(found: Found) -> float:
    return found.read.value if isinstance(found.read, Quantity) else 0.0
