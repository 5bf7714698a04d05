"""Every check of one placement of one configuration on one boat.

Written once, for one row; `sheets` runs it over rows. Margin >= 0 passes; the places of the checks in a row stand in
`terms`. The published text is made from the same numbers.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from service.core.compiled import compiled, inlined
from service.core.fit.bits import INF
from service.core.fit.clear import rudder_blade, rudder_solids
from service.core.fit.hullside import hull
from service.core.fit.kit import G, Kit, M
from service.core.fit.mounts import Seated, seat
from service.core.fit.site import S, Site
from service.core.fit.terms import (
    DISPLACEMENT,
    FIXED,
    FOOT,
    GAP,
    HEAD,
    HULL_BLADE,
    HULL_HEAD,
    HULL_SHAFT,
    HULL_TILLER,
    HULL_VANE,
    LOWER,
    OVERHANG,
    PAD,
    REACH,
    REST,
    ROOT_LEE,
    ROOT_REST,
    RUDDER_BLADE,
    RUDDER_SHAFT,
    SEAT,
    SPACING,
    STANDS,
    STRUT,
    UPPER,
    WAKE,
    WEATHER,
    T,
    Terms,
)  # fmt: skip
from service.core.fit.things import PARTS, obstacle, surroundings

Array = NDArray[np.float64]
Index = NDArray[np.intp]
VALUE, LIMIT, MARGIN = 0, 1, 2
CEILING = 10.0
"""A scaled margin counts for no more than this in an aim."""


@compiled
def check(
    site: Site, i: int, kit: Kit, k: int, t: Terms,
    y: float, x: float, lower: float, upper: float, bottom: float, near: float, out: Array,
) -> tuple[Seated, Seated]:  # fmt: skip
    """Write value, limit and margin of every check into `out` (FIXED + obstacles, 3); return both seats.

    y offset, x shaft axis, lower and upper collar centre, bottom of the shaft, all mm. `near`: clearances surely
    beyond it may come as lower bounds of themselves (inf: all exact).
    """
    low = seat(site, i, kit.lower, k, y, x, lower, t)
    up = seat(site, i, kit.upper, k, y, x, upper, t)
    check_seated(site, i, kit, k, t, y, x, lower, upper, bottom, low, up, near, out)
    return low, up


@inlined
def check_seated(
    site: Site, i: int, kit: Kit, k: int, t: Terms,
    y: float, x: float, lower: float, upper: float, bottom: float, low: Seated, up: Seated, near: float, out: Array,
) -> None:  # fmt: skip
    """Write the same where both seats are known already."""
    check_plain(site, i, kit, k, t, y, x, lower, upper, bottom, out)
    check_uprights(site, i, kit, k, t, y, x, bottom, near, out)
    check_metal(site, i, kit, k, t, y, x, lower, upper, bottom, low, up, near, out)


@inlined
def check_plain(
    site: Site, i: int, kit: Kit, k: int, t: Terms,
    y: float, x: float, lower: float, upper: float, bottom: float, out: Array,
) -> None:  # fmt: skip
    """Write what a subtraction tells: shaft, water, displacement, wake."""
    _shaft(out, kit, k, t, lower, upper, bottom)
    _water(out, kit, k, t, y, bottom)
    _most(out, DISPLACEMENT, site.values[i, S.DISPLACEMENT], kit.gear[k, G.MAX_DISPLACEMENT])
    _wake(out, site.values, i, t, y, x)


@inlined
def check_mounts(
    site: Site, i: int, kit: Kit, k: int, t: Terms, lower: float, upper: float, low: Seated, up: Seated, out: Array
) -> None:
    """Write what both seats tell."""
    post, step = site.values[i, S.POST], site.values[i, S.STEP_HEIGHT]
    _mount(out, LOWER, low, kit.lower, k, t, post, lower - step)
    _mount(out, UPPER, up, kit.upper, k, t, post, upper - step)


@inlined
def check_uprights(
    site: Site, i: int, kit: Kit, k: int, t: Terms, y: float, x: float, bottom: float, near: float, out: Array
) -> None:
    """Write what does not ask where the collars are: blade to main rudder, and the upright parts to the hull."""
    _least(out, RUDDER_BLADE, rudder_blade(site.values, i, kit, k, x, y, bottom, near), t[T.RUDDER_GAP])
    _hull(out, site, i, kit, k, t, x, y, bottom, near)


@inlined
def check_metal(
    site: Site, i: int, kit: Kit, k: int, t: Terms,
    y: float, x: float, lower: float, upper: float, bottom: float, low: Seated, up: Seated, near: float, out: Array,
) -> None:  # fmt: skip
    """Write what a collar moves: both seats, the shaft's lengths, arms and struts to the main rudder, obstacles."""
    _shaft(out, kit, k, t, lower, upper, bottom)
    check_mounts(site, i, kit, k, t, lower, upper, low, up, out)
    out[RUDDER_SHAFT] = INF
    if site.values[i, S.HUNG_OUTSIDE] > 0.0:
        _least(
            out,
            RUDDER_SHAFT,
            rudder_solids(site.values, i, kit, k, x, y, bottom, (lower, upper), low, up),
            t[T.RUDDER_GAP],
        )
    _obstacles(out, site.boxes, site.box_info, i, kit, k, t, y, x, bottom, (lower, upper), low, up, near)


@inlined
def _hull(
    out: Array, site: Site, i: int, kit: Kit, k: int, t: Terms, x: float, y: float, bottom: float, near: float
) -> None:
    g, gap = kit.gear[k], t[T.FIXED_GAP]
    top, root = bottom + g[G.LENGTH], bottom - g[G.ROOT_GAP]
    parts = (
        (g[G.BALANCE], root - g[G.SPAN], root),
        (g[G.TUBE], bottom, top),
        (g[G.HEAD_RADIUS], top, top + g[G.HEAD_HEIGHT]),
        (g[G.TILLER_RADIUS], top - g[G.TILLER_HEIGHT], top),
        (g[G.VANE_RADIUS], top + g[G.VANE_BOTTOM], top + g[G.VANE_TOP]),
    )
    hull(site, i, x, y, parts, near, out, HULL_BLADE)
    for place in range(HULL_BLADE, HULL_BLADE + len(parts)):
        out[place, LIMIT], out[place, MARGIN] = gap, out[place, VALUE] - gap


@compiled
def _least(out: Array, place: int, value: float, limit: float) -> None:
    out[place, VALUE], out[place, LIMIT], out[place, MARGIN] = value, limit, value - limit


@compiled
def _most(out: Array, place: int, value: float, limit: float) -> None:
    out[place, VALUE], out[place, LIMIT], out[place, MARGIN] = value, limit, limit - value


@compiled
def _within(out: Array, place: int, value: float, low: float, high: float, margin: float) -> None:
    """Write a check against two ends; the limit shown is the nearer one."""
    out[place, VALUE], out[place, LIMIT] = value, low if value - low < high - value else high
    out[place, MARGIN] = margin


@compiled
def _mount(out: Array, at: int, s: Seated, m: Array, k: int, t: Terms, post: float, stands: float) -> None:
    _within(out, at + REACH, s.reach, m[k, M.REACH_LOW], m[k, M.REACH_HIGH], s.reach_margin)
    out[at + PAD, VALUE], out[at + PAD, LIMIT], out[at + PAD, MARGIN] = (
        t[T.PAD_MAX] - s.pad_margin,
        t[T.PAD_MAX],
        s.pad_margin,
    )
    _least(out, at + SEAT, s.room, 0.0)
    _within(out, at + STRUT, s.strut_length, m[k, M.STRUT_LOW], m[k, M.STRUT_HIGH], s.strut_margin)
    _within(out, at + GAP, post, m[k, M.GAP_LOW], m[k, M.GAP_HIGH], s.post_margin)
    _within(out, at + STANDS, stands, m[k, M.STANDS_LOW], m[k, M.STANDS_HIGH], s.stands_margin)


@compiled
def _shaft(out: Array, kit: Kit, k: int, t: Terms, lower: float, upper: float, bottom: float) -> None:
    _least(out, SPACING, upper - lower, t[T.SPACING])
    _most(out, OVERHANG, lower - (bottom - kit.gear[k, G.ROOT_GAP] - kit.gear[k, G.SPAN] / 2.0), t[T.OVERHANG])
    _least(out, HEAD, bottom + kit.gear[k, G.LENGTH] - upper, kit.gear[k, G.HEAD_ROOM] + kit.upper[k, M.COLLAR] / 2.0)
    _least(out, FOOT, lower - bottom, kit.lower[k, M.COLLAR] / 2.0)


@compiled
def _water(out: Array, kit: Kit, k: int, t: Terms, y: float, bottom: float) -> None:
    """Immersed share and root depth at rest and heeled about (y 0, z 0), still water."""
    high = bottom - kit.gear[k, G.ROOT_GAP]
    rest, weather = raw_shares(kit, k, t, y, bottom)
    _least(out, REST, min(max(rest, 0.0), 1.0), t[T.SHARE])
    _least(out, WEATHER, min(max(weather, 0.0), 1.0), t[T.SHARE_HEELED])
    _most(out, ROOT_REST, -high, t[T.ROOT_DEPTH])
    _most(out, ROOT_LEE, abs(y) * math.sin(t[T.HEEL]) - high * math.cos(t[T.HEEL]), t[T.ROOT_DEPTH])


@compiled
def raw_shares(kit: Kit, k: int, t: Terms, y: float, bottom: float) -> tuple[float, float]:
    """Return the immersed share at rest and to weather, not held to 0..1: beyond 1 the blade's top is under water."""
    low = bottom - kit.gear[k, G.ROOT_GAP] - kit.gear[k, G.SPAN]
    return -low / kit.gear[k, G.SPAN], (-abs(y) * math.tan(t[T.HEEL]) - low) / kit.gear[k, G.SPAN]


@compiled
def _wake(out: Array, values: Array, i: int, t: Terms, y: float, x: float) -> None:
    behind = x - values[i, S.TRAILING]
    beside = abs(abs(y) - values[i, S.RUDDER_OFFSET])
    _least(out, WAKE, beside, t[T.WAKE_GAP])
    if behind < 0.0 or behind > t[T.WAKE_REACH]:
        out[WAKE, MARGIN] = INF


@compiled
def _obstacles(
    out: Array, boxes: Array, box_info: Index, i: int, kit: Kit, k: int, t: Terms, y: float, x: float, bottom: float,
    collars: tuple[float, float], low: Seated, up: Seated, near: float,
) -> None:  # fmt: skip
    out[FIXED:] = INF
    if box_info.shape[0] == 0:
        return
    around, scratch = surroundings(kit, k, x, y, bottom, collars, low, up), np.empty((5, len(PARTS)))
    for place in range(box_info.shape[0]):
        least = obstacle(boxes[i, place], kit, k, x, y, bottom, collars, low, up, near, around, scratch)
        limit = t[T.MOVING_GAP] if box_info[place, 2] else t[T.FIXED_GAP]
        if least - limit < out[FIXED + box_info[place, 0], MARGIN]:
            _least(out, FIXED + box_info[place, 0], least, limit)


@compiled
def scales(t: Terms, count: int) -> Array:
    """Return the scale of every check, obstacles last."""
    out = np.full(count, t[T.S_OBSTACLE])
    for at in (LOWER, UPPER):
        out[at + REACH], out[at + PAD], out[at + SEAT] = t[T.S_REACH], t[T.S_PAD], t[T.S_SEAT]
        out[at + STRUT], out[at + GAP], out[at + STANDS] = t[T.S_STRUT], t[T.S_GAP], t[T.S_STANDS]
    out[SPACING], out[OVERHANG], out[HEAD], out[FOOT] = t[T.S_SPACING], t[T.S_OVERHANG], t[T.S_HEAD], t[T.S_FOOT]
    out[REST], out[WEATHER], out[ROOT_REST], out[ROOT_LEE] = t[T.S_SHARE], t[T.S_SHARE], t[T.S_ROOT], t[T.S_ROOT]
    out[RUDDER_BLADE], out[RUDDER_SHAFT] = t[T.S_RUDDER], t[T.S_RUDDER]
    for at in (HULL_BLADE, HULL_SHAFT, HULL_HEAD, HULL_TILLER, HULL_VANE):
        out[at] = t[T.S_HULL]
    out[DISPLACEMENT], out[WAKE] = t[T.S_DISPLACEMENT], t[T.WAKE_GAP]
    return out


@inlined
def smallest(site: Site, out: Array, scale: Array, movable: bool, governing: bool) -> tuple[float, float, float]:  # noqa: FBT001 - compiled code takes no keywords
    """Return the three smallest scaled margins of what can refuse.

    `movable` leaves out what passes and no placement changes; `governing` a wholly immersed blade: neither can gain more.
    """
    return _smallest(site.binds, out, scale, movable, governing)


@compiled
def _smallest(binds: Index, out: Array, scale: Array, movable: bool, governing: bool) -> tuple[float, float, float]:  # noqa: FBT001 - as above
    a, b, c = INF, INF, INF
    for place in range(out.shape[0]):
        if place == WAKE or (place >= FIXED and binds[place - FIXED] == 0):
            continue
        margin = out[place, MARGIN] / scale[place]
        if movable and margin >= 0.0 and place in (DISPLACEMENT, LOWER + GAP, UPPER + GAP):
            continue
        if governing and place in (REST, WEATHER) and out[place, VALUE] >= 1.0:
            continue
        if math.isnan(margin):
            margin = -INF
        if margin < a:
            a, b, c = margin, a, b
        elif margin < b:
            b, c = margin, b
        elif margin < c:
            c = margin
    return a, b, c
