"""What every answer needs of the store: catalogue and fleet. Built once, and anew when any of it changes."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.answer.compose import Known
from service.core.catalogue import Catalogue
from service.core.recall import WEIGHTS
from service.core.recall.fleet import Fleet
from service.files.read.messages import speak
from service.flow.software import SOFTWARE
from service.flow.standing import under_survivors
from service.store.unit import UnitOfWork


class NoCatalogueError(LookupError):
    """No catalogue has been loaded; the message says how to load one."""


@dataclass(frozen=True)
class Memory:
    """What can be recalled, with a catalogue or without; `catalogue` is there where one is."""

    fleet: Fleet
    catalogue: Catalogue | None


def remembered(uow: UnitOfWork) -> Memory:
    """Return the fleet, with the weights learned from it where there are any.

    Kept between calls, for all threads, as long as nothing that it is made from was changed by anybody.
    """
    with uow:
        return uow.kept.get("memory", uow.stamps.fleet(), lambda: _built(uow))


def gather(uow: UnitOfWork) -> Known:
    """Return everything an answer is made from. NoCatalogueError where none was loaded."""
    memory = remembered(uow)
    if memory.catalogue is None:
        raise NoCatalogueError("no catalogue is loaded; load one with `transom catalogue load FILE`")
    return Known(memory.catalogue, memory.fleet, SOFTWARE, speak)


def _built(uow: UnitOfWork) -> Memory:
    catalogue, hulls, learned = uow.catalogues.latest(), uow.hulls.all(), uow.recall_weights.latest()
    fleet = Fleet.build(
        under_survivors(uow, uow.records.all()),
        {hull.id: hull for hull in hulls},
        learned.weights if learned else WEIGHTS,
        makes=None if catalogue is None else lambda one: catalogue.misfit(one) is None,
        refused=uow.replaced.all(),
    )
    return Memory(fleet, catalogue)
