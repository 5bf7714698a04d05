"""Views -> SVG in mm of paper: lines and hatches on white, readable in grey, printed at its scale where printed as it is."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal
from xml.sax.saxutils import escape

from service.core.drawing import letters
from service.core.drawing.ink import (
    CLASH_WEIGHT,
    DOT_MM,
    HATCH_WEIGHT,
    INKS,
    TICK_MM,
    hatching,
    ordered,
)
from service.core.drawing.laid import Laid, Measure, Text
from service.core.drawing.lay import fitted, lay
from service.core.drawing.shapes import Point, View

Place = Callable[[Point], Point]
EDGE, GAP = 8.0, 6.0
"""Paper about the sheet, and between views (mm)."""
HEAD, BODY = 4.6, 2.7
"""Size of heading and lines of text (mm)."""
ROOM = 190.0, 270.0
"""A single view is drawn at the largest scale at which it fits into so much: A4, and Letter but for a margin (mm)."""
SHEET_SCALES = (10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0)
WIDE = 281.0
"""Side and stern view together are not to be wider than this (mm): A3 upright, with an edge."""
WORDS = 30.0
"""What figures and words beside a view take of its width at least (mm)."""
FACES = "'DejaVu Sans','Bitstream Vera Sans',Verdana,sans-serif"


def _marks() -> dict[str, dict[str, str]]:
    """Return what each kind of mark is drawn with, in the words that CSS and SVG attributes share."""
    found = {
        str(layer): {"fill": ink.fill or "none", "stroke": ink.stroke, "stroke-width": f"{ink.weight:g}"}
        | ({"stroke-dasharray": " ".join(f"{d:g}" for d in ink.dashes)} if ink.dashes else {})
        for layer, ink in INKS.items()
    }
    return found | {
        "open": {"fill": "none"},
        "hatch": {"fill": "none", "stroke": "#555", "stroke-width": f"{HATCH_WEIGHT:g}"},
        "cross": {"fill": "none", "stroke": INKS["clash"].stroke, "stroke-width": f"{CLASH_WEIGHT:g}"},
    }


MARKS = _marks()
_LETTERS = {
    "bold": {"font-weight": "bold"},
    "wrong": {"fill": INKS["clash"].stroke},
    "blank": {"fill": "#fff"},
    "dot": {"fill": "#222"},
}


def write_view(view: View, heading: str) -> str:
    """Return one view as SVG, at the largest scale of the series at which it fits A4. The heading is its title."""
    laid = fitted(view, *ROOM)
    return _sheet([(laid, EDGE, 0.0)], laid.size[0] + 2 * EDGE, laid.size[1] + EDGE, heading, [])


def write_svg(views: Sequence[View], heading: str, lines: Sequence[str]) -> str:
    """Return a sheet with side and stern view beside each other, the plan below, all to one scale, and lines of text."""
    side, stern, plan = _together(views)
    wide = max(side.size[0] + GAP + stern.size[0], plan.size[0] + GAP + 90.0)
    above = max(_above(side), _above(stern))  # both stand on one waterline
    high = max(above - _above(one) + one.size[1] for one in (side, stern))
    placed = [
        (side, EDGE, above - _above(side)), (stern, EDGE + side.size[0] + GAP, above - _above(stern)), (plan, EDGE, high + GAP),
    ]  # fmt: skip
    return _sheet(placed, wide + 2 * EDGE, high + GAP + plan.size[1], heading, lines)


def _above(laid: Laid) -> float:
    """Return how far a view's upper edge stands above what is 0 in it (mm of paper)."""
    return laid.box[3] * laid.scale


def _together(views: Sequence[View]) -> list[Laid]:
    """Return three views at the largest scale at which they go on one sheet."""
    shown = [next(view for view in views if view.key == key) for key in ("side", "stern", "plan")]
    found: list[Laid] = []
    bare = sum(view.box[1] - view.box[0] for view in shown[:2])
    for one_to in SHEET_SCALES:
        if bare / one_to + 2 * WORDS > WIDE and one_to != SHEET_SCALES[-1]:
            continue
        found = [lay(view, 1.0 / one_to) for view in shown]
        if found[0].size[0] + found[1].size[0] <= WIDE:
            break
    return found


def _sheet(
    placed: Sequence[tuple[Laid, float, float]], wide: float, high: float, heading: str, lines: Sequence[str]
) -> str:
    """Return the whole file: the heading above, each view with its upper left corner at a place, lines beside the last one."""
    heads = letters.wrapped(heading, wide - 2 * EDGE, HEAD, bold=True)
    top = EDGE + HEAD * letters.PITCH * len(heads) + 2.0
    last, x, y = placed[-1]
    column = x + last.size[0] + GAP
    told = [row for line in lines for row in (*letters.wrapped(line, wide - column - EDGE, BODY), "")]
    down = top + y + 3.0
    high = max(top + high, down + BODY * letters.PITCH * len(told)) + EDGE
    parts = [_open(wide, high, heading, [laid.view for laid, _, _ in placed])]
    parts += [_plain(EDGE, EDGE + HEAD * (1 + letters.PITCH * n), row, "head") for n, row in enumerate(heads)]
    for laid, left, below in placed:
        parts += ["<g>", *_view(laid, left - laid.box[0] * laid.scale, top + below + laid.box[3] * laid.scale), "</g>"]
    parts += [_plain(column, down + BODY * letters.PITCH * n, row, "told") for n, row in enumerate(told) if row]
    return "\n".join([*parts, "</svg>\n"])


def _open(wide: float, high: float, heading: str, views: Sequence[View]) -> str:
    said = " ".join(view.says for view in views)
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide:.1f}mm" height="{high:.1f}mm" '
        f'viewBox="0 0 {wide:.1f} {high:.1f}" role="img" aria-labelledby="name said">\n'
        f'<title id="name">{_clean(heading)}</title>\n<desc id="said">{_clean(said)}</desc>\n<style>{_style()}</style>\n'
        f'<rect width="{wide:.1f}" height="{high:.1f}" fill="#fff"/>'
    )


def _style() -> str:
    rules = [
        f".{kind}{{{';'.join(f'{name}:{value}' for name, value in drawn.items())}}}" for kind, drawn in MARKS.items()
    ]
    rules += [
        f"text{{font-family:{FACES};fill:#111;stroke:none}}",
        f".bold,.head{{font-weight:bold}}.head{{font-size:{HEAD:g}px}}.told{{font-size:{BODY:g}px}}",
        f".wrong{{fill:{INKS['clash'].stroke}}}.blank{{fill:#fff}}.dot{{fill:#222}}",
    ]
    return "\n".join(rules)


@dataclass(frozen=True)
class Inline:
    """A view to stand within a page: SVG without any style, and where things are in it.

    What is at (0, 0) of the view stands at (`x0`, `y0`) of the SVG's own lengths, y down, `scale` of them for one mm.
    """

    svg: str
    x0: float
    y0: float
    scale: float
    wide: float
    high: float


def inline_view(view: View, name: str) -> Inline:
    """Return one view for a page that forbids styles: each mark carries what it is drawn with as attributes.

    `name` is what the picture is called there, and tells its ids from those of others.
    """
    laid = fitted(view, *ROOM)
    told = tuple(text for text in laid.texts if not text.bold or text.layer == "clash")  # a scale holds on paper alone
    laid = replace(laid, texts=told)
    wide, high = laid.size[0] + EDGE, laid.size[1] + EDGE
    x0, y0 = EDGE / 2 - laid.box[0] * laid.scale, EDGE / 2 + laid.box[3] * laid.scale
    body = _IN_TAG.sub(lambda found: f"{found[1]} {_attributes(found[2].split())}", "\n".join(_view(laid, x0, y0)))
    svg = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide:.1f} {high:.1f}" role="img" aria-label="'
        f'{escape(_clean(f"{name}. {view.says}"), {chr(34): "&quot;"})}" font-family="{FACES}" fill="#111">'
        f'<rect width="{wide:.1f}" height="{high:.1f}" fill="#fff"/>\n{body}\n</svg>'
    )
    return Inline(svg, x0, y0, laid.scale, wide, high)


_IN_TAG = re.compile(r'(<[a-z]+[^<>]*?) class="([a-z ]+)"')
"""A mark's class. Words of people stand between marks, never in them, and hold no < there."""


def _attributes(kinds: Sequence[str]) -> str:
    drawn = {name: value for kind in kinds for name, value in _LETTERS.get(kind, MARKS.get(kind, {})).items()}
    return " ".join(f'{name}="{value}"' for name, value in drawn.items())


def _view(laid: Laid, x0: float, y0: float) -> Iterator[str]:
    """Give the parts of a view: what is at (0, 0) in it stands at (x0, y0), in mm of paper, y down."""
    scale = laid.scale

    def at(point: Point) -> Point:
        return x0 + point[0] * scale, y0 - point[1] * scale

    for outline in ordered(laid.view):
        points = " ".join(f"{x:.2f},{y:.2f}" for x, y in map(at, outline.points))
        tag, kind = ("polygon", outline.layer) if outline.closed else ("polyline", f"{outline.layer} open")
        name = f"<title>{_clean(outline.label)}</title>" if outline.label else ""
        yield f'<{tag} class="{kind}" points="{points}">{name}</{tag}>'
        strokes = hatching(outline, scale)
        if strokes:
            yield _path("cross" if outline.layer == "clash" else "hatch", ((at(a), at(b)) for a, b in strokes))
    for disc in laid.view.discs:
        x, y = at(disc.centre)
        yield f'<circle class="{disc.layer} open" cx="{x:.2f}" cy="{y:.2f}" r="{disc.radius * scale:.2f}"/>'
    for measure in laid.measures:
        yield from _measure(measure, laid, at)
    for leader in laid.leaders:
        yield _path("note", [(at(leader.start), at(leader.end))])
        yield _circle("dot", at(leader.end), DOT_MM)
    for ring in laid.rings:
        yield _circle("note blank", at(ring.centre), ring.radius * scale)
    for text in laid.texts:
        yield _text(text, at, scale)


def _measure(measure: Measure, laid: Laid, at: Place) -> Iterator[str]:
    tick = TICK_MM / laid.scale
    slashes = [((x - tick, y - tick), (x + tick, y + tick)) for x, y in measure.line]
    yield _path("dimension", ((at(a), at(b)) for a, b in (measure.line, *measure.feet, *slashes)))
    yield _text(measure.figure, at, laid.scale)


def _text(text: Text, at: Place, scale: float) -> str:
    x, y = at(text.at)
    back = ""
    if text.blank:
        left, right, low, high = text.box
        bx, by = at((left, high))
        back = (
            f'<rect class="blank" x="{bx:.2f}" y="{by:.2f}" width="{(right - left) * scale:.2f}" '
            f'height="{(high - low) * scale:.2f}"/>'
        )
    anchor = ' text-anchor="middle"' if text.anchor == "middle" else ""
    turn = f' transform="rotate(-90 {x:.2f} {y:.2f})"' if text.turned else ""
    kind = " ".join(filter(None, ["bold" if text.bold else "", "wrong" if text.layer == "clash" else ""]))
    style = f' class="{kind}"' if kind else ""
    return (
        f'{back}<text x="{x:.2f}" y="{y:.2f}" font-size="{text.size * scale:.2f}"{anchor}{turn}{style}>'
        f"{_clean(text.text)}</text>"
    )


def _plain(x: float, y: float, text: str, kind: Literal["head", "told"]) -> str:
    return f'<text class="{kind}" x="{x:.2f}" y="{y:.2f}">{_clean(text)}</text>'


def _circle(kind: str, at: Point, radius: float) -> str:
    return f'<circle class="{kind}" cx="{at[0]:.2f}" cy="{at[1]:.2f}" r="{radius:.2f}"/>'


def _path(kind: str, strokes: Iterable[tuple[Point, Point]]) -> str:
    drawn = "".join(f"M{a[0]:.2f} {a[1]:.2f}L{b[0]:.2f} {b[1]:.2f}" for a, b in strokes)
    return f'<path class="{kind}" d="{drawn}"/>'


def _clean(text: str) -> str:
    """Return the text as XML may hold it: escaped, a space for every character that no XML file may contain."""
    return escape("".join(c if c.isprintable() or c == "\n" else " " for c in text))
