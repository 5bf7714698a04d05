"""Have an import gone on with that broke off: by its own job, or by a new one."""

from __future__ import annotations

from service.core.job import Job
from service.flow.import_job import KIND
from service.flow.refusal import Refused
from service.flow.resume_job import resume_job
from service.flow.start_job import start_job
from service.store.happening import Actor
from service.store.unit import UnitOfWork


def job_of(uow: UnitOfWork, import_id: str) -> Job | None:
    """Return the last job that takes an import's rows, None where it has none."""
    with uow:
        return next(
            (job for job in uow.jobs.all() if job.kind == KIND and job.arguments.get("import") == import_id), None
        )


def go_on_import(uow: UnitOfWork, import_id: str, *, actor: Actor) -> Job:
    """Let a worker take the rows that are not acknowledged, and commit. Refused where all are, or one is at it."""
    with uow:
        batch = uow.imports.get(import_id)
        if batch.state != "running":
            raise Refused(f"this import is {batch.state}; there is nothing to go on with")
        job = job_of(uow, import_id)
        if job is not None and job.state != "done":
            return resume_job(uow, job.id)
        return start_job(uow, KIND, batch.name, {"import": batch.id}, actor=actor, total=batch.rows)
