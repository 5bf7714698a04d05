"""Find records by what a card index is searched by: hull model, year, stern, status, dealer, metal, or a like boat."""

from __future__ import annotations

from dataclasses import dataclass

from service.core.boat import STERNS, BoatForm
from service.core.hulls import HullDecision, resolve
from service.core.recall.nearest import Near, nearest_records
from service.core.record import HullModel, Record
from service.core.words import nearest
from service.flow.hull_index import hull_index
from service.flow.known import remembered
from service.flow.refusal import Refused
from service.flow.resolve import hull_of
from service.flow.standing import under_survivors
from service.store.record_search import ORDERS, Asked, Place, Side
from service.store.unit import UnitOfWork

MOST = 1000


@dataclass(frozen=True)
class Wanted:
    """What is looked for; what is None may be anything.

    `hull` is a hull model's id or a name as people write it. `codes` are codes of gear, brackets or shaft that must all
    be among a record's configuration. `after` is the cursor of the page before; it has no meaning beside `near`. Every one
    of `words` must be somewhere in a record's reference, names of its hull model, stern, status, year, codes or dealer;
    who sees the records of one dealer alone is told of no other one by them: `dealers_of`. `order` is one of ORDERS.
    """

    hull: str | None = None
    years: tuple[int | None, int | None] = (None, None)
    stern: str | None = None
    status: str | None = None
    dealer: str | None = None
    codes: tuple[str, ...] = ()
    near: BoatForm | None = None
    limit: int = 20
    after: str | None = None
    words: tuple[str, ...] = ()
    side: Side | None = None
    dealers_of: str | None = None
    order: str = "newest"

    def asked(self, hull: str | None) -> Asked:
        """Return the same as the store is asked; `hull` is the id of the hull model."""
        return Asked(
            hull, self.years, self.stern, self.status, self.dealer, self.codes, self.words, self.side, self.dealers_of
        )


@dataclass(frozen=True)
class Found:
    """The records, newest first (nearest first with `near`, which then tells of each); `next` is where to go on.

    `hull` is what the name was taken for; where that is not sure nothing is searched for, and it says which could be
    meant.
    """

    records: tuple[Record, ...]
    near: tuple[Near, ...] = ()
    hull: HullDecision | None = None
    next: str | None = None
    models: tuple[HullModel, ...] = ()

    @property
    def sure(self) -> bool:
        """Say whether it was sure what was asked for."""
        return self.hull is None or self.hull.model is not None


def find_records(uow: UnitOfWork, wanted: Wanted) -> Found:
    """Return the records that are asked for. Refused names a stern, dealer or cursor that does not exist."""
    if not 1 <= wanted.limit <= MOST:
        raise Refused(f"the limit is {wanted.limit}; give 1 to {MOST}, and go on from where a page ends")
    _see_words(wanted)
    with uow:
        decision, hull = _hull(uow, wanted.hull)
        if decision is not None and decision.model is None:
            return Found((), hull=decision)
        asked = wanted.asked(hull)
        found = _near(uow, wanted, asked) if wanted.near is not None else _plain(uow, wanted, asked)
        if not found.records and wanted.dealer is not None:
            _see_dealer(uow, wanted.dealer)
        models = uow.hulls.among(record.hull for record in found.records if record.hull)
    return Found(found.records, found.near, decision, found.next, tuple(models.values()))


def _see_words(wanted: Wanted) -> None:
    if wanted.stern is not None and wanted.stern not in STERNS:
        near = nearest(wanted.stern, STERNS)
        raise Refused(f"there is no stern {wanted.stern!r}; take one of {', '.join(STERNS)}" + _meant(near))
    if wanted.order not in ORDERS:
        raise Refused(f"nothing is sorted by {wanted.order!r}; take one of {', '.join(ORDERS)}")
    first, last = wanted.years
    if first is not None and last is not None and first > last:
        raise Refused(f"the years {first} to {last} run backwards; write the earlier first")
    if wanted.near is not None and wanted.after is not None:
        raise Refused("what is near a boat comes in one piece; raise the limit instead of going on from a cursor")


def _meant(near: str | None) -> str:
    return f" (did you mean {near!r}?)" if near else ""


def _see_dealer(uow: UnitOfWork, dealer: str) -> None:
    dealers = uow.records.dealers()
    if dealer not in dealers:
        raise Refused(f"no record names a dealer {dealer!r}{_meant(nearest(dealer, dealers))}")


def _hull(uow: UnitOfWork, name: str | None) -> tuple[HullDecision | None, str | None]:
    if name is None:
        return None, None
    if uow.hulls.get(name) is not None:
        return None, name
    decision = resolve(hull_index(uow), name)
    return decision, decision.model.id if decision.model else None


def _plain(uow: UnitOfWork, wanted: Wanted, asked: Asked) -> Found:
    order = ORDERS[wanted.order]
    try:
        after = Place.read(wanted.after, order.read) if wanted.after else None
    except ValueError as problem:
        raise Refused(str(problem)) from None
    found, last = uow.records.search_page(asked, after=after, limit=wanted.limit, order=order)
    more = len(found) == wanted.limit and bool(uow.records.search_page(asked, after=last, limit=1, order=order)[0])
    return Found(under_survivors(uow, found), next=str(last) if more else None)


def _near(uow: UnitOfWork, wanted: Wanted, asked: Asked) -> Found:
    form, memory = wanted.near or BoatForm(), remembered(uow)
    decision = hull_of(hull_index(uow), form)
    own = decision.model.id if decision and decision.model else None
    among = None if asked == Asked() else uow.records.matching(asked)
    near = nearest_records(memory.fleet, form, hull=own, among=among, limit=wanted.limit)
    records = {record.reference: record for record in memory.fleet.records}
    return Found(tuple(records[one.record] for one in near), near)
