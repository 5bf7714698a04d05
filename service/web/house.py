"""The house: how it stands, what was done in it, and work that outlives a request. Users and keys stand beside."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service.flow.cancel_job import cancel_job
from service.flow.refusal import Refused
from service.flow.resume_job import resume_job
from service.flow.show_house import show_house
from service.store.audit import Sought
from service.web.desk import Here
from service.web.pages import ROOT, Notice, page, redirect
from service.web.posted import Form
from service.web.who import AtAdmin, actor

routes = APIRouter(prefix="/house")
LINES, MOST_JOBS = 50, 100
Text = Annotated[str, Query(max_length=200)]


@routes.get("")
def show(request: Request, here: Here, by: AtAdmin) -> Response:
    """Show how the house stands."""
    del by
    return page(request, "house/state.html", house=show_house(here.store))


@routes.get("/audit")
def list_audit(
    request: Request, here: Here, by: AtAdmin,
    who: Text = "", action: Text = "", kind: Text = "", thing: Text = "", after: Text = "",
) -> Response:  # fmt: skip
    """List who did what, the newest first."""
    del by
    sought = Sought(who.strip(), action, kind, thing.strip())
    with here.store.reading() as uow:
        found = uow.audit.page(sought, after=_place(after), limit=LINES + 1)
        kinds = uow.audit.kinds()
    shown = found[:LINES]
    said = {name: text for name, text in vars(sought).items() if text}
    more = None
    if len(found) > LINES:
        line, last = shown[-1]
        more = f"{ROOT}/house/audit?{urlencode({**said, 'after': f'{last.at.isoformat()}~{line}'})}"
    entries = [entry for _, entry in shown]
    return page(
        request, "house/audit.html", part="house/audit_lines.html",
        entries=entries, sought=sought, kinds=kinds, more=more, later=bool(after), asked=bool(said),
    )  # fmt: skip


def _place(text: str) -> tuple[datetime, str] | None:
    """Return the time and id that a page ends with. Refused for what no page gave."""
    if not text:
        return None
    at, _, line = text.partition("~")
    try:
        found = datetime.fromisoformat(at)
    except ValueError:
        found = None
    if found is None or found.tzinfo is None:
        raise Refused("this address goes on with no list; begin again without its end")
    return found, line


@routes.get("/jobs")
def list_jobs(request: Request, here: Here, by: AtAdmin) -> Response:
    """List jobs, the newest first."""
    del by
    with here.store.reading() as uow:
        found = uow.jobs.all(MOST_JOBS)
    moving = any(not job.over for job in found)
    return page(request, "house/jobs.html", part="house/job_rows.html", jobs=found, moving=moving, most=MOST_JOBS)


@routes.post("/jobs/{job_id}/cancel")
def do_cancel(request: Request, here: Here, by: AtAdmin, form: Form, job_id: str) -> Response:
    """Cancel a job; what it has done stays, and it can be gone on with."""
    del form
    job = cancel_job(here.store.writing(actor(request, by)), job_id)
    to = f"{ROOT}/house/jobs"
    return redirect(
        request, to, Notice(f"{job.name} stops, and keeps what it has done", f"{to}/{job_id}/resume", "Go on with it")
    )


@routes.post("/jobs/{job_id}/resume")
def do_resume(request: Request, here: Here, by: AtAdmin, form: Form, job_id: str) -> Response:
    """Go on with a job that failed or was cancelled."""
    del form
    job = resume_job(here.store.writing(actor(request, by)), job_id)
    to = f"{ROOT}/house/jobs"
    return redirect(request, to, Notice(f"{job.name} goes on", f"{to}/{job_id}/cancel", "Cancel it"))
