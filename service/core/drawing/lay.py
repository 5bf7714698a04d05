"""A view laid out at a scale: dimensions in rows, words beside what they name, the rest as numbers with a key below.

Words of a drawing keep their size on paper whatever its scale, so where they go depends on it. Nothing is cut off: what
finds no place beside its point becomes a number there, and its words stand in the key.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from service.core.drawing import letters, measures
from service.core.drawing.laid import Laid, Leader, Measure, Ring, Text
from service.core.drawing.place import Rect, Room, Spot
from service.core.drawing.shapes import Disc, Note, Point, View

LETTER, TITLE = 2.5, 3.4
"""Size of words and of a view's title on paper (mm)."""
BROAD = 46.0
"""A note is broken into lines of at most so many mm of paper."""
MANY, WRONG = 9, 3
"""With more listed notes than this, or more places that collide, all of them become numbers."""
WORTH = 1.5
"""A drawing so much larger is worth numbers instead of words."""
FIGURED = 4.0
"""How much more than over another line words avoid to stand over a dimension's."""
OUTSIDE, TIGHT = 0.6, 40.0
"""What it costs words to make the sheet grow by a mm of paper: usually, and where it had better not."""
DEAR = 120.0
"""A place that costs more than this is worse than a number with a key (cells)."""
MARGIN, ABOUT = 3.0, 55.0
"""Paper left about everything, and how far from the drawing words may stand (mm)."""
KEY_COLUMN, RING = 62.0, 2.6
"""Width of a column of the key, and radius of the ring about a number (mm of paper)."""
ROUND = 24
SERIES = (1.0, 2.0, 2.5, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 75.0, 100.0, 200.0, 500.0)
"""Scales 1:N that are used; 1:15, 1:25 and so on read as easily as those of ISO 5455 (1, 2, 5, 10, ...)."""


def _same(text: str) -> str:
    return text


@dataclass(frozen=True)
class Manner:
    """How words are set. `spelled`: how a writer writes what it cannot set.

    `told`: the N of 1:N that the title says, where the writer shrinks all of it. `tight`: words rather cover lines than
    make the sheet grow. `short`: every note is a number with a key, for a large drawing on a small sheet.
    """

    spelled: Callable[[str], str] = _same
    told: float | None = None
    tight: bool = False
    short: bool = False


PLAIN = Manner()


def lay(view: View, scale: float, manner: Manner = PLAIN) -> Laid:
    """Return the view laid out at a scale (mm of paper for one mm)."""
    return _Layout(view, scale, manner).done()


def fitted(view: View, wide: float, high: float, spelled: Callable[[str], str] = _same) -> Laid:
    """Return the view at the largest scale of the series at which all of it is within so many mm of paper.

    Where words would make it much smaller than numbers with a key, it has numbers. Where even the smallest scale is too
    large, the smallest: the writer then shrinks it, words and all.
    """
    able = [one for one in SERIES if _Layout(view, 1.0 / one, Manner(spelled)).may_fit(wide, high)] or list(SERIES[-1:])
    worded = _largest(view, able, (wide, high), Manner(spelled))
    if worded is not None and WORTH * able[0] > worded.one_to:
        return worded  # numbers could not make it much larger
    short = _largest(view, able, (wide, high), Manner(spelled, short=True))
    if worded is None or (short is not None and short.scale >= WORTH * worded.scale):
        return short or lay(view, 1.0 / SERIES[-1], Manner(spelled, short=True))
    return worded


def _largest(view: View, series: Sequence[float], room: tuple[float, float], manner: Manner) -> Laid | None:
    for one_to in series:
        found = lay(view, 1.0 / one_to, manner)
        if found.size[0] <= room[0] and found.size[1] <= room[1]:
            return found
    return None


class _Layout:
    def __init__(self, view: View, scale: float, manner: Manner) -> None:
        self.view, self.scale, self.manner, self.spelled = view, scale, manner, manner.spelled
        self.size = LETTER / scale
        self.texts: list[Text] = []
        self.leaders: list[Leader] = []
        self.rings: list[Ring] = []
        self.key: list[Note] = []
        left, right, low, high = view.box
        ats = [m.at for m in view.dimensions if m.at is not None and m.axis == "x"]
        self.box = left, right, min(low, *ats, low), max(high, *ats, high)
        self.measures = self._outside(self.box)

    def may_fit(self, wide: float, high: float) -> bool:
        """Say whether lines and dimensions alone fit into so many mm of paper, before any note is placed."""
        left, right, low, top = _about([self.box, *(m.figure.box for m in self.measures)])
        return (right - left) * self.scale + 2 * MARGIN <= wide and (
            top - low
        ) * self.scale + 2 * MARGIN + TITLE <= high

    def done(self) -> Laid:
        """Place everything, most urgent first, then set key, remarks and title about it."""
        self.room = self._room(self.box)
        for mark in self.view.dimensions:
            if mark.at is not None:
                found = measures.in_place(mark, self.room, self.size, self.scale)
                self.measures.append(found)
                self.room.line(found.line, FIGURED)
        notes = sorted(self.view.notes, key=lambda n: (not n.urgent, n.listed))
        many, wrong = sum(note.listed for note in notes) > MANY, sum(note.urgent for note in notes) > WRONG
        for note in notes:
            numbered = self.manner.short or (many and note.listed) or (wrong and note.urgent)
            if numbered or self._spot(note) is None:
                self._number(note)
        box = self._within()
        self._below(box)
        self._title(self._within())
        left, right, low, high = self._within()
        margin = MARGIN / self.scale
        return Laid(
            self.view, self.scale, tuple(self.texts), tuple(self.measures), tuple(self.leaders), tuple(self.rings),
            (left - margin, right + margin, low - margin, high + margin), self.manner.short,
        )  # fmt: skip

    def _outside(self, box: Rect) -> list[Measure]:
        found: list[Measure] = []
        for side in ("left", "right", "below", "above"):
            marks = [m for m in self.view.dimensions if m.at is None and m.side == side]
            found += measures.beside(marks, box, self.size, self.scale, found)
        return found

    def _room(self, box: Rect) -> Room:
        cell = 1.0 / self.scale
        within = _about([box, *(m.figure.box for m in self.measures), *(_rect(m.line) for m in self.measures)])
        far = ABOUT * cell
        room = Room(
            (within[0] - far, within[1] + far, within[2] - far, within[3] + far),
            within,
            cell,
            TIGHT if self.manner.tight else OUTSIDE,
        )
        for outline in self.view.outlines:
            ring = (*outline.points, outline.points[0]) if outline.closed else outline.points
            room.line(ring, 0.4 if outline.layer == "centre" else 1.0)
            if outline.hatched:
                room.fill(_rect(outline.points), 0.7)
        for disc in self.view.discs:
            room.line(_circle(disc), 0.6)
        for one in self.measures:
            room.line(one.line, FIGURED)
            for foot in one.feet:
                room.line(foot, 0.8)
            room.take(one.figure.box)
        return room

    def _spot(self, note: Note) -> Spot | None:
        """Set a note in words beside its point; None where every place is too dear."""
        lines = letters.wrapped(self.spelled(note.text), BROAD / self.scale, self.size, bold=note.urgent)
        wide = max(letters.width(line, self.size, bold=note.urgent) for line in lines)
        high = (len(lines) - 1) * letters.PITCH * self.size + (letters.RISE + letters.DROP) * self.size
        found = [self.room.find(at, wide, high) for at in (note.at, *note.others)]
        spot = min((s for s in found if s is not None), key=lambda s: s.cost, default=None)
        if spot is None or spot.cost > DEAR:
            return None
        self.room.settle(spot)
        self._lines(lines, (spot.rect[0], spot.rect[3]), bold=note.urgent, note=note)
        self._leader(spot, note)
        return spot

    def _lines(self, lines: Sequence[str], corner: Point, *, bold: bool, note: Note) -> None:
        x, top = corner
        for n, line in enumerate(lines):
            base = top - letters.RISE * self.size - n * letters.PITCH * self.size
            self.texts.append(Text((x, base), line, self.size, bold=bold, layer=note.layer))

    def _leader(self, spot: Spot, note: Note) -> None:
        if spot.leader is not None:
            self.leaders.append(Leader(*spot.leader, layer=note.layer))

    def _number(self, note: Note) -> None:
        """Put a number in a ring at the note's point, and its words into the key."""
        self.key.append(note)
        wide = 2 * RING / self.scale
        spot = self.room.find(note.at, wide, wide)
        if spot is None:  # nothing free as far as words may stand: above everything there is
            left, _, _, high = _about([self.room.within, *self.room.taken])
            rect = (left, left + wide, high + wide, high + 2 * wide)
            spot = Spot(rect, ((left + wide / 2, high + wide), note.at), 0.0)
        self.room.settle(spot)
        middle = ((spot.rect[0] + spot.rect[1]) / 2, (spot.rect[2] + spot.rect[3]) / 2)
        self.rings.append(Ring(middle, wide / 2))
        base = (middle[0], middle[1] - 0.36 * self.size)
        self.texts.append(Text(base, str(len(self.key)), self.size, "middle", bold=note.urgent, layer=note.layer))
        self._leader(spot, note)

    def _below(self, box: Rect) -> None:
        """Set the key in columns under the drawing, and the remarks under it over its whole width."""
        left, right, low, _ = box
        pitch = letters.PITCH * self.size
        wide = KEY_COLUMN / self.scale
        columns = max(int((right - left) / wide), 1)
        entries = [
            letters.wrapped(f"{n}: {self.spelled(note.text)}", wide - self.size, self.size, bold=note.urgent)
            for n, note in enumerate(self.key, start=1)
        ]
        down = low - 2 * pitch
        lowest, share = down, -(-sum(map(len, entries)) // columns)
        column, at = 0, 0
        for lines, note in zip(entries, self.key, strict=True):
            if at and at + len(lines) > share + 1 and column < columns - 1:
                column, at = column + 1, 0
            for line in lines:
                place = (left + column * wide, down - at * pitch)
                self.texts.append(
                    Text(place, line, self.size, bold=note.urgent, layer="clash" if note.urgent else "note")
                )
                at += 1
            lowest = min(lowest, down - at * pitch)
        at = 0
        lowest -= pitch / 2
        for remark in self.view.remarks:
            for line in letters.wrapped(self.spelled(remark), max(right - left, wide), self.size):
                self.texts.append(Text((left, lowest - at * pitch), line, self.size))
                at += 1

    def _title(self, box: Rect) -> None:
        if not self.view.title:
            return
        size = TITLE / self.scale
        said = f"{self.view.title}  1:{self.manner.told or 1.0 / self.scale:.3g}, lengths in {self.view.lengths}"
        self.texts.append(Text((box[0], box[3] + size), self.spelled(said), size, bold=True))

    def _within(self) -> Rect:
        return _about([
            self.room.within, *(t.box for t in self.texts), *(m.figure.box for m in self.measures),
            *((r.centre[0] - r.radius, r.centre[0] + r.radius, r.centre[1] - r.radius, r.centre[1] + r.radius) for r in self.rings),
        ])  # fmt: skip


def _circle(disc: Disc) -> tuple[Point, ...]:
    (x, y), r = disc.centre, disc.radius
    turns = [2 * math.pi * n / ROUND for n in range(ROUND + 1)]
    return tuple((x + r * math.cos(a), y + r * math.sin(a)) for a in turns)


def _rect(points: Sequence[Point]) -> Rect:
    xs, ys = zip(*points, strict=True)
    return min(xs), max(xs), min(ys), max(ys)


def _about(rects: Sequence[Rect]) -> Rect:
    return min(r[0] for r in rects), max(r[1] for r in rects), min(r[2] for r in rects), max(r[3] for r in rects)
