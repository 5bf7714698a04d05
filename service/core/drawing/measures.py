"""Dimensions in rows beside the drawing, shortest nearest, so that no figure stands on another or on an extension line."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from service.core.drawing import letters
from service.core.drawing.laid import Measure, Text
from service.core.drawing.place import Rect, Room, meet
from service.core.drawing.shapes import Dimension

FIRST, PITCH, GAP, LIFT = 7.0, 5.5, 1.2, 0.9
"""From drawing to the first row, from row to row, between figures, from line to figure: mm of paper."""
EVEN = 1e-6
Taken = tuple[float, float, float, float]
"""What a dimension takes of its row: both ends of its line, both ends of its figure."""
OUT = {"left": -1.0, "right": 1.0, "below": -1.0, "above": 1.0}


def beside(
    marks: Sequence[Dimension], box: Rect, size: float, scale: float, others: Sequence[Measure]
) -> list[Measure]:
    """Return the dimensions of one side of the drawing, stacked outwards from its box, clear of those of other sides."""
    rows = _Rows([end for mark in marks for end in mark.ends], box, size, scale, others)
    return [rows.set(mark) for mark in sorted(marks, key=lambda m: (m.measured, m.text))]


class _Rows:
    """Rows of dimensions beside one side of a drawing. `feet`: where extension lines run, along the side."""

    def __init__(
        self, feet: Sequence[float], box: Rect, size: float, scale: float, others: Sequence[Measure]
    ) -> None:  # fmt: skip
        self.feet, self.box, self.size, self.scale = feet, box, size, scale
        self.gap = GAP / scale
        self.figures = [other.figure.box for other in others]
        self.lines = [_thin(other) for other in others]
        self.rows: list[list[Taken]] = []

    def set(self, mark: Dimension) -> Measure:
        """Return a dimension in the first row that has room for its line and figure."""
        half = letters.width(mark.text, self.size) / 2
        low, high = mark.ends
        row, beyond = 0, max(high, *self.feet)
        while True:
            if row == len(self.rows):
                self.rows.append([])
            # in a row of its own there is room at last: beyond every foot, and further out with every row
            far = [beyond + half + (2 + row * n) * self.gap for n in range(4)] if not self.rows[row] else []
            for middle in (*_middles(low, high, half, self.gap), *far):
                mine = (low, high, middle - half - self.gap, middle + half + self.gap)
                made = _measure(mark, _line(mark, self.box, row, self.scale), middle, self.size, self.scale)
                if self._free(mine, self.rows[row], made):
                    self.rows[row].append(mine)
                    return made
            row += 1

    def _free(self, mine: Taken, busy: Sequence[Taken], made: Measure) -> bool:
        if any(mine[2] < foot < mine[3] for foot in self.feet) or not all(_clear(mine, other) for other in busy):
            return False
        line = _thin(made)
        return not (
            any(meet(made.figure.box, other, self.gap) or meet(line, other, self.gap) for other in self.figures)
            or any(meet(made.figure.box, other, self.gap) for other in self.lines)
        )


def _thin(measure: Measure) -> Rect:
    (x0, y0), (x1, y1) = measure.line
    return x0, x1, y0, y1


def _clear(one: Taken, two: Taken) -> bool:
    """Say whether two dimensions may share a row: lines may touch end to end, figures keep off everything."""
    lines = one[1] <= two[0] + EVEN or two[1] <= one[0] + EVEN
    mine = one[3] <= min(two[0], two[2]) or one[2] >= max(two[1], two[3])
    theirs = two[3] <= min(one[0], one[2]) or two[2] >= max(one[1], one[3])
    within = (one[2] >= one[0] and one[3] <= one[1]) and (two[2] >= two[0] and two[3] <= two[1])
    return lines and (within or (mine and theirs))


def _middles(low: float, high: float, half: float, gap: float) -> Iterator[float]:
    """Give places for a figure along its line: the middle first, then to and fro, then beyond either end."""
    middle, room = (low + high) / 2, (high - low) / 2 - half - gap
    if room >= 0:
        yield middle
        for n in range(1, 9):
            yield middle + room * n / 8
            yield middle - room * n / 8
    for n in range(6):
        step = half + 2 * gap + n * half
        yield high + step
        yield low - step


def _line(mark: Dimension, box: Rect, row: int, scale: float) -> float:
    edge = {"left": box[0], "right": box[1], "below": box[2], "above": box[3]}[mark.side]
    return edge + OUT[mark.side] * (FIRST + PITCH * row) / scale


def _measure(mark: Dimension, at: float, middle: float, size: float, scale: float, lift: float = LIFT) -> Measure:
    place = (middle, at + lift / scale) if mark.axis == "x" else (at - lift / scale, middle)
    return Measure(
        mark, at, Text(place, mark.text, size, "middle", turned=mark.axis == "y", layer="dimension", blank=True)
    )


def in_place(mark: Dimension, room: Room, size: float, scale: float) -> Measure:
    """Return a dimension that stands where it is measured, its figure where it covers least; the figure's place is taken."""
    assert mark.at is not None  # noqa: S101 - the caller looked
    low, high = mark.ends
    half, gap = letters.width(mark.text, size) / 2, GAP / scale
    under = -(LIFT + letters.RISE * size * scale)
    best: tuple[float, Measure] | None = None
    for lift in (LIFT, under):
        for middle in _middles(low, high, half, gap):
            one = _measure(mark, mark.at, middle, size, scale, lift)
            if not room.free(one.figure.box):
                continue
            cost = room.cover(one.figure.box) + abs(middle - (low + high) / 2) * scale * 0.5 + (lift < 0)
            if best is None or cost < best[0]:
                best = cost, one
    if best is None:  # words all about: the row beside the drawing's edge is free
        return _measure(mark, mark.at, max(room.within[1], high) + half + gap, size, scale)
    room.take(best[1].figure.box)
    return best[1]
