"""A record against a catalogue: would its configuration still be right for its boat."""

from __future__ import annotations

from typing import Literal

from service.core.answer.compose import Known, prepared
from service.core.boat import Shape
from service.core.catalogue import Configuration
from service.core.fit.engine import judged
from service.core.record import Record

Finding = Literal["passes", "undecided", "fails", "cannot_be_made"]


class Rechecked(Shape):
    """One record as a catalogue judges it at nominal: what was found, the smallest scaled margin, and why."""

    record: str
    configuration: Configuration
    found: Finding
    margin: float | None
    why: str


class Change(Shape):
    """A record that two catalogues judge differently."""

    record: str
    before: Rechecked
    after: Rechecked


class Recheck(Shape):
    """The fleet against a catalogue, and against another where one was given."""

    catalogue: str
    against: str | None
    counts: dict[str, int]
    rows: tuple[Rechecked, ...]
    changes: tuple[Change, ...]


def recheck(record: Record, known: Known, seed: int = 1) -> Rechecked:
    """Return how the catalogue judges a record's configuration on its boat, gaps filled as for an enquiry."""
    one = record.configuration
    misfit = known.catalogue.misfit(one)
    if misfit:
        return Rechecked(record=record.reference, configuration=one, found="cannot_be_made", margin=None, why=misfit)
    boats = prepared(record.form, known, record.hull, seed, draws=1)
    fit = judged(boats, one)
    found: Finding = {"does_not_fit": "fails", "undecided": "undecided"}.get(fit.verdict, "passes")  # type: ignore[assignment]  # one of the above
    return Rechecked(record=record.reference, configuration=one, found=found, margin=fit.smallest_margin, why=fit.why)
