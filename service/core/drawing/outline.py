"""The stern's outline from aft, of a boat alone: what is drawn of it before any gear is."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue
from service.core.drawing.shapes import Point
from service.core.fit.boats import prepare
from service.core.fit.site import Flag, S, Site, half_breadth
from service.core.form import with_values

STATIONS = 25
EDGE = 1e-6


@dataclass(frozen=True)
class SternOutline:
    """The skin from aft, a closed line (y to starboard, z above the water; mm), and its step's height where it has one.

    `filled` names what nobody measured: the outline takes the catalogue's usual values for it.
    """

    points: tuple[Point, ...]
    step: float | None
    filled: tuple[str, ...]

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Return left, right, low, high."""
        ys, zs = zip(*self.points, strict=True)
        return min(ys), max(ys), min(zs), max(zs)


SHAPING = (
    "transom.top_height_mm", "transom.bottom_height_mm", "transom.width_top_mm", "transom.width_waterline_mm",
    "transom.step_height_mm",
)  # fmt: skip
"""What an outline from aft is made from, where there are no level cuts."""


def stern_outline(form: BoatForm, catalogue: Catalogue, *, loa_mm: float | None = None) -> SternOutline:
    """Return the outline of a boat's stern; `loa_mm` is her hull model's length, where the form says none."""
    boats = prepare(form, catalogue, loa_mm=loa_mm, draws=1)
    site = boats.nominal
    halves = [(half(site, z), z) for z in stations(site)]
    points = (*((-h, z) for h, z in halves), *((h, z) for h, z in reversed(halves)))
    step = float(site.values[0, S.STEP_HEIGHT]) if site.flags[Flag.STEPPED] else None
    return SternOutline(points, step, tuple(one.field for one in boats.filled if one.field in SHAPING))


def typical(stern: str, values: dict[str, float]) -> BoatForm:
    """Return the form of a boat with such a stern and these values of SHAPING; bottom above top is left out."""
    top, bottom = values.get(SHAPING[0]), values.get(SHAPING[1])
    if top is not None and bottom is not None and bottom >= top:
        values = {path: value for path, value in values.items() if path != SHAPING[1]}
    return with_values(BoatForm(), {"boat.stern": stern, **values})


def half(site: Site, z: float) -> float:
    """Return the half-breadth of the skin at a height; of the hull as it was given where only the post is a seat."""
    if not site.flags[Flag.POST_ONLY]:
        return float(half_breadth(site, 0, z))
    water, top = float(site.values[0, S.HALF_WATER]), float(site.values[0, S.HALF_TOP])
    return max(water + (top - water) * z / max(float(site.values[0, S.TOP]), 1.0), 0.0)


def stations(site: Site) -> tuple[float, ...]:
    """Return heights at which the skin is drawn, rising, both edges of a step among them."""
    heights = [float(z) for z in np.linspace(site.values[0, S.BOTTOM], site.values[0, S.TOP], STATIONS)]
    if site.flags[Flag.STEPPED]:
        step = float(site.values[0, S.STEP_HEIGHT])
        heights += [step - EDGE, step]
    return tuple(sorted(heights))
