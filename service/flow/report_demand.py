"""What is needed of what, and what will be: the database counts, the rest is arithmetic on some thousand counts."""

from __future__ import annotations

from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor

from service.core.demand.ledger import Asked, Counts, Ledger
from service.core.report import Report, Table
from service.flow.software import SOFTWARE
from service.store.demand import Counting
from service.store.unit import UnitOfWork


def report_demand(uow: UnitOfWork, asked: Asked, more: Sequence[Table] = ()) -> Report:
    """Return the report, as the records stand in one moment. `more` are tables put behind its own.

    The statistics library, which takes longest to load, is loaded while the database counts.
    """
    with ThreadPoolExecutor(1) as aside:
        ledger = aside.submit(counted, uow, asked)
        from service.core.demand.compose import compose  # noqa: PLC0415 - the same

        return compose(asked, ledger.result(), SOFTWARE, more)


def counted(uow: UnitOfWork, asked: Asked) -> Ledger:
    """Return what the database says."""
    with uow:
        found = uow.demand.counted(Counting(asked.statuses, asked.first, asked.end))
        return Ledger(Counts(found.by_month, found.by_place), found.statuses, found.merged, uow.catalogues.latest())
