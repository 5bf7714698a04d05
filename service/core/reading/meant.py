"""How a thing named on the stern is meant: as there, as denied, as a mere place, or as what the gear is wished beside."""

from __future__ import annotations

import re

from service.core.reading.doing import AND
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
_AND_ALL = re.compile(
    r"[ \n](?:and all|y todo|et tout|e tutto|und allem?|en al|och allt|og alt|og det hele)\b", re.IGNORECASE
)
IF = frozenset(_IF.split())
CLOSE = 30
AT = frozenset(_AT.split())
ARTICLES = frozenset(_ARTICLES.split())
FOR = frozenset({"for", "fur", "pour", "para", "per", "voor", "till", "til"})
WITH = frozenset({"with", "mit", "avec", "con", "met", "med"})
OURS = frozenset(
    {"our", "my", "unsere", "meine", "nos", "mes", "nuestros", "onze", "mijn", "i", "nostre", "vara", "vare", "vores"}
)
SPANISH = frozenset({"el", "la", "los", "las", "un", "una"})  # behind "en", which is "and" in Dutch
PAIR = 2
SPANISH = frozenset({"el", "la", "los", "las", "un", "una"})
_BARE_NO = (
    "no kein keine keinen keinerlei geen aucun aucune ningun ninguna nessun nessuna nessuno ingen inget inga intet without ohne "
    "sans sin senza zonder utan uten uden"
)
_THERE = (
    "vorhanden montiert da dran an fitted there any hay tengo tenemos lleva llevo llevamos existe c e ce presenti presente monte "
    "montes aanwezig gemonteerd monterad monterade montert monteret here aboard at on installed angebaut mehr i y"
)
_THEY = (
    "they it these those sie er es die diese dieser ils elles il elle ellos ellas estos estas ze zij die deze het essi esse "
    "questi queste de den dessa dem disse det les los las le li ils"
)
THEY = frozenset(_THEY.split())
BARE_NO, THERE = frozenset(_BARE_NO.split()), frozenset(_THERE.split())


def wished(clean: str, clause: Clause, mark: Mark) -> bool:
    """Say whether it is the gear that is wished there ("rather to starboard"), or what stays is only supposed ("if it stays")."""
    before = [m for m in clause.marks if m.end <= mark.start]
    things = [m.start for m in before if is_obstacle(m.concept)]
    if mark.concept in SIDES:
        return any(m.concept == "PREFER" and not any(at > m.start for at in things) for m in before)
    if mark.concept == "REMOVE" and any(0 <= f.start - mark.end <= 1 for f in clause.found):
        return True  # no going: "it goes 60 cm back from the stern"
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


def gone(clean: str, clause: Clause, mark: Mark, low: int) -> bool:
    """Say whether a thing is told to be gone: "the davits were sold", "we have sold the davits and the arch"."""
    away = [m for m in clause.marks if m.concept == "GONE"]
    if any(m.end <= mark.start for m in away) and _AND_ALL.match(clean, mark.end, clause.end):
        return True  # "took the mizzen off, boom and all"
    behind = next((m for m in away if m.start >= mark.end), None)
    if behind is not None and not _parted(clean, clause, mark.end, behind.start):
        return True
    before = next((m for m in reversed(away) if low <= m.end <= mark.start), None)
    if before is None or any(is_obstacle(m.concept) and low <= m.start < before.start for m in clause.marks):
        return False
    between = clean[before.end : mark.start]
    return len(between) <= CLOSE and not _parted(clean, clause, before.end, mark.start) and not _told(between)


def together(clean: str, clause: Clause, first: Mark, other: Mark) -> bool:
    """Say whether two things are named in one breath: "the davits and the arch"."""
    low, high = (first.end, other.start) if first.end <= other.start else (other.end, first.start)
    things = [m for m in clause.marks if is_obstacle(m.concept) and low <= m.start < high]
    cuts = [low, *(at for m in things for at in (m.start, m.end)), high]
    words = {w.fold for a, b in zip(cuts[::2], cuts[1::2], strict=True) for w in words_of(clean[a:b])}
    if "en" in words and words & SPANISH:
        return False  # "fueraborda en el balcon": not the Dutch "and"
    return not words - AND - ARTICLES - OURS and not set(".;:") & set(clean[low:high])


def _told(between: str) -> bool:
    return bool((WITH | {"to"}) & {w.fold for w in words_of(between)}) or any(c.isdigit() for c in between)


def _parted(clean: str, clause: Clause, low: int, high: int) -> bool:
    """Say whether another thing stands between that is not merely counted up with the first: "the davits, the arch and"."""
    things = [m for m in clause.marks if is_obstacle(m.concept) and low <= m.start < high]
    if not things:
        return False
    rest = [w.fold for w in words_of(clean[low : things[0].start])]
    return bool(set(rest) - AND - ARTICLES - OURS) or _parted(clean, clause, things[0].end, high)


def they_are_gone(clean: str, clause: Clause) -> bool:
    """Say whether a thought without a name says that what was last named is gone: "They were sold last year."."""
    first = words_of(clean[clause.start : clause.start + CLOSE])[:PAIR]
    spoken = bool(THEY & {w.fold for w in first})
    return spoken and {m.concept for m in clause.marks} - {"YEAR", "OURS", "NOT"} == {"GONE"} and not clause.found


def begins(clean: str, low: int, high: int) -> bool:
    """Say whether a denial behind a thing begins another thought: "an arch and no motor"."""
    words = words_of(clean[max(low, high - CLOSE) : high])
    return bool(words) and words[-1].fold in AND


def leads_on(clean: str, clause: Clause, side: Mark, things: tuple[Mark | None, Mark]) -> bool:
    """Say whether a side begins what is told of the thing behind it: "folding davits and, to port, an outboard"."""
    before, after = things
    between = clean[side.end : after.start]
    if before is None or len(between) > CLOSE or set(";:.") & set(between):
        return False
    lead = words_of(clean[before.end : side.start])
    sides = any(m.concept in SIDES and before.end <= m.start < side.start for m in clause.marks)
    rest = {w.fold for w in words_of(between)}
    return bool(lead) and lead[-1].fold in AND and not sides and not rest - ARTICLES - OURS


def verb_between(clean: str, clause: Clause, thing: Mark, denial: Mark) -> bool:
    """Say whether a denial behind the thing denies its moving or going ("does not fold") rather than the thing."""
    return any(
        m.concept in ATTRIBUTES
        and 0 <= m.start - denial.end <= CLOSE
        and not set(",;") & set(clean[denial.end : m.start])
        for m in clause.marks
        if m.start > thing.end
    )


def of_other(clean: str, thing: Mark, denial: Mark, high: int) -> bool:
    """Say whether a denial behind a thing denies what is named behind it, not the thing: "the pushpit has no gate"."""
    said, behind = (
        words_of(clean[denial.start : denial.end]),
        words_of(clean[denial.end : min(high, denial.end + CLOSE)]),
    )
    apart = denial.end - denial.start > len(said[-1].fold) or bool(
        words_of(clean[thing.end : denial.start])
    )  # "has no"
    return apart and bool(behind) and said[-1].fold in BARE_NO and behind[0].fold not in THERE


def is_place(clean: str, thing: Mark, place: Mark) -> bool:
    """Say whether the second of two things only says where the first is: "ladder in the platform"."""
    between = clean[thing.end : place.start]
    words = [w.fold for w in words_of(between)]
    if words[-2:-1] == ["en"] and words[-1] in SPANISH:
        return len(between) <= CLOSE and not set(",;") & set(between)
    named = len(words)
    while words and (words[-1] in ARTICLES or (words[-1] == "an" and len(words) == named)):  # "an outboard", "an der"
        words.pop()
    return bool(words) and words[-1] in AT | FOR and len(between) <= CLOSE and not set(",;") & set(between)
