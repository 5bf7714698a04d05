"""Scores by hand arithmetic, intervals that hold what they should, bins that add up. All boats invented."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.evaluate.calibration import binned, error, mass_places, width_places
from service.core.evaluate.intervals import resampled, wilson
from service.core.evaluate.scoring import Foretold, foretold, scored
from service.core.record import Record

A, B, C, D = (Configuration(gear="g", lower=name, upper="u", shaft="s") for name in "abcd")


def installed(one: Configuration) -> Record:
    return Record(reference="r", status="installed", form=BoatForm(), configuration=one, hull="h")


def test_what_was_said_is_read_off_the_chances() -> None:
    chances = {A: 0.2, B: 0.5, C: 0.3}
    assert foretold(installed(C), chances) == Foretold("h", said=0.5, truth=0.3, place=1)
    assert foretold(installed(D), chances) == Foretold("h", said=0.5, truth=0.0, place=-1)
    assert foretold(installed(A), {}) == Foretold("h", said=0.0, truth=0.0, place=-1)
    assert foretold(installed(A), {B: 0.5, A: 0.5}).place == 1  # of equals, the one named first


def test_a_score_is_what_hand_arithmetic_gives() -> None:
    cases = [
        Foretold("a", 0.8, 0.8, 0), Foretold("a", 0.8, 0.1, 2), Foretold("b", 0.6, 0.0, -1), Foretold("b", 0.6, 0.05, 4),
    ]  # fmt: skip
    score = scored("m", cases, 0.01, seed=1, by_group=False).score
    assert (score.top1.value, score.top3.value, score.listed) == (0.25, 0.5, 0.75)
    assert score.said == pytest.approx(0.7)
    assert score.log_loss.value == pytest.approx(-np.log([0.8, 0.1, 0.01, 0.05]).mean())
    # 0.8 said twice, true once: a gap of 0.3; 0.6 said twice, never true: a gap of 0.6; half the boats each
    assert score.calibration_error.value == pytest.approx(0.45)
    assert score.calibration_error_mass.value == pytest.approx(0.45)
    with pytest.raises(ValueError, match="nothing was asked"):
        scored("m", [], 0.01, seed=1, by_group=False)


def test_whole_groups_make_wider_intervals_where_groups_agree() -> None:
    hits = np.repeat([1.0, 0.0] * 10, 20)  # 20 hull models, all of one alike
    groups = np.repeat(np.arange(20), 20)
    wide = resampled(lambda at: float(hits[at].mean()), groups, seed=1)
    narrow = resampled(lambda at: float(hits[at].mean()), np.arange(hits.size), seed=1)
    assert wide.low < narrow.low < 0.5 < narrow.high < wide.high
    assert wide == resampled(lambda at: float(hits[at].mean()), groups, seed=1)


def test_the_interval_holds_the_truth_as_often_as_it_says() -> None:
    dice = np.random.default_rng(2)
    held = 0
    for hits in dice.binomial(60, 0.3, 400):
        one = wilson(int(hits), 60)
        held += one.low <= 0.3 <= one.high
    assert 0.92 < held / 400 < 0.98
    assert wilson(0, 0).high == 1.0


@settings(deadline=None, derandomize=True, max_examples=40)
@given(st.lists(st.tuples(st.floats(0, 1), st.booleans()), min_size=1, max_size=60))
def test_bins_lose_nobody_and_their_error_is_their_own(cases: list[tuple[float, bool]]) -> None:
    said = np.array([s for s, _ in cases])
    true = np.array([t for _, t in cases])
    for places, width in ((width_places(said), 0.1), (mass_places(said), None)):
        bins = binned(said, true, places, width)
        assert sum(one.count for one in bins) == len(cases)
        plain = sum(b.count * abs(b.said - b.came_true.value) for b in bins) / len(cases)
        assert error(said, true, places) == pytest.approx(plain, abs=1e-9)
        assert all(b.low - 1e-9 <= b.said <= b.high + 1e-9 for b in bins)


def test_equal_mass_is_about_equal() -> None:
    said = np.linspace(0, 1, 80) ** 3
    counts = np.bincount(mass_places(said))
    assert counts.size == 8
    assert set(counts.tolist()) == {10}
    assert np.unique(mass_places(np.full(50, 0.4))).size == 1  # one value stays together
