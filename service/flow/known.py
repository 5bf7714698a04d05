"""What every answer needs of the store: catalogue, hull models, fleet."""

from __future__ import annotations

from dataclasses import dataclass

from service import __version__
from service.core.answer.compose import Known
from service.core.hulls import HullIndex
from service.core.recall import Fleet
from service.store.unit import UnitOfWork


class NoCatalogueError(LookupError):
    """No catalogue has been loaded; the message says how to load one."""


@dataclass(frozen=True)
class Shelf:
    """Catalogue, fleet and the index of hull models, as they stood in one transaction."""

    known: Known
    index: HullIndex


def gather(uow: UnitOfWork) -> Shelf:
    """Return everything an answer is made from. NoCatalogueError where none was loaded."""
    catalogue = uow.catalogues.latest()
    if catalogue is None:
        raise NoCatalogueError("no catalogue is loaded; load one with `transom catalogue load FILE`")
    hulls = uow.hulls.all()
    fleet = Fleet.build(uow.records.all(), {hull.id: hull for hull in hulls})
    return Shelf(Known(catalogue, fleet, f"transom-ledger {__version__}"), HullIndex.build(hulls))
