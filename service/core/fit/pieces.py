"""The margins of a placement cut into smooth pieces, so that a straight-line model of them is true nearby.

A reach margin is the smaller of two, a seat the smallest of three, and a pad is chosen by a rule: taken apart, with the
pads as variables of their own, each piece is straight or gently bent.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled
from service.core.fit.checks import MARGIN, raw_shares
from service.core.fit.kit import CHEEK, STEP, STRUTTED, Kit, M
from service.core.fit.mounts import Seated
from service.core.fit.site import Flag
from service.core.fit.terms import (
    FIXED,
    FOOT,
    HEAD,
    HULL_BLADE,
    LOWER,
    OVERHANG,
    REST,
    RUDDER_BLADE,
    RUDDER_SHAFT,
    SPACING,
    STRUT,
    UPPER,
    WEATHER,
    T,
    Terms,
)  # fmt: skip

Array = NDArray[np.float64]
Index = NDArray[np.intp]
SOFT, HARD = 0.0, 1.0
BRACKET = 8
"""Pieces of one bracket: two of reach, pad, bevel, three of room, strut (or how high it stands)."""
OTHERS = 2 * BRACKET
COUNT = OTHERS + 15
"""Pieces of every boat; one for each obstacle follows."""
FULL = 1e3


@compiled
def pieces(
    binds: Index, flags: Index, kit: Kit, k: int, t: Terms, scale: Array, at: Array, low: Seated, up: Seated,
    out: Array, row: Array, hard: Array,
) -> None:  # fmt: skip
    """Write the scaled pieces at placement `at` (y, x, lower, upper, bottom, lower pad, upper pad) into `row`.

    `binds` and `flags` are the site's; `out` and both seats are as `check` leaves them there. `hard` says which must
    merely hold: a pad's thinnest corner, and the immersion of a blade that is wholly under.
    """
    _bracket(flags, kit.lower, k, low, at[5], t, row, hard, 0, out[LOWER + STRUT, MARGIN])
    _bracket(flags, kit.upper, k, up, at[6], t, row, hard, BRACKET, out[UPPER + STRUT, MARGIN])
    n = OTHERS
    for place in (SPACING, OVERHANG, HEAD, FOOT):
        row[n], hard[n] = out[place, MARGIN] / scale[place], SOFT
        n += 1
    rest, weather = raw_shares(kit, k, t, at[0], at[4])
    for share, limit, place in ((rest, t[T.SHARE], REST), (weather, t[T.SHARE_HEELED], WEATHER)):
        row[n], hard[n] = (share - limit) / scale[place], SOFT
        n += 1
    for place in (WEATHER + 1, WEATHER + 2, RUDDER_BLADE, RUDDER_SHAFT):
        row[n], hard[n] = out[place, MARGIN] / scale[place], SOFT
        n += 1
    for place in range(HULL_BLADE, HULL_BLADE + 5):
        row[n], hard[n] = out[place, MARGIN] / scale[place], SOFT
        n += 1
    for slot in range(binds.size):
        row[n], hard[n] = out[FIXED + slot, MARGIN] / scale[FIXED + slot], SOFT
        if binds[slot] == 0:
            row[n] = FULL
        n += 1
    for r in range(row.size):
        if not np.isfinite(row[r]):
            row[r] = FULL
        row[r] = min(max(row[r], -FULL), FULL)


@compiled
def pad_slopes(m: Array, k: int, t: Terms, slope: Array, n: int, column: int) -> None:
    """Write how the pieces of one bracket change with its pad; no other piece does."""
    slope[:, column] = 0.0
    if int(m[k, M.KIND]) not in (CHEEK, STEP):
        slope[n, column], slope[n + 1, column] = -1.0 / t[T.S_REACH], 1.0 / t[T.S_REACH]
        slope[n + 2, column], slope[n + 3, column] = -1.0 / t[T.S_PAD], 1.0 / t[T.S_PAD]


@compiled
def _bracket(
    flags: Index, m: Array, k: int, s: Seated, pad: float, t: Terms, row: Array, hard: Array, n: int, strut: float
) -> None:
    hard[n : n + BRACKET] = SOFT
    row[n : n + BRACKET] = FULL
    kind = int(m[k, M.KIND])
    if kind in (CHEEK, STEP):
        pad = s.pad
    row[n] = (s.gap - pad - m[k, M.REACH_LOW]) / t[T.S_REACH]
    row[n + 1] = (m[k, M.REACH_HIGH] - s.gap + pad) / t[T.S_REACH]
    if kind == CHEEK:
        row[n + 2] = -s.bevel / t[T.S_PAD] if s.bevel > 0.0 else FULL
    elif kind != STEP:
        row[n + 2] = (t[T.PAD_MAX] - s.bevel - pad) / t[T.S_PAD]
        row[n + 3], hard[n + 3] = (pad - s.bevel) / t[T.S_PAD], HARD
    row[n + 4], row[n + 5] = s.room_up / t[T.S_SEAT], s.room_down / t[T.S_SEAT]
    row[n + 6] = s.room_across / t[T.S_SEAT]
    if kind == STRUTTED:
        row[n + 7] = strut / t[T.S_STRUT]
    if kind == STEP:
        row[n + 7] = s.stands_margin / t[T.S_STANDS]
    if kind == STEP and flags[Flag.STEPPED] == 0:
        row[n + 4] = -FULL
