"""What an import did, or would do."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field

from service.core.batch import Batch, RowOutcome
from service.files.read.tables import RowError

Advance = Callable[[int], None]
"""Told how many more rows are done."""


def silent(_done: int) -> None:
    """Tell nobody."""


@dataclass(frozen=True)
class ImportReport:
    """References (records) or ids (hull models) by what became of them, and every cell that was not taken.

    `changes` names the columns in which an updated one differs. A preview wrote nothing. For records also: `rows`, one
    by one; `remarks`, what was taken for granted of the file; headings whose cells were `kept` in the notes or
    `left_out`; and the `batch`, under which it is remembered.
    """

    created: tuple[str, ...] = ()
    updated: tuple[str, ...] = ()
    unchanged: tuple[str, ...] = ()
    rejected: tuple[RowError, ...] = ()
    changes: dict[str, tuple[str, ...]] = field(default_factory=dict)
    preview: bool = False
    rows: tuple[RowOutcome, ...] = ()
    remarks: tuple[str, ...] = ()
    kept: tuple[str, ...] = ()
    left_out: tuple[str, ...] = ()
    batch: Batch | None = None

    @property
    def whole(self) -> bool:
        """Say whether every row was taken."""
        return not self.rejected


def by_outcome(rows: Iterable[RowOutcome], outcome: str) -> tuple[str, ...]:
    """Return the references of the rows of which this became, in order."""
    return tuple(row.reference or "" for row in rows if row.outcome == outcome)


def faults_of(rows: Iterable[RowOutcome]) -> tuple[RowError, ...]:
    """Return every fault of the rejected rows, in order."""
    return tuple(
        RowError(row.sheet, row.row, fault["column"], fault["value"], fault["expected"])
        for row in rows
        if row.outcome == "rejected"
        for fault in row.detail or ()
    )
