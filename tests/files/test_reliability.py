"""The reliability plot: the same bytes each time, every bin in it, and none of nothing."""

from __future__ import annotations

import struct
import xml.etree.ElementTree as ET

import pytest

from service.core.evaluate.shapes import Bin, Estimate, Holdout, Score
from service.files.write.reliability import DPI, HEIGHT_IN, PANEL_IN, reliability

HALF = Estimate(value=0.5, low=0.2, high=0.8)


def holdout(by: str) -> Holdout:
    score = Score(
        method="m", count=30, top1=HALF, top3=HALF, log_loss=HALF, listed=1.0, said=0.5, calibration_error=HALF,
        calibration_error_mass=HALF,
    )  # fmt: skip
    bins = tuple(
        Bin(low=n / 10, high=(n + 1) / 10, count=10 + n, said=n / 10 + 0.05, came_true=HALF) for n in (2, 5, 9)
    )
    return Holdout.model_validate(
        {"by": by, "what": "w", "votes": "alone", "trained": 9, "scores": (score,), "bins": bins, "bins_mass": bins}
    )


def test_the_same_figures_give_the_same_bytes() -> None:
    both = [holdout("time"), holdout("hull")]
    for kind in ("svg", "png"):
        assert reliability(both, kind) == reliability(both, kind)


def test_a_panel_a_way_of_holding_out() -> None:
    png = reliability([holdout("time"), holdout("hull")], "png")
    assert png.startswith(b"\x89PNG")
    width, height = struct.unpack(">II", png[16:24])
    assert (width, height) == (int(2 * PANEL_IN * DPI), int(HEIGHT_IN * DPI))


def test_the_drawing_is_whole_and_tells_no_day() -> None:
    svg = reliability([holdout("time")], "svg")
    assert ET.fromstring(svg).tag.endswith("svg")  # noqa: S314 - our own drawing
    assert b"<dc:date>" not in svg
    other = holdout("time").model_copy(update={"bins": holdout("time").bins[:2]})
    assert len(reliability([other], "svg")) < len(svg)  # a bin less is a mark less


def test_nothing_is_not_drawn() -> None:
    with pytest.raises(ValueError, match="nothing was held out"):
        reliability([], "svg")
