"""Where words can stand: on a grid over the drawing, every candidate about a point weighed, the best one taken.

A label never covers another one, a dimension's figure or a leader; among what is left it keeps near its point, off the lines
of the drawing, and its leader off other leaders and other words.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.drawing.shapes import Point

Array = NDArray[np.float64]
Rect = tuple[float, float, float, float]
"""Left, right, low, high."""
TURNS = 24
REACHES = (3.0, 5.0, 8.0, 12.0, 17.0, 23.0, 30.0, 40.0, 52.0, 66.0, 82.0, 100.0)
"""Distances tried from a point to its words, in cells."""
APART = 0.8
"""Room kept between words, in cells."""
SAMPLES = 24
SHORT = 2.0
"""A leader shorter than this is left out, in cells."""
OWN = 3
"""Of a leader's samples the first few lie on its own point and cross nothing."""
LINE, CROSSED, LEADER = 5.0, 15.0, 0.5
"""What it costs to cover a cell of line, to cross a leader, to run a leader over a line."""
COVERED = 400.0
"""What it costs a leader to run over words: taken only where there is no other way."""


@dataclass(frozen=True)
class Spot:
    """Where a block of words stands, and its leader from the words to its point; none where they stand beside it."""

    rect: Rect
    leader: tuple[Point, Point] | None
    cost: float


class Room:
    """What is taken on the drawing, in square cells of `cell` mm over `domain`."""

    def __init__(self, domain: Rect, within: Rect, cell: float, outside: float) -> None:
        """`within`: the box that is drawn anyway; words beyond it make the sheet grow and cost `outside` a cell."""
        self.domain, self.within, self.cell, self.outside = domain, within, cell, outside
        left, right, low, high = domain
        shape = (math.ceil((right - left) / cell) + 1, math.ceil((high - low) / cell) + 1)
        self.clutter: Array = np.zeros(shape)
        self.leaders: Array = np.zeros(shape)
        self.words: Array = np.zeros(shape)
        self.taken: list[Rect] = []
        self._table: Array | None = None
        self._runs: list[Array] = []

    def line(self, points: Sequence[Point], weight: float = 1.0) -> None:
        """Draw a line through points into the clutter."""
        self._table = None
        self._draw(self.clutter, points, weight)

    def fill(self, rect: Rect, weight: float) -> None:
        """Fill a hatched place of the clutter."""
        self._table = None
        i, k, j, m = self._cells(rect)
        self.clutter[i:k, j:m] = np.maximum(self.clutter[i:k, j:m], weight)

    def take(self, rect: Rect) -> None:
        """Keep a place for words."""
        self.taken.append(rect)
        i, k, j, m = self._cells(rect)
        self.words[i:k, j:m] = 1.0

    def free(self, rect: Rect) -> bool:
        """Say whether no words stand there yet."""
        gap = APART * self.cell
        return not any(meet(rect, one, gap) for one in self.taken)

    def cover(self, rect: Rect) -> float:
        """Return how many cells of line a place would cover."""
        i, k, j, m = self._cells(rect)
        return float(self.clutter[i:k, j:m].sum())

    def find(self, at: Point, wide: float, high: float) -> Spot | None:
        """Return the best place for words of a size that belong to a point, None where there is none; nothing is taken yet."""
        boxes, reach = self._candidates(at, wide, high)
        keep = self._inside(boxes) & ~self._hit(boxes)
        if not keep.any():
            return None
        boxes, reach = boxes[keep], reach[keep]
        near = np.stack([np.clip(at[0], boxes[:, 0], boxes[:, 1]), np.clip(at[1], boxes[:, 2], boxes[:, 3])], axis=1)
        cost = reach + LINE * self._covered(boxes) + COVERED * self._over_leader(boxes)
        cost += self.outside * self._beyond(boxes) + self._along(at, near)
        best = int(np.argmin(cost))
        left, right, low, top = (float(v) for v in boxes[best])
        end = (float(near[best, 0]), float(near[best, 1]))
        far = math.dist(end, at)
        if far <= SHORT * self.cell:
            return Spot((left, right, low, top), None, float(cost[best]))
        share = APART * self.cell / far
        start = end[0] + (at[0] - end[0]) * share, end[1] + (at[1] - end[1]) * share
        return Spot((left, right, low, top), (start, at), float(cost[best]))

    def settle(self, spot: Spot) -> None:
        """Take the place, and draw its leader."""
        self.take(spot.rect)
        if spot.leader is not None:
            self._runs.append(self._draw(self.leaders, spot.leader, 1.0))

    def _candidates(self, at: Point, wide: float, high: float) -> tuple[Array, Array]:
        turn = 2 * math.pi * np.arange(TURNS) / TURNS
        reach = np.repeat(np.array(REACHES), TURNS)
        cos, sin = np.tile(np.cos(turn), len(REACHES)), np.tile(np.sin(turn), len(REACHES))
        cos, sin = np.round(cos, 6), np.round(sin, 6)
        x = at[0] + cos * reach * self.cell + np.sign(cos) * wide / 2
        y = at[1] + sin * reach * self.cell + np.sign(sin) * high / 2
        return np.stack([x - wide / 2, x + wide / 2, y - high / 2, y + high / 2], axis=1), reach

    def _inside(self, boxes: Array) -> NDArray[np.bool_]:
        left, right, low, high = self.domain
        return np.asarray((boxes[:, 0] >= left) & (boxes[:, 1] <= right) & (boxes[:, 2] >= low) & (boxes[:, 3] <= high))

    def _hit(self, boxes: Array) -> NDArray[np.bool_]:
        if not self.taken:
            return np.zeros(len(boxes), bool)
        taken, gap = np.array(self.taken), APART * self.cell
        apart = (
            (boxes[:, None, 0] >= taken[None, :, 1] + gap) | (boxes[:, None, 1] <= taken[None, :, 0] - gap)
            | (boxes[:, None, 2] >= taken[None, :, 3] + gap) | (boxes[:, None, 3] <= taken[None, :, 2] - gap)
        )  # fmt: skip
        return np.asarray(~apart.all(axis=1))

    def _beyond(self, boxes: Array) -> Array:
        left, right, low, high = self.within
        out = np.maximum(left - boxes[:, 0], 0) + np.maximum(boxes[:, 1] - right, 0)
        out += np.maximum(low - boxes[:, 2], 0) + np.maximum(boxes[:, 3] - high, 0)
        return np.asarray(out / self.cell)

    def _along(self, at: Point, near: Array) -> Array:
        """Return what each leader from the point to the nearest place of its words costs."""
        share = np.linspace(0.0, 1.0, SAMPLES)[OWN:]
        x, y = (at[n] + (near[:, n, None] - at[n]) * share for n in (0, 1))
        i = np.clip(((x - self.domain[0]) / self.cell).astype(int), 0, self.clutter.shape[0] - 1)
        j = np.clip(((y - self.domain[2]) / self.cell).astype(int), 0, self.clutter.shape[1] - 1)
        crossed = CROSSED * (self.leaders[i, j] > 0).any(axis=1) + COVERED * (self.words[i, j] > 0).any(axis=1)
        return np.asarray(LEADER * self.clutter[i, j].sum(axis=1) + crossed)

    def _over_leader(self, boxes: Array) -> NDArray[np.bool_]:
        """Say which boxes would cover a leader."""
        if not self._runs:
            return np.zeros(len(boxes), bool)
        x, y = np.concatenate(self._runs).T
        within = (x >= boxes[:, :1]) & (x <= boxes[:, 1:2]) & (y >= boxes[:, 2:3]) & (y <= boxes[:, 3:4])
        return np.asarray(within.any(axis=1))

    def _covered(self, boxes: Array) -> Array:
        """Return how many cells of line each box would cover, from sums over all cells to the left and below."""
        grid, (left, _, low, _) = self.clutter, self.domain
        if self._table is None:
            self._table = np.zeros((grid.shape[0] + 1, grid.shape[1] + 1))
            self._table[1:, 1:] = grid.cumsum(axis=0).cumsum(axis=1)
        table = self._table
        i, k = (np.floor((boxes[:, n] - left) / self.cell).astype(int) + n for n in (0, 1))
        j, m = (np.floor((boxes[:, n + 2] - low) / self.cell).astype(int) + n for n in (0, 1))
        i, k = np.clip(i, 0, grid.shape[0]), np.clip(k, 0, grid.shape[0])
        j, m = np.clip(j, 0, grid.shape[1]), np.clip(m, 0, grid.shape[1])
        return np.asarray(table[k, m] - table[i, m] - table[k, j] + table[i, j])

    def _cells(self, rect: Rect) -> tuple[int, int, int, int]:
        left, _, low, _ = self.domain
        i, k = max(int((rect[0] - left) / self.cell), 0), int((rect[1] - left) / self.cell) + 1
        j, m = max(int((rect[2] - low) / self.cell), 0), int((rect[3] - low) / self.cell) + 1
        return i, max(k, 0), j, max(m, 0)

    def _draw(self, grid: Array, points: Iterable[Point], weight: float) -> Array:
        """Draw a line into a grid; return the points it was drawn through, close together."""
        knots = np.array(list(points))
        along = np.hypot(*np.diff(knots, axis=0).T) / self.cell * 1.5
        steps = np.maximum(np.ceil(along).astype(int), 1)
        which = np.repeat(np.arange(steps.size), steps + 1)
        share = (np.arange(which.size) - np.repeat(np.cumsum(steps + 1) - steps - 1, steps + 1)) / steps[which]
        run = knots[which] + (knots[which + 1] - knots[which]) * share[:, None]
        i = ((run[:, 0] - self.domain[0]) / self.cell).astype(int)
        j = ((run[:, 1] - self.domain[2]) / self.cell).astype(int)
        ok = (i >= 0) & (i < grid.shape[0]) & (j >= 0) & (j < grid.shape[1])
        grid[i[ok], j[ok]] = np.maximum(grid[i[ok], j[ok]], weight)
        return np.asarray(run)


def meet(one: Rect, two: Rect, gap: float) -> bool:
    """Say whether two boxes come nearer to each other than `gap`."""
    return one[0] < two[1] + gap and two[0] < one[1] + gap and one[2] < two[3] + gap and two[2] < one[3] + gap
