"""What stands around a quantity: the concepts near it, further off in its clause, and the thing spoken of."""

from __future__ import annotations

import re
from dataclasses import dataclass

from service.core.reading.lexis import Mark, words_of
from service.core.reading.sheet import Clause
from service.core.units import Found

THINGS = frozenset(
    {"TRANSOM", "POST", "RUDDER", "STEP", "TOERAIL", "BOOTSTRIPE", "COCKPIT", "KEEL", "BALLAST", "BOAT", "HULL"}
)
JOINTS = (", ", "; ", " and ", " und ", " et ", " y ", " e ", " ed ", " och ", " og ")
_EN = re.compile(
    r" en (?!est |sont |avant|arri|haut|bas |el |la |los |las |un |una |su |lo |proa|popa|vertical|altura|total|tout|dessous|dessus|"
    r"retrait|acier|bois|polyester|charge|ordre|plus|long|larg|fait|sandwich|aval|amont|saillie|dehors|a |ont |d\u00e9passe|reste)"
)
UP_TO = (" to", " bis", " bis auf", " tot", " jusqu'à", " jusqu'a", " hasta", " fino a", " till", " til")
_ABOVE = "above over off uber uberm oberhalb boven sobre sopra ovanfor ovenfor daruber erboven derover daruver encima"
ABOVE = frozenset(_ABOVE.split())
NEAR, BEHIND, PAIR = 25, 14, 2


def denied(clause: Clause, at: int, near: int = NEAR) -> bool:
    """Say whether a denial stands shortly before position `at`, with nothing else between."""
    before = [m for m in clause.marks if m.end <= at and m.concept != "YEAR"]
    return bool(before) and before[-1].concept == "NOT" and at - before[-1].end <= near


def is_obstacle(concept: str) -> bool:
    """Say whether the concept is a thing that stands in the way."""
    return concept.startswith("O_")


def is_thing(concept: str) -> bool:
    """Say whether the concept is something that has measures of its own."""
    return concept in THINGS or is_obstacle(concept)


@dataclass(frozen=True)
class View:
    """Concepts around a quantity: `before` and `after` nearest first, `left` all of the clause before it."""

    before: tuple[str, ...]
    after: tuple[str, ...]
    left: frozenset[str]
    whole: frozenset[str]
    topic: tuple[str, ...]
    question: frozenset[str]
    subject: str | None = None
    """The thing the clause began with."""
    later: tuple[str, ...] = ()
    """What comes behind the surroundings, to the clause's end."""
    alone: bool = True
    """Whether it is the only length of its clause."""
    above: bool = False
    """Whether a word for above stands right behind the quantity."""

    @property
    def way(self) -> float:
        """Return -1 for what lies below something, +1 else."""
        return -1.0 if "BELOW" in self.near and not self.above else 1.0

    @property
    def on_rail(self) -> bool:
        """Say whether it is counted from the toe rail: that is named with it, or is what was last spoken of."""
        last = next((c for c in self.topic if is_thing(c)), None)
        return "TOERAIL" in self.before or (last == "TOERAIL" and not {"TRANSOM", "POST"} & set(self.before))

    @property
    def near(self) -> frozenset[str]:
        """The concepts between the neighbouring quantities or commas."""
        return frozenset(self.before) | frozenset(self.after)

    @property
    def own_after(self) -> tuple[str, ...]:
        """What stands behind up to where it is told what it is: not the next measure of "3.35 wide and draws"."""
        told = next((i for i, c in enumerate(self.after) if c in ("WIDTH", "LENGTH", "HEIGHT")), len(self.after))
        return self.after[: told + 1]

    @property
    def thing(self) -> str | None:
        """The thing the quantity is most likely a measure of."""
        for concept in (*self.before, *self.after, *self.topic):
            if concept in ("HUNG_OUT", "HUNG_IN"):
                return "RUDDER"
            if is_thing(concept) and concept not in ("BOAT", "HULL"):
                return concept
        return None


def view(clean: str, clause: Clause, found: Found) -> View:
    """Return the surroundings of `found` in its clause."""
    others = [f for f in clause.found if not (f.start < found.end and found.start < f.end)]
    low = max([f.end for f in others if f.end <= found.start], default=clause.start)
    if low > clause.start:
        ahead = clean[low : found.start].replace("\n", " ")  # a line may end before the joint
        cut = _joint(ahead)
        ranged = cut < 0 and ahead.rstrip().endswith(UP_TO)  # "from 8 cm at its foot to 1.04 m at the top"
        low = found.start if ranged else low + max(0, cut)
    high = min([f.start for f in others if f.start >= found.end], default=clause.end)
    if high < clause.end:
        cut = _joint(clean[found.end : high].replace("\n", " "))
        high = found.end + cut if cut >= 0 else high
    behind = clean[found.end : high].replace("\n", " ")
    stops = [behind.find(mark) for mark in (", ", "; ", " - ", " \u2013 ")]
    high = min([found.end + s for s in stops if s >= 0], default=high)
    marks = [m for m in clause.marks if m.concept != "YEAR"]
    before = tuple(m.concept for m in reversed(marks) if low <= m.start and m.end <= found.start)
    after = tuple(m.concept for m in marks if found.end <= m.start and m.end <= high)
    left = [m.concept for m in reversed(marks) if m.end <= found.start]
    whole = clause.concepts
    topic = clause.topic
    if clause.parent is not None:
        parent = [m for m in clause.parent.marks if m.end <= clause.start]
        topic = (*(m.concept for m in reversed(parent)), *topic)
    topic = (*left, *topic)
    subject = next((c for c in reversed(left) if is_thing(c)), None)
    later = tuple(m.concept for m in marks if m.start >= high)
    return View(
        before,
        after,
        frozenset(left),
        whole,
        topic,
        clause.question,
        subject,
        later,
        sum(f.dimension == "length" for f in clause.found) < PAIR,
        _is_above(clean, found.end),
    )


def _is_above(clean: str, at: int) -> bool:
    words = words_of(clean[at : at + BEHIND])[:1]
    return bool(words) and words[0].fold in ABOVE


def _joint(text: str) -> int:
    """Return where the last joint in a text stands, -1 for none; the Dutch "en" where it is no French or Spanish one."""
    dutch = max((m.start() for m in _EN.finditer(text)), default=-1)
    return max(dutch, *(text.rfind(joint) for joint in JOINTS))


def segment(clean: str, clause: Clause, mark: Mark) -> tuple[int, int]:
    """Return the stretch between commas, colons and semicolons around a mark, within its clause."""
    low = max([clean.rfind(sep, clause.start, mark.start) + 1 for sep in (",", ";", ":")] + [clause.start])
    ends = [clean.find(sep, mark.end, clause.end) for sep in (",", ";", ":")]
    return low, min([e for e in ends if e >= 0], default=clause.end)
