"""What a drilling template says beside its outlines: where it goes, which way round, what to look at before drilling."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from service.core.drawing import lengths
from service.core.drawing.plates import plate
from service.core.drawing.scene import Mounted, Scene
from service.core.drawing.shapes import Layer, Template, View
from service.core.drawing.stern import where

BEFORE = (
    (
        "Print at 100 %, never fitted to the page, and measure the bar on every sheet: where it is not 100 mm long, throw "
        "the sheet away and print again."
    ),
    "Where there are several sheets, lay them over each other so that crosses with the same letter meet, then tape them.",
    (
        "Set both brackets with a straight tube of the shaft's diameter through both collars, plumb fore and aft and "
        "athwartships, before any hole is marked; what the tube says goes before what this paper says."
    ),
    "Measure again on the boat: top edge to each flange's middle, and from the centreline. A few millimetres decide.",
    "Look and feel inside first: no frame, stringer, wire, hose, tank or steering gear behind any hole or under the plate.",
    (
        "Holes in a hull can sink it: ask the builder or a surveyor whether the skin may be drilled there and how it must "
        "be backed. Class, local rules and licensed practice come first."
    ),
    "Drill one hole small and right through, look where it comes out, then go on.",
)
CORED = "Through a core: cut the core out round every hole and fill with epoxy, or sleeve it, so that no water gets in."
METAL = (
    "On a metal hull: keep stainless metal apart from it with sleeves and washers, and ask before you drill plating."
)
PADDED = (
    "With a bevelled pad: drill the pad first, square to its flange side, and use it as the guide; the holes run square to "
    "the flange and not to the skin."
)
STRUTS = "Strut feet: seat the bracket and its struts first, then mark their holes through the feet themselves."


def templates(scene: Scene, *, inches: bool) -> tuple[Template, ...]:
    """Return the templates of a scene: of each bracket what is drilled outside, then the plate inside where there is one."""
    return tuple(
        one for mounted in scene.mounts for one in (_face(scene, mounted, inches=inches), _back(scene, mounted)) if one is not None
    )  # fmt: skip


def before_drilling(scene: Scene) -> tuple[str, ...]:
    """Return what is to be looked at before drilling this boat."""
    material = scene.form.boat.hull_material
    more = [PADDED] if any(m.pad is not None for m in scene.mounts) else []
    more += [STRUTS] if any(m.bracket.struts is not None for m in scene.mounts) else []
    more += [CORED] if material == "frp_cored" or scene.form.transom.core_mm or material is None else []
    more += [METAL] if material in ("aluminium", "steel") else []
    return (*BEFORE, *more)


def _face(scene: Scene, mounted: Mounted, *, inches: bool) -> Template:
    """Return the sheet that is taped where the flange goes."""
    bracket = mounted.bracket
    up, left, right = "UP", "PORT", "STARBOARD"
    looking = "You look forward at the stern."
    if bracket.kind == "step":
        up, looking = "FORWARD", "You look down at the step."
    elif bracket.kind == "cheek":
        left, right = "FORWARD", "AFT"
        looking = "You look at the sternpost from starboard; turn the sheet over for the port side."
    whole = plate(scene, mounted, inches=inches)
    view = _only(whole, lambda layer: layer != "plate")
    name = f"{mounted.role.upper()} bracket {bracket.code}"
    return Template(
        view, name, f"{mounted.role.upper()} bracket", up, left, right, (looking, _place(scene, mounted, inches=inches))
    )


def _back(scene: Scene, mounted: Mounted) -> Template | None:
    """Return the sheet of the backing plate, None where there is none to give."""
    whole = plate(scene, mounted, inches=False)
    if not any(outline.layer == "plate" for outline in whole.outlines):
        return None
    view = _only(whole, lambda layer: layer not in ("pad", "metal"))
    up = "FORWARD" if mounted.bracket.kind == "step" else "UP"
    said = "Goes inside the hull and is drawn as seen from outside: turn it over to cut. Bend or bed it so that it lies on the skin."
    name = f"{mounted.role.upper()} backing plate for {mounted.bracket.code}"
    return Template(
        view,
        name,
        f"{mounted.role.upper()} backing plate",
        up,
        "PORT",
        "STARBOARD",
        (said, "Drill it through the holes of the hull."),
    )


def _only(view: View, keep: Callable[[Layer], bool]) -> View:
    """Return the view with some layers only, without dimensions and title: a template is laid on, and its sheet has words."""
    return replace(
        view, title="", remarks=(), outlines=tuple(o for o in view.outlines if keep(o.layer)), dimensions=(),
        notes=tuple(n for n in view.notes if keep(n.layer)),
    )  # fmt: skip


def _place(scene: Scene, mounted: Mounted, *, inches: bool) -> str:
    """Say where the middle of the flange goes."""

    def long(mm: float) -> str:
        return f"{mm:.0f} mm ({lengths.tape(mm)})" if inches else f"{mm:.0f} mm"

    side = where(scene)
    if inches and abs(scene.at.offset_mm) >= 1:
        side = f"{side} ({lengths.tape(abs(scene.at.offset_mm))})"
    if mounted.bracket.kind == "step":
        return f"Middle of the base: {long(mounted.seat.reach)} forward of the shaft's axis, {side}."
    down = scene.stations[-1] - mounted.seat.flange
    if mounted.bracket.kind == "cheek":
        return f"Middle of the plate: {long(down)} below the top edge, plumb; fore and aft as the bracket itself lies on the post."
    return f"Middle of the flange: {long(down)} below the top edge, plumb; {side}."
