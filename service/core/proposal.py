"""An answer that was sent -> the record of what was proposed. Of an answer only what a record needs is read."""

from __future__ import annotations

from datetime import date
from typing import Literal

from pydantic import BaseModel, ConfigDict, Field

from service.core.boat import BoatForm
from service.core.catalogue import Configuration
from service.core.fit.shapes import Verdict
from service.core.record import Record, RecordedPlacement


class _Part(BaseModel):
    """A part of a document that may say more: an answer stays as it was sent, whatever is added to answers later."""

    model_config = ConfigDict(frozen=True, extra="ignore", populate_by_name=True)


class _Placed(_Part):
    offset_mm: float
    shaft_aft_mm: float
    lower_height_mm: float
    upper_height_mm: float
    shaft_bottom_mm: float


class SentFit(_Part):
    verdict: Verdict
    placement: _Placed | None = None
    why: str = ""


class SentSuggestion(_Part):
    rank: int
    configuration: Configuration
    probability: float | None = None
    fit: SentFit


class _Model(_Part):
    id: str


class _Hull(_Part):
    model: _Model | None = None


class _Provenance(_Part):
    catalogue: str


class SentAnswer(_Part):
    """One boat's answer as a record is made from it."""

    schema_: Literal["answer/1"] = Field("answer/1", alias="schema")
    id: str | None = None
    enquiry: str | None = None
    form: BoatForm
    hull: _Hull | None = None
    suggestions: tuple[SentSuggestion, ...]
    provenance: _Provenance

    @property
    def hull_id(self) -> str | None:
        """Return the id of the hull model it was taken for."""
        return self.hull.model.id if self.hull and self.hull.model else None

    @property
    def fits(self) -> bool:
        """Say whether something that was suggested fits, or might where a check could not be made."""
        return any(one.fit.verdict != "does_not_fit" for one in self.suggestions)

    def named(self) -> str:
        """Return what to call the boat, for messages."""
        boat = self.form.boat
        words = [word for word in (boat.builder, boat.model, boat.name and f"'{boat.name}'") if word]
        return " ".join(words) or "a boat without a name"


class SentAnswers(_Part):
    schema_: Literal["answers/1"] = Field("answers/1", alias="schema")
    answers: tuple[SentAnswer, ...]


def proposed(answer: SentAnswer, chosen: SentSuggestion, *, reference: str, day: date, hull: str | None) -> Record:
    """Return the record of what an answer proposes. The dealer is who asked; the contact stays in the form, apart."""
    spot = chosen.fit.placement
    return Record(
        reference=reference,
        status="proposed",
        date=day,
        dealer=answer.form.enquiry.dealer,
        hull=hull,
        form=answer.form,
        configuration=chosen.configuration,
        placement=RecordedPlacement(**spot.model_dump()) if spot else RecordedPlacement(),
        catalogue=answer.provenance.catalogue,
        answer=answer.id,
    )
