"""Words without numbers: sort of stern, how the rudder hangs, what the hull is made of, preferences, methods."""

from __future__ import annotations

import re
from itertools import pairwise

from service.core.reading.claims import Claim, Notes
from service.core.reading.lean import edge_leans, is_a_way_of_measuring, rake_sign
from service.core.reading.lexis import Mark, fold, words_of
from service.core.reading.particulars import of_name
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import NEAR, denied, is_obstacle, segment
from service.core.reading.zeros import note_zeros
from service.core.units import Found, Quantity

SIMPLE = {
    "OPEN": "open",
    "DOUBLE": "double_ended",
    "SCOOP": "scoop",
    "REVERSE": "reverse",
    "PLUMB": "plumb",
    "COUNTER": "raked",
}
OUTRANKS = ("double_ended", "open", "scoop", "reverse", "plumb", "raked")
SIDES = {"PORT": "port", "STARBOARD": "starboard", "CENTRE": "centre"}
_ON = re.compile(
    r"\b(?:on|onto|from|off|am|an dem|vom|sur|aan|op|utanp\u00e5|p\u00e5|av|en el|del|en la|allo|sullo|alla|sulla)"
    r"(?:[ \n](?:the|my|our|le|de|het|selve|sj\u00e4lva))?[ \n]$",
    re.IGNORECASE,
)
ON = 24
BEHIND = 30
FAR = 70
CLOSE = 40
UPRIGHT_DEG = 6.0
WELLS = frozenset({"cockpit", "kuip", "plicht", "sittbrunn", "pozzetto", "banera"})
_DECKS = "deck decks coachroof cabin pont roof cubierta cubiertas dek coperta tuga dack dacket dekk dekket daek daekket rudder ruder"
DECKS = frozenset(_DECKS.split())
BESIDE = 12


def stern_hints(sheet: Sheet) -> frozenset[str]:
    """Return the words for the sort of stern that the letter uses of this boat, and what its directions come to."""
    found: set[str] = set()
    for clause in sheet.clauses:
        if "OTHER_BOAT" in clause.concepts:
            continue
        if clause.shaped and {"LOA", "DRAFT"} & clause.concepts:
            found.add("PARTICULARS")
        found |= {m.concept for m in clause.marks if m.concept in SIMPLE and not denied(clause, m.start)}
        sign = rake_sign(clause)
        about = clause.concepts | clause.question | set(clause.topic)
        if (
            sign is not None
            and {"TRANSOM", "POST", "RAKE", "LEAN"} & about
            and {"LEAN", "RAKE", "TOP"} & clause.concepts
        ):
            found.add("REVERSE" if sign < 0 else "COUNTER")
    return frozenset(found)


def open_edge(sheet: Sheet, hints: frozenset[str]) -> None:
    """Make the cockpit sole's edge the transom's top edge where the stern is open: nothing stands above it."""
    if "OPEN" not in hints:
        return
    for clause in sheet.clauses:
        soles = [m for m in clause.marks if m.concept == "COCKPIT" and fold(sheet.clean[m.start : m.end]) not in WELLS]
        if soles:
            kept = [m for m in clause.marks if m not in soles]
            edges = [Mark(c, m.start, m.end) for m in soles for c in ("TOP", "TRANSOM")]
            clause.marks = sorted([*kept, *edges], key=lambda m: m.start)
            clause.__dict__.pop("concepts", None)


def read_words(sheet: Sheet, notes: Notes) -> None:
    """Add claims for stern, hull material, how the rudder hangs and preferences."""
    for clause in sheet.clauses:
        if "OTHER_BOAT" in clause.concepts:
            continue
        _stern(clause, notes)
        _rudder(sheet.clean, clause, notes)
        _material(sheet.clean, clause, notes)
        _preference(clause, notes)
        _waterline(clause, notes)
        note_zeros(clause, notes)


def _claim(notes: Notes, clause: Clause, name: str, value: object, concept: str, confidence: float = 0.85) -> None:
    mark = next((m for m in clause.marks if m.concept == concept), None)
    start, end = (mark.start, mark.end) if mark else (clause.start, clause.end)
    notes.claims.append(Claim(name, value, start, end, clause.depth, confidence))


def _stern(clause: Clause, notes: Notes) -> None:
    leans = rake_sign(clause) is not None and any(
        f.dimension == "angle" and _degrees(f) > UPRIGHT_DEG for f in clause.found
    )
    angles = [_degrees(f) for f in clause.found if f.dimension == "angle"]
    upright = "PLUMB" in clause.concepts and bool(angles) and max(angles) <= UPRIGHT_DEG
    for mark in clause.marks:
        if mark.concept in ("REVERSE", "COUNTER") and upright:
            continue  # "nigh on plumb, two degrees at most, leaning aft"
        if mark.concept == "PLUMB" and (leans or is_a_way_of_measuring(clause, mark)):
            continue  # "12 degrees with the vertical, the top further aft"
        if mark.concept == "OPEN" and _of_thing(clause, mark.start):
            continue  # "the pushpit is open in the middle"
        if mark.concept in SIMPLE and not denied(clause, mark.start) and not _of_rudder(clause, mark.start):
            _claim(notes, clause, "boat.stern", SIMPLE[mark.concept], mark.concept)
    sign = rake_sign(clause)
    about = clause.concepts | clause.question | set(clause.topic)
    angled = any(f.dimension == "angle" for f in clause.found) or "LEAN" in clause.concepts
    told = {"TRANSOM", "RAKE"} & about or edge_leans(clause)
    if sign is not None and angled and told and {"LEAN", "RAKE", "TOP"} & about:
        concept = "AFT" if "AFT" in clause.concepts else "FORWARD"
        _claim(notes, clause, "boat.stern", "raked" if sign > 0 else "reverse", concept, 0.8)


def sort_by_rake(notes: Notes) -> None:
    """Add the sort of stern that a rake comes to, where no words name one."""
    rakes = [c for c in notes.claims if c.field == "transom.rake_deg" and isinstance(c.value, float)]
    if not rakes or any(c.field == "boat.stern" for c in notes.claims):
        return
    if len({c.value > 0 for c in rakes}) == 1 and min(abs(c.value) for c in rakes) > UPRIGHT_DEG:
        sort = "raked" if rakes[0].value > 0 else "reverse"
        notes.claims.append(Claim("boat.stern", sort, rakes[0].start, rakes[0].end, rakes[0].depth, 0.7))


def _degrees(found: Found) -> float:
    return abs(found.read.value) if isinstance(found.read, Quantity) else 0.0


def _of_thing(clause: Clause, at: int) -> bool:
    """Say whether what was last named before is an obstacle."""
    named = [m.concept for m in clause.marks if m.end <= at and (is_obstacle(m.concept) or m.concept == "TRANSOM")]
    return bool(named) and is_obstacle(named[-1])


def _of_rudder(clause: Clause, at: int) -> bool:
    before = [m.concept for m in clause.marks if m.end <= at]
    return "RUDDER" in before and "TRANSOM" not in before


def _rudder(clean: str, clause: Clause, notes: Notes) -> None:
    concepts, topic = clause.concepts, frozenset(clause.topic[:3])
    about = "RUDDER" in concepts | topic | clause.question
    if "HUNG_OUT" in concepts and (about or "STICK_OUT" in concepts):
        mark = next(m for m in clause.marks if m.concept == "HUNG_OUT")
        inboard = "HUNG_IN" in concepts and not {"TRANSOM", "POST"} & concepts and "STICK_OUT" not in concepts
        away = denied(clause, mark.start)  # "behind the keel, so not on the transom"
        _claim(
            notes,
            clause,
            "main_rudder.hung",
            "inboard" if inboard or away else "transom",
            "HUNG_OUT",
            0.7 if away else 0.85,
        )
    elif "HUNG_IN" in concepts or ("UNDER" in concepts and about):
        _claim(notes, clause, "main_rudder.hung", "inboard", "HUNG_IN" if "HUNG_IN" in concepts else "UNDER")
    elif (stern := _on_stern(clean, clause)) is not None:
        notes.claims.append(Claim("main_rudder.hung", "transom", stern.start, stern.end, clause.depth, 0.75))
    first = clause.marks[0] if clause.marks else None
    if first and first.concept == "YES" and {"RUDDER", "HUNG_OUT"} & clause.question and "HUNG_OUT" in clause.question:
        _claim(notes, clause, "main_rudder.hung", "transom", "YES", 0.7)


def _on_stern(clean: str, clause: Clause) -> Mark | None:
    """Return the transom that the rudder of the clause is said to be on, with no other thing and no number between."""
    named: Mark | None = None
    for mark in clause.marks:
        if mark.concept == "RUDDER":
            named = named or mark
        elif is_obstacle(mark.concept) or mark.concept in ("AFT", "FORWARD", "NOT", "STOCK", "TRAILING"):
            named = None
        elif mark.concept in ("TRANSOM", "POST") and named is not None and mark.start > named.end:
            counted = any(named.end <= f.start < mark.start for f in clause.found)
            if not counted and _ON.search(clean, max(named.end, mark.start - ON), mark.start):
                return mark
    return None


def _material(clean: str, clause: Clause, notes: Notes) -> None:
    concepts = clause.concepts
    if any(is_obstacle(c) for c in concepts):
        return
    about = {"HULL", "TRANSOM", "THICK", "GRP"} & (concepts | clause.question) or "TRANSOM" in clause.topic
    cored = next((m for m in clause.marks if m.concept == "CORED"), None)
    solid = next((m for m in clause.marks if m.concept == "SOLID"), None)
    elsewhere = bool(DECKS & {w.fold for w in words_of(clean[clause.start : clause.end])})
    about = about or (not elsewhere and any(m and " " in clean[m.start : m.end] for m in (cored, solid)))
    if cored is not None and about and not denied(clause, cored.start):
        _claim(notes, clause, "boat.hull_material", "frp_cored", "CORED")
    elif "SOLID" in concepts and about and not concepts & {"WOOD", "ALU", "STEEL"}:
        _claim(notes, clause, "boat.hull_material", "frp_solid", "SOLID")
    for concept, value in (("ALU", "aluminium"), ("STEEL", "steel"), ("WOOD", "wood")):
        mark = next((m for m in clause.marks if m.concept == concept), None)
        if mark is None or (clause.question and mark.start - clause.start > BESIDE):
            continue
        built = any(c.isspace() for c in clean[mark.start : mark.end]) and "RUDDER" not in concepts  # "of steel"
        whole = concepts | (clause.parent.concepts if clause.parent is not None else frozenset())
        listed = {"YEAR", "DISPLACEMENT", "LOA"} & whole or any(f.dimension == "mass" for f in clause.found)
        listed = listed and _alone(clean, clause, mark)
        asked = clause.question and "HULL" not in concepts
        if built or listed or asked or {"HULL", "BOAT", "DOUBLE"} & whole or of_name(clean, clause.start, mark):
            _claim(notes, clause, "boat.hull_material", value, concept)


def _alone(clean: str, clause: Clause, mark: Mark) -> bool:
    """Say whether commas stand on both sides: "1983, steel, 7.5 t"."""
    low, high = segment(clean, clause, mark)
    low, closed = max(low, clean.rfind("(", low, mark.start) + 1), clean.find(")", mark.end, high)
    high = closed if closed >= 0 else high
    same = [m for m in clause.marks if m.concept == mark.concept and low <= m.start < high]
    rest = (
        clean[low : same[0].start]
        + "".join(clean[a.end : b.start] for a, b in pairwise(same))
        + clean[same[-1].end : high]
    )
    return not rest.strip(" .\n")


def _preference(clause: Clause, notes: Notes) -> None:
    marks = [m for m in clause.marks if m.concept != "YEAR"]
    wish = next((m for m in marks if m.concept in ("PREFER", "AVOID")), None)
    gear = next((m for m in marks if m.concept == "GEAR"), None)
    if wish is None and gear is None:
        return
    if wish is not None and wish.concept == "PREFER" and denied(clause, wish.start):
        return  # "no preference for port or starboard"
    away: Mark | None = None
    told: Mark | None = None
    for mark in marks:
        if is_obstacle(mark.concept):
            away = wish = None  # its side, not the gear's
        elif mark.concept in ("AVOID", "NOT"):
            away = mark
        elif mark.concept == "PREFER":
            away, wish = None, mark if mark is not told else None
        elif mark.concept in SIDES:
            if away is not None and mark.start - away.end <= (FAR if away.concept == "AVOID" else NEAR):
                notes.claims.append(
                    Claim("preferences.avoid", [SIDES[mark.concept]], away.start, mark.end, clause.depth, 0.85)
                )
            elif (
                wish is not None
                and wish.concept == "PREFER"
                and wish.start - mark.end <= BEHIND
                and not _parted(marks, mark, wish)
            ):
                _claim(notes, clause, "preferences.side", SIDES[mark.concept], mark.concept)
                told, wish = wish, None  # the side said first
            away = None


def _parted(marks: list[Mark], side: Mark, wish: Mark) -> bool:
    """Say whether a thing or another side stands between a side and the wish behind it."""
    return any(
        side.end <= m.start < wish.start and (is_obstacle(m.concept) or m.concept in (*SIDES, "NOT")) for m in marks
    )


def _waterline(clause: Clause, notes: Notes) -> None:
    touch = "AT_WATER" if "AT_WATER" in clause.concepts else "JUST_TOUCH"
    around = frozenset(clause.topic) | clause.question
    own = clause.concepts | (around if "RUDDER" not in clause.concepts else frozenset())
    low, high = _place(clause, "BOTTOM"), _place(clause, touch) + CLOSE
    near = [f for f in clause.found if f.dimension == "length" and low <= f.start <= high]
    if {"BOTTOM", touch, "WATER"} <= clause.concepts and {"TRANSOM", "TOP"} & own and not near:
        _claim(notes, clause, "transom.bottom_height_mm", 0.0, touch, 0.8)


def _place(clause: Clause, concept: str) -> int:
    return next((m.start for m in clause.marks if m.concept == concept), clause.start)
