"""Shapes that several views draw: upright blocks, bars, and the words for the heeled waterline."""

from __future__ import annotations

import math

from service.core.drawing.scene import Scene
from service.core.drawing.shapes import Layer, Outline, Point

STAND_MM, WALL_MM = 60.0, 12.0
"""How broad the column of a stand, and how thick the wall of a collar, is drawn: the catalogue does not say (mm)."""


def block(layer: Layer, left: float, right: float, low: float, high: float, label: str) -> Outline:
    """Return an upright rectangle."""
    return Outline(layer, ((left, low), (right, low), (right, high), (left, high)), label=label)


def about(layer: Layer, middle: float, radius: float, low: float, high: float, label: str) -> Outline:
    """Return an upright rectangle about a line."""
    return block(layer, middle - radius, middle + radius, low, high, label)


def rod(start: Point, end: Point, width: float, label: str) -> Outline:
    """Return a straight bar of a width between two points."""
    along = math.hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    nx, ny = -(end[1] - start[1]) / along * width / 2, (end[0] - start[0]) / along * width / 2
    points = (
        (start[0] + nx, start[1] + ny), (end[0] + nx, end[1] + ny), (end[0] - nx, end[1] - ny), (start[0] - nx, start[1] - ny),
    )  # fmt: skip
    return Outline("metal", points, label=label)


def heeled_drop(scene: Scene) -> float:
    """Return how far the water falls at the gear when she heels away from it (mm)."""
    return abs(scene.at.offset_mm) * math.tan(math.radians(scene.catalogue.rules["heel_angle"]))


def heel_words(scene: Scene) -> str:
    """Return what the heeled waterline is called."""
    return f"water when heeled {scene.catalogue.rules['heel_angle']:.0f}°, gear to weather"


def shaft_words(scene: Scene) -> str:
    """Return what the shaft is called: its length and its code."""
    return f"shaft, {scene.catalogue.shaft(scene.fit.configuration.shaft).length_mm:.0f} long"


def vane_middle(scene: Scene) -> float:
    """Return the height of the middle of the space the vane turns in."""
    return scene.at.shaft_top_mm + (scene.gear.vane.bottom_mm + scene.gear.vane.top_mm) / 2
