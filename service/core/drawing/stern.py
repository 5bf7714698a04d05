"""From aft: y to the right is starboard, z up. The skin that can bear a bracket, flanges, bolts, blade, vane, water."""

from __future__ import annotations

import math

from service.core.drawing import clashes, lengths, things
from service.core.drawing.parts import WALL_MM, about, block, heel_words, rod, shaft_words, vane_middle
from service.core.drawing.scene import Mounted, Scene
from service.core.drawing.shapes import Dimension, Disc, Note, Outline, View
from service.core.fit.site import Flag, S
from service.core.loads.threads import SIZES

RUDDER_THICK = 60.0
"""How thick a main rudder is drawn from aft: nobody is asked (mm)."""
HOLE_MM = 11.0
"""A hole of a size that no table holds is drawn this wide (mm)."""


def stern(scene: Scene, *, inches: bool) -> View:
    """Return the view from aft."""
    outlines, notes = _hull(scene)
    discs: list[Disc] = []
    for mounted in scene.mounts:
        shapes, holes = _bracket(scene, mounted)
        outlines += shapes
        discs += holes
    outlines += _gear(scene)
    outlines += _water(scene)
    seen, named, beyond = things.obstacles(scene, 1, 2)
    wrong, said, remarks = clashes.marks(scene, 1, 2)
    return View(
        "stern", "From aft", _says(scene), (*outlines, *seen, *wrong), tuple(discs), _dimensions(scene, inches=inches),
        (*said, *notes, *_names(scene), *named), ("Starboard to the right.", *remarks, *beyond),
        lengths.unit(inches=inches),
    )  # fmt: skip


def where(scene: Scene) -> str:
    """Return where the shaft stands athwartships, in words."""
    y = scene.at.offset_mm
    if abs(y) < 1:
        return "on the centreline"
    return f"{abs(y):.0f} mm to {'starboard' if y > 0 else 'port'} of the centreline"


def _says(scene: Scene) -> str:
    return f"From aft, starboard to the right: the shaft stands {where(scene)}, plumb both ways."


def _hull(scene: Scene) -> tuple[list[Outline], list[Note]]:
    halves = [(scene.half(z), z) for z in scene.stations]
    outline = (*((-h, z) for h, z in halves), *((h, z) for h, z in reversed(halves)))
    found = [
        Outline("body", outline, label="skin as far as it was given"),
        Outline("hull", outline, label="skin as far as it was given"),
    ]
    notes: list[Note] = []
    if scene.flag(Flag.STEPPED):
        step, half = scene.value(S.STEP_HEIGHT), scene.value(S.HALF_STEP)
        found.append(Outline("hull", ((-half, step), (half, step)), closed=False, label="step's after edge"))
        notes.append(Note("step", (-half * 0.8, step), "hull"))
    if scene.flag(Flag.POST_ONLY):
        post = scene.value(S.POST) / 2
        low, high = scene.stations[0], scene.stations[-1]
        found.append(block("hull", -post, post, low, high, "sternpost"))
        notes.append(Note("sternpost", (0.0, high - 0.1 * (high - low)), "hull"))
    low_x, high_x = scene.window[4], scene.window[5]
    found.append(Outline("centre", ((0.0, low_x), (0.0, high_x)), closed=False, label="centreline"))
    for number, box in enumerate(clashes.rudder_boxes(scene)):
        y = (box[2] + box[3]) / 2
        flat = (box[0], box[1], y - RUDDER_THICK / 2, y + RUDDER_THICK / 2, box[4], box[5])
        points = things.rectangle(flat, scene.window, 1, 2)
        if points is not None:
            found.append(Outline("rudder", points, label="main rudder"))
            if number == 0:
                notes.append(Note("main rudder", (y, (points[0][1] * 3 + points[2][1]) / 4), "rudder"))
    return found, notes


def holes(mounted: Mounted, y: float, z: float) -> list[Disc]:
    """Return the bolt holes of a flange about its centre."""
    size = SIZES.get(mounted.bracket.bolts.size)
    radius = (size.hole_mm if size else HOLE_MM) / 2
    label = f"hole for {mounted.bracket.bolts.size}"
    return [Disc("hole", (y + across, z + up), radius, label) for across, up in mounted.bracket.bolts.pattern_mm]


def _bracket(scene: Scene, mounted: Mounted) -> tuple[list[Outline], list[Disc]]:
    """Return flange (or base, or cheeks), holes, struts and collar of one bracket."""
    y, bracket, z = scene.at.offset_mm, mounted.bracket, mounted.seat.flange
    wide, tall = bracket.flange.width_mm / 2, bracket.flange.height_mm / 2
    half, radius = bracket.collar.height_mm / 2, scene.gear.tube.outside_mm / 2 + WALL_MM
    collar = block(
        "metal", y - radius, y + radius, mounted.collar - half, mounted.collar + half, f"collar of {bracket.code}"
    )
    if bracket.kind == "step":
        base = block("metal", y - wide, y + wide, z, z + bracket.flange.thickness_mm, f"base of {bracket.code}")
        column = block("metal", y - radius, y + radius, z, mounted.collar, f"column of {bracket.code}")
        return [column, base, collar], []
    if bracket.kind == "cheek":
        post, thick = scene.value(S.POST) / 2, bracket.flange.thickness_mm
        cheeks = [
            about("metal", side * (post + thick / 2), thick / 2, z - tall, z + tall, f"cheek of {bracket.code}")
            for side in (-1, 1)
        ]
        return [*cheeks, collar], []
    shapes = [block("metal", y - wide, y + wide, z - tall, z + tall, f"flange of {bracket.code}")]
    if bracket.struts is not None:
        spread = mounted.seat.spread / 2
        tube = bracket.struts.tube.outside_mm
        shapes += [
            rod((y + side * spread, mounted.seat.foot_z), (y, mounted.collar), tube, f"strut of {bracket.code}")
            for side in (-1, 1)
        ]
    return [*shapes, collar], holes(mounted, y, z)


def _gear(scene: Scene) -> list[Outline]:
    y, at, gear = scene.at.offset_mm, scene.at, scene.gear
    low, high = scene.blade
    swing = (gear.blade.chord_mm - gear.blade.balance_mm) * math.sin(math.radians(gear.blade.max_angle_deg))
    thick = gear.blade.chord_mm * 0.075
    top = at.shaft_top_mm
    return [
        about("sweep", y, gear.tiller.radius_mm, top - gear.tiller.height_mm, top, "space the tiller turns in"),
        about("sweep", y, gear.head.radius_mm, top, top + gear.head.height_mm, "head"),
        about("sweep", y, swing, low, high, f"blade turned {gear.blade.max_angle_deg:.0f}° each way"),
        about("metal", y, gear.tube.outside_mm / 2, at.shaft_bottom_mm, top, "shaft"),
        about("blade", y, thick, low, high, "blade"),
        about("vane", y, gear.vane.radius_mm, top + gear.vane.bottom_mm, top + gear.vane.top_mm, "space the vane turns in"),
        Outline("centre", ((y, low - 60.0), (y, top + gear.vane.top_mm + 60.0)), closed=False, label="shaft axis, plumb"),
    ]  # fmt: skip


def _water(scene: Scene) -> list[Outline]:
    left, right = scene.window[2], scene.window[3]
    slope = math.tan(math.radians(scene.catalogue.rules["heel_angle"]))
    weather = -1.0 if scene.at.offset_mm < 0 else 1.0
    far = right * 0.9
    return [
        Outline("water", ((left, 0.0), (right, 0.0)), closed=False, label="loaded waterline"),
        Outline("heel", ((0.0, 0.0), (weather * far, -far * slope)), closed=False, label=heel_words(scene)),
    ]


def _names(scene: Scene) -> list[Note]:
    y, gear, at = scene.at.offset_mm, scene.gear, scene.at
    low, high = scene.blade
    weather = -1.0 if y < 0 else 1.0
    far = scene.window[3] * 0.7
    slope = math.tan(math.radians(scene.catalogue.rules["heel_angle"]))
    found = [
        Note(
            f"{m.role} bracket: {m.bracket.code}",
            (y - m.bracket.flange.width_mm / 2.2, m.seat.flange + (m.bracket.flange.thickness_mm / 2 if m.bracket.kind == "step" else 0.0)),
            "metal",
        )
        for m in scene.mounts
    ]  # fmt: skip
    return [
        *found,
        Note(shaft_words(scene), (y, (at.upper_height_mm + at.shaft_top_mm) / 2), "metal"),
        Note(f"blade of {gear.code}", (y, low + (high - low) / 3), "blade"),
        Note("space the vane turns in", (y + gear.vane.radius_mm / 2, vane_middle(scene)), "vane"),
        Note("loaded waterline", (-weather * scene.window[3] * 0.9, 0.0), "water"),
        Note(heel_words(scene), (weather * far, -far * slope), "heel"),
        Note("top edge", (-0.8 * scene.half(scene.value(S.TOP)) * weather, scene.value(S.TOP)), "hull"),
        Note("centreline", (0.0, scene.window[4] + 40.0), "centre"),
    ]  # fmt: skip


def _dimensions(scene: Scene, *, inches: bool) -> tuple[Dimension, ...]:
    """Return where to drill: flanges below the top edge, plumb, and how far from the centreline."""
    top, y = scene.value(S.TOP), scene.at.offset_mm

    def text(value: float) -> str:
        return lengths.written(value, inches=inches)

    found = [
        Dimension((0.0, m.seat.flange), (0.0, top), "y", text(top - m.seat.flange), "left",
                  says=f"{m.role} flange's centre below the top edge, plumb")
        for m in scene.mounts if m.bracket.kind != "step"
    ]  # fmt: skip
    if abs(y) >= 1:
        found.append(
            Dimension((0.0, scene.blade[0]), (y, scene.blade[0]), "x", text(abs(y)), "below", says="shaft axis from the centreline")
        )  # fmt: skip
    return tuple(found)
