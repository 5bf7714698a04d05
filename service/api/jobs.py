"""Work longer than a request: begun by one, done by a worker, asked about, cancelled and gone on with by others."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from itertools import islice
from typing import Annotated

from fastapi import APIRouter, Path, Query, Request
from starlette.responses import Response

from service.api.once import IdempotencyKey, do_once, once
from service.api.problems import Problem
from service.api.running import Running
from service.api.shapes import Job, OtherJob, RowFault
from service.api.strict import JSON, StrictRoute
from service.api.who import RecordsRead, RecordsWrite, Service, actor
from service.core.batch import Batch
from service.core.job import Job as CoreJob
from service.flow.authenticate import Caller
from service.flow.cancel_job import cancel_job
from service.flow.import_job import KIND as IMPORT
from service.flow.import_job import start_import
from service.flow.import_report import faults_of
from service.flow.resume_job import resume_job
from service.store.errors import Conflict
from service.store.happening import Actor
from service.store.idempotency import Reply
from service.store.unit import UnitOfWork

routes = APIRouter(prefix="/v1", tags=["imports"], route_class=StrictRoute)
NONE = "there is no such job"
MOST_FAULTS = 100
OCTETS = {"schema": {"type": "string", "format": "binary"}}
KINDS = ("text/csv", "application/x-ndjson", "application/octet-stream",
         "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet")  # fmt: skip
BODY = {"requestBody": {"required": True, "content": dict.fromkeys(KINDS, OCTETS)}}
JobId = Annotated[str, Path(max_length=80)]
FileName = Annotated[str, Query(min_length=1, max_length=200, pattern=r"^[^/\\\x00-\x1f]+$", examples=["fleet.csv"])]


@routes.post("/imports", response_model=Job, status_code=202, openapi_extra=BODY)
async def create_import(
    request: Request, by: RecordsWrite, service: Service, name: FileName, idempotency_key: IdempotencyKey = None
) -> Response:
    """Take over a file of records (CSV, TSV, XLSX, ODS, Parquet, JSON lines), told apart by content.

    The answer names a job; its rows are settled afterwards, and a bad row keeps no other one out.
    """
    if by.dealer is not None:
        raise Problem("forbidden", "only the maker's own desk imports records")
    content = await request.body()
    asked = once(request, service, by, idempotency_key, content)
    response = await do_once(asked, lambda: content, partial(_begin, name, actor(request, by)))
    service.jobs.nudge()
    return response


def _begin(name: str, doer: Actor, uow: UnitOfWork, content: bytes) -> Reply:
    job = start_import(uow, content, name, actor=doer)
    body = _import(uow.imports.get(str(job.arguments["import"])), job, [])
    return Reply(202, {"Location": f"/v1/jobs/{job.id}"}, body.model_dump_json())


@routes.get("/jobs/{job_id}", response_model=Job | OtherJob)
def get_job(job_id: JobId, by: RecordsRead, service: Service) -> Response:
    """Say how far a job is, what stopped it, what it came to; of an import also which cells could not be taken."""
    if by.dealer is not None:
        raise Problem("not-found", NONE)
    with service.store.reading() as uow:
        return _shown(uow, job_id, uow.jobs.find(job_id))


@routes.post("/jobs/{job_id}/cancel", response_model=Job | OtherJob, status_code=202)
def cancel_a_job(request: Request, job_id: JobId, by: RecordsWrite, service: Service) -> Response:
    """Cancel a job: it stops within a second or at its next step; what it has done stays. 422 where it is over."""
    return _steered(request, job_id, by, service, cancel_job)


@routes.post("/jobs/{job_id}/resume", response_model=Job | OtherJob, status_code=202)
def resume_a_job(request: Request, job_id: JobId, by: RecordsWrite, service: Service) -> Response:
    """Go on with a job that failed or was cancelled, at the first thing that is not done. 422 where it is not over."""
    return _steered(request, job_id, by, service, resume_job)


def _steered(
    request: Request, job_id: str, by: Caller, service: Running, steer: Callable[[UnitOfWork, str], CoreJob]
) -> Response:  # fmt: skip
    if by.dealer is not None:
        raise Problem("not-found", NONE)
    with service.store.writing(actor(request, by)) as uow:
        if uow.jobs.find(job_id) is None:
            raise Problem("not-found", NONE)
        job = steer(uow, job_id)
    service.jobs.nudge()
    with service.store.reading() as uow:
        response = _shown(uow, job_id, job)
    response.status_code = 202
    return response


def _shown(uow: UnitOfWork, job_id: str, job: CoreJob | None) -> Response:
    """Return a job as it is; the id of an import stands for the import."""
    if job is not None and job.kind != IMPORT:
        return Response(_other(job).model_dump_json(), media_type=JSON)
    try:
        batch = uow.imports.get(job_id if job is None else str(job.arguments["import"]))
    except Conflict:
        raise Problem("not-found", NONE) from None
    faults = list(islice(_faults(uow, batch), MOST_FAULTS))
    return Response(_import(batch, job, faults).model_dump_json(), media_type=JSON)


def _faults(uow: UnitOfWork, batch: Batch) -> Iterator[RowFault]:
    for one in uow.imports.outcomes(batch.id):
        if one.outcome == "rejected":
            for fault in faults_of([one]):
                yield RowFault(
                    sheet=fault.sheet, row=fault.row, column=str(fault.column), value=str(fault.value),
                    expected=str(fault.expected),
                )  # fmt: skip


def _import(batch: Batch, job: CoreJob | None, faults: list[RowFault]) -> Job:
    return Job(
        id=batch.id if job is None else job.id,
        kind="import",
        state=batch.state,
        name=batch.name,
        rows=batch.rows,
        done=batch.done,
        **{str(name): count for name, count in batch.counts.items()},
        started=batch.started,
        changed=batch.changed,
        faults=faults,
        work=None if job is None else job.state,
        trouble=None if job is None else job.trouble,
        import_id=batch.id,
    )


def _other(job: CoreJob) -> OtherJob:
    return OtherJob(
        id=job.id,
        kind=job.kind,
        work=job.state,
        name=job.name,
        done=job.done,
        total=job.total,
        asked=job.asked,
        started=job.started,
        changed=job.changed,
        ended=job.ended,
        trouble=job.trouble,
        result=job.result,
    )
