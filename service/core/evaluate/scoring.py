"""Scores of one method over the boats that were asked for."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.evaluate.calibration import WIDTH_BINS, binned, error, mass_places, width_places
from service.core.evaluate.floors import Chances
from service.core.evaluate.intervals import resampled
from service.core.evaluate.shapes import Bin, Score
from service.core.record import Record

Floats = NDArray[np.float64]
Places = NDArray[np.int64]


@dataclass(frozen=True)
class Foretold:
    """What was said for one boat: the chance of what was put first, of what was installed, and where that stood."""

    hull: str | None
    said: float
    truth: float
    place: int
    """From 0; -1 where it was given no chance."""


@dataclass(frozen=True)
class Scored:
    """A method's score and the bins of its reliability plot."""

    score: Score
    width: tuple[Bin, ...]
    mass: tuple[Bin, ...]


def foretold(record: Record, chances: Chances) -> Foretold:
    """Return what was said for a record's boat; of equal chances the one named first is put first."""
    order = sorted(chances, key=lambda one: -chances[one])
    truth = chances.get(record.configuration, 0.0)
    return Foretold(
        hull=record.hull,
        said=chances[order[0]] if order else 0.0,
        truth=truth,
        place=order.index(record.configuration) if truth > 0 else -1,
    )


def scored(method: str, cases: Sequence[Foretold], least: float, *, seed: int, by_group: bool) -> Scored:
    """Return a method's score; with `by_group` the intervals draw whole hull models. ValueError where nothing was asked."""
    if not cases:
        raise ValueError("nothing was asked, so nothing can be scored")
    said = np.array([case.said for case in cases])
    place = np.array([case.place for case in cases])
    loss = -np.log(np.maximum([case.truth for case in cases], least))
    hulls = {name: n for n, name in enumerate(dict.fromkeys(case.hull for case in cases))}
    groups = np.array([hulls[c.hull] for c in cases]) if by_group else np.arange(len(cases))
    first, third = place == 0, (place >= 0) & (place < 3)  # noqa: PLR2004 - the first three

    width, mass = width_places(said), mass_places(said)

    def off(bins: Places) -> Callable[[Places], float]:
        return lambda at: error(said[at], first[at], bins[at])

    score = Score(
        method=method,
        count=len(cases),
        top1=resampled(lambda at: float(first[at].mean()), groups, seed=seed),
        top3=resampled(lambda at: float(third[at].mean()), groups, seed=seed),
        log_loss=resampled(lambda at: float(loss[at].mean()), groups, seed=seed),
        listed=float((place >= 0).mean()),
        said=float(said.mean()),
        calibration_error=resampled(off(width), groups, seed=seed),
        calibration_error_mass=resampled(off(mass), groups, seed=seed),
    )
    return Scored(score, binned(said, first, width, 1 / WIDTH_BINS), binned(said, first, mass))
