"""What an import did, or would do."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from service.files.read.tables import RowError

Advance = Callable[[int], None]
"""Told how many more rows are done."""


def silent(_done: int) -> None:
    """Tell nobody."""


@dataclass(frozen=True)
class ImportReport:
    """References (records) or ids (hull models) by what became of them, and every cell that was not taken.

    `changes` names the columns in which an updated one differs. A preview wrote nothing.
    """

    created: tuple[str, ...] = ()
    updated: tuple[str, ...] = ()
    unchanged: tuple[str, ...] = ()
    rejected: tuple[RowError, ...] = ()
    changes: dict[str, tuple[str, ...]] = field(default_factory=dict)
    preview: bool = False

    @property
    def whole(self) -> bool:
        """Say whether every row was taken."""
        return not self.rejected
