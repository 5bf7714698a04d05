"""The centreline of the skin in pieces, rising: one rake, a step between two rakes, or a measured profile."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm, ProfilePoint, Section
from service.core.fit import pchip
from service.core.fit.site import S

Array = NDArray[np.float64]
UNDER = 1e5
"""How far the lowest measured x is held downwards (mm): further than any transom reaches."""


def of(form: BoatForm, columns: Mapping[S, Array], values: Mapping[str, Array], *, stepped: bool) -> Array:
    """Return the pieces (N, P, columns of W) of every row. `values`: how far each point of a profile is shifted, (N,)."""
    top, bottom = columns[S.TOP], columns[S.BOTTOM]
    if form.transom.sections:
        return np.zeros((top.size, 1, 6))
    if form.transom.profile:
        return _profile(form, form.transom.profile, values, top)
    rake = columns[S.RAKE]
    low = np.minimum(bottom, top)
    if not stepped:
        return _pieces([_straight(low, top, np.zeros_like(top), rake)])
    step = columns[S.STEP_HEIGHT]
    edge = (step - top) * rake + columns[S.STEP_DEPTH]
    under = np.minimum(low, step - 1.0)
    return _pieces(
        [_straight(under, step, edge, columns[S.LOWER_RAKE]), _straight(step, top, np.zeros_like(top), rake)]
    )


def below_top(form: BoatForm, rows: Sequence[ProfilePoint] | Sequence[Section]) -> Array:
    """Return how far below the top edge each measured height lies (mm)."""
    tops = [r.height_mm for r in rows if r.height_mm is not None]
    top = form.transom.top_height_mm if form.transom.top_height_mm is not None else max(tops, default=0.0)
    return np.array([r.below_top_mm if r.below_top_mm is not None else top - (r.height_mm or 0.0) for r in rows])


def _straight(low: Array, high: Array, x_high: Array, rake: Array) -> tuple[Array, ...]:
    return low, high, x_high - (high - low) * rake, x_high, rake, rake


def _pieces(rows: Sequence[tuple[Array, ...]]) -> Array:
    """Return pieces (N, P, 6) from their columns, each (N,)."""
    return np.ascontiguousarray(np.stack([np.stack(row, axis=1) for row in rows], axis=1))


def _profile(form: BoatForm, points: Sequence[ProfilePoint], values: Mapping[str, Array], top: Array) -> Array:
    """Return a measured profile, shape-preserving between its points and held beyond; the top edge is x = 0 by the frame."""
    moved = [p.aft_mm + values.get(f"transom.profile[{k}].aft_mm", np.zeros(1)) for k, p in enumerate(points)]
    below, rows = below_top(form, points), np.stack(np.broadcast_arrays(*moved), axis=1)
    order = np.argsort(below)
    below, rows = below[order], rows[:, order]
    if below[0] > 1.0:
        below, rows = np.concatenate([[0.0], below]), np.concatenate([np.zeros((rows.shape[0], 1)), rows], axis=1)
    slopes = -np.stack([pchip.slopes_of(below, row) for row in rows])
    rows, slopes = (np.broadcast_to(a, (top.size, below.size)) for a in (rows, slopes))
    level = np.zeros(top.size)
    last = below.size - 1
    pieces = [(top - below[-1] - UNDER, top - below[-1], rows[:, last], rows[:, last], level, level)]
    pieces += [
        (top - below[k], top - below[k - 1], rows[:, k], rows[:, k - 1], slopes[:, k], slopes[:, k - 1])
        for k in range(last, 0, -1)
    ]
    if below[0] > 0.0:
        pieces.append((top - below[0], top, rows[:, 0], rows[:, 0], level, level))
    return _pieces(pieces)
