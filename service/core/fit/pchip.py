"""Shape-preserving cubic interpolation through measured points.

The same curve as scipy's PchipInterpolator, which the tests hold it against (F. N. Fritsch and J. Butland, SIAM J.
Sci. Stat. Comput. 5 (1984) 300); here it can be called point by point from compiled code.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.fit.compiled import compiled

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
        if secant[k - 1] * secant[k] > 0.0:
            w1, w2 = 2.0 * step[k] + step[k - 1], step[k] + 2.0 * step[k - 1]
            out[k] = (w1 + w2) / (w1 / secant[k - 1] + w2 / secant[k])
    out[0] = _end(step[0], step[1], secant[0], secant[1])
    out[n - 1] = _end(step[n - 2], step[n - 3], secant[n - 2], secant[n - 3])
    return out


@compiled
def _end(near: float, far: float, first: float, second: float) -> float:
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
    k = 0
    while k < n - 2 and query >= at[k + 1]:
        k += 1
    width = at[k + 1] - at[k]
    t = (query - at[k]) / width
    d0, d1 = slopes[k] * width, slopes[k + 1] * width
    rise = knots[k + 1] - knots[k]
    a, b = d0 + d1 - 2.0 * rise, 3.0 * rise - 2.0 * d0 - d1
    return knots[k] + t * (d0 + t * (b + t * a)), (d0 + t * (2.0 * b + t * 3.0 * a)) / width
