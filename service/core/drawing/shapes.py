"""What a view is made of, in mm and without a file format: outlines, discs, dimensions, notes.

A view's own x runs to the right and y up: from starboard x aft and z up, from aft y and z, from above x aft and y.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

Point = tuple[float, float]
Layer = Literal[
    "body", "hull", "water", "heel", "metal", "blade", "vane", "sweep", "rudder", "obstacle", "pad", "plate", "hole", "centre",
    "dimension", "note", "clash",
]  # fmt: skip
Key = Literal["side", "stern", "plan", "lower_plate", "upper_plate"]


@dataclass(frozen=True)
class Outline:
    """A line through points; `closed` ones are filled by the writer, `hatched` ones hatched. `label` is its name."""

    layer: Layer
    points: tuple[Point, ...]
    closed: bool = True
    label: str = ""
    hatched: bool = False


@dataclass(frozen=True)
class Disc:
    """A circle: a bolt hole, a shaft seen from above, what turns about one."""

    layer: Layer
    centre: Point
    radius: float
    label: str = ""

    @property
    def box(self) -> tuple[Point, Point]:
        """Return its lower left and upper right corner."""
        (x, y), r = self.centre, self.radius
        return (x - r, y - r), (x + r, y + r)


@dataclass(frozen=True)
class Dimension:
    """The distance between two points along one axis of the view, with what is written on it.

    `side` says on which side of the drawing it stands; `at`, where given, puts its line at that very coordinate instead.
    """

    start: Point
    end: Point
    axis: Literal["x", "y"]
    text: str
    side: Literal["left", "right", "below", "above"] = "right"
    at: float | None = None
    says: str = ""
    """What is measured, in words: the dimension's name in a list."""

    @property
    def ends(self) -> tuple[float, float]:
        """Return both ends along the axis, the lesser first."""
        which = 0 if self.axis == "x" else 1
        return min(self.start[which], self.end[which]), max(self.start[which], self.end[which])

    @property
    def measured(self) -> float:
        """Return the distance (mm)."""
        low, high = self.ends
        return high - low


@dataclass(frozen=True)
class Note:
    """Words that belong to a point of the drawing, or to any of some others.

    `urgent`: what collides, set bold; `listed`: becomes a number with a key where there are many.
    """

    text: str
    at: Point
    layer: Layer = "note"
    urgent: bool = False
    listed: bool = False
    others: tuple[Point, ...] = ()


@dataclass(frozen=True)
class View:
    """One view: its key and title, a sentence that says what it shows, and everything in it."""

    key: Key
    title: str
    says: str
    outlines: tuple[Outline, ...]
    discs: tuple[Disc, ...] = ()
    dimensions: tuple[Dimension, ...] = ()
    notes: tuple[Note, ...] = ()
    remarks: tuple[str, ...] = ()
    """Sentences set under the view: how it is turned, and what could not be drawn in place."""
    lengths: str = "mm"
    """What its dimensions are in."""

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Return least and greatest x, least and greatest y of everything drawn, dimensions' own ends included."""
        xs, ys = zip(*self._points(), strict=True)
        return min(xs), max(xs), min(ys), max(ys)

    def _points(self) -> Iterator[Point]:
        for outline in self.outlines:
            yield from outline.points
        for disc in self.discs:
            yield from disc.box
        for mark in self.dimensions:
            yield from (mark.start, mark.end)
        for note in self.notes:
            yield note.at


@dataclass(frozen=True)
class Template:
    """One bracket's template: its outlines, the word at its upper edge, how to look at it, where its middle goes."""

    view: View
    name: str
    short: str
    up: str
    left: str
    right: str
    lines: tuple[str, ...]
