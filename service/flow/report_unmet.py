"""Boats that nothing fits: enquiries by their last answer, and records that were withdrawn; tried again, and new metal with them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from datetime import date

from service.core.answer.compose import Known
from service.core.catalogue import Catalogue
from service.core.demand.solve import Case
from service.core.demand.unmet import Asker, Found, Tried, checked, compose, tried, worth_trying
from service.core.proposal import SentAnswer
from service.core.record import Record
from service.core.report import LeftOut, Report
from service.flow.import_report import Advance, silent
from service.flow.known import gather
from service.flow.software import SOFTWARE
from service.store.last_answers import LastAnswer
from service.store.unit import UnitOfWork

MOST = 200
"""Boats that are solved for in one report; the last ones, for each takes seconds."""


@dataclass(frozen=True)
class Asked:
    """The day of the report, the period, and whether new metal is looked for; `most` boats are looked at again."""

    as_of: date
    first: date | None = None
    last: date | None = None
    solve: bool = True
    most: int = MOST

    def within(self, day: date | None) -> bool:
        """Say whether a boat asked about on that day counts; one without a day does where nothing bounds the period."""
        if day is None:
            return self.first is None
        return (self.first is None or day >= self.first) and day <= min(self.last or self.as_of, self.as_of)


def report_unmet(uow: UnitOfWork, asked: Asked, progress: Advance = silent) -> Report:
    """Return the report. NoCatalogueError where none is loaded: there is nothing to try boats against."""
    with uow:
        known = gather(uow)
        refused, answered, outside = _enquiries(uow, asked)
        given_up = [r for r in known.fleet.records if r.status == "withdrawn"]
    some = [*refused, *(_given_up(record) for record in given_up if asked.within(record.date))]
    outside += sum(not asked.within(record.date) for record in given_up)
    some.sort(key=lambda one: (one.day or date.min, one.case.reference))
    kept = some[-asked.most :]
    catalogues = worth_trying(known) if asked.solve else []
    boats = list(_tried(kept, known, catalogues, progress))
    unmet = [one for one in boats if not one.met]
    new = checked(unmet, known, catalogues) if catalogues else []
    why = {
        "boats outside the period": (outside, "asked about outside the period, or after the day of the report"),
        "earlier boats": (len(some) - len(kept), f"only the last {asked.most} are tried again; --most says how many"),
    }
    left = [LeftOut(what=what, count=count, why=text) for what, (count, text) in why.items() if count]
    found = Found(boats, new, answered, asked.solve, left)
    return compose(found, (asked.as_of, asked.first, asked.last), known.catalogue.version, SOFTWARE)


def _enquiries(uow: UnitOfWork, asked: Asked) -> tuple[list[Asker], int, int]:
    """Return boats whose last answer fits nothing, how many were answered within the period, and how many outside."""
    found, answered, outside = list[Asker](), 0, 0
    for one in uow.last_answers.each():
        if not asked.within(one.day.date()):
            outside += 1
            continue
        answered += 1
        answer = SentAnswer.model_validate_json(one.document)
        if not answer.fits:
            found.append(_asker(one, answer))
    return found, answered, outside


def _asker(one: LastAnswer, answer: SentAnswer) -> Asker:
    return Asker(Case(one.enquiry, answer.form, answer.hull_id), "enquiry", one.day.date())


def _given_up(record: Record) -> Asker:
    return Asker(Case(record.reference, record.form, record.hull), "withdrawn record", record.date)


def _tried(some: Sequence[Asker], known: Known, catalogues: Sequence[Catalogue], progress: Advance) -> Iterator[Tried]:
    with ThreadPoolExecutor() as threads:
        for one in threads.map(lambda asker: tried(asker, known, catalogues), some):
            progress(1)
            yield one
