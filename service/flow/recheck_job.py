"""The fleet against a catalogue as a job: what was found of each record is kept as it is found."""

from __future__ import annotations

import json
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from typing import Any

from service.core.answer.compose import Known
from service.core.answer.recheck import Recheck, Rechecked, recheck
from service.core.job import Job
from service.core.record import Record
from service.files.read.catalogue_file import read_catalogue
from service.flow.job_task import Task
from service.flow.known import NoCatalogueError, gather
from service.flow.recheck import compared, hands
from service.flow.refusal import Refused
from service.flow.start_job import start_job
from service.store.desk import chunks
from service.store.happening import Actor
from service.store.unit import UnitOfWork

KIND = "recheck"
_AT_ONCE = 2
"""Records in one transaction for each that is checked at a time: a look whether to go on comes after each such few."""


def start_recheck(uow: UnitOfWork, data: bytes | None, name: str, *, actor: Actor) -> Job:
    """Keep a job that checks every record against the loaded catalogue and, with `data`, against that one; commit.

    The catalogues are those of this moment, whatever is loaded meanwhile. Raises as `read_catalogue` does, and
    NoCatalogueError where none is loaded; nothing is written then.
    """
    other = None if data is None else read_catalogue(data, name)
    with uow:
        catalogue = uow.catalogues.latest()
        if catalogue is None:
            raise NoCatalogueError("no catalogue is loaded; load one with `transom catalogue load FILE`")
        said: dict[str, Any] = {"catalogue": catalogue.version}
        title = catalogue.version
        if data is not None and other is not None:
            said |= {"against": other.version, "file": uow.imports.files.keep(data), "name": name}
            title = f"{catalogue.version} -> {other.version}"
        return start_job(uow, KIND, title, said, actor=actor)


def work_recheck(task: Task) -> dict[str, Any]:
    """Check the records of which nothing is kept yet; return how many came out how."""
    sides, records = _gathered(task)
    at_once = hands()

    def judged(record: Record) -> list[Rechecked]:
        task.see()
        return [recheck(record, known) for known in sides]

    with ThreadPoolExecutor(at_once) as threads:
        for some in chunks(records, _AT_ONCE * at_once):
            found = zip(some, threads.map(judged, some), strict=True)
            kept = {record.reference: _written(rows) for record, rows in found}
            with task.writing(len(some)) as uow:
                uow.jobs.put_items(task.held, kept)
                uow.commit()
            task.advance(len(some))
    with task.reading() as uow:
        whole = recheck_found(uow, task.job)
    return {"counts": whole.counts, "changes": len(whole.changes)}


def recheck_found(uow: UnitOfWork, job: Job) -> Recheck:
    """Return what a job has found so far, in the shape of `recheck_fleet`. Refused where it is of another kind."""
    if job.kind != KIND:
        raise Refused(f"job {job.id} is no {KIND}")
    with uow:
        rows = [[Rechecked.model_validate(one) for one in json.loads(said)] for _, said in uow.jobs.items(job.id)]
    before = tuple(row[0] for row in rows)
    after = None if "against" not in job.arguments else tuple(row[1] for row in rows)
    return compared(str(job.arguments["catalogue"]), before, job.arguments.get("against"), after)


def _gathered(task: Task) -> tuple[list[Known], list[Record]]:
    """Return what judges, one or two catalogues, and the records that are left to be judged."""
    said = task.job.arguments
    with task.reading() as uow:
        known = gather(uow)
        first = uow.catalogues.get(str(said["catalogue"]))
        if first is None:
            raise Refused(f"catalogue {said['catalogue']!r} is not there any more; start another recheck")
        sides = [replace(known, catalogue=first)]
        if "file" in said:
            other = read_catalogue(uow.imports.files.get(said["file"]), said["name"])
            sides.append(replace(known, catalogue=other))
        done = {thing for thing, _ in uow.jobs.items(task.job.id)}
    wanted = [record for record in known.fleet.records if record.status != "withdrawn"]
    left = [record for record in wanted if record.reference not in done]
    task.begin(len(done), len(done) + len(left))
    return sides, sorted(left, key=lambda record: record.reference)


def _written(rows: Sequence[Rechecked]) -> str:
    return json.dumps([one.model_dump(mode="json") for one in rows], ensure_ascii=False)
