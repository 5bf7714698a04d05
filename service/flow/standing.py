"""Records under the hull models that stand for theirs."""

from __future__ import annotations

from collections.abc import Iterable

from service.core.record import Record
from service.store.unit import UnitOfWork


def under_survivors(uow: UnitOfWork, records: Iterable[Record]) -> tuple[Record, ...]:
    """Return the records as they stand, each that names a merged hull model with the one it leads to.

    What is written keeps the id it was written with, so that a merge can be taken back.
    """
    leads = uow.hulls.survivors()
    if not leads:
        return tuple(records)
    return tuple(r.model_copy(update={"hull": leads[r.hull]}) if r.hull in leads else r for r in records)
