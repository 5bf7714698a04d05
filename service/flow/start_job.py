"""Put work that outlives a request where a worker finds it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from service.core.job import Job
from service.store.happening import Actor
from service.store.unit import UnitOfWork


def start_job(
    uow: UnitOfWork, kind: str, name: str, arguments: Mapping[str, Any], *, actor: Actor, total: int | None = None
) -> Job:
    """Keep a job of one of the kinds in `job_kinds` and commit, together with what was written before in this unit.

    `name` is for people; `arguments` (JSON) is all its worker gets to know. A worker takes it up, here or elsewhere.
    """
    with uow:
        job = uow.jobs.add(kind, name, arguments, actor=actor, total=total)
        uow.commit()
    return job
