"""A lean told as so much over so much: "27 cm over 98 cm", "in 34 inches of height", "3 inches per foot", "25 percent"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from math import atan2, degrees

from service.core.reading.bare import fall_sign
from service.core.reading.claims import RANGES, Claim, Notes
from service.core.reading.lexis import words_of
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_obstacle, view
from service.core.units import UNITS, Found, Quantity

_OVER = "over in on within for auf uber bei sur pour en sobre por su in per op pa i ved"
_FILL = (
    "a an the of every each one height drop einer eine der die den einem hohe von une un la le l de du hauteur denivele una el los "
    "altura alto desnivel altezza dislivello een het hoogte van hoogteverschil en ett hojd pa av hoyde hojde et vertical vertikal "
    "verticale verticalen verticales total measured overall same about roughly etwa rund ca circa environ unos ongeveer ungefar"
)
OVER, FILL = frozenset(_OVER.split()), frozenset(_FILL.split())
_PER = re.compile(
    r"[ ](?:per|auf[ ]den|je|pro|par|por|al|op[ ]de|op[ ]elke|pr\.?|p\u00e5[ ]hver|p\u00e5[ ]varje)[ ]([^\W\d_]{1,10})\b",
    re.IGNORECASE,
)
_PERCENT = re.compile(
    r"(?<![\d.,])(\d{1,2}(?:[.,]\d)?)[ ]?(?:%|percent\b|per cent\b|prozent\b|pour cent\b|por ciento\b|per cento\b|procent\b|prosent\b)",
    re.IGNORECASE,
)
LEANS = frozenset({"LEAN", "RAKE", "REVERSE", "COUNTER", "FORWARD", "AFT"})
STERN = frozenset({"TRANSOM", "POST", "TOP", "BOTTOM", "LEAN", "REVERSE", "COUNTER"})
OTHERS = frozenset({"RUDDER", "TRAILING", "STOCK", "STEP", "OTHER_BOAT", "THICK", "KEEL"})
ELSE = frozenset({"WATER", "WIDTH", "BEAM", "DRAFT", "LOA", "LWL", "CENTRE"})
DOWN = frozenset({"DROP", "DOWNWARD", "HEIGHT"})
SPAN, PAIR, SHORTEST = 34, 2, 100.0
Slope = tuple[float, int, int]


def read_slopes(sheet: Sheet, notes: Notes, hints: frozenset[str]) -> None:
    """Add a rake told as a fall, where nothing else tells it; which way, the same thought says, else the whole letter."""
    if any(c.field == "transom.rake_deg" for c in notes.claims):
        return
    whole = [c for c in sheet.clauses if c.parent is None and not c.foreign and not c.apart]
    within: dict[int, list[Clause]] = {}
    for one in sheet.clauses:
        if one.parent is not None:
            within.setdefault(id(one.parent), []).append(one)
    for at, clause in enumerate(whole):
        if not _about(clause):
            continue
        inner = [f for c in within.get(id(clause), ()) if not OTHERS & c.concepts for f in c.found]
        after = whole[at + 1] if at + 1 < len(whole) and whole[at + 1].paragraph == clause.paragraph else None
        slope = _pair(sheet, clause, inner) or _rate(sheet.clean, clause) or _two(sheet, clause, after)
        sign = slope_sign(clause, hints)
        if slope is None or sign is None:
            continue
        value = round(sign * slope[0], 2)
        if abs(value) <= RANGES["transom.rake_deg"][1]:
            notes.claims.append(Claim("transom.rake_deg", value, slope[1], slope[2], clause.depth, 0.7))
            sort = "raked" if sign > 0 else "reverse"
            notes.claims.append(Claim("boat.stern", sort, slope[1], slope[2], clause.depth, 0.7))
            lengths = {f.start for f in (*clause.found, *inner)}
            notes.doubts = [d for d in notes.doubts if d[0] not in lengths or d[1].why != "ambiguous"]


def slope_sign(clause: Clause, hints: frozenset[str]) -> float | None:
    """Return +1 for a top aft of the bottom, -1 for one forward of it, None where unsaid."""
    sign = fall_sign(clause)
    if (
        sign is None and {"TOP", "BOTTOM"} <= clause.concepts
    ):  # "the foot stands out 30 cm", "the top overhangs the bottom"
        order = [m.concept for m in clause.marks if m.concept in ("TOP", "BOTTOM", "STICK_OUT", "FORWARD", "AFT")]
        at = order.index("STICK_OUT") if "STICK_OUT" in order and not {"FORWARD", "AFT"} & set(order) else 0
        sign = (1.0 if order[at - 1] == "TOP" else -1.0) if at else None
    way = hints & {"REVERSE", "COUNTER"}
    return sign if sign is not None or len(way) != 1 else -1.0 if "REVERSE" in way else 1.0


def _about(clause: Clause) -> bool:
    stern = STERN & (clause.concepts | frozenset(clause.topic[:4]) | clause.question)
    leans = LEANS & clause.concepts or {"TOP", "BOTTOM"} <= clause.concepts
    return bool(stern and leans) and not OTHERS & clause.concepts and not any(map(is_obstacle, clause.concepts))


def _lengths(sheet: Sheet, clause: Clause, found: list[Found]) -> list[Found]:
    lengths = [f for f in found if f.dimension == "length" and isinstance(f.read, Quantity) and not f.shared]
    near = [(f, view(sheet.clean, clause, f).near) for f in lengths]
    return [f for f, n in near if not ELSE & (n - {"DRAFT"} if "STICK_OUT" in n else n)]  # one Dutch word for both


def _pair(sheet: Sheet, clause: Clause, inner: list[Found]) -> Slope | None:
    """Return the one pair of lengths of which one is a height, by the word that leads to it or by its own."""
    lengths = _lengths(sheet, clause, sorted([*clause.found, *inner], key=lambda f: f.start))
    if len(lengths) != PAIR:
        return None
    downs = [f for f in lengths if _is_down(sheet, clause, f)]
    if len(downs) != 1:
        downs = [f for f in lengths if _led(sheet.clean, clause, f)]
    if len(downs) != 1:
        return None
    across = next(f for f in lengths if f is not downs[0])
    return _angle(across, downs[0])


def _is_down(sheet: Sheet, clause: Clause, found: Found) -> bool:
    seen = view(sheet.clean, clause, found)
    return bool(DOWN & {*seen.after[:1], *seen.before[:1]}) and not {"FORWARD", "AFT"} & set(seen.after[:1])


def _led(clean: str, clause: Clause, found: Found) -> bool:
    """Say whether "over", "in" or "on" leads to a length: "27 cm over 98 cm", "auf 85 cm faellt er"."""
    words = [w.fold for w in words_of(clean[max(clause.start, found.start - SPAN) : found.start])]
    while words and words[-1] in FILL and words[-1] not in OVER:
        words.pop()
    return bool(words) and words[-1] in OVER


def _angle(across: Found, down: Found) -> Slope | None:
    run, drop = _mm(across), _mm(down)
    start, end = min(across.start, down.start), max(across.end, down.end)
    return (degrees(atan2(run, drop)), start, end) if drop >= SHORTEST else None


def _rate(clean: str, clause: Clause) -> Slope | None:
    """Return a lean by the foot, the metre or the hundred."""
    rates = list(_rates(clean, clause))
    return rates[0] if len(rates) == 1 else None


def _rates(clean: str, clause: Clause) -> Iterator[Slope]:
    for found in clause.found:
        per = _PER.match(clean, found.end, clause.end) if found.dimension == "length" else None
        unit = UNITS.get(per[1].casefold()) if per else None
        if per is not None and unit is not None and unit.dimension == "length":
            yield degrees(atan2(_mm(found), unit.factor)), found.start, per.end()
    for match in _PERCENT.finditer(clean, clause.start, clause.end):
        yield degrees(atan2(float(match[1].replace(",", ".")), 100)), match.start(), match.end()


def _two(sheet: Sheet, clause: Clause, after: Clause | None) -> Slope | None:
    """Return a slope whose height is told in the next sentence: "... further forward. The drop is 98 cm."."""
    if after is None or OTHERS & after.concepts or any(map(is_obstacle, after.concepts)):
        return None
    across, downs = _lengths(sheet, clause, clause.found), _lengths(sheet, after, after.found)
    downs = [f for f in downs if "DROP" in view(sheet.clean, after, f).near]
    return _angle(across[0], downs[0]) if len(across) == len(downs) == 1 else None


def _mm(found: Found) -> float:
    return found.read.value if isinstance(found.read, Quantity) else 0.0
