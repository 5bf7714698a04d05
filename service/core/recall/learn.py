"""Weights learned from the fleet: those under which what was really installed was likeliest.

Each part's kernel maximises the leave-one-out likelihood

    1/2 mean_i log p_x(c_i | all others) + 1/2 mean_i log p_x(c_i | all others but sister ships) - r sum (log w - log w0)^2

of what was installed, the second half because boats also come from models that the fleet has not seen. The pull r
towards the weights set by hand is as strong as a fixed number of boats, so that a small fleet learns little and a large
one what it shows. Ascent by BFGS on the logarithms from the hand-set ones, with the gradient worked out: the same
fleet gives the same weights.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize

from service.core.recall.ascent import likelihood
from service.core.recall.distance import MIX, STERN_PLACE, Floats, Places, deltas
from service.core.recall.features import FEATURES
from service.core.recall.fleet import Fleet, by_feature
from service.core.recall.menu import Choices
from service.core.recall.weights import PARTS, Kernel, Part, Weights

ENOUGH = 40
"""Installed records from which on there is something to learn."""
MOST_ASKED, MOST_VOTING = 500, 1500
"""Beyond these, records evenly spread through the fleet stand for all."""
_PULL = 0.4
"""How strongly weights are held to the hand-set ones, in boats by squared change of a logarithm."""
_LOOSE = 0.1
"""Bandwidth, sister's weight and prior are held so much less."""
_STEPS = 25
_NEWCOMER = 0.5
"""Votes spread over all choices, so that one made once only is not impossible when its record is left out."""


class TooFewError(ValueError):
    """Too few records are installed to learn from; the message says how many there are and are needed."""


@dataclass(frozen=True, eq=False)
class Pairs:
    """Every asked record against every voting one: differences by feature, the weight of the vote, sister ships.

    A difference is not a number where either lacks the feature.
    """

    asked: Places
    voting: Places
    apart: NDArray[np.float32]
    votes: Floats
    sister: NDArray[np.bool_]

    @classmethod
    def of(cls, fleet: Fleet) -> Self:
        """Return the pairs of a fleet, none of a record with itself. TooFewError where too few are installed."""
        installed = np.array([r.status == "installed" for r in fleet.records], np.bool_)
        if installed.sum() < ENOUGH:
            raise TooFewError(f"{int(installed.sum())} records are installed; weights are learned from {ENOUGH} on")
        asked, voting = _spread(np.flatnonzero(installed), MOST_ASKED), _spread(fleet_places(fleet), MOST_VOTING)
        theirs = fleet.rows.some(voting)
        apart = np.empty((asked.size, len(FEATURES), voting.size), np.float32)
        for n, place in enumerate(asked):
            far, both = deltas(theirs, fleet.rows.some(np.array([place])))
            apart[n] = np.where(both, far, np.nan)
        votes = np.where(asked[:, None] == voting[None, :], 0.0, fleet.speaks_for[voting][None, :])
        votes *= _can_mix(fleet.rows.values[STERN_PLACE, asked], theirs.values[STERN_PLACE])
        hulls = fleet.hull[asked][:, None]
        sister = (hulls == fleet.hull[voting][None, :]) & (hulls >= 0)
        return cls(asked, voting, apart, votes, sister)


def fleet_places(fleet: Fleet) -> Places:
    """Return the places of the records that speak for their configuration."""
    return np.flatnonzero(fleet.speaks_for > 0)


def _spread(places: Places, most: int) -> Places:
    if places.size <= most:
        return places
    return places[np.unique(np.linspace(0, places.size - 1, most).astype(np.int64))]


def _can_mix(ours: NDArray[np.float32], theirs: NDArray[np.float32]) -> NDArray[np.bool_]:
    open_ended = np.pad(MIX, (0, 1), constant_values=True)  # the last place stands for an unknown stern
    a, b = (np.where(np.isnan(x), -1, x).astype(np.intp) for x in (ours, theirs))
    return np.asarray(open_ended[a[:, None], b[None, :]])


@dataclass(frozen=True, eq=False)
class Likelihood:
    """The leave-one-out likelihood of one part's choices, as a function of its kernel's logarithms."""

    pairs: Pairs
    shrink: float
    middle: float
    same: NDArray[np.bool_]
    frequency: Floats

    @classmethod
    def of(cls, pairs: Pairs, fleet: Fleet, part: Part) -> Self:
        """Return the likelihood of what was chosen of a part."""
        choices = fleet.choices[part]
        ours, theirs = choices.chosen[pairs.asked], choices.chosen[pairs.voting]
        return cls(
            pairs, fleet.weights.shrink, fleet.measures[part].middle, ours[:, None] == theirs[None, :],
            _left_out(choices, fleet.speaks_for, pairs.asked),
        )  # fmt: skip

    def __call__(self, point: Floats) -> tuple[float, Floats]:
        """Return the mean log likelihood, half with sister ships and half without, and its gradient."""
        pairs, grown, slope = self.pairs, np.exp(point), np.empty_like(point)
        value = likelihood(
            pairs.apart, pairs.votes, pairs.sister, self.same, self.frequency, grown[:-3], grown[-3:],
            np.array([self.shrink, self.middle]), slope,
        )  # fmt: skip
        return value, slope


def _left_out(choices: Choices, speaks_for: Floats, asked: Places) -> Floats:
    """Return how often each asked record's choice was made by the others."""
    total = speaks_for.sum()
    made = choices.frequency[choices.chosen[asked]] * total - speaks_for[asked]
    return np.asarray((made + _NEWCOMER / len(choices.codes)) / (total - speaks_for[asked] + _NEWCOMER))


def learned_kernels(fleet: Fleet) -> Weights:
    """Return the fleet's weights with each part's kernel learned, the rest as it was. TooFewError as `Pairs.of`."""
    pairs = Pairs.of(fleet)
    return fleet.weights.with_kernels(
        {part: _learned(Likelihood.of(pairs, fleet, part), fleet.weights.part(part)) for part in PARTS}
    )


def _learned(chosen: Likelihood, start: Kernel) -> Kernel:
    features = by_feature(start)
    learns = features > 0
    begin = np.log(np.r_[np.where(learns, features, 1e-12), start.bandwidth, start.sister, start.prior])
    hold = np.r_[learns.astype(np.float64), np.full(3, _LOOSE)] * _PULL / chosen.pairs.asked.size

    def cost(point: Floats) -> tuple[float, Floats]:
        value, slope = chosen(point)
        off = point - begin
        gradient = 2 * hold * off - slope
        gradient[:-3][~learns] = 0.0
        return float(hold @ off**2) - value, gradient

    found = np.exp(minimize(cost, begin, jac=True, method="BFGS", options={"maxiter": _STEPS}).x)
    weights = {f.path: float(w) for f, w, known in zip(FEATURES, found, learns, strict=False) if known}
    return Kernel(features=weights, bandwidth=found[-3], sister=found[-2], prior=found[-1])
