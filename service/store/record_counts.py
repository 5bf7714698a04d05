"""Records counted and looked over without reading any of them whole."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import sqlalchemy as sa

from service.store.desk import Desk
from service.store.json_text import number_in
from service.store.record_search import OWN, Asked, condition
from service.store.schema import record_revisions, records


class RecordCounts:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def tally(self, asked: Asked) -> int:
        """Return how many records are asked for."""
        counted = sa.select(sa.func.count()).select_from(records).where(OWN, *condition(asked))
        return int(self._desk.connection.execute(counted).scalar_one())

    def codes(self) -> tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...]]:
        """Return the codes of gears, brackets and shafts that records carry, each sorted."""
        c = records.c
        gears, lower, upper, shafts = (
            {str(row[0]) for row in self._desk.all(sa.select(one).distinct())}
            for one in (c.gear, c.lower, c.upper, c.shaft)
        )
        return tuple(sorted(gears)), tuple(sorted(lower | upper)), tuple(sorted(shafts))

    def numbers(self, asked: Asked, paths: Sequence[str]) -> Sequence[sa.Row[Any]]:
        """Return of each record that is asked for its stern and hull model's id, and what its document says at `paths`."""
        document = record_revisions.c.document
        of_head = sa.and_(record_revisions.c.record_id == records.c.id, record_revisions.c.number == records.c.head)
        picked = sa.select(records.c.stern, records.c.hull_id, *(number_in(document, path) for path in paths))
        return self._desk.all(picked.select_from(records).join(record_revisions, of_head).where(OWN, *condition(asked)))
