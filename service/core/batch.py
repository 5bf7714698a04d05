"""One import as the ledger remembers it: which file, how it was read, and what became of every row."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Literal

Outcome = Literal["created", "updated", "unchanged", "rejected"]
OUTCOMES: tuple[Outcome, ...] = ("created", "updated", "unchanged", "rejected")
State = Literal["running", "done", "undone"]
"""running: not all rows are acknowledged yet (being read right now, or broken off)."""
Undo = Literal["undone", "kept", "failed"]


@dataclass(frozen=True, slots=True)
class RowOutcome:
    """What became of the row that is `number`-th of the file's.

    `before` and `after` are the record's revisions; 0 where there was none. `detail` is a JSON value: what was wrong
    with a rejected row, which columns an updated record differs in. `undo` says what undoing it came to, and `why`.
    """

    number: int
    sheet: str | None
    row: int
    outcome: Outcome
    reference: str | None = None
    before: int = 0
    after: int = 0
    detail: Any = None
    undo: Undo | None = None
    why: str | None = None


@dataclass(frozen=True)
class Batch:
    """An import. Rows up to `done` are acknowledged; the file is kept under `sha256`, the mapping as it was given."""

    id: str
    name: str
    sha256: str
    mapping: str | None
    who: str
    started: datetime
    changed: datetime
    state: State
    rows: int
    done: int
    counts: Mapping[Outcome, int]
