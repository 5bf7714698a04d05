"""Every record of the fleet ranked for one boat: distance, whether it may be compared, whether it is a sister ship."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.recall.distance import Floats, Places, Rows, Scanned
from service.core.recall.fleet import Fleet
from service.core.recall.scan import BINS


@dataclass(frozen=True, eq=False)
class Ranking:
    """`distance` of each record; `comparable` where it shares enough and its stern can mix; `sister` where one hull.

    `pool` holds the places of the nearest comparable records, nearest first; all of them in a fleet that is not large.
    """

    one: Rows
    distance: Floats
    comparable: NDArray[np.bool_]
    sister: NDArray[np.bool_]
    pool: Places

    def nearest(self, among: NDArray[np.bool_], most: int) -> Places:
        """Return the nearest comparable records `among`, nearest first, equal ones in the fleet's order."""
        found = self.pool[among[self.pool]]
        if found.size >= most:
            return found[:most]
        places = np.flatnonzero(among & self.comparable)
        if places.size > most:
            far = self.distance[places]
            places = places[far <= np.partition(far, most - 1)[most - 1]]
        return places[np.argsort(self.distance[places], kind="stable")][:most]

    @property
    def has_sisters(self) -> bool:
        """Say whether a sister ship can be compared."""
        return bool(self.sister.any())


def rank(fleet: Fleet, form: BoatForm, hull: str | None) -> Ranking:
    """Return the ranking of the whole fleet for a boat; sister ships are comparable whatever they share."""
    one = fleet.ask(form, hull)
    place = fleet.hull_places.get(hull) if hull else None
    seen = fleet.measure.scanned(fleet.rows, one, fleet.hull, place, fleet.weights.least_shared)
    return Ranking(one, seen.distance, seen.comparable, seen.sister, _pool(seen, fleet.weights.voters))


def _pool(seen: Scanned, most: int) -> Places:
    """Return the nearest `most` that can be compared: those of the first few bins, put in order."""
    enough = np.cumsum(seen.bins)
    full = int(np.searchsorted(enough, most))
    edge = np.inf if full >= BINS - 1 else (full + 1) / BINS
    places = np.flatnonzero((seen.distance < edge) & seen.comparable)
    return places[np.argsort(seen.distance[places], kind="stable")][:most]
