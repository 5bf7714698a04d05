"""Make a key to the service: new, or in the place of an earlier one."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

from service.core.api_key import SCOPES, digest, minted
from service.core.words import nearest
from service.flow.refusal import Refused
from service.store.keys import ApiKey
from service.store.unit import UnitOfWork

LONGEST_DAYS = 3660


@dataclass(frozen=True)
class KeyWanted:
    """What a key is to be: whose (`dealer`; None for the maker's own desk), what it opens, for how many days.

    `replaces` is the id of a key that ends `grace_days` from now; what is not said is taken from it.
    """

    name: str | None = None
    scopes: tuple[str, ...] = ()
    dealer: str | None = None
    days: int = 365
    replaces: str | None = None
    grace_days: int = 7


@dataclass(frozen=True)
class Minted:
    """The key as it is kept, and its text, which nobody can ever show again."""

    key: ApiKey
    text: str


def create_key(uow: UnitOfWork, wanted: KeyWanted, *, random: bytes, who: str) -> Minted:
    """Make a key and commit. Refused names a scope that does not exist, and a key that cannot be replaced."""
    with uow:
        now = uow.now()
        before = _before(uow, wanted.replaces)
        scopes = tuple(scope for scope in SCOPES if scope in (wanted.scopes or (before.scopes if before else ())))
        _see(wanted, scopes)
        made, text = minted(random)
        key = ApiKey(
            id=made,
            digest=digest(text),
            name=wanted.name or (before.name if before else "unnamed"),
            dealer=wanted.dealer or (before.dealer if before else None),
            scopes=scopes,
            who=who,
            created=now,
            expires=now + timedelta(days=wanted.days),
            replaces=wanted.replaces,
        )
        uow.keys.add(key)
        if before is not None:
            ends = now + timedelta(days=wanted.grace_days)
            uow.keys.set(before.id, expires=ends if before.expires is None else min(ends, before.expires))
        uow.commit()
    return Minted(key, text)


def _before(uow: UnitOfWork, key: str | None) -> ApiKey | None:
    if key is None:
        return None
    found = uow.keys.get(key)
    if found is None:
        raise Refused(f"there is no key {key!r}; `transom keys list` shows them")
    if found.revoked is not None:
        raise Refused(f"key {key} was revoked; make a new one without --replaces")
    return found


def _see(wanted: KeyWanted, scopes: tuple[str, ...]) -> None:
    for scope in wanted.scopes:
        if scope not in SCOPES:
            near = nearest(scope, SCOPES)
            raise Refused(f"there is no scope {scope!r}; " + (f"did you mean {near!r}?" if near else ", ".join(SCOPES)))
    if not scopes:
        raise Refused(f"a key that opens nothing is of no use; give a scope: {', '.join(SCOPES)}")
    if wanted.dealer is not None and "admin" in scopes:
        raise Refused("a dealer's key cannot be 'admin', which sees every dealer's enquiries; leave one of the two")
    if not 1 <= wanted.days <= LONGEST_DAYS or not 0 <= wanted.grace_days <= LONGEST_DAYS:
        raise Refused(f"a key lasts 1 to {LONGEST_DAYS} days; one that is replaced at least 0 more")
