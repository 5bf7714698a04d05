"""What if metal were dropped or made: the fleet is tried again, boat by boat, several at a time."""

from __future__ import annotations

from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor

from service.core.demand import metal
from service.core.demand.solve import Case
from service.core.demand.whatif import Carried, Changed, tables, tried, uses
from service.core.report import Table
from service.flow.import_report import Advance, silent
from service.flow.known import gather
from service.store.unit import UnitOfWork


def what_if(
    uow: UnitOfWork,
    *,
    dropped: Sequence[str] = (),
    lengths: Sequence[float] = (),
    reaches: Sequence[tuple[str, float, float]] = (),
    progress: Advance = silent,
) -> tuple[Table, Table]:
    """Return what becomes of every boat that was not withdrawn. `reaches`: a bracket's code and its reach in mm.

    KeyError names a code that the catalogue does not hold; NoCatalogueError where none is loaded.
    """
    known = gather(uow)
    catalogue = known.catalogue
    left = metal.without(catalogue, dropped)
    changed = Changed(
        tuple(dropped),
        tuple(one for length in lengths for one in metal.shaft(catalogue, length)),
        tuple(metal.bracket(catalogue, like, (low, high)) for like, low, high in reaches),
    )
    fleet = [
        Carried(Case(r.reference, r.form, r.hull), r.configuration)
        for r in known.fleet.records
        if r.status != "withdrawn"
    ]
    asked = fleet if changed.new else [boat for boat in fleet if uses(boat, changed)]
    found = []
    with ThreadPoolExecutor() as threads:
        for one in threads.map(lambda boat: tried(boat, known, left, changed), asked):
            found.append(one)
            progress(1)
    return tables(found, said(dropped, lengths, reaches))


def said(dropped: Sequence[str], lengths: Sequence[float], reaches: Sequence[tuple[str, float, float]]) -> str:
    """Name the change.

    >>> said(["shaft-1750"], [1650.0], [("hinge-60-170", 420, 570)])
    'without shaft-1750; with a shaft of 1650 mm; with hinge-60-170 of reach 420 to 570 mm'
    """
    return "; ".join(
        [
            *(f"without {code}" for code in dropped),
            *(f"with a shaft of {length:g} mm" for length in lengths),
            *(f"with {like} of reach {low:g} to {high:g} mm" for like, low, high in reaches),
        ]
    )
