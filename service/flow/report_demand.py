"""What is needed of what, and what will be: the database counts, the rest is arithmetic on some thousand counts."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.demand.cells import Counts
from service.core.demand.compose import Asked, Ledger, compose
from service.core.report import Report, Table
from service.flow.known import SOFTWARE
from service.store.demand import Counting
from service.store.unit import UnitOfWork


def report_demand(uow: UnitOfWork, asked: Asked, more: Sequence[Table] = ()) -> Report:
    """Return the report, as the records stand in one moment. `more` are tables put behind its own."""
    counting = Counting(asked.statuses, asked.first, asked.end)
    with uow:
        counts = Counts(uow.demand.by_month(counting), uow.demand.by_place(counting))
        ledger = Ledger(counts, uow.demand.statuses(counting), uow.demand.merged(), uow.catalogues.latest())
    return compose(asked, ledger, SOFTWARE, more)
