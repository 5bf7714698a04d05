"""The fleet's records made ready for comparing: arrays of features, built once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Self

import numpy as np

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.recall.columns import PLACE, asked_by, rows_of, said_by, spreads_of, with_registered
from service.core.recall.distance import Floats, Measure, Places, Rows, middle_distance
from service.core.recall.features import FEATURES
from service.core.recall.menu import Choices, Makes, Menu
from service.core.recall.weights import PARTS, WEIGHTS, Kernel, Part, Weights
from service.core.record import HullModel, Record


@dataclass(frozen=True, eq=False)
class Fleet:
    """Records as arrays; build anew where records, hull models, weights or what can be had change.

    `said` holds every column as the records state it (NaN unknown); `rows` the features, with what hull models tell;
    `refused` what was put forward for a record and then not fitted.
    """

    records: tuple[Record, ...]
    hulls: Mapping[str, HullModel]
    weights: Weights
    said: Floats
    spreads: Floats
    rows: Rows
    measures: Mapping[Part, Measure]
    hull: Places
    hull_places: Mapping[str, int]
    speaks_for: Floats
    speaks_against: Floats
    refused: tuple[tuple[int, Configuration], ...]
    choices: Mapping[Part, Choices]
    menu: Menu

    @classmethod
    def build(
        cls,
        records: Sequence[Record],
        hulls: Mapping[str, HullModel],
        weights: Weights = WEIGHTS,
        *,
        makes: Makes | None = None,
        refused: Mapping[str, Sequence[Configuration]] | None = None,
    ) -> Self:
        """Return the fleet of `records`; `hulls` by id lend what a form lacks.

        `makes` says which configurations can be had (all that were ever seen, where nobody says); `refused`, by
        reference, what was put forward for a record in an earlier state and replaced.
        """
        said = said_by(records)
        plain = with_registered(said, records, hulls)
        spreads = spreads_of(plain)
        rows = rows_of(plain, spreads, [record.form for record in records])
        speaks = np.array([_speaks(r, weights) for r in records], np.float64).reshape(len(records), 2)
        choices = {part: Choices.of(part, records, speaks[:, 0]) for part in PARTS}
        hull_places = {name: place for place, name in enumerate(dict.fromkeys(r.hull for r in records if r.hull))}
        return cls(
            records=tuple(records),
            hulls=dict(hulls),
            weights=weights,
            said=said,
            spreads=spreads,
            rows=rows,
            measures={part: _measure(weights.part(part), rows, weights) for part in PARTS},
            hull=np.array([hull_places.get(r.hull or "", -1) for r in records], np.int64),
            hull_places=hull_places,
            speaks_for=speaks[:, 0],
            speaks_against=speaks[:, 1],
            refused=tuple((n, one) for n, r in enumerate(records) for one in (refused or {}).get(r.reference, ())),
            choices=choices,
            menu=Menu.of(choices["whole"], choices["brackets"], choices["shaft"], makes),
        )

    @property
    def measure(self) -> Measure:
        """Return what likeness is measured by."""
        return self.measures["whole"]

    def ask(self, form: BoatForm, hull: str | None) -> Rows:
        """Return one boat in the fleet's measure, with what its hull model tells where the form does not."""
        model = self.hulls.get(hull) if hull else None
        return rows_of(asked_by(form, model), self.spreads, [form])

    def column(self, path: str) -> Floats:
        """Return the records' own values at `path`; KeyError where the fleet keeps no such column."""
        found: Floats = self.said[PLACE[path]]
        return found


def by_feature(kernel: Kernel) -> Floats:
    """Return a kernel's weights in the order of FEATURES."""
    return np.array([kernel.features.get(feature.path, 0.0) for feature in FEATURES])


def _measure(kernel: Kernel, rows: Rows, weights: Weights) -> Measure:
    features = by_feature(kernel)
    return Measure(features, weights.shrink, middle_distance(rows, features, weights.least_shared))


def _speaks(record: Record, weights: Weights) -> tuple[float, float]:
    """Return what a record says for and against its configuration, in votes.

    What stands on a boat speaks for itself even where it is not what was proposed: it is the proposal that failed.
    """
    if record.status == "withdrawn":
        return 0.0, weights.withdrawn
    if record.outcome.fitted_as_proposed is False and record.status != "installed":
        return 0.0, weights.failed
    return weights.status[record.status], 0.0
