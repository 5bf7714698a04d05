"""A backup as a job: written by whichever worker takes it, on that worker's machine, from the beginning each time."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from service.core.job import Job
from service.files.vault import Vault
from service.flow.back_up import back_up
from service.flow.job_task import Task
from service.flow.refusal import Refused
from service.flow.start_job import start_job
from service.store.happening import Actor
from service.store.unit import UnitOfWork

KIND = "backup"


def start_backup(uow: UnitOfWork, vault: Vault, path: Path, *, actor: Actor, overwrite: bool = False) -> Job:
    """Keep a job that writes the archive, and commit. Refused where there is such a file already, as seen from here."""
    target = path.absolute()
    if target.exists() and not overwrite:
        raise Refused(f"{path} is there already; name another file, or say --overwrite")
    said = {"file": str(target), "files": str(vault.folder.absolute()), "overwrite": overwrite}
    return start_job(uow, KIND, path.name, said, actor=actor)


def work_backup(task: Task) -> dict[str, Any]:
    """Write the archive; return how much is in it, and how many attachments were lost before."""
    said = task.job.arguments
    task.begin(0)
    with task.reading() as uow:
        at = uow.now()
    try:
        made = back_up(
            task.store.address,
            Vault(Path(said["files"])),
            Path(said["file"]),
            at=at,
            overwrite=said["overwrite"],
            progress=task.advance,
        )
    except OSError as error:
        raise Refused(f"{said['file']}: {error.strerror or error}; see to it, then go on with this job") from error
    return {"file": said["file"], "rows": made.rows, "files": len(made.files), "lost": len(made.lost)}
