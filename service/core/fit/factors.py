"""What is not known exactly: each measurement, each filled gap and the waterline as one factor with its spread.

A factor gives the nominal value, two points one standard deviation away, and draws. The same assembly turns any
rows of factor values into a `Site`, so nominal, star points and Monte Carlo draws go through one path.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm, get
from service.core.catalogue import Catalogue, Prior
from service.core.recall import Fill

Array = NDArray[np.float64]
Source = Literal["measured", "sister_ships", "neighbours", "prior"]
WATERLINE = "waterline"

HEIGHTS = (
    "transom.top_height_mm", "transom.bottom_height_mm", "transom.step_height_mm",
    "main_rudder.top_height_mm", "main_rudder.bottom_height_mm",
)  # fmt: skip
"""Fields above water: the waterline's error moves them all together."""

ALWAYS = (
    "transom.top_height_mm", "transom.bottom_height_mm", "transom.rake_deg", "transom.width_top_mm",
    "transom.width_waterline_mm", "transom.camber_mm", "main_rudder.stock_aft_mm", "main_rudder.leading_edge_aft_mm",
    "main_rudder.trailing_edge_aft_mm", "main_rudder.top_height_mm", "main_rudder.bottom_height_mm",
    "main_rudder.max_deflection_deg", "boat.displacement_kg", "transom.thickness_mm", "boat.lwl_mm",
)  # fmt: skip
SCOOP = ("transom.step_height_mm", "transom.step_depth_mm", "transom.step_width_mm", "transom.lower_rake_deg")
REFERENCE_LOA_MM = 10_000.0
"""Priors are written for a boat of this length overall."""


@dataclass(frozen=True)
class Factor:
    """One uncertain quantity: `field` names it; `low` and `high` stand one standard deviation off the nominal."""

    field: str
    source: Source
    nominal: float
    low: float
    high: float
    draw: Callable[[np.random.Generator, int], Array]
    weight: float = 1.0
    """How far apart the two points count, where they are not one standard deviation off."""

    @property
    def spread(self) -> float:
        """Return half the distance of the two points: one standard deviation."""
        return (self.high - self.low) / 2


def _cut_to(values: Array, least: float, most: float) -> Array:
    return np.minimum(np.maximum(values, least), most)


def normal(
    field: str, source: Source, mean: float, sd: float, least: float = -math.inf, most: float = math.inf
) -> Factor:
    """Return a normal factor cut to least..most."""

    def draw(rng: np.random.Generator, n: int) -> Array:
        return _cut_to(rng.normal(mean, sd, n), least, most)

    cut = min(max(mean, least), most)
    return Factor(field, source, cut, max(mean - sd, least), min(mean + sd, most), draw)


def empirical(field: str, given: Fill, jitter: float) -> Factor:
    """Return a factor drawn from other boats' values by weight, each blurred by how well such values are known."""
    values = np.array([float(v) for v in given.values])
    weights = np.array(given.weights, dtype=float)
    weights = weights / weights.sum()
    order = np.argsort(values, kind="stable")
    steps = np.cumsum(weights[order]) - weights[order] / 2
    low, middle, high = (float(q) for q in np.interp((0.16, 0.5, 0.84), steps, values[order]))

    def draw(rng: np.random.Generator, n: int) -> Array:
        return rng.choice(values, n, p=weights) + rng.normal(0.0, jitter, n)

    half = math.hypot((high - low) / 2, jitter)
    return Factor(field, given.source, middle, middle - half, middle + half, draw)


def rectangular(
    field: str, source: Source, mean: float, half: float, least: float = -math.inf, most: float = math.inf
) -> Factor:
    """Return a factor that lies anywhere within a stated half-range, cut to least..most (JCGM 100, 4.3.7)."""

    def draw(rng: np.random.Generator, n: int) -> Array:
        return _cut_to(rng.uniform(mean - half, mean + half, n), least, most)

    sd, cut = half / math.sqrt(3), min(max(mean, least), most)
    return Factor(field, source, cut, max(mean - sd, least), min(mean + sd, most), draw)


def measured(form: BoatForm, catalogue: Catalogue, path: str, value: float, *cut: float) -> Factor:
    """Return the factor of a measured field: as far off as was said, else as its method usually is."""
    half = half_range(form, path)
    if half is not None:
        return rectangular(path, "measured", value, half, *cut)
    return normal(path, "measured", value, standard_uncertainty(form, path, catalogue), *cut)


def half_range(form: BoatForm, path: str) -> float | None:
    """Return the half-range that was said of a field, or of the profile, section or obstacle it belongs to."""
    return next((form.uncertainties[name] for name in _whole_of(path) if name in form.uncertainties), None)


def standard_uncertainty(form: BoatForm, path: str, catalogue: Catalogue) -> float:
    """Return one standard deviation of a measured field, in its own unit.

    A half-range that was said is rectangular: a / sqrt(3) (JCGM 100, 4.3.7). Else the method's of the field, of what it
    belongs to, or of all; else `unsaid`. What is said of an obstacle as a whole holds for each of its axes.
    """
    half = half_range(form, path)
    if half is not None:
        return half / math.sqrt(3)
    named = (*_whole_of(path), path.partition(".")[0], "*")
    method = catalogue.method(next((form.methods[name] for name in named if name in form.methods), None))
    return method.kg if path.endswith("_kg") else method.deg if path.endswith("_deg") else method.mm


def _whole_of(path: str) -> tuple[str, ...]:
    """Return a field and what it is part of, as far as that has one unit.

    >>> _whole_of("transom.profile[2].aft_mm")
    ('transom.profile[2].aft_mm', 'transom.profile[2]', 'transom.profile')
    """
    if "]" not in path:
        return (path,)
    point, one = path, path[: path.index("]") + 1]
    whole = one[: one.index("[")]
    return tuple(dict.fromkeys((point, one, *([whole] if "." in whole else []))))


def curve_factors(form: BoatForm, catalogue: Catalogue) -> list[Factor]:
    """Return how far each point of a measured profile, or each level cut, may stand further aft (mm).

    The top edge is exact: it is where everything else is measured from.
    """
    if form.transom.sections:
        paths = [f"transom.sections[{k}].points" for k in range(len(form.transom.sections))]
        return [measured(form, catalogue, path, 0.0) for path in paths]
    points = form.transom.profile or ()
    return [
        measured(form, catalogue, f"transom.profile[{k}].aft_mm", 0.0)
        for k, point in enumerate(points)
        if point.aft_mm != 0.0 or point.below_top_mm != 0.0
    ]


def build(
    form: BoatForm,
    catalogue: Catalogue,
    given: Mapping[str, Fill],
    *,
    stern: str | None,
    hung: Literal["inboard", "transom"] | None,
    loa_mm: float | None,
) -> tuple[list[Factor], list[str]]:
    """Return one factor for each field the fit needs, and the fields that have neither value nor prior."""
    wanted = [p for p in ALWAYS if not (p == "transom.rake_deg" and (form.transom.profile or form.transom.sections))]
    wanted += SCOOP if stern == "scoop" else ()
    wanted += ("transom.post_width_mm",) if stern == "double_ended" else ()
    twin = form.main_rudder.number == 2 or form.main_rudder.spacing_mm is not None  # noqa: PLR2004 - a pair
    wanted += ("main_rudder.spacing_mm",) if twin else ()
    found, unknown = [], []
    for path in wanted:
        factor = _factor(form, catalogue, given, path, (stern, hung, loa_mm))
        if factor is None:
            unknown.append(path)
        else:
            found.append(factor)
    found.append(normal(WATERLINE, "measured", 0.0, catalogue.rules["waterline_tolerance"]))
    return found, unknown


def _factor(
    form: BoatForm,
    catalogue: Catalogue,
    given: Mapping[str, Fill],
    path: str,
    known: tuple[str | None, Literal["inboard", "transom"] | None, float | None],
) -> Factor | None:
    value = get(form, path)
    if value is None:
        value = _from_profile(form, path)
    if value is not None:
        return measured(form, catalogue, path, float(value), *_bounds(path))
    stern, hung, loa = known
    prior = catalogue.rules.prior_of(path, stern, hung)
    if path in given:
        return empirical(path, given[path], _jitter(catalogue, path, prior))
    if prior is None:
        return None
    return normal(path, "prior", prior_mean(prior, loa), prior.spread, *_cut(prior))


def _jitter(catalogue: Catalogue, path: str, prior: Prior | None) -> float:
    """Return how well another boat's value is known here: a sister ship's, but never worse than half of what is usual."""
    method = catalogue.method("sister_ship")
    sd = method.kg if path.endswith("_kg") else method.deg if path.endswith("_deg") else method.mm
    return sd if prior is None else min(sd, prior.spread / 2)


def prior_mean(prior: Prior, loa_mm: float | None) -> float:
    """Return a prior's mean for a boat of that length overall (the reference length where nobody knows)."""
    return prior.mean + prior.per_loa * ((loa_mm or REFERENCE_LOA_MM) - REFERENCE_LOA_MM) / 1000


def _cut(prior: Prior) -> tuple[float, float]:
    least = -math.inf if prior.least is None else prior.least
    return least, math.inf if prior.most is None else prior.most


def _bounds(path: str) -> tuple[float, float]:
    if path.endswith("_kg") or "width" in path or "thickness" in path or "depth" in path:
        return 1.0, math.inf
    return -math.inf, math.inf


def _from_profile(form: BoatForm, path: str) -> float | None:
    """Return top or bottom height where the measured profile (or sections) reach it and nobody gave it apart."""
    rows: Sequence[object] = form.transom.profile or form.transom.sections or ()
    heights = [h for row in rows if (h := getattr(row, "height_mm", None)) is not None]
    below = [b for row in rows if (b := getattr(row, "below_top_mm", None)) is not None]
    if path == "transom.top_height_mm" and heights:
        return float(max(heights))
    if path == "transom.bottom_height_mm" and heights:
        return float(min(heights))
    if path == "transom.bottom_height_mm" and below and form.transom.top_height_mm is not None:
        return form.transom.top_height_mm - float(max(below))
    return None
