"""What is cut and drilled for one bracket, seen square onto its flange from aft: flange, pad, holes, backing plate."""

from __future__ import annotations

from itertools import pairwise

from service.core.catalogue import Role
from service.core.drawing import lengths
from service.core.drawing.parts import block
from service.core.drawing.scene import Mounted, Scene
from service.core.drawing.shapes import Dimension, Disc, Key, Note, Outline, View
from service.core.drawing.stern import holes
from service.core.loads.standard import Numbers

BEYOND = 3.0
"""How far centre lines reach beyond a flange (mm)."""
KEYS: dict[Role, Key] = {"lower": "lower_plate", "upper": "upper_plate"}
FACING = {
    "step": "seen from above, forward up", "cheek": "seen from starboard, aft to the right; the same to port",
}  # fmt: skip


def plate(scene: Scene, mounted: Mounted, *, inches: bool) -> View:
    """Return the plate view of a bracket, its flange's centre at (0, 0)."""
    bracket, role = mounted.bracket, mounted.role
    wide, tall = bracket.flange.width_mm, bracket.flange.height_mm
    outlines = [block("metal", -wide / 2, wide / 2, -tall / 2, tall / 2, f"flange of {bracket.code}")]
    notes: list[Note] = [Note(f"flange of {bracket.code}", (-wide / 2, tall / 8), "metal")]
    remarks: list[str] = []
    if mounted.pad is not None:
        outlines[0:0] = [
            block("pad", -wide / 2, wide / 2, -tall / 2, tall / 2, f"{role} pad, same outline as the flange")
        ]
        notes += _corners(mounted)
    extent = backing(scene, mounted)
    if extent is not None:
        left, right, low, high = extent
        outlines.insert(0, block("plate", left, right, low, high, "backing plate, inside the hull"))
        notes.append(
            Note(
                "backing plate, inside the hull",
                (right, high - (high - low) / 4),
                "plate",
                others=(
                    (left, low + (high - low) / 4),
                    (left + (right - left) / 4, high),
                    (right - (right - left) / 4, low),
                ),
            )
        )
    elif bracket.kind != "cheek":
        remarks.append("Backing plate: none that finds room is enough by our figures; ask builder or surveyor.")
    outlines += [
        Outline(
            "centre",
            ((0.0, -tall / 2 - BEYOND), (0.0, tall / 2 + BEYOND)),
            closed=False,
            label="upright through the shaft axis",
        ),
        Outline(
            "centre", ((-wide / 2 - BEYOND, 0.0), (wide / 2 + BEYOND, 0.0)), closed=False, label="middle of the flange"
        ),
    ]
    discs = tuple(holes(mounted, 0.0, 0.0))
    outlines += [cross for disc in discs for cross in crosses(disc)]
    size = bracket.bolts.size
    notes.append(Note(f"{len(discs)} holes of {2 * discs[0].radius:.1f} for {size}", discs[-1].centre, "hole"))
    facing = FACING.get(bracket.kind, "seen from aft, square to the flange")
    return View(
        KEYS[role], f"{role.capitalize()} bracket: what is drilled and cut", f"{role.capitalize()} bracket {bracket.code}, {facing}: "
        f"flange {wide:.0f} x {tall:.0f} mm, {len(discs)} holes for {size}.",
        tuple(outlines), discs, _dimensions(mounted, extent, inches=inches), tuple(notes), (f"{facing[:1].upper()}{facing[1:]}.", *remarks),
        lengths.unit(inches=inches),
    )  # fmt: skip


def crosses(hole: Disc) -> tuple[Outline, Outline]:
    """Return the centre marks of a hole, each reaching a radius beyond it."""
    (x, y), reach = hole.centre, 2 * hole.radius
    return (
        Outline("hole", ((x - reach, y), (x + reach, y)), closed=False, label="centre of a hole"),
        Outline("hole", ((x, y - reach), (x, y + reach)), closed=False, label="centre of a hole"),
    )


def backing(scene: Scene, mounted: Mounted) -> tuple[float, float, float, float] | None:
    """Return left, right, low, high of the backing plate about the flange's centre; None where there is none to give.

    It reaches so far beyond the bolts' centres as the loads ask for; where they were not worked out, the rules' least.
    """
    if mounted.bracket.kind == "cheek":
        return None
    reach = mounted.overlap_mm
    if reach is None:
        if mounted.role in scene.fit.loads.get("backing_overlap_mm", {}):
            return None
        reach = Numbers(scene.catalogue.rules)["backing_overlap"]
    across = [y for y, _ in mounted.bracket.bolts.pattern_mm]
    up = [z for _, z in mounted.bracket.bolts.pattern_mm]
    return min(across) - reach, max(across) + reach, min(up) - reach, max(up) + reach


def _corners(mounted: Mounted) -> list[Note]:
    """Return how thick the pad is at each corner, fore and aft."""
    wide, tall = mounted.bracket.flange.width_mm / 2, mounted.bracket.flange.height_mm / 2
    assert mounted.pad is not None  # noqa: S101 - the caller looked
    places = {
        f"{level} {side}": (across * wide, up * tall)
        for level, up in (("top", 1), ("bottom", -1))
        for side, across in (("port", -1), ("starboard", 1))
    }
    return [Note(f"pad {thick:.1f} thick", places[name], "pad") for name, thick in mounted.pad.corners_mm.items()]


def _dimensions(
    mounted: Mounted, extent: tuple[float, float, float, float] | None, *, inches: bool
) -> tuple[Dimension, ...]:
    wide, tall = mounted.bracket.flange.width_mm, mounted.bracket.flange.height_mm

    def one(low: float, high: float, axis: str, says: str) -> Dimension:
        text = lengths.written(high - low, inches=inches)
        if axis == "x":
            return Dimension((low, -tall / 2), (high, -tall / 2), "x", text, "below", says=says)
        return Dimension((wide / 2, low), (wide / 2, high), "y", text, "right", says=says)

    across = sorted({y for y, _ in mounted.bracket.bolts.pattern_mm})
    up = sorted({z for _, z in mounted.bracket.bolts.pattern_mm})
    found = [
        *(one(a, b, "x", "between holes") for a, b in pairwise(across)),
        *(one(a, b, "y", "between holes") for a, b in pairwise(up)),
        one(-wide / 2, wide / 2, "x", "width of the flange"),
        one(-tall / 2, tall / 2, "y", "height of the flange"),
    ]
    if extent is not None:
        left, right, low, high = extent
        found += [
            one(left, right, "x", "width of the backing plate"),
            one(low, high, "y", "height of the backing plate"),
        ]
    return tuple(found)
