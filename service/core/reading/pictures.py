"""A small picture for each measurement that is asked for: wordless shapes that any writer of lines can draw.

The frame is the boat's own, in hundredths of the picture: x aft to the right, up is up, water at 0. An arrow is what is
to be measured. Three scenes: the stern from starboard, the transom from aft, the skin cut through.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Sort = Literal["hull", "water", "thin", "dashed", "rudder", "thing", "arrow", "dot"]
Point = tuple[float, float]


@dataclass(frozen=True)
class Stroke:
    """A line through points; "hull", "rudder" and "thing" are closed, "arrow" has a head at both ends."""

    sort: Sort
    points: tuple[Point, ...]


@dataclass(frozen=True)
class Picture:
    """What one field measures."""

    field: str
    says: str
    strokes: tuple[Stroke, ...]


def _stroke(sort: Sort, *numbers: float) -> Stroke:
    return Stroke(sort, tuple(zip(numbers[::2], numbers[1::2], strict=True)))


WATER = _stroke("water", -70, 0, 75, 0)
SIDE = (_stroke("hull", -70, 52, 0, 52, 12, 8, -2, -8, -40, -24, -70, -30), WATER)
"""From starboard: a stern that leans, its top edge at (0, 52), its bottom edge at (12, 8)."""
AFT = (_stroke("hull", -46, 52, 0, 55, 46, 52, 40, 18, 24, 8, 0, 5, -24, 8, -40, 18), WATER)
"""From aft: the transom with its top edge at 52."""
PLUMB = (_stroke("dashed", 0, 52, 0, -34), _stroke("dot", 0, -34))
INBOARD = _stroke("rudder", -46, -22, -26, -18, -22, -60, -40, -60)
HUNG = _stroke("rudder", 1, 50, 12, 8, 12, -58, 34, -58, 30, 8, 14, 50)
SCOOP = (_stroke("hull", -70, 60, -18, 60, -6, 26, 26, 26, 30, 8, -6, -10, -70, -30), WATER)

PICTURES: dict[str, Picture] = {
    picture.field: picture
    for picture in (
        Picture("transom.top_height_mm", "from the water up to the top edge of the skin", (
            *SIDE, _stroke("thin", 0, 52, 48, 52), _stroke("arrow", 42, 0, 42, 52))),
        Picture("transom.bottom_height_mm", "from the water up to where the transom ends below", (
            *SIDE, _stroke("thin", 12, 8, 56, 8), _stroke("thin", 12, -1, 56, -1), _stroke("arrow", 50, -9, 50, 0),
            _stroke("arrow", 50, 8, 50, 20))),
        Picture("transom.rake_deg", "the angle between a plumb line and the transom on the centreline", (
            *SIDE, *PLUMB, _stroke("arrow", 0, 10, 4, 10.6, 11, 13))),
        Picture("transom.profile", "from a plumb line to the skin, level by level", (
            *SIDE, *PLUMB, *(_stroke("arrow", 0, z, x, z) for z, x in ((40, 3.3), (28, 6.5), (16, 9.8))))),
        Picture("transom.width_top_mm", "across the top edge, from side to side", (
            *AFT, _stroke("arrow", -46, 64, 46, 64), _stroke("thin", -46, 52, -46, 68), _stroke("thin", 46, 52, 46, 68))),
        Picture("transom.width_waterline_mm", "across the transom at the bottom edge or the water", (
            *AFT, _stroke("arrow", -24, -12, 24, -12), _stroke("thin", -24, 8, -24, -16), _stroke("thin", 24, 8, 24, -16))),
        Picture("transom.camber_mm", "seen from above: a batten across the middle, and the gaps at both sides", (
            _stroke("hull", -60, 40, -60, 8, -40, 2, 0, 0, 40, 2, 60, 8, 60, 40), _stroke("thin", -64, -2, 64, -2),
            _stroke("arrow", -58, -2, -58, 8), _stroke("arrow", 58, -2, 58, 8))),
        Picture("transom.thickness_mm", "through all of the skin, core included, at a hole", (
            _stroke("hull", -12, 60, 12, 60, 12, 24, -12, 24), _stroke("hull", -12, 10, 12, 10, 12, -26, -12, -26),
            _stroke("dashed", -40, 17, 40, 17), _stroke("arrow", -12, 17, 12, 17), _stroke("dashed", -5, 60, -5, 24),
            _stroke("dashed", 5, 60, 5, 24))),
        Picture("main_rudder.hung", "the rudder under the boat, or behind the transom", (
            _stroke("hull", -70, 40, -22, 40, -14, 8, -24, -6, -70, -16), _stroke(
                "rudder", -54, -12, -40, -9, -38, -44, -50, -44),
            _stroke("water", -72, 0, -8, 0), _stroke("hull", 8, 40, 50, 40, 56, 8, 46, -6, 8, -16),
            _stroke("rudder", 51, 38, 57, 8, 56, -44, 70, -44, 68, 8, 58, 38), _stroke("water", 4, 0, 74, 0))),
        Picture("main_rudder.trailing_edge_aft_mm", "from a plumb line at the top edge to the rudder's aftmost edge", (
            *SIDE, INBOARD, _stroke("dashed", 0, 52, 0, -62), _stroke("dot", 0, -62), _stroke("arrow", -22, -48, 0, -48))),
        Picture("main_rudder.stock_aft_mm", "from a plumb line at the top edge to the rudder's stock", (
            *SIDE, INBOARD, _stroke("thin", -38, 40, -36, -60), _stroke("dashed", 0, 52, 0, -62), _stroke("dot", 0, -62),
            _stroke("arrow", -36.5, -48, 0, -48))),
        Picture("main_rudder.max_deflection_deg", "seen from above: how far the rudder turns to each side", (
            _stroke("thin", -60, 20, 0, 20), _stroke("rudder", 0, 22, 50, 21, 50, 19, 0, 18),
            _stroke("dashed", 0, 20, 40, 50), _stroke("dashed", 0, 20, 40, -10),
            _stroke("arrow", 34, 45, 42, 33, 44, 20))),
        Picture("transom.step_height_mm", "from the water up to the step", (
            *SCOOP, _stroke("thin", 26, 26, 60, 26), _stroke("arrow", 52, 0, 52, 26))),
        Picture("transom.step_depth_mm", "from the riser's foot aft to the step's edge", (
            *SCOOP, _stroke("arrow", -6, 36, 26, 36), _stroke("thin", 26, 26, 26, 41))),
        Picture("transom.step_width_mm", "across the step, where it is flat", (
            *AFT, _stroke("thing", -34, 26, 34, 26, 34, 20, -34, 20), _stroke("arrow", -34, 34, 34, 34))),
        Picture("transom.post_width_mm", "across the sternpost", (
            _stroke("hull", -50, 50, -7, 58, 7, 58, 50, 50, 30, 10, 7, -20, -7, -20, -30, 10), WATER,
            _stroke("thin", -7, 58, -7, -20), _stroke("thin", 7, 58, 7, -20), _stroke("arrow", -7, 30, 7, 30))),
        Picture("obstacles", "how far off the middle, how far aft, how high above the water", (
            *AFT, _stroke("dashed", 0, 62, 0, -14), _stroke("thing", 12, 50, 26, 50, 26, -6, 12, -6),
            _stroke("arrow", 0, 60, 12, 60), _stroke("arrow", 0, 68, 26, 68), _stroke("arrow", 56, 0, 56, 50),
            _stroke("thin", 26, 50, 60, 50))),
        Picture("boat.stern", "upright, leaning aft, leaning forward, with a step", (
            *(_stroke("hull", x, 40, x + 14, 40, x + 14 + top, 8, x + 8, -8, x, -8) for x, top in (
                (-70, 0), (-34, -6), (2, 8))), _stroke("hull", 38, 40, 50, 40, 53, 18, 62, 18, 64, 4, 52, -8, 38, -8))),
        Picture("boat.displacement_kg", "the weight as the crane shows it, loaded as you sail", (
            _stroke("hull", -52, 0, 52, 0, 40, -20, -44, -20), _stroke("thin", -44, 0, 0, 40, 44, 0),
            _stroke("thin", 0, 40, 0, 62), _stroke("dot", 0, 50))),
    )
}  # fmt: skip


def picture_of(field: str) -> Picture | None:
    """Return the picture for a field; a thing on the stern has the one of all obstacles."""
    return PICTURES.get("obstacles" if field.startswith("obstacles") else field)
