"""Give a key back that was taken back by mistake a moment ago."""

from __future__ import annotations

from datetime import timedelta

from service.flow.refusal import Refused
from service.store.keys import ApiKey
from service.store.unit import UnitOfWork

MOMENT = timedelta(minutes=10)
"""So long a mistake can be put right; whoever gave the key up for lost has it replaced by then."""


def restore_key(uow: UnitOfWork, key_id: str) -> ApiKey:
    """Let a key open what it did, and commit. Refused where it was not revoked, or longer than MOMENT ago."""
    with uow:
        found = uow.keys.get(key_id)
        if found is None or found.revoked is None:
            raise Refused(f"there is no revoked key {key_id!r}")
        if uow.now() - found.revoked > MOMENT:
            raise Refused(f"key {key_id} was revoked longer than ten minutes ago; make a new one")
        found = uow.keys.set(key_id, revoked=None)
        uow.commit()
    return found
