"""A backup made by an older version comes back: as its database would be, had it been upgraded."""

from __future__ import annotations

import shutil
from datetime import UTC, datetime
from pathlib import Path

import pytest
import sqlalchemy as sa

from service.core.archive import Column, Manifest
from service.files.vault import Vault
from service.files.write.archive import writing
from service.flow.restore import restore
from service.store import dialect, migrate, schema
from service.store.check import state_of
from service.store.snapshot import _KINDS
from tests.migrations.test_data_stays import fill, reflected
from tests.support.databases import file_of, fingerprint


def archived(url: str, revision: str, path: Path) -> None:
    """Write what the program of that revision would have: every table it knew, as it stands."""
    engine = dialect.connect(dialect.address(url))
    with engine.connect() as connection, writing(path, overwrite=False, check=lambda _: None) as archive:
        tables = [table for table in reflected(url).sorted_tables if table.name != schema.VERSION_TABLE]
        members = []
        for table in tables:
            said = schema.metadata.tables[table.name].c
            kinds = [
                next(kind for type_, kind in _KINDS if isinstance(said[c.name].type, type_)) for c in table.columns
            ]
            columns = [Column(name=c.name, kind=kind) for c, kind in zip(table.columns, kinds, strict=True)]
            typed = sa.select(*(sa.literal_column(f'"{c.name}"', said[c.name].type) for c in table.columns))
            rows = connection.execute(typed.select_from(table))
            members.append(archive.table(table.name, columns, rows, lambda _: None))
        archive.manifest(
            Manifest(
                software="an older one",
                head=revision,
                taken=datetime(2026, 1, 1, tzinfo=UTC),
                tables=tuple(members),
                files=(),
            )
        )
    engine.dispose()


@pytest.mark.parametrize("revision", ["0001", "0005", "0010"])
def test_an_archive_of_an_older_revision_comes_back_in_this_one(
    url: str, file_url: str, revision: str, tmp_path: Path
) -> None:
    migrate.upgrade(file_url, revision)
    fill(file_url, reflected(file_url))
    engine = dialect.connect(dialect.address(file_url))
    with engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")
    engine.dispose()
    old = f"sqlite:///{tmp_path / 'old.db'}"
    shutil.copy(file_of(file_url), file_of(old))
    archived(old, revision, tmp_path / "old.zip")
    restore(tmp_path / "old.zip", url, Vault(tmp_path / "files"))
    assert state_of(dialect.address(url)) == "ok"
    migrate.upgrade(old)
    assert fingerprint(url) == fingerprint(old)
