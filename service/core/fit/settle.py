"""How sure a fit is: on each draw of the boat the fitter plumbs the shaft and settles what the chosen metal allows.

Configuration, offset and shaft length stay; shaft axis, collar heights, shaft bottom and pads settle anew.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.compiled import compiled
from service.core.fit.bits import INF, NEAR
from service.core.fit.checks import MARGIN, check, scales, smallest
from service.core.fit.kit import Kit, M
from service.core.fit.search import aim, climb
from service.core.fit.shapes import Doubt
from service.core.fit.site import S, Site, skin
from service.core.fit.terms import FIXED, Terms, terms

Array = NDArray[np.float64]
DISAGREEMENT = 0.1
"""First-order and Monte Carlo probabilities further apart than this are flagged."""
TRUST = 150.0
ROUNDS = 6
BOUND = 100.0
"""Scaled margins are held within this for variances: a miss without a way out has no size."""


def settle(
    nominal: Site, site: Site, kit: Kit, spot: Array, rules: Rules, *, best: bool = False
) -> tuple[Array, Array, Array]:
    """Return margins (N, checks) on each row of `site` after settling there, the governing scaled margin (N,), the spots (N, 5).

    `kit` has one entry, `spot` (5,) is its nominal placement. `best`: settle to the best, not merely to a pass.
    """
    return _settle(nominal, site, kit, spot, terms(rules), best)


@compiled
def _settle(nominal: Site, site: Site, kit: Kit, spot: Array, t: Terms, best: bool) -> tuple[Array, Array, Array]:  # noqa: FBT001 - compiled code takes no keywords
    n, count = site.values.shape[0], FIXED + site.binds.size
    margins, governing, spots = np.empty((n, count)), np.empty(n), np.empty((n, 5))
    scale, out, at = scales(t, count), np.empty((count, 3)), np.zeros(7)
    rounds, enough = (ROUNDS, INF) if best else (ROUNDS, 0.0)
    for i in range(n):
        _carry(nominal, site, i, kit, spot, at)
        check(site, i, kit, 0, t, at[0], at[1], at[2], at[3], at[4], NEAR, out)
        if best or aim(site, out, scale) <= enough:
            reached, _ = climb(site, i, kit, 0, t, scale, at, spot[0], spot[0], TRUST, rounds, enough, -INF)
            check(site, i, kit, 0, t, reached[0], reached[1], reached[2], reached[3], reached[4], NEAR, out)
            at[:] = reached
        spots[i] = at[:5]
        margins[i] = out[:, MARGIN]
        governing[i], _, _ = smallest(site, out, scale, False, True)
    return margins, governing, spots


@compiled
def _carry(nominal: Site, site: Site, i: int, kit: Kit, spot: Array, at: Array) -> None:
    """Carry the nominal placement to a row: collars keep their place below the top edge, the blade its depth.

    The axis moves with the mean of the skin under both flanges, as plumbing the shaft would move it.
    """
    drop = site.values[i, S.TOP] - nominal.values[0, S.TOP]
    shift = 0.0
    for before, rise in ((spot[2], kit.lower[0, M.RISE]), (spot[3], kit.upper[0, M.RISE])):
        new, _, _ = skin(site, i, spot[0], before + drop - rise)
        old, _, _ = skin(nominal, 0, spot[0], before - rise)
        shift += (new - old) / 2.0
    at[0], at[1], at[2], at[3], at[4] = spot[0], spot[1] + shift, spot[2] + drop, spot[3] + drop, spot[4]


@dataclass(frozen=True)
class FirstOrder:
    """First-order propagation of the governing scaled margin beside its whole variance."""

    probability: float
    variances: Array
    whole: float

    def shares(self, fields: list[str]) -> tuple[Doubt, ...]:
        """Return each factor's share of the variance, largest first; axes of an obstacle, points of a profile together.

        What the factors do not bring one by one is `interactions`, so that all add to one; where sampling makes the
        whole come out smaller than its parts, the parts are scaled to it.
        """
        total = max(self.whole, float(self.variances.sum()))
        if total <= 0:
            return ()
        by_field: dict[str, float] = {}
        for field, part in zip(fields, self.variances, strict=True):
            name = field.rsplit(".", 1)[0] if field.startswith("obstacles[") else field.partition("[")[0]
            by_field[name] = by_field.get(name, 0.0) + float(part) / total
        by_field["interactions"] = max(0.0, 1.0 - sum(by_field.values()))
        ranked = sorted(by_field.items(), key=lambda item: -item[1])
        return tuple(Doubt(field=field, share=round(share, 4)) for field, share in ranked if share >= 5e-5)  # noqa: PLR2004 - rounds to nothing


def first_order(
    nominal: Site, star: tuple[Site, Array], sample: Site, kit: Kit, spot: Array, rules: Rules
) -> FirstOrder:
    """Return first-order propagation (JCGM 100, 5.1.2) of the governing scaled margin, settled at each star point.

    `star`: two rows a factor, and the weight of each pair. `sample`: draws on which the whole variance is taken.
    """
    points, weights = star
    _, here, _ = settle(nominal, nominal, kit, spot, rules, best=True)
    _, margins, _ = settle(nominal, points, kit, spot, rules, best=True)
    _, drawn, _ = settle(nominal, sample, kit, spot, rules, best=True)
    margins, drawn = np.clip(margins, -BOUND, BOUND), np.clip(drawn, -BOUND, BOUND)
    variances = (weights * (margins[1::2] - margins[0::2]) / 2) ** 2
    sd = math.sqrt(float(variances.sum()))
    certain = float(here[0] >= 0)
    probability = certain if sd == 0 else 0.5 * (1 + math.erf(float(here[0]) / sd / math.sqrt(2)))
    return FirstOrder(probability, variances, float(drawn.var()))
