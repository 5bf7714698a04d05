"""A view laid out at a scale: the same mm, with every figure and word in its place. What a writer draws, and no more."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from service.core.drawing import letters
from service.core.drawing.place import Rect
from service.core.drawing.shapes import Dimension, Layer, Point, View


@dataclass(frozen=True)
class Text:
    """One line of words: its base line begins (or has its middle) at `at`; `turned` reads upwards. Sizes in mm of the view."""

    at: Point
    text: str
    size: float
    anchor: Literal["start", "middle"] = "start"
    turned: bool = False
    bold: bool = False
    layer: Layer = "note"
    blank: bool = False
    """The paper is made white behind it: it stands on lines."""

    @property
    def box(self) -> Rect:
        """Return a bound on what it covers."""
        wide = letters.width(self.text, self.size, bold=self.bold)
        before = wide / 2 if self.anchor == "middle" else 0.0
        rise, drop = letters.RISE * self.size, letters.DROP * self.size
        (x, y) = self.at
        if self.turned:
            return x - rise, x + drop, y - before, y + wide - before
        return x - before, x + wide - before, y - drop, y + rise


@dataclass(frozen=True)
class Measure:
    """A dimension in place: its line runs along its axis at `at`; `figure` is what is written on it."""

    mark: Dimension
    at: float
    figure: Text

    @property
    def line(self) -> tuple[Point, Point]:
        """Return both ends of the dimension line."""
        low, high = self.mark.ends
        return ((low, self.at), (high, self.at)) if self.mark.axis == "x" else ((self.at, low), (self.at, high))

    @property
    def feet(self) -> tuple[tuple[Point, Point], tuple[Point, Point]]:
        """Return both extension lines, from what is measured to the dimension line, in the order of `mark`."""
        start, end = self.mark.start, self.mark.end
        if self.mark.axis == "x":
            return (start, (start[0], self.at)), (end, (end[0], self.at))
        return (start, (self.at, start[1])), (end, (self.at, end[1]))


@dataclass(frozen=True)
class Leader:
    """A line from words to the point they belong to."""

    start: Point
    end: Point
    layer: Layer = "note"


@dataclass(frozen=True)
class Ring:
    """A circle about a number that stands for words of the key."""

    centre: Point
    radius: float


@dataclass(frozen=True)
class Laid:
    """A view with all its words placed. `scale`: mm of paper for one mm of the boat; `box` holds everything drawn."""

    view: View
    scale: float
    texts: tuple[Text, ...]
    measures: tuple[Measure, ...]
    leaders: tuple[Leader, ...]
    rings: tuple[Ring, ...]
    box: Rect
    short: bool = False
    """Its notes are numbers with a key."""

    @property
    def one_to(self) -> float:
        """Return the N of a scale of 1:N."""
        return 1.0 / self.scale

    @property
    def size(self) -> tuple[float, float]:
        """Return width and height on paper (mm)."""
        left, right, low, high = self.box
        return (right - left) * self.scale, (high - low) * self.scale
