"""Where the fleet's brackets sit on sterns: one small picture a stern type, or a hull model."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from statistics import median
from typing import Any

from service.core.boat import STERNS
from service.core.catalogue import Catalogue
from service.core.drawing.outline import SHAPING, SternOutline, stern_outline, typical
from service.core.form import FormError
from service.core.record import HullModel
from service.store.record_search import Asked
from service.store.unit import UnitOfWork

CELL_MM = 100.0
"""Places nearer together than this are one dot."""
MOST_HULLS = 12
_PLACED = ("placement.offset_mm", "placement.lower_height_mm", "placement.upper_height_mm")
_READ = (*_PLACED, *(f"form.{path}" for path in SHAPING))


@dataclass(frozen=True)
class Dot:
    """So many brackets of one role about one place: y to starboard and z above the water (mm)."""

    role: str
    y: float
    z: float
    count: int


@dataclass(frozen=True)
class Panel:
    """One picture: what it is of, a typical stern, the dots, how many records are in it and how many say where."""

    key: str
    name: str
    outline: SternOutline | None
    dots: tuple[Dot, ...]
    records: int
    placed: int

    @property
    def highest(self) -> float:
        """Return how high its highest dot is, 0 where there is none."""
        return max((dot.z for dot in self.dots), default=0.0)


def map_fleet(uow: UnitOfWork, words: Sequence[str] = ()) -> tuple[Panel, ...]:
    """Return a panel a stern type of everything installed; with `words` a panel a hull model that has them in its name.

    Of hull models those with most records come first, MOST_HULLS at most. A typical stern is made from the medians of
    what was measured.
    """
    with uow:
        asked = Asked(status="installed", hull_words=tuple(words))

        def read() -> tuple[tuple[Any, ...], ...]:
            return tuple(tuple(row) for row in uow.records.counts.numbers(asked, _READ))

        rows = read() if words else uow.kept.get("map", uow.stamps.fleet(), read)
        catalogue = uow.catalogues.latest()
        if not words:
            return tuple(_panel(stern, _named(stern), some, catalogue) for stern, some in _by_stern(rows))
        leads = uow.hulls.survivors()
        groups = _grouped(rows, [leads.get(row[1], row[1]) for row in rows])
        chosen = sorted(groups, key=lambda key: (-len(groups[key]), key))[:MOST_HULLS]
        models = uow.hulls.among(chosen)
    return tuple(_of_hull(models[key], groups[key], catalogue) for key in chosen if key in models)


def _named(stern: str) -> str:
    return stern.replace("_", "-")


def _grouped(rows: Iterable[Sequence[Any]], keys: Iterable[str | None]) -> dict[str, list[Sequence[Any]]]:
    found = defaultdict[str, list[Sequence[Any]]](list)
    for row, key in zip(rows, keys, strict=True):
        if key is not None:
            found[key].append(row)
    return dict(found)


def _by_stern(rows: Sequence[Sequence[Any]]) -> list[tuple[str, list[Sequence[Any]]]]:
    groups = _grouped(rows, [row[0] for row in rows])
    return [(stern, groups[stern]) for stern in STERNS if stern in groups]


def _of_hull(hull: HullModel, rows: list[Sequence[Any]], catalogue: Catalogue | None) -> Panel:
    sterns = Counter(row[0] for row in rows if row[0])
    stern = hull.stern or (sterns.most_common(1)[0][0] if sterns else None)
    return _panel(stern, str(hull), rows, catalogue, key=hull.id)


def _panel(
    stern: str | None, name: str, rows: list[Sequence[Any]], catalogue: Catalogue | None, *, key: str | None = None
) -> Panel:
    values = {
        path: median(said)
        for place, path in enumerate(SHAPING)
        if (said := [row[2 + len(_PLACED) + place] for row in rows if row[2 + len(_PLACED) + place] is not None])
    }
    outline = None
    if catalogue is not None and stern is not None:
        try:
            outline = stern_outline(typical(stern, values), catalogue)
        except FormError:  # medians of different boats need not make one boat
            outline = stern_outline(typical(stern, {}), catalogue)
    dots = Counter[tuple[str, float, float]]()
    placed = 0
    for _, _, y, lower, upper, *_rest in rows:
        found = [(role, z) for role, z in (("lower", lower), ("upper", upper)) if y is not None and z is not None]
        placed += bool(found)
        for role, z in found:
            dots[role, _cell(y), _cell(z)] += 1
    shown = tuple(Dot(*place, count) for place, count in sorted(dots.items()))
    return Panel(key or stern or name, name, outline, shown, len(rows), placed)


def _cell(value: float) -> float:
    return round(value / CELL_MM) * CELL_MM + 0.0
