"""Exact masked weighted Gower distance, shrunk towards the median, over arrays.

    d = (sum_k w_k |delta_k| + L d0) / (sum_k w_k + L)      over the features k that both boats have

Plain masked distances favour records that say little; L d0 takes that away. Exact on purpose: approximate indexes on
filled-in vectors lose the neighbours (see the design notes on matching). Values are kept to the seven digits of a
32-bit number, which is finer than any boat is measured; all arithmetic has 64 bits.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from service.core.boat import STERNS
from service.core.recall.features import FEATURES, STERN, stern_distance, sterns_mix
from service.core.recall.scan import BINS, CLASS, KINDS, NUMBER, STERNS_APART, scan

Floats = NDArray[np.float64]
Places = NDArray[np.int64]
_SORTS = {"number": NUMBER, "log": NUMBER, "class": CLASS, "stern": STERNS_APART, "kinds": KINDS}
SORTS = np.array([_SORTS[feature.sort] for feature in FEATURES])
STERN_PLACE = next(k for k, feature in enumerate(FEATURES) if feature.path == STERN)
_STERN_TABLE = np.array([[stern_distance(a, b) for b in STERNS] for a in STERNS])
MIX = np.array([[sterns_mix(a, b) for b in STERNS] for a in STERNS])
_ALL = np.ones(len(STERNS), np.bool_)
_NOBODY = -2
"""No boat's hull model: one without a model has -1."""


@dataclass(frozen=True, eq=False)
class Rows:
    """Boats as arrays, features down, boats across: `values` scaled (not a number if unknown), `kinds` as bits."""

    values: NDArray[np.float32]
    kinds: NDArray[np.uint32]

    @property
    def size(self) -> int:
        """Return the number of boats."""
        return int(self.values.shape[1])

    @cached_property
    def known(self) -> NDArray[np.bool_]:
        """Return which features each boat has."""
        return ~np.isnan(self.values)

    def some(self, places: Places) -> Rows:
        """Return only the boats at `places`."""
        return Rows(np.ascontiguousarray(self.values[:, places]), self.kinds[places])


@dataclass(frozen=True, eq=False)
class Scanned:
    """The fleet seen from one boat: distances, who can be compared, who is a sister, and how many lie how far."""

    distance: Floats
    comparable: NDArray[np.bool_]
    sister: NDArray[np.bool_]
    bins: Places


@dataclass(frozen=True, eq=False)
class Measure:
    """Weights by feature, in the order of FEATURES, with the shrinkage L and the median distance d0."""

    weights: Floats
    shrink: float
    middle: float

    def scanned(self, rows: Rows, one: Rows, hulls: Places, hull: int | None, least_shared: float) -> Scanned:
        """Return the whole fleet seen from the single boat `one` of hull model number `hull`.

        A boat can be compared where it shares `least_shared` (half of what `one` has where that is less) or is a
        sister ship, and its stern can mix with this one.
        """
        own = float(self.weights @ one.known[:, 0])
        stern = one.values[STERN_PLACE, 0]
        known = not np.isnan(stern)
        found = Scanned(
            np.empty(rows.size), np.empty(rows.size, np.bool_), np.empty(rows.size, np.bool_), np.zeros(BINS, np.int64)
        )
        scan(
            rows.values, rows.kinds, one.values[:, 0].copy(), one.kinds[0], SORTS, self.weights,
            _STERN_TABLE[int(stern)] if known else np.zeros(len(STERNS)), MIX[int(stern)] if known else _ALL,
            STERN_PLACE, self.shrink, self.middle, hulls, _NOBODY if hull is None else hull,
            min(least_shared, own / 2), found.distance, found.comparable, found.sister, found.bins,
        )  # fmt: skip
        return found

    def between(self, deltas: Floats, known: NDArray[np.bool_]) -> tuple[Floats, Floats]:
        """Return distances and shared weights from differences by feature and which of them are known on both sides."""
        shared: Floats = self.weights @ known
        pull: Floats = self.weights @ np.where(known, deltas, 0.0)
        whole = shared + self.shrink
        far = np.divide(pull + self.shrink * self.middle, whole, out=np.zeros_like(pull), where=whole > 0)
        return far, shared


def deltas(rows: Rows, one: Rows) -> tuple[Floats, NDArray[np.bool_]]:
    """Return how far each boat is from `one` in each feature, 0..1, and where both have it; without meaning elsewhere."""
    ours = one.values[:, 0].astype(np.float64)
    theirs = rows.values.astype(np.float64)
    apart: Floats = np.minimum(np.abs(theirs - ours[:, None]), 1.0)
    for k, feature in enumerate(FEATURES):
        if feature.sort == "kinds":
            apart[k] = _kinds_apart(rows.kinds, one.kinds[0])
        elif feature.sort == "class":
            apart[k] = theirs[k] != ours[k]
        elif feature.sort == "stern" and not np.isnan(ours[k]):
            apart[k] = _STERN_TABLE[int(ours[k])][np.nan_to_num(theirs[k]).astype(np.intp)]
    return apart, rows.known & one.known


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
        far, shared = measure.between(*deltas(among, rows.some(np.array([place]))))
        found.append(far[(shared >= least_shared) & (crowd != place)])
    together = np.concatenate(found)
    return float(np.median(together)) if together.size else unknown
