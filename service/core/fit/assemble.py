"""Rows of factor values -> `Site`, with what must hold between them (an edge below a top, a trailing edge aft of a stock)."""

from __future__ import annotations

import math
from collections.abc import Mapping
from itertools import pairwise
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm, Box, Obstacle
from service.core.catalogue import Catalogue
from service.core.fit import pchip, wall
from service.core.fit.factors import HEIGHTS, WATERLINE, Factor, normal, standard_uncertainty
from service.core.fit.site import RAKED, SECTIONS, S, Site

Array = NDArray[np.float64]
MOVING = ("folds", "swings", "slides")
AXES = ("aft_mm", "starboard_mm", "height_mm")
HELD = 1e-3
"""Just outside the last point of a level cut (mm)."""
BESIDE, APART = 30.0, 30.0
"""Steps of the dense level cuts in half-breadth and height (mm)."""
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


def obstacle_factors(form: BoatForm, catalogue: Catalogue) -> tuple[list[Factor], list[str]]:
    """Return a shift along each axis for each obstacle, and those with neither place nor prior."""
    found, unknown = [], []
    for index, obstacle in obstacles_that_count(form):
        prior = catalogue.rules.obstacle_prior_of(obstacle.kind, obstacle.side)
        for axis in AXES:
            path = f"obstacles[{index}].{axis}"
            if getattr(obstacle, axis) is not None:
                found.append(normal(path, "measured", 0.0, standard_uncertainty(form, path, catalogue)))
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
) -> Site:
    """Return the site of the given factor values, each (N,)."""
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
    boxes = boxes_of(form)
    slots = obstacles_that_count(form)
    place = {index: slot for slot, (index, _) in enumerate(slots)}
    turn = np.radians(np.clip(of("main_rudder.max_deflection_deg"), 0.0, 89.0))
    columns = {
        S.TOP: top,
        S.BOTTOM: bottom,
        S.RAKE: np.tan(np.radians(of("transom.rake_deg"))),
        S.HALF_TOP: width / 2,
        S.HALF_WATER: narrow / 2,
        S.CAMBER: of("transom.camber_mm"),
        S.STEP_HEIGHT: np.minimum(of("transom.step_height_mm"), top - 50.0),
        S.STEP_DEPTH: of("transom.step_depth_mm"),
        S.HALF_STEP: of("transom.step_width_mm") / 2,
        S.LOWER_RAKE: np.tan(np.radians(of("transom.lower_rake_deg"))),
        S.POST: of("transom.post_width_mm"),
        S.HUNG_OUTSIDE: of("main_rudder.hung", 1.0 if hung == "transom" else 0.0),
        S.STOCK: stock,
        S.LEADING: np.minimum(of("main_rudder.leading_edge_aft_mm"), stock),
        S.TRAILING: trailing,
        S.RUDDER_TOP: rudder_top,
        S.RUDDER_BOTTOM: np.minimum(of("main_rudder.bottom_height_mm"), rudder_top - 50.0),
        S.RUDDER_COS: np.cos(turn),
        S.RUDDER_SIN: np.sin(turn),
        S.RUDDER_OFFSET: of("main_rudder.spacing_mm") / 2,
        S.DISPLACEMENT: of("boat.displacement_kg"),
    }
    info = [(place[index], o.swept_to is not None, o.moves in MOVING) for index, o, _ in boxes]
    kind = SECTIONS if form.transom.sections else RAKED
    return Site(
        values=np.stack([columns[column] for column in S], axis=1),
        boxes=_boxes(form, catalogue, values, top, water),
        box_info=np.array(info, dtype=np.intp).reshape(len(info), 3),
        binds=np.array([not (o.removable and not o.keep) for _, o in slots], dtype=np.intp),
        flags=np.array([stern == "scoop", stern == "double_ended" and not form.transom.sections, kind], dtype=np.intp),
        wall=wall.of(form, columns, values, stepped=stern == "scoop"),
        **_cuts(form, values, n),
    )


def _cuts(form: BoatForm, values: Mapping[str, Array], n: int) -> dict[str, Any]:
    """Return level cuts at common half-breadths: each keeps the curve that runs between its own points.

    A piece of a cubic is given by values and slopes at any two of its points. Beyond a cut's own last point its x is
    held, so a place just outside each last point is taken too, where the slope is nought.
    """
    if not form.transom.sections:
        one, none, nothing = np.zeros(1), np.zeros(1, dtype=np.intp), np.zeros((1, 1, 1))
        return {
            "below": one, "half": one, "aft": nothing, "slope_across": nothing, "ends": one, "dense": nothing[0],
            "dense_below": one, "dense_half": one, "dense_aft": one, "dense_cut": none, "shift": nothing[0],
            "dense_shift": nothing[0],
        }  # fmt: skip
    below = wall.below_top(form, form.transom.sections)
    order = np.argsort(below)
    sections, below = [form.transom.sections[i] for i in order], below[order]
    ends = np.array([s.points[-1].half_breadth_mm for s in sections])
    half = np.unique(np.concatenate([[p.half_breadth_mm for s in sections for p in s.points], ends + HELD]))
    curves = []
    for section in sections:
        at = np.array([p.half_breadth_mm for p in section.points])
        x = np.array([p.aft_mm for p in section.points])
        curves.append((at, x, pchip.slopes_of(at, x)))
    aft = np.array([[pchip.value(*curve, h)[0] for h in half] for curve in curves])
    across = np.array([[pchip.value(*c, h)[1] if c[0][0] <= h <= c[0][-1] else 0.0 for h in half] for c in curves])
    dense_half, dense_below = _dense(half, BESIDE), _dense(below, APART)
    rows = np.array([[pchip.value(half, aft[k], across[k], h)[0] for h in dense_half] for k in range(below.size)])
    dense = np.array([
        [pchip.value(below, column, slopes, down)[0] for down in dense_below]
        for column, slopes in ((rows[:, n], pchip.slopes_of(below, rows[:, n])) for n in range(dense_half.size))
    ]).T  # fmt: skip
    moved = [np.broadcast_to(values.get(f"transom.sections[{k}].points", np.zeros(1)), (n,)) for k in order]
    shift = np.ascontiguousarray(np.stack(moved, axis=1))
    return {
        "shift": shift, "dense_shift": np.stack([np.interp(dense_below, below, row) for row in shift]),
        "below": below, "half": half, "aft": aft[None], "slope_across": across[None], "ends": ends, "dense": np.ascontiguousarray(dense),
        "dense_below": dense_below, "dense_half": dense_half, "dense_aft": dense.max(axis=1),
        "dense_cut": np.isin(dense_below, below).astype(np.intp),
    }  # fmt: skip


def _dense(knots: Array, step: float) -> Array:
    """Return the knots and as many places between as keep neighbours within `step`."""
    found = [knots[:1]]
    for a, b in pairwise(knots):
        found.append(np.linspace(a, b, max(math.ceil((b - a) / step), 1) + 1)[1:])
    return np.concatenate(found)


def _boxes(form: BoatForm, catalogue: Catalogue, values: Mapping[str, Array], top: Array, water: Array) -> Array:
    """Return the boxes (N, M, 12): where each stands, then where a moving one ends."""
    found = []
    for index, obstacle, mirrored in boxes_of(form):
        start = _box(obstacle, obstacle, catalogue, index, values, top, water)
        swept = obstacle.swept_to
        end = start if swept is None else _box(swept, obstacle, catalogue, index, values, top, water)
        found.append(np.concatenate([_mirror(start), _mirror(end)] if mirrored else [start, end]))
    if not found:
        return np.zeros((top.size, 0, 12))
    return np.ascontiguousarray(np.stack(found).transpose(2, 0, 1))


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
    size: float | None = getattr(obstacle.size_mm, axis.removesuffix("_mm"), None)
    if size is None:
        return usual
    middle = (usual[0] + usual[1]) / 2
    return middle - size / 2, middle + size / 2
