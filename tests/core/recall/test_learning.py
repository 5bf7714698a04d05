"""Weights learned from a fleet that was made by a rule find the rule; the same fleet gives the same weights. Invented."""

from __future__ import annotations

from datetime import date, timedelta

import numpy as np
import pytest

from service.core.catalogue import Configuration
from service.core.form import parse_form
from service.core.recall import WEIGHTS, Weights
from service.core.recall.calibrate import by_date, hull_groups, learned, trials
from service.core.recall.fleet import Fleet, by_feature
from service.core.recall.learn import ENOUGH, Likelihood, Pairs, TooFewError, learned_kernels
from service.core.recall.weights import PARTS
from service.core.record import Record

SHORT, LONG, HIGH = (
    Configuration(gear="g", lower="short", upper="short", shaft="s1200"),
    Configuration(gear="g", lower="long", upper="short", shaft="s1200"),
    Configuration(gear="g", lower="short", upper="short", shaft="s1500"),
)


def ruled(size: int, seed: int = 3) -> list[Record]:
    """Rake alone chooses the lower bracket, the top edge's height alone the shaft; length and beam say nothing."""
    dice = np.random.default_rng(seed)
    found = []
    for n in range(size):
        rake, top = float(dice.uniform(-30, 30)), float(dice.uniform(700, 1300))
        form = parse_form(
            {
                "boat": {"loa_mm": float(dice.uniform(8000, 13000)), "beam_mm": float(dice.uniform(2500, 4000))},
                "transom": {"rake_deg": rake, "top_height_mm": top},
            }
        )
        lower, shaft = ("long" if rake > 0 else "short"), ("s1500" if top > 1000 else "s1200")
        made = Configuration(gear="g", lower=lower, upper="short", shaft=shaft)
        when = date(2010, 1, 1) + timedelta(days=n)
        found.append(
            Record(
                reference=f"r{n:03d}", status="installed", date=when, form=form, configuration=made, hull=f"h{n % 12}"
            )
        )
    return found


@pytest.fixture(scope="module")
def taught() -> Weights:
    return learned(ruled(160), {})


def test_what_decides_is_found(taught: Weights) -> None:
    brackets, shaft = taught.brackets.features, taught.shaft.features
    assert brackets["transom.rake_deg"] > 3 * max(brackets["boat.loa_mm"], brackets["transom.top_height_mm"])
    assert shaft["transom.top_height_mm"] > 3 * max(shaft["boat.loa_mm"], shaft["transom.rake_deg"])


def test_what_was_learned_foretells_boats_it_never_saw_better(taught: Weights) -> None:
    fresh = ruled(80, seed=99)

    def loss(weights: Weights) -> float:
        fleet = Fleet.build(ruled(160), {}, weights)
        chances = []
        for ballot, truth in trials(fleet, fresh):
            sharp = weights.sharpness_alone if ballot.alone else weights.sharpness
            chances.append(ballot.chances(weights.whole_share, sharp)[truth])
        assert len(chances) == len(fresh)
        return -float(np.log(chances).mean())

    assert loss(taught) < loss(WEIGHTS) - 0.1


def test_the_same_fleet_gives_the_same_weights_in_whatever_order(taught: Weights) -> None:
    assert learned(ruled(160)[::-1], {}) == taught


def test_weights_come_back_from_their_json(taught: Weights) -> None:
    assert Weights.model_validate_json(taught.model_dump_json()) == taught


def test_too_few_are_refused_with_their_number() -> None:
    with pytest.raises(TooFewError, match=f"12 records are installed; weights are learned from {ENOUGH} on"):
        learned_kernels(Fleet.build(ruled(12), {}))


@pytest.mark.parametrize("part", PARTS)
def test_the_slope_is_that_of_the_likelihood(part: str) -> None:
    fleet = Fleet.build(ruled(60), {})
    kernel = fleet.weights.part(part)  # type: ignore[arg-type] # one of PARTS
    likelihood = Likelihood.of(Pairs.of(fleet), fleet, part)  # type: ignore[arg-type] # the same
    features = by_feature(kernel)
    point = np.log(np.r_[features, kernel.bandwidth, kernel.sister, kernel.prior])
    slope = likelihood(point)[1].copy()
    for n in range(point.size):
        step = np.zeros_like(point)
        step[n] = 1e-4
        plain = (likelihood(point + step)[0] - likelihood(point - step)[0]) / 2e-4
        assert slope[n] == pytest.approx(plain, abs=1e-6)


def test_the_likelihood_is_that_of_a_plain_loop() -> None:
    records = ruled(50)
    fleet = Fleet.build(records, {})
    kernel, measure = fleet.weights.shaft, fleet.measures["shaft"]
    point = np.log(np.r_[by_feature(kernel), kernel.bandwidth, kernel.sister, kernel.prior])
    got, _ = Likelihood.of(Pairs.of(fleet), fleet, "shaft")(point)
    rows = fleet.rows.values.astype(float)
    total = 0.0
    for i, mine in enumerate(records):
        for sisters in (True, False):
            others = [r for n, r in enumerate(records) if n != i]
            same = sum(r.configuration.shaft == mine.configuration.shaft for r in others)
            choices = len({r.configuration.shaft for r in records})
            right = kernel.prior * (same + 0.5 / choices) / (len(others) + 0.5)
            every = kernel.prior
            for j, theirs in enumerate(records):
                if j == i or (not sisters and theirs.hull == mine.hull):
                    continue
                both = ~np.isnan(rows[:, i]) & ~np.isnan(rows[:, j])
                w = measure.weights[both]
                apart = np.minimum(np.abs(rows[both, i] - rows[both, j]), 1.0)
                far = (w @ apart + measure.shrink * measure.middle) / (w.sum() + measure.shrink)
                vote = np.exp(-((far / kernel.bandwidth) ** 2)) * (kernel.sister if theirs.hull == mine.hull else 1.0)
                every += vote
                right += vote * (theirs.configuration.shaft == mine.configuration.shaft)
            total += np.log(right / every)
    assert got == pytest.approx(total / (2 * len(records)), abs=1e-6)


def test_groups_hold_whole_hull_models_once() -> None:
    records = by_date(ruled(100))
    groups = hull_groups(records, 5)
    assert sorted(h for g in groups for h in g if h) == sorted({r.hull for r in records if r.hull})
    assert sum(len(g) for g in groups) == 12
    assert hull_groups(records[:3], 5) == [{"h0"}, {"h1"}, {"h2"}]


def test_calibration_makes_chances_true() -> None:
    """Where fitters toss a coin between two shafts, no chance of them is far from a half, however sharp the votes."""
    dice = np.random.default_rng(5)
    tossed = [
        r.model_copy(update={"configuration": HIGH if dice.random() < 0.5 else SHORT}) for r in ruled(160, seed=4)
    ]
    weights = learned(tossed[:120], {})
    fleet = Fleet.build(tossed[:120], {}, weights)
    said = [
        b.chances(weights.whole_share, weights.sharpness_alone if b.alone else weights.sharpness).max()
        for b, _ in trials(fleet, tossed[120:])
    ]
    assert float(np.mean(said)) < 0.65
    assert LONG not in fleet.menu.configurations
