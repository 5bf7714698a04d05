"""Several measures under one heading: "LOA / beam: 10.96 m / 3.48 m" is two thoughts, each label with its own number."""

from __future__ import annotations

import re

from service.core.reading.lexis import Mark
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_thing
from service.core.units import Found

_BETWEEN = re.compile(r"\s{0,3}[/|+]\s{0,3}")
MEASURES = frozenset({"WIDTH", "HEIGHT", "THICK", "RAKE", "DEPTH"})
MOST = 4


def part(sheet: Sheet) -> Sheet:
    """Return the sheet with clauses that have as many labels as numbers, "/" between, followed by one for each pair."""
    made: list[Clause] = []
    clean = sheet.clean
    for clause in sheet.clauses:
        made.append(clause)
        run = _run(clean, clause) if clause.parent is None and len(clause.found) > 1 else []
        cuts = _labels(clean, clause, run) if run else []
        if not cuts:
            continue
        for k, found in enumerate(run):
            low, high = cuts[k], cuts[k + 1]
            marks = [m for m in clause.marks if low <= m.start < high]
            own = Clause(clause.start, clause.end, clause.depth, clause.paragraph, shaped=True, foreign=clause.foreign)
            own.marks = (
                sorted([*_handed_on(clause.marks, cuts[1], marks), *marks], key=lambda m: m.start) if k else marks
            )
            own.found, own.apart, own.question = [found], True, clause.question
            made.append(own)
        clause.found = [f for f in clause.found if f not in run]
        clause.marks = [m for m in clause.marks if m.start >= run[0].start or m.concept.startswith("M_")]
        clause.__dict__.pop("concepts", None)
    sheet.clauses, sheet.starts = made, [c.start for c in made]
    return sheet


def _run(clean: str, clause: Clause) -> list[Found]:
    """Return the first quantities of a clause between which nothing but "/" stands."""
    run = clause.found[:1]
    for found in clause.found[1:]:
        if _BETWEEN.fullmatch(clean, run[-1].end, found.start) is None:
            break
        run.append(found)
    return run if 1 < len(run) <= MOST else []


def _labels(clean: str, clause: Clause, run: list[Found]) -> list[int]:
    """Return where the labels before a run begin, and where the last ends; none where they are not as many."""
    head = clean[clause.start : run[0].start]
    slashes = [clause.start + i for i, c in enumerate(head) if c == "/"]
    labels = len(slashes) == len(run) - 1 and not any(c.isdigit() for c in head)
    return [clause.start, *slashes, run[0].start] if labels else []


def _handed_on(marks: list[Mark], first_end: int, own: list[Mark]) -> list[Mark]:
    """Return what the first label hands on to a later one: "transom width top / waterline"."""
    first = [m for m in marks if m.end <= first_end]
    whole = any(m.concept in ("LOA", "LWL", "BEAM", "DRAFT", "DISPLACEMENT") for m in own)
    things = [m for m in first if is_thing(m.concept)] if not any(is_thing(m.concept) for m in own) else []
    measures = [m for m in first if m.concept in MEASURES] if not any(m.concept in MEASURES for m in own) else []
    return [] if whole else [*things, *measures]
