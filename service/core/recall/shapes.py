"""What recall gives: precedents with their differences, votes for configurations, and values to fill gaps with."""

from __future__ import annotations

from typing import Literal

from service.core.boat import Shape, Stern
from service.core.catalogue import Configuration
from service.core.record import RecordedPlacement, Status

Value = float | str | None


class Difference(Shape):
    """A feature that pulls two boats apart: their value, ours, and its share of all that does."""

    field: str
    theirs: Value
    ours: Value
    share: float


class Precedent(Shape):
    """A record brought up for a boat. `likeness` is 1 less the distance; `sister` says it is of the same hull model."""

    record: str
    hull: str | None
    hull_name: str | None
    year: int | None
    status: Status
    likeness: float
    sister: bool
    configuration: Configuration
    placement: RecordedPlacement
    differences: tuple[Difference, ...]


class Vote(Shape):
    """A configuration, the chance that a fitter would install it here, and the records that speak for it most."""

    configuration: Configuration
    probability: float
    precedents: tuple[str, ...]


class Recall(Shape):
    """Precedents, sister ships first, and votes, likeliest first; `sisters` counts all sister ships in the fleet.

    The votes' probabilities add up to at most one: the rest belongs to configurations not listed or not thought of.
    """

    precedents: tuple[Precedent, ...]
    votes: tuple[Vote, ...]
    sisters: int
    stern: Stern | None = None
    """The stern that was asked for, of the form or its hull model."""
    same_stern: int | None = None
    """How many records have that stern; None where it is not known."""


class Fill(Shape):
    """Values for a field that nobody gave, with weights adding up to one, and the records they come from.

    `sister_ships` are records of the same hull model, or (with no record) the hull model itself.
    """

    field: str
    source: Literal["sister_ships", "neighbours"]
    values: tuple[float | str, ...]
    weights: tuple[float, ...]
    records: tuple[str, ...] = ()
