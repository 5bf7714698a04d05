"""Counts of generated fleets whose rates are known: steady, growing, seasonal, stepping, more spread than chance, rare."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.demand.backtest import Panel

WAYS = ("steady", "growing", "seasonal", "stepping", "spread", "rare")
QUARTERS, ROWS, HELD = 60, 40, 12


def rates(way: str, dice: np.random.Generator) -> NDArray[np.float64]:
    """Return the true mean of every series and quarter."""
    usual = (0.03, 0.08, 0.2) if way == "rare" else (0.1, 0.3, 0.8, 2.0, 5.0, 12.0)
    base: NDArray[np.float64] = np.repeat(dice.choice(usual, ROWS)[:, None], QUARTERS, axis=1)
    t = np.arange(QUARTERS)
    if way == "growing":
        base *= np.exp(0.03 * (t - QUARTERS / 2))
    if way == "seasonal":
        base *= np.array([0.5, 1.6, 1.3, 0.6])[t % 4]
    if way == "stepping":
        at, times = dice.integers(10, QUARTERS - 5, ROWS), dice.choice([0.3, 3.0], ROWS)
        base *= np.where(t[None] >= at[:, None], times[:, None], 1.0)
    return base


def fleet(way: str, seed: int) -> Panel:
    """Return the counts of one fleet; `spread` has two and a half times the variance of chance."""
    dice = np.random.default_rng(seed)
    mean = rates(way, dice)
    counts = dice.negative_binomial(mean / 1.5, 0.4) if way == "spread" else dice.poisson(mean)
    return Panel(tuple((f"{way}-{n}", 1) for n in range(ROWS)), counts.astype(float), 2010 * 4)
