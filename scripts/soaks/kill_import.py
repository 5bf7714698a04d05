"""Import, going on with it, and undoing it, each killed. At the end the fleet is what the file says, then what it was."""

from __future__ import annotations

from pathlib import Path

from scripts.soaks.kill_round import Round, need, opened, see_sound
from service.core.record import Record

ROWS = 6_000
"""Enough for the file to be read in a process of its own, which is left alone by the kill and ends by itself."""


def run(mine: Round, url: str, file: Path, wanted: dict[str, Record]) -> None:
    """Import, go on and undo with a kill in each."""
    batch = _look(url, mine.killed("import", str(file), url))
    if batch is None:
        mine.whole("import", str(file), url)
        batch = _look(url, ROWS)
    else:
        _look(url, mine.killed("resume", batch, url))
        mine.whole("resume", batch, url)
    need(batch is not None and _look(url, ROWS) == batch, "the import is not there")
    need(_fleet(url) == wanted, "the fleet is not what the file says")
    _look(url, mine.killed("undo", str(batch), url), undoing=True)
    mine.whole("undo", str(batch), url)
    need(_fleet(url) == {}, "undoing left records")


def _look(url: str, acknowledged: int, *, undoing: bool = False) -> str | None:
    """Return the import's id once there is one. BrokenError where the database does not hold together."""
    store = opened(url)
    try:
        with store.reading() as uow:
            batches = uow.imports.all()
            histories = uow.records.histories()
            outcomes = list(uow.imports.outcomes(batches[0].id)) if batches else []
        see_sound(url)
    finally:
        store.close()
    if not batches:
        return need(acknowledged == 0, "an import was acknowledged and is not there")
    (batch,) = batches
    left = {one.reference for one in outcomes if one.outcome == "created" and one.undo is None}
    need(len(outcomes) == batch.done, f"{batch.done} rows are acknowledged, of {len(outcomes)} is said what became")
    need([one.number for one in outcomes] == list(range(1, batch.done + 1)), "rows are missing or twice there")
    need(left == set(histories), "the records are not those that are acknowledged")
    need(all(len(steps) == 1 for steps in histories.values()), "a row was taken twice")
    done = sum(one.undo is not None for one in outcomes) if undoing else batch.done
    need(done >= acknowledged, f"{acknowledged} rows were acknowledged, {done} are there")
    return batch.id


def _fleet(url: str) -> dict[str, Record]:
    store = opened(url)
    with store.reading() as uow:
        found = {record.reference: record for record in uow.records.all()}
    store.close()
    return found
