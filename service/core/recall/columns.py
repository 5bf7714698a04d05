"""Records as arrays: what each says in every column, and the features in the fleet's own measure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np

from service.core.boat import BoatForm
from service.core.recall.distance import Floats, Rows
from service.core.recall.features import (
    COLUMNS,
    FEATURES,
    OBSTACLES,
    REGISTERED,
    as_number,
    kind_bits,
    read_value,
    said_kinds,
)
from service.core.record import HullModel, Record

PLACE = {path: place for place, path in enumerate(COLUMNS)}
_ENOUGH_TO_SHOW_SPREAD = 20


def said_by(records: Sequence[Record]) -> Floats:
    """Return every column (down) as the records (across) state it, NaN where unknown."""
    said = [[as_number(path, read_value(record.form, path)) for path in COLUMNS] for record in records]
    return np.array(said, np.float64).reshape(len(records), len(COLUMNS)).T.copy()


def asked_by(form: BoatForm, model: HullModel | None) -> Floats:
    """Return the columns of one boat, with what its hull model tells where the form does not."""
    return np.array([[as_number(path, read_value(form, path, model))] for path in COLUMNS])


def with_registered(said: Floats, records: Sequence[Record], hulls: Mapping[str, HullModel]) -> Floats:
    """Return the columns with what hull models tell where the records do not."""
    plain = said.copy()
    for path, name in REGISTERED.items():
        row = plain[PLACE[path]]
        for place in np.flatnonzero(np.isnan(row)).tolist():
            model = hulls.get(records[place].hull or "")
            if model is not None and getattr(model, name) is not None:
                row[place] = as_number(path, read_value(BoatForm(), path, model))
    return plain


def spreads_of(plain: Floats) -> Floats:
    """Return the spread of each feature in the fleet: of numbers from the 5th to the 95th of a hundred.

    Not under half the usual spread, which also stands in where the fleet is too small to show one.
    """
    return np.array([_spread(plain, place) for place in range(len(FEATURES))])


def _spread(plain: Floats, place: int) -> float:
    feature = FEATURES[place]
    if feature.sort not in ("number", "log"):
        return 1.0
    row = _feature(place, plain)
    known = row[~np.isnan(row)]
    if known.size < _ENOUGH_TO_SHOW_SPREAD:
        return feature.spread
    low, high = np.percentile(known, (5, 95))
    return max(float(high - low), feature.spread / 2)


def _feature(place: int, plain: Floats) -> Floats:
    row = plain[PLACE[FEATURES[place].path]]
    return np.log(np.where(row > 0, row, np.nan)) if FEATURES[place].sort == "log" else row


def rows_of(plain: Floats, spreads: Floats, forms: Sequence[BoatForm]) -> Rows:
    """Return boats in the fleet's measure."""
    kinds = [said_kinds(form) for form in forms]
    values = np.full((len(FEATURES), len(forms)), np.nan, np.float32)
    for place, feature in enumerate(FEATURES):
        if feature.path == OBSTACLES:
            values[place] = [np.nan if said is None else 0.0 for said in kinds]
        else:
            values[place] = _feature(place, plain) / spreads[place]
    return Rows(values, np.array([kind_bits(said) for said in kinds], np.uint32))
