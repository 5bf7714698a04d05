"""How the house stands: its database, catalogue, people, keys and jobs."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import datetime

from service.core.catalogue import Catalogue
from service.flow.backup_job import KIND as BACKUP
from service.store.schema import HEAD
from service.store.unit import Store

LOOKED_AT = 200


@dataclass(frozen=True)
class House:
    """What is there. `kept` counts records and hull models; `jobs` the last ones by state; `backup` is the last that ended well."""

    database: str
    revision: str
    at_head: bool
    kept: dict[str, int]
    catalogue: Catalogue | None
    catalogues: int
    users: dict[str, int]
    closed: int
    keys: int
    jobs: dict[str, int]
    backup: datetime | None


def show_house(store: Store) -> House:
    """Return how the house stands, from one moment."""
    with store.reading() as uow:
        users, keys, jobs, now = uow.users.all(), uow.keys.all(), uow.jobs.all(LOOKED_AT), uow.now()
        kept = {"records": uow.records.count(), "hull models": uow.hulls.count()}
        backups = [job.ended for job in jobs if job.kind == BACKUP and job.state == "done" and job.ended is not None]
        return House(
            database="PostgreSQL" if store.folder is None else "SQLite",
            revision=HEAD,
            at_head=uow.at_head(),
            kept=kept,
            catalogue=uow.catalogues.latest(),
            catalogues=len(uow.catalogues.versions()),
            users=dict(Counter(user.role for user in users if user.closed is None)),
            closed=sum(user.closed is not None for user in users),
            keys=sum(key.valid(now) for key in keys),
            jobs=dict(Counter(job.state for job in jobs)),
            backup=max(backups, default=None),
        )
