"""Proposed against installed: records as they stand, with the answers that they came from."""

from __future__ import annotations

from collections.abc import Sequence

from service.core.demand.accuracy import Days, Pair, Said, compose
from service.core.evaluate.shapes import Bin
from service.core.proposal import SentAnswer
from service.core.record import Record
from service.core.report import LeftOut, Report
from service.flow.evaluate import evaluate_configurations
from service.flow.software import SOFTWARE
from service.store.unit import UnitOfWork


def report_accuracy(uow: UnitOfWork, days: Days, *, held_out: bool = False) -> Report:
    """Return the report. `held_out`: also test chances on the last records, weights learned without them; takes longer."""
    with uow:
        latest = uow.catalogues.latest()
        pairs, others, outside = list[Pair](), 0, 0
        for record in uow.records.each():
            if record.status != "installed":
                others += 1
            elif days.within(record.date):
                pairs.append(Pair(record, None if record.answer is None else _said(uow, record)))
            else:
                outside += 1
        bins = _bins(uow) if held_out else ()
    why = {
        "records not installed": (others, "nobody knows yet, or ever, what would be fitted"),
        "records outside the period": (outside, "installed outside the period, or after the day of the report"),
    }
    left = [LeftOut(what=what, count=count, why=text) for what, (count, text) in why.items() if count]
    return compose(pairs, days, left, bins, (latest.version if latest else None, SOFTWARE))


def _said(uow: UnitOfWork, record: Record) -> Said | None:
    """Return what the answer that a record came from had put forward; None where it is kept no more."""
    document = uow.answers.get(str(record.answer))
    if document is None:
        return None
    shown = SentAnswer.model_validate_json(document).suggestions
    return Said(
        tuple(str(one.configuration) for one in shown),
        tuple(one.probability or 0.0 for one in shown),
        tuple(one.fit.placement.model_dump() if one.fit.placement else None for one in shown),
    )


def _bins(uow: UnitOfWork) -> Sequence[Bin]:
    found = next((one for one in evaluate_configurations(uow).holdouts if one.by == "time"), None)
    return found.bins if found else ()
