"""How a layer is drawn on paper: weight (of the series of ISO 128-20), dashes, shade.

Told apart by line and hatch, so that grey prints read the same.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

from service.core.drawing.shapes import Layer, Outline, Point, View


@dataclass(frozen=True)
class Ink:
    """Stroke as #rrggbb, weight and dashes in mm of paper, fill as #rrggbb or none."""

    stroke: str
    weight: float
    dashes: tuple[float, ...] = ()
    fill: str | None = None


INKS: dict[Layer, Ink] = {
    "body": Ink("#efeeea", 0.0, fill="#efeeea"),
    "hull": Ink("#222222", 0.35),
    "plate": Ink("#222222", 0.25, (4.0, 1.2)),
    "rudder": Ink("#444444", 0.25, (3.0, 1.0)),
    "pad": Ink("#222222", 0.25, fill="#c9c2b0"),
    "metal": Ink("#000000", 0.35, fill="#ffffff"),
    "blade": Ink("#000000", 0.35, fill="#dde3e6"),
    "sweep": Ink("#555555", 0.18, (1.2, 0.9)),
    "vane": Ink("#555555", 0.25, (2.2, 1.1)),
    "obstacle": Ink("#333333", 0.25),
    "clash": Ink("#a00018", 0.5),
    "water": Ink("#1f4e79", 0.5),
    "heel": Ink("#1f4e79", 0.35, (5.0, 1.0, 1.0, 1.0)),
    "centre": Ink("#333333", 0.18, (6.0, 1.2, 1.2, 1.2)),
    "hole": Ink("#000000", 0.25),
    "dimension": Ink("#222222", 0.18),
    "note": Ink("#222222", 0.18),
}
"""In the order in which they are drawn, the first undermost."""
ORDER: dict[Layer, int] = {layer: n for n, layer in enumerate(INKS)}
HATCH_MM, CLASH_MM = 2.2, 1.6
"""From line to line of a hatch, on paper; what collides is hatched both ways and closer."""
HATCH_WEIGHT, CLASH_WEIGHT = 0.13, 0.25
TICK_MM, DOT_MM = 0.9, 0.45
"""Half of a dimension's slash, and radius of the dot at a leader's end, on paper."""


class Stroke(NamedTuple):
    """A straight line of a hatch."""

    start: Point
    end: Point


def ordered(view: View) -> list[Outline]:
    """Return the outlines from undermost to topmost, each layer in the order it was given."""
    return sorted(view.outlines, key=lambda outline: ORDER[outline.layer])


def hatching(outline: Outline, scale: float) -> list[Stroke]:
    """Return the lines of an outline's hatch at a scale; none where it has none."""
    if not outline.hatched:
        return []
    if outline.layer == "clash":
        step = CLASH_MM / scale
        return [*hatch(outline.points, step, 1.0), *hatch(outline.points, step, -1.0)]
    return hatch(outline.points, HATCH_MM / scale, 1.0)


def hatch(points: tuple[Point, ...], step: float, rising: float) -> list[Stroke]:
    """Return lines at 45°, `rising` +1 or falling -1, so far apart within a closed outline. Even and odd crossings pair up.

    >>> [tuple(round(v, 2) for p in line for v in p) for line in hatch(((0, 0), (2, 0), (2, 2), (0, 2)), 2 ** 0.5, 1.0)]
    [(0.0, 0.0, 2.0, 2.0)]
    """
    gap = step * 2**0.5
    offsets = [y - rising * x for x, y in points]
    first = round(min(offsets) / gap) * gap
    found = []
    for n in range(int((max(offsets) - first) / gap) + 2):
        offset = first + n * gap
        crossings = sorted(_crossings(points, offset, rising))
        found += [Stroke(a, b) for a, b in zip(crossings[::2], crossings[1::2], strict=False) if a != b]
    return found


def _crossings(points: tuple[Point, ...], offset: float, rising: float) -> list[Point]:
    """Return where the line y = rising · x + offset crosses the outline's edges."""
    found = []
    for (ax, ay), (bx, by) in pairwise((*points, points[0])):
        one, two = ay - rising * ax - offset, by - rising * bx - offset
        if (one <= 0.0) != (two <= 0.0):
            share = one / (one - two)
            found.append((ax + (bx - ax) * share, ay + (by - ay) * share))
    return found
