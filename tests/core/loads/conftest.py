"""A placed gear to load: 50.8 mm tube, hinged brackets 420 mm apart, 12 m boat."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from service.core.loads.mount import plain_axes
from service.core.loads.shapes import GearSize, Hull, Inputs, Mount, Spot, StrutSet, TubeSize
from service.core.loads.standard import Numbers
from service.core.loads.validity import Array

GEAR = GearSize(TubeSize(50.8, 3.2, "stainless 2205"), 220.0, 720.0, 48.0, 30.0, 0.15, 24.0, 5.0)
SPOT = Spot(300.0, 720.0, -60.0, 1050.0, -80.0, 1215.0)
FOUR = np.array([[-55, -40], [55, -40], [-55, 40], [55, 40]], dtype=float)
HULL = Hull(9350.0, "frp_solid", 12.0)
FEET = np.array([[-210.0, -300.0, 40.0], [-210.0, 300.0, 40.0]])
STRUT = TubeSize(25.4, 2.0, "stainless 316L")


def mount(reach: float = 200.0, **other: Any) -> Mount:  # noqa: ANN401 - any field of a mount
    plain = Mount(
        "hinged", np.array([reach, 0.0, 0.0]), plain_axes(0.1, 0.0), FOUR, "M10", 160.0, 120.0, 9000.0, 7000.0, 1200.0, 5.0
    )  # fmt: skip
    return replace(plain, **other)


def strutted(feet: Array = FEET, **other: Any) -> Mount:  # noqa: ANN401 - any field of a mount
    return mount(200.0, kind="strutted", struts=StrutSet(feet, STRUT, "M8", 3), **other)


def placed(**other: Any) -> Inputs:  # noqa: ANN401 - any part of the inputs
    return replace(Inputs(GEAR, SPOT, mount(), mount(260.0), HULL), **other)


@pytest.fixture
def numbers() -> Numbers:
    return Numbers()


@pytest.fixture
def place() -> Callable[..., Inputs]:
    return placed


@pytest.fixture
def bracket() -> Callable[..., Mount]:
    return mount


@pytest.fixture
def strut_bracket() -> Callable[..., Mount]:
    return strutted
