"""Numbers whose unit goes without saying, or is said so short that only its thought tells: "1090 off the water", "5,8 to"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import islice
from typing import Protocol

from service.core.reading.lexis import Mark, words_of
from service.core.units import Dimension, Found, Quantity, parse

_NUMBER = re.compile(r"(?<![\w.,'\u2019/+\u00b0#-])\d{1,4}(?:[.,]\d{1,2})?(?!\d|[.,]\d)(?![/'\"\u2032\u2033\u00b0%])")
_CLOSES = re.compile(r"[ ]{0,2}(?:[,;)\n]|\.(?:\s|$)|$)")
_EQUALS = re.compile(r"(?:\b(?:is|it's|it\u2019s|was|ist|est|es|\u00e8|\u00e4r|er)|=)[ ]$", re.IGNORECASE)
_NAMED = re.compile(r"([^\W\d_a-z][^\W\d_]{1,20})[ ]$")
_SHORT = re.compile(r"(?<![\w.,])(\d{1,3}(?:[.,]\d{1,2})?)[ ]?(?:(to)(?=[ ]{0,2}(?:[\n,;.)]|$))|(gr)\b)")
_BETWEEN = (
    "off above over clear of out from the up under below uber uberm unter unterm dem der au dessus de du la le l sobre del "
    "el encima por boven onder het ovan sopra sull sulla dal dall i di of"
)
BETWEEN = frozenset(_BETWEEN.split())
DIRECT = frozenset({"HEIGHT", "WIDTH", "BEAM", "DRAFT", "THICK", "DEPTH", "WATER", "AFT", "FORWARD"})
TOLD = ({"WATER", "TOP"}, {"WATER", "BOTTOM"}, {"WATER", "HEIGHT"}, {"TRANSOM", "WIDTH"}, {"BEAM"}, {"DRAFT"}, {"LOA"})
LEANS = frozenset({"RAKE", "LEAN", "REVERSE", "COUNTER", "TURN"})
METRIC, IMPERIAL = frozenset({"mm", "cm", "m"}), frozenset({"in", "ft"})
_WORD_NEXT = re.compile(r"[ \n][^\W\d_]")
_A_YEAR = re.compile(r"(?:19|20)\d\d in")
_POUNDS = re.compile(r"(?<![\w.,])(\d{1,3},\d{3}|\d{4,6})[ ]?#(?!\w)")  # as Americans write it
_INCHES = re.compile(
    r"[ ]?(\d|1[01])(?!\d|[.,/]\d)(?:[ ](?:and[ ]a[ ])?(half|quarter|[\u00bd\u00bc\u00be]|[13]/[248])\b)?"
)
_PARTS = {"half": "1/2", "quarter": "1/4", "\u00bd": "1/2", "\u00bc": "1/4", "\u00be": "3/4"}
_GOES_ON = re.compile(
    r"[ \n](?:from|to|off|above|over|at|in|on|by|and|but|with|measured|measuerd|up|down|between|tall|it|she|the|below|straight|about)\b"
)
YEARS = range(1930, 2050)
GAP, TONNE, LONG_UNIT = 16, 1000.0, 3
NEAR = 24
SURELY_MM = 300
THIN = range(2, 41)
LEAD = 2
_TENTHS = re.compile(
    r"[ ](?:(?:e|et|y|und|en|och|og|and)[ ])?(\d)(?![\d.,]*\d|[ ]?(?:(?:mm|cm|m|kg|t|kilos?|chili|persone|personas|personen)\b|[%\u00b0]))"
)
FEW, LEAST_DIGITS, ALIKE = 4, 3, 0.25


class Thought(Protocol):
    """What is needed of a clause."""

    start: int
    end: int
    foreign: bool
    depth: int
    marks: list[Mark]
    found: list[Found]


def is_preposition(clean: str, found: Found, language: str) -> bool:
    """Say whether what was taken for inches is the word "in": "1979 in mogano", "33 in acciaio", "built 1979 in Hull"."""
    written = clean[found.start : found.end]
    if not written.endswith(" in") or not _WORD_NEXT.match(clean, found.end):
        return False
    return language != "en" or _A_YEAR.fullmatch(written) is not None


def add_unitless(clean: str, clauses: Sequence[Thought]) -> None:
    """Give clauses the lengths that are written without a unit, where the letter's tape tells which it was.

    A letter keeps to one tape: whole numbers of hundreds mean mm throughout; with metres and centimetres about, a decimal
    is metres and a whole number centimetres (a thickness mm); with feet and inches alone, a whole number is inches.
    """
    for clause in clauses:
        clause.found[:] = [_with_tenths(clean, clause, f) for f in clause.found]
        clause.found[:] = [_with_inches(clean, clause, f) for f in clause.found]
    for clause in clauses:
        _again(clean, clause)
    written = {
        f.read.unit for c in clauses for f in c.found if isinstance(f.read, Quantity) and f.dimension == "length"
    }
    bare = [(c, m, thick) for c in clauses if not c.foreign for m, thick in _bare(clean, c)]
    tape = _tape(written, [m[0] for _, m, _ in bare])
    for clause, match, thick in bare:
        unit = _unit(tape, match[0], thick=thick)
        if unit is not None:
            _add(clause, match, f"{match[0]} {unit}", "length")
    for clause in clauses:
        weighed = any(m.concept == "DISPLACEMENT" for m in clause.marks)
        for match in _POUNDS.finditer(clean, clause.start, clause.end) if weighed else ():
            _add(clause, match, f"{match[1]} lb", "mass")
        for match in _SHORT.finditer(clean, clause.start, clause.end):
            heavy = match[2] and any(m.concept == "DISPLACEMENT" and m.end <= match.start() for m in clause.marks)
            leans = match[3] and LEANS & {m.concept for m in clause.marks}
            if (heavy or leans) and not _taken(clause, match):
                _add(clause, match, f"{match[1]} {'t' if heavy else 'deg'}", "mass" if heavy else "angle")


def _again(clean: str, clause: Thought) -> None:
    """Give a number its unit that says another of its clause anew: "1,26 m on the drawing, the tape gave me 1,21"."""
    told = [f for f in clause.found if f.dimension == "length" and isinstance(f.read, Quantity) and not f.shared]
    if not told or clause.foreign:
        return
    first = told[-1]
    said = _NUMBER.match(clean, first.start)
    if said is None or not isinstance(first.read, Quantity):
        return
    decimals, number = _decimals(said[0]), float(said[0].replace(",", "."))
    if first.read.unit == "m" and not decimals:  # "1 metro e 16"
        decimals, number = 2, first.read.value / TONNE
    for match in islice(_NUMBER.finditer(clean, first.end, clause.end), FEW):
        value = float(match[0].replace(",", "."))
        alike = (
            _decimals(match[0]) == decimals and len(match[0]) >= LEAST_DIGITS and abs(value - number) < ALIKE * number
        )
        anew = any(
            m.concept in ("TAKE_THIS", "OOPS", "M_TAPE", "MEASURED", "MEANT") and m.start >= first.end
            for m in clause.marks
        )
        if alike and anew and not _taken(clause, match) and not _year(match[0]):
            _add(clause, match, f"{match[0]} {first.read.unit}", "length")
            return


def _decimals(number: str) -> int:
    return len(number.replace(",", ".").partition(".")[2])


def _with_tenths(clean: str, clause: Thought, found: Found) -> Found:
    """Return tonnes with the tenths told behind them: "7 tonnellate e 3"."""
    if not isinstance(found.read, Quantity) or found.read.unit != "t" or found.read.value % TONNE:
        return found
    tenths = _TENTHS.match(clean, found.end, clause.end)
    if tenths is None or len(clean[found.start : found.end].rsplit(maxsplit=1)[-1]) < LONG_UNIT:
        return found
    read = Quantity(found.read.value + 100.0 * int(tenths[1]), "mass", "t", clean[found.start : tenths.end()])
    return Found(found.start, tenths.end(), read, "mass")


def _with_inches(clean: str, clause: Thought, found: Found) -> Found:
    """Return feet with the bare number that stands right behind and closes the measure: "3ft 9 high"."""
    if isinstance(found.read, Quantity) or found.dimension != "length":
        return found
    inches = _INCHES.match(clean, found.end, clause.end)
    if inches is None:
        return found
    behind = {
        m.concept for m in clause.marks if 0 <= m.start - inches.end() <= GAP and _leads(clean[inches.end() : m.start])
    }
    more = f" {_PARTS.get(inches[2], inches[2])}" if inches[2] else ""
    read = parse(f"{clean[found.start : found.end]} {inches[1]}{more} in", "length")
    closed = bool(behind & DIRECT) or any(p.match(clean, inches.end(), clause.end) for p in (_CLOSES, _GOES_ON))
    return Found(found.start, inches.end(), read, "length") if closed and isinstance(read, Quantity) else found


def is_free(clean: str, clause: Thought, match: re.Match[str]) -> bool:
    """Say whether a number is no quantity yet, no year and no part of a name."""
    told = any(m.concept in DIRECT and 0 <= m.start - match.end() <= 1 for m in clause.marks)  # "1980 wide"
    return not (_taken(clause, match) or (_year(match[0]) and not told) or _is_model(clean, clause, match.start()))


def add_length(clause: Thought, match: re.Match[str], unit: str) -> None:
    """Give a clause a bare number as a length."""
    _add(clause, match, f"{match[0]} {unit}", "length")


def _add(clause: Thought, match: re.Match[str], text: str, dimension: Dimension) -> None:
    read = parse(text, dimension)
    if isinstance(read, Quantity):
        clause.found.append(Found(match.start(), match.end(), read, dimension))
        clause.found.sort(key=lambda f: f.start)


def _taken(clause: Thought, match: re.Match[str]) -> bool:
    return any(f.start < match.end() and match.start() < f.end for f in clause.found)


def _bare(clean: str, clause: Thought) -> Iterator[tuple[re.Match[str], bool]]:
    """Yield the numbers without unit that a word of measure or a full stop closes, and whether it is a thickness."""
    if not clause.marks:
        return
    concepts = {m.concept for m in clause.marks}
    for match in _NUMBER.finditer(clean, clause.start, clause.end):
        if _taken(clause, match) or len(match[0]) == 1 or _year(match[0]) or _is_model(clean, clause, match.start()):
            continue
        behind = [m for m in clause.marks if 0 <= m.start - match.end() <= GAP and m.concept != "YEAR"]
        leads = {m.concept for m in clause.marks if 0 <= match.start() - m.end <= LEAD}
        if leads & {"DEPTH", "THICK"} and _CLOSES.match(clean, match.end(), clause.end):
            yield match, "THICK" in leads  # "profonda 62"
            continue
        close = {m.concept for m in behind if m.start == behind[0].start and _leads(clean[match.end() : m.start])}
        before = clean[max(clause.start, match.start() - NEAR) : match.start()]
        equals = _EQUALS.search(before) and _CLOSES.match(clean, match.end(), clause.end)
        if close & DIRECT:
            yield match, "THICK" in close
        elif equals and any(each <= concepts for each in TOLD) and not {"HULL_NUMBER", "YEAR"} & _last(clause, match):
            yield match, False


def _last(clause: Thought, match: re.Match[str]) -> set[str]:
    before = [m for m in clause.marks if m.end <= match.start() and m.concept != "BOAT"]
    return {m.concept for m in before if m.start == before[-1].start and match.start() - m.end <= GAP}


def _leads(between: str) -> bool:
    return not between.strip("\n abcdefghijklmnopqrstuvwxyzüéåäö'’") and all(  # noqa: RUF001 - as people write it
        w.fold in BETWEEN for w in words_of(between)
    )


def _year(number: str) -> bool:
    return number.isdigit() and int(number) in YEARS


def _is_model(clean: str, clause: Thought, at: int) -> bool:
    """Say whether a capitalised word that means nothing else stands right before: "Corvane 33 aft cabin"."""
    name = _NAMED.search(clean, max(clause.start, at - NEAR), at)
    return name is not None and not any(m.start < name.end(1) and name.start(1) < m.end for m in clause.marks)


def _tape(written: set[str], numbers: list[str]) -> str | None:
    metric, imperial = bool(written & METRIC), bool(written & IMPERIAL)
    whole = [int(n) for n in numbers if n.isdigit()]
    if metric and imperial:
        return None
    if imperial:
        return "in" if all(n < SURELY_MM for n in whole) else None
    if any(n >= SURELY_MM for n in whole):
        return "mm"
    if metric and not written & {"m", "cm"}:
        return "mm"
    return "cm" if metric or len(whole) < len(numbers) else None


def _unit(tape: str | None, number: str, *, thick: bool) -> str | None:
    if tape in (None, "in"):
        return tape
    if not number.isdigit():
        return "m" if not thick else None
    return "mm" if tape == "mm" or (thick and int(number) in THIN) else None if thick else tape
