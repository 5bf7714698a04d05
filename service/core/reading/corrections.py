"""What a writer takes back or puts right: "I meant 1120 not 1210", "forget the 3 ft 2"; and a height in two parts."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import islice, pairwise

from service.core.reading.claims import RANGES, Claim, Notes
from service.core.reading.measures import LABELS, TAKEN_BACK
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import denied, is_thing, view
from service.core.units import Quantity

_NUMBER = r"(\d{1,5}(?:[.,]\d{1,2})?)"
_DENIAL = r"(?:not|nicht|pas|niet|non|no|inte|ikke)"
_NOT = re.compile(rf"{_NUMBER}[ \t]{{0,3}}[a-z\"'°]{{0,4}}[ ,]{{1,3}}(?:and )?{_DENIAL}[ \t]+{_NUMBER}")
_WRITTEN = re.compile(r"\d{1,5}(?:[.,]\d{1,2})?")
_WAS = re.compile(r"\b(?:was|were|war|waren|\u00e9tait|\u00e9taient|era|eran|erano|waren|var)\b", re.IGNORECASE)
_THAT = re.compile(r"\b(?:that|that's|those|das|c|cela|\u00e7a|eso|esa|quello|quella|dat|det)\b", re.IGNORECASE)
LONGEST = 200
CLOSE = 1e-6
MOST = 5
ALIKE = 0.25
TALLEST_RAIL = 250.0


def correct(sheet: Sheet, notes: Notes) -> None:
    """Replace claims whose written number a later "A not B" takes back: B becomes A in B's own unit."""
    for at, clause in enumerate(sheet.clauses):
        if clause.foreign or clause.quoted:
            continue
        _was_rail(sheet, at, clause, notes)
        _put_in_place(clause, notes)
        _anew(sheet, clause, notes)
        for match in islice(_NOT.finditer(sheet.clean, clause.start, clause.end), MOST):
            if any(f.start < match.start(1) < f.end or f.start < match.start(2) < f.end for f in clause.found):
                continue  # "3ft 9, not 3ft 6"
            new, old = (float(g.replace(",", ".")) for g in match.groups())
            notes.claims = [mended(sheet, c, new, old, match.start(1), match.end(1)) for c in notes.claims]


def _put_in_place(clause: Clause, notes: Notes) -> None:
    """Replace the one claim that has the value taken back in "3 ft 9, not 3 ft 6", wherever that was said."""
    for new, old in pairwise(clause.found):
        one, other = new.read, old.read
        if not isinstance(one, Quantity) or not isinstance(other, Quantity) or one.dimension != other.dimension:
            continue
        hits = [c for c in notes.claims if isinstance(c.value, float) and abs(c.value - other.value) < CLOSE]
        if len({c.field for c in hits}) == 1 and denied(clause, old.start, TAKEN_BACK):
            fresh = replace(hits[0], value=one.value, start=new.start, end=new.end, depth=0)
            notes.claims = [c for c in notes.claims if c not in hits] + [fresh]


def _anew(sheet: Sheet, clause: Clause, notes: Notes) -> None:
    """Replace what was said just before by a bare number that is to be taken: "Loaded it is 97, go by that"."""
    if "TAKE_THIS" not in clause.concepts or clause.found:
        return
    near = [c for c in notes.claims if 0 < clause.start - c.start <= LONGEST and c.field.endswith("_mm")]
    if len({c.field for c in near}) != 1 or not isinstance(near[-1].value, float):
        return
    said = _WRITTEN.match(sheet.clean[near[-1].start : near[-1].end])
    for match in islice(_WRITTEN.finditer(sheet.clean, clause.start, clause.end), MOST):
        new = float(match[0].replace(",", "."))
        old = float(said[0].replace(",", ".")) if said is not None else 0.0
        if old and abs(new - old) < ALIKE * old:
            fresh = replace(near[-1], value=round(near[-1].value / old * new, 6), start=match.start(), end=match.end())
            notes.claims = [c for c in notes.claims if c not in near] + [fresh]
            return


def _was_rail(sheet: Sheet, at: int, clause: Clause, notes: Notes) -> None:
    """Take back a height that the next thought says was to the rail: "That's to the top of the caprail; the hull stops at 44 in"."""
    said = "TOERAIL" in clause.concepts and _THAT.search(sheet.clean, clause.start, clause.end)
    near = [c for c in notes.claims if c.field == "transom.top_height_mm" and 0 < clause.start - c.start <= LONGEST]
    if not said or clause.concepts & {"WATER", "WITHDRAW"} or not near:
        return  # "scrub what I said before, that was from the toe rail": an older value
    claim = near[-1]
    notes.claims.remove(claim)
    for other in sheet.clauses[at : at + MOST]:
        if "ENDS" in other.concepts and {"HULL", "GRP", "TRANSOM"} & other.concepts:
            for found in other.found:
                value = found.read.value if isinstance(found.read, Quantity) else 0.0
                if 0 < claim.value - value <= TALLEST_RAIL:
                    notes.claims.append(replace(claim, value=value, start=found.start, end=found.end))
                    return
    notes.doubt(claim.start, claim.field, "other_datum", sheet.text[claim.start : claim.end], (claim.value,))


def rename(sheet: Sheet, notes: Notes) -> None:
    """Give a number to the measure that a later sentence says it was: "the 2.95 was the beam", "sorry, that was the beam"."""
    for at, clause in enumerate(sheet.clauses):
        names = [LABELS[m.concept] for m in clause.marks if m.concept in LABELS]
        away = "OTHER_BOAT" in clause.concepts
        was = _WAS.search(sheet.clean, clause.start, min(clause.end, clause.start + LONGEST))
        if was is None or clause.foreign or not (away or len(names) == 1):
            continue
        numbers = {
            m[0].replace(",", ".") for m in islice(_WRITTEN.finditer(sheet.clean, clause.start, was.start()), MOST)
        }
        before = sheet.clauses[at - 1].start if at else clause.start
        for claim in [c for c in notes.claims if c.start < clause.start and c.field.endswith("_mm")]:
            said = _WRITTEN.match(sheet.clean[claim.start : claim.end])
            meant = said is not None and said[0].replace(",", ".") in numbers
            that = not numbers and claim.start >= before and _THAT.search(sheet.clean, clause.start, was.start())
            if (meant or that) and claim.field not in names:
                notes.claims.remove(claim)
                low, high = RANGES[names[0]] if names else (1.0, 0.0)
                if not away and low <= claim.value <= high:
                    notes.claims.append(replace(claim, field=names[0]))


def mended(sheet: Sheet, claim: Claim, new: float, old: float, start: int, end: int) -> Claim:
    """Return the claim with its written number `old` replaced by `new`, said at [start, end); itself where it is another."""
    said = _WRITTEN.match(sheet.clean[claim.start : claim.end])
    if (
        said is None
        or not isinstance(claim.value, float)
        or abs(float(said[0].replace(",", ".")) - old) > CLOSE
        or not old
    ):
        return claim
    return replace(claim, value=round(claim.value / old * new, 6), start=start, end=end, depth=0)


def add_datum(sheet: Sheet, notes: Notes) -> None:
    """Turn a height from another datum into one above the water, where the letter gives what is needed.

    From the boot stripe and that one's own height; from the step and its height; to the toe rail's top, less the rail.
    """
    stripe = [c for c in sheet.clauses if "BOOTSTRIPE" in c.concepts and not c.foreign]
    over = _from(stripe, {"TOP", "TRANSOM", "BOOTSTRIPE"}, without="WATER")
    _add(notes, over, _from(stripe, {"BOOTSTRIPE", "WATER"}, without="TRANSOM"), 1.0)
    step = next((c for c in notes.claims if c.field == "transom.step_height_mm"), None)
    if step is not None:
        above = [c for c in sheet.clauses if {"STEP", "TOP"} <= c.concepts and not c.foreign]
        _add(notes, _from(above, {"TOP", "STEP"}, without="WATER"), (step.start, step.end, step.value), 1.0)
    _add(notes, *_rail(sheet), -1.0)


Said = tuple[int, int, float] | None


def _add(notes: Notes, one: Said, other: Said, way: float) -> None:
    if one is None or other is None:
        return
    start, end = min(one[0], other[0]), max(one[1], other[1])
    notes.claims.append(Claim("transom.top_height_mm", round(one[2] + way * other[2], 6), start, end, 0, 0.8))
    notes.doubts = [d for d in notes.doubts if d[1].why != "other_datum"]


def _rail(sheet: Sheet) -> tuple[Said, Said]:
    """Return the toe rail's height above the water and its own height, each where exactly one is said."""
    tops: list[tuple[int, int, float]] = []
    selves: list[tuple[int, int, float]] = []
    for clause in sheet.clauses:
        if clause.foreign or "OTHER_BOAT" in clause.concepts:
            continue
        for found in clause.found:
            if found.dimension != "length" or not isinstance(found.read, Quantity):
                continue
            seen = view(sheet.clean, clause, found)
            said = (found.start, found.end, found.read.value)
            last = next((c for c in seen.topic if is_thing(c)), None)
            rail = "TOERAIL" in seen.near or (last == "TOERAIL" and "STICK_OUT" in seen.near)  # "which stands 6 cm up"
            if seen.on_rail and "WATER" in seen.near and ("TOP" in seen.near or found.read.value > TALLEST_RAIL):
                tops.append(said)
            elif rail and not {"WATER", "WIDTH", "THICK"} & seen.near and found.read.value <= TALLEST_RAIL:
                selves.append(said)
    return (tops[0] if len(tops) == 1 else None), (selves[0] if len(selves) == 1 else None)


def _from(clauses: list[Clause], needed: set[str], *, without: str) -> tuple[int, int, float] | None:
    """Return place and value of the one length whose own stretch of the clause has these concepts."""
    hits = []
    for clause in clauses:
        lengths = [f for f in clause.found if f.dimension == "length"]
        for i, found in enumerate(lengths):
            low = lengths[i - 1].end if i else clause.start
            high = lengths[i + 1].start if i + 1 < len(lengths) else clause.end
            before = {m.concept for m in clause.marks if low <= m.start < found.start}
            after = {m.concept for m in clause.marks if found.end <= m.start < high}
            around = before | (after if i + 1 == len(lengths) else set())
            if needed <= around and without not in around and isinstance(found.read, Quantity):
                hits.append((found.start, found.end, found.read.value))
    return hits[0] if len(hits) == 1 else None
