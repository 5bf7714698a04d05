"""Jobs: what is to be done, who has it, how far it is, what it found.

Whoever takes a job gets the next turn of it, and every word about it is said with that turn: one who was taken for
dead and comes back is refused (`Taken`), in the transaction in which it would have written. So no two ever run one job,
whatever their clocks say.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa

from service.core.job import MOST_STALLS, Job, State, stalled
from service.store import job_queue
from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.happening import Actor, Happening
from service.store.job_schema import job_items, jobs


class Taken(Exception):  # noqa: N818 - named by what it says
    """Somebody else has the job by now: what was to be said of it is not."""


@dataclass(frozen=True)
class Hold:
    """A turn at a job."""

    id: str
    turn: int


@dataclass(frozen=True)
class Sign:
    """What a worker sees of a job that is waiting or running."""

    id: str
    state: State
    cancelling: bool
    turn: int
    beat: int


class Jobs:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def add(
        self, kind: str, name: str, arguments: Mapping[str, Any], *, actor: Actor, total: int | None = None
    ) -> Job:  # fmt: skip
        """Keep a new job and call a worker to it."""
        now = self._desk.now()
        row: dict[str, Any] = {
            "id": self._desk.new_id("job"),
            "kind": kind,
            "name": name,
            "arguments": json.dumps(arguments, ensure_ascii=False),
            "who": actor.who,
            "key": actor.key,
            "request": actor.request,
            "state": "waiting",
            "cancelling": False,
            "done": 0,
            "total": total,
            "asked": now,
            "changed": now,
            "turn": 0,
            "beat": 0,
            "stalls": 0,
            "mark": 0,
        }
        self._desk.write(jobs.insert(), [row])
        self._desk.happened.append(Happening("created", "job", row["id"]))
        job_queue.call(self._desk.connection, row["id"])
        return self.get(row["id"])

    def find(self, job_id: str) -> Job | None:
        """Return one job, None where there is no such id."""
        row = self._desk.one(sa.select(jobs).where(jobs.c.id == job_id))
        return None if row is None else _job(row)

    def get(self, job_id: str) -> Job:
        """Return one job. Conflict where there is no such id."""
        found = self.find(job_id)
        if found is None:
            raise Conflict("there is no such job", repr(job_id), "`transom jobs list` shows them")
        return found

    def all(self, limit: int | None = None) -> tuple[Job, ...]:
        """Return every job, or the `limit` newest, the newest first."""
        asked = sa.select(jobs).order_by(jobs.c.asked.desc(), jobs.c.id.desc()).limit(limit)
        return tuple(_job(row) for row in self._desk.all(asked))

    def signs(self) -> tuple[Sign, ...]:
        """Return what there is to be seen of jobs that are waiting or running, those asked for first first."""
        c = jobs.c
        asked = sa.select(c.id, c.state, c.cancelling, c.turn, c.beat).where(c.state.in_(("waiting", "running")))
        return tuple(Sign(**row._mapping) for row in self._desk.all(asked.order_by(c.asked, c.id)))  # noqa: SLF001 - its public name

    def take(self, job_id: str, worker: str) -> tuple[Job, Hold] | None:
        """Take a job that waits; None where it does not, for somebody was quicker or it was cancelled."""
        c, now = jobs.c, self._desk.now()
        job = self.find(job_id)
        if job is None or job.state != "waiting":
            return None
        said = {"state": "running", "worker": worker, "turn": job.turn + 1, "mark": job.done, "changed": now}
        first = {"started": now} if job.started is None else {}
        self._desk.connection.execute(jobs.update().where(c.id == job_id).values(**said, **first))
        return self.get(job_id), Hold(job_id, job.turn + 1)

    def hold(self, held: Hold, *, done: int, total: int | None) -> None:
        """Say that its worker lives, and how far it is. Taken where it is somebody else's."""
        self._say(held, beat=jobs.c.beat + 1, done=done, total=total)

    def end(
        self,
        held: Hold,
        state: State,
        *,
        done: int,
        trouble: str | None = None,
        result: Mapping[str, Any] | None = None,
    ) -> None:
        """Say what a turn came to: over, or `waiting` for the next one. Taken where it is somebody else's.

        A job that comes to a halt over and over without getting further is `failed` instead of waiting.
        """
        if state == "waiting":
            self._put_back(self.get(held.id), held, done, trouble)
            return
        written = None if result is None else json.dumps(result, ensure_ascii=False)
        ended = self._desk.now()
        self._say(held, state=state, done=done, trouble=trouble, result=written, ended=ended, worker=None, stalls=0)

    def give_back(self, held: Hold, *, done: int) -> None:
        """Let go of a job that somebody else may go on with at once."""
        self._say(held, state="waiting", done=done, worker=None)
        job_queue.call(self._desk.connection, held.id)

    def lapse(self, sign: Sign) -> bool:
        """Take a running job from a worker that gave no sign since `sign`; False where it has, or the job went on."""
        c = jobs.c
        job = self.find(sign.id)
        if job is None or (job.state, job.turn, job.beat) != ("running", sign.turn, sign.beat):
            return False
        if job.cancelling:
            said = {"state": "cancelled", "cancelling": False, "worker": None, "ended": self._desk.now()}
            self._desk.connection.execute(jobs.update().where(c.id == sign.id).values(**said))
            return True
        self._put_back(job, Hold(job.id, job.turn), job.done, job.trouble)
        return True

    def cancel(self, job_id: str) -> Job:
        """Cancel a job that waits, ask the worker of one that runs to stop; nothing where it is over."""
        job, c, now = self.get(job_id), jobs.c, self._desk.now()
        said: dict[str, Any] = {}
        if job.state == "waiting":
            said = {"state": "cancelled", "ended": now, "changed": now}
        elif job.state == "running":
            said = {"cancelling": True, "changed": now}
        if said:
            self._desk.connection.execute(jobs.update().where(c.id == job_id).values(**said))
            self._desk.happened.append(Happening("changed", "job", job_id))
        return self.get(job_id)

    def resume(self, job_id: str) -> Job:
        """Let a job that failed or was cancelled wait for a worker again; what is acknowledged stays."""
        said = {"state": "waiting", "cancelling": False, "ended": None, "stalls": 0, "changed": self._desk.now()}
        mine = sa.and_(jobs.c.id == job_id, jobs.c.state.in_(("failed", "cancelled")))
        if self._desk.connection.execute(jobs.update().where(mine).values(**said)).rowcount == 1:
            self._desk.happened.append(Happening("changed", "job", job_id))
            job_queue.call(self._desk.connection, job_id)
        return self.get(job_id)

    def put_items(self, held: Hold, found: Mapping[str, str]) -> None:
        """Write down what was found of each thing, by its name."""
        rows = [{"job_id": held.id, "thing": thing, "said": said} for thing, said in found.items()]
        self._desk.write(job_items.insert(), rows)

    def items(self, job_id: str) -> Iterator[tuple[str, str]]:
        """Yield what was found of each thing, by its name."""
        c = job_items.c
        for row in self._desk.stream(sa.select(c.thing, c.said).where(c.job_id == job_id).order_by(c.thing)):
            yield row.thing, row.said

    def _put_back(self, job: Job, held: Hold, done: int, trouble: str | None) -> None:
        stalls = stalled(done, job.mark, job.stalls)
        if stalls >= MOST_STALLS:
            said = f"it came to a halt {stalls} times at the same place" + (f": {trouble}" if trouble else "")
            self._say(held, state="failed", trouble=said, worker=None, stalls=0, ended=self._desk.now())
        else:
            self._say(held, state="waiting", done=done, trouble=trouble, worker=None, stalls=stalls)
            job_queue.call(self._desk.connection, job.id)

    def _say(self, held: Hold, **said: Any) -> None:  # noqa: ANN401 - columns
        c = jobs.c
        mine = sa.and_(c.id == held.id, c.turn == held.turn, c.state == "running")
        over = {"cancelling": False} if said.get("state") in ("done", "failed", "cancelled") else {}
        update = jobs.update().where(mine).values(**said, **over, changed=self._desk.now())
        if self._desk.connection.execute(update).rowcount != 1:
            raise Taken(held.id)


def _job(row: sa.Row[Any]) -> Job:
    said = dict(row._mapping)  # noqa: SLF001 - its public name
    said["arguments"] = json.loads(said["arguments"])
    said["result"] = None if said["result"] is None else json.loads(said["result"])
    return Job.model_construct(**said)
