"""Two weights of one boat: the one she sails with stands, the one she has empty does not."""

from __future__ import annotations

import re
from collections.abc import Sequence

from service.core.reading.claims import Claim, Notes
from service.core.reading.sheet import Clause, Sheet
from service.core.reading.view import is_obstacle
from service.core.units import Found, Quantity

_LADEN = re.compile(
    r"\b(?:laden|loaded|ready[ -]to[ -](?:sail|go)|ready for sea|in cruising trim|cruising trim|all[ -]up|"
    r"with all our gear|with everything "
    r"aboard|with (?:all )?stores|segelfertig|segelklar|beladen|ausger\u00fcstet|voll ausger\u00fcstet|reisefertig|en charge|charg\u00e9e?|"
    r"en ordre de marche|arm\u00e9e?|cargad[oa]|a plena carga|armad[oa]|en orden de navegaci\u00f3n|"
    r"a pieno carico|caric[ao]|in ordine di marcia|"
    r"a carico|vaarklaar|zeilklaar|geladen|volgeladen|seglingsklar|segelklar|lastad|fullastad|lastet|fullastet|seilklar|turklar|sejlklar|"
    r"fuldt lastet|fuldt udrustet|med alt ombord)\b",
    re.IGNORECASE,
)
_EMPTY = re.compile(
    r"\b(?:empty|light(?:ship)?|unladen|dry|unloaded|leer|leergewicht|unbeladen|\u00e0 vide|l\u00e8ge|"
    r"en rosca|vac\u00ed[oa]|vuot[oa]|a vuoto|"
    r"lege|leeg|onbeladen|tom|tomt|tomvikt|tomvekt|tomv\u00e6gt|olastad|ulastet|brochure|prospekt|"
    r"plaquette|folleto|catalogo|folder|brosjyre|"
    r"broschyr|brochyr)\b",
    re.IGNORECASE,
)
FIELD = "boat.displacement_kg"
LEAST_KG, PAIR, REACH, PAUSE = 800.0, 2, 40, 25
OTHERS = frozenset({"BALLAST", "KEEL", "OTHER_BOAT"})


def settle_weights(sheet: Sheet, notes: Notes) -> None:
    """Keep of two weights, in one thought or in two, the one that is told as laden, or that is not the empty one."""
    claims = [c for c in notes.claims if c.field == FIELD]
    newest = min((c.depth for c in claims), default=0)
    claims = [c for c in claims if c.depth == newest]
    places: list[tuple[Clause, Found]] = []
    for clause in sheet.clauses:
        if any(clause.start <= c.start < clause.end for c in claims) and not clause.foreign:
            lows = {low.start for low, _ in clause.ranges}  # "between 8 and 8.5 tonnes" is one weight
            masses = [f for f in clause.found if f.dimension == "mass" and f.start not in lows]
            places += [(clause, f) for f in masses if _kg(f) >= LEAST_KG]
    places = list({f.start: (c, f) for c, f in places}.values())
    if len(places) != PAIR or _kg(places[0][1]) == _kg(places[1][1]):
        return
    laden, empty = _told(sheet.clean, places, _LADEN), _told(sheet.clean, places, _EMPTY)
    keep = laden if len(laden) == 1 else {0, 1} - empty if not laden and len(empty) == 1 else set()
    if len(keep) == 1 and not keep & empty:
        (clause, found), (_, other) = places[(kept := keep.pop())], places[1 - kept]
        if OTHERS & clause.concepts or any(map(is_obstacle, clause.concepts)) or _kg(found) < _kg(other):
            return
        mine = [c for c in claims if c.start == found.start]
        fresh = mine[0] if mine else Claim(FIELD, _kg(found), found.start, found.end, clause.depth, 0.8)
        notes.claims = [c for c in notes.claims if c not in claims] + [fresh]


def _told(clean: str, places: Sequence[tuple[Clause, Found]], words: re.Pattern[str]) -> set[int]:
    """Return which of two weights a word stands nearest to in its thought."""
    near: set[int] = set()
    for clause in {id(c): c for c, _ in places}.values():
        own = [(i, f) for i, (c, f) in enumerate(places) if c is clause]
        for match in words.finditer(clean, clause.start, clause.end):
            gaps = sorted((_gap(clean, f, match), i) for i, f in own)
            if gaps[0][0] <= REACH:
                near.add(gaps[0][1])
    return near


def _gap(clean: str, found: Found, match: re.Match[str]) -> int:
    """Return how far a word is from a weight; beyond a comma it is further."""
    low, high = (found.end, match.start()) if found.end <= match.start() else (match.end(), found.start)
    return max(0, high - low) + PAUSE * bool(set(",;") & set(clean[low:high]))


def _kg(found: Found) -> float:
    return found.read.value if isinstance(found.read, Quantity) else 0.0
