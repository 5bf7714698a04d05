"""Boats -> precedents -> votes: which records come up for a boat, and what they say a fitter would install."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.recall.differences import differences
from service.core.recall.fleet import Fleet
from service.core.recall.ranking import Ranking, rank
from service.core.recall.shapes import Precedent, Recall, Vote

_LEAST_PROBABILITY = 0.002
_MOST_VOTES = 25
_NAMED_FOR_A_VOTE = 5
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
        votes=tuple(_votes(fleet, ranking)),
        sisters=int(ranking.sister.sum()),
    )


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


def _votes(fleet: Fleet, ranking: Ranking) -> Iterator[Vote]:
    """Give the configurations by their share of the votes, a prior by overall frequency counted in.

    p_c = (v_c + a f_c) / (sum v + sum u + a) * (v_c + b) / (v_c + u_c + b): v votes for, u votes against, f frequency,
    a the prior's and b the doubt's weight. What is voted against loses to no other: the loss stays unassigned.
    """
    weights = fleet.weights
    voters = ranking.nearest(ranking.comparable, weights.voters)
    kernel = np.exp(-((ranking.distance[voters] / weights.bandwidth) ** 2))
    kernel *= np.where(ranking.sister[voters], weights.sister, 1.0)
    size = len(fleet.configurations)
    chosen = fleet.configuration[voters]
    for_it = np.bincount(chosen, weights=kernel * fleet.speaks_for[voters], minlength=size)
    against = np.bincount(chosen, weights=kernel * fleet.speaks_against[voters], minlength=size)
    share = (for_it + weights.prior * fleet.frequency) / (for_it.sum() + weights.prior)
    share *= (for_it + weights.doubt) / (for_it + against + weights.doubt)
    for place in np.argsort(-share, kind="stable")[:_MOST_VOTES]:
        if share[place] < _LEAST_PROBABILITY:
            return
        yield Vote(
            configuration=fleet.configurations[place],
            probability=float(share[place]),
            precedents=_speakers(fleet, voters[(chosen == place) & (fleet.speaks_for[voters] > 0)]),
        )


def _speakers(fleet: Fleet, places: NDArray[np.int64]) -> tuple[str, ...]:
    return tuple(fleet.records[place].reference for place in places[:_NAMED_FOR_A_VOTE])
