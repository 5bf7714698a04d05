"""Views -> one DXF drawing in mm, full size: named layers, real dimensions, the same bytes for the same views.

R2010, the oldest release whose text is UTF-8 and that every CAD program still opens. A dimension carries its own lines and
figure, so that programs that do not draw dimensions themselves show it as we do.
"""

from __future__ import annotations

import io
from collections.abc import Sequence

from ezdxf._options import options
from ezdxf.document import Drawing
from ezdxf.enums import TextEntityAlignment
from ezdxf.filemanagement import new
from ezdxf.layouts.base import BaseLayout
from ezdxf.layouts.layout import Modelspace

from service.core.drawing.ink import CLASH_MM, HATCH_MM, INKS, TICK_MM
from service.core.drawing.laid import Laid, Measure, Text
from service.core.drawing.lay import Manner, lay
from service.core.drawing.shapes import Layer, Outline, Point, View

options.write_fixed_meta_data_for_testing = True  # dates and ids of a file would differ each time it is written
SCALE, PLATE_SCALE = 1.0 / 15.0, 1.0 / 3.0
"""What the words are laid out for: views are full size, and print well at 1:15, plates at 1:3."""
GAP = 400.0
"""Between views (mm)."""
STYLE = "TRANSOM"
CAPITALS = 0.73
"""How high capitals are, as a share of the size of letters: a TEXT is given by it (DejaVu Sans: 1493/2048)."""
DASHED: dict[Layer, str] = {
    "plate": "TRANSOM_DASHED", "rudder": "TRANSOM_DASHED", "sweep": "TRANSOM_DOTTED", "vane": "TRANSOM_DASHED",
    "heel": "TRANSOM_CENTRE", "centre": "TRANSOM_CENTRE",
}  # fmt: skip
PATTERNS = {
    "TRANSOM_DASHED": (60.0, 45.0, -15.0),
    "TRANSOM_DOTTED": (30.0, 15.0, -15.0),
    "TRANSOM_CENTRE": (120.0, 90.0, -10.0, 10.0, -10.0),
}
"""Line types: whole length, then dash and gap in turn (mm)."""
COLOURS: dict[Layer, int] = {
    "water": 5,
    "heel": 5,
    "clash": 1,
    "obstacle": 8,
    "sweep": 8,
    "vane": 8,
    "centre": 8,
    "pad": 33,
}
"""AutoCAD colour indices; 7, black or white, for the rest."""
WEIGHTS = (0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60)
"""Line weights that a DXF may name (hundredths of a mm)."""


def write_dxf(views: Sequence[View], title: str) -> bytes:
    """Return the drawing: side and stern view at one height beside each other, plan under the side view, plates further right."""
    doc = new("R2010", setup=False)
    doc.header["$INSUNITS"], doc.header["$MEASUREMENT"] = 4, 1  # millimetres, metric
    doc.header["$LUNITS"], doc.header["$DIMDEC"] = 2, 2
    _tables(doc)
    space = doc.modelspace()
    top = 0.0
    for laid, (dx, dy) in _arranged(views):
        _Sheet(doc, space, laid, dx, dy).draw()
        top = max(top, laid.box[3] + dy)
    space.add_text(_clean(title), dxfattribs={"layer": "NOTE", "style": STYLE, "height": 60.0}).set_placement(
        (0.0, top + GAP / 4)
    )
    doc.classes.add_required_classes(doc.dxfversion)  # as writing does, in the order of a set: another in each process
    doc.classes.classes = dict(sorted(doc.classes.classes.items()))
    out = io.StringIO()
    doc.write(out)
    return out.getvalue().encode("utf-8", "replace")


def layer_name(layer: Layer) -> str:
    """Return what a layer is called in the file."""
    return layer.upper()


def _tables(doc: Drawing) -> None:
    """Name line types, layers, the letters and the way of dimensions."""
    for name, pattern in PATTERNS.items():
        doc.linetypes.add(name, pattern=list(pattern))
    doc.styles.add(STYLE, font="DejaVuSans.ttf")
    for layer, ink in INKS.items():
        weight = min(WEIGHTS, key=lambda w, mm=ink.weight: abs(w - 100 * mm))  # type: ignore[misc]
        doc.layers.add(
            layer_name(layer), color=COLOURS.get(layer, 7), linetype=DASHED.get(layer, "CONTINUOUS"), lineweight=weight
        )
    style = doc.dimstyles.add(STYLE)
    style.dxf.dimtxsty, style.dxf.dimtxt, style.dxf.dimdec = STYLE, 37.5, 2


def _arranged(views: Sequence[View]) -> list[tuple[Laid, Point]]:
    """Return each view laid out with how far it is moved: none over another, the plan under the side view, x to x."""
    found: list[tuple[Laid, Point]] = []
    right, under = 0.0, 0.0
    for view in views:
        plate = view.key.endswith("plate")
        laid = lay(view, PLATE_SCALE if plate else SCALE, Manner(told=1.0))
        left, wide, low, high = laid.box
        if view.key == "side":
            right, under, move = wide + GAP, low - GAP, (0.0, 0.0)
        elif view.key == "plan":
            move = (0.0, under - high)
        else:
            move = (right - left, 0.0 if view.key == "stern" else -high)
            right += wide - left + GAP
        found.append((laid, move))
    return found


class _Sheet:
    """Draws one laid view into model space, moved aside."""

    def __init__(self, doc: Drawing, space: Modelspace, laid: Laid, dx: float, dy: float) -> None:
        self.doc, self.space, self.laid, self.dx, self.dy = doc, space, laid, dx, dy

    def at(self, point: Point) -> Point:
        return point[0] + self.dx, point[1] + self.dy

    def draw(self) -> None:
        for outline in self.laid.view.outlines:
            self.outline(outline)
        for disc in self.laid.view.discs:
            self.space.add_circle(self.at(disc.centre), disc.radius, dxfattribs={"layer": layer_name(disc.layer)})
        for measure in self.laid.measures:
            self.measure(measure)
        for leader in self.laid.leaders:
            self.space.add_line(self.at(leader.start), self.at(leader.end), dxfattribs={"layer": "NOTE"})
        for ring in self.laid.rings:
            self.space.add_circle(self.at(ring.centre), ring.radius, dxfattribs={"layer": "NOTE"})
        for text in self.laid.texts:
            self.text(text, self.space, "CLASH" if text.layer == "clash" else "NOTE")

    def outline(self, outline: Outline) -> None:
        if outline.layer == "body":
            return  # a shade, and no line of the boat
        points = [self.at(point) for point in outline.points]
        self.space.add_lwpolyline(points, close=outline.closed, dxfattribs={"layer": layer_name(outline.layer)})
        if outline.hatched:
            step = (CLASH_MM if outline.layer == "clash" else HATCH_MM) / self.laid.scale
            hatch = self.space.add_hatch(dxfattribs={"layer": layer_name(outline.layer)})
            lines: list[object] = [(45.0, (0.0, 0.0), (-step / 2**0.5, step / 2**0.5), [])]
            if outline.layer == "clash":
                lines.append((135.0, (0.0, 0.0), (-step / 2**0.5, -step / 2**0.5), []))
            hatch.set_pattern_fill("TRANSOM", definition=lines)
            hatch.paths.add_polyline_path(points, is_closed=True)

    def measure(self, measure: Measure) -> None:
        """Add a dimension, with a block that holds its lines and figure."""
        mark = measure.mark
        base = self.at(measure.line[0])
        made = self.space.add_linear_dim(
            base, self.at(mark.start), self.at(mark.end), angle=0 if mark.axis == "x" else 90, dimstyle=STYLE,
            text=mark.text, dxfattribs={"layer": "DIMENSION"},
        ).dimension  # fmt: skip
        block = self.doc.blocks.new_anonymous_block(type_char="D")
        attributes = {"layer": "DIMENSION"}
        for start, end in (measure.line, *measure.feet):
            block.add_line(self.at(start), self.at(end), dxfattribs=attributes)
        tick = TICK_MM / self.laid.scale
        for x, y in map(self.at, measure.line):
            block.add_line((x - tick, y - tick), (x + tick, y + tick), dxfattribs=attributes)
        self.text(measure.figure, block, "DIMENSION")
        made.dxf.geometry, made.dxf.actual_measurement = block.name, mark.measured
        made.dxf.text_midpoint = self.at(measure.figure.at)

    def text(self, text: Text, into: BaseLayout, layer: str) -> None:
        attributes = {
            "layer": layer,
            "style": STYLE,
            "height": CAPITALS * text.size,
            "rotation": 90.0 if text.turned else 0.0,
        }
        align = TextEntityAlignment.CENTER if text.anchor == "middle" else TextEntityAlignment.LEFT
        into.add_text(_clean(text.text), dxfattribs=attributes).set_placement(self.at(text.at), align=align)


def _clean(text: str) -> str:
    """Return a line as a TEXT may hold it: no control characters, and no caret or %% to be taken for a command."""
    plain = "".join(c if c.isprintable() else " " for c in text)
    return plain.replace("^", "^ ").replace("%%", "% %")
