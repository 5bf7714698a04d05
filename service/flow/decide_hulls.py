"""Say of which hull model a boat is, where that is sure: for records that come in without one."""

from __future__ import annotations

from service.core.boat import BoatForm
from service.flow.hull_index import hull_index
from service.flow.resolve import hull_of
from service.flow.take_rows import Decide
from service.store.unit import UnitOfWork


def decider(uow: UnitOfWork) -> Decide:
    """Return a function that gives the id of a form's hull model where it is matched, None where it is not."""
    index = hull_index(uow)

    def decide(form: BoatForm) -> str | None:
        found = hull_of(index, form)
        return found.model.id if found and found.model else None

    return decide
