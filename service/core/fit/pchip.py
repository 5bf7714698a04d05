"""Shape-preserving cubic interpolation, row by row: one curve for each row, one query for each row.

The same curve as scipy's PchipInterpolator (F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300),
which the tests hold it against; scipy evaluates every curve at every query, which costs rows squared here.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


def slopes(at: Array, value: Array) -> Array:
    """Return the derivative at each knot. `at` (K,) rising; `value` (..., K)."""
    step = np.diff(at)
    secant = np.diff(value, axis=-1) / step
    if at.size == 2:  # noqa: PLR2004 - two knots make a straight line
        return np.repeat(secant, 2, axis=-1)
    inner = _inner(step, secant)
    first = _end(step[0], step[1], secant[..., 0], secant[..., 1])
    last = _end(step[-1], step[-2], secant[..., -1], secant[..., -2])
    return np.concatenate([first[..., None], inner, last[..., None]], axis=-1)


def _inner(step: Array, secant: Array) -> Array:
    before, after = secant[..., :-1], secant[..., 1:]
    same = before * after > 0
    w1, w2 = 2 * step[1:] + step[:-1], step[1:] + 2 * step[:-1]
    with np.errstate(divide="ignore", invalid="ignore"):
        mean = (w1 + w2) / (w1 / before + w2 / after)
    return np.where(same, mean, 0.0)


def _end(near: float, far: float, first: Array, second: Array) -> Array:
    guess = ((2 * near + far) * first - near * second) / (near + far)
    guess = np.where(np.sign(guess) != np.sign(first), 0.0, guess)
    steep = (np.sign(first) != np.sign(second)) & (np.abs(guess) > 3 * np.abs(first))
    return np.where(steep, 3 * first, guess)


def evaluate(at: Array, value: Array, slope: Array, query: Array) -> tuple[Array, Array]:
    """Return value and derivative at `query` (N,), held inside the knots.

    `value` and `slope` are (K,) for one curve or (N, K) for one a row.
    """
    query = np.clip(query, at[0], at[-1])
    left = np.clip(np.searchsorted(at, query, side="right") - 1, 0, at.size - 2)
    width = at[left + 1] - at[left]
    t = (query - at[left]) / width
    y0, y1 = _pick(value, left), _pick(value, left + 1)
    d0, d1 = _pick(slope, left) * width, _pick(slope, left + 1) * width
    rise = y1 - y0
    a, b = d0 + d1 - 2 * rise, 3 * rise - 2 * d0 - d1
    return y0 + t * (d0 + t * (b + t * a)), (d0 + t * (2 * b + t * 3 * a)) / width


def _pick(table: Array, column: NDArray[np.intp]) -> Array:
    if table.ndim == 1:
        return table[column]
    if table.shape[0] == 1:
        return table[0][column]
    return table[np.arange(table.shape[0]).reshape((-1,) + (1,) * (column.ndim - 1)), column]
