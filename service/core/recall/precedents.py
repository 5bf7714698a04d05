"""Boats -> precedents -> votes: which records come up for a boat, and what they say a fitter would install."""

from __future__ import annotations

from typing import Any

import numpy as np

from service.core.boat import STERNS, BoatForm
from service.core.recall.differences import differences
from service.core.recall.distance import STERN_PLACE
from service.core.recall.fleet import Fleet
from service.core.recall.ranking import Ranking, rank
from service.core.recall.shapes import Precedent, Recall
from service.core.recall.votes import votes

_PLACES_FOR_OTHERS = 4  # one place in so many is kept for boats of other models


def recall(fleet: Fleet, form: BoatForm, *, hull: str | None, limit: int = 8) -> Recall:
    """Return the precedents of a boat and the votes for configurations.

    Sister ships (records of the hull model `hull`) come first but are not obeyed: they vote by likeness as all do,
    only heavier, and a quarter of the places is kept for the nearest other boats.
    """
    ranking = rank(fleet, form, hull)
    shown = _shown(ranking, limit)
    return Recall(
        precedents=tuple(_precedent(fleet, ranking, int(place)) for place in shown),
        votes=tuple(votes(fleet, ranking)),
        sisters=int(ranking.sister.sum()),
        **_stern(fleet, ranking),
    )


def _stern(fleet: Fleet, ranking: Ranking) -> dict[str, Any]:
    here = ranking.one.values[STERN_PLACE, 0]
    if np.isnan(here):
        return {"stern": None, "same_stern": None}
    return {"stern": STERNS[int(here)], "same_stern": int((fleet.rows.values[STERN_PLACE] == here).sum())}


def _shown(ranking: Ranking, limit: int) -> list[int]:
    sisters = ranking.nearest(ranking.sister, limit)
    others = ranking.nearest(ranking.comparable & ~ranking.sister, limit)
    kept = min(limit // _PLACES_FOR_OTHERS, others.size)
    sisters = sisters[: limit - kept]
    return [int(place) for place in (*sisters, *others[: limit - sisters.size])]


def _precedent(fleet: Fleet, ranking: Ranking, place: int) -> Precedent:
    record = fleet.records[place]
    model = fleet.hulls.get(record.hull or "")
    said = " ".join(word for word in (record.form.boat.builder, record.form.boat.model) if word)
    return Precedent(
        record=record.reference,
        hull=record.hull,
        hull_name=str(model) if model else said or None,
        year=record.form.boat.year,
        status=record.status,
        likeness=float(np.clip(1 - ranking.distance[place], 0, 1)),
        sister=bool(ranking.sister[place]),
        configuration=record.configuration,
        placement=record.placement,
        differences=differences(fleet, ranking, place),
    )
