"""Views of a placed configuration as plain shapes in mm, format-free: writers turn them into SVG or anything else.

Two views: from starboard (x aft to the right, z up) and from aft (y to the right is starboard, z up).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np

from service.core.boat import BoatForm
from service.core.catalogue import Bracket, Catalogue, Gear
from service.core.fit import Boats, Fit, Placement, obstacle_names, prepare
from service.core.fit.assemble import obstacles_that_count
from service.core.fit.site import Flag, S, half_breadth, skin
from service.core.form import with_values

Layer = Literal["hull", "water", "metal", "blade", "vane", "rudder", "obstacle", "pad", "dimension", "note"]
Point = tuple[float, float]
THIN = 15.0
"""An obstacle said to have no height is drawn this high (mm)."""
ABOVE = 150.0
"""How far above the vane a view reaches; what stands higher is cut off there."""
FORWARD = 900.0
"""How much of the hull is drawn forward of the top edge."""


@dataclass(frozen=True)
class Outline:
    """A line through points; `closed` ones are filled by the writer."""

    layer: Layer
    points: tuple[Point, ...]
    closed: bool = True
    label: str = ""
    shown: bool = False
    """The label is written beside the shape, not only kept as its name."""


@dataclass(frozen=True)
class Dimension:
    """A measured distance between two points along one axis, with its value written."""

    start: Point
    end: Point
    text: str
    away: float
    """How far beside the measured line the dimension stands, positive to the right or up."""


@dataclass(frozen=True)
class View:
    """One view: title, a sentence that says what it shows, shapes and dimensions, in mm."""

    title: str
    says: str
    outlines: tuple[Outline, ...]
    dimensions: tuple[Dimension, ...]

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Return least and greatest of both coordinates over everything drawn."""
        points = [p for o in self.outlines for p in o.points]
        points += [p for d in self.dimensions for p in (d.start, d.end)]
        xs, ys = [p[0] for p in points], [p[1] for p in points]
        return min(xs), max(xs), min(ys), max(ys)


def views(form: BoatForm, fit: Fit, catalogue: Catalogue) -> tuple[View, ...]:
    """Return the view from starboard and the view from aft; none where nothing was placed.

    The boat is drawn as the fit took it: what the form states, and for the rest what the fit says it filled in.
    """
    if fit.placement is None:
        return ()
    filled = {f.field: f.value for f in fit.filled if not f.field.startswith("obstacles[")}
    boats = prepare(with_values(form, filled), catalogue, draws=1)
    return _side(boats, fit, catalogue), _stern(boats, fit, catalogue)


def _side(boats: Boats, fit: Fit, catalogue: Catalogue) -> View:
    p, gear = _placed(fit), catalogue.gear(fit.configuration.gear)
    low = _lowest(boats, fit, gear)
    heights = _stations(boats)
    face = [(float(skin(boats.nominal, 0, p.offset_mm, float(z))[0]), float(z)) for z in heights]
    hull = [(-FORWARD, face[0][1]), *face, (-FORWARD, face[-1][1])]
    shapes = [
        Outline("hull", tuple(hull), label="hull"),
        *_rudder_side(boats),
        *_obstacles(boats, 0, p.shaft_top_mm + gear.vane.top_mm + ABOVE),
        *(shape for role in ("lower", "upper") for shape in _bracket_side(boats, fit, catalogue, role)),
        _rectangle("metal", p.shaft_aft_mm, gear.tube.outside_mm, p.shaft_bottom_mm, p.shaft_top_mm, "shaft"),
        Outline("blade", _blade_side(fit, gear), label="blade"),
        _rectangle("vane", p.shaft_aft_mm, 2 * gear.vane.radius_mm, p.shaft_top_mm + gear.vane.bottom_mm,
                   p.shaft_top_mm + gear.vane.top_mm, "space the vane turns in"),
        Outline("water", ((-FORWARD, 0.0), (p.shaft_aft_mm + 500.0, 0.0)), closed=False, label="loaded waterline"),
    ]  # fmt: skip
    right = p.shaft_aft_mm + gear.blade.chord_mm
    marks = (
        Dimension(
            (0.0, face[-1][1]),
            (p.shaft_aft_mm, face[-1][1]),
            f"{p.shaft_aft_mm:.0f}",
            p.shaft_top_mm - face[-1][1] + 60,
        ),
        Dimension((right, 0.0), (right, p.lower_height_mm), f"{p.lower_height_mm:.0f}", 60),
        Dimension((right, 0.0), (right, p.upper_height_mm), f"{p.upper_height_mm:.0f}", 170),
        Dimension((right, 0.0), (right, p.shaft_bottom_mm), f"{p.shaft_bottom_mm:.0f}", 280),
        Dimension(
            (right, p.shaft_bottom_mm), (right, p.shaft_top_mm), f"{p.shaft_top_mm - p.shaft_bottom_mm:.0f}", 390
        ),
    )
    says = (
        f"From starboard: shaft {p.shaft_aft_mm:.0f} mm aft of the top edge, collars {p.lower_height_mm:.0f} and "
        f"{p.upper_height_mm:.0f} mm above the water, lowest point {low:.0f} mm."
    )
    return View("From starboard", says, tuple(shapes), marks)


def _stern(boats: Boats, fit: Fit, catalogue: Catalogue) -> View:
    p, gear = _placed(fit), catalogue.gear(fit.configuration.gear)
    site = boats.nominal
    heights = [float(z) for z in np.linspace(site.values[0, S.BOTTOM], site.values[0, S.TOP], 9)]
    if site.flags[Flag.POST_ONLY]:
        halves = [float(site.values[0, S.HALF_WATER] + (site.values[0, S.HALF_TOP] - site.values[0, S.HALF_WATER]) * max(z, 0.0)
                        / site.values[0, S.TOP]) for z in heights]  # fmt: skip
    else:
        halves = [float(half_breadth(site, 0, z)) for z in heights]
    outline = [(-h, z) for h, z in zip(halves, heights, strict=True)] + [
        (h, z) for h, z in reversed(list(zip(halves, heights, strict=True)))
    ]
    flanges = []
    for code, height in ((fit.configuration.lower, p.lower_height_mm), (fit.configuration.upper, p.upper_height_mm)):
        flange, collar = catalogue.bracket(code).flange, catalogue.bracket(code).collar
        middle = height - collar.rise_mm
        flanges.append(_rectangle("metal", p.offset_mm, flange.width_mm, middle - flange.height_mm / 2,
                                  middle + flange.height_mm / 2, f"flange of {code}"))  # fmt: skip
    blade_top = p.shaft_bottom_mm - gear.blade.root_gap_mm
    shapes = [
        Outline("hull", tuple(outline), label="skin that can bear a bracket"),
        *_obstacles(boats, 2, p.shaft_top_mm + gear.vane.top_mm + ABOVE),
        *flanges,
        _rectangle("metal", p.offset_mm, gear.tube.outside_mm, p.shaft_bottom_mm, p.shaft_top_mm, "shaft"),
        _rectangle("blade", p.offset_mm, 30.0, blade_top - gear.blade.span_mm, blade_top, "blade"),
        _rectangle("vane", p.offset_mm, 2 * gear.vane.radius_mm, p.shaft_top_mm + gear.vane.bottom_mm,
                   p.shaft_top_mm + gear.vane.top_mm, "space the vane turns in"),
        Outline("water", ((-halves[-1] - 200, 0.0), (halves[-1] + 200, 0.0)), closed=False, label="loaded waterline"),
    ]  # fmt: skip
    side = "on the centreline"
    marks: tuple[Dimension, ...] = ()
    if abs(p.offset_mm) >= 1:
        side = f"{abs(p.offset_mm):.0f} mm to {'starboard' if p.offset_mm > 0 else 'port'}"
        top = heights[-1]
        marks = (Dimension((0.0, top), (p.offset_mm, top), f"{abs(p.offset_mm):.0f}", p.shaft_top_mm - top + 60),)
    return View("From aft", f"From aft: the shaft stands {side}.", tuple(shapes), marks)


def _stations(boats: Boats) -> list[float]:
    """Return heights at which the skin is drawn, both edges of a step among them."""
    v = boats.nominal.values[0]
    heights = [float(z) for z in np.linspace(v[S.BOTTOM], v[S.TOP], 25)]
    if boats.nominal.flags[Flag.STEPPED]:
        heights += [float(v[S.STEP_HEIGHT]) - 1e-6, float(v[S.STEP_HEIGHT])]
    return sorted(heights)


def _placed(fit: Fit) -> Placement:
    if fit.placement is None:
        raise ValueError("nothing was placed, so there is nothing to draw")
    return fit.placement


def _lowest(boats: Boats, fit: Fit, gear: Gear) -> float:
    p = _placed(fit)
    return float(
        min(p.shaft_bottom_mm - gear.blade.root_gap_mm - gear.blade.span_mm, boats.nominal.values[0, S.BOTTOM])
    )


def _rectangle(layer: Layer, middle: float, width: float, low: float, high: float, label: str) -> Outline:
    left, right = middle - width / 2, middle + width / 2
    return Outline(layer, ((left, low), (right, low), (right, high), (left, high)), label=label)


def _blade_side(fit: Fit, gear: Gear) -> tuple[Point, ...]:
    p, blade = _placed(fit), gear.blade
    front, back = p.shaft_aft_mm - blade.balance_mm, p.shaft_aft_mm + blade.chord_mm - blade.balance_mm
    top = p.shaft_bottom_mm - blade.root_gap_mm
    return (front, top), (back, top), (back, top - blade.span_mm), (front, top - blade.span_mm)


def _bracket_side(boats: Boats, fit: Fit, catalogue: Catalogue, role: str) -> list[Outline]:
    """Return flange, pad and arm of one bracket, as seen from the side."""
    p = _placed(fit)
    code = fit.configuration.lower if role == "lower" else fit.configuration.upper
    bracket: Bracket = catalogue.bracket(code)
    collar = p.lower_height_mm if role == "lower" else p.upper_height_mm
    if bracket.kind == "step":
        floor = float(boats.nominal.values[0, S.STEP_HEIGHT])
        return [_rectangle("metal", p.shaft_aft_mm - 120, 60, floor, collar, code),
                Outline("metal", ((p.shaft_aft_mm - 150, collar - 20), (p.shaft_aft_mm, collar - 20), (p.shaft_aft_mm, collar + 20),
                                  (p.shaft_aft_mm - 150, collar + 20)), label=code)]  # fmt: skip
    half, middle = bracket.flange.height_mm / 2, collar - bracket.collar.rise_mm
    pad = next((pad for pad in fit.pads if pad.role == role), None)
    faces = [(float(skin(boats.nominal, 0, p.offset_mm, z)[0]), z) for z in (middle - half, middle + half)]
    thick = [0.0, 0.0]
    if pad is not None:
        bottom = (pad.corners_mm["bottom port"] + pad.corners_mm["bottom starboard"]) / 2
        thick = [bottom, (pad.corners_mm["top port"] + pad.corners_mm["top starboard"]) / 2]
    outer = [(x + t, z) for (x, z), t in zip(faces, thick, strict=True)]
    plate = [(x + bracket.flange.thickness_mm, z) for x, z in outer]
    shapes = [Outline("metal", (*outer, *reversed(plate)), label=code)]
    if pad is not None:
        shapes.insert(0, Outline("pad", (*faces, *reversed(outer)), label=f"{role} pad"))
    shapes += _struts(boats, fit, bracket, role, middle)
    root = (sum(x for x, _ in plate) / 2, middle)
    rise = min(bracket.collar.height_mm, bracket.flange.height_mm) / 2
    shapes.append(Outline("metal", ((root[0], root[1] - rise), (p.shaft_aft_mm, collar - rise), (p.shaft_aft_mm, collar + rise),
                                    (root[0], root[1] + rise)), label=f"arm of {code}"))  # fmt: skip
    return shapes


def _struts(boats: Boats, fit: Fit, bracket: Bracket, role: str, middle: float) -> list[Outline]:
    """Return the struts of a bracket as one line each, from foot to collar."""
    cut = next((c for c in fit.cuts if c["role"] == role), None)
    if bracket.struts is None or cut is None:
        return []
    p = _placed(fit)
    collar = p.lower_height_mm if role == "lower" else p.upper_height_mm
    z = middle + bracket.struts.foot_rise_mm
    sides = {p.offset_mm - cut["spread_mm"] / 2, p.offset_mm + cut["spread_mm"] / 2}
    feet = [float(skin(boats.nominal, 0, y, z)[0]) for y in sorted(sides)]
    return [
        Outline("metal", ((x, z), (p.shaft_aft_mm, collar)), closed=False, label=f"strut of {bracket.code}")
        for x in feet
    ]


def _rudder_side(boats: Boats) -> list[Outline]:
    v = boats.nominal.values[0]
    front, back = float(v[S.LEADING]), float(v[S.TRAILING])
    low, high = float(v[S.RUDDER_BOTTOM]), float(v[S.RUDDER_TOP])
    front = max(front, -FORWARD)
    if back <= front:
        return []
    return [Outline("rudder", ((front, low), (back, low), (back, high), (front, high)), label="main rudder")]


def _obstacles(boats: Boats, across: int, ceiling: float) -> list[Outline]:
    """Return the boxes of obstacles in a view (`across` 0 from the side, 2 from aft), cut off at the ceiling."""
    names = [obstacle_names(boats.form)[f"obstacle[{index}]"] for index, _ in obstacles_that_count(boats.form)]
    found = []
    for place in range(boats.nominal.boxes.shape[1]):
        box = boats.nominal.boxes[0, place]
        left, right, low, high = (float(box[n]) for n in (across, across + 1, 4, 5))
        high = min(max(high, low + THIN), ceiling)
        if not all(np.isfinite([left, right, low])) or high <= low:
            continue
        name = names[int(boats.nominal.box_info[place, 0])]
        found.append(
            Outline("obstacle", ((left, low), (right, low), (right, high), (left, high)), label=name, shown=True)
        )
    return found
