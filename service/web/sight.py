"""Who sees what of a record: the same rules as at the dealers' door, and the same note of it in the audit."""

from __future__ import annotations

from collections.abc import Iterable

from fastapi import Request

from service.core.people import without_people
from service.core.record import Record
from service.flow.sign_in import Visitor
from service.web.desk import Desk
from service.web.who import actor


def whole(record: Record, by: Visitor) -> bool:
    """Say whether somebody may see whose boat it is.

    The maker's desk may; a dealer's people where the record is their dealer's; a fitter as long as it waits to be fitted.
    """
    if by.user.role == "dealer":
        return by.user.dealer == record.dealer
    return by.user.role != "fitter" or record.status == "shipped"


def inside(record: Record, by: Visitor) -> bool:
    """Say whether somebody sees what the maker's own people wrote down about it: history, files, who measured."""
    return by.user.role != "dealer" and whole(record, by)


def seen(record: Record, by: Visitor) -> Record:
    """Return the record as somebody may see it."""
    return record if whole(record, by) else without_people(record)


def note(request: Request, here: Desk, by: Visitor, records: Iterable[Record]) -> None:
    """Note in the audit that people's data were read."""
    told = [record.reference for record in records if whole(record, by)]
    if told:
        with here.store.writing(actor(request, by)) as uow:
            for reference in told:
                uow.saw("record", reference)
            uow.commit()
