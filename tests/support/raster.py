"""A picture of our own SVG: enough of the language to see what was drawn, and to measure how much of it."""

from __future__ import annotations

import re
from typing import Any
from xml.etree import ElementTree as ET

import numpy as np
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.lines import Line2D
from matplotlib.patches import Circle, Polygon
from numpy.typing import NDArray

SVG = "{http://www.w3.org/2000/svg}"
INCH = 25.4
_RULE = re.compile(r"\.([\w,.-]+)\{([^}]*)\}")
_MOVE = re.compile(r"M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)")


def drawn(svg: str, dots: int = 100) -> NDArray[np.uint8]:
    """Return the picture (height, width, 3) of an SVG whose unit is the millimetre, at so many dots an inch."""
    root = ET.fromstring(svg)  # noqa: S314 - our own drawing
    _, _, wide, high = (float(v) for v in root.attrib["viewBox"].split())
    figure = Figure(figsize=(wide / INCH, high / INCH), dpi=dots)
    canvas: Any = FigureCanvasAgg(figure)  # matplotlib leaves some of it untyped
    axes = figure.add_axes((0.0, 0.0, 1.0, 1.0))
    axes.set_xlim(0, wide)
    axes.set_ylim(high, 0)
    axes.axis("off")
    styles = _styles(root.findtext(f"{SVG}style") or "")
    for order, element in enumerate(root.iter()):
        _draw(axes, element, styles, order)
    canvas.draw()
    return np.asarray(canvas.buffer_rgba())[..., :3]


def _styles(text: str) -> dict[str, dict[str, str]]:
    found: dict[str, dict[str, str]] = {}
    for names, body in _RULE.findall(text):
        parts = dict(part.split(":", 1) for part in body.split(";") if ":" in part)
        for name in names.replace(".", "").split(","):
            found.setdefault(name, {}).update(parts)
    return found


def _draw(axes: Any, element: ET.Element, styles: dict[str, dict[str, str]], order: int) -> None:  # noqa: ANN401
    style: dict[str, str] = {}
    for name in element.attrib.get("class", "").split():
        style |= styles.get(name, {})
    stroke, fill = style.get("stroke", "none"), style.get("fill", "none")
    look: dict[str, Any] = {
        "linewidth": float(style.get("stroke-width", 0)) * 72 / INCH,
        "zorder": order,
        "edgecolor": stroke,
        "facecolor": fill,
    }
    tag, at = element.tag.removeprefix(SVG), element.attrib
    if tag in ("polygon", "polyline"):
        points = [tuple(map(float, pair.split(","))) for pair in at["points"].split()]
        axes.add_patch(Polygon(points, closed=tag == "polygon", **look))
    elif tag == "circle":
        axes.add_patch(Circle((float(at["cx"]), float(at["cy"])), float(at["r"]), **look))
    elif tag == "path":
        for move in _MOVE.findall(at["d"]):
            x1, y1, x2, y2 = map(float, move)
            axes.add_line(Line2D((x1, x2), (y1, y2), linewidth=look["linewidth"], color=stroke, zorder=order))
    elif tag == "text" and element.text:
        size = float(at.get("font-size") or style.get("font-size", "3px").removesuffix("px"))
        middle = at.get("text-anchor") == "middle"
        axes.text(
            float(at["x"]), float(at["y"]), element.text.replace("$", r"\$"), fontsize=size * 72 / INCH, zorder=order,
            ha="center" if middle else "left", va="baseline", rotation=90 if "rotate" in at.get("transform", "") else 0,
            rotation_mode="anchor", weight="bold" if "bold" in at.get("class", "") or at.get("class") == "head" else "normal",
        )  # fmt: skip
