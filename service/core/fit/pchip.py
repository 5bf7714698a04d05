"""Shape-preserving cubic interpolation through measured points.

The same curve as scipy's PchipInterpolator, which the tests hold it against (F. N. Fritsch and J. Butland, SIAM J.
Sci. Stat. Comput. 5 (1984) 300); here it can be called point by point from compiled code.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled

Array = NDArray[np.float64]


@compiled
def slopes_of(at: Array, value: Array) -> Array:
    """Return the derivative at each knot; `at` (K,) rising, `value` (K,)."""
    n = at.size
    out = np.zeros(n)
    if n == 1:
        return out
    step, secant = np.empty(n - 1), np.empty(n - 1)
    for k in range(n - 1):
        step[k] = at[k + 1] - at[k]
        secant[k] = (value[k + 1] - value[k]) / step[k]
    if n == 2:  # noqa: PLR2004 - two knots make a straight line
        out[:] = secant[0]
        return out
    for k in range(1, n - 1):
        out[k] = inner_slope(step[k - 1], step[k], secant[k - 1], secant[k])
    out[0] = end_slope(step[0], step[1], secant[0], secant[1])
    out[n - 1] = end_slope(step[n - 2], step[n - 3], secant[n - 2], secant[n - 3])
    return out


@compiled
def inner_slope(before: float, after: float, first: float, second: float) -> float:
    """Return the derivative at a knot from the steps and the slopes of the straight lines to both sides of it."""
    if first * second <= 0.0:
        return 0.0
    w1, w2 = 2.0 * after + before, after + 2.0 * before
    return (w1 + w2) / (w1 / first + w2 / second)


@compiled
def end_slope(near: float, far: float, first: float, second: float) -> float:
    """Return the derivative at an end knot from the steps and slopes of its own and the next stretch."""
    guess = ((2.0 * near + far) * first - near * second) / (near + far)
    if guess * first <= 0.0:
        return 0.0
    if first * second < 0.0 and abs(guess) > 3.0 * abs(first):
        return 3.0 * first
    return guess


@compiled
def value(at: Array, knots: Array, slopes: Array, query: float) -> tuple[float, float]:
    """Return value and derivative at `query`, held inside the knots."""
    n = at.size
    if n == 1:
        return knots[0], 0.0
    query = min(max(query, at[0]), at[n - 1])
    k, beyond = 0, n - 1
    while beyond - k > 1:
        middle = (k + beyond) // 2
        if query >= at[middle]:
            k = middle
        else:
            beyond = middle
    width = at[k + 1] - at[k]
    return piece(knots[k], knots[k + 1], slopes[k], slopes[k + 1], width, (query - at[k]) / width)


@compiled
def piece(start: float, end: float, first: float, last: float, width: float, t: float) -> tuple[float, float]:
    """Return value and derivative at share t of one stretch, from the values and slopes at its ends."""
    d0, d1 = first * width, last * width
    rise = end - start
    a, b = d0 + d1 - 2.0 * rise, 3.0 * rise - 2.0 * d0 - d1
    return start + t * (d0 + t * (b + t * a)), (d0 + t * (2.0 * b + t * 3.0 * a)) / width
