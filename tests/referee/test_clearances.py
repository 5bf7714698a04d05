"""A small share of `scripts/soak geometry`: the engine's clearances on meshes, and every check worked out again."""

from __future__ import annotations

import numpy as np
import pytest

from tests.referee.compare import ARITHMETIC, CLEARANCE, cases, demo_catalogue, engine, referee
from tests.referee.measure import Fineness
from tests.referee.solids import Solid, apart, box, cylinder, rod, swung

BOATS = range(1, 61)
HALVED, SKIPPED = range(1, 9), range(1, 41)
MOVED = 0.3


def test_no_clearance_differs_and_nothing_that_fits_is_refuted() -> None:
    catalogue = demo_catalogue()
    every = catalogue.configurations()
    seen, passing, wrong = 0, 0, []
    for seed in BOATS:
        for case in cases(seed, catalogue, every, tries=1 + seed % 2, choice=12):
            verdict = referee(case, catalogue, Fineness(), halve=False)
            seen, passing = seen + len(verdict.differences), passing + verdict.passes
            wrong += [f"boat {seed}: {what}" for what in verdict.refuted]
            for name, difference in verdict.differences.items():
                if abs(difference) > (ARITHMETIC if name.startswith("margin") else CLEARANCE):
                    wrong.append(f"boat {seed}: {name} differs by {difference:.3f}")
    assert not wrong
    assert seen > 1000
    assert passing > 10  # else nothing was there to be refuted


def test_halving_mesh_and_angle_step_moves_no_clearance() -> None:
    catalogue = demo_catalogue()
    every = catalogue.configurations()
    moved = [
        abs(value)
        for seed in HALVED
        for case in cases(seed, catalogue, every, tries=1, choice=6)
        for value in referee(case, catalogue, Fineness(), halve=True).halving.values()
    ]
    assert len(moved) > 100
    assert max(moved) <= MOVED


def test_what_the_search_skips_is_never_nearer_than_it_says() -> None:
    catalogue = demo_catalogue()
    every = catalogue.configurations()
    for seed in SKIPPED:
        for case in cases(seed, catalogue, every, tries=2, choice=6):
            exact, quick = engine(case, catalogue)[0][:, 2], engine(case, catalogue, 250.0)[0][:, 2]
            differ = ~np.isclose(exact, quick)
            assert (quick[differ] <= exact[differ]).all()
            assert (quick[differ] >= 150.0 - 1e-9).all()  # a bound stands in only beyond 250 mm less the largest gap


# --- the referee itself, on what can be worked out by hand ---------------------------------------------------


def test_the_referee_measures_what_a_pencil_does() -> None:
    cube = Solid(box([(0, 10), (0, 10), (0, 10)]))
    assert apart(cube, Solid(box([(13, 20), (0, 10), (14, 20)]))) == pytest.approx(5.0)
    assert apart(cube, Solid(box([(2, 3), (2, 3), (2, 3)]))) == 0.0  # one inside the other: no surface is crossed
    assert apart(cube, cylinder(20.0, 5.0, 4.0, -50.0, 50.0, 1.0)) == pytest.approx(6.0, abs=1e-3)
    blade = swung(30.0, 5.0, 15.0, 30.0, -1.0, 0.0, 10.0, 0.5)
    assert blade is not None
    assert apart(cube, blade) == pytest.approx(5.0, abs=1e-3)  # 30 - 15 straight ahead, 10 is the cube's face
    strut = rod(np.array([20.0, 5.0, 20.0]), np.array([20.0, 5.0, 40.0]), 2.0, 5.0, round_ends=True)
    assert apart(cube, strut) == pytest.approx(np.hypot(10.0, 10.0) - 2.0, abs=0.02)
