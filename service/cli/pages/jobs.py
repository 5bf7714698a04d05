"""Jobs as people read them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from service.cli.sheet import Sheet, share, table
from service.core.answer.recheck import Recheck
from service.core.job import Job

WORDS = {
    "waiting": "waits for a worker",
    "running": "is worked on",
    "done": "done",
    "failed": "failed",
    "cancelled": "cancelled",
}
MOST_LISTED = 40


def state(job: Job) -> str:
    """Return what state a job is in, in words."""
    return "is being stopped" if job.cancelling else WORDS[job.state]


def far(job: Job) -> str:
    """Return how far a job is.

    >>> far(Job.model_construct(done=250, total=1000)), far(Job.model_construct(done=3, total=None))
    ('250 of 1000 (25 %)', '3')
    """
    if job.total is None:
        return str(job.done) if job.done else "-"
    return f"{job.done} of {job.total} ({share(job.done / job.total if job.total else 1.0)})"


def show_list(sheet: Sheet, found: Sequence[Job]) -> None:
    """Print jobs, one a line."""
    sheet.title("Jobs", f"{len(found)}")
    if not found:
        sheet.line("There are none. `transom recheck --job` and `transom records import FILE --job` begin some.")
        return
    rows = [
        (
            job.id,
            job.kind,
            job.name,
            "stopping" if job.cancelling else job.state,
            _short(job),
            f"{job.asked:%m-%d %H:%M}",
        )
        for job in found
    ]
    sheet.whole(table(("job", "kind", "of", "", ">done", "asked for"), rows, wraps=(2,)))


def _short(job: Job) -> str:
    return far(job).partition(" (")[0]


def show(sheet: Sheet, job: Job, found: Recheck | None) -> None:
    """Print one job."""
    sheet.title(f"{job.kind}: {job.name}", job.id)
    times = [("asked for", job.asked), ("begun", job.started), ("last word", job.changed), ("over", job.ended)]
    rows = [
        ("", state(job)),
        ("done", far(job)),
        *((label, f"{_time(at)} UTC") for label, at in times if at is not None),
        ("by", job.who),
        *([("worker", job.worker)] if job.worker else []),
    ]
    sheet.part("job", table(("", ""), rows))
    if job.trouble:
        sheet.part("trouble", table(("",), [(job.trouble,)]))
    if job.state in ("failed", "cancelled"):
        sheet.part("go on", table(("",), [(f"transom jobs resume {job.id}",)]))
    if job.result:
        said = [(_words(key), _said(value)) for key, value in job.result.items()]
        sheet.part("result", table(("", ""), said))
    if found is not None and found.changes:
        changes = [(one.record, f"{one.before.found} -> {one.after.found}", one.after.why) for one in found.changes]
        sheet.part("would change", table(("record", "", "why"), changes[:MOST_LISTED], wraps=(2,)))
    if found is not None and len(found.changes) > MOST_LISTED:
        sheet.line(f"and {len(found.changes) - MOST_LISTED} more; --json lists all")


def _time(at: datetime) -> str:
    return f"{at:%Y-%m-%d %H:%M:%S}"


def _words(key: str) -> str:
    return key.replace("_", " ")


def _said(value: object) -> str:
    if isinstance(value, dict):
        return ", ".join(f"{count} {_words(str(name))}" for name, count in value.items())
    return str(value)
