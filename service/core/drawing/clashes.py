"""What does not pass, in its place: for each check that fails the part of space it is about, and what it says."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from service.core.drawing.parts import heeled_drop
from service.core.drawing.scene import Axis, Box, Mounted, Scene, Thing, grown, joined, overlap
from service.core.drawing.shapes import Note, Outline
from service.core.drawing.things import rectangle, spots
from service.core.fit.shapes import Check
from service.core.fit.site import S
from service.core.fit.things import ARM, BLADE, PARTS, part_gap

MOST = 2
LEAST = 30.0
"""A place that collides is marked at least this large (mm)."""
OF_HULL = {"hull.blade": BLADE + 1, "hull.shaft": 0, "hull.head": 1, "hull.tiller": 2, "hull.vane": 3}
FLANGE_CHECKS = ("pad", "seat", "gap", "stands")


@dataclass(frozen=True)
class Clash:
    """A check that fails, and where; several places for one that fails in several."""

    check: Check
    places: tuple[Box, ...]

    @property
    def text(self) -> str:
        """Return what is said beside it; what may be taken off is a trade and not a refusal."""
        if not self.check.binds and self.check.id.startswith("obstacle"):
            return f"Take it off: {self.check.why}"
        return self.check.why[:1].upper() + self.check.why[1:]


def clashes(scene: Scene) -> tuple[Clash, ...]:
    """Return the checks that fail and refuse, and obstacles in the way that may be taken off."""
    failed = [c for c in scene.fit.checks if c.status == "fail" and (c.binds or c.id.startswith("obstacle"))]
    return tuple(Clash(check, tuple(_places(scene, check))) for check in failed)


def marks(scene: Scene, across: Axis, up: Axis) -> tuple[list[Outline], list[Note], list[str]]:
    """Return the hatched places of a view with what is wrong there, and as remarks what has no place."""
    outlines: list[Outline] = []
    notes: list[Note] = []
    remarks: list[str] = []
    for clash in clashes(scene):
        found = [one for one in (_seen(place, scene, across, up) for place in clash.places) if one is not None]
        outlines += [Outline("clash", points, label=clash.text, hatched=True) for points in found]
        if found:
            centre, *more = spots(found[0])
            notes.append(Note(clash.text, centre, "clash", urgent=True, others=tuple(more)))
        else:
            remarks.append(f"Does not pass: {clash.check.why}.")
    return outlines, notes, remarks


def _seen(place: Box, scene: Scene, across: Axis, up: Axis) -> tuple[tuple[float, float], ...] | None:
    box = list(place)
    for axis in range(3):
        lacking = LEAST - (box[2 * axis + 1] - box[2 * axis])
        if lacking > 0:
            box[2 * axis] -= lacking / 2
            box[2 * axis + 1] += lacking / 2
    a, b, c, d, e, f = box
    return rectangle((a, b, c, d, e, f), scene.window, across, up)


def _places(scene: Scene, check: Check) -> Iterator[Box]:
    role, _, rest = check.id.partition(".")
    limit = max(check.limit or 0.0, 0.0)
    if check.id.startswith("obstacle["):
        yield from _in_the_way(scene, int(check.id[9:-1]), limit)
    elif check.id in OF_HULL:
        yield _into_hull(scene, OF_HULL[check.id], limit)
    elif role == "main_rudder":
        yield from _rudder(scene, rest, limit)
    elif role in ("lower", "upper"):
        mounted = scene.lower if role == "lower" else scene.upper
        yield mounted.flange if rest in FLANGE_CHECKS else _arm(scene, mounted)
    elif role == "load":
        yield from (m.flange for m in scene.mounts if f".{m.role}." in check.id)
    else:
        yield from _along_shaft(scene, check.id)


def _arm(scene: Scene, mounted: Mounted) -> Box:
    arm = scene.around[ARM + (mounted.role == "upper")]
    return arm if math.isfinite(arm[0]) else mounted.flange


def _in_the_way(scene: Scene, index: int, limit: float) -> Iterator[Box]:
    """Give where the gear comes nearer to one obstacle than it may: the two worst places, worst first."""
    found = []
    for thing in scene.things:
        if thing.index != index:
            continue
        for part in range(len(PARTS)):
            gap = _gap(scene, thing, part)
            if gap < limit:
                shared = overlap(grown(scene.around[part], limit), joined(thing.start, thing.end))
                found += [(gap, part, shared)] if shared else []
    yield from (box for _, _, box in sorted(found)[:MOST])


def _gap(scene: Scene, thing: Thing, part: int) -> float:
    at = scene.at
    return float(
        part_gap(
            scene.site, 0, thing.place, scene.kit, 0, at.shaft_aft_mm, at.offset_mm, at.shaft_bottom_mm,
            (at.lower_height_mm, at.upper_height_mm), scene.lower.seat, scene.upper.seat, part,
        )
    )  # fmt: skip


def _into_hull(scene: Scene, part: int, limit: float) -> Box:
    """Return how far a part, with the room it must have, reaches into the hull; the part itself where it is only near."""
    around = grown(scene.around[part], limit)
    y = scene.at.offset_mm
    aft = max(scene.skin(y, z) for z in scene.stations)
    under = scene.window[4] if around[4] < scene.value(S.BOTTOM) else scene.value(S.BOTTOM)
    hull: Box = (-math.inf, aft, -math.inf, math.inf, under, scene.value(S.TOP))
    return overlap(around, hull) or scene.around[part]


def _rudder(scene: Scene, rest: str, limit: float) -> Iterator[Box]:
    """Give where blade or metal comes too near to what the main rudder sweeps."""
    parts = (BLADE, BLADE + 1) if rest == "blade" else (0, ARM, ARM + 1)
    for swept in rudder_boxes(scene):
        for part in parts:
            shared = overlap(grown(scene.around[part], limit), swept) if math.isfinite(scene.around[part][0]) else None
            if shared:
                yield shared
                break


def rudder_boxes(scene: Scene) -> tuple[Box, ...]:
    """Return a box about all that each main rudder sweeps."""
    stock, offset = scene.value(S.STOCK), scene.value(S.RUDDER_OFFSET)
    aft, fore = scene.value(S.TRAILING) - stock, stock - scene.value(S.LEADING)
    side = max(aft, fore) * scene.value(S.RUDDER_SIN)
    low, high = scene.value(S.RUDDER_BOTTOM), scene.value(S.RUDDER_TOP)
    return tuple((stock - fore, stock + aft, y - side, y + side, low, high) for y in sorted({-offset, offset}))


def _along_shaft(scene: Scene, id_: str) -> Iterator[Box]:
    """Give the stretch of shaft or blade that a check of heights is about; nothing for one that has no place."""
    at, (low, high) = scene.at, scene.blade
    stretches = {
        "spacing": (at.lower_height_mm, at.upper_height_mm),
        "overhang": ((low + high) / 2, at.lower_height_mm),
        "head": (at.upper_height_mm, at.shaft_top_mm),
        "foot": (at.shaft_bottom_mm, at.lower_height_mm),
    }
    head, _, _ = id_.partition(".")
    if head in ("immersion", "root_depth"):  # the blade that is out of the water, or the water above it
        x0, x1, y0, y1, _, _ = joined(scene.around[BLADE], scene.around[BLADE + 1])
        water = (
            -heeled_drop(scene) if id_.endswith("weather") else heeled_drop(scene) if id_.endswith("leeward") else 0.0
        )
        yield x0, x1, y0, y1, min(high, max(water, low)), max(high, water)
    elif id_ in stretches:
        x, y = scene.axis
        r = scene.gear.tube.outside_mm
        first, last = sorted(stretches[id_])
        yield x - r, x + r, y - r, y + r, first, last
