"""Shares, trends and pairs, against scipy's own functions and hand arithmetic."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import optimize, stats

from service.core.demand.shares import jeffreys, lift, trend


@pytest.mark.parametrize(("hits", "count"), [(0, 1), (1, 1), (3, 10), (8, 10), (37, 516), (0, 400), (516, 516)])
@pytest.mark.parametrize("level", [0.8, 0.95])
def test_jeffreys_is_what_scipys_beta_quantiles_give(hits: int, count: int, level: float) -> None:
    low, high = jeffreys(np.array([float(hits)]), np.array([float(count)]), level)
    own = stats.beta(hits + 0.5, count - hits + 0.5)  # Brown, Cai, DasGupta (2001), sec. 4.1.2
    assert low[0] == pytest.approx(0.0 if hits == 0 else own.ppf((1 - level) / 2), abs=1e-12)
    assert high[0] == pytest.approx(1.0 if hits == count else own.ppf((1 + level) / 2), abs=1e-12)


def test_nothing_of_nothing_may_be_anything() -> None:
    low, high = jeffreys(np.array([0.0]), np.array([0.0]))
    assert (low[0], high[0]) == (0.0, 1.0)


def test_growth_is_the_one_of_greatest_likelihood() -> None:
    counts = np.random.default_rng(5).poisson(6 * 1.08 ** (np.arange(40) / 4)).astype(float)
    found = trend(counts)
    years = np.arange(40) / 4

    def loss(beta: np.ndarray) -> float:
        return -float(stats.poisson.logpmf(counts, np.exp(beta[0] + beta[1] * years)).sum())

    other = optimize.minimize(
        loss, [1.5, 0.0], method="Nelder-Mead", options={"xatol": 1e-9, "fatol": 1e-9, "maxiter": 5000}
    )
    assert found is not None
    assert found.value == pytest.approx(np.expm1(other.x[1]), abs=1e-6)
    assert found.low < 0.08 < found.high


def test_growth_holds_the_truth_about_as_often_as_it_says() -> None:
    dice = np.random.default_rng(11)
    held = 0
    for _ in range(250):
        one = trend(dice.poisson(4 * 1.05 ** (np.arange(32) / 4)).astype(float))
        assert one is not None
        held += one.low <= 0.05 <= one.high
    assert 0.92 <= held / 250 <= 0.985  # 95 %, give or take 250 tries


def test_counts_that_are_all_alike_do_not_grow() -> None:
    found = trend(np.ones(12))
    assert found is not None
    assert found.value == pytest.approx(0, abs=1e-9)
    # by hand: the variance of the slope is 1 / (sum of counts times squared years about the middle)
    years = (np.arange(12) - 5.5) / 4
    assert found.high == pytest.approx(np.expm1(1.959964 / np.sqrt((years**2).sum())), abs=1e-6)


def test_too_few_counts_have_no_growth() -> None:
    assert trend(np.ones(7)) is None
    assert trend(np.array([1.0] * 9 + [0.0] * 20)) is None


def test_lift_by_hand() -> None:
    value, low, high = lift(np.array([10.0]), np.array([20.0]), np.array([25.0]), 100)
    assert value[0] == pytest.approx((10 / 20) / (25 / 100))
    assert low[0] < value[0] < high[0]
