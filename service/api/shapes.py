"""Shapes of the service's own: what is sent and given beside the published ones."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Any, Literal, Self

from pydantic import Field, model_validator

from service.core.boat import BoatForm, Shape, Text
from service.core.catalogue import Configuration
from service.core.days import Day
from service.core.hulls import HullDecision
from service.core.job import State as JobState
from service.core.record import Record, Status

Event = Literal["answer.ready", "record.changed"]
BYTES: dict[str, Any] = {"type": "string", "format": "binary"}
"""The schema of what is no JSON."""


class TextEnquiry(Shape):
    """An enquiry as somebody wrote it: a mail's text, a note, whatever there is."""

    text: str = Field(
        min_length=1, max_length=200_000, examples=["Tarnholt 36, 1991, reverse transom 985 mm high, rake 23°"]
    )


class EnquiryItem(Shape):
    """One enquiry in a list. `owner` is the dealer whose it is, null for the maker's own desk; `reference` is theirs."""

    id: str
    created: datetime | None
    received: datetime | None
    owner: str | None
    reference: str | None
    builder: str | None
    model: str | None
    hull: str | None


class EnquiryPage(Shape):
    """A page of enquiries, the newest first. `next` goes on behind it."""

    enquiries: list[EnquiryItem]
    next: str | None


class EnquiryView(EnquiryItem):
    """One enquiry with its form, the ids of its answers, oldest first, and where its documents stand."""

    form: BoatForm
    answers: list[str]
    links: dict[str, str]


class FitWanted(Shape):
    """A boat and one configuration to be placed and checked on it."""

    form: BoatForm
    configuration: Configuration
    seed: Annotated[int, Field(ge=0, le=2**31 - 1)] = 1


class RecordPage(Shape):
    """A page of records, the newest first. `hull` says what a name was taken for where that is not sure."""

    records: list[Record]
    next: str | None
    hull: HullDecision | None = None


class RecordWanted(Shape):
    """Make a record of a suggestion of an answer: the first, or the one of this `rank`."""

    answer: str = Field(min_length=1, max_length=80)
    rank: Annotated[int, Field(ge=1, le=99)] | None = None
    why: Text | None = None
    anyway: Annotated[str, Field(min_length=1, max_length=2000)] | None = Field(
        None, description="Why it is proposed although it does not fit."
    )


class StepWanted(Shape):
    """Step a record to another status."""

    status: Status
    date: Day | None = None
    note: Text | None = None


class RecordChange(Shape):
    """Change a record: `set` fields, named as columns of a table of records (null takes one away), or `step` it."""

    set: dict[str, Any] | None = Field(None, min_length=1, max_length=100, examples=[{"transom.rake_deg": -22.5}])
    step: StepWanted | None = None
    why: str = Field(min_length=1, max_length=2000, examples=["measured again on the hard"])

    @model_validator(mode="after")
    def _one(self) -> Self:
        if (self.set is None) == (self.step is None):
            raise ValueError("give either set or step")
        return self


class CatalogueItem(Shape):
    version: str
    href: str


class CatalogueList(Shape):
    """The versions of the catalogue, the one loaded last first."""

    catalogues: list[CatalogueItem]


class Job(Shape):
    """An import that goes on after its request was answered. `done` of `rows` are settled; a bad row keeps none out.

    `state` is the import's; `work` is what is being done about it: null where no worker was ever asked to.
    """

    id: str
    kind: Literal["import"]
    state: Literal["running", "done", "undone"]
    name: str
    rows: int
    done: int
    created: int
    updated: int
    unchanged: int
    rejected: int
    started: datetime
    changed: datetime
    faults: list[RowFault] = []
    work: JobState | None = None
    trouble: str | None = None
    import_id: str | None = None


class OtherJob(Shape):
    """Any other work longer than a request. `total` is null as long as nobody knows it; `result` is what it came to."""

    id: str
    kind: str
    work: JobState
    name: str
    done: int
    total: int | None
    asked: datetime
    started: datetime | None
    changed: datetime
    ended: datetime | None
    trouble: str | None
    result: dict[str, Any] | None


class RowFault(Shape):
    """One cell that could not be taken: the first hundred are listed."""

    sheet: str | None
    row: int
    column: str
    value: str
    expected: str


class WebhookWanted(Shape):
    """An address to be told. Without `events`, of all."""

    url: str = Field(min_length=1, max_length=2000, examples=["https://dealer.example.com/hooks/transom"])
    events: list[Event] = Field([], max_length=10)


class WebhookView(Shape):
    """An address that is told; `stopped` and `why` where it is told no more."""

    id: str
    url: str
    events: list[Event]
    created: datetime
    stopped: datetime | None
    why: str | None


class WebhookMade(WebhookView):
    """A new webhook with the secret its messages are signed by (Standard Webhooks): it is shown this once."""

    secret: str


class WebhookList(Shape):
    webhooks: list[WebhookView]


class Health(Shape):
    status: Literal["ok", "away"]
    checks: dict[str, bool] = {}
