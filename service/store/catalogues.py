"""Versions of the catalogue. One that was loaded never changes: answers and records name it."""

from __future__ import annotations

import hashlib
from typing import Any

import sqlalchemy as sa

from service.core.catalogue import Catalogue
from service.store.desk import Desk
from service.store.errors import Conflict
from service.store.schema import catalogues


class Catalogues:
    def __init__(self, desk: Desk) -> None:
        self._desk = desk

    def latest(self) -> Catalogue | None:
        """Return the catalogue loaded last, None where there is none yet."""
        c = catalogues.c
        return _shaped(self._desk.one(sa.select(c.document).order_by(c.loaded_at.desc(), c.version.desc()).limit(1)))

    def get(self, version: str) -> Catalogue | None:
        """Return one version, None where it was never loaded."""
        return _shaped(self._desk.one(sa.select(catalogues.c.document).where(catalogues.c.version == version)))

    def versions(self) -> tuple[str, ...]:
        """Return every version, the one loaded last first."""
        c = catalogues.c
        rows = self._desk.all(sa.select(c.version).order_by(c.loaded_at.desc(), c.version.desc()))
        return tuple(row.version for row in rows)

    def add(self, catalogue: Catalogue) -> bool:
        """Keep a version. False where exactly it was kept before; Conflict where its version names other content."""
        document = catalogue.model_dump_json(by_alias=True, exclude_none=True)
        digest = hashlib.sha256(document.encode()).hexdigest()
        c = catalogues.c
        known = self._desk.one(sa.select(c.sha256).where(c.version == catalogue.version))
        if known is not None and known.sha256 == digest:
            return False
        if known is not None:
            raise Conflict(
                "this version of the catalogue is loaded already, with other content",
                f"version {catalogue.version!r}",
                "Give the changed catalogue a version of its own: answers and records keep the one they were made with",
            )
        row = {
            "version": catalogue.version,
            "name": catalogue.name,
            "document": document,
            "sha256": digest,
            "loaded_at": self._desk.now(),
        }
        self._desk.write(catalogues.insert(), [row])
        return True


def _shaped(row: sa.Row[Any] | None) -> Catalogue | None:
    return None if row is None else Catalogue.model_validate_json(row.document)
