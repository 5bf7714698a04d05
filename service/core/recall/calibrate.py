"""Making 0.8 mean 0.8: how sharply votes are to be taken, found on records that came later than those that vote.

Kernels are learned on the earlier part of the fleet; the later part is asked one by one, once as it is and once as if
its hull models were new; mixture and sharpness are those under which what was installed then was likeliest.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import NamedTuple

import numpy as np
from scipy.optimize import minimize

from service.core.recall.distance import Floats
from service.core.recall.fleet import Fleet
from service.core.recall.learn import learned_kernels
from service.core.recall.menu import Makes
from service.core.recall.ranking import rank
from service.core.recall.votes import Ballot, ballot, sharpened
from service.core.recall.weights import WEIGHTS, Weights
from service.core.record import HullModel, Record

EARLIER = 0.6
GROUPS = 5
_LEAST = 1e-6
_SOFT, _SHARP = 0.2, 3.0


class Trial(NamedTuple):
    """A ballot on a boat and the place of what was installed on it."""

    ballot: Ballot
    truth: int


def by_date(records: Sequence[Record]) -> list[Record]:
    """Return the records in order of date, undated ones first, those of one day by reference."""
    return sorted(records, key=lambda r: (r.date or date.min, r.reference))


def hull_groups(records: Sequence[Record], groups: int) -> list[set[str | None]]:
    """Return the hull models in groups of about as many records each, whole models together; the same every time."""
    counts: dict[str | None, int] = {}
    for record in records:
        counts[record.hull] = counts.get(record.hull, 0) + 1
    found: list[set[str | None]] = [set() for _ in range(groups)]
    sizes = [0] * groups
    for hull in sorted(counts, key=lambda h: (-counts[h], h or "")):
        least = sizes.index(min(sizes))
        found[least].add(hull)
        sizes[least] += counts[hull]
    return [group for group in found if group]


def learned(
    records: Sequence[Record],
    hulls: Mapping[str, HullModel],
    start: Weights = WEIGHTS,
    *,
    makes: Makes | None = None,
    version: str = "learned",
) -> Weights:
    """Return weights learned and calibrated on `records`, beginning from `start`. TooFewError where they are too few."""
    ordered = by_date(records)
    cut = round(EARLIER * len(ordered))
    earlier, later = ordered[:cut], [r for r in ordered[cut:] if r.status == "installed"]
    before = learned_kernels(Fleet.build(earlier, hulls, start, makes=makes))
    trials = _trials(earlier, later, hulls, before, makes)
    whole = learned_kernels(Fleet.build(ordered, hulls, start, makes=makes))
    return _calibrated(whole, trials).model_copy(update={"version": version})


def _trials(
    earlier: Sequence[Record],
    later: Sequence[Record],
    hulls: Mapping[str, HullModel],
    weights: Weights,
    makes: Makes | None,
) -> list[Trial]:
    found = trials(Fleet.build(earlier, hulls, weights, makes=makes), later)
    for group in hull_groups(later, GROUPS):
        others = Fleet.build([r for r in earlier if r.hull not in group], hulls, weights, makes=makes)
        found += trials(others, [r for r in later if r.hull in group])
    return found


def trials(fleet: Fleet, asked: Sequence[Record]) -> list[Trial]:
    """Return the ballots on `asked`, those left out whose configuration is not on the fleet's menu."""
    menu = {one: place for place, one in enumerate(fleet.menu.configurations)}
    return [
        Trial(ballot(fleet, rank(fleet, record.form, record.hull)), menu[record.configuration])
        for record in asked
        if record.configuration in menu
    ]


def _calibrated(weights: Weights, found: Sequence[Trial]) -> Weights:
    """Return the weights with mixture and sharpness under which the trials' truths are likeliest."""
    if not found:
        return weights

    widest = max(t.ballot.whole.size for t in found)
    whole, mixed, kept = (
        np.stack([np.pad(getattr(t.ballot, name), (0, widest - t.ballot.whole.size)) for t in found])
        for name in ("whole", "mixed", "kept")
    )
    news = np.array([[t.ballot.news] for t in found])
    lonely = np.array([[t.ballot.alone] for t in found])
    truth = (np.arange(len(found)), np.array([t.truth for t in found]))

    def cost(point: Floats) -> float:
        share, with_sisters, alone = point
        said = sharpened(whole, mixed, kept, news, share, np.where(lonely, alone, with_sisters))
        return -float(np.log(np.maximum(said[truth], _LEAST)).mean())

    begin = np.array([weights.whole_share, weights.sharpness, weights.sharpness_alone])
    bounds = ((0.0, 0.9), (_SOFT, _SHARP), (_SOFT, _SHARP))
    share, sharp, alone = minimize(cost, begin, method="L-BFGS-B", bounds=bounds, options={"maxiter": 25}).x
    return weights.model_copy(
        update={"whole_share": float(share), "sharpness": float(sharp), "sharpness_alone": float(alone)}
    )
