"""Exact masked weighted Gower distance, shrunk towards the median, over arrays.

    d = (sum_k w_k |delta_k| + L d0) / (sum_k w_k + L)      over the features k that both boats have

Plain masked distances favour records that say little; L d0 takes that away. Exact on purpose: approximate indexes on
filled-in vectors lose the neighbours (see the design notes on matching).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from service.core.boat import STERNS
from service.core.recall.features import FEATURES, stern_distance

Floats = NDArray[np.float64]
_STERN_TABLE = np.array([[stern_distance(a, b) for b in STERNS] for a in STERNS])
_BLOCK = 8192  # rows whose working arrays stay in the processor's cache


@dataclass(frozen=True, eq=False)
class Rows:
    """Boats as arrays, features down, boats across: `values` scaled (0 if unknown), `known` 0 or 1, `kinds` as bits."""

    values: Floats
    known: Floats
    kinds: NDArray[np.uint32]

    @property
    def size(self) -> int:
        """Return the number of boats."""
        return int(self.values.shape[1])

    def some(self, places: NDArray[np.int64]) -> Rows:
        """Return only the boats at `places`."""
        return Rows(self.values[:, places], self.known[:, places], self.kinds[places])


@dataclass(frozen=True, eq=False)
class Measure:
    """Weights by feature, in the order of FEATURES, with the shrinkage L and the median distance d0."""

    weights: Floats
    shrink: float
    middle: float

    @cached_property
    def _sorts(self) -> tuple[str, ...]:
        return tuple(feature.sort for feature in FEATURES)

    def between(self, rows: Rows, one: Rows) -> tuple[Floats, Floats]:
        """Return the distance of every boat in `rows` from the single boat `one`, and the weight they share."""
        far, shared = np.empty(rows.size), np.empty(rows.size)
        wanted = [k for k in range(len(FEATURES)) if one.known[k, 0] and self.weights[k] > 0]
        for start in range(0, rows.size, _BLOCK):
            block = slice(start, start + _BLOCK)
            far[block], shared[block] = self._block(rows, one, block, wanted)
        if self.shrink == 0:
            return np.divide(far, shared, out=np.zeros_like(far), where=shared > 0), shared
        return (far + self.shrink * self.middle) / (shared + self.shrink), shared

    def _block(self, rows: Rows, one: Rows, block: slice, wanted: list[int]) -> tuple[Floats, Floats]:
        size = rows.kinds[block].size
        far, shared = np.zeros(size), np.zeros(size)
        for k in wanted:
            share = rows.known[k, block] * self.weights[k]
            shared += share
            share *= self.delta(k, rows, one, block)
            far += share
        return far, shared

    def delta(self, k: int, rows: Rows, one: Rows, block: slice = slice(None)) -> Floats:
        """Return how far the boats are from `one` in feature k, 0..1; without meaning where either is unknown."""
        sort, ours = self._sorts[k], float(one.values[k, 0])
        theirs: Floats = rows.values[k, block]
        if sort == "kinds":
            return _kinds_apart(rows.kinds[block], one.kinds[0])
        if sort == "stern":
            by_stern: Floats = _STERN_TABLE[int(ours)][theirs.astype(np.intp)]
            return by_stern
        if sort == "class":
            return np.asarray(theirs != ours, np.float64)
        apart: Floats = np.minimum(np.abs(theirs - ours), 1.0)
        return apart


def _kinds_apart(theirs: NDArray[np.uint32], ours: np.uint32) -> Floats:
    either = np.bitwise_count(theirs | ours).astype(np.float64)
    both = np.bitwise_count(theirs & ours)
    apart: Floats = np.divide(either - both, either, out=np.zeros(either.size), where=either > 0)
    return apart


def middle_distance(rows: Rows, weights: Floats, least_shared: float, unknown: float = 0.3) -> float:
    """Return d0, the median distance between boats that share enough; `unknown` where no two do.

    Taken over at most 64 boats against 2048, evenly spread through the fleet, so it is the same each time.
    """
    if rows.size < 2:  # noqa: PLR2004 - a distance needs two
        return unknown
    measure = Measure(weights, 0.0, 0.0)
    crowd = np.unique(np.linspace(0, rows.size - 1, 2048).astype(np.int64))
    few = np.unique(np.linspace(0, rows.size - 1, 64).astype(np.int64))
    among = rows.some(crowd)
    found = []
    for place in few:
        far, shared = measure.between(among, rows.some(np.array([place])))
        found.append(far[(shared >= least_shared) & (crowd != place)])
    together = np.concatenate(found)
    return float(np.median(together)) if together.size else unknown
