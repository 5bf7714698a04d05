"""Whether a probability of 0.8 means 0.8: bins of a reliability plot and the error they add up to."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.evaluate.intervals import wilson
from service.core.evaluate.shapes import Bin

Floats = NDArray[np.float64]
Places = NDArray[np.int64]
WIDTH_BINS = 10
MASS_BINS = 8


def width_places(said: Floats, bins: int = WIDTH_BINS) -> Places:
    """Return which of the bins of equal width from 0 to 1 each prediction falls into."""
    return np.minimum((said * bins).astype(np.int64), bins - 1)


def mass_places(said: Floats, bins: int = MASS_BINS) -> Places:
    """Return bins that hold about as many predictions each, lowest first; predictions of one value stay together."""
    cuts = sorted({float(part[-1]) for part in np.array_split(np.sort(said), bins) if part.size})
    return np.searchsorted(np.array(cuts), said)


def binned(said: Floats, true: NDArray[np.bool_], places: Places, width: float | None = None) -> tuple[Bin, ...]:
    """Return the bins that are not empty; they run from their least to their greatest, or by `width` where given."""
    found = []
    for n in np.unique(places).tolist():
        here = places == n
        low, high = (n * width, (n + 1) * width) if width else (float(said[here].min()), float(said[here].max()))
        share = wilson(int(true[here].sum()), int(here.sum()))
        found.append(Bin(low=low, high=high, count=int(here.sum()), said=float(said[here].mean()), came_true=share))
    return tuple(found)


def error(said: Floats, true: NDArray[np.bool_], places: Places) -> float:
    """Return the expected calibration error: the mean gap between said and came true by bin, weighed by how many.

    >>> error(np.array([0.8, 0.8, 0.2]), np.array([True, False, False]), np.array([1, 1, 0]))
    0.26666666666666666
    """
    gaps = np.bincount(places, weights=said - true)
    return float(np.abs(gaps).sum() / max(said.size, 1))
