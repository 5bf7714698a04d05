"""How the ledger names what it keeps."""

from __future__ import annotations

import uuid
from collections.abc import Callable

IdMaker = Callable[[str], str]
"""Given a kind of thing, returns an id never given before."""


def random_id(kind: str) -> str:
    """Return `kind-` and 32 random hexadecimal digits."""
    return f"{kind}-{uuid.uuid4().hex}"  # noqa: TID251 - this is where ids come from; all else is handed a maker
