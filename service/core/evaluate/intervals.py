"""Intervals that hold a figure with 95 % confidence."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from service.core.evaluate.shapes import Estimate

Floats = NDArray[np.float64]
Z = 1.959963984540054
RESAMPLES = 500


def wilson(hits: int, count: int) -> Estimate:
    """Return a share with Wilson's score interval (E. B. Wilson 1927); 0 to 1 where nothing was counted.

    >>> one = wilson(8, 10)
    >>> round(one.low, 3), round(one.high, 3)
    (0.49, 0.943)
    """
    if count == 0:
        return Estimate(value=0.0, low=0.0, high=1.0)
    share = hits / count
    whole = 1 + Z**2 / count
    middle = (share + Z**2 / (2 * count)) / whole
    half = Z / whole * math.sqrt(share * (1 - share) / count + Z**2 / (4 * count**2))
    return Estimate(value=share, low=max(0.0, middle - half), high=min(1.0, middle + half))


def resampled(
    figure: Callable[[NDArray[np.int64]], float], groups: NDArray[np.int64], *, seed: int, repeats: int = RESAMPLES
) -> Estimate:
    """Return a figure over cases with its percentile bootstrap interval (B. Efron 1979).

    `figure` is given the places of cases. Whole groups are drawn: cases of one hull model are not independent.
    """
    value = figure(np.arange(groups.size))
    names, inverse = np.unique(groups, return_inverse=True)
    members = [np.flatnonzero(inverse == n) for n in range(names.size)]
    dice = np.random.default_rng(seed)
    drawn = [
        figure(np.concatenate([members[n] for n in dice.integers(0, names.size, names.size)])) for _ in range(repeats)
    ]
    low, high = np.percentile(drawn, (2.5, 97.5))
    return Estimate(value=value, low=float(min(low, value)), high=float(max(high, value)))
