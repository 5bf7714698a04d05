"""Names of boats -> hull models."""

from __future__ import annotations

from collections.abc import Iterator

from service.core.boat import BoatForm
from service.core.hulls import Candidates, HullDecision, resolve
from service.files.read.names_file import read_names
from service.flow.hull_index import known_hulls
from service.store.unit import UnitOfWork


def resolve_name(
    uow: UnitOfWork,
    name: str,
    *,
    builder: str | None = None,
    year: int | None = None,
    loa_mm: float | None = None,
    beam_mm: float | None = None,
) -> HullDecision:
    """Return what a name is taken for."""
    return resolve(known_hulls(uow), name, builder=builder, year=year, loa_mm=loa_mm, beam_mm=beam_mm)


def resolve_rows(uow: UnitOfWork, data: bytes, name: str) -> Iterator[HullDecision]:
    """Return a decision for each row of a CSV (name, builder, year, loa_mm, beam_mm), in order."""
    rows = read_names(data, name)
    index = known_hulls(uow)
    return (resolve(index, r.name, builder=r.builder, year=r.year, loa_mm=r.loa_mm, beam_mm=r.beam_mm) for r in rows)


def hull_of(index: Candidates, form: BoatForm) -> HullDecision | None:
    """Return what the boat of a form is taken for, None where the form names no model."""
    boat = form.boat
    if not boat.model:
        return None
    return resolve(index, boat.model, builder=boat.builder, year=boat.year, loa_mm=boat.loa_mm, beam_mm=boat.beam_mm)
