"""Obstacles in place: where one stands, where a moving one ends, and what it sweeps between; cut off at the window."""

from __future__ import annotations

from collections.abc import Iterator

from service.core.drawing.scene import Axis, Box, Scene, Thing, overlap
from service.core.drawing.shapes import Note, Outline, Point

THIN = 15.0
"""An obstacle said to have no extent along an axis is drawn this thick (mm)."""
AWAY = 0.35
MOVES = {"folds": "folded away", "swings": "swung away", "slides": "slid away"}


def obstacles(scene: Scene, across: Axis, up: Axis) -> tuple[list[Outline], list[Note], list[str]]:
    """Return outlines and notes of all obstacles in a view of two axes, and a remark for each that lies outside it."""
    outlines: list[Outline] = []
    notes: list[Note] = []
    beyond: list[str] = []
    for thing in scene.things:
        found = list(_drawn(thing, scene.window, across, up))
        if not found:
            beyond.append(f"Beyond this drawing: {said(thing)}.")
            continue
        outlines += found
        cut = "" if _whole(thing, scene.window, across, up) else ", longer than drawn"
        centre, *more = spots(found[0].points)
        notes.append(Note(f"{said(thing)}{cut}", centre, "obstacle", listed=True, others=tuple(more)))
        if thing.moved and len(found) > 1:
            away = MOVES.get(thing.obstacle.moves or "", "moved away")
            centre, *more = spots(found[-1].points)
            notes.append(Note(f"{thing.name}, {away}", centre, "sweep", listed=True, others=tuple(more)))
    return outlines, notes, beyond


def _whole(thing: Thing, window: Box, across: Axis, up: Axis) -> bool:
    """Say whether all of it is within the window of a view."""
    return all(
        thing.start[2 * axis] >= window[2 * axis] and thing.start[2 * axis + 1] <= window[2 * axis + 1]
        for axis in (across, up)
    )


def said(thing: Thing) -> str:
    """Return what an obstacle is called on a drawing."""
    extra = ", may be taken off" if thing.obstacle.removable and not thing.obstacle.keep else ""
    return f"{thing.name}{extra}"


def middle(points: tuple[Point, ...]) -> Point:
    """Return the middle of the box about some points."""
    xs, ys = zip(*points, strict=True)
    return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2


def spots(points: tuple[Point, ...]) -> tuple[Point, ...]:
    """Return points of a box that words may point to: its middle, and near either end of its longer side."""
    (xs, ys) = zip(*points, strict=True)
    (x, y), wide, high = middle(points), max(xs) - min(xs), max(ys) - min(ys)
    if wide > high:
        return (x, y), (x - AWAY * wide, y), (x + AWAY * wide, y)
    return (x, y), (x, y - AWAY * high), (x, y + AWAY * high)


def _drawn(thing: Thing, window: Box, across: Axis, up: Axis) -> Iterator[Outline]:
    """Give the outline where it stands, then what it sweeps and where it ends."""
    start = rectangle(thing.start, window, across, up)
    end = rectangle(thing.end, window, across, up) if thing.moved else None
    if start is not None:
        yield Outline("obstacle", start, label=said(thing), hatched=True)
    if end is not None and end != start:
        if start is not None:
            yield Outline("sweep", hull_of((*start, *end)), label=f"what the {thing.name} sweeps")
        yield Outline("obstacle", end, label=f"{thing.name}, {MOVES.get(thing.obstacle.moves or '', 'moved away')}")


def rectangle(box: Box, window: Box, across: Axis, up: Axis) -> tuple[Point, ...] | None:
    """Return the corners of a box in a view, cut off at the window; None where nothing of it is in there."""
    thick = list(box)
    for axis in (across, up):
        low, high = thick[2 * axis], thick[2 * axis + 1]
        if high - low < THIN:
            thick[2 * axis : 2 * axis + 2] = [low - (THIN - high + low) / 2, high + (THIN - high + low) / 2]
    a, b, c, d, e, f = thick
    shared = overlap((a, b, c, d, e, f), window)
    if shared is None:
        return None
    left, right = shared[2 * across], shared[2 * across + 1]
    low, high = shared[2 * up], shared[2 * up + 1]
    return (left, low), (right, low), (right, high), (left, high)


def hull_of(points: tuple[Point, ...]) -> tuple[Point, ...]:
    """Return the convex hull of some points, anticlockwise.

    >>> hull_of(((0, 0), (2, 0), (1, 1), (2, 2), (0, 2)))
    ((0, 0), (2, 0), (2, 2), (0, 2))
    """
    ordered = sorted(set(points))
    lower, upper = _chain(ordered), _chain(ordered[::-1])
    return (*lower[:-1], *upper[:-1])


def _chain(points: list[Point]) -> list[Point]:
    found: list[Point] = []
    for x, y in points:
        while len(found) > 1:
            (ax, ay), (bx, by) = found[-2:]
            if (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0:
                break
            found.pop()
        found.append((x, y))
    return found
