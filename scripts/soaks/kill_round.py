"""A step started in a process of its own, killed at a random moment; and what must hold of a database after any kill."""

from __future__ import annotations

import itertools
import multiprocessing
import time
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np
import sqlalchemy as sa

from scripts.soaks.killed import act
from service.bootstrap import clock
from service.store import dialect, schema
from service.store.ids import random_id
from service.store.unit import Store

OWNED = (schema.records, schema.boats)
_FORK = multiprocessing.get_context("forkserver")
_FORK.set_forkserver_preload(["scripts.soaks.killed"])
_LOGS = itertools.count()
_PATIENCE_S = 600.0


class BrokenError(Exception):
    """Something that was acknowledged is missing, or half there."""


def need(holds: bool, what: str) -> None:  # noqa: FBT001 - a condition and its text
    """Raise BrokenError with this text unless it holds."""
    if not holds:
        raise BrokenError(what)


@dataclass
class Round:
    """One seed's steps; `lasts` says how long each takes when nobody kills it, `kills` how often each was killed."""

    kind: str
    folder: Path
    dice: np.random.Generator
    lasts: dict[str, float]
    kills: dict[str, int]
    said: list[str] = field(default_factory=list)

    def killed(self, what: str, given: str, url: str) -> int:
        """Run a step, kill it at a random moment, and return how much it had acknowledged."""
        delay = float(self.dice.uniform(0, self.lasts.get(what, 1.0)))
        far, took, ended = self._run(what, given, url, delay)
        if ended:
            self.lasts[what] = max(took, 0.02)
        else:
            self.kills[what] = self.kills.get(what, 0) + 1
        self.said.append(f"{what} {'done' if ended else f'killed after {delay:.3f} s'} at {far}")
        return far

    def whole(self, what: str, given: str, url: str) -> int:
        """Run a step to its end and return how much it acknowledged."""
        far, took, ended = self._run(what, given, url, None)
        need(ended, f"{what} did not end by itself")
        self.lasts[what] = max(took, 0.02)
        return far

    def _run(self, what: str, given: str, url: str, delay: float | None) -> tuple[int, float, bool]:
        """Return how much was acknowledged, how long it took, and whether it ended by itself."""
        log = self.folder / f"log{next(_LOGS)}"
        log.touch()
        child = _FORK.Process(target=act, args=(what, given, url, str(log)))
        child.start()
        ends = time.monotonic() + _PATIENCE_S
        while not log.stat().st_size and child.is_alive():
            need(time.monotonic() < ends, f"{what} did not begin")
            time.sleep(0.002)
        start = time.monotonic()
        child.join(_PATIENCE_S if delay is None else delay)
        took = time.monotonic() - start
        child.kill()
        child.join()
        if child.exitcode not in (0, -9):
            raise BrokenError(f"{what} failed: {Path(f'{log}.err').read_text(encoding='utf-8')}")
        lines = [line for line in log.read_text(encoding="utf-8").split() if line.isdecimal()]
        return int(lines[-1]) if lines else 0, took, child.exitcode == 0


def opened(url: str) -> Store:
    """Return the database, as any desk would open it."""
    return Store(url, now=clock, new_id=random_id)


def see_sound(url: str) -> None:
    """BrokenError where the database does not hold together in itself."""
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection:
        counts = [connection.execute(sa.select(sa.func.count()).select_from(table)).scalar_one() for table in OWNED]
        need(len(set(counts)) == 1, f"records and boats are {counts}")
        c = schema.record_revisions.c
        heads = dict(
            tuple(row)
            for row in connection.execute(sa.select(c.record_id, sa.func.max(c.number)).group_by(c.record_id))
        )
        said = dict(tuple(row) for row in connection.execute(sa.select(schema.records.c.id, schema.records.c.head)))
        need(heads == said, "records and their revisions do not agree")
        if engine.dialect.name == "sqlite":
            checked = connection.exec_driver_sql("PRAGMA integrity_check").scalar()
            need(checked == "ok", f"the file is damaged: {checked}")
            need(connection.exec_driver_sql("PRAGMA foreign_key_check").first() is None, "references dangle")
    engine.dispose()
