"""The last answer to every enquiry, for reports that look at many."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.schema import answers, enquiries


@dataclass(frozen=True)
class LastAnswer:
    """An enquiry with the JSON of its last answer; `day` is when it was received, else when it was written down."""

    enquiry: str
    day: datetime
    document: str


class LastAnswers:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def each(self) -> Iterator[LastAnswer]:
        """Yield the last answer to every enquiry that has one, by enquiry: nothing holds all of them at once."""
        rank = sa.func.row_number().over(
            partition_by=answers.c.enquiry_id, order_by=(answers.c.created.desc(), answers.c.id.desc())
        )
        ranked = sa.select(answers.c.id, rank.label("rank")).subquery()
        chosen = (
            sa.select(enquiries.c.id, enquiries.c.received, enquiries.c.created, answers.c.document)
            .join(answers, answers.c.enquiry_id == enquiries.c.id)
            .join(ranked, ranked.c.id == answers.c.id)
            .where(ranked.c.rank == 1)
            .order_by(enquiries.c.id)
        )
        for row in self._desk.stream(chosen):
            yield LastAnswer(row.id, row.received or row.created, row.document)
