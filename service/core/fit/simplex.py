"""A small linear programme, solved exactly: make the smallest of some linear margins as large as a step allows."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled

Array = NDArray[np.float64]
TINY = 1e-10
PIVOTS = 200
FIRST = 1e4
"""What the lack of a hard row weighs, over a soft margin."""


@compiled
def best_step(margin: Array, slope: Array, hard: Array, low: Array, high: Array, count: int) -> tuple[Array, float]:
    """Return the step d within low..high that maximises t = min over soft rows of margin + slope · d, and t.

    Rows 0..count-1 of `margin` (R,) and `slope` (R, n) are soft, or `hard` (R,) = 1: margin + slope · d >= 0 holds,
    or does not fall where it did not hold before the step. Dense primal simplex in dictionary form, Bland's rule
    against cycling; n is at most a handful and R a few dozen. It begins in a corner of low..high; what hard rows lack there
    is a variable of its own that must go first.
    """
    n = low.size
    kept, number = _that_can_bind(margin, slope, hard, low, high, count)
    corner, way = _corner(slope, hard, low, high, count)
    table, start = _table(margin, slope, hard, kept[:number], corner, way, high - low)
    rows = table.shape[0] - 1
    outside, basic = np.arange(n + 2), np.arange(n + 2, n + 2 + rows)
    _pivot(table, outside, basic, rows, n + 2)
    step = corner.copy()
    t = start
    for r in range(rows):
        if basic[r] < n:
            step[basic[r]] += way[basic[r]] * table[r, n + 2]
        elif basic[r] == n:
            t += table[r, n + 2]
    return step, t


@compiled
def _table(
    margin: Array, slope: Array, hard: Array, kept: NDArray[np.intp], corner: Array, way: Array, room: Array
) -> tuple[Array, float]:
    """Return the table at a corner, last row the objective, and the smallest soft margin there.

    Columns: how far d_0 .. d_{n-1} have gone inwards, t beyond the smallest, what was mended of the hard rows' lack, constant.
    """
    n, number = corner.size, kept.size
    rows = number + n + 1
    table, start, lack = np.zeros((rows + 1, n + 3)), np.inf, 0.0
    for r in range(number):
        row = kept[r]
        there = margin[row] if hard[row] == 0.0 else max(margin[row], 0.0)
        for j in range(n):
            there += slope[row, j] * corner[j]
            table[r, j] = slope[row, j] * way[j]
        table[r, n + 2] = there
        if hard[row] == 0.0:
            table[r, n], start = -1.0, min(start, there)
        else:
            table[r, n + 1], lack = -1.0, max(lack, -there)
    if not np.isfinite(start):
        start = 0.0
    for r in range(number):
        table[r, n + 2] -= start if hard[kept[r]] == 0.0 else -lack
    for j in range(n):
        table[number + j, j], table[number + j, n + 2] = -1.0, room[j]
    table[rows - 1, n + 1], table[rows - 1, n + 2] = -1.0, lack
    table[rows, n], table[rows, n + 1] = 1.0, FIRST if lack > 0.0 else 0.0
    return table, start


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
