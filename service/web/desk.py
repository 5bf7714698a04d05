"""What the running desk holds."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from typing import Annotated, cast

from fastapi import Depends, Request

from service.files.vault import Vault
from service.store.unit import Store


@dataclass(frozen=True)
class Desk:
    """A running desk. `random` gives bytes nobody can guess; `passes` counts a try to sign in from an address."""

    store: Store
    vault: Vault
    clock: Callable[[], datetime]
    random: Callable[[int], bytes]
    passes: Callable[[str], bool]


def desk(request: Request) -> Desk:
    """Return the desk that a request came to."""
    return cast("Desk", request.app.state.desk)


Here = Annotated[Desk, Depends(desk)]
