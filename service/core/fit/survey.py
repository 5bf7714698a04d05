"""Which configurations of the whole catalogue are worth placing on this boat.

First every pair of brackets, without regard to the shaft: a few placements of each show what its best margin could
be. Then the pairs that could pass, with every shaft. What is left out had no start within reach of passing.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Catalogue, Configuration
from service.core.fit.kit import build
from service.core.fit.place import LIES, Lie, reachable
from service.core.fit.shapes import Fit
from service.core.fit.site import S, Site

Array = NDArray[np.float64]
PAIRS, KEEP = 30, 12


def promising(
    site: Site, catalogue: Catalogue, *, lies: tuple[Lie, ...] = LIES, keep: int = KEEP
) -> list[Configuration]:
    """Return the configurations with the best margins on a coarse grid, simplest of those that pass first."""
    by_pair: dict[tuple[str, str, str], list[Configuration]] = {}
    for one in catalogue.configurations():
        by_pair.setdefault((one.gear, one.lower, one.upper), []).append(one)
    able = [
        group for group in by_pair.values()
        if float(site.values[0, S.DISPLACEMENT]) <= catalogue.gear(group[0].gear).max_displacement_kg
    ] or list(by_pair.values())  # fmt: skip
    middles = [sorted(group, key=lambda c: catalogue.shaft(c.shaft).length_mm)[len(group) // 2] for group in able]
    score = reachable(site, build(catalogue, middles), catalogue.rules, lies=lies, any_shaft=True)
    rest = [c for i in _simplest_first(catalogue, middles, score)[:PAIRS] for c in able[i]]
    score = reachable(site, build(catalogue, rest), catalogue.rules, lies=lies, any_shaft=False)
    return [rest[i] for i in _simplest_first(catalogue, rest, score)[:keep]]


def _simplest_first(catalogue: Catalogue, configurations: list[Configuration], score: Array) -> list[int]:
    """Return places: what passes on the coarse grid, simplest first, then what misses by least."""

    def key(i: int) -> tuple[float, ...]:
        mass, price, reach, struts = burden(catalogue, configurations[i])
        return (0.0, struts, round(reach), mass, price) if score[i] >= 0 else (1.0, -score[i])

    return sorted(range(len(configurations)), key=key)


def simplicity(catalogue: Catalogue, fit: Fit) -> tuple[float, ...]:
    """Return what a fitter would rather have less of: struts and pads, arm length, mass and price."""
    mass, price, reach, struts = burden(catalogue, fit.configuration)
    return struts + len(fit.pads), round(reach), mass, price


def burden(catalogue: Catalogue, one: Configuration) -> tuple[float, float, float, float]:
    """Return mass (kg), price, the sum of both middle reaches (mm) and the number of struts of a configuration."""
    brackets = (catalogue.bracket(one.lower), catalogue.bracket(one.upper))
    things = (catalogue.gear(one.gear), catalogue.shaft(one.shaft), *brackets)
    reach = sum(sum(b.reach_mm) / 2 for b in brackets)
    struts = sum(b.struts.count for b in brackets if b.struts)
    return sum(t.mass_kg for t in things), sum(t.price for t in things), reach, struts
