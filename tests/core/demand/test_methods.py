"""Ways to foretell counts against published worked examples; what is unlike them is told by hand arithmetic."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from service.core.demand.methods import METHODS, croston, discounted, last_value, started, tsb

LUBRICANT = [
    0,
    2,
    0,
    1,
    0,
    11,
    0,
    0,
    0,
    0,
    2,
    0,
    6,
    3,
    0,
    0,
    0,
    0,
    0,
    7,
    0,
    0,
    0,
    0,
    0,
    0,
    0,
    3,
    1,
    0,
    0,
    1,
    0,
    1,
    0,
    0,
]
"""Monthly sales of a lubricant: R. J. Hyndman, G. Athanasopoulos, Forecasting: Principles and Practice, 2nd ed., the
section on time series of counts (data `productC` of the package fpp2)."""


def row(counts: list[int]) -> np.ndarray:
    return np.array([counts], dtype=float)


def plain(counts: list[int]) -> np.ndarray:
    return np.ones((1, len(counts)))


def test_croston_gives_the_books_forecast() -> None:
    y = row(LUBRICANT)
    found = croston(0.1, unbias=False)(y, started(y), plain(LUBRICANT)).level[0, -1]
    assert found == pytest.approx(2.750 / 2.793, abs=5e-4)  # the book: q = 2.750, a = 2.793, forecast 0.985
    assert round(float(found), 3) == 0.985


def test_syntetos_boylan_is_croston_less_half_alpha() -> None:
    y = row(LUBRICANT)
    biased, unbiased = (croston(0.1, unbias=u)(y, started(y), plain(LUBRICANT)).level[0, -1] for u in (False, True))
    assert unbiased == pytest.approx(0.95 * biased)  # Syntetos, Boylan (2005): 1 - alpha/2


STATSFORECAST = {(0.1, 0.1): 0.87290823, (0.2, 0.05): 1.07249571, (0.1, 0.3): 0.72134428}
"""What TSB(alpha, beta) of statsforecast 2.1.1 foretells of the same sales from the first demand on, by (alpha, beta)."""


@pytest.mark.parametrize("smoothed", STATSFORECAST)
def test_teunter_syntetos_babai_is_what_a_reference_library_gives(smoothed: tuple[float, float]) -> None:
    counts = LUBRICANT[1:]
    y = row(counts)
    found = tsb(*smoothed)(y, started(y), plain(counts)).level[0, -1]
    assert found == pytest.approx(STATSFORECAST[smoothed], abs=1e-7)


def test_croston_and_syntetos_boylan_are_what_a_reference_library_gives() -> None:
    y = row(LUBRICANT)
    found = [croston(0.1, unbias=u)(y, started(y), plain(LUBRICANT)).level[0, -1] for u in (False, True)]
    assert found == pytest.approx(
        [0.98459652, 0.9353667], abs=1e-7
    )  # statsforecast 2.1.1, CrostonClassic and CrostonSBA


def test_the_chance_falls_with_every_quarter_without_demand() -> None:
    y = row([0, 2, 0, 0])
    found = tsb(0.1, 0.2)(y, started(y), plain([0] * 4)).level[0]
    # by hand: the first demand comes after two quarters, so p = 1/2 and z = 2; then p -> 0.8 p, 0.8 p
    assert found[2:].tolist() == pytest.approx([2 * 0.5, 2 * 0.4, 2 * 0.32])


def test_without_forgetting_the_level_is_the_posterior_mean_of_a_poisson_rate() -> None:
    counts = [1, 3, 0, 2, 4, 1]
    y = row(counts)
    found = discounted(1.0)(y, started(y), plain(counts))
    posterior = stats.gamma(
        0.5 + sum(counts[1:]), scale=1 / 5
    )  # Jeffreys' Gamma(1/2, 0); the first is not learned from
    assert found.level[0, -1] == pytest.approx(posterior.mean())
    assert found.variance[0, -1] == pytest.approx(posterior.var())


def test_forgetting_weighs_the_last_quarters_most() -> None:
    counts = [1, 8, 8, 8, 8, 0, 0, 0, 0]
    y = row(counts)
    quick, slow = (discounted(d)(y, started(y), plain(counts)).level[0, -1] for d in (0.7, 0.98))
    assert quick < slow < 4.5


def test_the_naive_floor_repeats_the_last_quarter() -> None:
    y = row([1, 4, 0, 7])
    assert last_value(y, started(y), plain([0] * 4)).level[0, -1] == 7


@pytest.mark.parametrize("method", METHODS, ids=lambda m: m.name)
def test_no_method_looks_ahead(method: object) -> None:
    dice = np.random.default_rng(2)
    y = dice.poisson(2, (5, 30)).astype(float)
    changed = y.copy()
    changed[:, 20:] += 9
    ones = np.ones_like(y)
    one, other = (method.run(x, started(x), ones).level[:, :21] for x in (y, changed))  # type: ignore[attr-defined]
    assert np.array_equal(one, other)
