"""A worker: takes up jobs that wait, keeps them as long as it lives, stops them when told, and takes up what others left."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from threading import Event, Lock, Semaphore, Thread
from typing import Any

from service.core.form import FormError
from service.core.job import State
from service.files.read.errors import Unreadable
from service.flow.job_kinds import KINDS, Work
from service.flow.job_task import Stopped, Task
from service.flow.job_watch import Watch
from service.flow.known import NoCatalogueError
from service.flow.refusal import Refused
from service.store.errors import StoreAway, StoreError
from service.store.jobs import Sign, Taken
from service.store.unit import Store, UnitOfWork

Say = Callable[[str], object]
_PAUSES_S = (1.0, 3.0, 10.0, 30.0, 60.0)


@dataclass(frozen=True)
class Pace:
    """How often a worker looks for something to do or to stop, and says that it lives; all in seconds.

    Whoever gives no sign for `patience` has left its job. Where the database calls workers, one that looks leaves a job
    to those who are called for `shyness`.
    """

    look: float = 0.5
    beat: float = 2.0
    patience: float = 15.0
    shyness: float = 5.0


class Crew:
    """Works on jobs in threads of this process, `hands` at a time, from `start` to `stop`.

    `name` is for people. `stopwatch` gives seconds and never goes back. What befalls the worker itself, and no job, is
    told by `say`.
    """

    def __init__(
        self,
        store: Store,
        name: str,
        *,
        stopwatch: Callable[[], float],
        hands: int = 1,
        pace: Pace | None = None,
        kinds: Mapping[str, Work] = KINDS,
        say: Say = lambda _text: None,
    ) -> None:
        """Keep what to work with; nothing is begun."""
        self._store, self.name, self._stopwatch, self._hands = store, name, stopwatch, hands
        self._pace, self._kinds, self._say = pace or Pace(), kinds, say
        self._free, self._guard = Semaphore(hands), Lock()
        self._tasks: dict[str, Task] = {}
        self._end, self._gone, self._wake = Event(), Event(), Event()
        self._left, self._unseen = Watch(self._pace.patience), Watch(self._pace.shyness)
        self._threads = [Thread(target=self._keep, name="jobs", daemon=True)]
        self._beaten = stopwatch()
        self.called = False

    def start(self) -> None:
        """Begin."""
        with suppress(StoreError), self._store.reading() as uow:
            self.called = uow.calls()
        if self.called:
            self._threads.append(Thread(target=self._answer, name="jobs called", daemon=True))
        for thread in list(self._threads):
            thread.start()

    def stop(self, patience_s: float = 30.0) -> bool:
        """Give back what is being worked on, at its next step, and end; False where a step takes longer than that.

        Whoever looks next finds what was not given back.
        """
        self._end.set()
        for task in self._mine().values():
            task.order("let_go")
        ends = self._stopwatch() + patience_s
        # every hand is free again when its job is given back
        freed = all([self._free.acquire(timeout=max(0.0, ends - self._stopwatch())) for _ in range(self._hands)])  # noqa: C419 - all of them
        self._gone.set()
        self._wake.set()
        if freed:
            for thread in self._threads:
                thread.join()
        return freed

    def nudge(self) -> None:
        """Look now."""
        self._wake.set()

    def idle(self) -> bool:
        """Say whether nothing waits and nothing runs, here or elsewhere."""
        with self._store.reading() as uow:
            return not uow.jobs.signs() and not self._mine()

    def _mine(self) -> dict[str, Task]:
        with self._guard:
            return dict(self._tasks)

    def _keep(self) -> None:
        troubled = False
        while not self._gone.is_set():
            self._wake.wait(self._pace.look)
            self._wake.clear()
            try:
                self._look()
                troubled = False
            except Exception as error:  # noqa: BLE001 - whatever it is, it is looked again
                if not troubled:
                    self._say(f"jobs wait: {error}")
                troubled = True

    def _look(self) -> None:
        mine = self._mine()  # before the look: what is taken after it is not missed
        with self._store.reading() as uow:
            signs = uow.jobs.signs()
        now, seen = self._stopwatch(), {sign.id: sign for sign in signs}
        for job_id, task in mine.items():
            sign = seen.get(job_id)
            if sign is None or (sign.state, sign.turn) != ("running", task.held.turn):
                task.order("taken")
            elif sign.cancelling:
                task.order("cancel")
        if now - self._beaten >= self._pace.beat:
            self._beaten = now
            self._beat(mine)
        self._take_over(self._left.still([s for s in signs if s.state == "running" and s.id not in mine], now))
        waiting = [sign for sign in signs if sign.state == "waiting"]
        for sign in self._unseen.still(waiting, now) if self.called else waiting:
            if self._end.is_set() or not self._free.acquire(blocking=False):
                return
            Thread(target=self._do_freely, args=(sign.id,), name=sign.id, daemon=True).start()

    def _beat(self, mine: Mapping[str, Task]) -> None:
        if not mine:
            return
        with self._store.writing() as uow:
            for task in mine.values():
                try:
                    uow.jobs.hold(task.held, done=task.done, total=task.total)
                except Taken:
                    task.order("taken")
            uow.commit()

    def _take_over(self, left: list[Sign]) -> None:
        for sign in left:
            with self._store.writing() as uow:
                if uow.jobs.lapse(sign):
                    self._say(f"job {sign.id} was left by its worker; it is gone on with")
                uow.commit()

    def _answer(self) -> None:
        self._store.answer_calls(self._called, self._end, name=self.name, hands=self._hands)

    def _called(self, job_id: str) -> None:
        while not self._end.is_set():
            if self._free.acquire(timeout=self._pace.look):
                self._do_freely(job_id)
                return

    def _do_freely(self, job_id: str) -> None:
        try:
            self._do(job_id)
        except Exception as error:  # noqa: BLE001 - the job stays as it is, and is found again
            self._say(f"job {job_id} waits: {error}")
        finally:
            with self._guard:
                self._tasks.pop(job_id, None)
            self._free.release()
            self._wake.set()

    def _do(self, job_id: str) -> None:
        with self._store.writing() as uow:
            taken = uow.jobs.take(job_id, self.name)
            uow.commit()
        if taken is None:
            return
        task = Task(self._store, *taken)
        with self._guard:
            self._tasks[job_id] = task
        if self._end.is_set():
            task.order("let_go")
        with suppress(Taken):
            self._run(task)

    def _run(self, task: Task) -> None:
        work = self._kinds.get(task.job.kind, _unknown)
        try:
            task.see()
            result = work(task)
        except Stopped as stopped:
            if stopped.order == "cancel":
                self._close(task, "cancelled")
            elif stopped.order == "let_go":
                self._settle(lambda uow: uow.jobs.give_back(task.held, done=task.done))
        except StoreAway as away:
            task.rest(_PAUSES_S[min(task.job.stalls, len(_PAUSES_S) - 1)])
            self._close(task, "waiting", trouble=f"{away.what}. {away.mend}")
        except Taken:
            raise
        except (StoreError, Refused, Unreadable, FormError, NoCatalogueError) as problem:
            self._close(task, "failed", trouble=str(problem))
        except Exception as fault:  # noqa: BLE001 - told in the job, where somebody looks
            self._close(task, "failed", trouble=f"a fault of the program itself ({type(fault).__name__}: {fault})")
        else:
            self._close(task, "done", result=result)

    def _close(
        self, task: Task, state: State, *, trouble: str | None = None, result: Mapping[str, Any] | None = None
    ) -> None:
        self._settle(lambda uow: uow.jobs.end(task.held, state, done=task.done, trouble=trouble, result=result))

    def _settle(self, write: Callable[[UnitOfWork], object]) -> None:
        """Write down what a turn came to, as soon as the database takes it; where this worker ends first, it is found."""
        pauses = iter(_PAUSES_S)
        while True:
            try:
                with self._store.writing() as uow:
                    write(uow)
                    uow.commit()
            except StoreAway:
                if self._end.wait(next(pauses, _PAUSES_S[-1])):
                    return
            else:
                return


def _unknown(task: Task) -> None:
    raise Refused(f"this version of the program knows no jobs of the kind {task.job.kind!r}")
