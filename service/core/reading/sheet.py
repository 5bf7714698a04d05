"""A letter's text -> lines with their zone, and clauses: the stretches within which words and numbers belong together.

Positions are kept throughout: `clean` has the text's length, with quotation signs blanked.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from dataclasses import dataclass, field
from functools import cached_property
from itertools import pairwise

from service.core.reading.and_half import is_cut_short, with_half
from service.core.reading.breath import ONLY_HERE, only_places, preferred, put_right, renamed, summed
from service.core.reading.declared import add_declared
from service.core.reading.doing import done_with
from service.core.reading.hedges import Hedge, stated
from service.core.reading.kin import Kin
from service.core.reading.lexis import Mark, Matcher, fold, words_of
from service.core.reading.lines import Line, Sender, blanked, lines_of
from service.core.reading.signature import signed
from service.core.reading.spoken import Speller, merged
from service.core.reading.unitless import add_unitless, is_preposition
from service.core.reading.wrapping import broken
from service.core.units import Found, scan

_BULLET = re.compile(r"[ \t]{0,20}(?:[-*\u2022\u00b7\u2013]|\(?\d{1,2}[.)])[ \t]{1,20}")
_LABEL = re.compile(r"[ \t]{0,20}(?:[-*\u2022\u00b7\u2013][ \t]{1,20})?[^\W\d_][^:\n.!?]{0,60}:(?:[ \t]|$)")
_DASHED = re.compile(r"[ \t]{0,20}[^\W\d_a-z][^:\n.!?;]{1,40}[ ][-\u2013][ ]")  # "Rudder - on the keel"
_ENDS = re.compile(r"[.!?;][)\"'\u201d\u2019]?\s+(?=[^\W_a-z]|[\"'(\u201c\u2018]|[-*]\s)|;\n(?=\S)")
_LOW_ENDS = re.compile(r"[.!?;][)\"'\u201d\u2019]?\s+(?=\S)")  # of who types without capitals
_WRAPPED = re.compile(r"(?<=[\d/\u00b1-])\n(?=[a-z\u00b0\d])(?<!\d\n(?=\d))")  # "1,08 / m", "+/- / 3 cm"
_NUMBERED = re.compile(r"[ \t]{0,9}\(?(\d{1,2})[.)][ \t]")
_INSIDE = re.compile(r"\(([^()\n]{0,200}(?:\n[^()\n]{0,200})?)\)")
_ABBREVIATED = "ca approx abt no nr st mr mrs dr z.b d.h f.t o.a h.t env inkl incl max min ref tel hr fr dhr stb bb sb bj bwj evtl bzw"
_SHORT = frozenset(_ABBREVIATED.split())
LONGEST = 20_000  # what is older than so many letters of a thread is not read: it bounds the time for any mail
LONGEST_CLAUSE = 1_000
_GOES_ON = re.compile(r"[a-z\u00df-\u00ff]|[A-Z]{3,9}[ ][a-z]")  # "measured from the string / FORWARD to the plate:"
SHORT_LINE = 60
LONG_WORD, LETTERS = 4, 2
TOPICS = 3
COLUMNS = "   "


@dataclass
class Clause:
    """Text [start, end) of one thought.

    `topic`: concepts the thoughts before it spoke of, nearest first.
    `shaped`: a line of a list. `foreign`: quoted from somebody else than the writer.
    `question`: concepts of the foreign question that these words answer.
    """

    start: int
    end: int
    depth: int
    paragraph: int
    marks: list[Mark] = field(default_factory=list)
    found: list[Found] = field(default_factory=list)
    parent: Clause | None = None
    shaped: bool = False
    foreign: bool = False
    topic: tuple[str, ...] = ()
    question: frozenset[str] = frozenset()
    hedges: dict[int, Hedge] = field(default_factory=dict)
    ranges: list[tuple[Found, Found]] = field(default_factory=list)
    apart: bool = False
    """One of several numbers under one heading, with its own label."""

    @property
    def quoted(self) -> bool:
        """Say whether it stands in quoted text."""
        return self.depth > 0

    @cached_property
    def concepts(self) -> frozenset[str]:
        """The concepts its own words mean."""
        return frozenset(mark.concept for mark in self.marks)


@dataclass
class Sheet:
    """A letter laid out for reading."""

    text: str
    clean: str
    lines: list[Line]
    clauses: list[Clause]
    subject_end: int
    starts: list[int] = field(default_factory=list)
    unsure: frozenset[int] = frozenset()
    """Where clauses start in which a word was only guessed."""

    def clause_at(self, place: int) -> Clause | None:
        """Return the sentence (not the parenthesis) at a place."""
        at = bisect_right(self.starts, place) - 1
        found = self.clauses[at] if at >= 0 else None
        return found.parent or found if found is not None else None

    def signature(self) -> list[str]:
        """Return the signature's lines."""
        return [self.clean[line.start : line.end].strip() for line in self.lines if line.zone == "signature"]


@dataclass(frozen=True)
class Tongue:
    """What reads the words of one language."""

    matcher: Matcher
    speller: Speller
    kin: Kin


def lay_out(text: str, subject_length: int, tongue: Tongue, sender: Sender) -> Sheet:
    """Return the sheet of `text`, which begins with the subject; `sender` is name and address."""
    matcher = tongue.matcher
    text = text[:LONGEST]
    lines = lines_of(text, subject_length, sender)
    clean = blanked(text, lines)
    lines = signed(clean, lines, matcher, sender)
    clauses = _clauses(clean, lines, tongue.kin.whole, nouns=matcher.language == "de")
    clean = _rejoined(clean, clauses)
    words = words_of(clean)
    taken, guessed = tongue.kin.taken(clean, words)
    _share(
        clauses,
        matcher.marks(clean, taken),
        merged(
            [f for f in scan(clean) if not is_preposition(clean, f, matcher.language)],
            tongue.speller.found(clean, words),
        ),
    )
    for clause in clauses:
        clause.found = [with_half(clean, f) for f in clause.found if not is_cut_short(clean, f)]
    add_declared(clean, clauses)
    add_unitless(clean, clauses)
    for clause in clauses:
        told = stated(clean, clause.marks, clause.found)
        clause.found, clause.hedges, clause.ranges = told.found, told.hedges, told.ranges
        clause.marks = done_with(clean, clause.marks, clause.found, clause.end)
        told_of = clause.found
        marks = [m for m in clause.marks if not any(f.start <= m.start and m.end <= f.end for f in told_of)]
        marks, found = put_right(clean, only_places(clean, renamed(clean, marks)), clause.found)
        clause.found = preferred(marks, summed(clean, marks, found))
        clause.marks = [m for m in marks if m.concept not in ONLY_HERE]
    _connect(clean, clauses)
    sheet = Sheet(text, clean, lines, clauses, subject_length, [c.start for c in clauses])
    sheet.unsure = frozenset(c.start for w in guessed if (c := sheet.clause_at(w.start)) is not None)
    return sheet


def _clauses(clean: str, lines: list[Line], plain: frozenset[str], *, nouns: bool) -> list[Clause]:
    clauses: list[Clause] = []
    paragraph, start, end, depth = 0, -1, -1, 0
    kind = (False, False)
    alone = broken(clean, lines, nouns=nouns)
    for line in lines:
        raw = clean[line.start : line.end]
        readable = line.zone in ("own", "quoted", "subject") and raw.strip()
        columns = raw[:1].isalpha() and COLUMNS in raw.rstrip()
        runs = (
            start >= 0 and not kind[0] and _GOES_ON.match(raw.strip()) and clean[start:end].rstrip()[-1:] not in ".:;!?"
        )
        label = _LABEL.match(raw) is not None and not runs  # no label where a sentence runs on over the line's end
        dashed = _DASHED.match(raw) is not None and raw.strip()[:1].isupper()  # not a small letter with a diacritic
        shaped = columns or dashed or bool(_BULLET.match(raw)) or label or line.zone == "subject"
        fresh = kind[0] and end - start < SHORT_LINE and raw.strip()[:1].isupper()  # a sentence behind a list
        own = line.start in alone  # a line of its own, though nothing marks it
        shaped, fresh = shaped or own, fresh or own
        if start >= 0 and (not readable or shaped or fresh or line.depth != depth):
            clauses += _sentences(clean, (start, end), (depth, paragraph), kind, plain)
            start = -1
        if not readable or line.depth != depth:
            paragraph += 1
        if readable:
            kind = (shaped, line.foreign) if start < 0 else kind
            start = line.start if start < 0 else start
            end, depth = line.end, line.depth
    if start >= 0:
        clauses += _sentences(clean, (start, end), (depth, paragraph), kind, plain)
    return clauses


def _sentences(
    clean: str, span: tuple[int, int], place: tuple[int, int], kind: tuple[bool, bool], plain: frozenset[str]
) -> list[Clause]:
    """Cut a stretch into thoughts; `place` is depth and paragraph, `plain` holds whole words that are no abbreviation."""
    depth, paragraph = place
    start, end = span
    cuts = [start]
    low = next((c for c in clean[start:end] if c.isalpha()), "A").islower()
    for found in (_LOW_ENDS if low else _ENDS).finditer(clean, start, end):
        before = clean[max(start, found.start() - 12) : found.start()].split()
        word = fold(before[-1]) if before else ""
        initial = len(word) == 1 and word.isalpha() and not (len(before) > 1 and before[-2][-1].isdigit())  # "1,92 m."
        numbered = not clean[cuts[-1] : found.start()].strip(" \t\n(0123456789")  # "2. His boat": a list's number
        behind = clean[found.end() : found.end() + 1]
        unit = behind.islower() and len(before) > 1 and before[-2][-1].isdigit()  # "22 cm. the rudder"
        short = len(word) < LONG_WORD and not (low and word in plain and word not in _SHORT)
        closed = low and word[-1:].isdigit() and len(word) > 1 and clean[found.end() : found.end() + LETTERS].isalpha()
        if closed:  # "62 deep. above it", without capitals
            cuts.append(found.end())
            continue
        if (behind.isdigit() or behind.islower()) and not unit and (short or not word.isalpha()):
            continue  # "ca. 3", "nr. 12": no sentence ends here
        if behind.isdigit() and word.endswith(("nr", "num")):
            continue  # "casconr. 12"
        if not numbered and (clean[found.start()] != "." or not (word in _SHORT or initial)):
            cuts.append(found.end())
    cuts.append(end)
    cuts = [at for a, b in pairwise(cuts) for at in range(a, b, LONGEST_CLAUSE)] + [end]
    made: list[Clause] = []
    for a, b in pairwise(cuts):
        whole = Clause(a, b, depth, paragraph, shaped=kind[0] and a == start, foreign=kind[1])
        made.append(whole)
        made += [
            Clause(m.start(1), m.end(1), depth, paragraph, parent=whole, foreign=kind[1])
            for m in _INSIDE.finditer(clean, a, b)
            if any(c.isdigit() for c in m[1])
        ]
    return made


def _rejoined(clean: str, clauses: list[Clause]) -> str:
    """Return the text with a blank where a line was wrapped between a number and its unit, every place kept."""
    spans = [(c.start, c.end) for c in clauses if c.parent is None]
    parts, at = [], 0
    for start, end in spans:
        parts += [clean[at:start], _WRAPPED.sub(" ", clean[start:end])]
        at = end
    return "".join([*parts, clean[at:]])


def _share(clauses: list[Clause], marks: list[Mark], found: list[Found]) -> None:
    """Give each clause its marks and quantities: those in parentheses to the inner clause."""
    spans = sorted(clauses, key=lambda c: (c.start, -c.end))
    at = 0
    stack: list[Clause] = []
    items: list[Mark | Found] = [*marks, *found]
    for item in sorted(items, key=lambda i: (i.start, i.end)):
        while at < len(spans) and spans[at].start <= item.start:
            stack.append(spans[at])
            at += 1
        while stack and stack[-1].end <= item.start:
            stack.pop()
        if stack:
            if isinstance(item, Mark):
                stack[-1].marks.append(item)
            else:
                stack[-1].found.append(item)


def _asks(clean: str, clause: Clause) -> bool:
    """Say whether it is a quoted question without numbers: whoever quotes it answers it."""
    return clause.quoted and not clause.found and clean[clause.start : clause.end].rstrip().endswith("?")


def _connect(clean: str, clauses: list[Clause]) -> None:
    """Give each clause the topics of those before it in its paragraph, and the quoted question it answers."""
    numbered = {
        m[1]: c.concepts for c in clauses if c.foreign and (m := _NUMBERED.match(clean, c.start, c.end)) is not None
    }
    before: list[Clause] = []
    asked: frozenset[str] = frozenset()
    fresh = False
    for clause in clauses:
        if clause.parent is not None:
            continue
        before = [c for c in before[-TOPICS:] if (c.paragraph, c.depth) == (clause.paragraph, clause.depth)]
        if not clause.shaped:
            clause.topic = tuple(m.concept for c in reversed(before) for m in reversed(c.marks))
        before.append(clause)
        if clause.foreign or _asks(clean, clause):
            asked = (
                (asked if fresh else frozenset()) | clause.concepts
                if "?" in clean[clause.start : clause.end]
                else asked
            )
            fresh = True
        else:
            clause.question, fresh = asked if not clause.quoted else frozenset(), False
            number = _NUMBERED.match(clean, clause.start, clause.end)
            if number is not None and not clause.quoted:
                clause.question = numbered.get(number[1], clause.question)
