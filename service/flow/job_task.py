"""What a kind of job works with: the job, the database, and whether to go on."""

from __future__ import annotations

from threading import Event
from typing import Literal

from service.core.job import Job
from service.store.happening import Actor
from service.store.jobs import Hold
from service.store.unit import Store, UnitOfWork

Order = Literal["cancel", "let_go", "taken"]
"""cancel: a person said so; let_go: this worker ends, another may go on; taken: another one has it by now."""


class Stopped(Exception):  # noqa: N818 - named by what it says
    """The job is not to be gone on with here; `order` says why. What is acknowledged stays."""

    def __init__(self, order: Order) -> None:
        """Keep the reason."""
        super().__init__(order)
        self.order = order


class Task:
    """One turn at a job. Whatever is written through `writing()` is written only while the job is this turn's."""

    def __init__(self, store: Store, job: Job, held: Hold) -> None:
        """Begin where the job is said to be."""
        self.store, self.job, self.held = store, job, held
        self.done, self.total = job.done, job.total
        self._order: Order | None = None
        self._ordered = Event()

    def reading(self) -> UnitOfWork:
        """Return a unit of work that only reads."""
        return self.store.reading()

    def writing(self, more: int = 0) -> UnitOfWork:
        """Return a unit of work on behalf of whoever asked, whose commits say that `more` is done as well.

        Where somebody else has the job by now nothing is committed (`Taken`).
        """
        actor = Actor(self.job.who, self.job.key, self.job.request)
        return self.store.writing(actor, lambda uow: uow.jobs.hold(self.held, done=self.done + more, total=self.total))

    def begin(self, done: int, total: int | None = None) -> None:
        """Say how far the job is, as what is acknowledged tells. Stopped where it is not to be gone on with."""
        self.done, self.total = done, self.total if total is None else total
        self.see()

    def advance(self, more: int) -> None:
        """Say that so much more is acknowledged. Stopped where the job is not to be gone on with."""
        self.done += more
        self.see()

    def see(self) -> None:
        """Return where the job is to be gone on with; Stopped where it is not. Ask often: at least each second."""
        if self._order is not None:
            raise Stopped(self._order)

    def order(self, what: Order) -> None:
        """Have the job stopped, at the next look."""
        self._order = self._order or what
        self._ordered.set()

    def rest(self, seconds: float) -> bool:
        """Wait, but not when ordered to stop; say whether that was the case."""
        return self._ordered.wait(seconds)
