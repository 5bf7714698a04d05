"""The DXF read back by ezdxf: no fault found, dimensions as the answer has them, layers named, the same bytes each time."""

from __future__ import annotations

import io
import math
import os
import subprocess
import sys
from pathlib import Path

import pytest
from ezdxf import filemanagement, units
from ezdxf.document import Drawing
from ezdxf.entities import Dimension

from service.core.drawing.ink import INKS
from service.files.write.dxf import layer_name, write_dxf
from tests.support.boats import boat
from tests.support.drawn import Case, random_case, rng, set_near

TOP = Path(__file__).resolve().parents[2]
SMALL = 0.01
SEEDS = (5, 8)


def read(data: bytes) -> Drawing:
    return filemanagement.read(io.StringIO(data.decode()))


def measured(doc: Drawing) -> list[tuple[str, float]]:
    """Return the text of each dimension with what its own points measure."""
    dims = [entity for entity in doc.modelspace() if isinstance(entity, Dimension)]
    return [(one.dxf.text, float(one.get_measurement())) for one in dims]


@pytest.mark.parametrize("seed", SEEDS)
def test_an_audit_finds_no_fault(seed: int) -> None:
    auditor = read(write_dxf(random_case(seed).views(), "Argo")).audit()
    assert [str(error) for error in auditor.errors] == []
    assert auditor.fixes == []


@pytest.mark.parametrize("seed", SEEDS)
def test_dimensions_are_the_answers_own(seed: int) -> None:
    case = random_case(seed)
    at = case.fit.placement
    assert at is not None
    found = [value for _, value in measured(read(write_dxf(case.views(), "Argo")))]
    shown = [
        at.shaft_aft_mm, at.lower_height_mm, at.upper_height_mm, at.shaft_bottom_mm, at.shaft_top_mm - at.shaft_bottom_mm,
        *([at.offset_mm] if abs(at.offset_mm) >= 1 else []),
    ]  # fmt: skip
    for value in shown:
        assert min(abs(one - abs(value)) for one in found) < SMALL, value
    dimensions = [mark for view in case.views() for mark in view.dimensions]
    assert len(found) == len(dimensions)
    for mark, value in zip(sorted(d.measured for d in dimensions), sorted(found), strict=True):
        assert math.isclose(mark, value, abs_tol=SMALL)


def test_what_is_written_on_a_dimension_is_what_it_measures() -> None:
    for text, value in measured(read(write_dxf(random_case(5).views(inches=True), "Argo"))):
        whole, _, inches = text.partition(" ")
        assert abs(abs(float(whole)) - value) <= 0.5 + SMALL
        assert inches.startswith("(")


def test_layers_are_named_and_lengths_are_millimetres() -> None:
    doc = read(write_dxf(random_case(5).views(), "Argo"))
    assert doc.units == units.MM
    assert {layer_name(layer) for layer in INKS} <= {layer.dxf.name for layer in doc.layers}
    used = {entity.dxf.layer for entity in doc.modelspace()}
    assert {"HULL", "WATER", "METAL", "BLADE", "VANE", "DIMENSION", "NOTE", "HOLE", "CENTRE", "HEEL"} <= used
    assert "0" not in used


def test_each_dimension_brings_its_own_lines() -> None:
    doc = read(write_dxf(random_case(5).views(), "Argo"))
    dims = [entity for entity in doc.modelspace() if isinstance(entity, Dimension)]
    for one in dims:
        kinds = {entity.dxftype() for entity in doc.blocks[one.dxf.geometry]}
        assert kinds == {"LINE", "TEXT"}


def test_the_same_views_give_the_same_bytes() -> None:
    case = random_case(8)
    assert write_dxf(case.views(), "Argo") == write_dxf(case.views(), "Argo")


_WRITE = """
import hashlib
from service.files.write.dxf import write_dxf
from tests.support.drawn import random_case
print(hashlib.sha256(write_dxf(random_case(8).views(), "Argo")).hexdigest())
"""


def test_every_process_writes_the_same_bytes() -> None:
    def elsewhere(seed: str) -> str:
        """Write in a process in which sets have another order."""
        environment = {**os.environ, "PYTHONHASHSEED": seed}
        command = [sys.executable, "-c", _WRITE]
        return subprocess.run(command, cwd=TOP, env=environment, capture_output=True, text=True, check=True).stdout  # noqa: S603 - this very Python

    assert elsewhere("1") == elsewhere("4"), "before the order was set, these two differed"


@pytest.mark.parametrize("name", ["Ναυσικά Чайка 日本丸", "100 %%u ^ done", ""])
def test_any_name_comes_back(name: str) -> None:
    box = {"aft_mm": [0, 300], "starboard_mm": [-300, 0], "height_mm": [1000, 1500]}
    case: Case = set_near(boat(obstacles=[{"kind": "other", "note": name or "thing", **box}]), rng(3))
    doc = read(write_dxf(case.views(), name))
    texts = [entity.dxf.text for entity in doc.modelspace().query("TEXT")]
    plain = name.replace("^", "^ ").replace("%%", "% %")
    assert plain in texts
    assert doc.audit().errors == []
