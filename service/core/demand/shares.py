"""Shares with intervals, trends of counts, and pairs that go together more often than chance would have it."""

from __future__ import annotations

import warnings
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy import special
from statsmodels.genmod.families import Poisson
from statsmodels.genmod.generalized_linear_model import GLM
from statsmodels.stats.proportion import proportion_confint
from statsmodels.tools.sm_exceptions import PerfectSeparationWarning

Floats = NDArray[np.float64]
LEVEL = 0.95
SOME = 1e-9
FEW = 10
"""A trend asks for at least as many pieces; below, its interval says nothing."""
QUARTERS_FOR_TREND = 8


def jeffreys(counts: Floats, totals: Floats, level: float = LEVEL) -> tuple[Floats, Floats]:
    """Return the ends of Jeffreys' interval of each share: quantiles of Beta(x + 1/2, n - x + 1/2), by statsmodels.

    Arrays of one shape, 0 <= x <= n; `level` in (0, 1). The lower end is 0 where x = 0 and the upper 1 where x = n; 0
    to 1 where n = 0. Source: L. D. Brown, T. T. Cai, A. DasGupta (2001), Statistical Science 16(2), 101-133, sec. 4.1.

    >>> low, high = jeffreys(np.array([8.0]), np.array([10.0]))
    >>> round(float(low[0]), 3), round(float(high[0]), 3)
    (0.497, 0.956)
    """
    low, high = proportion_confint(counts, np.maximum(totals, SOME), alpha=1 - level, method="jeffreys")
    return np.where(counts <= 0, 0.0, low), np.where(counts >= totals, 1.0, high)


@dataclass(frozen=True)
class Trend:
    """Growth of a count in a year as a share of itself (0.1: ten per cent more), with its 95 % interval."""

    value: float
    low: float
    high: float


def trend(counts: Floats) -> Trend | None:
    """Return the yearly growth of quarterly counts; None where they are too few to tell.

    A Poisson regression of the count on time with a log link, its errors widened by Pearson's dispersion where that is
    above 1 (quasi-Poisson). Source: P. McCullagh, J. A. Nelder (1989), Generalized Linear Models, 2nd ed., ch. 6 and 9.

    >>> grown = trend(np.array([4.0, 4, 5, 6, 8, 9, 11, 13, 16, 19, 22, 27]))  # twice as many every year
    >>> grown is not None and round(grown.value, 1)
    1.1
    """
    if counts.size < QUARTERS_FOR_TREND or counts.sum() < FEW:
        return None
    years = (np.arange(counts.size) - (counts.size - 1) / 2) / 4
    design = np.column_stack([np.ones_like(years), years])
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", PerfectSeparationWarning)  # counts that are all alike have a growth, too: none
        fitted = GLM(counts, design, family=Poisson()).fit(scale=1.0)
    spread = max(1.0, float(fitted.pearson_chi2) / (counts.size - 2))
    error = float(fitted.bse[1]) * float(np.sqrt(spread))
    half = float(special.ndtri((1 + LEVEL) / 2)) * error
    slope = float(fitted.params[1])
    low, value, high = (float(np.expm1(np.clip(slope + by, -5, 5))) for by in (-half, 0.0, half))
    return Trend(value, low, high)


def lift(both: Floats, one: Floats, other: Floats, total: float) -> tuple[Floats, Floats, Floats]:
    """Return how many times as often one thing goes with another as anything does, with a 95 % interval.

    The share of `one` that has the other, by Jeffreys' interval, over the other's share of all, which is taken as known.
    Arrays of one shape; 0 <= both <= one, 0 < other <= total.

    >>> [round(float(x[0]), 2) for x in lift(np.array([30.0]), np.array([60.0]), np.array([50.0]), 100)]
    [1.0, 0.75, 1.25]
    """
    low, high = jeffreys(both, one)
    usual = other / total
    return both / one / usual, low / usual, high / usual
