"""Find the people who are held, and say who is one and the same."""

from __future__ import annotations

import re
from dataclasses import dataclass

from service.core.traces import Said, Traces
from service.flow.refusal import Refused
from service.store.people import Known
from service.store.unit import UnitOfWork

_FEWEST_DIGITS = 4


@dataclass(frozen=True)
class Somebody:
    """One person: every contact with their address, or the one that was named. `namesakes` are others of that name."""

    contacts: tuple[Known, ...]
    namesakes: tuple[Known, ...] = ()

    @property
    def ids(self) -> tuple[str, ...]:
        """Return the ids of the contacts."""
        return tuple(one.id for one in self.contacts)

    @property
    def said(self) -> tuple[Said, ...]:
        """Return what is known of them."""
        return tuple(Said(one.name, one.email, one.phone) for one in self.contacts)

    def own(self) -> Traces:
        """Return what finds them in what is theirs: even a name of one word is looked for there."""
        return Traces(self.said, words=True)

    def anywhere(self) -> Traces:
        """Return what finds them in anything: by name only where nobody else has it."""
        return Traces(self.said, names=not self.namesakes)


def find_people(uow: UnitOfWork, text: str) -> tuple[Known, ...]:
    """Return the contacts in whose name, address or telephone number the text stands, by name."""
    with uow:
        return tuple(one for one in uow.people.all() if _matches(one, text.strip().casefold()))


def somebody(uow: UnitOfWork, who: str) -> Somebody:
    """Return the one person meant by a contact's id, an address, a name or a number.

    Refused where nobody is meant, or where more than one may be: then their ids are named.
    """
    with uow:
        everyone = tuple(uow.people.all())
    wanted = who.strip().casefold()
    meant = [one for one in everyone if one.id == who.strip()]
    meant = meant or [one for one in everyone if _is(one, wanted)]
    if not meant:
        raise Refused(f"nobody is held by {who!r}; `transom people find TEXT` looks for parts of names and addresses")
    mails = {_plain(one.email) for one in meant}
    if len(mails) > 1 or (None in mails and len(meant) > 1):
        listed = "\n".join(f"  {one.id}  {one.name or '-'}  {one.email or '-'}  {one.phone or '-'}" for one in meant)
        raise Refused(f"more than one person may be meant by {who!r}; say which by its id:\n{listed}")
    (mail,) = mails
    same = [one for one in everyone if one in meant or (mail is not None and _plain(one.email) == mail)]
    return with_namesakes(everyone, same)


def with_namesakes(everyone: tuple[Known, ...], same: list[Known]) -> Somebody:
    """Return the person with everybody else who has the same name."""
    names = {_plain(one.name) for one in same} - {None}
    others = tuple(one for one in everyone if one not in same and _plain(one.name) in names)
    return Somebody(tuple(same), others)


def _plain(text: str | None) -> str | None:
    return " ".join(text.casefold().split()) if text else None


def _is(one: Known, wanted: str) -> bool:
    digits = re.sub(r"\D", "", wanted)
    number = re.sub(r"\D", "", one.phone or "")
    same_number = len(digits) >= _FEWEST_DIGITS and digits == number
    return _plain(wanted) in (_plain(one.name), _plain(one.email)) or same_number


def _matches(one: Known, wanted: str) -> bool:
    digits = re.sub(r"[\s().\-/+]", "", wanted)
    number = re.sub(r"\D", "", one.phone or "")
    by_number = digits.isdecimal() and len(digits) >= _FEWEST_DIGITS and digits in number
    return any(wanted in (text or "").casefold() for text in (one.name, one.email)) or by_number
