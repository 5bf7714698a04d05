"""Bring up precedents for a boat form."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.boat import BoatForm
from service.core.hulls import HullDecision, HullIndex
from service.core.recall import Fleet, Recall, recall
from service.flow.resolve import hull_of
from service.flow.standing import under_survivors
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class Recalled:
    """Which hull the boat was taken for, and what the fleet remembers."""

    hull: HullDecision | None
    recall: Recall


def recall_form(uow: UnitOfWork, form: BoatForm) -> Recalled:
    """Return precedents and votes for a form, unchecked by any fit."""
    hulls = uow.hulls.all()
    fleet = Fleet.build(under_survivors(uow, uow.records.all()), {hull.id: hull for hull in hulls})
    decision = hull_of(HullIndex.build(hulls), form)
    hull_id = decision.model.id if decision and decision.model else None
    return Recalled(decision, recall(fleet, form, hull=hull_id))
