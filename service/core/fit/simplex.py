"""A small linear programme, solved exactly: make the smallest of some linear margins as large as a step allows."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.fit.compiled import compiled

Array = NDArray[np.float64]
TINY = 1e-10
PIVOTS = 200


@compiled
def best_step(margin: Array, slope: Array, hard: Array, low: Array, high: Array, count: int) -> tuple[Array, float]:  # noqa: C901 - setting up a table is one thought
    """Return the step d within low..high that maximises t = min over soft rows of margin + slope · d, and t.

    Rows 0..count-1 of `margin` (R,) and `slope` (R, n) are soft, or `hard` (R,) = 1: margin + slope · d >= 0 holds,
    as far as it holds in the corner that suits the hard rows best, where the search begins. Dense primal simplex in
    dictionary form, Bland's rule against cycling; n is at most a handful and R a few dozen.
    """
    n = low.size
    kept, number = _that_can_bind(margin, slope, hard, low, high, count)
    corner, way = _corner(slope, hard, low, high, count)
    rows = number + n
    # columns: how far d_0 .. d_{n-1} have gone from the corner, t (shifted to start feasible), constant
    table = np.zeros((rows + 1, n + 2))
    start = np.inf
    for r in range(number):
        at_corner = margin[kept[r]]
        for j in range(n):
            at_corner += slope[kept[r], j] * corner[j]
            table[r, j] = slope[kept[r], j] * way[j]
        table[r, n + 1] = at_corner
        if hard[kept[r]] == 0.0:
            start = min(start, at_corner)
    if not np.isfinite(start):
        start = 0.0
    for r in range(number):
        if hard[kept[r]] == 0.0:
            table[r, n] = -1.0
            table[r, n + 1] -= start
        else:
            table[r, n + 1] = max(table[r, n + 1], 0.0)
    for j in range(n):
        table[number + j, j] = -1.0
        table[number + j, n + 1] = high[j] - low[j]
    table[rows, n] = 1.0
    outside = np.arange(n + 1)
    basic = np.arange(n + 1, n + 1 + rows)
    _pivot(table, outside, basic, rows, n + 1)
    step = corner.copy()
    t = start
    for r in range(rows):
        if basic[r] < n:
            step[basic[r]] += way[basic[r]] * table[r, n + 1]
        elif basic[r] == n:
            t += table[r, n + 1]
    return step, t


@compiled
def _corner(slope: Array, hard: Array, low: Array, high: Array, count: int) -> tuple[Array, Array]:
    """Return the corner of low..high where the hard rows hold best, taken together, and the way inwards from it (1, -1)."""
    corner, way = low.copy(), np.ones(low.size)
    for j in range(low.size):
        lean = 0.0
        for r in range(count):
            if hard[r] != 0.0:
                lean += slope[r, j]
        if lean > 0.0:
            corner[j], way[j] = high[j], -1.0
    return corner, way


@compiled
def _that_can_bind(
    margin: Array, slope: Array, hard: Array, low: Array, high: Array, count: int
) -> tuple[NDArray[np.intp], int]:
    """Return the rows that can bind somewhere in low..high, and how many: the rest keeps above what the least can reach."""
    kept, worst, most = np.empty(count, np.intp), np.empty(count), np.inf
    for r in range(count):
        least, best = margin[r], margin[r]
        for j in range(low.size):
            one, other = slope[r, j] * low[j], slope[r, j] * high[j]
            least += min(one, other)
            best += max(one, other)
        worst[r] = least
        if hard[r] == 0.0:
            most = min(most, best)
    number = 0
    for r in range(count):
        if worst[r] < (most if hard[r] == 0.0 else 0.0) or (hard[r] == 0.0 and worst[r] == most):
            kept[number] = r
            number += 1
    return kept, number


@compiled
def _pivot(table: Array, outside: NDArray[np.intp], basic: NDArray[np.intp], rows: int, columns: int) -> None:  # noqa: C901 - a pivot is one thought
    """Raise the last row's objective until no column outside the basis can; each row reads basic = row · outside + constant."""
    for turn in range(PIVOTS):
        enter = -1
        best = TINY
        for j in range(columns):
            gain = table[rows, j]
            if gain > TINY and (enter < 0 or (gain > best if turn < PIVOTS // 2 else outside[j] < outside[enter])):
                enter, best = j, gain
        if enter < 0:
            return
        leave, least = -1, np.inf
        for r in range(rows):
            if table[r, enter] < -TINY:
                ratio = table[r, columns] / -table[r, enter]
                if ratio < least - TINY or (ratio < least + TINY and leave >= 0 and basic[r] < basic[leave]):
                    leave, least = r, ratio
        if leave < 0:
            return
        pivot = table[leave, enter]
        for j in range(columns + 1):
            table[leave, j] = -table[leave, j] / pivot
        table[leave, enter] = 1.0 / pivot
        for r in range(rows + 1):
            factor = table[r, enter]
            if r != leave and factor != 0.0:
                table[r, enter] = 0.0
                for j in range(columns + 1):
                    table[r, j] += factor * table[leave, j]
        outside[enter], basic[leave] = basic[leave], outside[enter]
