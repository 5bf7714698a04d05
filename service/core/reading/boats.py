"""How many boats a letter is about, and which stretch of it speaks of which."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.reading.lexis import fold
from service.core.reading.models import Named
from service.core.reading.sheet import Sheet

HEAD_LENGTH = 90
MOST_BOATS = 12


@dataclass(frozen=True)
class Section:
    """Text [start, end) speaks of the boat called `named`; several boats share what stands outside all sections."""

    named: Named | None
    start: int
    end: int


def sections(sheet: Sheet, named: list[Named]) -> list[Section]:
    """Return one section a boat: headings that name different boats, each with measures below, divide a letter."""
    heads = [n for n in named if _is_heading(sheet, n) and not n.clause.quoted]
    distinct = list({fold(n.name): n for n in reversed(heads)}.values())[::-1]
    distinct.sort(key=lambda n: n.start)
    if 1 < len(distinct) <= MOST_BOATS:
        starts = [_line_start(sheet, n.start) for n in distinct]
        ends = [*starts[1:], len(sheet.clean)]
        parts = [Section(n, a, b) for n, a, b in zip(distinct, starts, ends, strict=True)]
        if all(_says_something(sheet, part) for part in parts):
            return parts
    best = max(named, key=lambda n: (n.score, -n.start), default=None)
    return [Section(best, 0, len(sheet.clean))]


def _line_start(sheet: Sheet, at: int) -> int:
    return sheet.clean.rfind("\n", 0, at) + 1


def _is_heading(sheet: Sheet, named: Named) -> bool:
    start = _line_start(sheet, named.start)
    end = sheet.clean.find("\n", named.end)
    line = sheet.clean[start : min(end if end >= 0 else named.clause.end, named.clause.end)]
    return start >= sheet.subject_end and len(line) <= HEAD_LENGTH and named.start - start <= HEAD_LENGTH // 3


def _says_something(sheet: Sheet, part: Section) -> bool:
    own = [c for c in sheet.clauses if part.start <= c.start < part.end]
    return sum(len(c.found) + len(c.marks) for c in own) > 2 and any(c.found for c in own)  # noqa: PLR2004 - more than a name
