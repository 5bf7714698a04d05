"""Take a key back at once."""

from __future__ import annotations

from service.flow.refusal import Refused
from service.store.keys import ApiKey
from service.store.unit import UnitOfWork


def revoke_key(uow: UnitOfWork, key_id: str) -> ApiKey:
    """Revoke a key and commit; one that was revoked stays so. Refused where there is no such id."""
    with uow:
        found = uow.keys.get(key_id)
        if found is None:
            raise Refused(f"there is no key {key_id!r}; `transom keys list` shows them")
        if found.revoked is None:
            found = uow.keys.set(key_id, revoked=uow.now())
        uow.commit()
    return found
