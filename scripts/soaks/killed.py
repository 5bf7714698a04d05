"""What `kill` starts and kills: one step of work, in a process forked from one that has loaded everything.

It says "begun" when it begins, and after each commit how much is acknowledged in all, one line each, into a file.
"""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Callable
from pathlib import Path

from service.bootstrap import clock
from service.files.vault import Vault
from service.flow import import_records as imports
from service.flow import undo_import as undoing
from service.flow.back_up import back_up
from service.flow.merge_hulls import merge_hulls
from service.flow.merge_records import merge_records
from service.flow.restore import restore
from service.flow.resume_import import resume_import
from service.flow.work_jobs import Crew, Pace
from service.store.ids import random_id
from service.store.unit import Store

CHUNK = 100
QUICK = Pace(look=0.05, beat=0.2, patience=1.0, shyness=0.2)
WHO = "soak"
Say = Callable[[int], None]


def act(what: str, given: str, url: str, log: str) -> None:
    """Do one step to its end, saying in the file `log` how far it is."""
    imports.CHUNK = undoing.CHUNK = CHUNK
    sys.stderr = Path(f"{log}.err").open("w", encoding="utf-8")  # noqa: SIM115 - as long as the process
    said = os.open(log, os.O_WRONLY | os.O_APPEND | os.O_CREAT)

    def say(word: int | str) -> None:
        os.write(said, f"{word}\n".encode())

    say("begun")
    STEPS[what](given, url, say)


def _opened(url: str) -> Store:
    return Store(url, now=clock, new_id=random_id)


def _counting(say: Say) -> Say:
    far = 0

    def more(count: int) -> None:
        nonlocal far
        far += count
        say(far)

    return more


def _import(file: str, url: str, say: Say) -> None:
    path = Path(file)
    imports.import_records(_opened(url).writing(), path.read_bytes(), path.name, progress=_counting(say))


def _resume(import_id: str, url: str, say: Say) -> None:
    resume_import(_opened(url).writing(), import_id, progress=_counting(say))


def _undo(import_id: str, url: str, say: Say) -> None:
    undoing.undo_import(_opened(url).writing(), import_id, progress=_counting(say))


def _work(job_id: str, url: str, say: Say) -> None:
    """Be a worker until the job is over; what it acknowledged is what stands in the database at a look."""
    store = _opened(url)
    crew = Crew(store, f"soak:{os.getpid()}", stopwatch=time.monotonic, pace=QUICK)
    crew.start()
    while True:
        with store.reading() as uow:
            job = uow.jobs.get(job_id)
        say(job.done)
        if job.over:
            break
        time.sleep(0.01)
    crew.stop()


def _merge(pairs: str, url: str, say: Say) -> None:
    store, more = _opened(url), _counting(say)
    for pair in pairs.split():
        into, other = pair.split("<")
        merge_records(store.writing(), into, other, who=WHO)
        more(1)


def _merge_hulls(pairs: str, url: str, say: Say) -> None:
    store, more = _opened(url), _counting(say)
    for pair in pairs.split():
        into, other = pair.split("<")
        merge_hulls(store.writing(), into, other, who=WHO, why="one boat")
        more(1)


def _back_up(path: str, url: str, say: Say) -> None:
    back_up(url, Vault(Path(path).parent / "vault"), Path(path), at=clock())
    say(1)


def _restore(path: str, url: str, say: Say) -> None:
    restore(Path(path), url, Vault(Path(path).parent / "restored"))
    say(1)


STEPS: dict[str, Callable[[str, str, Say], None]] = {
    "import": _import,
    "resume": _resume,
    "undo": _undo,
    "recheck": _work,
    "merge": _merge,
    "merge hulls": _merge_hulls,
    "backup": _back_up,
    "restore": _restore,
}
