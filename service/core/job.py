"""Work longer than a request, as the ledger remembers it: what was asked, how far it is, what it came to."""

from __future__ import annotations

from datetime import datetime
from typing import Any, Literal

from service.core.boat import Shape

State = Literal["waiting", "running", "done", "failed", "cancelled"]
"""waiting: for a worker; running: a worker has it (whose word is its `beat`); failed and cancelled can be gone on with."""
MOST_STALLS = 5
"""Times a job may come to a halt without having got any further, before it is left to a person."""


class Job(Shape):
    """One job. `done` of `total` are acknowledged (of what, the kind says); `total` is None where nobody knows yet.

    `worker` is who has it. `turn` counts how often it was taken up, and tells who holds it now from whoever held it
    before. `beat` grows as long as its worker lives: whoever sees it stand still may take the job for left. Times are
    for people; nothing is decided by them. `trouble` says why it stopped, `result` what it came to.
    """

    id: str
    kind: str
    name: str
    arguments: dict[str, Any]
    who: str
    key: str | None = None
    request: str | None = None
    state: State
    cancelling: bool
    done: int
    total: int | None
    asked: datetime
    started: datetime | None
    changed: datetime
    ended: datetime | None
    worker: str | None
    turn: int
    beat: int
    stalls: int
    mark: int
    trouble: str | None
    result: dict[str, Any] | None

    @property
    def over(self) -> bool:
        """Say whether nobody works on it and nobody will, unless a person says so."""
        return self.state in ("done", "failed", "cancelled")


def stalled(done: int, mark: int, stalls: int) -> int:
    """Return how often a job came to a halt without getting any further, this halt counted; `mark` is where it began.

    >>> stalled(200, 100, 3), stalled(100, 100, 3)
    (0, 4)
    """
    return 0 if done > mark else stalls + 1
