"""The likelihood that weights are learned by, and its slope, in compiled code: hundreds of thousands of pairs a step.

Everything compiled stands in this one file, because numba notices a change of the file that holds a function and not
of a file that holds what it calls. What is unknown is not a number, which alone differs from itself.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import regrouped

Floats = NDArray[np.float64]
_SILENT = 1e-12
"""A vote of less than this part of a vote moves nothing."""


@regrouped
def _distances(
    apart: NDArray[np.float32], weights: Floats, shrink: float, middle: float, far: Floats, whole: Floats
) -> None:
    """Write the distance of one boat from all, and the weight it shares with each, shrinkage included."""
    far[:] = shrink * middle
    whole[:] = shrink
    for k in range(weights.size):
        for j in range(far.size):
            known = apart[k, j] == apart[k, j]
            far[j] += weights[k] * apart[k, j] if known else 0.0
            whole[j] += weights[k] if known else 0.0
    for j in range(far.size):
        far[j] = far[j] / whole[j] if whole[j] > 0.0 else 0.0


@regrouped
def _slopes(apart: NDArray[np.float32], by_far: Floats, far: Floats, slope: Floats) -> None:
    """Add what the distances' slopes are worth to the weights' slopes."""
    for k in range(apart.shape[0]):
        total = 0.0
        for j in range(far.size):
            total += by_far[j] * (apart[k, j] - far[j]) if apart[k, j] == apart[k, j] else 0.0
        slope[k] += total


@regrouped
def likelihood(
    apart: NDArray[np.float32],
    votes: Floats,
    sister: NDArray[np.bool_],
    same: NDArray[np.bool_],
    frequency: Floats,
    weights: Floats,
    rest: Floats,
    shrunk: Floats,
    slope: Floats,
) -> float:
    """Return the mean log likelihood of what each asked record chose, half with its sister ships and half without.

    `apart` is asked by features by voting. `rest` holds bandwidth, a sister's weight and the prior; `shrunk` the
    shrinkage and the median distance. The slope by the logarithms of weights and rest is written into `slope`.
    """
    asked, voting = votes.shape
    h, s, a = rest[0], rest[1], rest[2]
    features = weights.size
    slope[:] = 0.0
    total = 0.0
    far, whole, cast_, by_far = np.empty(voting), np.empty(voting), np.empty(voting), np.empty(voting)
    for i in range(asked):
        _distances(apart[i], weights, shrunk[0], shrunk[1], far, whole)
        right = a * frequency[i]
        right_apart, every, every_apart = right, a, a
        for j in range(voting):
            cast_[j] = 0.0
            if votes[i, j] > 0.0:
                one = np.exp(-((far[j] / h) ** 2)) * votes[i, j]
                cast_[j] = one
                if sister[i, j]:
                    every += s * one
                    right += s * one if same[i, j] else 0.0
                else:
                    every += one
                    every_apart += one
                    right += one if same[i, j] else 0.0
                    right_apart += one if same[i, j] else 0.0
        total += np.log(right / every) + np.log(right_apart / every_apart)
        slope[features + 2] += a * (frequency[i] / right - 1 / every + frequency[i] / right_apart - 1 / every_apart)
        by_far[:] = 0.0
        for j in range(voting):
            if cast_[j] > _SILENT:
                agrees = 1.0 if same[i, j] else 0.0
                if sister[i, j]:
                    push = (agrees / right - 1 / every) * s * cast_[j]
                    slope[features + 1] += push
                else:
                    push = (agrees / right - 1 / every + agrees / right_apart - 1 / every_apart) * cast_[j]
                slope[features] += 2 * push * (far[j] / h) ** 2
                by_far[j] = -2 * push * far[j] / (h * h) / whole[j]
        _slopes(apart[i], by_far, far, slope)
    slope[:features] *= weights
    slope /= 2 * asked
    return float(total / (2 * asked))
