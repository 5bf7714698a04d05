"""From starboard: x aft to the right, z up. Hull, brackets, shaft, blade, vane, main rudder, water."""

from __future__ import annotations

from service.core.drawing import clashes, lengths, things
from service.core.drawing.parts import (
    STAND_MM,
    WALL_MM,
    about,
    block,
    heel_words,
    heeled_drop,
    rod,
    shaft_words,
    vane_middle,
)
from service.core.drawing.scene import Mounted, Scene
from service.core.drawing.shapes import Dimension, Note, Outline, Point, View
from service.core.fit.site import Flag, S

CROWN = 8.0
"""How far the skin at the gear must stand from the centreline's to be drawn beside it (mm)."""
BREAK = 40.0
"""How far the line along which the hull is broken off runs to and fro (mm)."""


def side(scene: Scene, *, inches: bool) -> View:
    """Return the view from starboard."""
    outlines, notes = _hull(scene)
    for mounted in scene.mounts:
        outlines += _bracket(scene, mounted)
    outlines += _gear(scene)
    outlines += _water(scene)
    seen, named, beyond = things.obstacles(scene, 0, 2)
    wrong, said, remarks = clashes.marks(scene, 0, 2)
    return View(
        "side", "From starboard", _says(scene), (*outlines, *seen, *wrong), (), _dimensions(scene, inches=inches),
        (*said, *notes, *_names(scene), *named), (*remarks, *beyond), lengths.unit(inches=inches),
    )  # fmt: skip


def _says(scene: Scene) -> str:
    at = scene.at
    return (
        f"From starboard: shaft {at.shaft_aft_mm:.0f} mm aft of the top edge, collars {at.lower_height_mm:.0f} and "
        f"{at.upper_height_mm:.0f} mm above the water, shaft from {at.shaft_bottom_mm:.0f} to {at.shaft_top_mm:.0f} mm, "
        f"lowest point of the blade {scene.blade[0]:.0f} mm."
    )


def _hull(scene: Scene) -> tuple[list[Outline], list[Note]]:
    """Return the hull as far as it is drawn, broken off forward, and the main rudder."""
    fore, y = scene.window[0], scene.at.offset_mm
    face = [(scene.skin(y, z), z) for z in scene.stations]
    low, high = face[0][1], face[-1][1]
    middle = (low + high) / 2
    broken = (
        (fore, high), (fore, middle + BREAK), (fore - BREAK / 2, middle + BREAK / 2), (fore + BREAK / 2, middle - BREAK / 2),
        (fore, middle - BREAK), (fore, low),
    )  # fmt: skip
    found = [
        Outline("body", (*face, *broken), label="hull, cut where the gear stands"),
        Outline("hull", (*face, broken[0]), closed=False, label="skin and deck"),
        Outline("centre", broken, closed=False, label="the hull goes on"),
        Outline("centre", (face[0], broken[-1]), closed=False, label="the hull goes on"),
    ]
    middle_line = [(scene.skin(0.0, z), z) for z in scene.stations]
    notes = []
    if max(abs(a[0] - b[0]) for a, b in zip(face, middle_line, strict=True)) > CROWN:
        found.append(Outline("centre", tuple(middle_line), closed=False, label="skin on the centreline"))
        notes.append(Note("skin on the centreline", middle_line[len(middle_line) * 2 // 3], "centre"))
    if scene.flag(Flag.STEPPED):
        step = scene.value(S.STEP_HEIGHT)
        notes.append(Note("step", ((scene.skin(y, step) + scene.skin(y, step - 1e-3)) / 2, step), "hull"))
    rudder = _rudder(scene)
    if rudder is not None:
        found.append(rudder)
        notes.append(Note("main rudder", things.middle(rudder.points), "rudder"))
    return found, notes


def _rudder(scene: Scene) -> Outline | None:
    box = clashes.rudder_boxes(scene)[0]
    points = things.rectangle(box, scene.window, 0, 2)
    return None if points is None else Outline("rudder", points, label="main rudder")


def _bracket(scene: Scene, mounted: Mounted) -> list[Outline]:
    """Return flange or base, pad, arm, struts and collar of one bracket."""
    code, kind = mounted.bracket.code, mounted.bracket.kind
    x = scene.at.shaft_aft_mm
    half = mounted.bracket.collar.height_mm / 2
    radius = scene.gear.tube.outside_mm / 2 + WALL_MM
    collar = block("metal", x - radius, x + radius, mounted.collar - half, mounted.collar + half, f"collar of {code}")
    if kind == "step":
        return [*_stand(mounted, x), collar]
    if kind == "cheek":
        width, tall = mounted.bracket.flange.width_mm, mounted.bracket.flange.height_mm / 2
        face, z = mounted.seat.x, mounted.seat.flange
        plate = block("metal", face - width, face + 2 * WALL_MM, z - tall, z + tall, code)
        return [plate, _arm((face + 2 * WALL_MM, z), mounted, x), collar]
    shapes, root = _flange(scene, mounted)
    return [*shapes, *_struts(scene, mounted), _arm(root, mounted, x), collar]


def _flange(scene: Scene, mounted: Mounted) -> tuple[list[Outline], Point]:
    """Return the flange along the skin, on its pad where there is one, and the middle of its outer face."""
    half, z0 = mounted.bracket.flange.height_mm / 2, mounted.seat.flange
    y, pad = scene.at.offset_mm, mounted.pad
    faces = [(scene.skin(y, z), z) for z in (z0 - half, z0 + half)]
    slope = mounted.seat.rake
    faces = [(mounted.seat.x + slope * (z - z0), z) for _, z in faces]
    thick = [0.0, 0.0]
    if pad is not None:
        corners = pad.corners_mm
        thick = [(corners[f"{level} port"] + corners[f"{level} starboard"]) / 2 for level in ("bottom", "top")]
    outer = [(x + t, z) for (x, z), t in zip(faces, thick, strict=True)]
    plate = [(x + mounted.bracket.flange.thickness_mm, z) for x, z in outer]
    shapes = [Outline("metal", (*outer, *reversed(plate)), label=f"flange of {mounted.bracket.code}")]
    if pad is not None:
        shapes.insert(0, Outline("pad", (*faces, *reversed(outer)), label=f"{mounted.role} pad"))
    return shapes, (sum(x for x, _ in plate) / 2, z0)


def _arm(root: Point, mounted: Mounted, x: float) -> Outline:
    bracket = mounted.bracket
    start = min(bracket.collar.height_mm, bracket.flange.height_mm) / 2.2
    end = bracket.collar.height_mm / 2.6
    points = (
        (root[0], root[1] - start), (x, mounted.collar - end), (x, mounted.collar + end), (root[0], root[1] + start),
    )  # fmt: skip
    return Outline("metal", points, label=f"arm of {bracket.code}")


def _stand(mounted: Mounted, x: float) -> list[Outline]:
    """Return base, column and arm of a bracket that stands on a step."""
    bracket, base, floor = mounted.bracket, mounted.seat.x, mounted.seat.flange
    half, thick = bracket.flange.height_mm / 2, bracket.flange.thickness_mm
    top = mounted.collar + bracket.collar.height_mm / 2
    arm = bracket.collar.height_mm / 2.6
    return [
        block("metal", base - half, base + half, floor, floor + thick, f"base of {bracket.code}"),
        block("metal", base - STAND_MM / 2, base + STAND_MM / 2, floor + thick, top, f"column of {bracket.code}"),
        block("metal", base, x, mounted.collar - arm, mounted.collar + arm, f"arm of {bracket.code}"),
    ]


def _struts(scene: Scene, mounted: Mounted) -> list[Outline]:
    """Return the struts of a bracket, from foot to collar, as broad as their tube."""
    if mounted.bracket.struts is None:
        return []
    seat, x = mounted.seat, scene.at.shaft_aft_mm
    return [
        rod((foot, seat.foot_z), (x, mounted.collar), mounted.bracket.struts.tube.outside_mm, f"strut of {mounted.bracket.code}")
        for foot in sorted({seat.foot_port, seat.foot_starboard})
    ]  # fmt: skip


def _gear(scene: Scene) -> list[Outline]:
    """Return shaft, blade and what turns above, the shaft's axis last."""
    x, at, gear = scene.at.shaft_aft_mm, scene.at, scene.gear
    low, high = scene.blade
    fore, aft = x - gear.blade.balance_mm, x + gear.blade.chord_mm - gear.blade.balance_mm
    top = at.shaft_top_mm
    return [
        about("sweep", x, gear.tiller.radius_mm, top - gear.tiller.height_mm, top, "space the tiller turns in"),
        about("sweep", x, gear.head.radius_mm, top, top + gear.head.height_mm, "head"),
        about("metal", x, gear.tube.outside_mm / 2, at.shaft_bottom_mm, top, "shaft"),
        block("blade", fore, aft, low, high, "blade"),
        about("vane", x, gear.vane.radius_mm, top + gear.vane.bottom_mm, top + gear.vane.top_mm, "space the vane turns in"),
        Outline("centre", ((x, low - 60.0), (x, top + gear.vane.top_mm + 60.0)), closed=False, label="shaft axis, plumb"),
        Outline("centre", ((0.0, scene.value(S.TOP) + 60.0), (0.0, scene.value(S.BOTTOM) - 40.0)), closed=False,
                label="plumb line from the top edge"),
    ]  # fmt: skip


def _water(scene: Scene) -> list[Outline]:
    fore, aft = scene.window[0] - 60.0, scene.window[1]
    found = [Outline("water", ((fore, 0.0), (aft, 0.0)), closed=False, label="loaded waterline")]
    drop = heeled_drop(scene)
    if drop >= 1.0:
        x, reach = scene.at.shaft_aft_mm, scene.gear.blade.chord_mm * 1.5
        found.append(Outline("heel", ((x - reach, -drop), (x + reach, -drop)), closed=False, label=heel_words(scene)))
    return found


def _names(scene: Scene) -> list[Note]:
    """Return what the parts are called, each at a point of it."""
    at, gear, x = scene.at, scene.gear, scene.at.shaft_aft_mm
    low, high = scene.blade
    found = [
        Note(f"{m.role} bracket: {m.bracket.code}", (x - 0.4 * max(m.seat.reach, 60.0), m.collar), "metal") for m in scene.mounts
    ]  # fmt: skip
    for mounted in scene.mounts:
        if mounted.pad is not None:
            most = max(mounted.pad.corners_mm.values())
            at_pad = (mounted.seat.x + mounted.seat.pad / 2, mounted.seat.flange - mounted.bracket.flange.height_mm / 3)
            found.append(Note(f"{mounted.role} pad, {most:.0f} at its thickest corner", at_pad, "pad"))
    found += [
        Note(shaft_words(scene), (x, (at.upper_height_mm + at.shaft_top_mm) / 2), "metal"),
        Note(f"blade of {gear.code}", (x + gear.blade.chord_mm / 4, low + (high - low) / 3), "blade"),
        Note("space the vane turns in", (x + gear.vane.radius_mm / 2, vane_middle(scene)), "vane"),
        Note("loaded waterline", (scene.window[0] * 0.75, 0.0), "water"),
        Note("top edge", (0.0, scene.value(S.TOP)), "hull"),
    ]  # fmt: skip
    if heeled_drop(scene) >= 1.0:
        found.append(Note(heel_words(scene), (x + gear.blade.chord_mm * 1.4, -heeled_drop(scene)), "heel"))
    return found


def _dimensions(scene: Scene, *, inches: bool) -> tuple[Dimension, ...]:
    at, x, top = scene.at, scene.at.shaft_aft_mm, scene.value(S.TOP)

    def text(value: float) -> str:
        return lengths.written(value, inches=inches)

    def height(low: float, high: float, said: str, value: float) -> Dimension:
        return Dimension((x, low), (x, high), "y", text(value), "right", says=said)

    found = [
        height(0.0, at.lower_height_mm, "lower collar above the water", at.lower_height_mm),
        height(0.0, at.upper_height_mm, "upper collar above the water", at.upper_height_mm),
        height(0.0, at.shaft_bottom_mm, "shaft's lower end above the water", at.shaft_bottom_mm),
        height(at.shaft_bottom_mm, at.shaft_top_mm, "length of the shaft", at.shaft_top_mm - at.shaft_bottom_mm),
        Dimension((scene.window[0], 0.0), (scene.window[0], top), "y", text(top), "left", says="top edge above the water"),
        Dimension((0.0, top), (x, top), "x", text(x), at=top + 45.0, says="shaft axis aft of the top edge"),
    ]  # fmt: skip
    for mounted in scene.mounts:
        below = mounted.collar - mounted.bracket.collar.height_mm / 2 - 40.0
        found.append(
            Dimension(
                (x - mounted.seat.reach, mounted.collar), (x, mounted.collar), "x", text(mounted.seat.reach), at=below,
                says=f"reach of the {mounted.role} bracket",
            )
        )  # fmt: skip
    return tuple(found)
