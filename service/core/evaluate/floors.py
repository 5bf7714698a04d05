"""The floors: what anybody could do without this service, and what every method must clearly beat."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from rapidfuzz import fuzz, process

from service.core.boat import BoatForm, get
from service.core.catalogue import Configuration
from service.core.record import HullModel, Record

Chances = Mapping[Configuration, float]
Numbers = tuple[float | None, ...]
LIKE = {
    "boat.loa_mm": 5000.0, "boat.beam_mm": 1300.0, "boat.displacement_kg": 8000.0, "transom.top_height_mm": 600.0,
    "transom.rake_deg": 50.0,
}  # fmt: skip
"""What a plain nearest neighbour goes by, each with the span it is divided by."""
NEIGHBOURS = 10
KEPT_FOR_ALL = 0.1
"""The share of a neighbours' probability that goes to the overall frequency, so that nothing seen is impossible."""


@dataclass(frozen=True)
class MostCommon:
    """Every boat is told the fleet's frequencies."""

    records: Sequence[Record]
    shares: Chances = field(init=False)

    def __post_init__(self) -> None:
        """Count, with one of each added and one kept for what was never seen (Laplace)."""
        counts = Counter(record.configuration for record in self.records)
        whole = counts.total() + len(counts) + 1
        object.__setattr__(self, "shares", {one: (n + 1) / whole for one, n in counts.most_common()})

    def __call__(self, _form: BoatForm) -> Chances:
        """Return the chance of each configuration."""
        return self.shares


@dataclass(frozen=True)
class NameAndNeighbours:
    """rapidfuzz's WRatio over the registry's names gives the hull model, five plain numbers the nearest of its boats."""

    records: Sequence[Record]
    hulls: Mapping[str, HullModel]
    common: MostCommon = field(init=False)
    names: Mapping[str, str] = field(init=False)
    numbers: Sequence[Numbers] = field(init=False)

    def __post_init__(self) -> None:
        """Only hull models that the records know can be found."""
        object.__setattr__(self, "numbers", [_numbers(record.form) for record in self.records])
        known = {record.hull for record in self.records}
        object.__setattr__(self, "names", {id_: str(hull) for id_, hull in self.hulls.items() if id_ in known})
        object.__setattr__(self, "common", MostCommon(self.records))

    def __call__(self, form: BoatForm) -> Chances:
        """Return the chance of each configuration: its share of the ten nearest, of the hull model found before others."""
        said = " ".join(word for word in (form.boat.builder, form.boat.model) if word)
        found = process.extractOne(said, self.names, scorer=fuzz.WRatio) if said else None
        hull = found[2] if found else None
        mine = _numbers(form)
        away = [
            (r.hull != hull or hull is None, _apart(n, mine)) for r, n in zip(self.records, self.numbers, strict=True)
        ]
        nearest = sorted(range(len(away)), key=away.__getitem__)[:NEIGHBOURS]
        shares: dict[Configuration, float] = {}
        for place, record in enumerate(self.records[n] for n in nearest):  # the nearest one is put first
            shares[record.configuration] = shares.get(record.configuration, 0.0) + 1.0 + (place == 0) * NEIGHBOURS
        whole = sum(shares.values())
        common = self.common.shares
        return {
            one: (1 - KEPT_FOR_ALL) * shares.get(one, 0.0) / max(whole, 1) + KEPT_FOR_ALL * common[one]
            for one in common
        }


def _numbers(form: BoatForm) -> Numbers:
    return tuple(None if (value := get(form, path)) is None else value / span for path, span in LIKE.items())


def _apart(theirs: Numbers, ours: Numbers) -> float:
    return sum(0.5 if a is None or b is None else abs(a - b) for a, b in zip(theirs, ours, strict=True))
