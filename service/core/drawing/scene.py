"""The boat and the gear set on it as solids in the frame of the boat form: what every view is a projection of."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property
from typing import Literal

import numpy as np

from service.core.boat import BoatForm, Obstacle
from service.core.catalogue import Bracket, Catalogue, Gear, Role
from service.core.drawing.outline import half, stations
from service.core.drawing.shapes import Point
from service.core.fit import Fit, Placement
from service.core.fit.assemble import boxes_of
from service.core.fit.boats import prepare
from service.core.fit.kit import Kit, build
from service.core.fit.mounts import Seated, seat
from service.core.fit.names import obstacle_names
from service.core.fit.shapes import Pad
from service.core.fit.site import Flag, S, Site, skin
from service.core.fit.terms import terms
from service.core.fit.things import FLANGE, surroundings
from service.core.form import with_values

Box = tuple[float, float, float, float, float, float]
"""x, y, z of a box about something, low end before high."""
Axis = Literal[0, 1, 2]
FORWARD = 900.0
"""How much of the hull is drawn forward of the top edge (mm)."""
ABOVE, UNDER, BESIDE = 150.0, 120.0, 250.0
"""How far a view reaches above the vane, under the blade and beside what is widest (mm); the rest is cut off there."""
SWUNG, MARGIN = 1000.0, 50.0
"""What swings aft is followed so far beyond that, and how much is left beside it (mm)."""


@dataclass(frozen=True)
class Mounted:
    """One bracket as seated, with its pad, how far its backing plate reaches beyond the bolts, and a box about its flange."""

    role: Role
    bracket: Bracket
    seat: Seated
    collar: float
    pad: Pad | None
    overlap_mm: float | None
    flange: Box


@dataclass(frozen=True)
class Thing:
    """An obstacle's box: where it stands and where a moving one ends; any end may be infinite."""

    obstacle: Obstacle
    index: int
    place: int
    name: str
    start: Box
    end: Box

    @property
    def moved(self) -> bool:
        """Say whether it is known to end elsewhere than it stands."""
        return self.obstacle.swept_to is not None and self.start != self.end


@dataclass(frozen=True)
class Scene:
    """Everything a view needs. `site` has one row, the nominal boat; `kit` one configuration; `around` (14, 6) its parts."""

    form: BoatForm
    fit: Fit
    catalogue: Catalogue
    site: Site
    kit: Kit
    at: Placement
    gear: Gear
    lower: Mounted
    upper: Mounted
    things: tuple[Thing, ...]
    around: tuple[Box, ...]

    @property
    def mounts(self) -> tuple[Mounted, Mounted]:
        """Return both brackets, the lower first."""
        return self.lower, self.upper

    @property
    def axis(self) -> Point:
        """Return where the shaft stands: x and y."""
        return self.at.shaft_aft_mm, self.at.offset_mm

    def value(self, column: S) -> float:
        """Return one of the boat's values as the fit took it."""
        return float(self.site.values[0, column])

    def flag(self, which: Flag) -> bool:
        """Say whether a flag of the boat is set."""
        return bool(self.site.flags[which])

    def skin(self, y: float, z: float) -> float:
        """Return x of the skin."""
        return float(skin(self.site, 0, y, z)[0])

    def half(self, z: float) -> float:
        """Return the half-breadth of the skin at a height; of the hull as it was given where only the post is a seat."""
        return half(self.site, z)

    @cached_property
    def stations(self) -> tuple[float, ...]:
        """Return heights at which the skin is drawn, rising, both edges of a step among them."""
        return stations(self.site)

    @property
    def blade(self) -> tuple[float, float]:
        """Return the heights of the blade's lower and upper end."""
        high = self.at.shaft_bottom_mm - self.gear.blade.root_gap_mm
        return high - self.gear.blade.span_mm, high

    @cached_property
    def window(self) -> Box:
        """Return what the views show; the rest is cut off there, for a stay may be ten metres high."""
        x, y = self.axis
        vane = self.gear.vane
        wide = max(self.half(z) for z in self.stations)
        beside = max(wide, abs(y) + vane.radius_mm) + BESIDE
        low = min(self.blade[0], self.value(S.BOTTOM)) - UNDER
        aft = x + max(vane.radius_mm, self.gear.blade.chord_mm) + BESIDE
        swung = [t.end[1] for t in self.things if t.moved and t.end[1] < aft + SWUNG]
        aft = max([aft, *(one + MARGIN for one in swung)])
        fore = min(-FORWARD, min(self.skin(y, z) for z in self.stations) - MARGIN)
        return fore, max(aft, BESIDE), -beside, beside, low, self.at.shaft_top_mm + vane.top_mm + ABOVE


def scene(form: BoatForm, fit: Fit, catalogue: Catalogue) -> Scene:
    """Return the scene of a fit. ValueError where nothing was placed, KeyError where the catalogue lacks a code.

    The boat is drawn as the fit took it: what the form states, and for the rest what the fit says it filled in.
    """
    if fit.placement is None:
        raise ValueError("nothing was placed, so there is nothing to draw")
    filled = {f.field: f.value for f in fit.filled if not f.field.startswith("obstacles[")}
    boats = prepare(with_values(form, filled), catalogue, draws=1)
    site, at, kit = boats.nominal, fit.placement, build(catalogue, [fit.configuration])
    t = terms(catalogue.rules)
    x, y, collars = at.shaft_aft_mm, at.offset_mm, (at.lower_height_mm, at.upper_height_mm)
    seats = [seat(site, 0, m, 0, y, x, z, t) for m, z in zip((kit.lower, kit.upper), collars, strict=True)]
    around = surroundings(kit, 0, x, y, at.shaft_bottom_mm, collars, *seats)
    boxes = tuple(_box(row) for row in around)
    overlaps = fit.loads.get("backing_overlap_mm", {})
    roles: tuple[tuple[Role, str], ...] = (("lower", fit.configuration.lower), ("upper", fit.configuration.upper))
    lower, upper = (
        Mounted(
            role, catalogue.bracket(code), seats[n], collars[n], next((p for p in fit.pads if p.role == role), None),
            overlaps.get(role), boxes[FLANGE + n],
        )
        for n, (role, code) in enumerate(roles)
    )  # fmt: skip
    return Scene(
        boats.form, fit, catalogue, site, kit, at, catalogue.gear(fit.configuration.gear), lower, upper,
        tuple(_things(boats.form, site)), boxes,
    )  # fmt: skip


def _things(form: BoatForm, site: Site) -> Iterator[Thing]:
    """Give the obstacles whose place is known or usual."""
    names = obstacle_names(form)
    for place, (index, obstacle, _) in enumerate(boxes_of(form)):
        row = site.boxes[0, place]
        start, end = _box(row[:6]), _box(row[6:])
        if start[0] == np.inf or start[2] == np.inf or start[4] == np.inf:
            continue  # neither place nor prior
        name = names[f"obstacle[{index}]"]
        if obstacle.kind == "other" and obstacle.note:
            name = obstacle.note
        if obstacle.side == "both" and obstacle.starboard_mm is None:
            name = f"{name} to {'port' if start[2] + start[3] < 0 else 'starboard'}"
        yield Thing(obstacle, index, place, name, start, end)


def _box(row: np.typing.NDArray[np.float64]) -> Box:
    a, b, c, d, e, f = (float(v) for v in row)
    return a, b, c, d, e, f


def overlap(one: Box, two: Box) -> Box | None:
    """Return what two boxes share, None where they are apart."""
    low = [max(one[n], two[n]) for n in (0, 2, 4)]
    high = [min(one[n], two[n]) for n in (1, 3, 5)]
    if any(h < a for a, h in zip(low, high, strict=True)):
        return None
    return low[0], high[0], low[1], high[1], low[2], high[2]


def grown(box: Box, by: float) -> Box:
    """Return the box with so much more on every side."""
    return box[0] - by, box[1] + by, box[2] - by, box[3] + by, box[4] - by, box[5] + by


def joined(one: Box, two: Box) -> Box:
    """Return the box about two boxes."""
    return (
        min(one[0], two[0]), max(one[1], two[1]), min(one[2], two[2]), max(one[3], two[3]), min(one[4], two[4]),
        max(one[5], two[5]),
    )  # fmt: skip
