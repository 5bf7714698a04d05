"""How a thing named on the stern is meant: as there, as denied, as a mere place, or as what the gear is wished beside."""

from __future__ import annotations

from service.core.reading.lexis import Mark, words_of
from service.core.reading.sheet import Clause
from service.core.reading.view import is_obstacle

_IF = "if wenn falls si indien hvis"
_AT = "on in at under am im an auf unter sur dans sous sobre bajo op aan onder pa i su sul sulla nel nella al del"
_ARTICLES = "the a der dem den einem einer le la les un une el los de het een il lo l una en ett et ei"
MOVES = {"FOLD": "folds", "FIXED": "fixed", "SWING": "swings", "SLIDE": "slides"}
GOING = {"KEEP": "keep", "REMOVE": "removable"}
SIDES = {"PORT": "port", "STARBOARD": "starboard", "CENTRE": "centre"}
ATTRIBUTES = frozenset({*MOVES, *SIDES, "REMOVE", "KEEP", "EACH_SIDE"})
AND = frozenset(
    [
        "and",
        "but",
        "und",
        "aber",
        "sowie",
        "et",
        "mais",
        "y",
        "pero",
        "e",
        "ma",
        "en",
        "maar",
        "och",
        "men",
        "og",
        "plus",
    ]
)
IF = frozenset(_IF.split())
CLOSE = 30
AT = frozenset(_AT.split())
ARTICLES = frozenset(_ARTICLES.split())
WITH = frozenset({"with", "mit", "avec", "con", "met", "med"})
PAIR = 2


def wished(clean: str, clause: Clause, mark: Mark) -> bool:
    """Say whether it is the gear that is wished there ("rather to starboard"), or what stays is only supposed ("if it stays")."""
    before = [m for m in clause.marks if m.end <= mark.start]
    things = [m.start for m in before if is_obstacle(m.concept)]
    if mark.concept in SIDES:
        return any(m.concept == "PREFER" and not any(at > m.start for at in things) for m in before)
    if mark.concept not in GOING or not things:
        return False
    words = words_of(clean[max(clause.start, things[-1] - CLOSE) : things[-1]])
    return bool(IF & {w.fold for w in words[-PAIR:]})


def none_of(clean: str, clause: Clause) -> bool:
    """Say whether a clause is a list of things and a denial of them all: "Boomkin, davits, arch - none of those"."""
    marks = [m for m in clause.marks if m.concept != "FAX"]
    things = [m for m in marks if is_obstacle(m.concept)]
    denials = [m for m in marks if m.concept == "NOT"]
    if len(things) < PAIR or len(denials) != 1 or set(marks) != {*things, *denials}:
        return False
    before = clean[things[-1].end : denials[0].start]
    return denials[0].start >= things[-1].end and before.strip() in (":", "-", "\u2013")


def begins(clean: str, low: int, high: int) -> bool:
    """Say whether a denial behind a thing begins another thought: "an arch and no motor"."""
    words = words_of(clean[max(low, high - CLOSE) : high])
    return bool(words) and words[-1].fold in AND


def verb_between(clause: Clause, thing: Mark, denial: Mark) -> bool:
    """Say whether a denial behind the thing denies its moving or going ("does not fold") rather than the thing."""
    return any(
        m.concept in ATTRIBUTES and 0 <= m.start - denial.end <= CLOSE for m in clause.marks if m.start > thing.end
    )


def is_place(clean: str, thing: Mark, place: Mark) -> bool:
    """Say whether the second of two things only says where the first is: "ladder in the platform"."""
    between = clean[thing.end : place.start]
    words = [w.fold for w in words_of(between)]
    named = len(words)
    while words and (words[-1] in ARTICLES or (words[-1] == "an" and len(words) == named)):  # "an outboard", "an der"
        words.pop()
    return bool(words) and words[-1] in AT and len(between) <= CLOSE and not set(",;") & set(between)
