"""Learn the weights of likeness and votes from the fleet, and take them into use where they foretell better."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from service.core.evaluate.configurations import BUILT_IN, GROUPS, LEARNED, evaluate
from service.core.evaluate.shapes import Configurations, Score
from service.core.recall import WEIGHTS, Weights
from service.core.recall.calibrate import learned
from service.core.recall.learn import TooFewError
from service.flow.evaluate import ledger_of
from service.flow.known import remembered
from service.flow.refusal import Refused
from service.store.recall_weights import Learned
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Refit:
    """What was learned: kept (with its version), or not because it foretells worse; gains in nats a boat, by way."""

    kept: Learned | None
    gains: dict[str, float]
    evaluation: Configurations
    why: str


@dataclass(frozen=True)
class InUse:
    """The weights in use, with their history where they were learned."""

    weights: Weights
    learned: Learned | None
    records: int


def refit_weights(
    uow: UnitOfWork, *, groups: int = GROUPS, progress: Callable[[int], None] = lambda _done: None
) -> Refit:
    """Learn weights and keep them where they raise the mean log likelihood of what was held out, by time and by hull.

    Judged on weights learned without what was held out (`groups` of whole hull models); then learned from all. Where
    they do not, nothing is changed. Refused where too few records are installed.
    """
    with uow:
        ledger = ledger_of(uow)
        try:
            weights = learned(ledger.records, ledger.hulls, makes=ledger.makes)
        except TooFewError as error:
            raise Refused(f"{error}; the weights built in are used until then") from None
        found = evaluate(ledger, groups=groups, progress=progress)
        gains = {str(h.by): gain for h in found.holdouts if (gain := _gain(h.scores)) is not None}
        mean = sum(gains.values()) / len(gains) if gains else 0.0
        if mean <= 0 or not gains:
            return Refit(None, gains, found, "they foretell no better than those built in; nothing was changed")
        kept = uow.recall_weights.add(weights, records=len(ledger.records), gains=gains)
        uow.commit()
    return Refit(kept, gains, found, "they foretell better than those built in")


def _gain(scores: tuple[Score, ...]) -> float | None:
    loss = {score.method: score.log_loss.value for score in scores}
    return loss[BUILT_IN] - loss[LEARNED] if {LEARNED, BUILT_IN} <= loss.keys() else None


def weights_in_use(uow: UnitOfWork) -> InUse:
    """Return the weights that answers are made with."""
    with uow:
        kept = uow.recall_weights.latest()
        return InUse(kept.weights if kept else WEIGHTS, kept, len(remembered(uow).fleet.records))


def forget_weights(uow: UnitOfWork) -> int:
    """Take all learned weights away, so that those built in are used again. Returns how many there were."""
    with uow:
        gone = uow.recall_weights.forget()
        uow.commit()
    return gone
