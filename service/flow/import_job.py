"""An import of records as a job: the file is looked through at once, its rows are taken over afterwards."""

from __future__ import annotations

from typing import Any

from service.core.job import Job
from service.files.read.mapping_file import read_mapping
from service.files.read.records_file import open_records
from service.flow.decide_hulls import decider
from service.flow.import_records import MappingFile
from service.flow.job_task import Task
from service.flow.resume_import import resume_import
from service.flow.start_job import start_job
from service.store.happening import Actor
from service.store.unit import UnitOfWork

KIND = "import"


def start_import(
    uow: UnitOfWork, data: bytes, name: str, *, actor: Actor, mapping: MappingFile | None = None
) -> Job:  # fmt: skip
    """Keep the file as an import of which no row is done yet, with the job that does them, and commit.

    Unreadable where the file is no table of records; nothing is written then.
    """
    rules = read_mapping(mapping.data, mapping.name) if mapping else None
    file = open_records(data, name, rules)
    text = mapping.data.decode("utf-8-sig") if mapping else None
    with uow:
        batch = uow.imports.begin(data, name, mapping=text, who=actor.who, rows=file.count)
        return start_job(uow, KIND, name, {"import": batch.id}, actor=actor, total=batch.rows)


def work_import(task: Task) -> dict[str, Any]:
    """Take the rows that are not acknowledged yet; return what became of all of them."""
    task.begin(0)
    decide = decider(task.reading())
    import_id = str(task.job.arguments["import"])
    report = resume_import(task.writing(), import_id, decide=decide, progress=task.advance)
    counts = {} if report.batch is None else {str(name): count for name, count in report.batch.counts.items()}
    return {"import": import_id, **counts}
