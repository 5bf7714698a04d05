"""Import, going on with it, and undoing it, each killed (SIGKILL) at a random moment, on both databases in turn.

After each kill everything that was acknowledged is there, nothing is half there, and the next try goes on from there;
at the end the fleet is what the file says, and after undoing what it was before.
"""

from __future__ import annotations

import signal
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Callable, Iterable
from contextlib import ExitStack
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np
import sqlalchemy as sa

from scripts.bench_import import grown
from service.bootstrap import clock
from service.core.record import Record
from service.files.write.tables import put_records
from service.flow.import_hulls import import_hulls
from service.store import dialect, migrate, schema
from service.store.ids import random_id
from service.store.unit import Store
from tests.support.databases import Databases, Files, Served
from tests.support.postgres import server

TOP = Path(__file__).resolve().parents[2]
HULLS = TOP / "seed_fixtures" / "hulls.csv"
ROWS = 6_000
"""Enough for the file to be read in a process of its own, which is left alone by the kill and ends by itself."""
OWNED = (schema.records, schema.record_revisions, schema.boats)


class BrokenError(Exception):
    """Something that was acknowledged is missing, or half there."""


@dataclass
class Round:
    """One database with the file imported into it; `lasts` says how long each step takes when nobody kills it."""

    url: str
    file: Path
    dice: np.random.Generator
    lasts: dict[str, float]
    said: list[str] = field(default_factory=list)

    def killed(self, what: str, given: str) -> int:
        """Run a step, kill it at a random moment, and return how many rows it had acknowledged."""
        delay = float(self.dice.uniform(0, self.lasts[what]))
        far, took, ended = started(what, given, self.url, delay)
        self.lasts[what] = took if ended else self.lasts[what]
        self.said.append(f"{what} {'done' if ended else f'killed after {delay:.3f} s'} at {far}")
        return far

    def whole(self, what: str, given: str) -> None:
        """Run a step to its end."""
        _, took, ended = started(what, given, self.url, None)
        if not ended:
            raise BrokenError(f"{what} did not end by itself")
        self.lasts[what] = max(took, 0.05)


def started(what: str, given: str, url: str, delay: float | None) -> tuple[int, float, bool]:
    """Return how many rows were acknowledged, how long it took, and whether it ended by itself."""
    command = [sys.executable, "-m", "scripts.soaks.killed", what, given, url]
    with subprocess.Popen(command, cwd=TOP, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) as child:  # noqa: S603 - our own
        out = child.stdout
        if out is None or out.readline().strip() != "begun":
            raise BrokenError(f"{what} did not begin: {child.stderr.read() if child.stderr else ''}")
        start = time.perf_counter()
        timer = threading.Timer(delay, child.send_signal, (signal.SIGKILL,)) if delay is not None else None
        if timer:
            timer.start()
        lines = out.read().split()
        status = child.wait()
        if timer:
            timer.cancel()
        if status not in (0, -signal.SIGKILL):
            raise BrokenError(f"{what} failed: {child.stderr.read() if child.stderr else ''}")
        return int(lines[-1]) if lines else 0, time.perf_counter() - start, status == 0


def look(url: str, acknowledged: int, *, undoing: bool = False) -> str | None:
    """Return the import's id once there is one. BrokenError where the database does not hold together."""
    store = Store(url, now=clock, new_id=random_id)
    try:
        with store.reading() as uow:
            batches = uow.imports.all()
            histories = uow.records.histories()
            outcomes = list(uow.imports.outcomes(batches[0].id)) if batches else []
        _sound(url)
    finally:
        store.close()
    if not batches:
        return _need(acknowledged == 0, "an import was acknowledged and is not there")
    (batch,) = batches
    left = {one.reference for one in outcomes if one.outcome == "created" and one.undo is None}
    _need(len(outcomes) == batch.done, f"{batch.done} rows are acknowledged, of {len(outcomes)} is said what became")
    _need([one.number for one in outcomes] == list(range(1, batch.done + 1)), "rows are missing or twice there")
    _need(left == set(histories), "the records are not those that are acknowledged")
    _need(all(len(steps) == 1 for steps in histories.values()), "a row was taken twice")
    done = sum(one.undo is not None for one in outcomes) if undoing else batch.done
    _need(done >= acknowledged, f"{acknowledged} rows were acknowledged, {done} are there")
    return batch.id


def _sound(url: str) -> None:
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection:
        counts = [connection.execute(sa.select(sa.func.count()).select_from(table)).scalar_one() for table in OWNED]
        _need(len(set(counts)) == 1, f"records, revisions and boats are {counts}")
        if engine.dialect.name == "sqlite":
            said = connection.exec_driver_sql("PRAGMA integrity_check").scalar()
            _need(said == "ok", f"the file is damaged: {said}")
            _need(connection.exec_driver_sql("PRAGMA foreign_key_check").first() is None, "references dangle")
    engine.dispose()


def _need(holds: bool, what: str) -> None:  # noqa: FBT001 - a condition and its text
    if not holds:
        raise BrokenError(what)


def fleet(url: str) -> dict[str, Record]:
    """Return every record."""
    store = Store(url, now=clock, new_id=random_id)
    with store.reading() as uow:
        found = {record.reference: record for record in uow.records.all()}
    store.close()
    return found


def one_round(mine: Round, wanted: dict[str, Record]) -> None:
    """Import, go on and undo with a kill in each."""
    batch = look(mine.url, mine.killed("import", str(mine.file)))
    if batch is None:
        mine.whole("import", str(mine.file))
        batch = look(mine.url, ROWS)
    else:
        look(mine.url, mine.killed("resume", batch))
        mine.whole("resume", batch)
    _need(batch is not None and look(mine.url, ROWS) == batch, "the import is not there")
    _need(fleet(mine.url) == wanted, "the fleet is not what the file says")
    look(mine.url, mine.killed("undo", str(batch)), undoing=True)
    mine.whole("undo", str(batch))
    _need(fleet(mine.url) == {}, "undoing left records")


def fill(url: str) -> None:
    """Make a database with the hull models."""
    migrate.upgrade(url)
    store = Store(url, now=clock, new_id=random_id)
    import_hulls(store.writing(), HULLS.read_bytes(), HULLS.name)
    store.close()


def run(seeds: Iterable[int], *, say: Callable[[str], None] = print) -> bool:
    """Return whether it holds for all seeds, and print one line each."""
    wanted = {record.reference: record for record in grown(ROWS)}
    holds = True
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="transom-kill-")))
        file = folder / "fleet.csv"
        with file.open("wb") as stream:
            put_records(stream, wanted.values(), "csv")
        kinds: list[Databases] = [Files(folder), Served(stack.enter_context(server()))]
        lasts = {kind.kind: {"import": 2.0, "resume": 1.0, "undo": 1.0} for kind in kinds}
        for seed in seeds:
            databases = kinds[seed % 2]
            mine = Round(databases.like("hulls", fill), file, np.random.default_rng(seed), lasts[databases.kind])
            try:
                one_round(mine, wanted)
                verdict = "holds"
            except BrokenError as broken:
                holds, verdict = False, f"DOES NOT HOLD: {broken} ({mine.url})"
            say(f"seed {seed} {databases.kind}: {'; '.join(mine.said)}: {verdict}")
    return holds
