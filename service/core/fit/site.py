"""The boat as arrays, one entry a row (nominal, star point or draw), and its skin x = X(y, z)."""

from __future__ import annotations

from enum import IntEnum
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from service.core.fit import pchip
from service.core.fit.compiled import compiled

Array = NDArray[np.float64]
Index = NDArray[np.intp]
NO_CURVE, PROFILE, SECTIONS = 0, 1, 2


class S(IntEnum):
    """Columns of a site's values: heights above water, x and y in the frame of the boat form; slopes as tangents."""

    TOP = 0
    BOTTOM = 1
    RAKE = 2
    HALF_TOP = 3
    HALF_WATER = 4
    CAMBER = 5
    STEP_HEIGHT = 6
    STEP_DEPTH = 7
    HALF_STEP = 8
    LOWER_RAKE = 9
    POST = 10
    HUNG_OUTSIDE = 11
    STOCK = 12
    LEADING = 13
    TRAILING = 14
    RUDDER_TOP = 15
    RUDDER_BOTTOM = 16
    RUDDER_COS = 17
    """Cosine and sine of how far the main rudder turns each way."""
    RUDDER_SIN = 18
    RUDDER_OFFSET = 19
    DISPLACEMENT = 20


class Flag(IntEnum):
    """Places in a site's flags."""

    STEPPED = 0
    POST_ONLY = 1
    """The sternpost is the only known seat: a double-ended stern without level cuts."""
    CURVE = 2


class Site(NamedTuple):
    """What the checks need of a boat, few arrays so that compiled code passes them on cheaply.

    `values` (N, columns of S). `boxes` (N, M, 12): x, y, z of each obstacle box, low end before high, where it stands and
    then where a moving one ends; `box_info` (M, 3): obstacle it belongs to, whether it moves, 1 for moving_gap;
    `binds` (obstacles): 0 for what may be taken off, a trade and never a refusal. A measured profile or level cuts:
    `below` (K,) distance below the top edge, `half` (H,) half-breadths, `aft` (1 or N, K, H) and their slopes.
    """

    values: Array
    boxes: Array
    box_info: Index
    binds: Index
    flags: Index
    below: Array
    half: Array
    aft: Array
    slope_down: Array
    slope_across: Array


@compiled
def skin(site: Site, i: int, y: float, z: float) -> tuple[float, float, float]:
    """Return x of the skin at (y, z) and the tangents of local rake dX/dz and plan angle dX/dy.

    From sections where there are any, else a profile, else one rake: X = Xc(z) - c (2y/W)², Xc = (z - top) tan r
    (FIT, exact meanings). z is held between bottom and top edge: below the bottom the hull reaches as far aft.
    """
    top = site.values[i, S.TOP]
    z = min(max(z, min(site.values[i, S.BOTTOM], top)), top)
    if site.flags[Flag.CURVE] == SECTIONS:
        return _from_sections(site, i, y, top - z)
    if site.flags[Flag.CURVE] == PROFILE:
        centre, down = pchip.value(site.below, site.aft[min(i, site.aft.shape[0] - 1), :, 0],
                                   site.slope_down[min(i, site.aft.shape[0] - 1)], top - z)  # fmt: skip
        rake = -down
    else:
        rake = site.values[i, S.RAKE]
        centre = (z - top) * rake
        if site.flags[Flag.STEPPED] and z < site.values[i, S.STEP_HEIGHT]:
            edge = (site.values[i, S.STEP_HEIGHT] - top) * rake + site.values[i, S.STEP_DEPTH]
            rake = site.values[i, S.LOWER_RAKE]
            centre = edge + (z - site.values[i, S.STEP_HEIGHT]) * rake
    width = 2.0 * site.values[i, S.HALF_TOP]
    return (
        centre - site.values[i, S.CAMBER] * (2.0 * y / width) ** 2,
        rake,
        -8.0 * site.values[i, S.CAMBER] * y / width**2,
    )


@compiled
def _from_sections(site: Site, i: int, y: float, down: float) -> tuple[float, float, float]:
    """Interpolate along each level cut in half-breadth, then between the cuts in height."""
    row = min(i, site.aft.shape[0] - 1)
    levels = site.below.size
    at, turn = np.empty(levels), np.empty(levels)
    for k in range(levels):
        at[k], turn[k] = pchip.value(site.half, site.aft[row, k], site.slope_across[row, k], abs(y))
    x, fall = pchip.value(site.below, at, pchip.slopes_of(site.below, at), down)
    plan, _ = pchip.value(site.below, turn, pchip.slopes_of(site.below, turn), down)
    return x, -fall, plan if y >= 0.0 else -plan


@compiled
def half_breadth(site: Site, i: int, z: float) -> float:
    """Return the skin's half-breadth at height z: linear from the waterline's to the top's, never negative."""
    if site.flags[Flag.POST_ONLY]:
        return site.values[i, S.POST] / 2.0
    half = site.values[i, S.HALF_WATER] + (site.values[i, S.HALF_TOP] - site.values[i, S.HALF_WATER]) * z / max(
        site.values[i, S.TOP], 1.0
    )
    if site.flags[Flag.CURVE] == SECTIONS:
        half = min(half, site.half[-1])
    return max(half, 0.0)
