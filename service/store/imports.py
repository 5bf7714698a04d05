"""Imports: what was read from where, how far it got, and what became of every row."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator, Sequence
from typing import Any

import sqlalchemy as sa

from service.core.batch import OUTCOMES, Batch, RowOutcome, State
from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.happening import Happening
from service.store.kept_files import KeptFiles
from service.store.schema import import_rows, imports


class Imports:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk
        self.files = KeptFiles(desk)

    def begin(self, data: bytes, name: str, *, mapping: str | None, who: str, rows: int) -> Batch:
        """Keep the file and return a new import of it, of which no row is done yet."""
        now = self._desk.now()
        row: dict[str, Any] = {
            "id": self._desk.new_id("import"),
            "name": name,
            "sha256": self.files.keep(data),
            "mapping": mapping,
            "who": who,
            "started": now,
            "changed": now,
            "state": "running" if rows else "done",
            "rows": rows,
            "done": 0,
            **dict.fromkeys(OUTCOMES, 0),
        }
        self._desk.write(imports.insert(), [row])
        self._desk.happened.append(Happening("created", "import", row["id"]))
        return self.get(row["id"])

    def get(self, import_id: str) -> Batch:
        """Return one import. Conflict where there is no such id."""
        found = self._desk.one(_BATCH.where(imports.c.id == import_id))
        if found is None:
            raise Conflict("there is no such import", repr(import_id), "`transom imports list` shows them")
        return _batch(found)

    def all(self) -> tuple[Batch, ...]:
        """Return every import, the newest first."""
        return tuple(_batch(row) for row in self._desk.all(_BATCH.order_by(imports.c.started.desc(), imports.c.id)))

    def acknowledge(self, batch: Batch, outcomes: Sequence[RowOutcome]) -> Batch:
        """Write down what became of the next rows, in the same transaction as that itself, and return the import.

        Conflict where somebody else has gone on with it meanwhile: no row is ever done twice.
        """
        c = imports.c
        counted = Counter(one.outcome for one in outcomes)
        counts: dict[str, int] = {name: batch.counts[name] + counted[name] for name in OUTCOMES}
        done = batch.done + len(outcomes)
        said: dict[str, Any] = {
            "done": done,
            "state": "done" if done == batch.rows else "running",
            "changed": self._desk.now(),
            **counts,
        }
        mine = sa.and_(c.id == batch.id, c.done == batch.done, c.state == "running")
        if self._desk.connection.execute(imports.update().where(mine).values(**said)).rowcount != 1:
            raise Conflict("somebody else goes on with this import", batch.id, "See `transom imports show`")
        self._desk.write(import_rows.insert(), [{"import_id": batch.id, **_row(one)} for one in outcomes])
        return self.get(batch.id)

    def outcomes(self, import_id: str, *, after: int = 0, limit: int | None = None) -> Iterator[RowOutcome]:
        """Yield what became of the rows after the `after`-th, in order."""
        c = import_rows.c
        asked = _ROW.where(c.import_id == import_id, c.number > after).order_by(c.number)
        for row in self._desk.connection.execute(asked.limit(limit)):
            yield _outcome(row)

    def telling(self, import_id: str, limit: int) -> tuple[RowOutcome, ...]:
        """Return the first rows of which there is something to say: not taken, changed, or looked at for undoing."""
        c = import_rows.c
        said = sa.or_(c.outcome.in_(("rejected", "updated")), c.undo.is_not(None))
        return tuple(
            map(_outcome, self._desk.all(_ROW.where(c.import_id == import_id, said).order_by(c.number).limit(limit)))
        )

    def to_undo(self, import_id: str, limit: int) -> tuple[RowOutcome, ...]:
        """Return the next rows that changed something and were not looked at for undoing, the last ones first."""
        c = import_rows.c
        asked = _ROW.where(c.import_id == import_id, c.outcome.in_(("created", "updated")), c.undo.is_(None))
        return tuple(_outcome(row) for row in self._desk.all(asked.order_by(c.number.desc()).limit(limit)))

    def note_undone(self, import_id: str, outcomes: Sequence[RowOutcome]) -> None:
        """Write down what undoing these rows came to."""
        c = import_rows.c
        update = import_rows.update().where(c.import_id == import_id, c.number == sa.bindparam("the_number"))
        self._desk.write(update, [{"the_number": one.number, "undo": one.undo, "why": one.why} for one in outcomes])

    def set_state(self, import_id: str, state: State) -> None:
        """Write down how far an import is."""
        said = {"state": state, "changed": self._desk.now()}
        self._desk.connection.execute(imports.update().where(imports.c.id == import_id).values(**said))


def _row(one: RowOutcome) -> dict[str, Any]:
    return {
        "number": one.number,
        "sheet": one.sheet,
        "row": one.row,
        "outcome": one.outcome,
        "reference": one.reference,
        "before": one.before,
        "after": one.after,
        "detail": None if one.detail is None else json.dumps(one.detail, ensure_ascii=False),
    }


def _outcome(row: sa.Row[Any]) -> RowOutcome:
    said = dict(row._mapping)  # noqa: SLF001 - its public name
    said["detail"] = None if said["detail"] is None else json.loads(said["detail"])
    return RowOutcome(**said)


def _batch(row: sa.Row[Any]) -> Batch:
    said = dict(row._mapping)  # noqa: SLF001 - its public name
    counts = {name: said.pop(name) for name in OUTCOMES}
    return Batch(**said, counts=counts)


_BATCH = sa.select(imports)
_ROW = sa.select(*(column for column in import_rows.c if column.name != "import_id"))
