"""Every record of the fleet ranked for one boat: distance, whether it may be compared, whether it is a sister ship."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.recall.distance import Floats, Places, Rows
from service.core.recall.fleet import Fleet
from service.core.recall.scan import BINS

_FURTHER = 8


@dataclass(frozen=True, eq=False)
class Ranking:
    """`distance` of each record; `comparable` where it shares enough and its stern can mix; `sister` where one hull.

    `pool` holds the places of the nearest comparable records, nearest first; all of them in a fleet that is not large.
    `bins` counts the comparable boats up to each of BINS equal steps of distance.
    """

    one: Rows
    distance: Floats
    comparable: NDArray[np.bool_]
    sister: NDArray[np.bool_]
    pool: Places
    bins: Places

    def nearest(self, among: NDArray[np.bool_], most: int) -> Places:
        """Return the nearest comparable records `among`, nearest first, equal ones in the fleet's order."""
        found = self.pool[among[self.pool]]
        wanted = self.pool.size
        while found.size < most and wanted < self.bins[-1]:  # look further out, eight times as many each time
            wanted = max(_FURTHER * wanted, most)
            found = _within(self.distance, self.comparable & among, self.bins, wanted, most)
        return found[:most]

    @property
    def has_sisters(self) -> bool:
        """Say whether a sister ship can be compared."""
        return bool(self.sister.any())


def rank(fleet: Fleet, form: BoatForm, hull: str | None) -> Ranking:
    """Return the ranking of the whole fleet for a boat; sister ships are comparable whatever they share."""
    one = fleet.ask(form, hull)
    place = fleet.hull_places.get(hull) if hull else None
    seen = fleet.measure.scanned(fleet.rows, one, fleet.hull, place, fleet.weights.least_shared)
    bins = np.cumsum(seen.bins)
    voters = fleet.weights.voters
    pool = _within(seen.distance, seen.comparable, bins, voters, voters)
    return Ranking(one, seen.distance, seen.comparable, seen.sister, pool, bins)


def _within(distance: Floats, among: NDArray[np.bool_], bins: Places, wanted: int, most: int) -> Places:
    """Return the nearest `most` places `among` in the first few bins, which hold `wanted` comparable boats or all."""
    full = int(np.searchsorted(bins, wanted))
    edge = np.inf if full >= BINS - 1 else (full + 1) / BINS
    places = np.flatnonzero((distance < edge) & among)
    if places.size > most:
        far = distance[places]
        places = places[far <= np.partition(far, most - 1)[most - 1]]
    return places[np.argsort(distance[places], kind="stable")][:most]
