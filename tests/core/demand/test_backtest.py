"""Forecasts of generated fleets of known rates, asked for quarters that had no part in choosing the method."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from service.core.demand.backtest import Panel, Score, asked, choose, course, foretold, pits, score, season
from service.core.demand.methods import FLOORS, MEAN, Method
from tests.core.demand.fleets import HELD, QUARTERS, WAYS, fleet


def held_out(panel: Panel) -> np.ndarray:
    cells = asked(panel)
    cells[:, : QUARTERS - HELD] = False
    return cells


def scored(panel: Panel, method: Method) -> Score:
    return score(panel, foretold(panel, method), held_out(panel), method.name, seed=7)


FLEETS = {(way, seed): fleet(way, seed) for way in WAYS for seed in range(4)}
CHOSEN = {key: choose(panel, seed=1, last=QUARTERS - HELD) for key, panel in FLEETS.items()}


def test_pooled_intervals_cover_what_they_say() -> None:
    found = [scored(panel, CHOSEN[key].method) for key, panel in FLEETS.items()]
    whole = sum(one.asked for one in found)
    assert whole >= 1000
    for nominal, at in ((0.8, 0), (0.95, 1)):
        exact = sum(one.covered_exactly[at] * one.asked for one in found) / whole
        plain = sum(one.covered[at] * one.asked for one in found) / whole
        assert abs(exact - nominal) <= 0.03, (nominal, exact)
        assert plain >= nominal - 0.01  # with its ends an interval of whole numbers holds more


def test_pooled_transforms_are_even() -> None:
    every = np.concatenate(
        [pits(panel, foretold(panel, CHOSEN[key].method), held_out(panel), 7) for key, panel in FLEETS.items()]
    )
    counts, _ = np.histogram(every, 10, (0, 1))
    assert every.size >= 1000
    assert counts.max() / every.size < 0.13
    assert counts.min() / every.size > 0.07


@pytest.mark.parametrize("way", WAYS)
def test_what_is_chosen_is_not_worse_than_either_floor(way: str) -> None:
    gains = [
        scored(panel, CHOSEN[key].method).log_score - max(scored(panel, floor).log_score for floor in FLOORS)
        for key, panel in FLEETS.items()
        if key[0] == way
    ]
    assert np.mean(gains) > -0.02


@pytest.mark.parametrize("way", ["growing", "seasonal", "stepping"])
def test_where_rates_move_something_beats_the_floors(way: str) -> None:
    for key in (key for key in FLEETS if key[0] == way):
        assert not CHOSEN[key].method.floor
        assert "beat the better floor" in CHOSEN[key].why


@pytest.mark.parametrize("way", ["steady", "spread", "rare"])
def test_where_rates_stand_still_the_floor_is_used_and_said(way: str) -> None:
    used = [CHOSEN[key] for key in FLEETS if key[0] == way]
    floors = [one for one in used if one.method.floor]
    assert len(floors) >= len(used) - 1  # one in twenty may be taken in by chance
    assert all(one.method.name == MEAN and "the floor" in one.why for one in floors)


def test_seasons_are_seen_where_they_are_and_nowhere_else() -> None:
    seen = {key: season(panel) for key, panel in FLEETS.items()}
    assert all(p is not None and p < 1e-6 for key, p in seen.items() if key[0] == "seasonal")
    others = [p for key, p in seen.items() if key[0] in ("steady", "spread", "rare") and p is not None]
    assert sum(p < 0.01 for p in others) <= 2  # one in a hundred, among twelve
    assert all(CHOSEN[key].method.seasonal for key in FLEETS if key[0] == "seasonal")


@pytest.mark.parametrize("spread", [1.0, 2.5])
def test_false_seasons_are_no_more_frequent_than_said(spread: float) -> None:
    dice = np.random.default_rng(3)
    size = 8 / max(spread - 1, 1e-9)

    def counts() -> np.ndarray:
        return dice.poisson(8, (1, 40)) if spread == 1 else dice.negative_binomial(size, 1 / spread, (1, 40))

    found = [season(Panel((("a", 1),), counts().astype(float), 0)) for _ in range(600)]
    for said in (0.01, 0.05, 0.2):
        share = sum(p is not None and p < said for p in found) / 600
        assert share <= stats.binom.ppf(0.999, 600, said) / 600


def test_the_course_of_the_year_is_known_only_from_before() -> None:
    panel = FLEETS["seasonal", 0]
    later = Panel(panel.keys, panel.counts.copy(), panel.first)
    later.counts[:, 40:] *= 3
    assert np.array_equal(course(panel)[:41], course(later)[:41])
    ahead = course(panel, 4)[-4:]
    assert ahead.sum() == pytest.approx(4)
    assert ahead.tolist() == pytest.approx([0.5, 1.6, 1.3, 0.6], abs=0.15)


def test_too_few_quarters_take_the_floor() -> None:
    short = Panel((("a", 1),), np.ones((1, 6)), 0)
    chosen = choose(short, seed=1)
    assert chosen.method.name == MEAN
    assert "too few" in chosen.why


def test_the_same_seed_gives_the_same() -> None:
    panel = FLEETS["steady", 1]
    one, other = (choose(panel, seed=5) for _ in range(2))
    assert one.scores == other.scores
    assert np.array_equal(one.pit, other.pit)
