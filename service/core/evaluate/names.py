"""How well names are resolved, on queries whose hull model is known or known to be missing.

A resolver is anything that gives a `Guess` for a `NameQuery`; `by_resolve` is the service's own, `by_wratio` the floor
it is held against: the best plain likeness over all names. Rates come with Wilson's interval at 95 %.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass, field

from rapidfuzz import fuzz, process, utils
from scipy.stats import binomtest

from service.core.boat import Shape
from service.core.hulls import Candidates, parse_name, resolve
from service.core.record import HullModel

_SHOWN = 3
_KEPT = 0.95
_BINS = 10


@dataclass(frozen=True)
class NameQuery:
    """A name as asked for, and the ids that would be right: none where the model is not in the registry.

    `family` says what kind of variant it is; `sibling`, that it is missing while a model of the same words with another
    number is known. Lengths in mm.
    """

    name: str
    wanted: frozenset[str]
    builder: str | None = None
    year: int | None = None
    loa_mm: float | None = None
    beam_mm: float | None = None
    family: str = "as it came"
    sibling: bool = False


@dataclass(frozen=True)
class Guess:
    """Ids, best first; the probability (or likeness) of the first; whether it is taken, and whether one is asked."""

    ids: tuple[str, ...] = ()
    probability: float = 0.0
    taken: bool = False
    asked: bool = False


Guesser = Callable[[NameQuery], Guess]


class Rate(Shape):
    """A share with its interval: `hits` of `of`, and between `low` and `high` at 95 % (Wilson). None of nothing."""

    hits: int
    of: int
    share: float | None
    low: float | None
    high: float | None


class Bin(Shape):
    """Guesses of like probability: how many, what they said on average, and how many were right."""

    low: float
    high: float
    count: int
    said: float
    right: float


class NameScores(Shape):
    """What the guesses were worth.

    `top1` and `top3` look at the first guesses whatever came of them; `offered` counts only what a person gets to see:
    the right model taken, or among those asked about. `threshold` is the probability that 0.95 of the right first guesses
    reach, and `absent_accepted` the share of missing models whose first guess reaches it too. `absent_taken`,
    `sibling_taken` and `wrong_taken` are what was taken without asking though it was missing, was the numbered sibling of
    a missing one, or was another model.
    """

    top1: Rate
    top3: Rate
    offered: Rate
    asked: Rate
    threshold: float
    absent_accepted: Rate
    absent_taken: Rate
    sibling_taken: Rate
    wrong_taken: Rate
    calibration: tuple[Bin, ...]
    calibration_error: float
    log_loss: float
    families: dict[str, Rate]
    """Top-1 by family; for missing models, the share not taken."""


def rate(hits: int, of: int) -> Rate:
    """Return a share with Wilson's interval.

    >>> rate(8, 10).share, round(rate(8, 10).low, 3), round(rate(8, 10).high, 3)  # known values, e.g. Newcombe 1998
    (0.8, 0.49, 0.943)
    """
    if not of:
        return Rate(hits=0, of=0, share=None, low=None, high=None)
    interval = binomtest(hits, of).proportion_ci(method="wilson")
    return Rate(hits=hits, of=of, share=hits / of, low=float(interval.low), high=float(interval.high))


def by_resolve(known: Candidates) -> Guesser:
    """Return the service's own resolver over the models known."""

    def guess(query: NameQuery) -> Guess:
        found = resolve(
            known, query.name, builder=query.builder, year=query.year, loa_mm=query.loa_mm, beam_mm=query.beam_mm
        )
        first = (found.model.id,) if found.model else ()
        ids = (*first, *(one.model.id for one in found.alternatives))
        return Guess(ids[:_SHOWN], found.probability, found.status == "matched", found.status == "several")

    return guess


def by_wratio(models: Iterable[HullModel]) -> Guesser:
    """Return the floor: rapidfuzz's WRatio over builder and model, aliases too; a first guess is always taken."""
    texts = [(text, model.id) for model in models for text in (str(model), *model.aliases)]
    names = [utils.default_process(text) for text, _ in texts]

    def guess(query: NameQuery) -> Guess:
        asked = utils.default_process(f"{query.builder or ''} {query.name}")
        found = process.extract(asked, names, scorer=fuzz.WRatio, processor=None, limit=_SHOWN)
        if not found:
            return Guess()
        return Guess(tuple(texts[place][1] for _, _, place in found), found[0][1] / 100, taken=True)

    return guess


def has_sibling(model: HullModel, known: Iterable[HullModel]) -> bool:
    """Say whether a known model is called by the same words with another number."""
    mine = parse_name(model.model, ())
    return any(
        other.words == mine.words and other.number != mine.number
        for other in (parse_name(one.model, ()) for one in known)
    )


@dataclass
class _Tally:
    found: list[tuple[NameQuery, Guess, bool]] = field(default_factory=list)

    def of(self, keep: Callable[[NameQuery], bool], hit: Callable[[NameQuery, Guess, bool], bool]) -> Rate:
        """Return how often `hit` among the queries to `keep`."""
        kept = [one for one in self.found if keep(one[0])]
        return rate(sum(hit(*one) for one in kept), len(kept))


def score_names(queries: Sequence[NameQuery], guess: Guesser) -> NameScores:
    """Return what the guesses for `queries` are worth."""
    tally = _Tally(
        [(query, got, bool(got.ids) and got.ids[0] in query.wanted) for query in queries for got in [guess(query)]]
    )
    sure = sorted(got.probability for _, got, right in tally.found if right)
    threshold = sure[math.floor(len(sure) * (1 - _KEPT))] if sure else 1.0
    bins = calibration([(got.probability, right) for _, got, right in tally.found if got.ids])
    return NameScores(
        top1=tally.of(_known, lambda _q, _g, right: right),
        top3=tally.of(_known, lambda query, got, _: bool(query.wanted & set(got.ids[:_SHOWN]))),
        offered=tally.of(_known, _offers),
        asked=tally.of(lambda _: True, lambda _q, got, _: got.asked),
        threshold=threshold,
        absent_accepted=tally.of(_absent, lambda _q, got, _: bool(got.ids) and got.probability >= threshold),
        absent_taken=tally.of(_absent, lambda _q, got, _: got.taken),
        sibling_taken=tally.of(lambda query: query.sibling, lambda _q, got, _: got.taken),
        wrong_taken=tally.of(_known, lambda _q, got, right: got.taken and not right),
        calibration=bins,
        calibration_error=sum(one.count * abs(one.said - one.right) for one in bins)
        / max(sum(b.count for b in bins), 1),
        log_loss=_log_loss([(got.probability, right) for _, got, right in tally.found if got.ids]),
        families=_by_family(tally),
    )


def calibration(said: Iterable[tuple[float, bool]]) -> tuple[Bin, ...]:
    """Return (probability, right or not) gathered into ten bins of equal width; empty ones are left out."""
    binned: dict[int, list[tuple[float, bool]]] = defaultdict(list)
    for probability, right in said:
        binned[min(int(probability * _BINS), _BINS - 1)].append((probability, right))
    return tuple(
        Bin(
            low=place / _BINS,
            high=(place + 1) / _BINS,
            count=len(all_of_them),
            said=sum(p for p, _ in all_of_them) / len(all_of_them),
            right=sum(right for _, right in all_of_them) / len(all_of_them),
        )
        for place, all_of_them in sorted(binned.items())
    )


def _log_loss(said: Collection[tuple[float, bool]]) -> float:
    """Return the mean surprise in nats; a probability is kept a millionth off 0 and 1."""
    kept = [(min(max(p, 1e-6), 1 - 1e-6), right) for p, right in said]
    return -sum(math.log(p if right else 1 - p) for p, right in kept) / max(len(kept), 1)


def _by_family(tally: _Tally) -> dict[str, Rate]:
    right: dict[str, list[bool]] = defaultdict(list)
    for query, got, first in tally.found:
        right[query.family].append(first if query.wanted else not got.taken)
    return {name: rate(sum(hits), len(hits)) for name, hits in right.items()}


def _known(query: NameQuery) -> bool:
    return bool(query.wanted)


def _offers(query: NameQuery, got: Guess, right: bool) -> bool:  # noqa: FBT001 - as every hit is called
    return (got.taken and right) or (got.asked and bool(query.wanted & set(got.ids[:_SHOWN])))


def _absent(query: NameQuery) -> bool:
    return not query.wanted
