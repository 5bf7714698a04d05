"""What stands on the stern: kinds, how they move, and whether they may go."""

from __future__ import annotations

from bisect import bisect_right

from service.core.reading.boxes import Seen, boxes, tell
from service.core.reading.doing import AND
from service.core.reading.lexis import Mark, words_of
from service.core.reading.meant import (
    ATTRIBUTES,
    CLOSE,
    FOR,
    GOING,
    MOVES,
    SIDES,
    WITH,
    begins,
    gone,
    is_place,
    leads_on,
    none_of,
    of_other,
    they_are_gone,
    together,
    verb_between,
    wished,
)
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import denied, is_obstacle, segment

COUNTED = 8
HULL_PARTS = frozenset(
    {"TRANSOM", "POST", "TOERAIL", "HULL", "THICK", "TOP", "BOTTOM", "BOOTSTRIPE", "COCKPIT", "LOA", "BEAM", "DRAFT"}
)
BOAT_MEASURES = frozenset({"RUDDER", "STOCK", "DISPLACEMENT", "LOA", "BEAM", "DRAFT"})


def read_obstacles(sheet: Sheet, start: int = 0, end: int | None = None) -> list[Seen]:
    """Return the obstacles that the letter says are there in [start, end), in order; denied ones are left out."""
    seen: list[Seen] = []
    away: dict[str, int] = {}
    last: Seen | None = None
    paragraph = -1
    for clause in sheet.clauses:
        if clause.foreign or "OTHER_BOAT" in clause.concepts or not start <= clause.start < (end or len(sheet.text)):
            continue
        if clause.paragraph != paragraph:
            last = None
        paragraph = clause.paragraph
        if last is not None and they_are_gone(sheet.clean, clause):
            seen.remove(last)
            last = None
        last = _clause(sheet, clause, seen, last, away)
    seen = [one for one in seen if away.get(one.kind, one.depth) >= one.depth]  # what a newer mail says is gone
    for one in seen:
        _attributes(one)
        boxes(sheet, one)
    return seen


def _clause(sheet: Sheet, clause: Clause, seen: list[Seen], last: Seen | None, away: dict[str, int]) -> Seen | None:
    named = [m for m in clause.marks if is_obstacle(m.concept)]
    named = [m for m in named if not _asked_of(sheet, clause)]
    here: list[tuple[Mark, Seen | None]] = [(m, _mention(sheet, clause, m, seen)) for m in named]
    _note(away, clause, [m for m, s in here if s is None])
    if clause.parent is not None:
        last = _nearest(clause.parent, clause.start, seen) or last
    elif not named and clause.shaped:
        last = None
    things = {"TRANSOM", "RUDDER", "STEP", "BOAT"} & clause.concepts
    carried = None if things & {"RUDDER", "STEP"} and not named else last
    for mark in clause.marks:
        if mark.concept in ATTRIBUTES and not wished(sheet.clean, clause, mark):
            gears = mark.concept in SIDES and "GEAR" in clause.concepts  # "happier with the gear to port"
            owner = _owner(sheet, clause, mark, here, None if gears else carried)
            if owner is not None:
                owner.marks.append((clause, mark))
                for other in _with(sheet, clause, mark, here, owner):
                    other.marks.append((clause, mark))
    for found in clause.found:
        if found.dimension != "length" or "PLUMB_LINE" in clause.concepts:
            continue
        owner = _owner(sheet, clause, Mark("", found.start, found.end), here, carried if _may_carry(clause) else None)
        if owner is not None:
            owner.found.append((clause, found))
    present = [s for _, s in here if s is not None]
    return present[-1] if present else None if named else last


def _asked_of(sheet: Sheet, clause: Clause) -> bool:
    """Say whether the writer only asks himself and says no: "An arch? No, and there will be none."."""
    if clause.parent is not None or clause.found or not sheet.clean[clause.start : clause.end].rstrip().endswith("?"):
        return False
    after = next((c for c in sheet.clauses[bisect_right(sheet.starts, clause.start) :] if c.parent is None), None)
    first = after.marks[0] if after is not None and after.marks else None
    return after is not None and first is not None and first.concept == "NOT" and first.start - after.start <= COUNTED


def _may_carry(clause: Clause) -> bool:
    """Say whether lengths of a thought without a name can be those of the thing spoken of before."""
    parts = HULL_PARTS & clause.concepts
    return not parts or (parts == {"TOP"} and {"BEGIN", "ENDS"} <= clause.concepts)


def _with(sheet: Sheet, clause: Clause, mark: Mark, here: list[tuple[Mark, Seen | None]], owner: Seen) -> list[Seen]:
    """Return the things that go or stay with the owner: "the davits and the arch can go"."""
    mine = next((m for m, s in here if s is owner), None)
    if mine is None or mark.concept not in GOING or any(mine.end <= m.start < mark.start for m, _ in here):
        return []  # "a rail, and a raft on the rail which can be moved"
    return [s for m, s in here if s not in (None, owner) and s is not None and together(sheet.clean, clause, mine, m)]


def _mention(sheet: Sheet, clause: Clause, mark: Mark, seen: list[Seen]) -> Seen | None:
    low, high = segment(sheet.clean, clause, mark)
    if sheet.clean[high : high + 1] == ":":
        behind = [m for m in clause.marks if m.concept == "NOT" and not sheet.clean[high + 1 : m.start].strip()]
        high = behind[0].end if behind and behind[0].start > high else high
    around = [m for m in clause.marks if m.concept == "NOT" and low <= m.start < high]
    around = [
        m for m in around if not any(x.concept == "EXCEPT" and m.end <= x.start < mark.start for x in clause.marks)
    ]
    if none_of(sheet.clean, clause):
        return None
    around = [m for m in around if m.start < mark.start or not begins(sheet.clean, mark.end, m.start)]
    around = [m for m in around if m.start < mark.start or not of_other(sheet.clean, mark, m, high)]
    if any(m.start < mark.start or not verb_between(sheet.clean, clause, mark, m) for m in around) or gone(
        sheet.clean, clause, mark, low
    ):
        return None
    kind = mark.concept.removeprefix("O_").lower()
    known = next((s for s in seen if s.kind == kind), None)
    if known is None:
        known = Seen(kind, mark.start, mark.end, clause.depth)
        seen.append(known)
    return known


def _note(away: dict[str, int], clause: Clause, denied: list[Mark]) -> None:
    """Note of each kind that is denied or gone how new the mail is that says so."""
    for kind in (m.concept.removeprefix("O_").lower() for m in denied):
        away[kind] = min(clause.depth, away.get(kind, clause.depth))


def _nearest(parent: Clause, at: int, seen: list[Seen]) -> Seen | None:
    before = [m for m in parent.marks if is_obstacle(m.concept) and m.end <= at]
    kind = before[-1].concept.removeprefix("O_").lower() if before else None
    return next((s for s in seen if s.kind == kind), None)


def _owner(
    sheet: Sheet, clause: Clause, mark: Mark, here: list[tuple[Mark, Seen | None]], last: Seen | None
) -> Seen | None:
    """Return the obstacle an attribute or distance belongs to: one named close behind it, else the last one before."""
    after = next(((m, s) for m, s in here if m.start >= mark.end), None)
    before = [(m, s) for m, s in here if m.end <= mark.start]
    within = [s for m, s in here if m.start < mark.end and mark.start < m.end]
    if within and mark.concept:
        return within[0]  # "folding ladder" as one phrase
    if after is not None and mark.concept:
        between = sheet.clean[mark.end : after[0].start]
        parted = bool(before) and bool(
            (AND | WITH | FOR) & {w.fold for w in words_of(between)}
        )  # "a ladder to port and an arch"
        parted = parted or (
            bool(before) and any(m.concept == "NOT" and mark.end <= m.start < after[0].start for m in clause.marks)
        )
        close = len(between) <= CLOSE and not parted and not set(",;:.") & set(between)
        named = before[-1][0] if before else None
        if close or (mark.concept in SIDES and leads_on(sheet.clean, clause, mark, (named, after[0]))):
            return after[1]
    if before:
        since = {m.concept for m in clause.marks if before[-1][0].end <= m.start < mark.start}
        since -= {"DRAFT"} if {"STICK_OUT", "DEPTH"} & since else set()  # one word for both
        if not mark.concept and since & BOAT_MEASURES:
            return None
        return before[-2 if len(before) > 1 and _is_head(sheet.clean, before[-2][0], before[-1][0]) else -1][1]
    if here:
        first = here[0]
        low, _ = segment(sheet.clean, clause, first[0])
        return first[1] if mark.concept in SIDES and (low <= mark.start or not before) else None
    return last


def _is_head(clean: str, thing: Mark, other: Mark) -> bool:
    """Say whether the first of two things is spoken of: "outboard on the pushpit, to port", "an arch with panels"."""
    return is_place(clean, thing, other) or (thing.concept == "O_ARCH" and other.concept == "O_PANELS")


def _attributes(one: Seen) -> None:
    """Set what is said of it; newer words outrank those quoted below them."""
    for depth in sorted({clause.depth for clause, _ in one.marks}, reverse=True):
        said = Seen(one.kind, one.start, one.end, depth)
        _told(said, [(clause, mark) for clause, mark in one.marks if clause.depth == depth])
        one.said |= said.said
        one.places |= said.places


def _told(one: Seen, marks: list[tuple[Clause, Mark]]) -> None:
    for clause, mark in marks:
        negative = denied(clause, mark.start)
        if mark.concept in MOVES and not negative:
            tell(one, "moves", MOVES[mark.concept], mark, first=True)
        elif mark.concept == "FOLD":
            tell(one, "moves", "fixed", mark)
        elif mark.concept in GOING and not negative:
            tell(one, GOING[mark.concept], value=True, place=mark)
        elif mark.concept == "CENTRE" and _counted(clause, mark):
            continue  # "70 cm off centre": where it is counted from
        elif mark.concept in ("PORT", "STARBOARD", "CENTRE") and not negative:
            tell(one, "side", SIDES[mark.concept], mark, first=mark.concept == "CENTRE")
    both = next((m for _, m in marks if m.concept == "EACH_SIDE"), None)
    if both is not None:
        tell(one, "side", "both", both)


def _counted(clause: Clause, mark: Mark) -> bool:
    """Say whether a distance stands right before, with no word of measure between: "70 cm off centre"."""
    before = [f.end for f in clause.found if 0 <= mark.start - f.end <= COUNTED]
    return bool(before) and not any(before[-1] <= m.start < mark.start for m in clause.marks)
