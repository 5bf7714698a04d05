"""Quantities -> fields: which measure of the boat a number with a unit is, and on which side of zero it lies."""

from __future__ import annotations

import re

from service.core.reading.angles import read_angle, read_mass
from service.core.reading.claims import Claim, Notes, plausible
from service.core.reading.hedges import Hedge, middle
from service.core.reading.overall import BEAM_MM, MATERIALS, read_overall
from service.core.reading.rudders import STERN, Decided, Decision, read_rudder
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.steps import read_step
from service.core.reading.view import View, denied, is_obstacle, is_thing, view
from service.core.units import Found

LABELS = {
    "LOA": "boat.loa_mm",
    "LWL": "boat.lwl_mm",
    "BEAM": "boat.beam_mm",
    "DRAFT": "boat.draft_mm",
}
DATUMS = frozenset({"BOOTSTRIPE", "TOERAIL", "KEEL"})
THIN_MM = 150
TALL_MM = 600
PLATE_MM = 40
POST_MM = 300
MOST_MEASURES = 40
SAID, IMPLIED = 0.9, 0.7
TAKEN_BACK = 8
ABOUT = frozenset({"WATER", "WIDTH", "HEIGHT", "TOP", "FORWARD", "BOTTOM"})
DEEP_MM, RECENT = 500, 9
RUDDERS = frozenset({"RUDDER", "TRAILING", "HUNG_OUT", "HUNG_IN"})
SPOKEN = 4
ONLY_WATER = frozenset({"WATER", "HEIGHT", "MEASURED", "M_TAPE", "BOAT", "MODEL"})
EDGES = frozenset({"TOP", "BOTTOM", "TRANSOM", "POST", "HEIGHT"})
_OF_TWO = re.compile(r"\d[ ]?/[ ]{0,2}$")  # "top / waterline: 2210 / 1730 mm": two labels, two numbers
OF_TWO = 6


def read_measures(sheet: Sheet, notes: Notes, hints: frozenset[str]) -> None:
    """Add a claim or a doubt for each quantity that is plainly a measure of hull, transom or rudder.

    `hints`: what the letter says of the stern as a whole, for a rake that does not say which way.
    """
    for clause in sheet.clauses:
        if len(clause.found) > MOST_MEASURES:
            continue  # a heap of numbers says nothing that could be told apart
        middles = {id(high): middle(low, high) for low, high in clause.ranges}
        for each in clause.found:
            ranged = middles.get(id(each))
            found, hedge = ranged or (each, clause.hedges.get(each.start))
            foreign = elsewhere(clause, found.start) or _of_obstacle(sheet.clean, clause, found)
            paired = not clause.apart and bool(
                _OF_TWO.search(sheet.clean, max(clause.start, found.start - OF_TWO), found.start)
            )
            if (
                found.shared
                or paired
                or foreign
                or _denied(clause, found)
                or any(each is low for low, _ in clause.ranges)
            ):
                continue
            seen = view(sheet.clean, clause, found)
            if found.dimension == "length":
                decided = _length(seen, found, hints)
            elif found.dimension == "angle":
                decided = read_angle(seen, clause, hints)
            elif found.dimension == "mass":
                decided = read_mass(seen, found)
            else:
                decided = None
            if decided is not None:
                implied = found.dimension == "mass" and "DISPLACEMENT" not in seen.near
                _note(sheet, notes, clause, (found, hedge, IMPLIED if implied else SAID), decided)


def elsewhere(clause: Clause, at: int) -> bool:
    """Say whether words at `at` are about another boat: it is named in the clause, and ours not in between."""
    others = [m for c in (clause, clause.parent) if c is not None for m in c.marks if m.concept == "OTHER_BOAT"]
    ours = [m for m in clause.marks if m.concept == "OURS"]
    return any(not any(o.start < mine.start <= at for mine in ours) for o in others)


def _of_obstacle(clean: str, clause: Clause, found: Found) -> bool:
    """Say whether an obstacle is the subject: named before the quantity with no comma between."""
    named = [m for m in clause.marks if is_obstacle(m.concept) and m.end <= found.start]
    return bool(named) and not set(",;:") & set(clean[named[-1].end : found.start])


def _note(
    sheet: Sheet, notes: Notes, clause: Clause, said: tuple[Found, Hedge | None, float], decided: Decided
) -> None:
    (found, hedge, sure), (name, sign) = said, decided
    text = sheet.text[found.start : found.end]
    if isinstance(sign, str):
        notes.doubt(found.start, name, sign, text, plausible(name, found))
        return
    values = plausible(name, found, sign)
    if "WITHDRAW" in clause.concepts and _withdrawn(sheet.clean, clause, found):
        notes.doubt(found.start, name, "withdrawn", text, values)
    elif len(values) == 1:
        notes.claims.append(Claim(name, values[0], found.start, found.end, clause.depth, sure, hedge))
    else:
        notes.doubt(found.start, name, "ambiguous", text, values)


def _denied(clause: Clause, found: Found) -> bool:
    """Say whether it is named only to be put right: "not 1.21 m", "instead of 4 t"."""
    instead = any(m.concept == "INSTEAD" and 0 <= found.start - m.end <= TAKEN_BACK for m in clause.marks)
    return instead or denied(clause, found.start, TAKEN_BACK)


def _withdrawn(clean: str, clause: Clause, found: Found) -> bool:
    """Say whether it is what is taken back: "forget the 3 ft 2", not "that was wrong, it is 3 ft 9"."""
    before = [m for m in clause.marks if m.concept == "WITHDRAW" and m.end <= found.start]
    return bool(before) and not set(",:;") & set(clean[before[-1].end : found.start])


# --- lengths -------------------------------------------------------------------------------------------


def _length(seen: View, found: Found, hints: frozenset[str]) -> Decision:
    free = {"LENGTH", "BOAT", "MEASURED", "MODEL", "HULL"}  # "9.40 long by 3.05 beam", "steel, 10.20 m overall"
    plain = not set(seen.before) - free - MATERIALS
    for concept in seen.own_after if plain else seen.before:
        sticks = concept == "DRAFT" and "BOAT" not in seen.left  # one word for both
        sticks = sticks and (seen.thing in ("RUDDER", "TRANSOM") or is_obstacle(seen.thing or ""))
        sticks = sticks and "STICK_OUT" in seen.near
        sticks = sticks or (concept == "DRAFT" and seen.thing == "STEP" and "DEPTH" in seen.near)
        if concept in LABELS and not sticks and (concept not in ("DRAFT", "BEAM") or plausible(LABELS[concept], found)):
            return LABELS[concept], 1.0
    thing = seen.thing
    if thing == "STEP" and "THICK" in seen.near and "STEP" not in seen.near:
        thing = None  # the plate's, not the step's of the thought before
    if {"WIDTH", "TOP"} <= seen.near and "TRANSOM" in seen.left and not any(map(is_thing, seen.near)):
        thing = "TRANSOM"  # "the transom leans 10 degrees over the platform, and it is 2.20 m wide at the top"
    if thing is not None and is_obstacle(thing):
        return None
    if thing == "STEP" and "STEP" not in seen.near and "TOP" in seen.near:
        thing = "TRANSOM"  # "the riser above the step leans 9 degrees and its top edge is 1.18 m up"
    if thing == "STEP" or ("STOCK" in seen.near and {"FORWARD", "AFT"} & seen.near):
        return (
            read_step(seen) if thing == "STEP" else read_rudder(seen)
        )  # "the post comes up 31 in ahead of the transom"
    if (
        thing == "COCKPIT" and not seen.near & STERN
    ):  # the sole's edge bears the bracket on an open stern, and there alone
        sole = "OPEN" in hints and {"WATER"} <= seen.near and "TOP" in seen.near
        return ("transom.top_height_mm", 1.0) if sole else None
    overall = read_overall(seen, found)
    particulars = "PARTICULARS" in hints and seen.whole <= {"WIDTH", "BOAT", "YEAR", "HULL"}
    if "WIDTH" in seen.before and particulars and min(plausible("boat.beam_mm", found), default=0.0) >= BEAM_MM:
        return "boat.beam_mm", 1.0
    return overall or read_rudder(seen) or _thickness(seen, found) or _width(seen, found) or _height(seen, found)


def _thickness(seen: View, found: Found) -> Decision:
    if seen.after[:2] == ("THICK", "WIDTH"):  # "the sternpost is 8 cm thick athwartships"
        return ("transom.post_width_mm", 1.0) if plausible("transom.post_width_mm", found) else None
    low, high = plausible("transom.thickness_mm", found), THIN_MM
    close = next((c for c in (*seen.before, *seen.after) if is_thing(c) and c not in ("BOAT", "HULL")), None)
    thing = close if "THICK" in seen.near else seen.thing
    if not low or max(low) > high or thing not in (None, "TRANSOM", "POST"):
        return None
    if "THICK" in seen.near or ("THICK" in seen.left and not seen.near & {"WATER", "TOP", "WIDTH"}):
        return "transom.thickness_mm", 1.0
    beside = {"TRANSOM", "POST", "HULL"} & seen.near and not seen.near & {
        "WATER",
        "WIDTH",
        "HEIGHT",
        "TOP",
        "AFT",
        "FORWARD",
    }
    named = seen.whole & MATERIALS or "HULL" in (*seen.before[:1], *seen.after[:1])  # "the skin is 5 mm"
    plate = named and beside and max(low) <= PLATE_MM
    beside_it = (
        not seen.before and bool({"SOLID", "CORED"} & set(seen.topic[:2])) and seen.topic[0] in MATERIALS
    )  # "solid glass, 12 mm"
    solid = (seen.near & {"SOLID", "CORED"} or beside_it) and not seen.near & {"WATER", "WIDTH", "HEIGHT"}
    hull = (
        seen.before[:1] == ("HULL",) and max(low) <= PLATE_MM and not seen.near & ABOUT and "RUDDER" not in seen.whole
    )
    skin = hull or (seen.whole <= MATERIALS | {"HULL", "YEAR"} and bool(seen.whole - {"YEAR"}) and max(low) <= PLATE_MM)
    asked = "THICK" in seen.question and not seen.near - MATERIALS - {"YEAR"}
    return ("transom.thickness_mm", 1.0) if plate or solid or skin or asked else None


def _width(seen: View, found: Found) -> Decision:  # noqa: PLR0911 - one return for each way a thickness or width is told
    wide = "WIDTH" in seen.near or (
        "WIDTH" in seen.left and seen.near & {"TOP", "WATER", "BOTTOM"} and "HEIGHT" not in seen.near
    )
    if not wide:
        return None
    if "LOA" in seen.left and not seen.left & {"TRANSOM", "POST"} and not seen.near & {"TOP", "BOTTOM", "WATER"}:
        return ("boat.beam_mm", 1.0) if min(plausible("boat.beam_mm", found), default=0.0) >= BEAM_MM else None
    thin = max(plausible("transom.post_width_mm", found), default=0.0) <= POST_MM and seen.after[:1] == ("WIDTH",)
    if seen.thing == "POST" and ("TOP" not in seen.near or thin):
        return "transom.post_width_mm", 1.0
    if seen.thing in ("TRANSOM", "POST") or "TRANSOM" in seen.topic:
        if "WATER" in seen.near and "TOP" not in seen.near:
            return "transom.width_waterline_mm", 1.0
        if "TOP" in seen.near | seen.left:
            return "transom.width_top_mm", 1.0
        return None
    if "TOP" in seen.near:
        return "transom.width_top_mm", 1.0
    if "WATER" in seen.near:
        return "transom.width_waterline_mm", 1.0
    return None


def _plain_height(seen: View) -> Decision:
    """Return an edge's height where one word stands for the rest: "height out of the water", "at the lower edge: 11 cm"."""
    apart = seen.near | seen.left
    if {"HEIGHT", "WATER"} <= seen.near and seen.thing in (None, "TRANSOM", "POST"):
        return ("transom.top_height_mm", 1.0) if not apart & (DATUMS | {"BELOW", "STEP", "BOTTOM"}) else None
    edge = next((c for c in seen.topic if c in ("TOP", "BOTTOM")), "")
    if seen.whole <= ONLY_WATER and "WATER" in seen.near and edge == "TOP" and "TRANSOM" in seen.topic[:SPOKEN]:
        return "transom.top_height_mm", 1.0  # "I take the lip as the top. It sits 52 cm above the water."
    sole = "TOP" in seen.near and "OPEN" in seen.near  # "the cockpit sole ends 20 inches above the water"
    if (
        "ENDS" in seen.near
        and seen.above
        and not sole
        and "TRANSOM" in seen.topic
        and "RUDDER" not in seen.topic[:SPOKEN]
    ):
        return "transom.bottom_height_mm", 1.0  # "it ends 8 cm above that"
    if {"ENDS", "WATER"} <= seen.near and seen.near & {"TRANSOM", "HULL", "POST"} and not seen.near & {"TOP", "RUDDER"}:
        return "transom.bottom_height_mm", seen.way  # "the skin ends 4 cm above the water"
    if seen.whole <= EDGES and seen.near & {"TOP", "BOTTOM"} and "WATER" in seen.topic[:SPOKEN]:
        return f"transom.{'top' if 'TOP' in seen.near else 'bottom'}_height_mm", 1.0
    return None


def _height(seen: View, found: Found) -> Decision:  # noqa: C901, PLR0911, PLR0912 - one return for each datum
    if seen.thing == "RUDDER" or (is_obstacle(seen.subject or "") and not seen.near & STERN):
        return None
    if "DROP" in seen.before:
        return None  # from edge to edge
    if seen.on_rail and {"WATER", "TOP"} <= seen.near:
        return "transom.top_height_mm", "other_datum"
    if "STEP" in seen.near and "TOP" in seen.near and "WATER" not in seen.near:
        return "transom.top_height_mm", "other_datum"
    plainly = _plain_height(seen)
    if plainly is not None:
        return plainly
    whole = (
        seen.whole if seen.alone else seen.near | seen.left | (seen.whole - {"TOP", "BOTTOM"})
    )  # the edge is told near
    for level in (seen.near, seen.near | seen.left, whole | seen.question):
        datum = level & DATUMS
        stern = bool(level & STERN) or "TRANSOM" in seen.topic or "POST" in seen.topic
        if not stern and not level & {"TOP", "BOTTOM"}:
            continue
        if seen.thing in DATUMS and "TOP" not in seen.near:
            return None
        if datum and level & {"TOP", "BOTTOM"}:
            return "transom.top_height_mm", "other_datum"
        plain = (
            seen.after[:1] == ("WATER",)
            and seen.before[-1:] == ("TRANSOM",)
            and not seen.near & {"TOP", "BOTTOM", "BELOW"}
        )
        if plain and min(plausible("transom.top_height_mm", found), default=0.0) >= TALL_MM:
            return "transom.top_height_mm", 1.0  # "transom vertical, 0.96 m above the water"
        if "WATER" not in level:
            if level == seen.near and {"HEIGHT", "TRANSOM"} <= level:
                return "transom.top_height_mm", "ambiguous"  # above the water, or from edge to edge?
            continue
        begins = {"BEGIN", "WATER"} <= seen.near and stern and "TOP" not in seen.near  # "the transom begins 8 cm above"
        deep = min(plausible("main_rudder.bottom_height_mm", found), default=0.0) > DEEP_MM and "BELOW" in seen.near
        if deep and RUDDERS & set(seen.topic[:RECENT]) and "TRANSOM" not in seen.near:
            return "main_rudder.bottom_height_mm", seen.way  # no transom goes down so far
        own = (
            seen.near if "TOP" not in seen.before else frozenset(seen.before)
        )  # "the top is 0.94 m up and the bottom ..."
        if begins or "BOTTOM" in own | (level if "TOP" not in level else frozenset()):
            return "transom.bottom_height_mm", seen.way
        if "TOP" in level or "HEIGHT" in level:
            return "transom.top_height_mm", 1.0
    return None
