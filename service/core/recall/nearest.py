"""The records whose boats are most like one, whatever they carry: the distance of recall, without votes."""

from __future__ import annotations

from collections.abc import Collection

import numpy as np

from service.core.boat import BoatForm, Shape
from service.core.recall.differences import differences
from service.core.recall.features import FEATURES
from service.core.recall.fleet import Fleet
from service.core.recall.ranking import rank
from service.core.recall.shapes import Difference


class Near(Shape):
    """A record near a boat: likeness is 1 less the distance; `shared` names the features that both say."""

    record: str
    likeness: float
    sister: bool
    shared: tuple[str, ...]
    differences: tuple[Difference, ...]


def nearest_records(
    fleet: Fleet, form: BoatForm, *, hull: str | None, among: Collection[str] | None = None, limit: int = 20
) -> tuple[Near, ...]:
    """Return the nearest records that can be compared with the boat, nearest first; `among` these where given.

    A record that shares too little with the form is not compared at all, nor is a stern that mixes with no other.
    """
    ranking = rank(fleet, form, hull)
    allowed = ranking.comparable
    if among is not None:
        allowed = allowed & np.fromiter((r.reference in among for r in fleet.records), np.bool_, len(fleet.records))
    one = ranking.one.known[:, 0] > 0
    return tuple(
        Near(
            record=fleet.records[place].reference,
            likeness=float(np.clip(1 - ranking.distance[place], 0, 1)),
            sister=bool(ranking.sister[place]),
            shared=tuple(
                f.path for f, both in zip(FEATURES, one & (fleet.rows.known[:, place] > 0), strict=True) if both
            ),
            differences=differences(fleet, ranking, int(place)),
        )
        for place in ranking.nearest(allowed, limit)
    )
