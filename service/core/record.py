"""One installation as the fleet remembers it."""

from __future__ import annotations

from datetime import date as Date  # noqa: N812 - the field is called date
from typing import Literal

from pydantic import Field

from service.core.boat import BoatForm, Length, Shape, Size, Text
from service.core.catalogue import Configuration

Status = Literal["proposed", "shipped", "installed", "withdrawn"]


class RecordedPlacement(Shape):
    """Where the configuration sits, as far as the record says. Frame and signs as in the boat form."""

    offset_mm: Length | None = None
    shaft_aft_mm: Length | None = None
    lower_height_mm: Length | None = None
    upper_height_mm: Length | None = None
    shaft_bottom_mm: Length | None = None


class Outcome(Shape):
    fitted_as_proposed: bool | None = None
    note: Text | None = None


class Record(Shape):
    """One installation: proposed, shipped, as installed, or withdrawn. `hull` is the hull model's id once known."""

    reference: str = Field(min_length=1, max_length=80)
    status: Status
    date: Date | None = None
    dealer: Text | None = None
    hull: str | None = None
    form: BoatForm
    configuration: Configuration
    placement: RecordedPlacement = RecordedPlacement()
    outcome: Outcome = Outcome()
    catalogue: str | None = None


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
