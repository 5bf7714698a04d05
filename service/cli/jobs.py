"""`transom jobs`: work longer than a request, who works on it, how far it is."""

from __future__ import annotations

import signal
from threading import Event
from typing import Annotated, Any

import typer

from service import bootstrap
from service.cli import faults, out
from service.cli.options import Db, Json, group, opened, reading
from service.cli.pages import jobs as pages
from service.cli.sheet import Sheet
from service.core.job import Job
from service.flow.cancel_job import cancel_job
from service.flow.recheck_job import KIND as RECHECK
from service.flow.recheck_job import recheck_found
from service.flow.resume_job import resume_job

commands = group("Work longer than a request: list, look, cancel, go on, and a worker that does it.")
JobId = Annotated[str, typer.Argument(metavar="JOB", help="A job's id, as `transom jobs list` shows it.")]
Limit = Annotated[int, typer.Option("--limit", min=1, max=10_000, help="How many, the newest first.")]
Hands = Annotated[int, typer.Option("--hands", min=1, max=64, help="How many jobs at a time.")]
UntilIdle = Annotated[bool, typer.Option("--until-idle", help="End when no job waits or runs any more.")]
AsJob = Annotated[
    bool, typer.Option("--job", help="Leave it to a worker (`transom serve`, `transom jobs work`), and say its id.")
]
_LOOK_S = 0.5


@commands.command("list")
def list_(limit: Limit = 40, json: Json = False, db: Db = None) -> None:
    """List jobs, the newest first."""
    with reading(db) as uow:
        found = uow.jobs.all(limit)
    if json:
        out.document([_document(job) for job in found])
        return
    with out.page() as console:
        pages.show_list(Sheet(console), found)


@commands.command()
def show(job_id: JobId, json: Json = False, db: Db = None) -> None:
    """Show how far a job is and what it came to; --json of a recheck also says what was found of each record."""
    with reading(db) as uow:
        job = uow.jobs.get(job_id)
        found = recheck_found(uow, job) if job.kind == RECHECK else None
    if json:
        more = {} if found is None else {"found": found.model_dump(mode="json", by_alias=True)}
        out.document(_document(job) | more)
        return
    with out.page() as console:
        pages.show(Sheet(console), job, found)


@commands.command()
def cancel(job_id: JobId, json: Json = False, db: Db = None) -> None:
    """Cancel a job: one that runs stops within a second or at its next step, and keeps what it has done."""
    with opened(db) as store:
        told(cancel_job(store.writing(), job_id), json=json)


@commands.command()
def resume(job_id: JobId, json: Json = False, db: Db = None) -> None:
    """Go on with a job that failed or was cancelled, at the first thing that is not done. A worker takes it up."""
    with opened(db) as store:
        told(resume_job(store.writing(), job_id), json=json)


@commands.command()
def work(hands: Hands = 1, until_idle: UntilIdle = False, json: Json = False, db: Db = None) -> None:
    """Work on jobs until told to stop (SIGTERM, Ctrl-C); on a server as many may, on as many machines as there are.

    `transom serve` works on jobs by itself. What is stopped half way is given back, and gone on with by whoever works next.
    """
    with opened(db) as store:
        crew = bootstrap.crew(store, hands=hands, say=lambda text: out.note(f"transom: {text}"))
        end = Event()
        before = {number: signal.signal(number, lambda *_: end.set()) for number in (signal.SIGTERM, signal.SIGINT)}
        crew.start()
        how = "comes when the database calls" if crew.called else "looks twice a second"
        if json:
            out.document({"worker": crew.name, "hands": hands, "called": crew.called})
        else:
            out.note(f"transom: {crew.name} works on jobs, {hands} at a time; it {how}. Stop with Ctrl-C")
        while not end.wait(_LOOK_S):
            if until_idle and crew.idle():
                break
        freed = crew.stop()
        for number, handler in before.items():
            signal.signal(number, handler)
        if not freed:
            out.note("transom: a step takes long; its job is gone on with by whoever works next")
            raise typer.Exit(faults.CANNOT_WORK)


def told(job: Job, *, json: bool) -> None:
    """Say what became of a job, as a line or a document."""
    if json:
        out.document(_document(job))
    else:
        out.say(f"{job.id}: {pages.state(job)}")


def _document(job: Job) -> dict[str, Any]:
    return job.model_dump(mode="json", exclude={"turn", "beat", "stalls", "mark", "key", "request"})
