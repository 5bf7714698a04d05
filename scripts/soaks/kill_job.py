"""A recheck as a job whose worker is killed, and the next one too; then it finds what one that nobody killed finds."""

from __future__ import annotations

import json

from scripts.soaks.kill_round import Round, need, opened, see_sound
from service.core.answer.recheck import Recheck
from service.flow.recheck import recheck_fleet
from service.flow.recheck_job import recheck_found, start_recheck
from service.store.happening import Actor
from service.store.unit import Store


def expected(url: str) -> Recheck:
    """Return what a recheck finds when nobody kills it."""
    store = opened(url)
    with store.reading() as uow:
        found = recheck_fleet(uow, None, "")
    store.close()
    return found


def run(mine: Round, url: str, wanted: Recheck) -> None:
    """Kill two workers at one recheck, one after the other, and let the third end."""
    store = opened(url)
    job_id = start_recheck(store.writing(), None, "", actor=Actor("soak")).id
    acknowledged = 0
    for _ in range(2):
        acknowledged = _look(store, url, job_id, mine.killed("recheck", job_id, url), acknowledged)
    mine.whole("recheck", job_id, url)
    with store.reading() as uow:
        job = uow.jobs.get(job_id)
        found = recheck_found(uow, job)
    need(job.state == "done", f"the job is {job.state}: {job.trouble}")
    need({row.record: row for row in found.rows} == {row.record: row for row in wanted.rows}, "it found something else")
    need(job.result is not None and job.result["counts"] == wanted.counts, "its counts are others")
    need(1 <= job.turn <= 3, f"it was taken up {job.turn} times")  # noqa: PLR2004 - two kills, three workers
    store.close()


def _look(store: Store, url: str, job_id: str, said: int, before: int) -> int:
    """Return how many records are settled, after a kill."""
    with store.reading() as uow:
        job = uow.jobs.get(job_id)
        items = dict(uow.jobs.items(job_id))
    see_sound(url)
    need(all(len(json.loads(said)) == 1 for said in items.values()), "a finding is half there")
    need(job.state in ("waiting", "running", "done"), f"the job is {job.state}: {job.trouble}")
    need(len(items) >= max(said, before), f"{max(said, before)} records were acknowledged, {len(items)} are there")
    need(job.done <= len(items), f"it says {job.done} are done, {len(items)} are there")
    return len(items)
