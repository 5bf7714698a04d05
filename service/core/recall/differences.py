"""What pulls two boats apart, named: from the same numbers that make the distance and nothing else."""

from __future__ import annotations

import numpy as np

from service.core.recall.distance import Rows, deltas
from service.core.recall.features import COLUMNS, FEATURES, OBSTACLES, as_value, bit_kinds
from service.core.recall.fleet import Fleet
from service.core.recall.ranking import Ranking
from service.core.recall.shapes import Difference, Value

_LEAST_SHARE = 0.03
_MOST = 6
_COLUMN_SET = frozenset(COLUMNS)


def differences(fleet: Fleet, ranking: Ranking, place: int) -> tuple[Difference, ...]:
    """Return the features both boats have that differ, largest share of the distance first, six at most."""
    theirs, ours = fleet.rows.some(np.array([place])), ranking.one
    apart, known = deltas(theirs, ours)
    pulls = {k: float(fleet.measure.weights[k] * apart[k, 0]) for k in range(len(FEATURES)) if known[k, 0]}
    total = sum(pulls.values())
    if total <= 0:
        return ()
    largest = sorted(pulls, key=lambda k: (-pulls[k], k))[:_MOST]
    return tuple(
        Difference(
            field=FEATURES[k].path,
            theirs=_value(fleet, k, theirs, ours),
            ours=_value(fleet, k, ours, theirs),
            share=pulls[k] / total,
        )
        for k in largest
        if pulls[k] / total >= _LEAST_SHARE
    )


def _value(fleet: Fleet, k: int, one: Rows, other: Rows) -> Value:
    """Return one boat's value in the form's unit; of obstacles, the kinds that only it has."""
    feature = FEATURES[k]
    if feature.path == OBSTACLES:
        return ", ".join(bit_kinds(int(one.kinds[0] & ~other.kinds[0]))) or None
    scaled = float(one.values[k, 0]) * float(fleet.spreads[k])
    value = as_value(feature.path, float(np.exp(scaled)) if feature.sort == "log" else scaled)
    return round(value, 1) if isinstance(value, float) else value
