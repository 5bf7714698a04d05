"""Likeness turned into probabilities: what a fitter would install on this boat.

Every part x of a configuration c (all of it; its pair of brackets; its gear and shaft) is voted for apart,

    p_x(c) = (sum_j k_j s_j [c_j = c] + a f_c) / (sum_j k_j s_j + a),      k_j = exp(-(d_j / h)^2)

with the records j that can be compared, their distance d_j in the part's own weights, what each says for its
configuration s_j (more from a sister ship), the overall frequency f and the prior a. Then

    p(c) ~ [(m p_whole + (1 - m) p_brackets p_shaft) g(c)]^t

where g takes away what votes against (withdrawn, failed, replaced), and the power t makes 0.8 mean 0.8. What may be
new altogether, and what was voted against, is left unassigned.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from service.core.recall.distance import Floats, Places, deltas
from service.core.recall.fleet import Fleet
from service.core.recall.menu import coded
from service.core.recall.ranking import Ranking
from service.core.recall.shapes import Vote
from service.core.recall.weights import Part

_LEAST_PROBABILITY = 0.002
_MOST_VOTES = 25
_NAMED_FOR_A_VOTE = 5


def votes(fleet: Fleet, ranking: Ranking) -> Iterator[Vote]:
    """Give the configurations that can be had, likeliest first; adding up to at most one."""
    chance = chances(fleet, ranking)
    for place in np.argsort(-chance, kind="stable")[:_MOST_VOTES]:
        if chance[place] < _LEAST_PROBABILITY:
            return
        yield Vote(
            configuration=fleet.menu.configurations[place],
            probability=float(chance[place]),
            precedents=_speakers(fleet, ranking, int(fleet.menu.whole[place])),
        )


@dataclass(frozen=True, eq=False)
class Ballot:
    """What was voted for each configuration on the menu, before it is mixed and sharpened.

    `whole` by whole configurations, `mixed` by parts, `kept` what votes against leave of it; `news` the chance of
    something new altogether, `alone` where no sister ship spoke.
    """

    whole: Floats
    mixed: Floats
    kept: Floats
    news: float
    alone: bool

    def chances(self, whole_share: float, sharpness: float) -> Floats:
        """Return the probability of each configuration."""
        return sharpened(self.whole, self.mixed, self.kept, self.news, whole_share, sharpness)


def sharpened(
    whole: Floats, mixed: Floats, kept: Floats, news: Floats | float, share: float, sharpness: Floats | float
) -> Floats:
    """Return probabilities over the last axis, of one ballot or of many; nothing where nothing was voted for."""
    plain = share * whole + (1 - share) * mixed
    left = plain * kept
    most = np.maximum(left.max(axis=-1, keepdims=True, initial=0.0), 1e-300)
    powered = (left / most) ** sharpness
    undisputed = left.sum(axis=-1, keepdims=True) / np.maximum(plain.sum(axis=-1, keepdims=True), 1e-300)
    whole_of_it = np.maximum(powered.sum(axis=-1, keepdims=True), 1e-300)
    return np.asarray(powered / whole_of_it * (1 - news) * undisputed)


def chances(fleet: Fleet, ranking: Ranking) -> Floats:
    """Return the probability of each configuration on the fleet's menu."""
    weights, found = fleet.weights, ballot(fleet, ranking)
    return found.chances(weights.whole_share, weights.sharpness_alone if found.alone else weights.sharpness)


def ballot(fleet: Fleet, ranking: Ranking) -> Ballot:
    """Return the votes for every configuration on the fleet's menu."""
    menu = fleet.menu
    news = 1 - (1 - fleet.choices["brackets"].news) * (1 - fleet.choices["shaft"].news)
    alone = not ranking.has_sisters
    if not menu.configurations or not fleet.speaks_for.any():
        nothing = np.zeros(len(menu.configurations))
        return Ballot(nothing, nothing, nothing, news, alone)
    by_part, kernel = part_chances(fleet, ranking)
    whole = np.where(menu.whole >= 0, by_part["whole"][menu.whole], 0.0)
    mixed = by_part["brackets"][menu.brackets] * by_part["shaft"][menu.shaft]
    return Ballot(whole, mixed, _undisputed(fleet, ranking, kernel), news, alone)


def part_chances(fleet: Fleet, ranking: Ranking) -> tuple[dict[Part, Floats], Floats]:
    """Return p_x over the choices of each part, and the kernel of whole configurations over the pool."""
    apart, known = deltas(fleet.rows.some(ranking.pool), ranking.one)
    sister = ranking.sister[ranking.pool]
    found: dict[Part, Floats] = {}
    shown = np.zeros(ranking.pool.size)
    for part, choices in fleet.choices.items():
        kernel = fleet.weights.part(part)
        far, _ = fleet.measures[part].between(apart, known)
        near = np.exp(-((far / kernel.bandwidth) ** 2)) * np.where(sister, kernel.sister, 1.0)
        cast = np.bincount(
            choices.chosen[ranking.pool],
            weights=near * fleet.speaks_for[ranking.pool],
            minlength=len(choices.codes),
        )
        found[part] = (cast + kernel.prior * choices.frequency) / (cast.sum() + kernel.prior)
        if part == "whole":
            shown = near
    return found, shown


def _undisputed(fleet: Fleet, ranking: Ranking, kernel: Floats) -> Floats:
    """Return for each configuration on the menu (v + b) / (v + u + b): v votes for it, u against, b the doubt's weight."""
    chosen = fleet.choices["whole"].chosen[ranking.pool]
    size = len(fleet.choices["whole"].codes)
    v = np.bincount(chosen, weights=kernel * fleet.speaks_for[ranking.pool], minlength=size)
    u = np.bincount(chosen, weights=kernel * fleet.speaks_against[ranking.pool], minlength=size)
    at = np.maximum(fleet.menu.whole, 0)
    seen = fleet.menu.whole >= 0
    for_it, against = np.where(seen, v[at], 0.0), np.where(seen, u[at], 0.0)
    if fleet.refused:
        against += _replaced(fleet, ranking.pool, kernel)
    doubt = fleet.weights.doubt
    return np.asarray((for_it + doubt) / (for_it + against + doubt))


def _replaced(fleet: Fleet, pool: Places, kernel: Floats) -> Floats:
    """Return the votes against what was put forward for boats in the pool and then not fitted."""
    near = dict(zip(pool.tolist(), kernel.tolist(), strict=True))
    against: dict[tuple[str, ...], float] = {}
    for place, one in fleet.refused:
        code = coded("whole", one)
        against[code] = against.get(code, 0.0) + fleet.weights.failed * near.get(place, 0.0)
    return np.array([against.get(coded("whole", one), 0.0) for one in fleet.menu.configurations])


def _speakers(fleet: Fleet, ranking: Ranking, whole: int) -> tuple[str, ...]:
    """Return the nearest records that carry a configuration."""
    pool = ranking.pool
    carry = pool[(fleet.choices["whole"].chosen[pool] == whole) & (fleet.speaks_for[pool] > 0)]
    return tuple(fleet.records[place].reference for place in carry[:_NAMED_FOR_A_VOTE])
