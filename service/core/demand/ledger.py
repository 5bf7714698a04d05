"""What `report demand` is asked for, and what the database says for it; light to load, so that counting may begin."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

from service.core.catalogue import Catalogue

Codes = tuple[str, str, str, str]
Place = tuple[str | None, str | None, str | None, str | None]


@dataclass(frozen=True)
class Stocking:
    """For which time stock has to last: quarters ahead, weeks until an order comes, and how surely it is to last."""

    quarters: int = 4
    lead_weeks: float = 8.0
    service: float = 0.95


@dataclass(frozen=True)
class Asked:
    """What the report is asked for. `first` and `last` bound the dates that count; both are included."""

    as_of: date
    first: date | None = None
    last: date | None = None
    proposals: bool = False
    stocking: Stocking = field(default_factory=Stocking)
    seed: int = 1

    @property
    def statuses(self) -> tuple[str, ...]:
        """Return the statuses that count as demand."""
        return ("shipped", "installed", "proposed") if self.proposals else ("shipped", "installed")

    @property
    def end(self) -> date:
        """Return the last day that counts: nothing after the day the report is as of."""
        return self.as_of if self.last is None else min(self.last, self.as_of)


@dataclass(frozen=True)
class Counts:
    """What the database counted: installations by configuration and month, and by configuration and place.

    A month is 12 times the year plus the month from 0; None: undated.
    """

    by_month: Mapping[tuple[Codes, int | None], int]
    by_place: Mapping[tuple[Codes, Place], int]


@dataclass(frozen=True)
class Ledger:
    """What the database says: counts, records by status and date (within, before, after, undated), merged ones."""

    counts: Counts
    statuses: Mapping[tuple[str, str], int]
    merged: int
    catalogue: Catalogue | None
