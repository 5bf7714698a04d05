"""What every repository works with: one connection, the clock and the maker of ids it was given."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, TypeVar

import sqlalchemy as sa

from service.store.dialect import MOST_BOUND, insert
from service.store.happening import Happening
from service.store.ids import IdMaker

T = TypeVar("T")
Clock = Callable[[], datetime]
_FEW = 20
_AT_ONCE = 1_000


@dataclass(frozen=True)
class Desk:
    connection: sa.Connection
    now: Clock
    new_id: IdMaker
    happened: list[Happening] = field(default_factory=list)
    """What repositories wrote that somebody may have to be told of, or that stands in the audit."""

    def all(self, statement: sa.Select[Any]) -> Sequence[sa.Row[Any]]:
        """Return every row."""
        return self.connection.execute(statement).all()

    def one(self, statement: sa.Select[Any]) -> sa.Row[Any] | None:
        """Return the first row, None where there is none."""
        return self.connection.execute(statement).first()

    def stream(self, statement: sa.Select[Any]) -> Iterator[sa.Row[Any]]:
        """Yield the rows as they come: nothing holds all of them at once."""
        with self.connection.execute(statement, execution_options={"yield_per": _AT_ONCE}) as rows:
            yield from rows

    def among(self, statement: sa.Select[Any], column: sa.Column[str], values: Sequence[str]) -> Iterator[sa.Row[Any]]:
        """Yield the rows in which `column` is one of `values`, however many there are."""
        for part in chunks(values, MOST_BOUND):
            yield from self.connection.execute(statement.where(column.in_(part)))

    def write(self, statement: sa.Insert | sa.Update, rows: Sequence[dict[str, Any]]) -> None:
        """Run the statement for every row in one go; nothing where there are none."""
        if len(rows) > _FEW and isinstance(statement, sa.Insert) and isinstance(statement.table, sa.Table):
            insert(self.connection, statement.table, rows)
        elif rows:
            self.connection.execute(statement, rows)


@contextmanager
def uncollected() -> Iterator[None]:
    """Pause the collector of reference cycles while very many values without cycles are built.

    It would walk all that was built so far over and over: four fifths of the time of loading 100,000 records.
    """
    was = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was:
            gc.enable()


def chunks(values: Sequence[T], size: int) -> Iterator[Sequence[T]]:
    """Yield `values` in parts of at most `size`.

    >>> list(chunks([1, 2, 3], 2))
    [[1, 2], [3]]
    """
    for start in range(0, len(values), size):
        yield values[start : start + size]
