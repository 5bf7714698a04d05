"""Which way to foretell was best so far: each is asked for every quarter with what was known before it, and scored.

Series of one kind are judged together, for one alone is too short to tell. A method is used only where it beat the
better floor by more than chance; otherwise the floor is, and the report says so.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray
from scipy import stats

from service.core.demand.methods import FLOORS, METHODS, Levels, Method, started
from service.core.demand.predictive import below, log_mass

Floats = NDArray[np.float64]
KNOWN_FIRST = 8
"""Quarters that come before the first one asked for."""
ASKED = 20
"""Quarters asked for at most: the last ones."""
LEAST_ASKED = 8
"""Quarters that a method has to be asked for before it may go before the floor: fewer may agree by chance."""
OWN = 20.0
"""Quarters of a series' own spread that weigh as much as that of its kind."""
FADES = 0.96
"""What is left of the weight of a quarter's spread after another quarter: half after four years."""
SURE = 1.645
SEASONAL_P = 0.01
COURSE_PRIOR = 8.0
"""Pieces a quarter with which the year's course is drawn towards none."""


@dataclass(frozen=True)
class Panel:
    """Counts by series and quarter; `first` is the first quarter, as four times the year plus the quarter from 0."""

    keys: tuple[tuple[str, int], ...]
    counts: Floats
    first: int

    @property
    def quarters(self) -> int:
        """Return how many quarters there are."""
        return int(self.counts.shape[1])


@dataclass(frozen=True)
class Score:
    """One method over all series-quarters asked for; coverage is that of 80 % and 95 % intervals.

    `covered` counts a count on an interval's end as within; `covered_exactly` by the randomised probability integral
    transform, which alone can meet the nominal for counts.
    """

    method: str
    asked: int
    log_score: float
    error: float
    covered: tuple[float, float]
    covered_exactly: tuple[float, float]


@dataclass(frozen=True)
class Chosen:
    """What is used for series of a kind, why, and how each method did; `pit` are those of the one used."""

    method: Method
    why: str
    scores: tuple[Score, ...] = ()
    pit: Floats = field(default_factory=lambda: np.empty(0))
    season_p: float | None = None


def course(panel: Panel, ahead: int = 0) -> Floats:
    """Return each quarter's part of the year's course, 1 on average, by what was known before it; `ahead` quarters more.

    By the counts of all series together over the last whole years, drawn towards 1; 1 before two whole years.
    """
    totals, count = panel.counts.sum(axis=0), panel.quarters
    found = np.ones(count + ahead)
    for t in range(KNOWN_FIRST, count + ahead):
        known = min(t, count)
        whole = totals[known % 4 : known].reshape(-1, 4)
        sums = whole.sum(axis=0) + COURSE_PRIOR  # in the order of the quarters from known % 4 on
        found[t] = 4 * sums[(t - known % 4) % 4] / sums.sum()
    return found


def season(panel: Panel) -> float | None:
    """Return the chance that the year's course seen is none: Pearson's chi-square over its spread. None under 3 years.

    Source: McCullagh and Nelder (1989), ch. 5 and 9: an F test of the course against what the years leave over.
    """
    totals = panel.counts.sum(axis=0)
    whole = totals[panel.quarters % 4 :].reshape(-1, 4)
    years = whole.shape[0]
    if years < 3 or whole.sum() < 4 * years:  # noqa: PLR2004 - one says nothing, two next to nothing
        return None
    share = whole.sum(axis=0) / whole.sum()
    even = whole.sum(axis=1, keepdims=True) / 4
    kept = even > 0
    expected = np.where(kept, 4 * even * share, 1.0)
    left = np.where(kept & (expected > 0), (whole - expected) ** 2 / np.maximum(expected, 1e-9), 0.0).sum()
    flat = whole.sum() / 4
    seen = ((whole.sum(axis=0) - flat) ** 2 / flat).sum()
    spread = max(1.0, left / (3 * (years - 1)))
    return float(stats.f.sf(seen / 3 / spread, 3, 3 * (years - 1)))


@dataclass(frozen=True)
class Foretold:
    """A method's levels over a panel, with mean and variance of every quarter as foretold before it."""

    levels: Levels
    mean: Floats
    variance: Floats
    spread: Floats
    """Variance over mean of a count about its level, after the last quarter; by series."""


def foretold(panel: Panel, method: Method) -> Foretold:
    """Run a method over a panel."""
    on = started(panel.counts)
    part = np.broadcast_to(course(panel) if method.seasonal else np.ones(panel.quarters), panel.counts.shape)
    levels = method.run(panel.counts, on, part)
    mean = np.maximum(levels.level[:, :-1] * part, 1e-6)
    unsure = levels.variance[:, :-1] * part**2
    learned = on & (np.arange(panel.quarters) >= (KNOWN_FIRST if method.seasonal else 0))
    over = _spread(np.where(learned, (panel.counts - mean) ** 2 - unsure, 0.0), np.where(learned, mean, 0.0))
    return Foretold(levels, mean, mean * over[:, :-1] + unsure, over[:, -1])


def _spread(squares: Floats, means: Floats) -> Floats:
    """Return variance over mean before each quarter and after the last: a series' own, drawn towards that of its kind."""
    mine, weight = (_remembered(x) for x in (squares, means))
    ours = np.maximum(mine.sum(axis=0), 0) + OWN
    kind = ours / (weight.sum(axis=0) + OWN)
    usual = weight / np.maximum(_remembered(np.ones_like(means)), 1)
    own = (mine + OWN * usual * kind) / np.maximum(weight + OWN * usual, 1e-9)
    found: Floats = np.maximum(np.where(weight > 0, own, kind), 1.0)
    return found


def _remembered(values: Floats) -> Floats:
    """Return what is known before each quarter and after the last: the sum so far, of which a little fades each quarter."""
    found = np.zeros((values.shape[0], values.shape[1] + 1))
    for t in range(values.shape[1]):
        found[:, t + 1] = FADES * found[:, t] + values[:, t]
    return found


def asked(panel: Panel) -> NDArray[np.bool_]:
    """Return which series-quarters are asked for: the last ones, of series that have gone on for a year."""
    on = started(panel.counts)
    going = np.cumsum(on, axis=1) > 4  # noqa: PLR2004 - quarters of a year
    going[:, : max(KNOWN_FIRST, panel.quarters - ASKED)] = False
    return going


def choose(panel: Panel, *, seed: int, last: int | None = None) -> Chosen:
    """Return the method to use. `last`: asked on the quarters before that one alone, so that later ones can judge it."""
    known = panel if last is None else Panel(panel.keys, panel.counts[:, :last], panel.first)
    cells = asked(known) if known.quarters > KNOWN_FIRST else np.zeros(known.counts.shape, bool)
    if not cells.any():
        return Chosen(FLOORS[0], f"the floor '{FLOORS[0].name}': there are too few quarters to compare methods")
    p = season(known)
    open_to = [m for m in METHODS if not m.seasonal or (p is not None and p < SEASONAL_P)]
    ran = {m.name: foretold(known, m) for m in open_to}
    logs = {name: log_mass(known.counts, f.mean, f.variance) for name, f in ran.items()}
    means = {name: float(found[cells].mean()) for name, found in logs.items()}
    floor = max(FLOORS, key=lambda m: means[m.name])
    best = max(open_to, key=lambda m: means[m.name])
    gains = np.where(cells, logs[best.name] - logs[floor.name], 0.0).sum(axis=0)[cells.any(axis=0)]
    error = float(gains.std(ddof=1) / np.sqrt(gains.size)) if gains.size > 1 else np.inf
    better = best is not floor and gains.size >= LEAST_ASKED and float(gains.mean()) > SURE * error
    used = best if better else floor
    said = (
        f"'{used.name}', which beat the better floor ('{floor.name}') by {gains.sum() / cells.sum():.3f} in log score"
        if better
        else f"the floor '{used.name}': no method was better than it by more than chance"
    )
    scores = tuple(score(known, ran[m.name], cells, m.name, seed) for m in open_to)
    return Chosen(used, said, scores, pits(known, ran[used.name], cells, seed), p)


def pits(panel: Panel, ran: Foretold, cells: NDArray[np.bool_], seed: int) -> Floats:
    """Return the randomised probability integral transforms: even between 0 and 1 where chances are true.

    Source: C. Czado, T. Gneiting, L. Held (2009), Biometrics 65(4), 1254-1261.
    """
    y, mean, variance = panel.counts[cells], ran.mean[cells], ran.variance[cells]
    low, high = below(y - 1, mean, variance), below(y, mean, variance)
    found: Floats = low + np.random.default_rng(seed).random(y.size) * (high - low)
    return found


def score(panel: Panel, ran: Foretold, cells: NDArray[np.bool_], name: str, seed: int) -> Score:
    """Return how a method did on the series-quarters asked for."""
    y, mean, variance = panel.counts[cells], ran.mean[cells], ran.variance[cells]
    low, high, exact = below(y - 1, mean, variance), below(y, mean, variance), pits(panel, ran, cells, seed)
    tails = (0.1, 0.025)
    return Score(
        method=name,
        asked=int(y.size),
        log_score=float(log_mass(y, mean, variance).mean()),
        error=float(np.abs(y - mean).mean()),
        covered=(_share((high >= tails[0]) & (low < 1 - tails[0])), _share((high >= tails[1]) & (low < 1 - tails[1]))),
        covered_exactly=(_share(np.abs(exact - 0.5) <= 0.4), _share(np.abs(exact - 0.5) <= 0.475)),  # noqa: PLR2004 - 80 and 95 % about the middle
    )


def _share(true: NDArray[np.bool_]) -> float:
    return float(true.mean())
