"""Weights learned from the fleet: those under which what was really installed was likeliest.

Each part's kernel maximises the leave-one-out likelihood

    1/2 mean_i log p_x(c_i | all others) + 1/2 mean_i log p_x(c_i | all others but sister ships) - r sum (log w - log w0)^2

of what was installed, the second half because boats also come from models that the fleet has not seen. The pull r
towards the weights set by hand is as strong as a fixed number of boats, so that a small fleet learns little and a large
one what it shows. Ascent by L-BFGS-B on the logarithms from the hand-set ones, with the gradient worked out: the same
fleet gives the same weights.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Self

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize

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
_STEPS = 40
_NEWCOMER = 0.5
"""Votes spread over all choices, so that one made once only is not impossible when its record is left out."""


class TooFewError(ValueError):
    """Too few records are installed to learn from; the message says how many there are and are needed."""


@dataclass(frozen=True, eq=False)
class Pairs:
    """Every asked record against every voting one: differences by feature, the weight of the vote, sister ships."""

    asked: Places
    voting: Places
    apart: NDArray[np.float32]
    known: NDArray[np.float32]
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
        size = (len(FEATURES), asked.size, voting.size)
        apart, known = np.empty(size, np.float32), np.empty(size, np.float32)
        for n, place in enumerate(asked):
            far, both = deltas(theirs, fleet.rows.some(np.array([place])))
            apart[:, n], known[:, n] = np.where(both, far, 0.0), both
        votes = np.where(asked[:, None] == voting[None, :], 0.0, fleet.speaks_for[voting][None, :])
        votes *= _can_mix(fleet.rows.values[STERN_PLACE, asked], theirs.values[STERN_PLACE])
        hulls = fleet.hull[asked][:, None]
        flat = (len(FEATURES), -1)
        return cls(
            asked, voting, apart.reshape(flat), known.reshape(flat), votes,
            (hulls == fleet.hull[voting][None, :]) & (hulls >= 0),
        )  # fmt: skip


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

    def __call__(self, point: Floats, *, sisters: bool) -> tuple[float, Floats]:
        """Return the mean log likelihood and its gradient; without `sisters`, as if every hull model were new."""
        pairs, grown = self.pairs, np.exp(point)
        w, (h, s, a) = grown[:-3], grown[-3:]
        size = pairs.votes.shape
        whole = (w.astype(np.float32) @ pairs.known).reshape(size) + self.shrink
        far = ((w.astype(np.float32) @ pairs.apart).reshape(size) + self.shrink * self.middle) / whole
        cast = np.exp(-((far / h) ** 2)) * pairs.votes
        cast *= np.where(pairs.sister, s, 1.0) if sisters else ~pairs.sister
        right, every = (cast * self.same).sum(1) + a * self.frequency, cast.sum(1) + a
        slope = (self.same / right[:, None] - 1 / every[:, None]) / size[0] * cast
        by_far = -2 * slope * far / h**2 / whole
        gradient = np.empty_like(point)
        gradient[:-3] = pairs.apart @ by_far.ravel().astype(np.float32)
        gradient[:-3] -= pairs.known @ (by_far * far).ravel().astype(np.float32)
        gradient[:-3] *= w
        gradient[-3] = (2 * slope * far**2).sum() / h**2
        gradient[-2] = slope[pairs.sister].sum() if sisters else 0.0
        gradient[-1] = a * (self.frequency / right - 1 / every).sum() / size[0]
        return float(np.log(right / every).mean()), gradient


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


def _learned(likelihood: Likelihood, start: Kernel) -> Kernel:
    features = by_feature(start)
    learns = features > 0
    begin = np.log(np.r_[np.where(learns, features, 1e-12), start.bandwidth, start.sister, start.prior])
    hold = np.r_[learns.astype(np.float64), np.full(3, _LOOSE)] * _PULL / likelihood.pairs.asked.size

    def cost(point: Floats) -> tuple[float, Floats]:
        (near, slope), (far, other) = likelihood(point, sisters=True), likelihood(point, sisters=False)
        off = point - begin
        gradient = -(slope + other) / 2 + 2 * hold * off
        gradient[:-3][~learns] = 0.0
        return -(near + far) / 2 + float(hold @ off**2), gradient

    found = np.exp(minimize(cost, begin, jac=True, method="L-BFGS-B", options={"maxiter": _STEPS}).x)
    weights = {f.path: float(w) for f, w, known in zip(FEATURES, found, learns, strict=False) if known}
    return Kernel(features=weights, bandwidth=found[-3], sister=found[-2], prior=found[-1])
