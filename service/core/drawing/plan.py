"""From above: x aft to the right, starboard up. What turns, and what stands in its way."""

from __future__ import annotations

import math

import numpy as np

from service.core.drawing import clashes, lengths, things
from service.core.drawing.parts import STAND_MM, WALL_MM, block, rod
from service.core.drawing.scene import Mounted, Scene
from service.core.drawing.shapes import Dimension, Disc, Layer, Note, Outline, Point, View
from service.core.drawing.stern import RUDDER_THICK, where
from service.core.fit.site import Flag, S

ACROSS, LEVELS, EVEN = 41, 90, 1e-6
STEPS = 12


def plan(scene: Scene, *, inches: bool) -> View:
    """Return the view from above."""
    outlines, notes = _hull(scene)
    for mounted in scene.mounts:
        outlines += _bracket(scene, mounted)
    blades, discs = _gear(scene)
    seen, named, beyond = things.obstacles(scene, 0, 1)
    wrong, said, remarks = clashes.marks(scene, 0, 1)
    return View(
        "plan", "From above", _says(scene), (*outlines, *blades, *seen, *wrong), tuple(discs),
        _dimensions(scene, inches=inches), (*said, *notes, *_names(scene), *named),
        ("Aft to the right, starboard up.", *remarks, *beyond), lengths.unit(inches=inches),
    )  # fmt: skip


def _says(scene: Scene) -> str:
    turn = scene.gear.blade.max_angle_deg
    return (
        f"From above, aft to the right and starboard up: the shaft stands {scene.at.shaft_aft_mm:.0f} mm aft of the top "
        f"edge, {where(scene)}; the blade turns {turn:.0f}° each way, the vane all round."
    )


def _across(scene: Scene, z: float) -> list[Point]:
    half = scene.half(z)
    return [(scene.skin(float(y), z), float(y)) for y in np.linspace(-half, half, ACROSS)]


def _hull(scene: Scene) -> tuple[list[Outline], list[Note]]:
    """Return the hull as seen from above, its top edge, a step, and the main rudder with what it sweeps."""
    fore, top = scene.window[0], scene.value(S.TOP)
    edge = _across(scene, top)
    levels = [*np.linspace(scene.value(S.BOTTOM), top, LEVELS), *scene.stations]
    halves = [scene.half(float(z)) for z in levels]
    broad = max(halves)
    silhouette = [
        (max(scene.skin(float(y), float(z)) for z, half in zip(levels, halves, strict=True) if abs(y) <= half + EVEN), float(y))
        for y in np.linspace(-broad, broad, ACROSS)
    ]  # fmt: skip
    around = ((fore, -broad), *silhouette, (fore, broad))
    found = [
        Outline("body", around, label="hull as seen from above"),
        Outline("hull", around, closed=False, label="hull as seen from above"),
    ]
    notes = [Note("top edge", edge[ACROSS * 4 // 5], "hull")]
    if max(abs(a[0] - b[0]) for a, b in zip(edge, silhouette, strict=True)) > 1.0:
        found.append(Outline("hull", tuple(edge), closed=False, label="top edge"))
    if scene.flag(Flag.STEPPED):
        step, half = scene.value(S.STEP_HEIGHT), scene.value(S.HALF_STEP)
        ys = [float(y) for y in np.linspace(-half, half, ACROSS)]
        riser = [(scene.skin(y, step), y) for y in ys]
        brink = [(scene.skin(y, step - 1e-3), y) for y in ys]
        found.append(Outline("hull", (*riser, *reversed(brink)), label="step"))
        notes.append(Note("step", ((riser[5][0] + brink[5][0]) / 2, ys[5]), "hull"))
    found.append(Outline("centre", ((fore - 60.0, 0.0), (scene.window[1], 0.0)), closed=False, label="centreline"))
    for number, one in enumerate(sorted({-scene.value(S.RUDDER_OFFSET), scene.value(S.RUDDER_OFFSET)})):
        shapes = _rudder(scene, one)
        found += shapes
        if shapes and number == 0:
            turn = math.degrees(math.acos(scene.value(S.RUDDER_COS)))
            notes.append(
                Note(f"main rudder, turned {turn:.0f}° each way", (max(scene.value(S.STOCK), fore), one), "rudder")
            )
    return found, notes


def _rudder(scene: Scene, y: float) -> list[Outline]:
    """Return one main rudder amidships and what it sweeps; nothing where it stands forward of the drawing."""
    stock, aft, fore = scene.value(S.STOCK), scene.value(S.TRAILING), scene.value(S.LEADING)
    if stock < scene.window[0]:
        return []
    turn = math.acos(scene.value(S.RUDDER_COS))
    swept = sector((stock, y), aft - stock, turn, 1.0)
    body = block("rudder", max(fore, scene.window[0]), aft, y - RUDDER_THICK / 2, y + RUDDER_THICK / 2, "main rudder")
    return [Outline("sweep", swept, label="what the main rudder sweeps"), body]


def sector(centre: Point, radius: float, turn: float, facing: float) -> tuple[Point, ...]:
    """Return a pie slice that opens aft (`facing` +1) or forward (-1) by `turn` radians to each side."""
    angles = np.linspace(-turn, turn, STEPS + 1)
    arc = tuple((centre[0] + facing * radius * math.cos(a), centre[1] + radius * math.sin(a)) for a in angles)
    return (centre, *arc)


def _bracket(scene: Scene, mounted: Mounted) -> list[Outline]:
    """Return flange, pad, arm and struts of one bracket from above."""
    (x, y), bracket, seat = scene.axis, mounted.bracket, mounted.seat
    wide, slim = bracket.flange.width_mm / 2, scene.gear.tube.outside_mm / 2 + WALL_MM
    code = bracket.code
    if bracket.kind == "step":
        half = bracket.flange.height_mm / 2
        return [
            block("metal", seat.x - half, seat.x + half, y - wide, y + wide, f"base of {code}"),
            block("metal", seat.x - STAND_MM / 2, x, y - slim * 0.8, y + slim * 0.8, f"arm of {code}"),
        ]
    if bracket.kind == "cheek":
        post, thick = scene.value(S.POST) / 2, bracket.flange.thickness_mm
        plates = [
            block("metal", seat.x - bracket.flange.width_mm, seat.x + 2 * WALL_MM, s * (post + thick / 2) - thick / 2,
                  s * (post + thick / 2) + thick / 2, f"cheek of {code}")
            for s in (-1, 1)
        ]  # fmt: skip
        return [*plates, _arm(scene, mounted, seat.x + 2 * WALL_MM, post + thick)]
    lean = seat.plan * wide
    inner = ((seat.x - lean, y - wide), (seat.x + lean, y + wide))
    pad = mounted.pad
    thick_at = [0.0, 0.0]
    if pad is not None:
        thick_at = [(pad.corners_mm[f"top {s}"] + pad.corners_mm[f"bottom {s}"]) / 2 for s in ("port", "starboard")]
    outer = tuple((p[0] + t, p[1]) for p, t in zip(inner, thick_at, strict=True))
    face = tuple((p[0] + bracket.flange.thickness_mm, p[1]) for p in outer)
    shapes = [Outline("pad", (*inner, *reversed(outer)), label=f"{mounted.role} pad")] if pad is not None else []
    shapes.append(Outline("metal", (*outer, *reversed(face)), label=f"flange of {code}"))
    if bracket.struts is not None:
        tube = bracket.struts.tube.outside_mm
        feet = ((seat.foot_port, y - seat.spread / 2), (seat.foot_starboard, y + seat.spread / 2))
        shapes += [rod(foot, (x, y), tube, f"strut of {code}") for foot in feet]
    return [*shapes, _arm(scene, mounted, sum(p[0] for p in face) / 2, wide * 0.7)]


def _arm(scene: Scene, mounted: Mounted, root: float, half: float) -> Outline:
    (x, y), slim = scene.axis, scene.gear.tube.outside_mm / 2 + WALL_MM
    points = ((root, y - half), (x, y - slim), (x, y + slim), (root, y + half))
    return Outline("metal", points, label=f"arm of {mounted.bracket.code}")


def _gear(scene: Scene) -> tuple[list[Outline], list[Disc]]:
    """Return the blade amidships and turned, and what turns all round."""
    (x, y), gear = scene.axis, scene.gear
    blade, turn = gear.blade, math.radians(gear.blade.max_angle_deg)
    tail, thick = blade.chord_mm - blade.balance_mm, blade.chord_mm * 0.075
    outlines = [
        Outline("sweep", sector((x, y), tail, turn, 1.0), label=f"blade turned {blade.max_angle_deg:.0f}° each way"),
        Outline("sweep", sector((x, y), blade.balance_mm, turn, -1.0), label="blade forward of its axis"),
        block("blade", x - blade.balance_mm, x + tail, y - thick, y + thick, "blade"),
        Outline("centre", ((x, y - gear.vane.radius_mm - 40.0), (x, y + gear.vane.radius_mm + 40.0)), closed=False, label="shaft axis"),
    ]  # fmt: skip
    discs: list[Disc] = []
    parts: tuple[tuple[Layer, float, str], ...] = (
        ("vane", gear.vane.radius_mm, "space the vane turns in"), ("sweep", gear.tiller.radius_mm, "space the tiller turns in"),
        ("metal", gear.tube.outside_mm / 2 + WALL_MM, "collars"), ("metal", gear.tube.outside_mm / 2, "shaft"),
    )  # fmt: skip
    discs += [Disc(layer, (x, y), radius, label) for layer, radius, label in parts]
    return outlines, discs


def _names(scene: Scene) -> list[Note]:
    (x, y), gear = scene.axis, scene.gear
    diagonal = gear.vane.radius_mm * math.sqrt(0.5)
    tail = gear.blade.chord_mm - gear.blade.balance_mm
    turn = math.radians(gear.blade.max_angle_deg)
    side = -1.0 if y > 0 else 1.0
    found = [
        Note(
            f"{m.role} bracket: {m.bracket.code}",
            (m.seat.x + 0.3 * (x - m.seat.x), y - side * gear.tube.outside_mm * (0.2 + 0.3 * n)), "metal",
        )
        for n, m in enumerate(scene.mounts)
    ]  # fmt: skip
    return [
        *found,
        Note("space the vane turns in", (x + diagonal, y - diagonal), "vane"),
        Note(f"blade, turned {gear.blade.max_angle_deg:.0f}° each way", (x + tail * math.cos(turn), y + tail * math.sin(turn)), "blade"),
        Note("centreline", (scene.window[0] * 0.9, 0.0), "centre"),
    ]  # fmt: skip


def _dimensions(scene: Scene, *, inches: bool) -> tuple[Dimension, ...]:
    (x, y), gear = scene.axis, scene.gear

    def text(value: float) -> str:
        return lengths.written(value, inches=inches)

    found = [
        Dimension((0.0, 0.0), (x, y), "x", text(x), "below", says="shaft axis aft of the top edge"),
        Dimension((x, y - gear.vane.radius_mm), (x, y + gear.vane.radius_mm), "y", text(2 * gear.vane.radius_mm), "right",
                  says="what the vane turns in, across"),
    ]  # fmt: skip
    if abs(y) >= 1:
        found.append(Dimension((0.0, 0.0), (x, y), "y", text(abs(y)), "right", says="shaft axis from the centreline"))
    return tuple(found)
