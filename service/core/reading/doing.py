"""What is done with a thing: taken off, gone, kept; from a verb, its particle, and the words that deny or put it off.

A verb alone says little: "we took it off" is gone, "we can take it off" may go, "we will not take it off" stays. So verbs are
marked by what they mean in themselves, and read here with the auxiliaries around them into GONE, REMOVE and KEEP.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from service.core.reading.lexis import Mark, words_of
from service.core.units import Found

HELPERS = frozenset({"OFF", "OFFED", "SHIFTED", "STAY", "V_TAKE", "V_TOOK", "P_OFF", "MAY", "EASILY", "LOATH"})
_PRONOUNS = (
    "it them that those these this sie es ihn die das den ze het hem dat deze dem det de disse dessa denne denna"
)
_AND = "and but und aber sowie et mais y pero e ma en maar och men og plus"
_FREE = "away ashore weg eraf eruit bort undan vekk vaek unna runter herunter los loss"
_MODALS = "kan kunnen mag mogen kann können könnte könnten darf dürfen dürfte muss müssen moet moeten får må kunne"
MODALS = frozenset(_MODALS.split())
_LEADING = "the a an my our his her of from to at der die das dem den vom von het de een van den det et en"
LEADING = frozenset(_LEADING.split())
AND = frozenset(_AND.split())
PRONOUNS, FREE = frozenset(_PRONOUNS.split()), frozenset(_FREE.split())
OPPOSITE = {"KEEP": "REMOVE", "REMOVE": "KEEP"}
ABOUT = frozenset({"GEAR", "WATER", "RUDDER", "TRANSOM", "BOAT", "STEP", "BALLAST", "TOP", "BOTTOM"})
_STOPS = re.compile(r"[.,;:!?()]|\s[-\u2013]\s")
_CLOSES = re.compile(
    r"\s{0,3}(?:[.,;:!?)]|-\s|\u2013|$|(?:and|und|en|och|og|or|oder|of|eller|if|wenn|falls|als|om|hvis|again|wieder|"
    r"this|next|soon|anyway|before|shortly|later|diesen|demn\u00e4chst|n\u00e4chsten|deze|dit|volgende|denne|neste|n\u00e6ste|"
    r"(?:i|til|over|f\u00f8r|f\u00f6re|innan|inden|in the)[ ](?:vinter|vinteren|h\u00f6st|h\u00f8st|vinters|spring|autumn|winter|"
    r"for\u00e5ret|v\u00e5r))\b)"
)
_WAS = re.compile("wurden?", re.IGNORECASE)  # German: not w\u00fcrde
_PRESENT = re.compile("\u00e8[^aeiou]{1,2}e(?:nt)?$")  # French: enl\u00e8ve, not enlev\u00e9
REACH, VERB, FAR, BEHIND, NEXT = 60, 45, 30, 14, 20


def done_with(clean: str, marks: Sequence[Mark], found: Sequence[Found], end: int) -> list[Mark]:
    """Return the marks of a clause that ends at `end`, its verbs read as GONE, REMOVE or KEEP, its helpers gone."""
    if not any(m.concept in HELPERS or m.concept in OPPOSITE for m in marks):
        return list(marks)
    verbs = [*_joined(clean, marks, found, end), *((m, m) for m in marks if m.concept in ("OFF", "OFFED", "SHIFTED"))]
    dropped: set[Mark] = set()
    made: list[Mark] = []
    for verb, at in verbs:
        meant = _meant(clean, marks, verb, at, dropped)
        if meant is not None:
            made.append(Mark(meant, at.start, at.end))
    for mark in marks:
        if mark.concept == "STAY" and _stays(clean, marks, mark):
            made.append(_unless(clean, marks, Mark("KEEP", mark.start, mark.end), dropped))
        elif mark.concept in OPPOSITE:
            made.append(_unless(clean, marks, mark, dropped))
    kept = [m for m in marks if m.concept not in HELPERS and m.concept not in OPPOSITE and m not in dropped]
    return sorted([*kept, *made], key=lambda m: (m.start, m.end))


def _joined(clean: str, marks: Sequence[Mark], found: Sequence[Found], end: int) -> list[tuple[Mark, Mark]]:
    """Return verbs with the particle that goes with each: "take the ladder off", "bauen wir vorher ab"."""
    pairs: list[tuple[Mark, Mark]] = []
    verb: Mark | None = None
    for mark in marks:
        if mark.concept in ("V_TAKE", "V_TOOK") or (mark.concept == "MAY" and verb is None and _modal(clean, mark)):
            verb = mark
        elif mark.concept == "P_OFF" and verb is not None and mark.start >= verb.end:
            between = clean[verb.end : mark.start]
            counted = any(verb.end <= f.start < mark.start for f in found)
            if (
                len(between) <= VERB
                and not _STOPS.search(between)
                and not counted
                and _off(clean, marks, verb, mark, end)
            ):
                pairs.append((Mark("OFFED" if verb.concept == "V_TOOK" else "OFF", verb.start, verb.end), mark))
            verb = None
    return pairs


def _modal(clean: str, mark: Mark) -> bool:
    """Say whether a helper alone goes with a particle, as in "kan er gewoon af", "darf runter"."""
    return clean[mark.start : mark.end].casefold() in MODALS


def _off(clean: str, marks: Sequence[Mark], verb: Mark, particle: Mark, end: int) -> bool:
    """Say whether a particle is the verb's own, and no preposition: not "taken off the drawing"."""
    words = [w.fold for w in words_of(clean[verb.end : particle.end])]
    inside = any(_thing(m) and verb.end <= m.start < particle.start for m in marks)
    behind = next((m for m in marks if m.start >= particle.end), None)
    led = behind is not None and _thing(behind) and behind.start - particle.end <= NEXT
    closed = _CLOSES.match(clean, particle.end, end) is not None
    near = words_of(clean[particle.end : particle.end + NEXT])[:1]
    beside = len(words) == 1 and bool(near) and near[0].fold not in LEADING  # "possible to take out with four screws"
    return inside or led or closed or beside or bool(PRONOUNS & set(words[:-1])) or words[-1] in FREE


def _meant(clean: str, marks: Sequence[Mark], verb: Mark, at: Mark, dropped: set[Mark]) -> str | None:
    past = verb.concept == "OFFED" and _PRESENT.search(clean, verb.start, verb.end) is None
    may = any(
        m.concept == "MAY" and _with(clean, m, verb, at) and not _WAS.fullmatch(clean, m.start, m.end) for m in marks
    )
    denial = _denial(clean, marks, verb, at)
    if verb.concept == "SHIFTED" and not may:
        return None
    if denial is not None:
        dropped.add(denial)
        return None if past and not may else "KEEP"
    return "GONE" if past and not may else "REMOVE"


def _with(clean: str, helper: Mark, verb: Mark, at: Mark) -> bool:
    """Say whether a helping verb goes with the verb: near it, nothing else begun in between."""
    low, high = (helper.end, verb.start) if helper.end <= verb.start else (at.end, helper.start)
    between = clean[low:high]
    return 0 <= high - low <= REACH and not _STOPS.search(between) and not AND & {w.fold for w in words_of(between)}


def _denial(clean: str, marks: Sequence[Mark], verb: Mark, at: Mark) -> Mark | None:
    """Return what denies the verb: close before it, within it, or close behind: "bauen wir nicht ab", "demonteras inte"."""
    for mark in marks:
        if mark.concept not in ("NOT", "AVOID", "LOATH"):
            continue
        if mark.end <= verb.start:
            near = verb.start - mark.end <= FAR and _clear(clean, marks, mark.end, verb.start)
        elif mark.start >= at.end:
            near = mark.start - at.end <= BEHIND and _clear(clean, marks, at.end, mark.start)
            near = near and not any(_thing(m) and 0 <= m.start - mark.end <= BEHIND for m in marks)
        else:
            near = mark.start >= verb.end
        if near:
            return mark
    return None


def _clear(clean: str, marks: Sequence[Mark], low: int, high: int) -> bool:
    between = clean[low:high]
    things = any(_thing(m) and low <= m.start < high for m in marks)
    return not things and not _STOPS.search(between) and not AND & {w.fold for w in words_of(between)}


def _thing(mark: Mark) -> bool:
    return mark.concept.startswith("O_")


def _stays(clean: str, marks: Sequence[Mark], mark: Mark) -> bool:
    """Say whether a bare "stay" is said of a thing: one named before it, or by a helping verb where nothing else is."""
    if any(_thing(m) and m.end <= mark.start for m in marks):
        return True
    told = any(m.concept == "MAY" and _with(clean, m, mark, mark) for m in marks)
    return told and not any(m.concept in ABOUT for m in marks)


def _unless(clean: str, marks: Sequence[Mark], mark: Mark, dropped: set[Mark]) -> Mark:
    """Return the mark, or its opposite where it is denied: "need not stay", "non si può togliere"."""
    denial = _denial(clean, marks, mark, mark)
    if denial is None:
        return mark
    dropped.add(denial)
    return Mark(OPPOSITE[mark.concept], mark.start, mark.end)
