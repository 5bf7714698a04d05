"""Which configurations of the whole catalogue are worth placing on this boat: the simplest that pass.

The configurations are asked in the order of simplicity until enough pass. Before that each pair of brackets is asked
alone, with a shaft that reaches any head and touches nothing: where not even that passes, no shaft can.
Where nothing passes the same is asked of the least miss: what cannot beat the best found so far is left out.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Catalogue, Configuration
from service.core.fit.kit import Kit, build
from service.core.fit.place import LIES, Lie, place
from service.core.fit.screen import GAIN, any_shaft, better
from service.core.fit.shapes import Fit
from service.core.fit.side_by_side import side_by_side
from service.core.fit.site import S, Site

KEEP = 12
FEW, MOST = 24, 768
"""Configurations asked at a time: few at first, for the answer may be known then, and twice as many each time."""
Pair = tuple[str, str, str]
"""A gear with its lower and its upper bracket."""
MISSES = 12
"""The best misses of a quick look that are placed in full, to tell which misses by least."""


@dataclass(frozen=True)
class Assortment:
    """Configurations of a catalogue in the order of simplicity; what each pairs, and its shaft; their metal as arrays."""

    every: tuple[Configuration, ...]
    parts: tuple[tuple[Pair, str], ...]
    kit: Kit


class _Same:
    """A catalogue as a key: equal to itself alone, for to compare two whole ones takes longer than a survey."""

    def __init__(self, catalogue: Catalogue) -> None:
        self.catalogue = catalogue

    def __hash__(self) -> int:
        return id(self.catalogue)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and self.catalogue is other.catalogue


@lru_cache(maxsize=4)
def _assortment(of: _Same) -> Assortment:
    every = sorted(of.catalogue.configurations(), key=Burdens(of.catalogue))
    return Assortment(tuple(every), tuple(map(_parts, every)), build(of.catalogue, every))


def _parts(one: Configuration) -> tuple[Pair, str]:
    return (one.gear, one.lower, one.upper), one.shaft


def makeable(site: Site, catalogue: Catalogue) -> Assortment:
    """Return every configuration for a gear that may go on the boat, or for any where she is too heavy for all."""
    heavy, whole = float(site.values[0, S.DISPLACEMENT]), _assortment(_Same(catalogue))
    able = {gear.code for gear in catalogue.gears if heavy <= gear.max_displacement_kg}
    if not able or len(able) == len(catalogue.gears):
        return whole
    places = [n for n, (pair, _) in enumerate(whole.parts) if pair[0] in able]
    every, parts = tuple(whole.every[n] for n in places), tuple(whole.parts[n] for n in places)
    return Assortment(every, parts, Kit(*(rows[places] for rows in whole.kit)))


class Survey:
    """One boat and an assortment, and which pairs of brackets are known to beat an aim."""

    def __init__(self, site: Site, catalogue: Catalogue, lies: tuple[Lie, ...], able: Assortment) -> None:
        self.every, self.kit = able.every, able.kit
        self.site, self.catalogue, self.lies = site, catalogue, lies
        self.longest = any_shaft(self.kit)
        self.pair = [pair for pair, _ in able.parts]
        self.rough = np.full(len(self.every), -np.inf)

    def beating(self, places: Sequence[int], enough: float, known: dict[Pair, bool]) -> float:
        """Ask configurations by their places whether they beat `enough`; note a rough aim of each. Return `enough` as risen.

        `known` keeps the pairs that were asked alone.
        """
        new = list({self.pair[n]: n for n in places if self.pair[n] not in known}.values())
        alone, _ = self._ask(self.longest, new, enough)
        known.update({self.pair[n]: bool(aim >= enough) for n, aim in zip(new, alone, strict=True)})
        likely = [n for n in places if known[self.pair[n]]]
        aims, risen = self._ask(self.kit, likely, enough)
        self.rough[likely] = np.maximum(self.rough[likely], aims)
        return risen

    def _ask(self, kit: Kit, places: Sequence[int], enough: float) -> tuple[NDArray[np.float64], float]:
        """Return an aim of each, and `enough` as risen; in two halves at a time, each of every other configuration."""

        def half(some: Sequence[int]) -> tuple[NDArray[np.float64], float]:
            return better(self.site, kit, self.catalogue.rules, self.lies, np.array(some, dtype=np.intp), enough)

        aims = np.empty(len(places))
        (aims[0::2], one), (aims[1::2], other) = side_by_side(half, (places[0::2], places[1::2]))
        return aims, max(one, other)


def promising(
    site: Site,
    catalogue: Catalogue,
    *,
    lies: tuple[Lie, ...] = LIES,
    keep: int = KEEP,
    beside: Collection[Configuration] = (),
) -> list[Configuration]:
    """Return the simplest configurations that pass, simplest first, then what misses by least; `keep` at most.

    What is `beside` these is put forward anyhow, and left out.
    """
    able = makeable(site, catalogue)
    if not able.every:
        return []
    survey = Survey(site, catalogue, lies, able)
    own = set(map(_parts, beside))
    new = np.array([parts not in own for parts in able.parts])
    known: dict[Pair, bool] = {}
    for places in growing(len(survey.every)):
        survey.beating(places, 0.0, known)
        if (new & (survey.rough >= 0)).sum() >= keep:
            break
    passing = survey.rough >= 0
    good = [int(n) for n in np.flatnonzero(passing & new)[:keep]]
    if len(good) < keep:
        missed = _least_missed(survey, keep + len(beside) - int(passing.sum()), alone=not passing.any())
        good += [n for n in missed if new[n]]
    return [survey.every[n] for n in good[:keep]]


def growing(count: int) -> Iterator[range]:
    """Yield the places of so many things in order, few at first and more each time."""
    first, size = 0, FEW
    while first < count:
        yield range(first, min(first + size, count))
        first, size = first + size, min(2 * size, MOST)


def _least_missed(survey: Survey, keep: int, *, alone: bool) -> list[int]:
    """Return places of the least misses; `alone`: nothing passes, so the very least of all is looked for."""
    seen = [int(n) for n in np.argsort(-survey.rough, kind="stable") if survey.rough[n] < 0]
    if not seen:
        return []
    if alone:
        enough = min(float(_placed(survey, seen[:MISSES]).max()) + GAIN, 0.0)
        known: dict[Pair, bool] = {}
        for first in range(
            0, len(seen), FEW
        ):  # no more at a time: each few learn from those before how little is a miss
            enough = survey.beating(seen[first : first + FEW], enough, known)
        seen.sort(key=lambda n: -survey.rough[n])
    nearest = seen[: max(keep, MISSES)]
    aims = _placed(survey, nearest)
    return [nearest[int(n)] for n in np.argsort(-aims, kind="stable")][:keep]


def _placed(survey: Survey, places: Sequence[int]) -> NDArray[np.float64]:
    """Return the aims of some configurations placed in full."""
    kit = build(survey.catalogue, [survey.every[n] for n in places])
    aims: NDArray[np.float64] = place(survey.site, kit, survey.catalogue.rules, lies=survey.lies).aims.max(axis=1)
    return aims


class Burdens:
    """The order of simplicity as far as it is known before placing: struts, arm length, mass, price."""

    def __init__(self, catalogue: Catalogue) -> None:
        self.things = {g.code: (g.mass_kg, g.price) for g in catalogue.gears}
        self.things |= {s.code: (s.mass_kg, s.price) for s in catalogue.shafts}
        self.things |= {b.code: (b.mass_kg, b.price) for b in catalogue.brackets}
        self.arms = {b.code: (sum(b.reach_mm) / 2, b.struts.count if b.struts else 0) for b in catalogue.brackets}

    def __call__(self, one: Configuration) -> tuple[float, ...]:
        """Return what sorts a configuration; KeyError names a code that the catalogue does not hold."""
        mass, price, reach, struts = self.of(one)
        return struts, round(reach), mass, price

    def of(self, one: Configuration) -> tuple[float, float, float, float]:
        """Return mass (kg), price, the sum of both middle reaches (mm) and the number of struts."""
        things = [self.things[code] for code in (one.gear, one.shaft, one.lower, one.upper)]
        arms = [self.arms[code] for code in (one.lower, one.upper)]
        return sum(t[0] for t in things), sum(t[1] for t in things), sum(a[0] for a in arms), sum(a[1] for a in arms)


def simplicity(catalogue: Catalogue, fit: Fit) -> tuple[float, ...]:
    """Return what a fitter would rather have less of: struts and pads, arm length, mass and price."""
    mass, price, reach, struts = burden(catalogue, fit.configuration)
    return struts + len(fit.pads), round(reach), mass, price


def burden(catalogue: Catalogue, one: Configuration) -> tuple[float, float, float, float]:
    """Return mass (kg), price, the sum of both middle reaches (mm) and the number of struts of a configuration."""
    return Burdens(catalogue).of(one)
