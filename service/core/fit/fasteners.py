"""Pads, bolts and parts of a placed configuration: what has to be cut, ordered and packed.

Dimensions of nuts and washers are the greatest that their standards allow (ISO 4032, ISO 7089 under the head, ISO 7093
at the nut; inch: ASME B18.2.2 and type A wide washers, from memory), so a bolt chosen with them is never short.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from service.core.catalogue import Bracket, Catalogue, Configuration, Role
from service.core.fit.mounts import Seated
from service.core.fit.names import NEAREST_INCH
from service.core.fit.shapes import Fastener, Pad, PartLine

INCH = 25.4
PITCHES_PROUD = 2
"""Threads beyond the nut: common practice, no source; EN 1090-2, 8.2.2 asks for at least one."""

METRIC_LENGTHS = (
    *range(20, 71, 5), *range(80, 161, 10), *range(180, 501, 20),
)  # fmt: skip
"""Nominal lengths of ISO 888 as ISO 4014 uses them (mm)."""
INCH_LENGTHS = (*(0.75 + 0.25 * i for i in range(30)), *(8.5 + 0.5 * i for i in range(4)))
"""Quarter inches to 8, half inches to 10 (ASME B18.3 list; hex bolts the same in practice)."""


@dataclass(frozen=True)
class Thread:
    """A bolt size: diameter, pitch, nut height, washers under head and nut (mm)."""

    diameter: float
    pitch: float
    nut: float
    washer_head: float
    washer_nut: float


THREADS = {
    "M6": Thread(6, 1.0, 5.2, 1.8, 1.8),
    "M8": Thread(8, 1.25, 6.8, 1.8, 2.2),
    "M10": Thread(10, 1.5, 8.4, 2.2, 2.7),
    "M12": Thread(12, 1.75, 10.8, 2.7, 3.3),
    "M16": Thread(16, 2.0, 14.8, 3.3, 3.3),
    "1/4": Thread(INCH / 4, INCH / 20, 5.7, 1.7, 2.0),
    "5/16": Thread(INCH * 5 / 16, INCH / 18, 6.9, 1.7, 2.2),
    "3/8": Thread(INCH * 3 / 8, INCH / 16, 8.6, 2.1, 2.7),
    "1/2": Thread(INCH / 2, INCH / 13, 11.4, 2.5, 3.2),
}


def needed_length(grip_mm: float, thread: Thread) -> float:
    """Return the least bolt length for a grip: washers, nut and two pitches proud (mm).

    >>> round(needed_length(34.0, THREADS["M10"]), 1)
    50.3
    """
    return grip_mm + thread.washer_head + thread.washer_nut + thread.nut + PITCHES_PROUD * thread.pitch


def next_metric(length_mm: float) -> float | None:
    """Return the next nominal length of ISO 888, None beyond the series.

    >>> next_metric(50.3)
    55.0
    """
    return next((float(step) for step in METRIC_LENGTHS if step >= length_mm - 1e-9), None)


def next_inch(length_mm: float) -> float | None:
    """Return the next inch length, None beyond the series.

    >>> next_inch(50.3)
    2.0
    """
    return next((step for step in INCH_LENGTHS if step * INCH >= length_mm - 1e-9), None)


def pad(role: Role, bracket: Bracket, at: Seated) -> Pad | None:
    """Return the pad to cut: p ± (h/2) d_rake ± (w/2) d_plan at its corners; None where the flange lies on the skin.

    Corners are named from aft, looking forward: a skin leaning aft (d_rake > 0) leaves the lower edge thicker.
    """
    if bracket.kind in ("cheek", "step") or (at.pad < 0.5 and abs(at.tilt) + abs(at.turn) < 1e-6):  # noqa: PLR2004 - half a millimetre is no pad
        return None
    width, height = bracket.flange.width_mm, bracket.flange.height_mm
    corners = {
        f"{level} {side}": at.pad - vertical * height / 2 * at.tilt - across * width / 2 * at.turn
        for level, vertical in (("top", 1), ("bottom", -1))
        for side, across in (("port", -1), ("starboard", 1))
    }
    return Pad(
        role=role,
        centre_mm=at.pad,
        corners_mm=corners,
        rake_bevel_deg=math.degrees(math.atan(at.tilt)),
        plan_bevel_deg=math.degrees(math.atan(at.turn)),
        width_mm=width,
        height_mm=height,
        blank_mm=math.ceil(max(corners.values())),
    )


def fastener(
    role: Role,
    bracket: Bracket,
    at: Seated,
    cut: Pad | None,
    thickness_mm: float | None,
    backing_mm: float | None,
) -> Fastener:
    """Return the bolts of a bracket: grip = flange + pad's longest + skin / cos of what the pad takes + backing."""
    lean = math.sqrt(1 + at.tilt**2 + at.turn**2)
    made_of = {
        "flange": bracket.flange.thickness_mm,
        "pad": max(cut.corners_mm.values()) if cut else 0.0,
        "skin": (thickness_mm or 0.0) * lean,
        "backing": backing_mm or 0.0,
    }
    lacking = "" if thickness_mm is not None else "skin thickness not known: measure it before ordering bolts"
    return _bolts(role, bracket, made_of, lacking)


def across(role: Role, bracket: Bracket, post_mm: float | None) -> Fastener:
    """Return the bolts of a cheek bracket, athwartships through both plates and the sternpost between them."""
    lacking = "" if post_mm is not None else "sternpost width not known: measure it before ordering bolts"
    return _bolts(role, bracket, {"flange": 2 * bracket.flange.thickness_mm, "post": post_mm or 0.0}, lacking)


def _bolts(role: Role, bracket: Bracket, made_of: dict[str, float], lacking: str) -> Fastener:
    """Return bolts for a grip; `lacking` says what is not known, and then no length is given."""
    size, grip = bracket.bolts.size, sum(made_of.values())
    thread = THREADS.get(size)
    other = THREADS.get(NEAREST_INCH.get(size, size))
    return Fastener(
        role=role,
        size=size,
        count=len(bracket.bolts.pattern_mm),
        grip_mm=grip,
        made_of=made_of,
        length_mm=next_metric(needed_length(grip, thread)) if thread and not lacking else None,
        length_inch=next_inch(needed_length(grip, other)) if other and not lacking else None,
        note=lacking if thread else f"no table for size {size}",
    )


def parts(catalogue: Catalogue, configuration: Configuration) -> tuple[PartLine, ...]:
    """Return everything that goes into the cartons, metal first, then what goes with it."""
    gear, shaft = catalogue.gear(configuration.gear), catalogue.shaft(configuration.shaft)
    lines = [PartLine(code=gear.code, name=gear.name, quantity=1, carton="gear", small=False)]
    lines.append(
        PartLine(code=shaft.code, name=f"Shaft {shaft.length_mm:g} mm", quantity=1, carton=shaft.carton, small=False)
    )
    for code in (configuration.lower, configuration.upper):
        bracket = catalogue.bracket(code)
        lines.append(PartLine(code=code, name=bracket.name, quantity=1, carton=bracket.carton, small=False))
    mine = [
        f"gear:{configuration.gear}",
        f"shaft:{configuration.shaft}",
        f"bracket:{configuration.lower}",
        f"bracket:{configuration.upper}",
    ]
    for part in catalogue.parts:
        times = 1 if "*" in part.goes_with else sum(mine.count(target) for target in part.goes_with)
        if times:
            lines.append(
                PartLine(
                    code=part.code, name=part.name, quantity=part.quantity * times, carton=part.carton, small=part.small
                )
            )
    return tuple(lines)
