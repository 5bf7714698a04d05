"""How a page is set: a title over a rule, labels in the left margin, tables without boxes. Weight instead of colour."""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence

from rich.console import Console, Group, RenderableType
from rich.padding import Padding
from rich.rule import Rule
from rich.table import Table
from rich.text import Text

from service.cli.plain import plain

MARGIN = 15
RIGHT = ">"
"""Put before a heading, it sets the column flush right, as numbers are."""


class Sheet:
    """One page, printed from top to bottom."""

    def __init__(self, console: Console) -> None:
        """Keep the console that is printed with."""
        self._console = console

    def title(self, left: str, right: str = "") -> None:
        """Print the page's title over a rule; `right` stands flush right."""
        line = Table.grid(expand=True)
        line.add_column(ratio=1)
        line.add_column(justify="right")
        line.add_row(words(left, "bold"), words(right))
        self._console.print(line)
        self._console.print(Rule(style="none"))

    def part(self, label: str, *body: RenderableType) -> None:
        """Print a part of the page: its label in the margin, the body beside it, a free line after."""
        if not body:
            return
        grid = Table.grid(padding=0, expand=True)
        grid.add_column(width=MARGIN)
        grid.add_column(ratio=1)
        grid.add_row(words(label.upper(), "bold"), Group(*body))
        self._console.print(grid)
        self._console.print()

    def whole(self, body: RenderableType) -> None:
        """Print something over the whole width."""
        self._console.print(body)

    def line(self, text: str = "") -> None:
        """Print one paragraph over the whole width."""
        self._console.print(words(text))


def words(text: str, style: str = "") -> Text:
    """Return text from outside as it is to be shown: never as markup, never with characters that steer a terminal."""
    return Text(plain(text), style=style)


def table(
    headings: Sequence[str], rows: Iterable[Sequence[str | RenderableType]], *, wraps: Container[int] | None = None
) -> Table:
    """Return a table without lines. Headings that begin with `>` are set flush right.

    `wraps` are the places of the columns whose text may run over several lines; the last where none are named.
    """
    shown = [heading.removeprefix(RIGHT) for heading in headings]
    may_wrap = (len(headings) - 1,) if wraps is None else wraps
    found = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0), header_style="dim", show_header=any(shown))
    for place, heading in enumerate(headings):
        found.add_column(
            words(shown[place]),
            justify="right" if heading.startswith(RIGHT) else "left",
            no_wrap=place not in may_wrap,
            overflow="fold" if place in may_wrap else "ellipsis",
        )
    for row in rows:
        found.add_row(*(words(cell) if isinstance(cell, str) else cell for cell in row))
    return found


def hanging(first: str, *rest: str) -> RenderableType:
    """Return a line with others under it, set in a little so that the first one leads the eye."""
    return Group(words(first), *(Padding(words(line), (0, 0, 0, 2)) for line in rest))


def listed(lines: Iterable[str], *, numbered: bool = False) -> Table:
    """Return paragraphs one under the other, each with a dash or its number."""
    found = Table.grid(padding=(0, 1, 0, 0))
    found.add_column(justify="right", no_wrap=True)
    found.add_column(overflow="fold")
    for number, line in enumerate(lines, start=1):
        found.add_row(words(f"{number}" if numbered else "-"), words(line))
    return found


def share(value: float | None) -> str:
    """Write a probability or a share for people; a dash where there is none.

    >>> share(0.874), share(0.0004), share(None)
    ('87 %', '<1 %', '-')
    """
    if value is None:
        return "-"
    if 0 < value < 0.01:  # noqa: PLR2004 - one per cent
        return "<1 %"
    return f">{99} %" if 0.99 < value < 1 else f"{100 * value:.0f} %"  # noqa: PLR2004 - never rounded up to certainty


def number(value: float | None, unit: str = "") -> str:
    """Write a number of mm, degrees, kg or parts of one for people; a dash where there is none.

    >>> number(-12.34, "deg"), number(1270.2, "mm"), number(0.95, "1"), number(None, "mm")
    ('-12.3°', '1270 mm', '95 %', '-')
    """
    if value is None:
        return "-"
    if unit == "1":
        return f"{100 * value:.0f} %"
    if unit == "deg":
        return f"{value:.1f}".removesuffix(".0") + "°"
    return f"{value:.0f} {unit}".strip()


def said(field: str, value: object) -> str:
    """Write a form's value with the unit that its field's name carries.

    >>> said("transom.rake_deg", 12.0), said("boat.stern", "raked"), said("boat.loa_mm", None)
    ('12°', 'raked', 'not said')
    >>> said("obstacles[0].aft_mm", [-100.0, None]), said("obstacles[0].keep", True)
    ('-100 mm to open', 'yes')
    >>> said("obstacles[0]", {"kind": "ladder", "aft_mm": [0, 90]})
    'kind ladder, aft_mm 0 mm to 90 mm'
    """
    if value is None:
        return "not said"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, dict):
        return ", ".join(f"{key} {said(key, item)}" for key, item in value.items())
    if isinstance(value, (list, tuple)):
        ends = len(value) == 2 and field.endswith("_mm")  # noqa: PLR2004 - a span has two ends
        items = ["open" if item is None and ends else said(field, item) for item in value]
        return " to ".join(items) if ends else "; ".join(items)
    if not isinstance(value, (int, float)):
        return str(value)
    unit = next((unit for unit in ("mm", "deg", "kg") if field.endswith(f"_{unit}")), "")
    return number(float(value), unit) if unit else f"{value:g}"
