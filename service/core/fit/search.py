"""The best placement of one configuration: the largest smallest scaled margin, and then the next.

From a start, the margins are modelled by straight lines (see `pieces`), the best step of that model is taken within a
trust region (`simplex`), and the region grows or shrinks by how true the model was: a sequential linear programme for
a minimax, as in K. Madsen, Math. Programming Study 3 (1975). A compass search with shrinking steps then polishes the
lexicographic aim, which tells placements apart that the smallest margin alone does not.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled, inlined
from service.core.fit.bits import NEAR
from service.core.fit.checks import (
    CEILING,
    MARGIN,
    check,
    check_metal,
    check_mounts,
    check_plain,
    check_seated,
    check_uprights,
    smallest,
)  # fmt: skip
from service.core.fit.kit import Kit, M
from service.core.fit.mounts import Seated, best_pad, seat
from service.core.fit.pieces import BRACKET, COUNT, HARD, OTHERS, SOFT, pad_slopes, pieces
from service.core.fit.simplex import best_step
from service.core.fit.site import Site
from service.core.fit.terms import T, Terms

Array = NDArray[np.float64]
Y, X, LOWER_AT, UPPER_AT, BOTTOM, PAD_LOW, PAD_UP = range(7)
PROBE = 0.5
"""Length of the step by which slopes are taken (mm)."""
WIDE = 100.0
"""A model that sees no way to `enough` within this many mm is believed: margins bend down, so it errs on the hopeful side."""
FAR = 300.0
"""The same for whole starts (mm), which may have far to go along the stern."""
THICK = 1000.0
"""By how much a step may thicken a pad (mm)."""
CUTS = 24
"""Lines that disappointing steps may add to a model."""
WRONG = 1e-3
"""A scaled margin below what a line foretold by more than this is a bend."""
SHRINK = 0.35
"""What is left of a trust region after a step that disappointed."""
FINEST = 0.05
"""A trust region or compass step below this (mm) ends the search."""
LEVEL = 1e-4
"""A model that sees no more than this to gain (scaled) says that the smallest margin stands at its highest."""


@inlined
def aim(site: Site, out: Array, scale: Array) -> float:
    """Return the lexicographic aim: the smallest margin whole, the next by a thousandth, the third by a millionth."""
    a, b, c = smallest(site, out, scale, True, True)
    return min(max(a, -CEILING * 10), CEILING) + 1e-3 * min(b, CEILING) + 1e-6 * min(c, CEILING)


@compiled
def aim_at(site: Site, i: int, kit: Kit, k: int, t: Terms, scale: Array, at: Array, out: Array) -> float:
    """Return the aim of a placement; `out` is left with its checks."""
    check(site, i, kit, k, t, at[0], at[1], at[2], at[3], at[4], NEAR, out)
    return aim(site, out, scale)


@compiled
def aim_beating(
    site: Site, i: int, kit: Kit, k: int, t: Terms, scale: Array, at: Array, beat: float, out: Array
) -> float:
    """Return the same, or minus infinity as soon as some of the checks show that it stays below `beat`."""
    out[:, MARGIN] = np.inf
    check_plain(site, i, kit, k, t, at[0], at[1], at[2], at[3], at[4], out)
    if aim(site, out, scale) < beat:
        return -np.inf
    low = seat(site, i, kit.lower, k, at[Y], at[X], at[LOWER_AT], t)
    up = seat(site, i, kit.upper, k, at[Y], at[X], at[UPPER_AT], t)
    return _aim_seated(site, i, kit, k, t, scale, at, low, up, beat, out)


@compiled
def _aim_seated(
    site: Site, i: int, kit: Kit, k: int, t: Terms, scale: Array, at: Array, low: Seated, up: Seated, beat: float,
    out: Array,
) -> float:  # fmt: skip
    """Return the same where both seats are known: more checks never raise an aim, so those that cost least go first."""
    out[:, MARGIN] = np.inf
    check_plain(site, i, kit, k, t, at[0], at[1], at[2], at[3], at[4], out)
    check_mounts(site, i, kit, k, t, at[2], at[3], low, up, out)
    if aim(site, out, scale) < beat:
        return -np.inf
    check_uprights(site, i, kit, k, t, at[0], at[1], at[4], NEAR, out)
    if aim(site, out, scale) < beat:
        return -np.inf
    check_metal(site, i, kit, k, t, at[0], at[1], at[2], at[3], at[4], low, up, NEAR, out)
    return aim(site, out, scale)


@compiled
def settle_pads(site: Site, i: int, kit: Kit, k: int, t: Terms, at: Array) -> tuple[Seated, Seated]:
    """Set both pads of a placement to the best their reaches leave; return both seats."""
    low = seat(site, i, kit.lower, k, at[Y], at[X], at[LOWER_AT], t)
    up = seat(site, i, kit.upper, k, at[Y], at[X], at[UPPER_AT], t)
    at[PAD_LOW] = best_pad(low.gap, low.bevel, kit.lower[k, M.REACH_LOW], kit.lower[k, M.REACH_HIGH], t)
    at[PAD_UP] = best_pad(up.gap, up.bevel, kit.upper[k, M.REACH_LOW], kit.upper[k, M.REACH_HIGH], t)
    return low, up


@compiled
def climb(
    site: Site, i: int, kit: Kit, k: int, t: Terms, scale: Array, start: Array, y_low: float, y_high: float,
    trust: float, rounds: int, enough: float, beat: float,
) -> tuple[Array, float]:  # fmt: skip
    """Climb from a placement (7,) with the offset held within y_low..y_high; stop once the aim exceeds `enough`.

    It is given up after its first step where the model sees no way to `beat` within a wide region.

    A step that disappoints has met a bend that the model did not show (the nearest of several parts has changed, say):
    the model gets the lines that hold there as well, and is asked again for a shorter step. Offsets count outwards
    on either side, so that a mirrored boat is searched the mirrored way. Return the placement reached and its aim.
    """
    outwards = -1.0 if y_high < 0.0 else 1.0
    near, far = (y_low, y_high) if outwards > 0.0 else (-y_high, -y_low)
    count = COUNT + site.binds.size
    out, row = np.empty((29 + site.binds.size, 3)), np.empty(count + CUTS)
    hard, slope = np.empty(count + CUTS), np.empty((count + CUTS, 7))
    there, there_hard, there_slope = np.empty(count), np.empty(count), np.empty((count, 7))
    moved, other = np.empty(count), np.empty(count)
    at = start.copy()
    seats = settle_pads(site, i, kit, k, t, at)
    value = _aim_seated(site, i, kit, k, t, scale, at, seats[0], seats[1], -np.inf, out)
    low, high = np.empty(7), np.empty(7)
    rows = 0
    for turn in range(rounds):
        if value > enough or trust < FINEST:
            break
        if rows == 0:
            _lines(
                site, i, kit, k, t, scale, at, seats, outwards, near, far, out, there, there_hard, there_slope, moved,
                other,
            )  # fmt: skip
            _soften(there, there_hard, value, t)
            row[:count], hard[:count], slope[:count] = there, there_hard, there_slope
            rows = count
        if turn == 1 and beat > value:
            _region(at, outwards, near, far, FAR, low, high)
            if best_step(row, slope, hard, low, high, rows)[1] < beat:
                break
        _region(at, outwards, near, far, trust, low, high)
        step, hoped = best_step(row, slope, hard, low, high, rows)
        if hoped < enough and np.isfinite(enough) and trust >= WIDE:
            break
        if hoped < _least(row, hard, count) + LEVEL:
            break
        tried = at + step
        tried[Y] = outwards * min(max(outwards * at[Y] + step[Y], near), far)
        found = settle_pads(site, i, kit, k, t, tried)
        got = _aim_seated(site, i, kit, k, t, scale, tried, found[0], found[1], value + 1e-9, out)
        if got > value + 1e-9:
            at, seats, value, rows = tried, found, got, 0
            trust = min(trust * 1.6, 250.0)
            continue
        trust *= SHRINK
        if trust >= FINEST:
            _lines(
                site, i, kit, k, t, scale, tried, found, outwards, near, far, out, there, there_hard, there_slope, moved,
                other,
            )  # fmt: skip
            _soften(there, there_hard, value, t)
            gone = tried - at
            gone[Y] *= outwards
            rows = _add(row, slope, hard, rows, count, there, there_slope, there_hard, gone, hoped)
    return at, value


@compiled
def _region(at: Array, outwards: float, near: float, far: float, trust: float, low: Array, high: Array) -> None:
    """Write how far each coordinate may step; too thick a pad is a miss of its own, which may share the least."""
    for j in range(5):
        low[j], high[j] = -trust, trust
    low[Y], high[Y] = max(-trust, near - outwards * at[Y]), min(trust, far - outwards * at[Y])
    for j in (PAD_LOW, PAD_UP):
        low[j], high[j] = -at[j], THICK


@compiled
def _least(row: Array, hard: Array, count: int) -> float:
    """Return the smallest of the soft margins where the model was made."""
    least = np.inf
    for r in range(count):
        if hard[r] == SOFT:
            least = min(least, row[r])
    return least


@compiled
def _lines(
    site: Site, i: int, kit: Kit, k: int, t: Terms, scale: Array, at: Array, seats: tuple[Seated, Seated],
    outwards: float, near: float, far: float, out: Array, row: Array, hard: Array, slope: Array, moved: Array, other: Array,
) -> None:  # fmt: skip
    """Write the pieces at a placement and how each changes with every coordinate, the offset counted outwards.

    Collars go first, while `out` still holds what they do not move; the bottom moves no seat.
    """
    low, up = seats
    check_seated(site, i, kit, k, t, at[0], at[1], at[2], at[3], at[4], low, up, NEAR, out)
    pieces(site.binds, site.flags, kit, k, t, scale, at, low, up, out, row, hard)
    pad_slopes(kit.lower, k, t, slope, 0, PAD_LOW)
    pad_slopes(kit.upper, k, t, slope, BRACKET, PAD_UP)
    for j in (LOWER_AT, UPPER_AT, BOTTOM, Y, X):
        if j == Y and far <= near:
            slope[:, j] = 0.0
            continue
        probe = PROBE if not (j == Y and outwards * at[Y] + PROBE > far) else -PROBE
        kept = at[j]
        at[j] += outwards * probe if j == Y else probe
        one, two = low, up
        if j not in (BOTTOM, UPPER_AT):
            one = seat(site, i, kit.lower, k, at[Y], at[X], at[LOWER_AT], t)
        if j not in (BOTTOM, LOWER_AT):
            two = seat(site, i, kit.upper, k, at[Y], at[X], at[UPPER_AT], t)
        if j in (LOWER_AT, UPPER_AT):
            check_metal(site, i, kit, k, t, at[0], at[1], at[2], at[3], at[4], one, two, NEAR, out)
        else:
            check_seated(site, i, kit, k, t, at[0], at[1], at[2], at[3], at[4], one, two, NEAR, out)
        pieces(site.binds, site.flags, kit, k, t, scale, at, one, two, out, moved, other)
        at[j] = kept
        for r in range(row.size):
            slope[r, j] = (moved[r] - row[r]) / probe


@compiled
def _add(
    row: Array, slope: Array, hard: Array, rows: int, count: int,
    there: Array, there_slope: Array, there_hard: Array, step: Array, hoped: float,
) -> int:  # fmt: skip
    """Add the lines of a disappointing placement that lie below what was hoped for there; return how many rows there are."""
    for r in range(count):
        if rows >= row.size:
            break
        if there[r] >= hoped and there_hard[r] == SOFT:
            continue
        expected, back = row[r], there[r]
        for j in range(7):
            expected += slope[r, j] * step[j]
            back -= there_slope[r, j] * step[j]
        if there[r] < expected - WRONG:
            row[rows], hard[rows], slope[rows] = back, there_hard[r], there_slope[r]
            rows += 1
    return rows


@compiled
def _soften(row: Array, hard: Array, value: float, t: Terms) -> None:
    """Let the immersion rows merely hold where the aim has outgrown what a whole immersion can give."""
    for n, limit in ((OTHERS + 4, t[T.SHARE]), (OTHERS + 5, t[T.SHARE_HEELED])):
        full = (1.0 - limit) / t[T.S_SHARE]
        if value > full - 1e-6:
            row[n] -= full
            hard[n] = HARD


@compiled
def polish(
    site: Site, i: int, kit: Kit, k: int, t: Terms, scale: Array, start: Array, value: float, moves: Array,
    y_low: float, y_high: float, step: float, rounds: int,
) -> tuple[Array, float]:  # fmt: skip
    """Improve the lexicographic aim by compass moves (D, 5) with shrinking steps (mm), the offset's outwards."""
    outwards = -1.0 if y_high < 0.0 else 1.0
    out = np.empty((29 + site.binds.size, 3))
    at, tried = start.copy(), start.copy()
    for _ in range(rounds):
        if step < FINEST:
            break
        best, best_move = value + 1e-9, -1
        for d in range(moves.shape[0]):
            for j in range(5):
                tried[j] = at[j] + step * moves[d, j]
            tried[Y] = min(max(at[Y] + outwards * step * moves[d, Y], y_low), y_high)
            got = aim_beating(site, i, kit, k, t, scale, tried, best, out)
            if got > best:
                best, best_move = got, d
        if best_move < 0:
            step *= 0.4
            continue
        for j in range(1, 5):
            at[j] += step * moves[best_move, j]
        at[Y] = min(max(at[Y] + outwards * step * moves[best_move, Y], y_low), y_high)
        value = best
    return at, value
