"""Weights learned from the fleet, by version."""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING, Any

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.schema import recall_weights

if TYPE_CHECKING:
    from service.core.recall import Weights


@dataclass(frozen=True)
class Learned:
    """Weights with when and from how many records they were learned, and the log likelihoods that spoke for them."""

    number: int
    at: datetime
    records: int
    weights: Weights
    gains: dict[str, float]
    """By how much the mean log likelihood of what was held out rose over the built-in weights, by way of holding out."""


class RecallWeights:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def latest(self) -> Learned | None:
        """Return the weights learned last, None where none were."""
        row = self._desk.one(sa.select(recall_weights).order_by(recall_weights.c.number.desc()).limit(1))
        return None if row is None else _shaped(row)

    def add(self, weights: Weights, *, records: int, gains: dict[str, float]) -> Learned:
        """Keep weights; they are named by their number and the day."""
        last = self.latest()
        number, now = (last.number if last else 0) + 1, self._desk.now()
        named = weights.model_copy(update={"version": f"learned-{number} ({now:%Y-%m-%d}, {records} records)"})
        row = {
            "number": number, "at": now, "records": records, "gains": json.dumps(gains, sort_keys=True),
            "document": named.model_dump_json(),
        }  # fmt: skip
        self._desk.write(recall_weights.insert(), [row])
        return Learned(number, now, records, named, gains)

    def forget(self) -> int:
        """Take all learned weights away, so that the built-in ones are used. Returns how many there were."""
        return int(self._desk.connection.execute(recall_weights.delete()).rowcount)


def _shaped(row: sa.Row[Any]) -> Learned:
    from service.core.recall import Weights  # noqa: PLC0415 - large, and only where weights were learned

    weights = Weights.model_validate_json(row.document)
    return Learned(row.number, row.at, row.records, weights, json.loads(row.gains))
