"""Enquiries in pages, the newest first."""

from __future__ import annotations

from datetime import datetime

from service.store.enquiries import Enquiry
from service.store.unit import UnitOfWork

_MARK = "~"


def list_enquiries(
    uow: UnitOfWork, owner: str | None, *, after: str | None, limit: int, waits: str | None = None
) -> tuple[tuple[Enquiry, ...], str | None]:
    """Return a page of one owner's enquiries (everybody's where None), and the place behind it; None at the end.

    `waits` chooses those whose move it is: us, them or nobody. ValueError for a place that this never gave.
    """
    place = None
    if after is not None:
        when, _, name = after.partition(_MARK)
        place = (datetime.fromisoformat(when), name)
    with uow:
        found = uow.enquiries.page(owner, after=place, limit=limit + 1, waits=waits)
    page = found[:limit]
    if len(found) <= limit or page[-1].created is None:
        return page, None
    return page, f"{page[-1].created.isoformat()}{_MARK}{page[-1].id}"
