"""Rows of factor values -> `Site`, with what must hold between them (an edge below a top, a trailing edge aft of a stock)."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm, Box, Obstacle, ProfilePoint, Section
from service.core.catalogue import Catalogue
from service.core.fit.factors import HEIGHTS, WATERLINE, Factor, normal, standard_uncertainty
from service.core.fit.site import Curve, ObstacleBox, Site

Array = NDArray[np.float64]
AXES = ("aft_mm", "starboard_mm", "height_mm")
LEAST_CHORD = 60.0
"""A main rudder whose trailing edge was drawn forward of its stock is taken to be this long aft of it."""


def obstacles_that_count(form: BoatForm) -> list[tuple[int, Obstacle]]:
    """Return the obstacles that are there, with their place in the form."""
    return [(i, o) for i, o in enumerate(form.obstacles) if o.present is not False]


def boxes_of(form: BoatForm) -> list[tuple[int, Obstacle, bool]]:
    """Return one entry a box: an obstacle on both sides without a place is two, the second mirrored."""
    return [
        (index, obstacle, mirrored)
        for index, obstacle in obstacles_that_count(form)
        for mirrored in ((False, True) if obstacle.side == "both" and obstacle.starboard_mm is None else (False,))
    ]


def _label(index: int, obstacle: Obstacle) -> ObstacleBox:
    return ObstacleBox(
        index=index,
        gap="moving_gap" if obstacle.moves in ("folds", "swings", "slides") else "fixed_gap",
        moves=obstacle.swept_to is not None,
        binds=not (obstacle.removable and not obstacle.keep),
    )


def obstacle_factors(form: BoatForm, catalogue: Catalogue) -> tuple[list[Factor], list[str]]:
    """Return a shift along each axis for each obstacle, and those with neither place nor prior."""
    found, unknown = [], []
    for index, obstacle in obstacles_that_count(form):
        prior = catalogue.rules.obstacle_prior_of(obstacle.kind, obstacle.side)
        for axis in AXES:
            path = f"obstacles[{index}].{axis}"
            if getattr(obstacle, axis) is not None:
                sd = standard_uncertainty(form, path, catalogue)
                if path not in form.methods and (whole := form.methods.get(f"obstacles[{index}]")):
                    sd = catalogue.method(whole).mm
                found.append(normal(path, "measured", 0.0, sd))
            elif prior is None:
                unknown.append(path)
            else:
                found.append(normal(path, "prior", 0.0, prior.spread_mm))
    return found, unknown


def assemble(
    form: BoatForm,
    catalogue: Catalogue,
    values: Mapping[str, Array],
    *,
    stern: str | None,
    hung: Literal["inboard", "transom"] | None,
    curve_noise: Array | None = None,
) -> Site:
    """Return the site of the given factor values, each (N,). `curve_noise` (N, K) shifts the measured profile."""
    n = max(v.size for v in values.values())
    water = values[WATERLINE]
    zero = np.zeros(n)

    def of(path: str, otherwise: float = 0.0) -> Array:
        value = np.broadcast_to(values[path], (n,)) if path in values else zero + otherwise
        return value + water if path in HEIGHTS else value

    top = of("transom.top_height_mm")
    bottom = np.minimum(of("transom.bottom_height_mm"), top - 50.0)
    stock = of("main_rudder.stock_aft_mm")
    trailing = of("main_rudder.trailing_edge_aft_mm")
    if form.main_rudder.trailing_edge_aft_mm is None:
        trailing = np.maximum(trailing, stock + LEAST_CHORD)
    else:
        stock = np.minimum(stock, trailing - LEAST_CHORD)
    rudder_top = of("main_rudder.top_height_mm")
    width = np.maximum(of("transom.width_top_mm"), 1.0)
    narrow = np.clip(of("transom.width_waterline_mm"), 0.0, None)
    if form.transom.width_waterline_mm is None:
        narrow = np.minimum(narrow, width)
    start, end = _boxes(form, catalogue, values, top, water)
    return Site(
        stern=stern or "raked",
        top=top,
        bottom=bottom,
        rake=of("transom.rake_deg"),
        half_top=width / 2,
        half_water=narrow / 2,
        camber=of("transom.camber_mm"),
        step_height=np.minimum(of("transom.step_height_mm"), top - 50.0),
        step_depth=of("transom.step_depth_mm"),
        half_step=of("transom.step_width_mm") / 2,
        lower_rake=of("transom.lower_rake_deg"),
        post=of("transom.post_width_mm"),
        hung_outside=zero + (1.0 if hung == "transom" else 0.0),
        stock=stock,
        leading=np.minimum(of("main_rudder.leading_edge_aft_mm"), stock),
        trailing=trailing,
        rudder_top=rudder_top,
        rudder_bottom=np.minimum(of("main_rudder.bottom_height_mm"), rudder_top - 50.0),
        deflection=np.clip(of("main_rudder.max_deflection_deg"), 0.0, 89.0),
        rudder_offset=of("main_rudder.spacing_mm") / 2,
        displacement=of("boat.displacement_kg"),
        box_from=start,
        box_to=end,
        curve=_curve(form, values, curve_noise),
        boxes=tuple(_label(i, o) for i, o, _ in boxes_of(form)),
    )


def _curve(form: BoatForm, values: Mapping[str, Array], noise: Array | None) -> Curve | None:
    """Return the measured profile or sections below the top edge; the top edge itself is x = 0 by the frame."""
    rows: tuple[ProfilePoint, ...] | tuple[Section, ...] | None = form.transom.sections or form.transom.profile
    if not rows:
        return None
    tops = [r.height_mm for r in rows if r.height_mm is not None]
    top = form.transom.top_height_mm if form.transom.top_height_mm is not None else max(tops, default=0.0)
    below = np.array([r.below_top_mm if r.below_top_mm is not None else top - (r.height_mm or 0.0) for r in rows])
    order = np.argsort(below)
    if form.transom.sections:
        return _cuts([form.transom.sections[i] for i in order], below[order])
    points = form.transom.profile or ()
    aft = np.array([points[i].aft_mm for i in order])
    below = below[order]
    if noise is not None:
        aft = aft + noise[:, order]
    aft = np.atleast_2d(aft)
    if below[0] > 1.0:
        below = np.concatenate([[0.0], below])
        aft = np.concatenate([np.zeros((aft.shape[0], 1)), aft], axis=1)
    return Curve(below, aft, np.empty(0))


def _cuts(sections: list[Section], below: Array) -> Curve:
    half = np.unique([p.half_breadth_mm for s in sections for p in s.points])
    if half.size == 1:
        half = np.array([half[0], half[0] + 1.0])
    aft = np.stack([
        np.interp(half, [p.half_breadth_mm for p in s.points], [p.aft_mm for p in s.points]) for s in sections
    ])  # fmt: skip
    return Curve(below, aft[None], half)


def _boxes(
    form: BoatForm, catalogue: Catalogue, values: Mapping[str, Array], top: Array, water: Array
) -> tuple[Array, Array]:
    n = top.size
    start, end = [], []
    for index, obstacle, mirrored in boxes_of(form):
        one = _box(obstacle, obstacle, catalogue, index, values, top, water)
        swept = obstacle.swept_to
        other = one if swept is None else _box(swept, obstacle, catalogue, index, values, top, water)
        start.append(_mirror(one) if mirrored else one)
        end.append(_mirror(other) if mirrored else other)
    if not start:
        return np.empty((0, 6, n)), np.empty((0, 6, n))
    return np.stack(start), np.stack(end)


def _mirror(box: Array) -> Array:
    return np.stack([box[0], box[1], -box[3], -box[2], box[4], box[5]])


def _box(
    box: Box,
    obstacle: Obstacle,
    catalogue: Catalogue,
    index: int,
    values: Mapping[str, Array],
    top: Array,
    water: Array,
) -> Array:
    """Return a box as (6, N). An end given as null is unbounded; an axis not given at all comes from the prior."""
    prior = catalogue.rules.obstacle_prior_of(obstacle.kind, obstacle.side)
    rows: list[Array] = []
    for axis in AXES:
        span = getattr(box, axis) if getattr(box, axis) is not None else getattr(obstacle, axis)
        shift = np.broadcast_to(values.get(f"obstacles[{index}].{axis}", np.zeros(1)), top.shape)
        if span is not None:
            low = -np.inf if span[0] is None else span[0]
            high = np.inf if span[1] is None else span[1]
            base = shift + (water if axis == "height_mm" else 0.0)
        elif prior is not None:
            low, high = _placed(obstacle, axis, getattr(prior, "above_top_mm" if axis == "height_mm" else axis))
            base = shift + (top if axis == "height_mm" else 0.0)
        else:
            low, high, base = np.inf, np.inf, shift
        rows += [low + base, high + base]
    return np.stack(rows)


def _placed(obstacle: Obstacle, axis: str, usual: tuple[float, float]) -> tuple[float, float]:
    """Return the usual place with the size that was said, about the usual middle."""
    size = obstacle.size_mm and getattr(obstacle.size_mm, axis.removesuffix("_mm"))
    if size is None:
        return usual
    middle = (usual[0] + usual[1]) / 2
    return middle - size / 2, middle + size / 2
