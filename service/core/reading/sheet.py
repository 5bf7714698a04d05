"""A letter's text -> lines with their zone, and clauses: the stretches within which words and numbers belong together.

Positions are kept throughout: `clean` has the text's length, with quotation signs blanked.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from dataclasses import dataclass, field
from functools import cached_property
from itertools import pairwise

from service.core.reading.breath import ONLY_HERE, only_places, put_right, summed
from service.core.reading.hedges import Hedge, stated
from service.core.reading.lexis import Mark, Matcher, Word, fold, words_of
from service.core.reading.lines import Line, Sender, blanked, lines_of
from service.core.reading.spoken import Speller, merged
from service.core.units import Found, scan

_BULLET = re.compile(r"[ \t]{0,20}(?:[-*\u2022\u00b7\u2013]|\(?\d{1,2}[.)])[ \t]{1,20}")
_LABEL = re.compile(r"[ \t]{0,20}(?:[-*\u2022\u00b7\u2013][ \t]{1,20})?[^\W\d_][^:\n.!?]{0,60}:(?:[ \t]|$)")
_ENDS = re.compile(r"[.!?;][)\"'\u201d\u2019]?\s+(?=[^\W_a-z]|[\"'(\u201c\u2018]|[-*]\s)")
_MEASURE_ENDS = re.compile(
    r"\d[\d.,/\u00bd\u00bc\u00be]{0,6}[ ]?(?:[a-z]{1,9}|[\u00b0'\"\u2032\u2033]{1,2})?\)?$", re.IGNORECASE
)
_NUMBERED = re.compile(r"[ \t]{0,9}\(?(\d{1,2})[.)][ \t]")
_INSIDE = re.compile(r"\(([^()\n]{0,200}(?:\n[^()\n]{0,200})?)\)")
_ABBREVIATED = "ca approx abt no nr st mr mrs dr z.b d.h f.t o.a h.t env inkl incl max min ref tel hr fr dhr"
_SHORT = frozenset(_ABBREVIATED.split())
LONGEST = 20_000  # what is older than so many letters of a thread is not read: it bounds the time for any mail
LONGEST_CLAUSE = 1_000
SHORT_LINE = 60
LONG_WORD = 4
TOPICS = 3
NARROW = 66
SPARE = 6
LISTED = 3
RUNS_ON = frozenset(",;-&(/")
SIGN_OFF_WORDS = 5
SIGNATURE_LINES = 10


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

    def clause_at(self, place: int) -> Clause | None:
        """Return the sentence (not the parenthesis) at a place."""
        at = bisect_right(self.starts, place) - 1
        found = self.clauses[at] if at >= 0 else None
        return found.parent or found if found is not None else None

    def signature(self) -> list[str]:
        """Return the signature's lines."""
        return [self.clean[line.start : line.end].strip() for line in self.lines if line.zone == "signature"]


def lay_out(text: str, subject_length: int, matcher: Matcher, speller: Speller, sender: Sender) -> Sheet:
    """Return the sheet of `text`, which begins with the subject; `sender` is name and address."""
    text = text[:LONGEST]
    lines = lines_of(text, subject_length, sender)
    clean = blanked(text, lines)
    lines = _signed(clean, lines, matcher, sender)
    clauses = _clauses(clean, lines)
    words = words_of(clean)
    _share(clauses, matcher.marks(clean, words), merged(scan(clean), speller.found(clean, words)))
    for clause in clauses:
        told = stated(clean, clause.marks, clause.found)
        clause.found, clause.hedges, clause.ranges = told.found, told.hedges, told.ranges
        taken = clause.found
        marks = [m for m in clause.marks if not any(f.start <= m.start and m.end <= f.end for f in taken)]
        marks, found = put_right(clean, only_places(clean, marks), clause.found)
        clause.found = summed(clean, marks, found)
        clause.marks = [m for m in marks if m.concept not in ONLY_HERE]
    _connect(clean, clauses)
    return Sheet(text, clean, lines, clauses, subject_length, [c.start for c in clauses])


def _signed(clean: str, lines: list[Line], matcher: Matcher, sender: Sender) -> list[Line]:
    """Mark the signature: from a sign-off, "--" or the sender's own name to the end of the writer's own words."""
    own = [i for i, line in enumerate(lines) if line.zone == "own" and clean[line.start : line.end].strip()]
    name = frozenset(w.fold for w in words_of(sender[0] or "") if len(w.fold) > 1)
    first = None
    for rank, i in enumerate(own):
        raw = clean[lines[i].start : lines[i].end].strip()
        left = len(own) - rank
        words = words_of(raw)
        if raw in ("--", "-- ", "—") or (left <= SIGNATURE_LINES and _signs_off(raw, words, matcher)):
            first = i
            break
        if left <= SIGNATURE_LINES and 0 < len(words) <= 4 and name and _is_name(raw, name):  # noqa: PLR2004 - a name
            first = i
            break
    if first is None:
        return lines
    return [
        Line(ln.start, ln.end, ln.depth, "signature") if i >= first and ln.zone == "own" else ln
        for i, ln in enumerate(lines)
    ]


def _signs_off(raw: str, words: list[Word], matcher: Matcher) -> bool:
    if not 0 < len(words) <= SIGN_OFF_WORDS:
        return False
    found = matcher.marks(raw, words_of(raw))
    return bool(found) and found[0].concept == "SIGN_OFF" and not raw[: found[0].start].strip()


def _is_name(raw: str, name: frozenset[str]) -> bool:
    words = [fold(w.fold) for w in words_of(raw)]
    return words[0] in name and all(w in name or len(w) == 1 for w in words)


def _clauses(clean: str, lines: list[Line]) -> list[Clause]:
    clauses: list[Clause] = []
    paragraph, start, end, depth = 0, -1, -1, 0
    kind = (False, False)
    broken = _broken(clean, lines)
    for line in lines:
        raw = clean[line.start : line.end]
        readable = line.zone in ("own", "quoted", "subject") and raw.strip()
        shaped = bool(_BULLET.match(raw) or _LABEL.match(raw)) or line.zone == "subject"
        fresh = kind[0] and end - start < SHORT_LINE and raw.strip()[:1].isupper()  # a sentence behind a list
        own = line.start in broken  # a line of its own, though nothing marks it
        shaped, fresh = shaped or own, fresh or own
        if start >= 0 and (not readable or shaped or fresh or line.depth != depth):
            clauses += _sentences(clean, (start, end), depth, paragraph, kind)
            start = -1
        if not readable or line.depth != depth:
            paragraph += 1
        if readable:
            kind = (shaped, line.foreign) if start < 0 else kind
            start = line.start if start < 0 else start
            end, depth = line.end, line.depth
    if start >= 0:
        clauses += _sentences(clean, (start, end), depth, paragraph, kind)
    return clauses


def _broken(clean: str, lines: list[Line]) -> frozenset[int]:
    """Return where lines start that stand by themselves: the one before ends with a measure though there was room."""
    found: set[int] = set()
    paragraph: list[Line] = []
    for line in [*lines, None]:
        if line is not None and line.zone in ("own", "quoted") and clean[line.start : line.end].strip():
            paragraph.append(line)
            continue
        texts = [clean[ln.start : ln.end].strip() for ln in paragraph]
        width = max(map(len, texts), default=0)
        for above, below, ln in zip(texts, texts[1:], paragraph[1:], strict=False):
            room = max(width, NARROW if below[:1].isupper() else 0) - len(above) - len(below.split()[0])
            listed = below[:1].isupper() and above[-1:] not in RUNS_ON
            if room > SPARE and (_MEASURE_ENDS.search(above) or listed) and len(texts) >= LISTED:
                found |= {ln.start, *([paragraph[0].start] if below is texts[1] else [])}
        paragraph = []
    return frozenset(found)


def _sentences(clean: str, span: tuple[int, int], depth: int, paragraph: int, kind: tuple[bool, bool]) -> list[Clause]:
    start, end = span
    cuts = [start]
    for found in _ENDS.finditer(clean, start, end):
        before = clean[max(start, found.start() - 12) : found.start()].split()
        word = fold(before[-1]) if before else ""
        initial = len(word) == 1 and word.isalpha() and not (len(before) > 1 and before[-2][-1].isdigit())  # "1,92 m."
        numbered = not clean[cuts[-1] : found.start()].strip(" \t\n(0123456789")  # "2. His boat": a list's number
        digit = clean[found.end() : found.end() + 1].isdigit()
        if digit and (len(word) < LONG_WORD or not word.isalpha()):
            continue  # "ca. 3", "nr. 12": no sentence ends here
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
        if clause.foreign:
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
