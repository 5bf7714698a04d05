"""The step of the linear programme against scipy.optimize.linprog."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.optimize import linprog

from service.core.fit.simplex import best_step

SIZES = (2, 5, 7)


@pytest.mark.parametrize("seed", range(200))
def test_best_step(seed: int) -> None:
    """Maximise t with t <= margin + slope · d on soft rows, 0 <= margin + slope · d on hard ones, low <= d <= high."""
    rng = np.random.default_rng(seed)
    n = int(rng.choice(SIZES))
    rows = int(rng.integers(3, 46))
    slope = rng.normal(size=(rows, n)) * rng.choice([0.0, 0.01, 1.0], size=(rows, n))
    margin = rng.normal(1.0, 2.0, rows)
    low, high = -rng.uniform(0.01, 60, n), rng.uniform(0.0, 60, n)
    hard = (rng.random(rows) < 0.2).astype(float)
    hard[0] = 0.0
    hard = np.where(margin < 0, 0.0, hard)  # a hard row holds before the step, at d = 0
    step, t = best_step(margin, np.ascontiguousarray(slope), hard, low, high, rows)
    soft = hard == 0
    theirs = linprog(
        np.append(np.zeros(n), -1.0),
        A_ub=np.column_stack([-slope, soft.astype(float)]),
        b_ub=margin,
        bounds=[*zip(low, high, strict=True), (None, None)],
        method="highs",
    )
    assert theirs.status == 0
    assert theirs.fun is not None
    assert t == pytest.approx(-theirs.fun, abs=1e-6)
    assert np.all(step >= low - 1e-9)
    assert np.all(step <= high + 1e-9)
    reached = margin + slope @ step
    assert reached[soft].min() == pytest.approx(t, abs=1e-6)
    assert np.all(reached[~soft] >= -1e-6)


def test_rows_beyond_the_count_are_not_looked_at() -> None:
    margin, slope = np.array([1.0, -50.0]), np.array([[1.0], [0.0]])
    step, t = best_step(margin, slope, np.zeros(2), np.array([-2.0]), np.array([3.0]), 1)
    assert (step[0], t) == pytest.approx((3.0, 4.0))


def test_no_room_to_move() -> None:
    margin, slope = np.array([1.0, 2.0]), np.ones((2, 3))
    step, t = best_step(margin, slope, np.zeros(2), np.zeros(3), np.zeros(3), 2)
    assert step == pytest.approx(np.zeros(3))
    assert t == pytest.approx(1.0)
