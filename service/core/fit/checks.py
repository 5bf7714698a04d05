"""Every check of a placement, over arrays: one boat, a thousand draws and a whole catalogue through the same lines.

A row is one (boat, configuration, placement); site, kit and spot broadcast against each other. Each check comes back
as an `Entry` with value, limit and margin per row; margin >= 0 passes. The published text is made from it.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.fit import mounts, obstacles, rudder
from service.core.fit.entry import Entry
from service.core.fit.kit import Kit
from service.core.fit.site import Site, skin
from service.core.fit.solids import segment_rectangle_profile

Array = NDArray[np.float64]
FAR_BELOW = -5000.0
CEILING = 10.0
"""A scaled margin counts for no more than this."""


@dataclass(frozen=True)
class Spot:
    """A placement: offset, shaft axis, lower and upper collar centre, shaft bottom; each (N,)."""

    y: Array
    x: Array
    lower: Array
    upper: Array
    bottom: Array

    def take(self, rows: NDArray[np.intp]) -> Spot:
        """Return the placements at `rows`."""
        return Spot(self.y[rows], self.x[rows], self.lower[rows], self.upper[rows], self.bottom[rows])

    def stack(self) -> Array:
        """Return the placements as (5, N)."""
        return np.stack([self.y, self.x, self.lower, self.upper, self.bottom])

    @classmethod
    def of(cls, stacked: Array) -> Spot:
        """Return placements from (5, N)."""
        return cls(*stacked)


@dataclass(frozen=True)
class Sheet:
    """All entries of a placement, with what was solved on the way (pads, struts)."""

    entries: tuple[Entry, ...]
    lower: mounts.Seated
    upper: mounts.Seated

    def __getitem__(self, id_: str) -> Entry:
        """Return the entry of that id; KeyError where there is none."""
        for entry in self.entries:
            if entry.id == id_:
                return entry
        raise KeyError(id_)

    def without(self, id_: str) -> Sheet:
        """Return the sheet less one check."""
        return Sheet(tuple(e for e in self.entries if e.id != id_), self.lower, self.upper)

    def scaled(self, *, movable: bool = False) -> Array:
        """Return scaled margins (K, N) of the checks that bind; `movable`: only those that a placement can change."""
        kept = [e for e in self.entries if e.binds and not (movable and e.constant)]
        margins = np.empty((len(kept), self.lower.room.shape[-1]))
        for row, entry in zip(margins, kept, strict=True):
            np.divide(entry.margin, entry.scale, out=row)
        return margins

    def smallest(self) -> Array:
        """Return the smallest scaled margin a row."""
        return np.asarray(self.scaled().min(axis=0))

    def governing(self, *, movable: bool = False) -> Array:
        """Return scaled margins (K, N) as a search sees them: finite, and without what can grow no further.

        A wholly immersed blade cannot be immersed more; its margin is set aside so that the next smallest counts.
        """
        margins = np.nan_to_num(self.scaled(movable=movable), nan=-1e3, posinf=CEILING, neginf=-1e3)
        names = [e.id for e in self.entries if e.binds and not (movable and e.constant)]
        for name in ("immersion.rest", "immersion.weather"):
            margins[names.index(name)][self[name].value >= 1.0] = CEILING
        return margins


def evaluate(site: Site, kit: Kit, spot: Spot, rules: Rules, *, far: float = np.inf) -> Sheet:
    """Return every check of each row. Units mm, deg, kg; formulas in the modules named by each entry.

    A search sets `far`: a clearance surely more than that many scales above its limit may be a lower bound of itself.
    """
    lower = mounts.seat(site, kit.lower, spot.y, spot.x, spot.lower, rules)
    upper = mounts.seat(site, kit.upper, spot.y, spot.x, spot.upper, rules)
    entries = [
        *mounts.entries("lower", lower, kit.lower, rules),
        *mounts.entries("upper", upper, kit.upper, rules),
        *_shaft(kit, spot, rules),
        *_water(site, kit, spot, rules),
        *rudder.entries(site, kit, spot, (lower, upper), rules, far),
        *_hull(site, kit, spot, rules),
        *obstacles.entries(site, kit, spot, (lower, upper), rules, far),
        _displacement(site, kit, rules),
    ]
    return Sheet(tuple(entries), lower, upper)


def _shaft(kit: Kit, spot: Spot, rules: Rules) -> list[Entry]:
    top = spot.bottom + kit.length
    middle = spot.bottom - kit.root_gap - kit.span / 2
    spacing = spot.upper - spot.lower
    room, needed = top - spot.upper, kit.head_room + kit.upper.collar / 2
    overhang = spot.lower - middle
    foot, under = spot.lower - spot.bottom, kit.lower.collar / 2
    return [
        Entry.least("spacing", spacing, rules, "bracket_spacing_min"),
        Entry.most("overhang", overhang, rules, "overhang_max"),
        Entry("head", room, needed, room - needed, rules.scale_of("head"), rule="gear.head_mm"),
        Entry("foot", foot, under, foot - under, rules.scale_of("foot"), rule="bracket.collar"),
    ]


def _water(site: Site, kit: Kit, spot: Spot, rules: Rules) -> list[Entry]:
    """Immersed share and root depth at rest and heeled about (y 0, z 0), still water."""
    heel = np.radians(rules["heel_angle"])
    high = spot.bottom - kit.root_gap
    low = high - kit.span
    weather = -np.abs(spot.y) * np.tan(heel)
    at_rest = np.clip(-low / kit.span, 0.0, 1.0)
    heeled = np.clip((weather - low) / kit.span, 0.0, 1.0)
    leeward = -(high * np.cos(heel) - np.abs(spot.y) * np.sin(heel))
    depth = -high
    return [
        Entry.least("immersion.rest", at_rest, rules, "immersed_share_min", unit="1"),
        Entry.least("immersion.weather", heeled, rules, "immersed_share_heeled_min", unit="1", case="heeled"),
        Entry.most("root_depth.rest", depth + 0 * site.top, rules, "root_depth_max"),
        Entry.most("root_depth.leeward", leeward, rules, "root_depth_max", case="heeled"),
    ]


def _hull(site: Site, kit: Kit, spot: Spot, rules: Rules) -> list[Entry]:
    """Blade, shaft, head, tiller and vane against skin and deck.

    Each is taken at the side nearest the centreline with its whole radius forward, where a cambered skin stands
    furthest aft: never less careful than the true shape, by a millimetre or two at usual cambers.
    """
    top = spot.bottom + kit.length
    blade_top = spot.bottom - kit.root_gap
    parts = {
        "blade": (kit.balance, blade_top - kit.span, blade_top),
        "shaft": (kit.tube, spot.bottom, top),
        "head": (kit.head_radius, top, top + kit.head_height),
        "tiller": (kit.tiller_radius, top - kit.tiller_height, top),
        "vane": (kit.vane_radius, top + kit.vane_bottom, top + kit.vane_top),
    }
    names, shape = list(parts), spot.y.shape
    radius = np.stack([np.broadcast_to(parts[n][0], shape) for n in names])
    low = np.stack([np.broadcast_to(parts[n][1], shape) for n in names])
    high = np.stack([np.broadcast_to(parts[n][2], shape) for n in names])
    side = np.sign(spot.y) * np.maximum(np.abs(spot.y) - radius, 0.0)
    z, x = _stations(site, side)
    gap = segment_rectangle_profile(z, x, spot.x - radius, low, high)
    scale = rules.scale_of("hull")
    limit = rules["fixed_gap"]
    return [
        Entry(f"hull.{name}", gap[i], np.asarray(limit), gap[i] - limit, scale, rule="fixed_gap", case=name)
        for i, name in enumerate(names)
    ]


def _stations(site: Site, side: Array) -> tuple[Array, Array]:
    """Return heights and x of the skin as a polyline (K, parts, N), from far below up to the top edge."""
    n = side.shape[-1]
    top, bottom = np.broadcast_to(site.top, (n,)), np.broadcast_to(site.bottom, (n,))
    if site.curve is not None:
        share = np.linspace(0.0, 1.0, 9)[:, None]
        heights = [bottom + s * (top - bottom) for s in share]
    elif site.stepped:
        step = np.broadcast_to(site.step_height, (n,))
        heights = [bottom, step - 1e-6, step, top]
    else:
        heights = [bottom, top]
    z = np.stack([np.full(n, FAR_BELOW), *heights])
    x = np.stack([skin(site, side, np.broadcast_to(h, side.shape)).x for h in z])
    return np.broadcast_to(z[:, None, :], x.shape), x


def _displacement(site: Site, kit: Kit, rules: Rules) -> Entry:
    margin = kit.max_displacement - site.displacement
    return Entry(
        "displacement", site.displacement + 0 * margin, kit.max_displacement, margin, rules.scale_of("displacement"),
        unit="kg", rule="gear.max_displacement_kg", constant=True,
    )  # fmt: skip
