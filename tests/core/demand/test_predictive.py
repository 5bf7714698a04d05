"""Distributions of counts and reorder points, against scipy and a textbook."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from service.core.demand.predictive import below, in_batches, log_mass, masses, quantile, together
from service.core.demand.stock import reorder_point


@pytest.mark.parametrize(("mean", "variance"), [(0.05, 0.06), (1.0, 1.5), (6.8, 9.0), (120.0, 400.0)])
def test_the_negative_binomial_is_scipys(mean: float, variance: float) -> None:
    other = stats.nbinom(mean**2 / (variance - mean), mean / variance)
    assert other.mean() == pytest.approx(mean)
    assert other.var() == pytest.approx(variance)
    counts = np.arange(12.0)
    same = np.full(12, mean), np.full(12, variance)
    assert np.exp(log_mass(counts, *same)) == pytest.approx(other.pmf(counts), rel=1e-6)
    assert below(counts, *same) == pytest.approx(other.cdf(counts), rel=1e-6)
    assert below(np.array([-1.0]), np.array([mean]), np.array([variance])).tolist() == [0.0]


def test_without_more_spread_than_chance_it_is_poissons() -> None:
    counts = np.arange(30.0)
    found = np.exp(
        log_mass(counts, np.full(30, 6.0), np.full(30, 5.0))
    )  # less spread than Poisson's is taken for Poisson's
    assert found == pytest.approx(stats.poisson(6).pmf(counts), rel=1e-4)


def test_pieces_of_several_kinds_add_up() -> None:
    one, other = masses(1.5, 2.0), masses(0.4, 0.5)
    whole = together([in_batches(one, 1), in_batches(other, 4)])
    mean = float((np.arange(whole.size) * whole).sum())
    variance = float(((np.arange(whole.size) - mean) ** 2 * whole).sum())
    assert whole.sum() == pytest.approx(1)
    assert mean == pytest.approx(1.5 + 4 * 0.4, rel=1e-4)
    assert variance == pytest.approx(2.0 + 16 * 0.5, rel=1e-3)


def test_many_pieces_add_up_as_few_do() -> None:
    one, other = masses(900.0, 1100.0), in_batches(masses(700.0, 900.0), 2)
    assert together([one, other]) == pytest.approx(np.convolve(one, other), abs=1e-12)


# W. J. Hopp, M. L. Spearman, Factory Physics, sec. 2.4.2: refrigerators, Poisson with a mean of 10 in the lead time. G(r)
# as tabled in N. van Foreest's notes on that section (nicky.vanforeest.com, The Base-stock Model).
TEXTBOOK = {8: 0.332820, 10: 0.583040, 12: 0.791556, 13: 0.864464, 14: 0.916542, 15: 0.951260, 16: 0.972958}


def test_reorder_points_are_the_textbooks() -> None:
    chances = masses(10.0, 10.0)
    for point, lasts in TEXTBOOK.items():
        found, with_ = reorder_point(chances, lasts - 1e-4)
        assert found == point
        assert with_ == pytest.approx(lasts, abs=2e-5)
        assert reorder_point(chances, lasts + 1e-4)[0] == point + 1


def test_the_quantile_is_the_least_that_is_not_exceeded() -> None:
    assert [quantile(np.array([0.25, 0.25, 0.5]), share) for share in (0.2, 0.25, 0.26, 0.5, 0.51)] == [0, 0, 1, 1, 2]
