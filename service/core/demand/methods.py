"""Ways to foretell counts, run over many series side by side: two floors, discounted levels, and three for rare demand.

Series stand in rows, quarters in columns. A series begins in the quarter of its first demand, which is not learned
from: it was chosen for having some. Each method gives, before each quarter, a level (pieces in an average quarter) and
how unsure that level is.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]
PRIOR = 0.5
"""Jeffreys' prior of a Poisson rate, Gamma(1/2, 0): half a piece in no time (H. Jeffreys 1961, Theory of Probability)."""
LEAST = 1e-3


@dataclass(frozen=True)
class Levels:
    """Before each quarter and after the last (one column more than the series): level, and variance of the level.

    `drift`: by how much the variance grows with each quarter further ahead.
    """

    level: Floats
    variance: Floats
    drift: float = 1.0


@dataclass(frozen=True)
class Method:
    """A way to foretell, by name; `floor` for what anybody could do; `seasonal` where the year's course is taken out."""

    name: str
    run: Callable[[Floats, Flags, Floats], Levels]
    floor: bool = False
    seasonal: bool = False


def started(counts: Floats) -> Flags:
    """Return from which quarter on each series is learned from: the one after its first demand."""
    seen: Flags = np.cumsum(counts > 0, axis=1) > 0
    return np.concatenate([np.zeros((counts.shape[0], 1), bool), seen[:, :-1]], axis=1)


def discounted(discount: float) -> Callable[[Floats, Flags, Floats], Levels]:
    """Return the gamma-Poisson level with exponential forgetting; 1 forgets nothing and is the mean.

    The rate is Gamma(a, b); each quarter a -> d·a + y, b -> d·b + e, with e the quarter's part of the year's course.
    Source: J. Q. Smith (1979), J. R. Statist. Soc. B 41(3), 375-387; A. C. Harvey, C. Fernandes (1989), J. Business &
    Economic Statistics 7(4), 407-417. 0 < d <= 1.
    """

    def run(counts: Floats, on: Flags, course: Floats) -> Levels:
        rows, quarters = counts.shape
        level, variance = np.empty((2, rows, quarters + 1))
        a, b = np.zeros(rows), np.zeros(rows)
        for t in range(quarters + 1):
            weight = np.maximum(b, 1.0)
            level[:, t], variance[:, t] = (a + PRIOR) / weight, (a + PRIOR) / weight**2
            if t < quarters:
                a = np.where(on[:, t], discount * a + counts[:, t], a)
                b = np.where(on[:, t], discount * b + course[:, t], b)
        return Levels(level, variance, 1 / discount)

    return run


def last_value(counts: Floats, on: Flags, course: Floats) -> Levels:
    """Return the naive floor: next quarter as the last one. The level is as unsure as one Poisson count is."""
    del course
    known = np.where(on, counts, PRIOR)
    level = np.concatenate([np.full((counts.shape[0], 1), PRIOR), known], axis=1)
    level = np.maximum(level, PRIOR)
    return Levels(level, level.copy(), 1.5)


def croston(alpha: float, *, unbias: bool) -> Callable[[Floats, Flags, Floats], Levels]:
    """Return Croston's method: size of a demand over the time between two, both smoothed with `alpha` in (0, 1).

    With `unbias` times 1 - alpha/2. The first demand and the time up to it begin both. Sources: J. D. Croston (1972),
    Operational Research Quarterly 23(3), 289-303; A. A. Syntetos, J. E. Boylan (2005), Int. J. Forecasting 21(2),
    303-314. The level's variance is that of exponential smoothing of counts, level·alpha/(2 - alpha).
    """

    def run(counts: Floats, on: Flags, course: Floats) -> Levels:
        del on
        rows, quarters = counts.shape
        level = np.empty((rows, quarters + 1))
        size, gap, since = np.full(rows, np.nan), np.full(rows, np.nan), np.zeros(rows)
        for t in range(quarters + 1):
            level[:, t] = np.where(np.isnan(size), PRIOR, size / gap) * (1 - alpha / 2 if unbias else 1)
            if t < quarters:
                y, since = counts[:, t] / course[:, t], since + 1
                here, fresh = y > 0, np.isnan(size)
                size = np.where(here, np.where(fresh, y, size + alpha * (y - size)), size)
                gap = np.where(here, np.where(fresh, since, gap + alpha * (since - gap)), gap)
                since = np.where(here, 0, since)
        level = np.maximum(level, LEAST)
        return Levels(level, level * alpha / (2 - alpha), 1 + alpha / 2)

    return run


def tsb(alpha: float, beta: float) -> Callable[[Floats, Flags, Floats], Levels]:
    """Return the method of Teunter, Syntetos and Babai: the chance of a demand, smoothed each quarter, times its size.

    `beta` smooths the chance, `alpha` the size; both in (0, 1). The first demand begins both, the chance at one over the
    quarters up to it. Source: R. H. Teunter, A. A. Syntetos, M. Z. Babai (2011), European J. Operational Research 214(3),
    606-615.
    """

    def run(counts: Floats, on: Flags, course: Floats) -> Levels:
        del on
        rows, quarters = counts.shape
        level = np.empty((rows, quarters + 1))
        size, chance, since = np.full(rows, np.nan), np.full(rows, np.nan), np.zeros(rows)
        for t in range(quarters + 1):
            level[:, t] = np.where(np.isnan(size), PRIOR, size * chance)
            if t < quarters:
                y, since = counts[:, t] / course[:, t], since + 1
                here, fresh = y > 0, np.isnan(size)
                moved = chance + beta * (here - chance)
                chance = np.where(fresh, np.where(here, 1 / since, np.nan), moved)
                size = np.where(here, np.where(fresh, y, size + alpha * (y - size)), size)
        level = np.maximum(level, LEAST)
        return Levels(level, level * alpha / (2 - alpha), 1 + alpha / 2)

    return run


MEAN, NAIVE = "mean so far", "last quarter again"
FLOORS = (Method(MEAN, discounted(1.0), floor=True), Method(NAIVE, last_value, floor=True))
_PLAIN = (
    Method("slow level", discounted(0.97)),
    Method("level", discounted(0.93)),
    Method("quick level", discounted(0.85)),
    Method("Croston", croston(0.1, unbias=False)),
    Method("Syntetos-Boylan", croston(0.1, unbias=True)),
    Method("Teunter-Syntetos-Babai", tsb(0.1, 0.1)),
)
_SEASONAL = (
    Method("mean, seasonal", discounted(1.0), seasonal=True),
    Method("slow level, seasonal", discounted(0.97), seasonal=True),
    Method("level, seasonal", discounted(0.93), seasonal=True),
)
METHODS = (*FLOORS, *_PLAIN, *_SEASONAL)
