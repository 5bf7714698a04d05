"""Bring up precedents for a boat form."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.boat import BoatForm
from service.core.hulls import HullDecision
from service.core.recall import Recall
from service.core.recall.precedents import recall
from service.flow.hull_index import hull_index
from service.flow.known import remembered
from service.flow.resolve import hull_of
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Recalled:
    """Which hull the boat was taken for, and what the fleet remembers."""

    hull: HullDecision | None
    recall: Recall


def recall_form(uow: UnitOfWork, form: BoatForm) -> Recalled:
    """Return precedents and votes for a form, unchecked by any fit."""
    memory = remembered(uow)
    decision = hull_of(hull_index(uow), form)
    hull_id = decision.model.id if decision and decision.model else None
    return Recalled(decision, recall(memory.fleet, form, hull=hull_id))
