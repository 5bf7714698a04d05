"""Which boat: names of known hull models in the text, else a capitalised name with a number where boats are named."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from service.core.reading.lexis import fold
from service.core.reading.sheet import Clause, Sheet
from service.core.units import Found

_TOKEN = re.compile(r"\d+(?:[.,]\d+)*|[^\W\d_]+")
_GENERATION = re.compile(r"[ \t]{1,4}(?:(?:Mk|MK|mk|Mark)[ .-]?(?:\d|I{1,3}V?|IV)\b|(?:II|III|IV)\b)")
_LOW_SUFFIX = re.compile(r"[ ](?:cc|ds|ms|mk[ ]?(?:i{1,3}|\d))\b")  # of who types small
_SUFFIX = re.compile(r"[ \t-]{1,4}(?!I\b|A\b|LOA\b|LWL\b|GRP\b|US\b|UK\b|OK\b|PS\b)([A-Z]{1,3})\b(?![.'\u2019]?[a-z])")
_WORDED = re.compile(
    r"[ \t-]{1,4}(?:Sport|Pilothouse|Classic|Cruiser|Regatta|Racing|Performance|Deluxe|Decksalon|Spissgatter)\b"
)
_NAME = r"[^\W\d_a-z][^\W\d_]{2,20}(?:-[^\W\d_]{2,20})?"
_PATTERN = re.compile(
    rf"\b({_NAME}(?:[ \t]{_NAME})?)[ \t](\d{{2,4}}(?:[.,]\d{{1,2}})?|\d[.,]\d{{1,2}})(?![\w.,]*\d|[\"'°%])"
)
_LOW_PATTERN = re.compile(
    r"\b([a-z]{1,8})[ ]([^\W\d_]{4,20})[ ](\d{2,3})(?![\w.,]*\d|[\"'\u00b0%]|[ ]?(?:mm|cm|m|ft|in|kg|t|lbs?|tons?|kn|nm|hp|ps|pk|cv|hk)\b)"
)
_YEAR_BEHIND = re.compile(r"[ ,(]{0,3}(?:[^\W\d]{1,12}[ .:]{1,2}){0,2}(?:19|20)\d\d\b")
_BEFORE = re.compile(r"([^\W\d_]{1,12})['\u2019 ]\s{0,2}$")
_YEAR = re.compile(r"(?:19|20)\d\d")
MOST_NAMES = 100
_MONTHS = (
    "january february march april may june july august september october november december januar februar märz mai "
)
_NO_BOAT = (
    "juni juli oktober dezember janvier février mars avril juin juillet août septembre octobre novembre décembre unit "
    "quay street road page no nr tel fax mob img boat year loa lwl beam draft hull box port key order serial since "
    "from before after about baujahr bouwjaar"
)
_DETERMINERS = (
    "a an the our my her this one un une mon ma notre le la du ein eine einen einer eines mein meine meinen meiner unser "
    "unsere unseren unserer der die das dem den typ type tipo een de het onze mijn el mi nuestro nuestra del una uno il "
    "lo mio mia nostro nostra en ett et ei vår min vores vort vårt ons"
)
_CALLED = frozenset(fold(w) for w in _DETERMINERS.split())
_OTHER_WORDS = (
    "hallo hello hi hej hei dear and und et och og e y en for für pour per para till til voor with mit avec med met con "
    "båt båd boot bateau barco barca boat force channel kanal version windows chapter seite page side kapitel room route "
    "highway autobahn postfach pier berth steg liegeplatz unit hafen his hers eur usd gbp ref"
)
_NO_NAME = frozenset(fold(w) for w in (_MONTHS + _NO_BOAT + " " + _OTHER_WORDS).split()) | _CALLED


@dataclass(frozen=True)
class Named:
    """A boat's name in the text at [start, end), and how surely it is the boat asked about."""

    name: str
    start: int
    end: int
    score: float
    clause: Clause


LOW = 0.02
"""Fewer capitals among its letters than this: typed without them."""


def _typed_low(sheet: Sheet) -> bool:
    own = [sheet.clean[ln.start : ln.end] for ln in sheet.lines if ln.zone == "own"]
    letters = sum(c.isalpha() for t in own for c in t)
    return sum(c.isupper() for t in own for c in t) < LOW * letters


def find_models(sheet: Sheet, known: Sequence[str], *, asked: bool = False) -> list[Named]:
    """Return the boats named outside signatures, in order of place.

    What others wrote counts only where the writer names none (`asked`): an answer below our own question.
    """
    table = _table(known)
    found: list[Named] = []
    low = _typed_low(sheet)
    for clause in sheet.clauses:
        if clause.parent is not None or clause.foreign is not asked:
            continue
        text = sheet.clean[clause.start : clause.end]
        spans = _known_spans(text, table)
        spans = spans or [(a, b, 0.0) for a, b in _pattern_spans(clause, text)]
        spans = spans or [(a, b, 0.0) for a, b in (_low_spans(clause, text) if low else ())]
        for a, b, base in spans:
            end = b + _tail(text[b:])
            score = base + _bonus(sheet, clause, a, b)
            name = " ".join(text[a:end].split())
            if len(found) < MOST_NAMES and not _other(clause, clause.start + a):
                found.append(Named(name, clause.start + a, clause.start + end, score, clause))
    boats = {fold(n.name) for n in found if n.score > 0}
    return [n for n in found if fold(n.name) in boats] or ([] if asked else find_models(sheet, known, asked=True))


def _table(known: Sequence[str]) -> dict[str, list[tuple[str, ...]]]:
    table: dict[str, list[tuple[str, ...]]] = {}
    for name in known:
        parts = tuple(fold(m[0]).replace(",", ".") for m in _TOKEN.finditer(name))
        if any(p[0].isdigit() for p in parts) or len(parts) > 1:
            table.setdefault(parts[0], []).append(parts)
    return table


def _known_spans(text: str, table: dict[str, list[tuple[str, ...]]]) -> list[tuple[int, int, float]]:
    if not table:
        return []
    tokens = [(fold(m[0]).replace(",", "."), m.start(), m.end()) for m in _TOKEN.finditer(text)]
    spans: list[tuple[int, int, float]] = []
    at = 0
    while at < len(tokens):
        fits = [p for p in table.get(tokens[at][0], ()) if tuple(t[0] for t in tokens[at : at + len(p)]) == p]
        fits = [p for p in fits if not text[tokens[at][1] : tokens[at + len(p) - 1][2]].count("\n\n")]
        if fits:
            size = max(map(len, fits))
            spans.append((tokens[at][1], tokens[at + size - 1][2], 3.0))
            at += size
        else:
            at += 1
    return spans


def _pattern_spans(clause: Clause, text: str) -> list[tuple[int, int]]:
    spans = []
    for match in _PATTERN.finditer(text):
        start = match.start(1)
        words = match[1].split()
        while words and (fold(words[0]) in _NO_NAME or _meant(clause, clause.start + start, len(words[0]))):
            start += len(words[0]) + 1
            words.pop(0)
        year = _YEAR.fullmatch(match[2])
        if words and words[0][:1].isupper() and not year and not _measured(clause.found, clause.start + match.start(2)):
            spans.append((start, match.end(2)))
    return spans


def _low_spans(clause: Clause, text: str) -> list[tuple[int, int]]:
    """Return names written small: "the vellanor 38"."""
    return [
        (m.start(2), m.end(3))
        for m in _LOW_PATTERN.finditer(text)
        if fold(m[1]) in _CALLED
        and fold(m[2]) not in _NO_NAME
        and not _meant(clause, clause.start + m.start(2), len(m[2]))
        and not _measured(clause.found, clause.start + m.start(3))
    ]


def _meant(clause: Clause, at: int, size: int) -> bool:
    return any(m.start <= at < m.end for m in clause.marks) and size > 0


def _measured(found: list[Found], at: int) -> bool:
    return any(f.start <= at < f.end for f in found)


def _tail(rest: str) -> int:
    """Return how far a generation or a short suffix goes on behind the name."""
    generation = _GENERATION.match(rest)
    end = generation.end() if generation else 0
    suffix = _SUFFIX.match(rest, end) or _WORDED.match(rest, end) or _LOW_SUFFIX.match(rest, end)
    return suffix.end() if suffix else end


def _bonus(sheet: Sheet, clause: Clause, at: int, end: int) -> float:
    """Score the place: the subject, a label, near a word for boat or owning, an article before it, a year behind it."""
    subject = clause.start < sheet.subject_end
    place = clause.start + at
    label = any(m.concept in ("MODEL", "BOAT") and 0 <= place - m.end <= 4 for m in clause.marks)  # noqa: PLR2004 - ": "
    boat = {"BOAT", "GEAR", "ASK"} & clause.concepts
    before = _BEFORE.search(sheet.clean, max(clause.start, place - 16), place)
    called = before is not None and fold(before[1]) in _CALLED
    dated = _YEAR_BEHIND.match(sheet.clean, clause.start + end, clause.end) is not None
    dated = dated or any(m.concept == "YEAR" and 0 <= m.start - clause.start - end <= 2 for m in clause.marks)  # noqa: PLR2004 - ", "
    cues = 0.5 * bool(boat) + 0.5 * called + 0.5 * dated
    return 1.0 * subject + 2.0 * label + cues - 0.25 * clause.quoted


def _other(clause: Clause, at: int) -> bool:
    return any(m.concept == "OTHER_BOAT" and m.start < at for m in clause.marks)
