"""Imports of records as jobs: the file is looked through at once, its rows are taken over afterwards."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from itertools import islice
from typing import Annotated

from fastapi import APIRouter, Path, Query, Request
from starlette.responses import Response

from service.api.log import log
from service.api.once import IdempotencyKey, do_once, once
from service.api.problems import Problem
from service.api.running import Running
from service.api.shapes import Job, RowFault
from service.api.strict import JSON, StrictRoute
from service.api.who import RecordsRead, RecordsWrite, Service, actor
from service.core.batch import Batch
from service.flow.authenticate import Caller
from service.flow.begin_import import begin_import
from service.flow.decide_hulls import decider
from service.flow.import_report import faults_of
from service.flow.resume_import import resume_import
from service.store.errors import Conflict
from service.store.happening import Actor
from service.store.idempotency import Reply
from service.store.unit import UnitOfWork

routes = APIRouter(prefix="/v1", tags=["imports"], route_class=StrictRoute)
MOST_FAULTS = 100
OCTETS = {"schema": {"type": "string", "format": "binary"}}
KINDS = ("text/csv", "application/x-ndjson", "application/octet-stream",
         "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet")  # fmt: skip
BODY = {"requestBody": {"required": True, "content": dict.fromkeys(KINDS, OCTETS)}}
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
    doer, made = actor(request, by), list[str]()
    response = await do_once(asked, lambda: content, partial(_begin, by, name, made))
    for import_id in made:
        service.jobs.submit(_go_on, service, doer, import_id)
    return response


def _begin(by: Caller, name: str, made: list[str], uow: UnitOfWork, content: bytes) -> Reply:
    batch = begin_import(uow, content, name, who=by.who)
    made.append(batch.id)
    return Reply(202, {"Location": f"/v1/jobs/{batch.id}"}, _job(batch, []).model_dump_json())


def _go_on(service: Running, doer: Actor, import_id: str) -> None:
    try:
        decide = decider(service.store.reading())
        resume_import(service.store.writing(doer), import_id, decide=decide)
    except Exception as error:  # noqa: BLE001 - nobody waits for it; the job stays where it broke off
        log("error", "import broke off", job=import_id, error=type(error).__name__)


@routes.get("/jobs/{job_id}", response_model=Job)
def get_job(job_id: Annotated[str, Path(max_length=80)], by: RecordsRead, service: Service) -> Response:
    """Say how far a job is, and which cells could not be taken."""
    if by.dealer is not None:
        raise Problem("not-found", "there is no such job")
    with service.store.reading() as uow:
        try:
            batch = uow.imports.get(job_id)
        except Conflict:
            raise Problem("not-found", "there is no such job") from None
        faults = list(islice(_faults(uow, batch), MOST_FAULTS))
    return Response(_job(batch, faults).model_dump_json(), media_type=JSON)


def _faults(uow: UnitOfWork, batch: Batch) -> Iterator[RowFault]:
    for one in uow.imports.outcomes(batch.id):
        if one.outcome == "rejected":
            for fault in faults_of([one]):
                yield RowFault(
                    sheet=fault.sheet, row=fault.row, column=str(fault.column), value=str(fault.value),
                    expected=str(fault.expected),
                )  # fmt: skip


def _job(batch: Batch, faults: list[RowFault]) -> Job:
    return Job(
        id=batch.id,
        kind="import",
        state=batch.state,
        name=batch.name,
        rows=batch.rows,
        done=batch.done,
        **{str(name): count for name, count in batch.counts.items()},
        started=batch.started,
        changed=batch.changed,
        faults=faults,
    )
