"""The pad as a solid: read back from its own bytes, closed, and as large as the formula says."""

from __future__ import annotations

import math
import struct
from collections import Counter

import pytest

from service.core.fit.shapes import Pad
from service.files.write.stl import write_pad

Vertex = tuple[float, float, float]
CASES = {
    "even": (20.0, 0.0, 0.0),
    "raked": (30.0, 0.35, 0.0),
    "both": (40.0, -0.2, 0.15),
    "thin edge": (15.0, 15.0 / 60.0, 0.0),
    "thin corner": (15.0, 7.5 / 60.0, 7.5 / 80.0),
}


def pad(centre: float, tilt: float, turn: float) -> Pad:
    """Return a pad 160 x 120 by the formula of FIT: p ± (h/2) d_rake ± (w/2) d_plan."""
    corners = {
        f"{level} {side}": centre - up * 60.0 * tilt - across * 80.0 * turn
        for level, up in (("top", 1), ("bottom", -1))
        for side, across in (("port", -1), ("starboard", 1))
    }
    return Pad(
        role="lower", centre_mm=centre, corners_mm=corners, rake_bevel_deg=math.degrees(math.atan(tilt)),
        plan_bevel_deg=math.degrees(math.atan(turn)), width_mm=160.0, height_mm=120.0, blank_mm=math.ceil(max(corners.values())),
    )  # fmt: skip


def read(data: bytes) -> list[tuple[Vertex, tuple[Vertex, Vertex, Vertex]]]:
    """Return normal and corners of every facet of a binary STL."""
    (count,) = struct.unpack_from("<I", data, 80)
    assert len(data) == 84 + 50 * count
    rows = [struct.unpack_from("<12f", data, 84 + 50 * n) for n in range(count)]
    return [(row[:3], (row[3:6], row[6:9], row[9:12])) for row in rows]


@pytest.mark.parametrize("case", CASES)
def test_every_edge_is_shared_by_two_faces_that_run_along_it_both_ways(case: str) -> None:
    edges: Counter[tuple[Vertex, Vertex]] = Counter()
    for _, corners in read(write_pad(pad(*CASES[case]))):
        edges.update(zip(corners, (*corners[1:], corners[0]), strict=True))
    assert max(edges.values()) == 1
    assert {(b, a) for a, b in edges} == set(edges)


@pytest.mark.parametrize("case", CASES)
def test_it_holds_as_much_as_the_formula_says(case: str) -> None:
    """The mean of four corners of a plane over a rectangle is its middle: width x height x thickness there (arithmetic)."""
    total = 0.0
    for _, (a, b, c) in read(write_pad(pad(*CASES[case]))):
        total += (
            a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0])
        ) / 6.0
    assert math.isclose(total, 160.0 * 120.0 * CASES[case][0], rel_tol=1e-5)


@pytest.mark.parametrize("case", CASES)
def test_normals_point_outwards_and_have_length_one(case: str) -> None:
    facets = read(write_pad(pad(*CASES[case])))
    inside = tuple(sum(v[n] for _, corners in facets for v in corners) / (3 * len(facets)) for n in range(3))
    for normal, corners in facets:
        assert math.isclose(math.hypot(*normal), 1.0, rel_tol=1e-5)
        middle = [sum(v[n] for v in corners) / 3 for n in range(3)]
        assert sum(normal[n] * (middle[n] - inside[n]) for n in range(3)) > 0


def test_it_lies_on_its_flange_side_with_the_skin_above() -> None:
    """A stern leaning aft (tilt > 0) leaves the lower edge thicker; turned to the skin, port is to the right."""
    corners = {vertex for _, face in read(write_pad(pad(*CASES["both"]))) for vertex in face if vertex[2] > 0}
    found = {(round(x), round(y)): z for x, y, z in corners}
    made = pad(*CASES["both"]).corners_mm
    for name, place in {"top port": (80, 60), "bottom starboard": (-80, -60)}.items():
        assert math.isclose(found[place], made[name], rel_tol=1e-5)


def test_the_same_pad_gives_the_same_bytes() -> None:
    assert write_pad(pad(*CASES["both"])) == write_pad(pad(*CASES["both"]))
