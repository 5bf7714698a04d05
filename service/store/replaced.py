"""What was put forward for an installation and then not fitted: the configurations of earlier states of a record."""

from __future__ import annotations

import json

import sqlalchemy as sa

from service.core.catalogue import Configuration
from service.store.desk import Desk
from service.store.schema import record_revisions, records


class Replaced:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def all(self) -> dict[str, tuple[Configuration, ...]]:
        """Return by reference the configurations that installed records had and no longer have, oldest first."""
        c, r = records.c, record_revisions.c
        earlier = (
            sa.select(c.reference, c.gear, c.lower, c.upper, c.shaft, r.document)
            .join(record_revisions, sa.and_(r.record_id == c.id, r.number < c.head))
            .where(c.status == "installed")
            .order_by(c.reference, r.number)
        )
        found: dict[str, dict[Configuration, None]] = {}
        for row in self._desk.all(earlier):
            now = Configuration(gear=row.gear, lower=row.lower, upper=row.upper, shaft=row.shaft)
            was = Configuration.model_validate(json.loads(row.document)["configuration"])
            if was != now:
                found.setdefault(row.reference, {})[was] = None
        return {reference: tuple(configurations) for reference, configurations in found.items()}
