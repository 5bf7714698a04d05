"""The configurations that a fleet can vote for: those it carries, and its pairs of brackets on its gears and shafts."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import product
from typing import Self

import numpy as np

from service.core.catalogue import Configuration
from service.core.recall.distance import Floats, Places
from service.core.recall.weights import Part
from service.core.record import Record

Makes = Callable[[Configuration], bool]
Code = tuple[str, ...]
_CALM = 2.0
"""Votes for nothing new, so that a first record alone does not say that everything else is new."""


def coded(part: Part, one: Configuration) -> Code:
    """Return what a vote for a part of a configuration is for: the pair of brackets, the gear with its shaft, or all."""
    if part == "brackets":
        return one.lower, one.upper
    if part == "shaft":
        return one.gear, one.shaft
    return one.gear, one.lower, one.upper, one.shaft


@dataclass(frozen=True, eq=False)
class Choices:
    """What the records chose of one part: each record's choice by its place, the choices and how often each was made."""

    chosen: Places
    codes: tuple[Code, ...]
    frequency: Floats
    news: float
    """The chance that the next record chooses what none did (Good 1953: the share of those chosen once)."""

    @classmethod
    def of(cls, part: Part, records: Sequence[Record], speaks_for: Floats) -> Self:
        """Return the choices of `records`, each counted for as much as it speaks."""
        codes = {code: n for n, code in enumerate(dict.fromkeys(coded(part, r.configuration) for r in records))}
        chosen = np.array([codes[coded(part, r.configuration)] for r in records], np.int64)
        counts = np.bincount(chosen, weights=speaks_for, minlength=len(codes))
        times = np.bincount(chosen[speaks_for > 0], minlength=len(codes))
        news = float((times == 1).sum() / (times.sum() + _CALM))
        return cls(chosen, tuple(codes), counts / max(counts.sum(), 1e-12), news)


@dataclass(frozen=True, eq=False)
class Menu:
    """Configurations with the place of each one's parts among the choices; `whole` is -1 where no record carries it."""

    configurations: tuple[Configuration, ...]
    whole: Places
    brackets: Places
    shaft: Places

    @classmethod
    def of(cls, whole: Choices, brackets: Choices, shaft: Choices, makes: Makes | None) -> Self:
        """Return all that is carried, then every pair of brackets with every gear and shaft that it can go with.

        `makes` says what can be had; without it a bracket goes with the gears it was seen with.
        """
        gears = {(code[0], role, code[place]) for code in whole.codes for role, place in (("lower", 1), ("upper", 2))}

        def able(gear: str, lower: str, upper: str) -> bool:
            return makes is not None or ((gear, "lower", lower) in gears and (gear, "upper", upper) in gears)

        carried = {code: place for place, code in enumerate(whole.codes)}
        mixed = [(g, low, up, s) for (low, up), (g, s) in product(brackets.codes, shaft.codes) if able(g, low, up)]
        found = [
            Configuration(gear=g, lower=low, upper=up, shaft=s) for g, low, up, s in dict.fromkeys([*carried, *mixed])
        ]
        if makes is not None:
            found = [one for one in found if makes(one)]
        pair = {code: place for place, code in enumerate(brackets.codes)}
        drive = {code: place for place, code in enumerate(shaft.codes)}
        return cls(
            tuple(found),
            np.array([carried.get(coded("whole", one), -1) for one in found], np.int64),
            np.array([pair[coded("brackets", one)] for one in found], np.int64),
            np.array([drive[coded("shaft", one)] for one in found], np.int64),
        )
