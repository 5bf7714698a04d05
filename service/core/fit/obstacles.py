"""The gear against what stands on the stern: every part of it against every box, fixed or swept."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.fit.entry import Entry
from service.core.fit.kit import Kit
from service.core.fit.mounts import Seated
from service.core.fit.rudder import blade_sectors
from service.core.fit.site import Site
from service.core.fit.solids import apart, interval_gap, point_rectangle, rectangles, sector_rectangle

if TYPE_CHECKING:
    from service.core.fit.checks import Spot

Array = NDArray[np.float64]
STAGES = np.linspace(0.0, 1.0, 9)
"""A moving obstacle is taken at these stages; between both ends each is a box, their union the hull of the two."""
PARTS = ("shaft", "head", "tiller", "vane", "blade", "lower arm", "upper arm", "lower struts", "upper struts")


def entries(site: Site, kit: Kit, spot: Spot, seated: tuple[Seated, Seated], rules: Rules, far: float) -> list[Entry]:
    """Return one check an obstacle: the least gap of any part, less what it must keep.

    The blade's gap may come back as a lower bound of itself where it is surely more than `far` scales above the limit.
    """
    scale = rules.scale_of("obstacle")
    found: dict[int, Entry] = {}
    for place, box in enumerate(site.boxes):
        enough = rules[box.gap] + far * scale
        gap = clearances(site, kit, spot, seated, place, enough).min(axis=0)
        if box.index in found:
            gap = np.minimum(gap, found[box.index].value)
        limit = rules[box.gap]
        found[box.index] = Entry(
            f"obstacle[{box.index}]", gap, np.asarray(limit), gap - limit, scale, rule=box.gap, binds=box.binds
        )
    return list(found.values())


def clearances(
    site: Site, kit: Kit, spot: Spot, seated: tuple[Seated, Seated], place: int, enough: float = np.inf
) -> Array:
    """Return the gap of each of PARTS (rows) from the box at `place`, in all its positions."""
    start, end = site.box_from[place], site.box_to[place]
    if not site.boxes[place].moves:
        return _gaps(kit, spot, seated, start, enough)
    best = _gaps(kit, spot, seated, end, enough)
    for t in STAGES[:-1]:
        best = np.minimum(best, _gaps(kit, spot, seated, _between(start, end, t), enough))
    return best


def _between(start: Array, end: Array, t: float) -> Array:
    if t <= 0:
        return start
    if t >= 1:
        return end
    both = np.isfinite(start) & np.isfinite(end)
    mixed = (1 - t) * np.where(both, start, 0.0) + t * np.where(both, end, 0.0)
    return np.where(both, mixed, np.where(np.isfinite(start), end, start))


def _gaps(kit: Kit, spot: Spot, seated: tuple[Seated, Seated], box: Array, enough: float) -> Array:
    top = spot.bottom + kit.length
    plan = (box[0], box[1], box[2], box[3])
    centre = point_rectangle(spot.x, spot.y, plan)
    discs = (
        (kit.tube, spot.bottom, top),
        (kit.head_radius, top, top + kit.head_height),
        (kit.tiller_radius, top - kit.tiller_height, top),
        (kit.vane_radius, top + kit.vane_bottom, top + kit.vane_top),
    )
    gaps = [apart(centre - radius, interval_gap(low, high, box[4], box[5])) for radius, low, high in discs]
    gaps.append(_blade(kit, spot, box, centre, enough))
    for role in seated:
        arm = role.arm
        gaps.append(
            apart(rectangles((arm[0], arm[1], arm[2], arm[3]), plan), interval_gap(arm[4], arm[5], box[4], box[5]))
        )
    for role, mount in zip(seated, (kit.lower, kit.upper), strict=True):
        gaps.append(_struts(spot, role, mount.strut_radius, mount.strutted, box))
    return np.stack(np.broadcast_arrays(*gaps))


def _blade(kit: Kit, spot: Spot, box: Array, centre: Array, enough: float) -> Array:
    high = spot.bottom - kit.root_gap
    height = interval_gap(high - kit.span, high, box[4], box[5])
    gap = apart(centre - np.maximum(kit.tail, kit.balance), height)
    near = np.flatnonzero(gap < enough)
    if near.size:
        n = spot.y.size
        own, at = kit if kit.length.size != n else kit.take(near), spot.take(near)
        plan = box[:4] if box.shape[1] != n else box[:4, near]
        swept = [sector_rectangle(s, (plan[0], plan[1], plan[2], plan[3])) for s in blade_sectors(own, at.x, at.y)]
        gap[near] = apart(np.minimum(*swept), height[near])
    return gap


def _struts(spot: Spot, role: Seated, radius: Array, strutted: Array, box: Array) -> Array:
    if role.feet is None:
        return np.full(spot.y.shape, np.inf)
    collar = (role.arm[4] + role.arm[5]) / 2
    t = STAGES[:, None]
    best = np.full(spot.y.shape, np.inf)
    for foot in role.feet:
        px, py, pz = (
            foot[0] + t * (spot.x - foot[0]),
            foot[1] + t * (spot.y - foot[1]),
            foot[2] + t * (collar - foot[2]),
        )
        away = [
            np.maximum(np.maximum(low - p, p - high), 0.0)
            for p, low, high in zip((px, py, pz), box[0::2], box[1::2], strict=True)
        ]
        best = np.minimum(best, (np.sqrt(away[0] ** 2 + away[1] ** 2 + away[2] ** 2) - radius).min(axis=0))
    return np.where(strutted, best, np.inf)
