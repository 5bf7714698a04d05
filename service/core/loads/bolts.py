"""A group of bolts under force and moment, and what one bolt resists. N, N·m, mm.

A group lies in the plane of its flange: `pattern_mm` (n, 2) holds (across, up) of each bolt about the flange's centre.
Loads act at that centre in the flange's own axes: normal (pulling off is positive), across, up. Results have the bolts
on their first axis, (n, ...), so that the worst bolt of many draws is found quickly.
"""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

ELASTIC = "elastic bolt group (Shigley, Mechanical Engineering Design, ch. 8; AISC Manual part 7, case II), from memory"
EUROCODE = "EN 1993-1-8 table 3.4, read in guides, not in the standard"


class FlangeLoad(NamedTuple):
    """Force (normal, across, up; N) and moment about the same axes (N·m) at the flange's centre; each (...)."""

    normal_n: Array
    across_n: Array
    up_n: Array
    about_normal_nm: Array
    about_across_nm: Array
    about_up_nm: Array


@formula(ELASTIC)
def bolt_shears(load: FlangeLoad, pattern_mm: Array) -> Array:
    """Return the shear on each bolt in N (n, ...): equal shares of the force and T r / Σr² about the centroid.

    A force that acts at the flange's centre but not at the centroid adds its own twist. ZeroDivision never: bolts all in
    one spot take no twist. The flange is stiff, holes are filled alike, friction is left out.

    >>> import numpy as np
    >>> shigley = FlangeLoad(*(np.array(v) for v in (0.0, 0.0, -16000.0, -6800.0, 0.0, 0.0)))
    >>> plate = np.array([[75, 60], [75, -60], [-75, 60], [-75, -60]])
    >>> [round(float(v) / 1000, 2) for v in bolt_shears(shigley, plate)]
    [20.97, 20.97, 14.79, 14.79]
    """
    group = _group_of(pattern_mm)
    centre, count, across, up = group.centre, group.arms.shape[1], load.across_n, load.up_n
    twist = (load.about_normal_nm * 1000 - (centre[0] * up - centre[1] * across)) / group.polar
    y, z = (_bolts_first(arm, twist) for arm in group.arms)
    return np.asarray(np.hypot(across / count - twist * z, up / count + twist * y))


class _Group(NamedTuple):
    """What a pattern of n bolts is by itself: centroid (2,), places about it (2, n), Σr², shares of unit moments (2, n)."""

    centre: Array
    arms: Array
    polar: float
    shares: Array


def _group_of(pattern_mm: Array) -> _Group:
    return _group(np.asarray(pattern_mm, dtype=float).tobytes())


@lru_cache(maxsize=256)
def _group(pattern: bytes) -> _Group:
    """Return what the numbers of a pattern, one bolt after the other, come to: a catalogue has few, and asks often."""
    places = np.frombuffer(pattern).reshape(-1, 2)
    centre = places.mean(axis=0)
    arms = places - centre
    polar = max(float((arms[:, 0] ** 2 + arms[:, 1] ** 2).sum()), 1e-9)
    return _Group(centre, arms.T.copy(), polar, np.linalg.pinv(arms.T @ arms) @ arms.T)


def _bolts_first(values: Array, like: Array) -> Array:
    """Return one value a bolt as (n, 1, ...), to broadcast against loads (...)."""
    return values.reshape(-1, *(1,) * np.ndim(like))


@formula(ELASTIC)
def tensions_about_centroid(load: FlangeLoad, pattern_mm: Array) -> Array:
    """Return the pull on each bolt in N (n, ...), neutral axis through the centroid: N/n + M y / Σy² both ways.

    Below zero the bolt is relieved. Patterns that are lopsided are turned to their own principal axes by the full matrix
    of second moments. The force acts at the flange's centre.

    >>> import numpy as np
    >>> load = FlangeLoad(*(np.array(v) for v in (2000.0, 0.0, 0.0, 0.0, 800.0, -300.0)))
    >>> group = np.array([[50, 75], [-50, 75], [50, -75], [-50, -75]])
    >>> [round(float(v), 2) for v in tensions_about_centroid(load, group)]
    [4666.67, 1666.67, -666.67, -3666.67]
    """
    group = _group_of(pattern_mm)
    about_up = -load.about_up_nm * 1000 - load.normal_n * group.centre[0]
    about_across = load.about_across_nm * 1000 - load.normal_n * group.centre[1]
    first, second = (_bolts_first(share, load.normal_n) for share in group.shares)
    return np.asarray(load.normal_n / group.arms.shape[1] + first * about_up + second * about_across)


@formula(ELASTIC)
def tensions_about_edge(load: FlangeLoad, pattern_mm: Array, width_mm: float, height_mm: float) -> Array:
    """Return the pull on each bolt in N (n, ...) where the flange pivots on the edge that is pressed: M d / Σd².

    d is the distance from the pressed edge (half of width or height from the centre). Each way on its own, then added;
    the normal force in equal shares.

    >>> import numpy as np
    >>> load = FlangeLoad(*(np.array(v) for v in (0.0, 0.0, 0.0, 0.0, 800.0, 0.0)))
    >>> group = np.array([[50, 75], [-50, 75], [50, -75], [-50, -75]])
    >>> [round(float(v), 2) for v in tensions_about_edge(load, group, 150.0, 210.0)]
    [2162.16, 2162.16, 360.36, 360.36]
    """
    count, edges = _edges(np.asarray(pattern_mm, dtype=float).tobytes(), width_mm, height_mm)
    total = load.normal_n / count
    for moment, (high, low) in ((load.about_across_nm, edges[0]), (-load.about_up_nm, edges[1])):
        for share, part in ((high, np.maximum(moment, 0.0)), (low, np.maximum(-moment, 0.0))):
            total = total + _bolts_first(share, moment) * part
    return np.asarray(total)


@lru_cache(maxsize=256)
def _edges(pattern: bytes, width_mm: float, height_mm: float) -> tuple[int, Array]:
    """Return the number of bolts, and what each (2 axes, 2 edges, n) takes of 1 N·m about an axis, turning on an edge: N."""
    places = np.frombuffer(pattern).reshape(-1, 2)
    half = np.array([height_mm, width_mm])[:, None, None] / 2
    arms = np.maximum(half + np.array([1.0, -1.0])[:, None] * places.T[::-1, None], 0.0)
    return len(places), 1000 * arms / np.maximum((arms**2).sum(axis=-1, keepdims=True), 1e-9)


def bolt_tensions(load: FlangeLoad, pattern_mm: Array, width_mm: float, height_mm: float) -> Array:
    """Return the pull on each bolt in N (n, ...), the greater of both neutral-axis rules, never below zero.

    Tightening is left out: it does not add to the pull until the joint opens.
    """
    centroid = tensions_about_centroid(load, pattern_mm)
    return np.asarray(np.maximum(np.maximum(centroid, tensions_about_edge(load, pattern_mm, width_mm, height_mm)), 0.0))


@formula(EUROCODE, ultimate_mpa=Valid(400, 1000, "MPa"))
def tension_resistance(area_mm2: Num, ultimate_mpa: Num, gamma: Num = 1.25, *, countersunk: bool = False) -> Array:
    """Return Ft,Rd in N: 0.9 fub As / gamma, 0.63 with a countersunk head. Broadcasts.

    >>> round(float(tension_resistance(57.990, 700.0)) / 1000, 2)
    29.23
    """
    share = 0.63 if countersunk else 0.9
    return np.asarray(share * np.asarray(ultimate_mpa) * np.asarray(area_mm2, dtype=float) / gamma)


@formula(EUROCODE, ultimate_mpa=Valid(400, 1000, "MPa"), shear_factor=Valid(0.5, 0.6))
def shear_resistance(area_mm2: Num, ultimate_mpa: Num, gamma: Num = 1.25, shear_factor: Num = 0.6) -> Array:
    """Return Fv,Rd in N a shear plane: factor fub As / gamma. Broadcasts.

    factor is 0.6, and 0.5 for stainless steel with threads in the plane (EN 1993-1-4, from memory).

    >>> round(float(shear_resistance(57.990, 700.0)) / 1000, 2)
    19.48
    """
    return np.asarray(np.asarray(shear_factor) * ultimate_mpa * np.asarray(area_mm2, dtype=float) / gamma)


@formula(EUROCODE, diameter_mm=Valid(5, 39, "mm"))
def bearing_resistance(
    diameter_mm: Num, hole_mm: Num, sheet_mm: Num, edge_mm: Num, ultimate_mpa: Num, bolt_mpa: Num, gamma: Num = 1.25
) -> Array:
    """Return Fb,Rd in N of a metal sheet: k1 kb fu d t / gamma, kb = min(e/3d0, fub/fu, 1), k1 = min(2.8e/d0 - 1.7, 2.5).

    e is the distance to the edge along and across. Stainless sheet goes in with fu,red = 0.5 fy + 0.6 fu. Broadcasts.

    >>> round(float(bearing_resistance(12.0, 13.0, 6.0, 26.0, 530.0, 700.0)) / 1000, 2)
    50.88
    """
    edge, hole = np.asarray(edge_mm, dtype=float), np.asarray(hole_mm, dtype=float)
    along = np.minimum(np.minimum(edge / (3 * hole), np.asarray(bolt_mpa) / np.asarray(ultimate_mpa)), 1.0)
    across = np.minimum(2.8 * edge / hole - 1.7, 2.5)
    return np.asarray(across * along * np.asarray(ultimate_mpa) * diameter_mm * sheet_mm / gamma)


@formula(EUROCODE, flats_mm=Valid(8, 60, "mm"))
def punching_resistance(flats_mm: Num, sheet_mm: Num, ultimate_mpa: Num, gamma: Num = 1.25) -> Array:
    """Return Bp,Rd in N of a metal sheet under a nut: 0.6 π dm t fu / gamma; broadcasts.

    dm is the mean of the nut's widths across flats and across corners, not the hole's diameter.

    >>> round(float(punching_resistance(18.0, 6.0, 530.0)) / 1000, 2)
    92.99
    """
    mean = np.asarray(flats_mm, dtype=float) * (1 + 2 / np.sqrt(3)) / 2
    return np.asarray(0.6 * np.pi * mean * sheet_mm * np.asarray(ultimate_mpa) / gamma)


@formula(EUROCODE)
def combined(shear_n: Num, tension_n: Num, shear_resistance_n: Num, tension_resistance_n: Num) -> Array:
    """Return shear and pull together over what is allowed, 1 at the limit: Fv/FvRd + Ft/1.4FtRd, and Ft/FtRd alone.

    >>> round(float(combined(8.0, 12.0, 19.488, 29.232)), 4)
    0.7037
    """
    pull = np.asarray(tension_n, dtype=float) / tension_resistance_n
    return np.asarray(np.maximum(np.asarray(shear_n) / shear_resistance_n + pull / 1.4, pull))
