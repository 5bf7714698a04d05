"""Undo an import: what it added is taken away, what it changed is changed back, what was edited since is kept."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from service.core.batch import Batch, RowOutcome
from service.core.revision import Revision
from service.flow.import_report import Advance, silent
from service.store.errors import Conflict
from service.store.unit import UnitOfWork

CHUNK = 500


@dataclass(frozen=True)
class Undone:
    """What undoing came to, row by row, with `undo` and `why` in each."""

    batch: Batch
    rows: tuple[RowOutcome, ...]

    @property
    def whole(self) -> bool:
        """Say whether every row could be undone."""
        return all(row.undo == "undone" for row in self.rows)


@dataclass
class _Plan:
    away: list[str] = field(default_factory=list)
    back: list[Sequence[Revision]] = field(default_factory=list)


def undo_import(uow: UnitOfWork, import_id: str, *, who: str = "import", progress: Advance = silent) -> Undone:
    """Undo what an import did, `CHUNK` rows at a time, and say for each row what it came to.

    A record that the import added is taken away. One that it changed gets a further state, as it was before. One that
    was edited, measured or merged since is kept as it stands. What broke off is gone on with by undoing again.
    """
    with uow:
        batch = uow.imports.get(import_id)
    while True:
        with uow:
            rows = uow.imports.to_undo(import_id, CHUNK)
            if not rows:
                uow.imports.set_state(import_id, "undone")
                uow.commit()
                break
            uow.imports.note_undone(import_id, _undo(uow, batch, rows, who))
            uow.commit()
        progress(len(rows))
    with uow:
        touched = tuple(row for row in uow.imports.outcomes(import_id) if row.undo is not None)
        return Undone(uow.imports.get(import_id), touched)


def _undo(uow: UnitOfWork, batch: Batch, rows: Sequence[RowOutcome], who: str) -> list[RowOutcome]:
    references = [row.reference for row in rows if row.reference is not None]
    heads = uow.records.heads(references)
    spoken_of = uow.removals.spoken_of(references, since=batch.started)
    histories = uow.records.histories_among(row.reference for row in rows if row.reference and row.before)
    plan, noted = _Plan(), []
    for row in rows:
        reference = row.reference or ""
        if reference not in heads:
            noted.append(replace(row, undo="failed", why="the record is not there any more"))
        elif heads[reference] != row.after:
            noted.append(replace(row, undo="kept", why=f"it was edited since: revision {heads[reference]}"))
        elif row.outcome == "created" and reference in spoken_of:
            noted.append(replace(row, undo="kept", why=spoken_of[reference]))
        else:
            _plan(plan, row, histories.get(reference, ()), who, uow, batch)
            noted.append(replace(row, undo="undone"))
    try:
        uow.removals.remove(plan.away)
        if plan.back:
            uow.records.extend_histories(plan.back)
    except Conflict as problem:
        raise Conflict(problem.what, problem.where, f"Nothing of these {len(rows)} rows was undone") from problem
    return noted


def _plan(
    plan: _Plan, row: RowOutcome, history: Sequence[Revision], who: str, uow: UnitOfWork, batch: Batch
) -> None:  # fmt: skip
    if row.outcome == "created":
        plan.away.append(row.reference or "")
    elif row.after > row.before:
        before = history[row.before - 1].record
        step = Revision(number=1, who=who, at=uow.now(), why=f"undo of the import of {batch.name}", record=before)
        plan.back.append((step,))
