"""How sure a fit is: on each draw of the boat the fitter plumbs the shaft and settles what the chosen metal allows.

Configuration, offset and shaft length stay; shaft axis, collar heights, shaft bottom and pads settle anew.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.fit.checks import Sheet, Spot, evaluate
from service.core.fit.kit import Kit
from service.core.fit.place import FAR, aim, climb
from service.core.fit.shapes import Doubt
from service.core.fit.site import Site, skin

Array = NDArray[np.float64]
DISAGREEMENT = 0.1
"""First-order and Monte Carlo probabilities further apart than this are flagged."""
OFFSET = 0
ROUNDS = 7


def settle(nominal: Site, site: Site, kit: Kit, spot: Spot, rules: Rules, *, best: bool = False) -> Sheet:
    """Return the checks of each row of `site` after settling there; `best`: settle to the best, not merely to a pass."""
    at = _carried(nominal, site, kit, spot)
    value = aim(evaluate(site, kit, at, rules, far=FAR))
    fixed = (at.y, at.y)
    reached, _ = climb(
        site, kit, at, rules, fixed, rounds=2 * ROUNDS if best else ROUNDS, locked=(OFFSET,), best=value,
        enough=None if best else 0.0, step=0.5,
    )  # fmt: skip
    return evaluate(site, kit, reached, rules, far=FAR)


def _carried(nominal: Site, site: Site, kit: Kit, spot: Spot) -> Spot:
    """Return the nominal placement carried to each row: collars keep their place below the top edge, the blade its depth.

    The axis moves with the mean of the skin under both flanges, as plumbing the shaft would move it.
    """
    n = site.rows
    drop = site.top - nominal.top
    rows = [np.broadcast_to(a, (n,)) for a in (spot.y, spot.x, spot.lower + drop, spot.upper + drop, spot.bottom)]
    y, x, lower, upper, bottom = rows
    shift = np.zeros(n)
    for mount, collar, before in ((kit.lower, lower, spot.lower), (kit.upper, upper, spot.upper)):
        shift = shift + skin(site, y, collar - mount.rise).x - skin(nominal, spot.y, before - mount.rise).x
    return Spot(y, x + shift / 2, lower, upper, bottom)


def passing(sheet: Sheet) -> NDArray[np.bool_]:
    """Say for each row whether every check that binds passes."""
    return np.asarray(sheet.smallest() >= 0)


@dataclass(frozen=True)
class FirstOrder:
    """Probability and variance of the smallest scaled margin by first-order propagation from star points."""

    probability: float
    variances: Array

    def shares(self, fields: list[str]) -> tuple[Doubt, ...]:
        """Return each factor's share of the variance, largest first, the three axes of an obstacle together."""
        total = float(self.variances.sum())
        if total <= 0:
            return ()
        by_field: dict[str, float] = {}
        for field, part in zip(fields, self.variances, strict=True):
            name = field.rsplit(".", 1)[0] if field.startswith("obstacles[") else field
            by_field[name] = by_field.get(name, 0.0) + float(part) / total
        ranked = sorted(by_field.items(), key=lambda item: -item[1])
        return tuple(Doubt(field=field, share=round(share, 4)) for field, share in ranked if share >= 5e-5)  # noqa: PLR2004 - rounds to nothing


def first_order(nominal: Site, star: Site, kit: Kit, spot: Spot, rules: Rules) -> FirstOrder:
    """Return first-order propagation (JCGM 100, 5.1.2) of the smallest scaled margin, settled at each star point."""
    at_nominal = float(evaluate(nominal, kit, spot, rules).governing().min(axis=0)[0])
    margins = settle(nominal, star, kit, spot, rules, best=True).governing().min(axis=0)
    variances = ((margins[1::2] - margins[0::2]) / 2) ** 2
    sd = math.sqrt(float(variances.sum()))
    if sd == 0:
        return FirstOrder(float(at_nominal >= 0), variances)
    return FirstOrder(0.5 * (1 + math.erf(at_nominal / sd / math.sqrt(2))), variances)
