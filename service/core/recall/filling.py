"""What a boat's form lacks, lent by sister ships, else by the nearest boats that have it."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.recall.distance import Floats
from service.core.recall.features import CLASSES, COLUMNS, REGISTERED, as_value, read_value
from service.core.recall.fleet import Fleet
from service.core.recall.ranking import Ranking, rank
from service.core.recall.shapes import Fill
from service.core.words import nearest

_ENOUGH_SISTERS = 2
_MOST_SISTERS = 24
_NEIGHBOURS = 12
_ENOUGH_TO_JUDGE = 5
_FAR_OUT = 6.0  # times the median distance from the median: a slip of the pen, not a boat
_SMALLEST_STEP = 0.02  # of the fleet's range, so that agreeing values do not make every other one a slip


def fills(fleet: Fleet, form: BoatForm, *, hull: str | None, wanted: Sequence[str]) -> dict[str, Fill]:
    """Return, for each wanted field that the form lacks, values to draw from; fields nobody has are absent.

    What the hull model's own entry tells comes first, then sister ships (two at least; a single one joins the
    neighbours), then the twelve nearest boats that have it. KeyError names a field that is never lent.
    """
    unknown = [path for path in wanted if path not in COLUMNS]
    if unknown:
        raise KeyError(
            f"{unknown[0]!r} cannot be filled from other boats; did you mean {nearest(unknown[0], COLUMNS)!r}?"
        )
    lacking = [path for path in dict.fromkeys(wanted) if read_value(form, path) is None]
    if not lacking:
        return {}
    ranking = rank(fleet, form, hull)
    found = {path: _registered(fleet, path, hull) or _lent(fleet, ranking, path) for path in lacking}
    return {path: fill for path, fill in found.items() if fill is not None}


def _registered(fleet: Fleet, path: str, hull: str | None) -> Fill | None:
    model = fleet.hulls.get(hull or "")
    if path not in REGISTERED or model is None:
        return None
    value = read_value(BoatForm(), path, model)
    return None if value is None else Fill(field=path, source="sister_ships", values=(value,), weights=(1.0,))


def _lent(fleet: Fleet, ranking: Ranking, path: str) -> Fill | None:
    column = fleet.column(path)
    has = ~np.isnan(column) & ranking.comparable
    sisters = ranking.nearest(has & ranking.sister, _MOST_SISTERS)
    if sisters.size >= _ENOUGH_SISTERS:
        return _fill(fleet, ranking, path, sisters)
    others = ranking.nearest(has & ~ranking.sister, _NEIGHBOURS - sisters.size)
    places = np.concatenate([sisters, others])
    return _fill(fleet, ranking, path, places) if places.size else None


def _fill(fleet: Fleet, ranking: Ranking, path: str, places: NDArray[np.int64]) -> Fill:
    values = fleet.column(path)[places]
    if path not in CLASSES:
        sound = _sound(values)
        places, values = places[sound], values[sound]
    far = ranking.distance[places] - ranking.distance[places].min()
    weights = np.exp(-((far / fleet.weights.whole.bandwidth) ** 2))
    weights *= np.where(ranking.sister[places], fleet.weights.whole.sister, 1.0)
    weights /= weights.sum()
    lent = tuple(value for value in (as_value(path, float(v)) for v in values) if value is not None)
    return Fill(
        field=path,
        source="sister_ships" if ranking.sister[places].all() else "neighbours",
        values=lent,
        weights=tuple(float(w) for w in weights),
        records=tuple(fleet.records[place].reference for place in places),
    )


def _sound(values: Floats) -> NDArray[np.bool_]:
    """Leave out values far outside their fellows (a slipped point, another unit), where there are enough to judge."""
    if values.size < _ENOUGH_TO_JUDGE:
        return np.ones(values.size, np.bool_)
    middle = _median(values)
    off = np.abs(values - middle)
    step = max(_median(off), _SMALLEST_STEP * abs(middle), 1e-9)
    found: NDArray[np.bool_] = off <= _FAR_OUT * step
    return found


def _median(values: Floats) -> float:
    """Return what numpy's own does, for some few numbers that are all known: it spends its time on other cases."""
    ordered, half = np.sort(values), values.size // 2
    return float(ordered[half]) if values.size % 2 else float((ordered[half - 1] + ordered[half]) / 2)
