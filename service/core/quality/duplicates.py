"""One installation written down twice.

Two records are told where they are of one boat and carry the same configuration. One boat: the same hull number, sail
number or name under one hull model, or (where neither pair is known) the same figures of skin and rudder, at least
ENOUGH of them and ALIKE of all that both say: sister ships measured apart agree to centimetres, not to the digit. What
every sister shares (length, beam and the like from a brochure) does not count.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import combinations

from service.core.boat import get
from service.core.measurement import fields
from service.core.quality.shapes import Finding
from service.core.record import Record

ENOUGH = 6
ALIKE = 0.9
_OWN = tuple(path for path in fields() if path.startswith(("transom.", "main_rudder.")))
_NAMES = {"hull_number": "hull number", "sail_number": "sail number", "name": "name"}


def duplicates(records: Sequence[Record]) -> Iterator[Finding]:
    """Give a finding for every pair of records that are likely one installation; the later reference is the second."""
    groups = defaultdict[tuple[str, object], list[Record]](list)
    for record in records:
        known = record.hull or (record.form.boat.model or "").casefold()
        if known and record.status != "withdrawn":
            groups[known, record.configuration].append(record)
    for group in groups.values():
        for one, other in combinations(sorted(group, key=lambda r: r.reference), 2):
            why = _same(one, other)
            if why is not None:
                yield _finding(one, other, *why)


def _same(one: Record, other: Record) -> tuple[str, float] | None:
    for name, called in _NAMES.items():
        mine, theirs = getattr(one.form.boat, name), getattr(other.form.boat, name)
        if mine and theirs:
            if mine.casefold() != theirs.casefold():
                return None
            if name != "name" or one.form.boat.year == other.form.boat.year:
                return f"the same {called}, {mine!r}", 1.0
    if None not in (one.form.boat.year, other.form.boat.year) and one.form.boat.year != other.form.boat.year:
        return None
    both = [(get(one.form, path), get(other.form, path)) for path in _OWN]
    said = [(mine, theirs) for mine, theirs in both if mine is not None and theirs is not None]
    equal = sum(mine == theirs for mine, theirs in said)
    if equal < ENOUGH or equal < ALIKE * len(said):
        return None
    return f"{equal} of {len(said)} figures of skin and rudder agree to the digit", equal / len(said)


def _finding(one: Record, other: Record, why: str, grade: float) -> Finding:
    return Finding(
        kind="duplicate",
        record=other.reference,
        other=one.reference,
        expected="one record an installation",
        why=f"it carries what {one.reference} carries, and {why}",
        mend="look at both (add --preview), then",
        command=f"transom records merge {one.reference} {other.reference}",
        grade=grade,
    )
