"""Distributions of counts to come: negative binomial, with the mean and the spread a method gives; Poisson at the limit."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray
from scipy import special

Floats = NDArray[np.float64]
SMALL = 1e-9


def shaped(mean: Floats, variance: Floats) -> tuple[Floats, Floats]:
    """Return size r and success probability p of the negative binomial with this mean and variance, arrays of one shape.

    mean >= 0; a variance below the mean is taken for Poisson's, which is what r -> infinity gives.
    Source: N. L. Johnson, A. W. Kemp, S. Kotz (2005), Univariate Discrete Distributions, 3rd ed., ch. 5.
    """
    mean = np.maximum(mean, SMALL)
    over = np.maximum(variance - mean, 1e-6 * mean)
    size = mean * mean / over
    return size, size / (size + mean)


def log_mass(count: Floats, mean: Floats, variance: Floats) -> Floats:
    """Return the log of the chance of exactly `count`, a whole number >= 0.

    >>> round(float(np.exp(log_mass(np.array(10.0), np.array(10.0), np.array(10.0)))), 4)  # Poisson
    0.1251
    """
    size, p = shaped(mean, variance)
    choose = special.gammaln(count + size) - special.gammaln(size) - special.gammaln(count + 1)
    found: Floats = choose + size * np.log(p) + special.xlog1py(count, -p)
    return found


def below(count: Floats, mean: Floats, variance: Floats) -> Floats:
    """Return the chance of at most `count`; 0 for a count below nought."""
    size, p = shaped(mean, variance)
    found: Floats = np.where(count < 0, 0.0, special.betainc(size, np.maximum(count, 0) + 1, p))
    return found


def masses(mean: float, variance: float) -> Floats:
    """Return the chances of 0, 1, 2, ... up to where less than one in a million is left."""
    most = int(mean + 12 * np.sqrt(max(variance, mean)) + 20)
    counts = np.arange(most + 1, dtype=np.float64)
    found = np.exp(log_mass(counts, np.array(mean), np.array(variance)))
    whole: Floats = found / found.sum()
    return whole


def in_batches(each: Floats, pieces: int) -> Floats:
    """Return the chances of 0, 1, 2, ... pieces where every one counted needs `pieces` of them."""
    found = np.zeros((each.size - 1) * pieces + 1)
    found[::pieces] = each
    return found


def together(parts: list[Floats]) -> Floats:
    """Return the chances of the sum of independent counts."""
    found = np.ones(1)
    for part in parts:
        found = _convolved(found, part)
    whole: Floats = found / found.sum()
    return whole


SHORT = 500
"""Up to here sums are added up one by one; beyond, the Fourier transform is quicker by far."""


def _convolved(one: Floats, other: Floats) -> Floats:
    if min(one.size, other.size) < SHORT:
        return np.convolve(one, other)
    whole = one.size + other.size - 1
    size = 1 << (whole - 1).bit_length()
    found = np.fft.irfft(np.fft.rfft(one, size) * np.fft.rfft(other, size), size)[:whole]
    return np.maximum(found, 0.0)


def quantile(chances: Floats, share: float) -> int:
    """Return the least count that is not exceeded with a chance of at least `share`, in (0, 1).

    >>> quantile(np.array([0.5, 0.3, 0.2]), 0.8)
    1
    """
    return quantiles(chances, (share,))[0]


def quantiles(chances: Floats, shares: Sequence[float]) -> list[int]:
    """Return the same for several shares."""
    return [int(at) for at in np.searchsorted(np.cumsum(chances), np.array(shares) - 1e-12)]
