"""Have a job gone on with that failed or was cancelled."""

from __future__ import annotations

from service.core.job import Job
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


def resume_job(uow: UnitOfWork, job_id: str) -> Job:
    """Let a worker take the job up again at the first thing that is not acknowledged, and commit.

    Refused where it is done, or waits or runs already: what a worker leaves behind when it dies is taken up by itself.
    """
    with uow:
        before = uow.jobs.get(job_id)
        if not before.over:
            raise Refused(f"job {job_id} is {before.state}: a worker takes it up by itself")
        if before.state == "done":
            raise Refused(f"job {job_id} is done; start another one")
        job = uow.jobs.resume(job_id)
        uow.commit()
    return job
