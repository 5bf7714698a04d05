"""The history of the registry of hull models: every change, numbered on; the last number is the registry's version."""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import Any, NamedTuple

import sqlalchemy as sa

from service.core.registry import Cell, HullChange, Kind, in_effect
from service.store.desk import Desk
from service.store.schema import hull_change_models, hull_changes, hull_models


class Mark(NamedTuple):
    """Where a history stands."""

    number: int
    at: datetime


class HullLog:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def version(self) -> int:
        """Return a number that grows with every change to hull models or aliases; 0 where there was none."""
        return int(self._desk.connection.execute(sa.select(sa.func.max(hull_changes.c.number))).scalar() or 0)

    def mark(self, number: int | None = None) -> Mark | None:
        """Return the last change's number and time, or those of a change; None where there is none.

        Two histories that went apart, as after a restore, have different marks under one number.
        """
        c = hull_changes.c
        wanted = sa.select(c.number, c.at).order_by(c.number.desc()).limit(1)
        row = self._desk.one(wanted if number is None else wanted.where(c.number == number))
        return None if row is None else Mark(row.number, row.at)

    def changed_since(self, version: int) -> frozenset[str]:
        """Return the ids of hull models that are not what they were then: changed, come, gone, or answering to more.

        What stands for one of them now or stood for it then is among them.
        """
        c = hull_change_models.c
        touched = sa.select(c.hull_id).where(c.number > version).distinct().subquery()
        rows = self._desk.all(
            sa.select(hull_models.c.id, hull_models.c.survivor).join(touched, touched.c.hull_id == hull_models.c.id)
        )
        return frozenset(name for row in rows for name in (row.id, row.survivor) if name is not None)

    def add(self, kind: Kind, cells: Sequence[Cell], *, who: str, why: str, undoes: int | None = None) -> int:
        """Write down a change and return its number."""
        number = self.version() + 1
        document = json.dumps([[c.of, c.key, c.before, c.after] for c in cells], ensure_ascii=False)
        row = {"number": number, "at": self._desk.now(), "who": who, "why": why, "kind": kind, "undoes": undoes}
        self._desk.write(hull_changes.insert(), [row | {"cells": document}])
        touched = sorted(set().union(*(cell.ids() for cell in cells)))
        self._desk.write(hull_change_models.insert(), [{"number": number, "hull_id": name} for name in touched])
        return number

    def get(self, number: int) -> HullChange | None:
        """Return one change, None where there is no such number."""
        row = self._desk.one(sa.select(hull_changes).where(hull_changes.c.number == number))
        return None if row is None else _shaped(row)

    def latest(self, limit: int) -> tuple[HullChange, ...]:
        """Return the last changes, newest first."""
        newest = sa.select(hull_changes).order_by(hull_changes.c.number.desc()).limit(limit)
        return tuple(map(_shaped, self._desk.all(newest)))

    def of(self, hull_ids: Iterable[str]) -> tuple[HullChange, ...]:
        """Return every change that concerned one of these hull models, oldest first."""
        c = hull_change_models.c
        found = {row.number for row in self._desk.among(sa.select(c.number), c.hull_id, sorted(set(hull_ids)))}
        wanted = sa.select(hull_changes).where(hull_changes.c.number.in_(sorted(found)))
        return tuple(map(_shaped, self._desk.all(wanted.order_by(hull_changes.c.number))))

    def undone(self) -> frozenset[int]:
        """Return the numbers of the changes that were taken back and hold no more."""
        c = hull_changes.c
        taken = defaultdict[int, list[int]](list)
        for row in self._desk.all(sa.select(c.number, c.undoes).where(c.undoes.is_not(None))):
            taken[row.undoes].append(row.number)
        return frozenset(number for number in taken if not in_effect(number, taken))


def _shaped(row: sa.Row[Any]) -> HullChange:
    cells = tuple(Cell(of, tuple(key), before, after) for of, key, before, after in json.loads(row.cells))
    return HullChange(row.number, row.at, row.who, row.why, row.kind, row.undoes, cells)
