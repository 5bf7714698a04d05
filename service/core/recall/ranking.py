"""Every record of the fleet ranked for one boat: distance, whether it may be compared, whether it is a sister ship."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.boat import STERNS, BoatForm
from service.core.recall.distance import Floats, Rows
from service.core.recall.features import sterns_mix
from service.core.recall.fleet import Fleet, stern_of

_MIX = np.array([[sterns_mix(a, b) for b in STERNS] for a in STERNS])


@dataclass(frozen=True, eq=False)
class Ranking:
    """`distance` of each record; `comparable` where it shares enough and its stern can mix; `sister` where one hull."""

    one: Rows
    distance: Floats
    comparable: NDArray[np.bool_]
    sister: NDArray[np.bool_]

    def nearest(self, among: NDArray[np.bool_], most: int) -> NDArray[np.int64]:
        """Return the places of the nearest records `among`, nearest first, equal ones in the fleet's order."""
        places = np.flatnonzero(among)
        if places.size > most:
            far = self.distance[places]
            places = places[far <= np.partition(far, most - 1)[most - 1]]
        return places[np.argsort(self.distance[places], kind="stable")][:most]


def rank(fleet: Fleet, form: BoatForm, hull: str | None) -> Ranking:
    """Return the ranking of the whole fleet for a boat; sister ships are comparable whatever they share."""
    one = fleet.ask(form, hull)
    distance, shared = fleet.measure.between(fleet.rows, one)
    place = fleet.hull_places.get(hull or "", -2)
    sister = fleet.hull == place
    own = float(fleet.measure.weights @ one.known[:, 0])
    enough = (shared >= min(fleet.weights.least_shared, own / 2)) & (shared > 0)
    comparable = enough | sister
    stern = float(stern_of(one)[0])
    if not np.isnan(stern):
        theirs = stern_of(fleet.rows)
        mixes = np.append(_MIX[int(stern)], True)  # the last place stands for an unknown stern
        comparable &= mixes[np.where(np.isnan(theirs), -1, theirs).astype(np.intp)]
    return Ranking(one, distance, comparable, sister & comparable)
