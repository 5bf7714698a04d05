"""The fleet's records made ready for comparing: arrays of features, built once."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.recall.distance import Floats, Measure, Rows, middle_distance
from service.core.recall.features import (
    COLUMNS,
    FEATURES,
    OBSTACLES,
    REGISTERED,
    STERN,
    as_number,
    kind_bits,
    read_value,
    said_kinds,
)
from service.core.recall.weights import WEIGHTS, Weights
from service.core.record import HullModel, Record

_ENOUGH_TO_SHOW_SPREAD = 20
_PLACE = {path: place for place, path in enumerate(COLUMNS)}


@dataclass(frozen=True, eq=False)
class Fleet:
    """Records as arrays; build anew where records, hull models or weights change.

    `said` holds every column as the records state it (NaN unknown); `rows` the features, with what hull models tell.
    """

    records: tuple[Record, ...]
    hulls: Mapping[str, HullModel]
    weights: Weights
    said: Floats
    spreads: Floats
    rows: Rows
    measure: Measure
    hull: NDArray[np.int64]
    hull_places: Mapping[str, int]
    speaks_for: Floats
    speaks_against: Floats
    configuration: NDArray[np.int64]
    configurations: tuple[Configuration, ...]
    frequency: Floats

    @classmethod
    def build(cls, records: Sequence[Record], hulls: Mapping[str, HullModel], weights: Weights = WEIGHTS) -> Self:
        """Return the fleet of `records`; `hulls` by id lend what a form lacks. KeyError: a weight for no feature."""
        unknown = set(weights.features) - {feature.path for feature in FEATURES}
        if unknown:
            raise KeyError(f"no feature {min(unknown)!r} to weigh; known: {', '.join(f.path for f in FEATURES)}")
        said = np.array([_columns(r.form) for r in records], np.float64).reshape(len(records), len(COLUMNS)).T.copy()
        plain = _with_registered(said, records, hulls)
        kinds = [said_kinds(r.form) for r in records]
        spreads = np.array([_spread(plain, k) for k in range(len(FEATURES))])
        rows = _rows(plain, spreads, kinds)
        by_feature = np.array([weights.features.get(feature.path, 0.0) for feature in FEATURES])
        middle = middle_distance(rows, by_feature, weights.least_shared)
        hull_places = {name: place for place, name in enumerate(dict.fromkeys(r.hull for r in records if r.hull))}
        chosen = {c: i for i, c in enumerate(dict.fromkeys(r.configuration for r in records))}
        places = np.array([chosen[r.configuration] for r in records], np.int64)
        speaks = np.array([_speaks(r, weights) for r in records], np.float64).reshape(len(records), 2)
        counts = np.bincount(places, weights=speaks[:, 0], minlength=len(chosen))
        return cls(
            tuple(records), dict(hulls), weights, said, spreads, rows, Measure(by_feature, weights.shrink, middle),
            np.array([hull_places.get(r.hull or "", -1) for r in records], np.int64), hull_places,
            speaks[:, 0], speaks[:, 1], places, tuple(chosen), counts / max(counts.sum(), 1e-12),
        )  # fmt: skip

    def ask(self, form: BoatForm, hull: str | None) -> Rows:
        """Return one boat in the fleet's measure, with what its hull model tells where the form does not."""
        model = self.hulls.get(hull) if hull else None
        values = [[as_number(path, read_value(form, path, model))] for path in COLUMNS]
        return _rows(np.array(values), self.spreads, [said_kinds(form)])

    def column(self, path: str) -> Floats:
        """Return the records' own values at `path`; KeyError where the fleet keeps no such column."""
        found: Floats = self.said[_PLACE[path]]
        return found


def _columns(form: BoatForm) -> list[float]:
    return [as_number(path, read_value(form, path)) for path in COLUMNS]


def _with_registered(said: Floats, records: Sequence[Record], hulls: Mapping[str, HullModel]) -> Floats:
    plain = said.copy()
    for path, name in REGISTERED.items():
        row = plain[_PLACE[path]]
        for place in np.flatnonzero(np.isnan(row)).tolist():
            model = hulls.get(records[place].hull or "")
            if model is not None and getattr(model, name) is not None:
                row[place] = as_number(path, read_value(BoatForm(), path, model))
    return plain


def _speaks(record: Record, weights: Weights) -> tuple[float, float]:
    """Return what a record says for and against its configuration, in votes."""
    if record.status == "withdrawn":
        return 0.0, weights.withdrawn
    if record.outcome.fitted_as_proposed is False:
        return 0.0, weights.not_as_proposed
    return weights.status[record.status], 0.0


def _plain(feature_place: int, plain: Floats) -> Floats:
    feature = FEATURES[feature_place]
    row = plain[_PLACE[feature.path]]
    return np.log(np.where(row > 0, row, np.nan)) if feature.sort == "log" else row


def _spread(plain: Floats, place: int) -> float:
    """Return the spread of a number in the fleet: from the 5th to the 95th of a hundred, not under half the usual."""
    feature = FEATURES[place]
    if feature.sort not in ("number", "log"):
        return 1.0
    row = _plain(place, plain)
    known = row[~np.isnan(row)]
    if known.size < _ENOUGH_TO_SHOW_SPREAD:
        return feature.spread
    low, high = np.percentile(known, (5, 95))
    return max(float(high - low), feature.spread / 2)


def _rows(plain: Floats, spreads: Floats, kinds: Sequence[frozenset[str] | None]) -> Rows:
    size = plain.shape[1]
    values, known = np.zeros((len(FEATURES), size)), np.zeros((len(FEATURES), size))
    for place, feature in enumerate(FEATURES):
        if feature.path == OBSTACLES:
            known[place] = [said is not None for said in kinds]
            continue
        row = _plain(place, plain)
        known[place] = ~np.isnan(row)
        values[place] = np.where(np.isnan(row), 0.0, row / spreads[place])
    return Rows(values, known, np.array([kind_bits(said) for said in kinds], np.uint32))


def stern_of(rows: Rows) -> Floats:
    """Return each boat's stern by its place in the list, NaN where unknown."""
    place = next(k for k, feature in enumerate(FEATURES) if feature.path == STERN)
    return np.where(rows.known[place] > 0, rows.values[place], math.nan)
