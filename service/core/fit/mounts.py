"""A bracket on the skin: seat, pad, reach, struts; each kind by its own rule (FIT, exact meanings)."""

from __future__ import annotations

import math
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled, inlined
from service.core.fit.kit import CHEEK, STEP, STRUTTED, M
from service.core.fit.site import SECTIONS, Flag, S, Site, aft_of_skin, half_breadth, skin
from service.core.fit.terms import T, Terms

Array = NDArray[np.float64]
SPREADS = 17
"""Spreads tried within a strutted bracket's range."""
NOTHING_TO_STAND_ON = -1000.0
"""Margin in mm of a step bracket on a boat without a step: no placement mends it."""
INF = math.inf


class Seated(NamedTuple):
    """One bracket as seated: lengths in mm, slopes as tangents; margins unscaled."""

    flange: float
    """Height of the flange's centre."""
    x: float
    """The skin there."""
    gap: float
    """Fore and aft from the skin to the shaft axis: pad and reach together."""
    bevel: float
    """Half of what the pad must taper, corner to centre: the least a pad can be at its centre."""
    rake: float
    plan: float
    """Slopes of the skin there."""
    tilt: float
    turn: float
    """What of them the pad takes, up and down, and across."""
    pad: float
    reach: float
    reach_margin: float
    pad_margin: float
    room_up: float
    room_down: float
    room_across: float
    room: float
    strut_margin: float
    strut_length: float
    spread: float
    foot_z: float
    foot_port: float
    foot_starboard: float
    """x of the strut feet at y - spread/2 and y + spread/2."""
    post_margin: float
    stands_margin: float


@compiled
def beyond(slope: float, low: float, high: float) -> float:
    """Return the slope that a pad must take: the skin's less the nearest that the flange takes (tangents)."""
    return slope - min(max(slope, low), high)


@compiled
def best_pad(gap: float, bevel: float, reach_low: float, reach_high: float, t: Terms) -> float:
    """Return the pad's thickness at its centre.

    Its thinnest corner is kept at zero or more by construction. From there it grows only while that raises the
    smaller of the scaled reach and pad margins: both are linear in it, so the best is where two of them cross.
    """
    middle = gap - (reach_low + reach_high) / 2.0
    shared = ((t[T.PAD_MAX] - bevel) / t[T.S_PAD] - (reach_high - gap) / t[T.S_REACH]) / (
        1.0 / t[T.S_REACH] + 1.0 / t[T.S_PAD]
    )
    return max(bevel, min(middle, shared))


@compiled
def seat(site: Site, i: int, m: Array, k: int, y: float, x: float, collar: float, t: Terms) -> Seated:
    """Seat one bracket with its collar's centre at height `collar` and the shaft axis at `x`."""
    kind = int(m[k, M.KIND])
    flange = collar - m[k, M.RISE]
    seat_x, rake, plan = skin(site, i, y, flange)
    if kind == STEP:
        return _on_step(site, i, m, k, y, x, collar, t)
    up, down, across = _room(site, i, m, k, y, flange, t)
    low, high = m[k, M.SWING_LOW], m[k, M.SWING_HIGH]
    if y < 0.0:
        low, high = -high, -low
    tilt = beyond(rake, m[k, M.TILT_LOW], m[k, M.TILT_HIGH])
    turn = 0.0 if kind == CHEEK else beyond(plan, low, high)
    bevel = m[k, M.HEIGHT] / 2.0 * abs(tilt) + m[k, M.WIDTH] / 2.0 * abs(turn)
    gap = x - seat_x
    pad, pad_margin, post = 0.0, -bevel, INF
    if kind == CHEEK:
        across = INF if y == 0.0 else -abs(y)
        pad_margin = INF if bevel == 0.0 else -bevel
        post = min(site.values[i, S.POST] - m[k, M.GAP_LOW], m[k, M.GAP_HIGH] - site.values[i, S.POST])
    else:
        pad = best_pad(gap, bevel, m[k, M.REACH_LOW], m[k, M.REACH_HIGH], t)
        pad_margin = t[T.PAD_MAX] - bevel - pad
    reach = gap - pad
    margin, length, spread, foot_z, port, starboard = INF, 0.0, 0.0, 0.0, 0.0, 0.0
    if kind == STRUTTED:
        margin, length, spread, foot_z, port, starboard = _struts(site, i, m, k, y, x, collar, flange, t)
    return Seated(
        flange, seat_x, gap, bevel, rake, plan, tilt, turn, pad, reach, min(reach - m[k, M.REACH_LOW], m[k, M.REACH_HIGH] - reach),
        pad_margin, up, down, across, min(up, down, across), margin, length, spread, foot_z, port, starboard, post, INF,
    )  # fmt: skip


@inlined
def _room(site: Site, i: int, m: Array, k: int, y: float, flange: float, t: Terms) -> tuple[float, float, float]:
    """Return how far the footprint with its edge distance stays inside sound skin: up, down and across (mm)."""
    high, low = flange + m[k, M.HEIGHT] / 2.0 + t[T.EDGE], flange - m[k, M.HEIGHT] / 2.0 - t[T.EDGE]
    up, down = site.values[i, S.TOP] - high, low - site.values[i, S.BOTTOM]
    if site.flags[Flag.STEPPED]:
        step = site.values[i, S.STEP_HEIGHT]
        if min(up, low - step) >= min(step - high, down):
            down = low - step
        else:
            up = step - high
    down = min(down, flange + m[k, M.LOWEST_HOLE] - t[T.HOLE])
    across = min(half_breadth(site, i, high), half_breadth(site, i, low)) - abs(y) - m[k, M.WIDTH] / 2.0 - t[T.EDGE]
    return up, down, across


@compiled
def _on_step(site: Site, i: int, m: Array, k: int, y: float, x: float, collar: float, t: Terms) -> Seated:
    """Seat a base that stands flat on the step, its centre `reach` forward of the shaft."""
    step, w = site.values[i, S.STEP_HEIGHT], m[k, M.WIDTH] / 2.0
    # a cambered riser stands further aft at one side of the base than at the other
    riser = aft_of_skin(site, i, min(max(0.0, y - w), y + w), step)
    foremost = riser
    for side in (y - w, y + w):
        x_side = aft_of_skin(site, i, side, step)
        riser, foremost = max(riser, x_side), min(foremost, x_side)
    first = riser + t[T.EDGE] + m[k, M.HEIGHT] / 2.0
    last = foremost + site.values[i, S.STEP_DEPTH] - t[T.EDGE] - m[k, M.HEIGHT] / 2.0
    low, high = max(m[k, M.REACH_LOW], x - last), min(m[k, M.REACH_HIGH], x - first)
    reach = (low + high) / 2.0
    margin = min(reach - m[k, M.REACH_LOW], m[k, M.REACH_HIGH] - reach)
    fore, aft = (x - reach) - first, last - (x - reach)
    across = site.values[i, S.HALF_STEP] - abs(y) - m[k, M.WIDTH] / 2.0 - t[T.EDGE]
    stands = collar - site.values[i, S.STEP_HEIGHT]
    room = min(fore, aft, across)
    if not site.flags[Flag.STEPPED]:
        room = NOTHING_TO_STAND_ON
    return Seated(
        site.values[i, S.STEP_HEIGHT], x - reach, reach, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, reach, margin, t[T.PAD_MAX], fore, aft, across, room,
        INF, 0.0, 0.0, 0.0, 0.0, 0.0, INF, min(stands - m[k, M.STANDS_LOW], m[k, M.STANDS_HIGH] - stands),
    )  # fmt: skip


@compiled
def _struts(
    site: Site, i: int, m: Array, k: int, y: float, x: float, collar: float, flange: float, t: Terms
) -> tuple[float, float, float, float, float, float]:
    """Return margin, length, spread, feet height and x of both feet, for the spread that leaves most margin."""
    z = flange + m[k, M.FOOT_RISE]
    upright = min(site.values[i, S.TOP] - z - t[T.EDGE], z - t[T.EDGE] - site.values[i, S.BOTTOM])
    half = half_breadth(site, i, z)
    best, best_length, best_spread, best_port, best_starboard = -INF, 0.0, 0.0, 0.0, 0.0
    cuts = site.flags[Flag.CURVE] == SECTIONS
    crown = aft_of_skin(site, i, 0.0, z)
    bend = site.values[i, S.CAMBER] / site.values[i, S.HALF_TOP] ** 2
    for n in range(SPREADS):
        spread = m[k, M.SPREAD_LOW] + (m[k, M.SPREAD_HIGH] - m[k, M.SPREAD_LOW]) * n / (SPREADS - 1)
        one_y, two_y = y - spread / 2.0, y + spread / 2.0
        port, starboard = crown - bend * one_y * one_y, crown - bend * two_y * two_y
        if cuts:
            port = aft_of_skin(site, i, one_y, z)
            starboard = port if one_y == -two_y else aft_of_skin(site, i, two_y, z)
        rest = (spread / 2.0) ** 2 + (collar - z) ** 2
        one, two = math.sqrt((x - port) ** 2 + rest), math.sqrt((x - starboard) ** 2 + rest)
        margin = min(min(one, two) - m[k, M.STRUT_LOW], m[k, M.STRUT_HIGH] - max(one, two), upright)
        margin = min(margin, half - abs(y) - spread / 2.0 - t[T.EDGE])
        if margin > best:
            best, best_length, best_spread, best_port, best_starboard = margin, max(one, two), spread, port, starboard
    return best, best_length, best_spread, z, best_port, best_starboard
