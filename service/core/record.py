"""One installation as the fleet remembers it."""

from __future__ import annotations

from typing import Literal, Self

from pydantic import Field, model_validator

from service.core.boat import BoatForm, Length, Shape, Size, Text
from service.core.catalogue import Configuration
from service.core.days import Day

Status = Literal["proposed", "shipped", "installed", "withdrawn"]
NEXT: dict[Status, tuple[Status, ...]] = {
    "proposed": ("shipped", "withdrawn"),
    "shipped": ("installed", "withdrawn"),
    "installed": ("withdrawn",),
    "withdrawn": (),
}
"""Where a record may step by itself; every other step is a correction and needs a reason."""


class RecordedPlacement(Shape):
    """Where the configuration sits, as far as the record says. Frame and signs as in the boat form."""

    offset_mm: Length | None = None
    shaft_aft_mm: Length | None = None
    lower_height_mm: Length | None = None
    upper_height_mm: Length | None = None
    shaft_bottom_mm: Length | None = None


class Outcome(Shape):
    """How it went. `changed`: what was changed on site, and why; `note`: what was heard afterwards."""

    fitted_as_proposed: bool | None = None
    note: Text | None = None
    changed: Text | None = None


class Proposed(Shape):
    """The configuration that had been proposed, where another one was installed: all four codes, or none."""

    gear: str | None = Field(None, min_length=1, max_length=80)
    lower: str | None = Field(None, min_length=1, max_length=80)
    upper: str | None = Field(None, min_length=1, max_length=80)
    shaft: str | None = Field(None, min_length=1, max_length=80)

    @model_validator(mode="after")
    def _all_or_none(self) -> Self:
        said = [code is not None for code in (self.gear, self.lower, self.upper, self.shaft)]
        if any(said) and not all(said):
            raise ValueError("give all of gear, lower, upper and shaft, or none of them")
        return self


class Record(Shape):
    """One installation: proposed, shipped, as installed, or withdrawn. `hull` is the hull model's id once known.

    `configuration` and `placement` are what is on the boat as far as anybody knows: as installed once it is installed,
    as proposed before. Where the two differ `proposed` keeps what had been proposed, and `replaced` gives it.
    `answer` is the id of the answer it was proposed by.
    """

    reference: str = Field(min_length=1, max_length=80)
    status: Status
    date: Day | None = None
    dealer: Text | None = None
    hull: str | None = None
    form: BoatForm
    configuration: Configuration
    placement: RecordedPlacement = RecordedPlacement()
    outcome: Outcome = Outcome()
    proposed: Proposed = Proposed()
    catalogue: str | None = None
    answer: Text | None = None

    @property
    def replaced(self) -> Configuration | None:
        """Return what had been proposed where another configuration was installed; None where none was replaced."""
        said = self.proposed.model_dump(exclude_none=True)
        return Configuration.model_validate(said) if said else None


class HullModel(Shape):
    """A design as sold: builder, model, variant and years. `id` never changes."""

    id: str = Field(min_length=1, max_length=80)
    builder: Text | None = None
    model: str = Field(min_length=1, max_length=200)
    aliases: tuple[str, ...] = ()
    first_year: int | None = None
    last_year: int | None = None
    loa_mm: Size | None = None
    lwl_mm: Size | None = None
    beam_mm: Size | None = None
    draft_mm: Size | None = None
    displacement_kg: float | None = None
    stern: str | None = None

    def __str__(self) -> str:
        """Return builder and model on one line, the builder left out where the model begins with a word of it."""
        builder = self.builder or ""
        named = self.model.split()[0].casefold() in builder.casefold().split()
        return self.model if named or not builder else f"{builder} {self.model}"
