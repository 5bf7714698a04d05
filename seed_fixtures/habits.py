"""How fitters and dealers of the demo fleet choose, in words and in numbers.

The habits:

1. Short and plain. A short hinge beats a long arm, an arm beats struts, no pad beats a thick one; two brackets of one
   kind are liked better than two kinds. A bracket made for something else (a quarter hinge on a flat transom) is a
   makeshift.
2. Brackets well apart. Under half a metre between collars nobody is happy; the lower one is liked low but dry, the
   overhang of the blade short.
3. The shaft ends a hand or two above the deck and is the shortest that does, except with dealers who ship to where
   the seas are long: they take the next longer one and cut nothing.
4. About six in ten sit off the centreline (common practice, no source): because a ladder is to be kept, or because of
   clean water beside the main rudder. One dealer puts nearly everything to starboard; one insists on the middle while
   anything fits there.
5. A thing that may be moved is moved; one that is to be kept is gone round.
6. What went on the last sister ship is tried first: the drawings are there.
7. Nobody weighs all this exactly: each choice carries a fitter's mood.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from seed_fixtures.arithmetic import Kit, Way, blocked, nearest_shaft
from seed_fixtures.boats import Boat
from seed_fixtures.dice import Rng, happens
from seed_fixtures.ways import gear_for, longer, ways

SIDE_STEPS = (300.0, 350.0, 400.0, 450.0, 500.0, 550.0, 600.0, 650.0)
ARM_HALF = 95.0
OFF_CENTRE_ANYWAY = 0.47
MOOD = 0.2
TRIED_BEFORE = 0.45
"""How much better liked a pair of brackets is that went on an earlier sister ship."""
Brackets = tuple[str, str]


@dataclass(frozen=True)
class Dealer:
    """Who sold it, and what he always does."""

    name: str
    country: str
    language: str
    share: float
    side: str = "any"
    long_shafts: bool = False
    hates_struts: bool = False
    careful: float = 0.5


DEALERS = (
    Dealer("Saltgate Marine", "GB", "en", 0.16),
    Dealer("Drumcarra Rigging", "IE", "en", 0.05, hates_struts=True),
    Dealer("Segelboden Lillnäs", "SE", "sv", 0.10, side="starboard", careful=0.7),
    Dealer("Bootsladen Ahrenkoog", "DE", "de", 0.13, side="centre", careful=0.8),
    Dealer("Accastillage Port-Kerdual", "FR", "fr", 0.10, careful=0.4),
    Dealer("Scheepsuitrusting Ossewaard", "NL", "nl", 0.09, careful=0.7),
    Dealer("Nautica Sant Aldric", "ES", "es", 0.05, careful=0.3),
    Dealer("Tidewrack Supply", "US", "en", 0.09, careful=0.4),
    Dealer("Northlatch Rigging", "US", "en", 0.06, long_shafts=True),
    Dealer("Totara Reach Chandlers", "NZ", "en", 0.05, long_shafts=True, careful=0.6),
    Dealer("Båtutstyr Hellvågen", "NO", "nb", 0.08),
    Dealer("Sklep Morwinek", "PL", "pl", 0.04, careful=0.4),
)
"""Shares add up to one; `careful` is how likely this dealer measures with tape and level rather than by eye."""


@dataclass(frozen=True)
class Choice:
    """What was chosen, why there, and what came second."""

    way: Way
    reason: str
    second: Way | None


def cost(way: Way, boat: Boat, dealer: Dealer) -> float:
    """Return how little a fitter likes a way (habits 1 and 2); nought would be perfect, one is a clear dislike."""
    spacing = way.upper_height - way.lower_height
    kinds = {code.split("-")[0] for code in (way.lower, way.upper)}
    total = 0.0022 * way.reach + 0.02 * way.pads + 1.1 * way.struts
    total += 0.004 * max(0.0, 500.0 - spacing) + 0.002 * max(0.0, way.lower_height - 350.0)
    total += 0.004 * max(0.0, 190.0 - way.lower_height)
    total += 0.35 * (len(kinds) > 1) + 0.0012 * max(0.0, way.length - 1470.0)
    total += (
        0.9
        * sum(code.startswith("quarter") for code in (way.lower, way.upper))
        * (boat.stern.kind != "double_ended" or way.offset == 0)
    )
    total += 0.5 * sum(code.startswith(("riser", "hinge-drop")) for code in (way.lower, way.upper))
    return total + 3.0 * way.struts * dealer.hates_struts


def choose(boat: Boat, dealer: Dealer, kit: Kit, rng: Rng, usual: Brackets | None = None) -> Choice | None:
    """Return what this dealer's fitter puts on the boat; None where nothing in the catalogue will go on.

    `usual` is the pair of brackets that went on most of the earlier sister ships.
    """
    gear = gear_for(boat, kit)
    if gear is None:
        return None
    for offset, reason in _places(boat, dealer, kit, rng):
        found = ways(boat, gear, offset, kit)
        if not found:
            continue
        mood = rng.gumbel(0.0, MOOD, len(found))
        known = np.array([TRIED_BEFORE * ((way.lower, way.upper) == usual) for way in found])
        order = np.argsort(np.array([cost(way, boat, dealer) for way in found]) - mood - known)
        best = [found[int(i)] for i in order[:2]]
        if dealer.long_shafts:
            best = [_with_longer(way, kit) for way in best]
        return Choice(best[0], reason, best[1] if len(best) > 1 else None)
    return None


def _with_longer(way: Way, kit: Kit) -> Way:
    return Way(**{**way.__dict__, "shaft": longer(way, kit)})


def _places(boat: Boat, dealer: Dealer, kit: Kit, rng: Rng) -> list[tuple[float, str]]:
    """Return the places to try, best liked first, each with the reason that will stand in the record."""
    gear = gear_for(boat, kit)
    if gear is None:
        return []
    in_the_way = blocked(boat, 0.0, ARM_HALF, nearest_shaft(boat, gear, 0.0, kit), kit)
    wants_off = happens(rng, OFF_CENTRE_ANYWAY)
    sides = _sides(boat, dealer, rng)
    why = f"clear of the {in_the_way.kind}" if in_the_way else "clean water beside the rudder"
    beside = []
    for side in sides:
        clear = [
            side * step
            for step in SIDE_STEPS
            if not blocked(boat, side * step, ARM_HALF, nearest_shaft(boat, gear, side * step, kit), kit)
        ]
        further = clear[3:6:2] if boat.rudder.hung == "transom" else clear[2:3]
        beside += [(place, why) for place in (*clear[:1], *further)]
    middle = [] if in_the_way else [(0.0, "on the centreline")]
    if dealer.side == "centre" or (not wants_off and dealer.side == "any"):
        return middle + beside
    return beside + middle


def _sides(boat: Boat, dealer: Dealer, rng: Rng) -> tuple[int, ...]:
    if dealer.side == "starboard" and happens(rng, 0.97):  # habit 4
        return (1, -1)
    kept = [thing for thing in boat.things if thing.keep and thing.side in ("port", "starboard")]
    if kept:
        return (1, -1) if kept[0].side == "port" else (-1, 1)
    return (1, -1) if happens(rng, 0.5) else (-1, 1)  # no leaning
