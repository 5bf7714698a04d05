"""What belongs together in one breath: a number put right as it is said, a sum, and a thing named only as a place."""

from __future__ import annotations

import re
from itertools import pairwise

from service.core.reading.lexis import Mark
from service.core.units import Found, Quantity

PAUSES = frozenset(",;:.-\u2013\u2014(\u2026!?")
OR = frozenset({"or", "oder", "ou", "o", "of", "eller", "och", "e", "y"})
PUTS_RIGHT = frozenset({"OOPS", "NOT", "MEANT", "WITHDRAW", "INSTEAD", "PREFER", "MEASURED"})
ONLY_HERE = frozenset({"OOPS", "BESIDE"})
SKIN = frozenset({"THICK", "HULL", "GRP", "SOLID", "CORED"})
OTHER_EDGES = frozenset({"BOOTSTRIPE", "TOERAIL", "STEP", "KEEL"})
_BARE = re.compile(r"\d[\d.,]{0,6}[ ]?[,;\u2013-]?\s{0,2}(?:[a-z]{1,5}\s)?$")
_PLUS = re.compile(r"\s{0,2}(?:[^\W\d]{2,14}\s{1,2}){0,2}\+\s{0,2}")
_IS = re.compile(r"[ ]?[:,=\u2013-]?[ ]{0,9}(?:(?:is|ist|est|es|\u00e8|is|\u00e4r|er)[ ])?")
OUTBOARD = frozenset({"outboard", "fuoribordo", "fueraborda", "fuera borda", "hors bord", "buitenboord"})
NEAR = 45
BEFORE = 12
ARTICLE, TWO = 5, 2


def renamed(clean: str, marks: list[Mark]) -> list[Mark]:
    """Return marks with what they mean here: "rudder: outboard" is how it hangs, a moulded-in platform is the step."""
    concepts = {m.concept for m in marks}
    moulded = "SCOOP" in concepts and not concepts & {"FOLD", "FIXED", "REMOVE"}
    out: list[Mark] = []
    steered = any(m.concept == "RUDDER" for m in marks) and not concepts & {
        "O_RAIL",
        "REMOVE",
        "KEEP",
        "PORT",
        "STARBOARD",
    }
    stepped = not concepts & {"STEP", "O_PLATFORM"} and {"WATER", "DEPTH"} & concepts  # "scoop, 28 cm off the water"
    for mark in marks:
        if mark.concept == "SCOOP" and stepped:
            out.append(Mark("STEP", mark.start, mark.end))
        hangs = mark.concept == "O_OUTBOARD" and clean[mark.start : mark.end].casefold().replace("-", " ") in OUTBOARD
        hangs_so = steered and mark.concept == "O_OUTBOARD" and clean[mark.start : mark.end].casefold() == "outboard"
        if hangs_so and any(m.concept == "RUDDER" and m.end <= mark.start for m in marks):
            out.append(Mark("HUNG_OUT", mark.start, mark.end))  # "the rudder is a big outboard job"
            continue
        hung = any(m.concept == "HUNG_OUT" and clean[mark.end : m.start].strip() == "," for m in marks)
        if hangs and (hung or any(m.concept == "RUDDER" and _IS.fullmatch(clean, m.end, mark.start) for m in marks)):
            out.append(Mark("HUNG_OUT", mark.start, mark.end))
        elif mark.concept == "O_PLATFORM" and moulded:
            out.append(Mark("STEP", mark.start, mark.end))
        else:
            out.append(mark)
    return out


def put_right(clean: str, marks: list[Mark], found: list[Found]) -> tuple[list[Mark], list[Found]]:
    """Return marks and quantities without what is taken back at once: "1.24 m, no, 1.42 m above the water"."""
    dropped: set[int] = set()
    spans: list[tuple[int, int]] = []
    for mark in (m for m in marks if m.concept == "OOPS"):
        new = next((f for f in found if f.start >= mark.end), None)
        if new is None or not _paused(clean, mark) or not _leads_to(clean, marks, mark, new):
            continue
        old = next((f for f in reversed(found) if f.end <= mark.start and f.dimension == new.dimension), None)
        if old is not None and mark.start - old.end <= NEAR:
            dropped.add(old.start)
            spans.append((old.end, new.start))
        elif _BARE.search(clean, max(0, mark.start - BEFORE), mark.start):
            spans.append((mark.start, new.start))
    kept = [m for m in marks if not (m.concept in PUTS_RIGHT and any(a <= m.start < b for a, b in spans))]
    return kept, [f for f in found if f.start not in dropped]


def preferred(marks: list[Mark], found: list[Found]) -> list[Found]:
    """Return quantities without what the writer puts behind the one to use: "1.26 m on paper, 1.21 m taped, take that"."""
    take = next((m for m in marks if m.concept == "TAKE_THIS"), None)
    before = [f for f in found if take is not None and f.end <= take.start]
    if len(before) < TWO or before[-1].dimension != before[-2].dimension:
        return found
    return [f for f in found if f is not before[-2]]


def _paused(clean: str, mark: Mark) -> bool:
    before = clean[max(0, mark.start - BEFORE) : mark.start].split()
    return bool(before) and (before[-1][-1] in PAUSES or before[-1].casefold() in OR)


def _leads_to(clean: str, marks: list[Mark], mark: Mark, new: Found) -> bool:
    """Say whether nothing else is spoken of up to the new number; behind a bare "no" it follows at once."""
    between = clean[mark.end : new.start]
    others = [m for m in marks if mark.end <= m.start < new.start]
    if len(between) > NEAR:
        return False
    if between.rstrip().endswith(":"):
        return True  # "no, that was the rail: 1.14 m"
    if any(m.concept not in PUTS_RIGHT for m in others):
        return False
    bare = any(m.concept == "NOT" and m.start == mark.start for m in marks)
    rest = between.lstrip()
    return not bare or not rest or rest[0] in PAUSES or any(not clean[mark.end : m.start].strip() for m in others)


def only_places(clean: str, marks: list[Mark]) -> list[Mark]:
    """Return the marks without things that only say where the skin was measured: "9 mm next to the exhaust"."""
    if not SKIN & {m.concept for m in marks}:
        return marks
    places = [m for m in marks if m.concept == "BESIDE"]
    return [
        m
        for m in marks
        if not (
            m.concept.startswith("O_")
            and any(b.end <= m.start and len(clean[b.end : m.start].strip()) <= ARTICLE for b in places)
        )
    ]


def summed(clean: str, marks: list[Mark], found: list[Found]) -> list[Found]:
    """Return the quantities, lengths joined by "+" as one: "8 mm + 20 mm foam + 8 mm"; not where they name other edges."""
    if OTHER_EDGES & {m.concept for m in marks}:
        return found
    kept = found[:1]
    for old, new in pairwise(found):
        first = kept[-1]
        both = isinstance(first.read, Quantity) and isinstance(new.read, Quantity)
        joined = old.dimension == new.dimension == "length" and _PLUS.fullmatch(clean, old.end, new.start)
        if not (both and joined and isinstance(first.read, Quantity) and isinstance(new.read, Quantity)):
            kept.append(new)
            continue
        text = clean[first.start : new.end]
        value = round(first.read.value + new.read.value, 6)
        kept[-1] = Found(first.start, new.end, Quantity(value, "length", new.read.unit, text), "length")
    return kept
