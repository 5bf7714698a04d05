"""What happened in a transaction, for whoever is to be told of it, and on whose behalf."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

Action = Literal["created", "changed", "removed", "read"]


@dataclass(frozen=True, slots=True)
class Happening:
    """One thing that was written (or, of people's data, read).

    `owner` is the dealer it concerns, empty for the desk, None for everybody; `told` is what a webhook says of it.
    """

    action: Action
    kind: str
    thing: str
    owner: str | None = None
    told: Mapping[str, object] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Actor:
    """Who acts: a name for people, the key's id, the request's id."""

    who: str
    key: str | None = None
    request: str | None = None
