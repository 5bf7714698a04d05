"""The answer `answer/1` and the answers `answers/1`: one frozen value, from which everything that goes out is made."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from service.core.answer.speech import Said
from service.core.boat import BoatForm, Shape
from service.core.catalogue import Configuration
from service.core.fit.shapes import Fit
from service.core.hulls import HullDecision
from service.core.reading.shape import Missing
from service.core.recall import Precedent


class Suggestion(Shape):
    """A configuration put forward. `probability`: the chance that a fitter would install it; the fit has its own."""

    rank: int
    configuration: Configuration
    probability: float | None
    origin: Literal["precedent", "solver"]
    precedents: tuple[str, ...]
    fit: Fit


class Contrast(Shape):
    """What separates a sister ship from this boat: the measurement that moves the placement most, and by how much."""

    record: str
    configuration: Configuration
    field: str | None
    theirs: float | None
    ours: float | None
    moves_mm: float | None
    text: str
    effect: Literal["fails", "none", "moves"] | None = None
    shift_mm: tuple[float, float, float] | None = None
    """With her value: shaft aft, lower and upper collar up."""


class Provenance(Shape):
    catalogue: str
    records: int
    software: str
    seed: int
    weights: str = "built-in"
    """What likeness and chances were weighed by: built in, or learned from the fleet, with date and size."""


class Answer(Shape):
    """One boat's answer, as sent."""

    schema_: Literal["answer/1"] = Field("answer/1", alias="schema")
    id: str | None = None
    enquiry: str | None = None
    form: BoatForm
    hull: HullDecision | None
    precedents: tuple[Precedent, ...]
    sisters: int = 0
    """How many sister ships the fleet holds, brought up or not."""
    contrasts: tuple[Contrast, ...] = ()
    suggestions: tuple[Suggestion, ...]
    missing: tuple[Missing, ...]
    questions: tuple[str, ...]
    """In the writer's language; `asked` holds the same apart from any language."""
    cautions: tuple[str, ...]
    asked: tuple[Said, ...] = ()
    warned: tuple[Said, ...] = ()
    provenance: Provenance

    @property
    def fits(self) -> bool:
        """Say whether something fits, or might where a check could not be made."""
        return any(s.fit.verdict != "does_not_fit" for s in self.suggestions)


class Answers(Shape):
    """The answers to one message, one a boat; none where it asks nothing."""

    schema_: Literal["answers/1"] = Field("answers/1", alias="schema")
    is_enquiry: bool
    kind: str
    answers: tuple[Answer, ...]


__all__ = ["Answer", "Answers", "Contrast", "Missing", "Provenance", "Suggestion"]
