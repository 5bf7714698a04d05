"""Workers on one database of each kind, quick enough for tests, with kinds of jobs made for them."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator, Mapping
from threading import Event

import pytest

from service.bootstrap import clock
from service.core.job import Job
from service.flow.job_kinds import KINDS, Work
from service.flow.job_task import Task
from service.flow.start_job import start_job
from service.flow.work_jobs import Crew, Pace
from service.store.happening import Actor
from service.store.ids import random_id
from service.store.unit import Store

QUICK = Pace(look=0.05, beat=0.1, patience=0.6, shyness=0.3)
BO = Actor("bo", "key-1", "request-1")


def job_of(store: Store, job_id: str) -> Job:
    with store.reading() as uow:
        return uow.jobs.get(job_id)


def put(store: Store, kind: str = "count", **arguments: object) -> str:
    """Start a job and return its id."""
    return start_job(store.writing(), kind, "a job", arguments, actor=BO).id


def is_(store: Store, job_id: str, state: str) -> Callable[[], bool]:
    def holds() -> bool:
        job = job_of(store, job_id)
        assert state in {"failed", "cancelled"} or job.state != "failed", job.trouble
        return job.state == state

    return holds


@pytest.fixture
def hire(url: str) -> Iterator[Callable[..., Crew]]:
    """Start workers, each with a database of its own, as other processes would; they are stopped afterwards."""
    crews, stores = list[Crew](), list[Store]()

    def one(kinds: Mapping[str, Work] = KINDS, name: str = "here:1", pace: Pace = QUICK, hands: int = 1) -> Crew:
        stores.append(Store(url, now=clock, new_id=random_id))
        crews.append(Crew(stores[-1], name, stopwatch=time.monotonic, hands=hands, pace=pace, kinds={**KINDS, **kinds}))
        crews[-1].start()
        return crews[-1]

    yield one
    for crew in crews:
        if not crew._end.is_set():
            crew.stop()
    for store in stores:
        store.close()


class Steps:
    """A kind of job in steps, each of which is kept; `go` lets it take so many more."""

    def __init__(self, total: int = 5) -> None:
        self.total, self.taken, self.running, self.most = total, list[str](), 0, 0
        self.go = Event()
        self.begun = Event()

    def __call__(self, task: Task) -> dict[str, int]:
        self.running += 1
        self.most = max(self.most, self.running)
        try:
            with task.reading() as uow:
                done = {thing for thing, _ in uow.jobs.items(task.job.id)}
            task.begin(len(done), self.total)
            for number in range(len(done), self.total):
                self.begun.set()
                while not self.go.wait(0.02):
                    task.see()
                with task.writing(1) as uow:
                    uow.jobs.put_items(task.held, {f"step {number}": "done"})
                    uow.commit()
                self.taken.append(f"{task.job.id} {number}")
                task.advance(1)
            return {"steps": self.total}
        finally:
            self.running -= 1
