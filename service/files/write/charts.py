"""Plots of a report's tables as SVG or PNG, black and grey on white, the same bytes for the same report."""

from __future__ import annotations

import io
from itertools import pairwise
from math import isnan
from typing import Literal

import matplotlib as mpl
from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.backends.backend_svg import FigureCanvasSVG
from matplotlib.figure import Figure
from matplotlib.ticker import FuncFormatter, MaxNLocator

from service.core.report import Cell, Plot, Report, Table
from service.files.write.reliability import FAINT, FILL, INK, STYLE

WIDTH_IN, DPI = 7.2, 150
ROW_IN, CLOSE_IN, MANY = 0.27, 0.19, 16
"""How far bars stand apart, and how far where there are many."""
LEAST_IN, SERIES_IN = 1.6, 3.0
OTHERS = "#666666"
_STYLE = {**STYLE, "svg.hashsalt": "report", "font.size": 8.5, "hatch.linewidth": 0.6}


def chart(report: Report, plot: Plot, kind: Literal["svg", "png"] = "svg", *, titled: bool = True) -> bytes:
    """Return a plot of a report; StopIteration where it names a table or a column that is not there.

    Not `titled` where it stands under a heading that says the same.
    """
    table = report.table(plot.table)
    draw = {"bars": _bars, "series": _series, "calibration": _calibration, "histogram": _histogram}[plot.form]
    with mpl.rc_context(_STYLE):  # type: ignore[arg-type] # the stubs want every name spelled out
        figure = Figure(figsize=(WIDTH_IN, _height(table, plot)), layout="constrained")
        axes = figure.add_subplot()
        if titled:
            figure.suptitle(plot.title, x=0.006, ha="left", fontsize=10.5, fontweight="bold", color=INK)
        draw(axes, table, plot)
        out = io.BytesIO()
        if kind == "svg":
            FigureCanvasSVG(figure)
            figure.savefig(out, format="svg", metadata={"Date": None, "Creator": None, "Title": plot.title})
        else:
            FigureCanvasAgg(figure)
            figure.savefig(out, format="png", dpi=DPI, metadata={"Software": None})
    return out.getvalue()


def _height(table: Table, plot: Plot) -> float:
    if plot.form == "calibration":
        return WIDTH_IN * 0.7
    if plot.form != "bars":
        return SERIES_IN
    rows = min(len(table.rows), plot.most)
    groups = len({row[0] for row in table.rows[:rows]}) if headed_by(table, plot) else 0
    return max(LEAST_IN, 0.95 + (CLOSE_IN if rows > MANY and not groups else ROW_IN) * (rows + 1.75 * groups))


def headed_by(table: Table, plot: Plot) -> bool:
    """Say whether bars stand in groups under headings: the first column tells which, and each comes once."""
    groups = [row[0] for row in table.rows[: plot.most]]
    changes = sum(one != before for one, before in pairwise(groups))
    return table.columns[0].name != plot.label and changes + 1 == len(set(groups)) < len(groups)


def bar_labels(table: Table, plot: Plot) -> list[str]:
    """Return what bars are called: by the first column, too, where that tells them apart and is no heading."""
    names = [str(cell) for cell in table.column(plot.label)][: plot.most]
    groups = [row[0] for row in table.rows[: plot.most]]
    if table.columns[0].name == plot.label or headed_by(table, plot) or len(set(groups)) == len(groups):
        return names
    return [f"{group}: {name}" for group, name in zip(groups, names, strict=True)]


def _number(cell: Cell) -> float:
    return float(cell) if isinstance(cell, (int, float)) else float("nan")


def _numbers(table: Table, name: str | None) -> list[float]:
    return [_number(cell) for cell in table.column(name)] if name else []


def _is_share(table: Table, name: str) -> bool:
    return table.columns[table.place(name)].kind == "share"


def _per_cent(axes: Axes, which: Literal["x", "y"]) -> None:
    axis = axes.xaxis if which == "x" else axes.yaxis
    axis.set_major_formatter(FuncFormatter(lambda value, _: f"{100 * value:.0f} %"))


def _bars(axes: Axes, table: Table, plot: Plot) -> None:
    labels = bar_labels(table, plot)
    values = _numbers(table, plot.value)[: plot.most]
    low, high = (_numbers(table, name)[: plot.most] for name in (plot.low, plot.high))
    places = _spaced(axes, table, plot, len(labels))
    axes.barh(places, values, height=0.62, color=FILL, edgecolor=INK, linewidth=0.5)
    for at, ends in zip(places, zip(low, high, strict=True), strict=False):
        axes.plot(ends, [at, at], color=INK, linewidth=1.1, solid_capstyle="butt")
        for end in ends:
            axes.plot([end, end], [at - 0.14, at + 0.14], color=INK, linewidth=1.1)
    axes.set_yticks(places, labels)
    axes.set_ylim(places[-1] + 0.7, -0.7)
    axes.set_xlim(left=0)
    axes.tick_params(axis="y", length=0)
    axes.xaxis.grid(visible=True, color=FILL, linewidth=0.5)
    axes.set_axisbelow(True)
    left = len(table.rows) - len(labels)
    said = [
        plot.axis,
        *(["95 % interval"] if low else []),
        *([f"the first {len(labels)} of {len(table.rows)}"] if left > 0 else []),
    ]
    axes.set_xlabel(", ".join(said), loc="right")  # a long one runs under the labels, and not off the page
    if _is_share(table, plot.value):
        _per_cent(axes, "x")


def _remark(axes: Axes, text: str) -> None:
    axes.text(1, 1.01, text, transform=axes.transAxes, ha="right", va="bottom", fontsize=7.5, color=OTHERS)


def _spaced(axes: Axes, table: Table, plot: Plot, count: int) -> list[float]:
    """Return where the bars stand: under a heading wherever the first column, if it is not the label, changes."""
    groups = [row[0] for row in table.rows[:count]]
    if not headed_by(table, plot):
        return [float(n) for n in range(count)]
    found, at = list[float](), 0.0
    for n in range(count):
        if n == 0 or groups[n] != groups[n - 1]:
            at += 0.2 if n == 0 else 0.9
            axes.text(0, at, f" {groups[n]}", ha="left", va="center", fontsize=8.5, fontweight="bold", color=INK)
            at += 0.85
        found.append(at)
        at += 1
    return found


def _series(axes: Axes, table: Table, plot: Plot) -> None:
    labels = [str(cell) for cell in table.column(plot.label)]
    counted, expected = _numbers(table, plot.value), _numbers(table, "expected")
    low, high = _numbers(table, plot.low), _numbers(table, plot.high)
    places = list(range(len(labels)))
    ahead = [n for n in places if not isnan(expected[n])]
    axes.bar(places, [0 if isnan(x) else x for x in counted], width=0.8, color=FAINT, linewidth=0, zorder=2)
    for n in ahead:
        axes.bar(
            n,
            high[n] - low[n],
            bottom=low[n],
            width=0.8,
            color="white",
            edgecolor=INK,
            linewidth=0.6,
            hatch="////",
            zorder=2,
        )
        axes.plot([n - 0.4, n + 0.4], [expected[n]] * 2, color=INK, linewidth=2.2, zorder=3)
    years = [n for n, text in enumerate(labels) if text.endswith("Q1")]
    step = max(1, round(len(years) / 14))
    axes.set_xticks(years[::step], [labels[n][:4] for n in years[::step]])
    axes.set_ylim(bottom=0)
    axes.set_xlim(-1, len(labels))
    axes.yaxis.set_major_locator(MaxNLocator(integer=True))
    axes.yaxis.grid(visible=True, color=FILL, linewidth=0.5)
    axes.set_axisbelow(True)
    axes.set_xlabel("year")
    axes.set_ylabel(f"{plot.axis} in a quarter")
    if ahead:
        _remark(axes, "hatched: expected, 95 % interval and mean")


def _calibration(axes: Axes, table: Table, plot: Plot) -> None:
    said, true = _numbers(table, plot.label), _numbers(table, plot.value)
    axes.plot([0, 1], [0, 1], color=FAINT, linewidth=0.8, dashes=(5, 4), zorder=1)
    axes.text(0.99, 0.84, "as said", ha="right", fontsize=8, color=OTHERS)
    for x, y, low, high in zip(said, true, _numbers(table, plot.low), _numbers(table, plot.high), strict=False):
        axes.plot([x, x], [low, high], color=INK, linewidth=0.9, zorder=2)
        axes.scatter([x], [y], s=34, facecolor=INK, edgecolor="white", linewidth=0.8, zorder=3, clip_on=False)
    axes.set_xlim(0, 1)
    axes.set_ylim(0, 1)
    axes.set_aspect("equal")
    axes.set_xlabel("chance that was said")
    axes.set_ylabel(plot.axis)
    for which in ("x", "y"):
        _per_cent(axes, which)


def _histogram(axes: Axes, table: Table, plot: Plot) -> None:
    labels, values = [str(cell) for cell in table.column(plot.label)], _numbers(table, plot.value)
    places = list(range(len(labels)))
    axes.bar(places, values, width=0.9, color=FILL, edgecolor=INK, linewidth=0.5)
    if plot.level is not None:
        axes.axhline(plot.level, color=INK, linewidth=1, dashes=(5, 4))
        _remark(axes, f"dashed: {100 * plot.level:.0f} % each, as where all chances are true")
    edges = [labels[0].split(" to ")[0], *(label.split(" to ")[-1] for label in labels)]
    axes.set_xticks([n - 0.5 for n in range(len(edges))], edges)
    axes.set_ylim(0, max([*values, plot.level or 0]) * 1.25 or 1)
    axes.set_xlabel(table.columns[table.place(plot.label)].heading)
    axes.set_ylabel(plot.axis)
    if _is_share(table, plot.value):
        _per_cent(axes, "y")
