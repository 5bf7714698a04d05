"""Views -> one SVG sheet: black lines and hatches on white, readable in grey, in the file's own millimetres."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from xml.sax.saxutils import escape

from service.core.drawing import Dimension, Outline, View

STYLE = """
.hull{fill:#efece4;stroke:#222;stroke-width:1.2}
.rudder{fill:none;stroke:#555;stroke-dasharray:7 3}
.obstacle{fill:url(#hatch);stroke:#777;stroke-dasharray:2 2}
.metal{fill:#fff;stroke:#111;stroke-width:1.4}
.blade{fill:#dfe6ea;stroke:#111;stroke-width:1.2}
.vane{fill:none;stroke:#888;stroke-dasharray:5 4}
.pad{fill:#c9b48a;stroke:#5a4a28}
.water{fill:none;stroke:#2b5f86;stroke-width:1.2}
.dimension{fill:none;stroke:#333;stroke-width:.7}
text{font:11px 'DejaVu Sans',Verdana,sans-serif;fill:#111}
.head{font-size:14px}.small{font-size:10px;fill:#444}
"""
Place = Callable[[tuple[float, float]], tuple[float, float]]
PIXELS_PER_MM = 0.22
EDGE, GAP, TICK = 46.0, 60.0, 4.0
SHORT = 34.0
"""An upright dimension shorter than this has its figure beyond its end."""


def write_svg(views: Sequence[View], heading: str, lines: Sequence[str]) -> str:
    """Return a sheet with the views side by side to one scale, a heading above and lines of text below."""
    width, height = EDGE, 0.0
    placed = []
    for view in views:
        left, right, low, high = view.box
        placed.append((view, width - left * PIXELS_PER_MM))
        width += (right - left + 420) * PIXELS_PER_MM + GAP
        height = max(height, (high - low + 260) * PIXELS_PER_MM)
    bottom = min(v.box[2] for v in views)
    base = EDGE + 30 + height + bottom * PIXELS_PER_MM
    below = base - bottom * PIXELS_PER_MM + 40
    width = max(width, EDGE * 2 + 7.2 * max((len(line) for line in lines), default=0))
    parts = [_open(width, below + 16 * len(lines) + 20, heading, views)]
    parts.append(f'<text class="head" x="{EDGE}" y="{EDGE - 14}">{escape(heading)}</text>')
    for view, x0 in placed:
        parts.append(_view(view, x0, base))
    parts += [
        f'<text class="small" x="{EDGE}" y="{below + 16 * n:.1f}">{escape(line)}</text>' for n, line in enumerate(lines)
    ]
    return "\n".join([*parts, "</svg>\n"])


def _open(width: float, height: float, heading: str, views: Sequence[View]) -> str:
    said = " ".join(view.says for view in views)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:.0f}" height="{height:.0f}" '
        f'viewBox="0 0 {width:.0f} {height:.0f}" role="img" aria-labelledby="name said">'
        f'<title id="name">{escape(heading)}</title><desc id="said">{escape(said)}</desc>'
        f"<style>{STYLE}</style><defs><pattern id='hatch' width='7' height='7' patternUnits='userSpaceOnUse'>"
        "<path d='M0 7 L7 0' stroke='#999' stroke-width='.8'/></pattern></defs>"
        f'<rect width="{width:.0f}" height="{height:.0f}" fill="#fff"/>'
    )


def _view(view: View, x0: float, base: float) -> str:
    def at(point: tuple[float, float]) -> tuple[float, float]:
        return x0 + point[0] * PIXELS_PER_MM, base - point[1] * PIXELS_PER_MM

    shapes = [_outline(outline, at) for outline in view.outlines]
    marks = [_dimension(mark, at) for mark in view.dimensions]
    title = f'<text class="small" x="{x0 + view.box[0] * PIXELS_PER_MM:.1f}" y="{EDGE + 12}">{escape(view.title)}, lengths in mm</text>'
    return "\n".join(["<g>", title, *shapes, *marks, "</g>"])


def _outline(outline: Outline, at: Place) -> str:
    points = " ".join(f"{x:.1f},{y:.1f}" for x, y in map(at, outline.points))
    tag = "polygon" if outline.closed else "polyline"
    tip = f"<title>{escape(outline.label)}</title>" if outline.label else ""
    drawn = f'<{tag} class="{outline.layer}" points="{points}">{tip}</{tag}>'
    if not outline.shown:
        return drawn
    x, y = at((min(p[0] for p in outline.points), max(p[1] for p in outline.points)))
    return f'{drawn}<text class="small" x="{x:.1f}" y="{y - 3:.1f}">{escape(outline.label)}</text>'


def _dimension(mark: Dimension, at: Place) -> str:
    (x1, y1), (x2, y2) = at(mark.start), at(mark.end)
    away = mark.away * PIXELS_PER_MM
    upright = abs(x1 - x2) < abs(y1 - y2)
    if upright:
        x = max(x1, x2) + away
        line = f"M{x1:.1f} {y1:.1f}H{x + TICK:.1f}M{x2:.1f} {y2:.1f}H{x + TICK:.1f}M{x:.1f} {y1:.1f}V{y2:.1f}"
        ends = "".join(f"M{x - TICK:.1f} {y + TICK:.1f}L{x + TICK:.1f} {y - TICK:.1f}" for y in (y1, y2))
        if abs(y1 - y2) < SHORT:
            y = max(y1, y2) + 13 if mark.start[1] > mark.end[1] else min(y1, y2) - 6
            return f'<path class="dimension" d="{line}{ends}"/><text x="{x:.1f}" y="{y:.1f}" text-anchor="middle">{mark.text}</text>'
        middle = (y1 + y2) / 2
        turn = f"rotate(-90 {x - 4:.1f} {middle:.1f})"
        text = f'<text x="{x - 4:.1f}" y="{middle:.1f}" text-anchor="middle" transform="{turn}">{mark.text}</text>'
    else:
        y = min(y1, y2) - away
        line = f"M{x1:.1f} {y1:.1f}V{y - TICK:.1f}M{x2:.1f} {y2:.1f}V{y - TICK:.1f}M{x1:.1f} {y:.1f}H{x2:.1f}"
        ends = "".join(f"M{x - TICK:.1f} {y + TICK:.1f}L{x + TICK:.1f} {y - TICK:.1f}" for x in (x1, x2))
        text = f'<text x="{(x1 + x2) / 2:.1f}" y="{y - 4:.1f}" text-anchor="middle">{mark.text}</text>'
    return f'<path class="dimension" d="{line}{ends}"/>{text}'
