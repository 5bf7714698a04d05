"""Have a job stopped; what it has acknowledged stays."""

from __future__ import annotations

from service.core.job import Job
from service.flow.refusal import Refused
from service.store.unit import UnitOfWork


def cancel_job(uow: UnitOfWork, job_id: str) -> Job:
    """Cancel a job and commit: at once where it waits, within a second or at its next step where a worker has it.

    Refused where it is over already.
    """
    with uow:
        before = uow.jobs.get(job_id)
        if before.over:
            raise Refused(f"job {job_id} is {before.state} already; there is nothing to cancel")
        job = uow.jobs.cancel(job_id)
        uow.commit()
    return job
