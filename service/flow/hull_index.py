"""The index of hull models: built once for all threads, brought up to date when anybody changed the registry."""

from __future__ import annotations

from threading import Lock

from service.core.hulls import Candidates, HullIndex
from service.store.desk import uncollected
from service.store.hull_log import Mark
from service.store.unit import Store, UnitOfWork

MOST_IN_MEMORY = 1_000_000
"""Hull models; beyond, a database that can compare words itself is asked instead, once `fill_names` has let it."""
_HELD = 2
"""The newest, and one more for a transaction that began before it."""


def known_hulls(uow: UnitOfWork, most: int = MOST_IN_MEMORY) -> Candidates:
    """Return what knows the hull models: the index in memory, or the database where there are too many for it."""
    with uow:
        named = uow.hulls.candidates
        return named if named.available() and named.filled() > most else hull_index(uow)


def fill_names(store: Store) -> int:
    """Bring what the database compares names by up to date, and commit; return how many hull models were read anew.

    Nothing is done, and 0 returned, where the database cannot compare words.
    """
    with store.writing() as uow:
        if not uow.hulls.candidates.available():
            return 0
        read = uow.hulls.candidates.refresh()
        uow.commit()
        return read


def hull_index(uow: UnitOfWork) -> HullIndex:
    """Return the index of the registry as this transaction sees it, its own changes among it.

    It costs a look at the registry's mark while nothing changed. What changed since, here or in another process, is
    taken over alone; where the history is another one, as after a restore, all is built anew.
    """
    with uow:
        return uow.kept.get("hull index", "of every version", _Holder).of(uow)


class _Holder:
    """The last indexes that were committed, with the mark of the registry each holds; the latest used stands last."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._held: list[tuple[Mark | None, HullIndex]] = []

    def of(self, uow: UnitOfWork) -> HullIndex:
        mark = uow.hulls.log.mark()
        with self._lock:
            same = [index for held, index in self._held if held == mark]
            index = same[0] if same else self._made(uow, mark)
            if not uow.writes or uow.stamps.fleet() is not None:  # what is not committed may never be
                kept = [one for one in self._held if one[0] != mark]
                self._held = [*kept[len(kept) - _HELD + 1 :], (mark, index)]
            return index

    def _made(self, uow: UnitOfWork, mark: Mark | None) -> HullIndex:
        """Return the index at a mark: from one that is held where its history leads there, else from the registry."""
        for earlier, index in reversed(self._held):
            if earlier and mark and earlier.number < mark.number and uow.hulls.log.mark(earlier.number) == earlier:
                changed = uow.hulls.log.changed_since(earlier.number)
                fresh = {hull.id: hull for hull in uow.hulls.among(changed).values()}
                return index.updated(fresh.values(), changed - set(fresh))
        with uncollected():
            return HullIndex.build(uow.hulls.each())
