"""The gear against the boat's own rudder, over every pair of angles, and the wake behind it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.fit.entry import Entry
from service.core.fit.kit import Kit
from service.core.fit.mounts import Seated
from service.core.fit.site import Site
from service.core.fit.solids import Sector, apart, interval_gap, point_sector, sector_rectangle, sectors

if TYPE_CHECKING:
    from service.core.fit.checks import Spot

Array = NDArray[np.float64]


def blade_sectors(kit: Kit, x: Array, y: Array) -> tuple[Sector, Sector]:
    """Return the plan of the blade through all its angles: forward and aft of the shaft axis."""
    return Sector(x, y, kit.balance, kit.blade_angle, -1.0), Sector(x, y, kit.tail, kit.blade_angle, 1.0)


def rudder_sectors(site: Site, y: Array) -> tuple[Sector, Sector]:
    """Return the plan of one main rudder at `y` through all its angles: aft and forward of its stock."""
    half = np.radians(site.deflection)
    aft = Sector(site.stock, y, np.maximum(site.trailing - site.stock, 0.0), half, 1.0)
    return aft, Sector(site.stock, y, np.maximum(site.stock - site.leading, 0.0), half, -1.0)


def entries(site: Site, kit: Kit, spot: Spot, seated: tuple[Seated, Seated], rules: Rules, far: float) -> list[Entry]:
    """Return blade, shaft, arm and strut clearances from the main rudder, and the wake as advice.

    A clearance that is surely more than `far` scales above its limit may come back as a lower bound of itself.
    """
    limit, scale = rules["main_rudder_gap"], rules.scale_of("main_rudder")
    sides = (site.rudder_offset,) if not site.rudder_offset.any() else (-site.rudder_offset, site.rudder_offset)
    blade, solid = np.inf, np.inf
    for y in sides:
        blade = np.minimum(blade, _blade(site, kit, spot, y, limit + far * scale))
        if site.hung_outside.any():
            solid = np.minimum(solid, _fixed(site, kit, spot, y, seated))
    found = [
        Entry(
            "main_rudder.blade",
            blade,
            np.asarray(limit),
            blade - limit,
            scale,
            rule="main_rudder_gap",
            case="every pair of angles",
        )
    ]
    if site.hung_outside.any():
        margin = np.where(site.hung_outside > 0, solid - limit, np.inf)
        found.append(
            Entry(
                "main_rudder.shaft",
                solid,
                np.asarray(limit),
                margin,
                scale,
                rule="main_rudder_gap",
                case="shaft, arms and struts",
            )
        )
    found.append(_wake(site, spot, sides, rules))
    return found


def _blade(site: Site, kit: Kit, spot: Spot, y: Array, enough: float) -> Array:
    high = spot.bottom - kit.root_gap
    height = interval_gap(high - kit.span, high, site.rudder_bottom, site.rudder_top)
    ahead = spot.x - kit.balance - np.maximum(site.trailing, site.stock)
    gap = apart(ahead, height)
    near = np.flatnonzero(gap < enough)
    if near.size:
        part = _at(near, spot.y.size, kit, spot, site)
        whole = not np.isfinite(enough)
        gap[near] = _blade_exact(*part, np.broadcast_to(y, spot.y.shape)[near], height[near], whole=whole)
    return gap


def _at(rows: NDArray[np.intp], n: int, kit: Kit, spot: Spot, site: Site) -> tuple[Kit, Spot, Site]:
    return kit if kit.length.size != n else kit.take(rows), spot.take(rows), site if site.rows != n else site.take(rows)


def _blade_exact(kit: Kit, spot: Spot, site: Site, y: Array, height: Array, *, whole: bool) -> Array:
    """Return the clearance; `whole` counts the part of the rudder forward of its stock too, which never stands nearest."""
    plan = np.full(spot.y.shape, np.inf)
    for one in rudder_sectors(site, y)[: 2 if whole else 1]:
        for other in blade_sectors(kit, spot.x, spot.y):
            plan = np.minimum(plan, sectors(one, other))
    # where they meet in plan, how far aft the blade would have to go tells the search which way is out
    into = np.minimum(spot.x - kit.balance - site.trailing, 0.0)
    return apart(np.where(plan <= 0, into, plan), height)


def _fixed(site: Site, kit: Kit, spot: Spot, y: Array, seated: tuple[Seated, Seated]) -> Array:
    aft, _ = rudder_sectors(site, y)
    into = np.minimum(spot.x - kit.tube - site.trailing, 0.0)
    plan = point_sector(spot.x, spot.y, aft) - kit.tube
    top = spot.bottom + kit.length
    best = apart(np.where(plan <= 0, into, plan), interval_gap(spot.bottom, top, site.rudder_bottom, site.rudder_top))
    for role in seated:
        box = role.arm
        gap = sector_rectangle(aft, (box[0], box[1], box[2], box[3]))
        gap = np.where(gap <= 0, -np.abs(site.trailing), gap)
        best = np.minimum(best, apart(gap, interval_gap(box[4], box[5], site.rudder_bottom, site.rudder_top)))
        if role.feet is not None:
            best = np.minimum(best, _struts(site, spot, aft, role))
    return best


def _struts(site: Site, spot: Spot, aft: Sector, role: Seated) -> Array:
    best = np.full(spot.y.shape, np.inf)
    collar = (role.arm[4] + role.arm[5]) / 2
    assert role.feet is not None  # noqa: S101 - for the type checker
    used = role.strut_length > 0
    for foot in role.feet:
        for t in np.linspace(0.0, 1.0, 9):
            px, py, pz = (
                foot[0] + t * (spot.x - foot[0]),
                foot[1] + t * (spot.y - foot[1]),
                foot[2] + t * (collar - foot[2]),
            )
            height = interval_gap(pz, pz, site.rudder_bottom, site.rudder_top)
            best = np.minimum(best, np.where(used, apart(point_sector(px, py, aft), height), np.inf))
    return best


def _wake(site: Site, spot: Spot, sides: tuple[Array, ...], rules: Rules) -> Entry:
    behind = spot.x - site.trailing
    near = np.full(spot.y.shape, np.inf)
    for y in sides:
        near = np.minimum(near, np.abs(spot.y - y))
    in_wake = (behind >= 0) & (behind <= rules["wake_reach"])
    margin = np.where(in_wake, near - rules["wake_gap"], np.inf)
    return Entry(
        "wake",
        near,
        np.asarray(rules["wake_gap"]),
        margin,
        rules["wake_gap"],
        rule="wake_gap",
        binds=False,
        case="under way",
    )
