"""A ledger with the demo maker's data in it."""

from __future__ import annotations

import fcntl
import os
import shutil
from pathlib import Path

import pytest

from service.cli.main import status
from tests.support.databases import Databases, file_of

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"


def seed(url: str) -> None:
    """Fill a database with the demo maker's data, by the commands themselves."""
    for step in (
        ("db", "upgrade"),
        ("catalogue", "load", FIXTURES / "catalogue.toml"),
        ("hulls", "import", FIXTURES / "hulls.csv"),
        ("records", "import", FIXTURES / "fleet.jsonl"),
    ):
        assert status([*map(str, step), "--db", url, "--json"]) == 0, step


def seeded_file(folders: pytest.TempPathFactory) -> Path:
    """Return a seeded SQLite file that nobody writes to. Processes that test together make it once and share it."""
    own = folders.getbasetemp()
    folder = own.parent if "PYTEST_XDIST_WORKER" in os.environ else own
    file = folder / "seeded.sqlite"
    with (folder / "seeded.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not file.exists():
            made = folder / "seeding.sqlite"
            seed(f"sqlite:///{made}")
            made.rename(file)
    return file


def seeded_like(databases: Databases, ledger: Path) -> str:
    """Return the address of a new seeded database: of a file, a copy of the one that is seeded already."""
    if databases.kind == "postgresql":
        return databases.like(seed)
    url = databases.empty()
    shutil.copy(ledger, file_of(url))
    return url
