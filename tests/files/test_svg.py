"""The SVG of views: well formed, named and described, not blank, the same bytes each time, as readable in grey."""

from __future__ import annotations

import re
from xml.etree import ElementTree as ET

import numpy as np
import pytest

from service.core.drawing.ink import INKS
from service.files.write.svg import write_svg, write_view
from tests.support.drawn import Case, random_case
from tests.support.raster import SVG, drawn

NAMES = ("Ναυσικά & <sons>", "Чайка", "日本丸", "W" * 200, "")


@pytest.fixture(scope="module")
def case() -> Case:
    return random_case(5)


def test_each_view_is_named_described_and_not_blank(case: Case) -> None:
    for view in case.views()[1:4]:
        svg = write_view(view, f"Argo: {view.title}")
        root = ET.fromstring(svg)  # noqa: S314 - our own drawing
        assert root.findtext(f"{SVG}title") == f"Argo: {view.title}"
        assert root.findtext(f"{SVG}desc") == view.says
        assert root.attrib["aria-labelledby"] == "name said"
        inked = float((drawn(svg, 50) < 128).any(axis=2).mean())
        assert 0.003 < inked < 0.4, view.key  # lines on paper: neither blank nor black


def test_a_sheet_shows_three_views_to_one_scale(case: Case) -> None:
    svg = write_svg(case.views(), "Argo", ["one line", "another"])
    assert len(set(re.findall(r"1:(\d+)", svg))) == 1
    for title in ("From starboard", "From aft", "From above"):
        assert svg.count(f">{title}  1:") == 1
    assert svg == write_svg(case.views(), "Argo", ["one line", "another"])


@pytest.mark.parametrize("name", NAMES)
def test_any_name_stands_in_the_heading_whole(case: Case, name: str) -> None:
    svg = write_view(case.views()[0], name)
    root = ET.fromstring(svg)  # noqa: S314 - our own drawing
    heads = [t.text or "" for t in root.iter(f"{SVG}text") if t.attrib.get("class") == "head"]
    assert "".join(heads).replace(" ", "") == name.replace(" ", "")


def test_what_no_xml_may_hold_becomes_a_space(case: Case) -> None:
    svg = write_view(case.views()[0], "a\x00b\x1fc\ufffed")
    assert ET.fromstring(svg).findtext(f"{SVG}title") == "a b c d"  # noqa: S314 - our own drawing


def test_no_words_take_the_look_of_a_layer_that_is_pale(case: Case) -> None:
    root = ET.fromstring(write_svg(case.views(), "Argo", ["one line", "another"]))  # noqa: S314 - our own drawing
    found = [text for text in root.iter(f"{SVG}text") if text.text in ("one line", "another")]
    assert len(found) == 2
    assert not {text.attrib["class"] for text in found} & set(INKS)


def test_layers_differ_without_colour() -> None:
    """Weight, dashes or fill tell any two layers of lines apart, printed in grey."""

    def grey(colour: str | None) -> int | None:
        return None if colour is None else round(sum(int(colour[n : n + 2], 16) for n in (1, 3, 5)) / 3 / 16)

    looks = {
        layer: (ink.weight, ink.dashes, grey(ink.fill))
        for layer, ink in INKS.items()
        if layer not in ("note", "obstacle")
    }
    assert len(set(looks.values())) >= len(looks) - 2  # a hole and a hull are told apart by being round and large
    for ink in INKS.values():
        assert ink.weight == 0.0 or (grey(ink.stroke) or 0) < 8, ink  # dark enough on white


def test_the_whole_of_it_is_on_the_sheet(case: Case) -> None:
    for view in case.views()[:1]:
        picture = drawn(write_view(view, "Argo"), 50)
        edge = np.concatenate(
            [picture[:3].ravel(), picture[-3:].ravel(), picture[:, :3].ravel(), picture[:, -3:].ravel()]
        )
        assert edge.min() > 240  # nothing runs into the edge
