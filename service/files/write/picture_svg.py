"""A wordless picture of a measurement -> inline SVG: thin black lines, readable in grey, without styles a page may forbid."""

from __future__ import annotations

from math import hypot
from xml.sax.saxutils import escape, quoteattr

from service.core.reading.pictures import Picture, Point, Stroke

LEFT, RIGHT, LOW, HIGH = -76.0, 78.0, -68.0, 76.0
HEAD = 5.0
LOOKS = {
    "hull": 'fill="#f0eee8" stroke="#222" stroke-width="1.1"', "water": 'fill="none" stroke="#667" stroke-width=".9"',
    "thin": 'fill="none" stroke="#777" stroke-width=".6"',
    "dashed": 'fill="none" stroke="#444" stroke-width=".7" stroke-dasharray="3 2"',
    "rudder": 'fill="#fff" stroke="#555" stroke-width=".9"', "thing": 'fill="#ddd" stroke="#444" stroke-width=".8"',
    "arrow": 'fill="none" stroke="#000" stroke-width="1.3"', "dot": 'fill="#000"',
}  # fmt: skip
CLOSED = frozenset({"hull", "rudder", "thing"})


def picture_svg(picture: Picture, name: str, width: int = 190) -> str:
    """Return the picture as one <svg> element; `name` is what a reader who cannot see it is told."""
    height = round(width * (HIGH - LOW) / (RIGHT - LEFT))
    body = "".join(_drawn(stroke) for stroke in picture.strokes)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" role="img" '
        f'viewBox="{LEFT:g} {-HIGH:g} {RIGHT - LEFT:g} {HIGH - LOW:g}" aria-label={quoteattr(name)}>'
        f"<title>{escape(name)}</title>{body}</svg>"
    )


def _drawn(stroke: Stroke) -> str:
    look = LOOKS[stroke.sort]
    if stroke.sort == "dot":
        x, y = stroke.points[0]
        return f'<circle cx="{x:g}" cy="{-y:g}" r="2.2" {look}/>'
    points = " ".join(f"{x:g},{-y:g}" for x, y in stroke.points)
    tag = "polygon" if stroke.sort in CLOSED else "polyline"
    heads = ""
    if stroke.sort == "arrow":
        heads = _head(stroke.points[1], stroke.points[0]) + _head(stroke.points[-2], stroke.points[-1])
    return f'<{tag} points="{points}" {look}/>{heads}'


def _head(start: Point, tip: Point) -> str:
    (x0, y0), (x1, y1) = start, tip
    long = hypot(x1 - x0, y1 - y0) or 1.0
    size = min(HEAD, long * 0.6)
    ux, uy = (x1 - x0) / long * size, (y1 - y0) / long * size
    wings = ((x1, y1), (x1 - ux - uy * 0.35, y1 - uy + ux * 0.35), (x1 - ux + uy * 0.35, y1 - uy - ux * 0.35))
    return f'<polygon points="{" ".join(f"{x:.1f},{-y:.1f}" for x, y in wings)}"/>'
