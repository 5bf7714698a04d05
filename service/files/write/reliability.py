"""The reliability plot of an evaluation: what was said against what came true, as SVG or PNG, the same to the byte."""

from __future__ import annotations

import io
from collections.abc import Sequence
from typing import Literal

import matplotlib as mpl
from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.backends.backend_svg import FigureCanvasSVG
from matplotlib.figure import Figure

from service.core.evaluate.shapes import Bin, Holdout

Format = Literal["svg", "png"]
INK, FAINT, FILL = "#111111", "#9a9a9a", "#d9d9d9"
PANEL_IN, HEIGHT_IN, DPI = 4.6, 6.0, 150
TITLES = {"time": "Held out by time", "hull": "Held out by whole hull model"}
STYLE = {
    "font.family": "DejaVu Sans",  # comes with the library, so that every machine draws the same
    "font.size": 9,
    "axes.edgecolor": INK,
    "axes.linewidth": 0.7,
    "axes.spines.top": False,
    "axes.spines.right": False,
    "xtick.major.width": 0.7,
    "ytick.major.width": 0.7,
    "svg.hashsalt": "reliability",
    "svg.fonttype": "path",
}


def reliability(holdouts: Sequence[Holdout], kind: Format) -> bytes:
    """Return the plot, one panel a way of holding out. ValueError where there is nothing to draw."""
    if not holdouts:
        raise ValueError("nothing was held out, so there is nothing to draw")
    with mpl.rc_context(STYLE):  # type: ignore[arg-type] # the stubs want every name spelled out
        figure = Figure(figsize=(PANEL_IN * len(holdouts), HEIGHT_IN), layout="constrained")
        rows = figure.subplots(2, len(holdouts), squeeze=False, sharex=True, height_ratios=(5, 1))
        for place, holdout in enumerate(holdouts):
            _panel(rows[0][place], holdout, labelled=place == 0)
            _counts(rows[1][place], holdout.bins, labelled=place == 0)
        written = io.BytesIO()
        if kind == "svg":
            FigureCanvasSVG(figure)
            about = {"Date": None, "Creator": None, "Title": "Reliability of the chance that a fitter would install"}
            figure.savefig(written, format="svg", metadata=about)
        else:
            FigureCanvasAgg(figure)
            figure.savefig(written, format="png", dpi=DPI, metadata={"Software": None})
    return written.getvalue()


def _panel(axes: Axes, holdout: Holdout, *, labelled: bool) -> None:
    score = holdout.scores[0]
    off = score.calibration_error
    axes.set_title(TITLES[holdout.by], loc="left", fontsize=11, fontweight="bold", color=INK, pad=34)
    axes.text(
        0, 1.025,
        f"{score.count} boats; put first and installed {100 * score.top1.value:.0f} %, among the first three "
        f"{100 * score.top3.value:.0f} %;\ncalibration error {100 * off.value:.0f} % (95 %: {100 * off.low:.0f} to "
        f"{100 * off.high:.0f} %), votes {holdout.votes}",
        transform=axes.transAxes, fontsize=8, color=INK, va="bottom", linespacing=1.35,
    )  # fmt: skip
    axes.plot([0, 1], [0, 1], color=FAINT, linewidth=0.8, dashes=(5, 4), zorder=1)
    axes.text(
        0.93,
        0.955,
        "as said",
        rotation=45,
        rotation_mode="anchor",
        ha="right",
        va="bottom",
        fontsize=8,
        color="#666666",
    )
    most = max((one.count for one in holdout.bins), default=1)
    for one in holdout.bins:
        axes.plot([one.said, one.said], [one.came_true.low, one.came_true.high], color=INK, linewidth=0.9, zorder=2)
        axes.scatter(
            [one.said], [one.came_true.value], s=16 + 90 * one.count / most, facecolor=INK, edgecolor="white", linewidth=0.8,
            zorder=3, clip_on=False,
        )  # fmt: skip
    axes.set_xlim(0, 1)
    axes.set_ylim(0, 1)
    axes.set_aspect("equal")
    ticks = [n / 5 for n in range(6)]
    axes.set_xticks(ticks)
    axes.set_yticks(ticks, [f"{100 * t:.0f} %" for t in ticks])
    if labelled:
        axes.set_ylabel("share of them that was installed")


def _counts(axes: Axes, bins: Sequence[Bin], *, labelled: bool) -> None:
    most = max((one.count for one in bins), default=1)
    for one in bins:
        width = one.high - one.low
        axes.bar(one.low + width / 2, one.count, width=0.92 * width, color=FILL, edgecolor=INK, linewidth=0.5)
        axes.text(
            one.low + width / 2,
            one.count + 0.06 * most,
            f"{one.count}",
            ha="center",
            va="bottom",
            fontsize=7.5,
            color=INK,
        )
    axes.set_xlim(0, 1)
    axes.set_ylim(0, 1.35 * most)
    axes.set_yticks([])
    axes.spines["left"].set_visible(False)
    ticks = [n / 5 for n in range(6)]
    axes.set_xticks(ticks, [f"{100 * t:.0f} %" for t in ticks])
    axes.set_xlabel("chance said for the configuration that was put first")
    if labelled:
        axes.set_ylabel("boats")
