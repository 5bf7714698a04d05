"""Configurations foretold for boats that were held out, by votes alone or with the solver's verdicts, beside the floors."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from service.core.evaluate.floors import Chances, MostCommon, NameAndNeighbours
from service.core.evaluate.scoring import Foretold, foretold, scored
from service.core.evaluate.shapes import Configurations, Holdout
from service.core.recall import WEIGHTS, Weights
from service.core.recall.calibrate import by_date, hull_groups, learned
from service.core.recall.fleet import Fleet
from service.core.recall.learn import TooFewError
from service.core.recall.menu import Makes
from service.core.recall.ranking import rank
from service.core.recall.votes import chances
from service.core.record import HullModel, Record

HELD_OUT = 0.2
GROUPS = 5
LEAST_CHANCE = 1e-4
"""What a configuration that was given no chance at all is taken to have been given: one in ten thousand."""
LEARNED, BUILT_IN, COMMON, NEIGHBOURS = (
    "weights learned", "weights built in", "most common",
    "WRatio, nearest",
)  # fmt: skip
VERDICTS, ALONE = "with verdicts", "votes alone"
By = Literal["time", "hull"]
Answered = Callable[[Fleet, Record], Chances]
"""What the service says for a record's boat, given a fleet that does not hold it."""
Progress = Callable[[int], None]


@dataclass(frozen=True)
class Split:
    """What is learned from, and what is asked then."""

    shown: Sequence[Record]
    asked: Sequence[Record]


@dataclass(frozen=True)
class Ledger:
    """The records to be split, the registry, and which configurations can be had."""

    records: Sequence[Record]
    hulls: Mapping[str, HullModel]
    makes: Makes | None = None


def by_time(records: Sequence[Record], share: float = HELD_OUT) -> list[Split]:
    """Return one split: the last `share` of the records by date is held out, what was installed of it asked."""
    ordered = by_date(records)
    cut = len(ordered) - round(share * len(ordered))
    return [Split(ordered[:cut], _installed(ordered[cut:]))]


def by_hull(records: Sequence[Record], groups: int = GROUPS) -> list[Split]:
    """Return splits that hold out whole hull models, every one of them once; boats without one are in a group too."""
    found = [
        Split([r for r in records if r.hull not in held], _installed([r for r in records if r.hull in held]))
        for held in hull_groups(records, groups)
    ]
    return [split for split in found if split.asked and split.shown]


def _installed(records: Sequence[Record]) -> list[Record]:
    return [record for record in records if record.status == "installed"]


def evaluate(
    ledger: Ledger, *, groups: int = GROUPS, seed: int = 1, progress: Progress = lambda _done: None
) -> Configurations:
    """Return how well votes alone foretell what was installed, held out by time and by whole hull model.

    On each split the weights are learned and calibrated anew from what is shown, so that nothing of what is asked has
    gone into them. The built-in weights stand beside them, and both floors.
    """
    ways: tuple[tuple[By, list[Split]], ...] = (
        ("time", by_time(ledger.records)),
        ("hull", by_hull(ledger.records, groups)),
    )
    found, cautions = [], []
    for by, splits in ways:
        if not any(split.asked for split in splits):
            cautions.append(f"nothing could be held out by {by}: too few records are installed")
            continue
        tested = _tested(ledger, splits, progress)
        if LEARNED not in tested:
            cautions.append(
                f"by {by}: too few records are installed to learn weights from; the built-in ones stand alone"
            )
        found.append(_holdout(by, splits, tested, "alone", seed))
    return Configurations(least_chance=LEAST_CHANCE, holdouts=tuple(found), cautions=tuple(cautions))


def evaluate_answered(
    ledger: Ledger, answered: Answered, count: int, *, seed: int = 1, progress: Progress = lambda _done: None
) -> Configurations:
    """Return how well whole answers foretell what was installed, over at most `count` boats a way of holding out.

    The boats are evenly spread over what is held out; `answered` sets candidates on the boat and weighs the verdicts.
    Votes alone stand beside it, on the same boats.
    """
    ways: tuple[tuple[By, list[Split]], ...] = (("time", by_time(ledger.records)), ("hull", by_hull(ledger.records)))
    found = []
    for by, splits in ways:
        few = _thinned(splits, count)
        tested: dict[str, list[Foretold]] = {VERDICTS: [], ALONE: []}
        for split in few:
            fleet = _fleet(ledger, split, _weights(ledger, split) or WEIGHTS)
            for record in split.asked:
                tested[VERDICTS].append(foretold(record, answered(fleet, record)))
                tested[ALONE].append(foretold(record, voted(fleet, record)))
                progress(1)
        if few:
            found.append(_holdout(by, few, tested, "with verdicts", seed))
    return Configurations(least_chance=LEAST_CHANCE, holdouts=tuple(found))


def voted(fleet: Fleet, record: Record) -> Chances:
    """Return what the votes say for a record's boat."""
    found = chances(fleet, rank(fleet, record.form, record.hull))
    return dict(zip(fleet.menu.configurations, found.tolist(), strict=True))


def _tested(ledger: Ledger, splits: Sequence[Split], progress: Progress) -> dict[str, list[Foretold]]:
    tested: dict[str, list[Foretold]] = {}
    for split in splits:
        for method, ask in _methods(ledger, split):
            tested.setdefault(method, []).extend(foretold(record, ask(record)) for record in split.asked)
            progress(1)
    return tested


def _methods(ledger: Ledger, split: Split) -> Iterator[tuple[str, Callable[[Record], Chances]]]:
    weights = _weights(ledger, split)
    if weights is not None:
        taught = _fleet(ledger, split, weights)
        yield LEARNED, lambda record: voted(taught, record)
    plain = _fleet(ledger, split, WEIGHTS)
    yield BUILT_IN, lambda record: voted(plain, record)
    common, neighbours = MostCommon(split.shown), NameAndNeighbours(split.shown, ledger.hulls)
    yield COMMON, lambda record: common(record.form)
    yield NEIGHBOURS, lambda record: neighbours(record.form)


def _weights(ledger: Ledger, split: Split) -> Weights | None:
    try:
        return learned(split.shown, ledger.hulls, makes=ledger.makes)
    except TooFewError:
        return None


def _fleet(ledger: Ledger, split: Split, weights: Weights) -> Fleet:
    return Fleet.build(split.shown, ledger.hulls, weights, makes=ledger.makes)


def _thinned(splits: Sequence[Split], count: int) -> list[Split]:
    """Return the splits with `count` boats asked in all, evenly spread."""
    places = [(n, record) for n, split in enumerate(splits) for record in split.asked]
    chosen = {int(p) for p in np.linspace(0, len(places) - 1, min(count, len(places)))} if places else set()
    return [
        Split(split.shown, asked)
        for n, split in enumerate(splits)
        if (asked := [record for at, (of, record) in enumerate(places) if of == n and at in chosen])
    ]


def _holdout(
    by: By,
    splits: Sequence[Split],
    tested: Mapping[str, Sequence[Foretold]],
    votes: Literal["alone", "with verdicts"],
    seed: int,
) -> Holdout:
    what = (
        f"the last {HELD_OUT:.0%} of the records by date"
        if by == "time"
        else f"whole hull models, in {len(splits)} groups, each asked of all the others"
    )
    all_scored = [scored(m, cases, LEAST_CHANCE, seed=seed, by_group=by == "hull") for m, cases in tested.items()]
    return Holdout(
        by=by,
        what=what,
        votes=votes,
        trained=round(sum(len(split.shown) for split in splits) / len(splits)),
        scores=tuple(one.score for one in all_scored),
        bins=all_scored[0].width,
        bins_mass=all_scored[0].mass,
    )
