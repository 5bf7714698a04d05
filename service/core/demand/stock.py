"""Expected demand and reorder points: what a method foretells of each series, put together to pieces of each item."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.demand.backtest import Foretold, Panel, course, foretold
from service.core.demand.methods import Method
from service.core.demand.predictive import in_batches, masses, quantile, quantiles, together

Floats = NDArray[np.float64]
WEEKS = 52.1775 / 4
"""Weeks in a quarter: a mean Gregorian year of 365.2425 days."""
ENDS = tuple((1 + side * level) / 2 for level in (0.8, 0.95) for side in (-1, 1))


@dataclass(frozen=True)
class Expected:
    """Pieces expected in some time, with 80 and 95 % prediction intervals."""

    mean: float
    in_80: tuple[int, int]
    in_95: tuple[int, int]


class Outlook:
    """What is expected of every item of a kind after the panel's last quarter."""

    def __init__(self, panel: Panel, method: Method, quarters: int) -> None:
        """Run the method over the panel; `quarters` is how far ahead is asked at most, at least 1."""
        self.panel, self.method = panel, method
        self.ran: Foretold = foretold(panel, method)
        ahead = course(panel, quarters)[panel.quarters :] if method.seasonal else np.ones(quarters)
        self.course: Floats = ahead
        self.rows: dict[str, list[int]] = defaultdict(list)
        for row, (code, _) in enumerate(panel.keys):
            self.rows[code].append(row)

    def chances(self, code: str, part: Floats) -> Floats:
        """Return the chances of 0, 1, 2, ... pieces over quarters of which `part` counts: (1, 1, 0.5) is two and a half.

        The mean of a series is its level times the sum of the parts, each by the year's course; its variance is that of
        counts about their level and that of the level, which grows with every quarter.
        """
        weighed = part * self.course[: part.size]
        whole, far = float(weighed.sum()), max(float(np.ceil(part.sum())), 1.0)
        levels, spread = self.ran.levels, self.ran.spread
        found = []
        for row in self.rows[code]:
            level = max(float(levels.level[row, -1]), 1e-6)
            unsure = float(levels.variance[row, -1]) * min(levels.drift, 1.5) ** (far - 1)
            mean = level * whole
            each = masses(mean, mean * float(spread[row]) + unsure * whole**2)
            found.append(in_batches(each, self.panel.keys[row][1]))
        return together(found)

    def expected(self, code: str, first: int, last: int) -> Expected:
        """Return the pieces expected in the quarters ahead from `first` to `last`, from 0, both included."""
        part = np.zeros(last + 1)
        part[first:] = 1
        return summed(self.chances(code, part))

    def in_lead_time(self, code: str, weeks: float) -> Floats:
        """Return the chances of 0, 1, 2, ... pieces over so many weeks from now on, at most as far as is asked."""
        quarters = min(weeks / WEEKS, float(self.course.size))
        part = np.clip(quarters - np.arange(int(np.ceil(quarters))), 0, 1)
        return self.chances(code, part)


def summed(chances: Floats) -> Expected:
    """Return mean and intervals of a distribution of pieces."""
    low_80, high_80, low_95, high_95 = quantiles(chances, ENDS)
    return Expected(float((np.arange(chances.size) * chances).sum()), (low_80, high_80), (low_95, high_95))


def reorder_point(chances: Floats, service: float) -> tuple[int, float]:
    """Return the stock at which to order anew, and how likely it lasts until the order comes.

    The least r with P(demand in the lead time <= r) >= `service`, in (0, 1): what is in hand and on order together.
    Source: W. J. Hopp, M. L. Spearman, Factory Physics, ch. 2 (base stock and (Q, r) models, service by G(r)).

    >>> from scipy.stats import poisson
    >>> reorder_point(poisson.pmf(np.arange(60), 10), 0.9)[0]  # their refrigerators: 14 or fewer with 91.7 %
    14
    """
    point = quantile(chances, service)
    return point, float(np.cumsum(chances)[point])
