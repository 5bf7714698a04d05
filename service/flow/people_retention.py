"""Say whose data are held longer than they need to be, and erase them."""

from __future__ import annotations

import json
from collections import defaultdict
from dataclasses import dataclass
from datetime import datetime

from service.files.vault import Vault
from service.flow.people_erase import Erased, erase_people
from service.flow.people_find import Somebody, with_namesakes
from service.store.people import Known
from service.store.unit import UnitOfWork

CARRIED = {"shipped", "installed"}


@dataclass(frozen=True)
class Due:
    """A person who may go, and when they were last heard of."""

    who: Somebody
    heard: datetime


def past_retention(uow: UnitOfWork, before: datetime) -> tuple[Due, ...]:
    """Return the people last heard of before that time whom no record names that was ever shipped or installed.

    Heard of is the newest of their enquiries, or when they were first kept where there is none.
    """
    with uow:
        everyone = tuple(uow.people.all())
        heard, bound = _heard(uow, everyone), _bound(uow, everyone)
    grouped: dict[str, list[Known]] = defaultdict(list)
    for one in everyone:
        grouped[(one.email or one.id).casefold()].append(one)
    due = []
    for same in grouped.values():
        last = max(heard.get(one.id, one.created) for one in same)
        if last < before and not any(one.id in bound for one in same):
            due.append(Due(with_namesakes(everyone, same), last))
    return tuple(sorted(due, key=lambda one: (one.heard, one.who.ids)))


def apply_retention(uow: UnitOfWork, vault: Vault, before: datetime, *, why: str) -> Erased | None:
    """Erase everybody past retention in one transaction and commit; None where nobody is."""
    with uow:
        due = past_retention(uow, before)
        return erase_people(uow, vault, [one.who for one in due], why=why) if due else None


def months_before(now: datetime, months: int) -> datetime:
    """Return the time that many months before, on the last day of a month that is shorter.

    >>> months_before(datetime(2024, 3, 31), 13).isoformat()
    '2023-02-28T00:00:00'
    """
    count = now.year * 12 + now.month - 1 - months
    year, month = divmod(count, 12)
    for day in range(now.day, now.day - 4, -1):
        try:
            return now.replace(year=year, month=month + 1, day=day)
        except ValueError:
            continue
    raise ValueError(f"{months} months before {now.isoformat()} there is no such day")


def _heard(uow: UnitOfWork, everyone: tuple[Known, ...]) -> dict[str, datetime]:
    found: dict[str, datetime] = {}
    for one in uow.people.enquiries([known.id for known in everyone]):
        at = one.received or one.created
        found[one.contact] = max(at, found.get(one.contact, at))
    return found


def _bound(uow: UnitOfWork, everyone: tuple[Known, ...]) -> set[str]:
    """Return the contacts that a record names which was shipped or installed, now or ever."""
    by_record: dict[str, set[str]] = defaultdict(set)
    for state in uow.people.states([known.id for known in everyone]):
        by_record[state.record].add(state.contact)
    found = set()
    for record, documents in uow.people.documents(sorted(by_record)):
        if json.loads(documents).get("status") in CARRIED:
            found |= by_record[record]
    return found
