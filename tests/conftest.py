"""The databases that tests of the store, of migrations and of use cases run on: both kinds, and none is left out."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.support.databases import Databases, Files, Served, tidy
from tests.support.postgres import Server, server
from tests.support.seeding import seeded_file

LONG = (
    "migrations/test_data_stays.py", "flow/test_registry.py", "cli/test_hulls.py", "referee/test_clearances.py",
    "browser/test_every_page.py", "web/test_reports.py", "scripts/test_demo.py", "cli/test_jobs.py", "cli/test_worker.py",
)  # fmt: skip
"""What takes longest comes first, so that of several processes none is left with it at the end; and before what needs the
compiled loops what needs none, for they are compiled while the first tests run."""


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Put the long ones first, in this order."""
    places = {Path(__file__).parent / name: place for place, name in enumerate(LONG)}
    items.sort(key=lambda item: places.get(item.path, len(LONG)))


def pytest_collection_finish() -> None:
    """Leave what collecting made out of the search for reference cycles, which would walk over all of it for each test."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(100_000)


@pytest.fixture(scope="session")
def postgres() -> Iterator[Server]:
    """Start a PostgreSQL server for this run. Where there is none to start, whatever asks for it fails."""
    with server() as running:
        yield running


@pytest.fixture(scope="session")
def served(postgres: Server) -> Iterator[Served]:
    """Return what gives out databases on the server."""
    made = Served(postgres)
    yield made
    made.close()


@pytest.fixture(scope="session")
def ledger(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a file with the demo maker's data that nobody writes to."""
    return seeded_file(tmp_path_factory)


@pytest.fixture(scope="session", params=["sqlite", "postgresql"])
def every_database(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Databases:
    """Return what gives out databases of one kind, then of the other, for the whole run."""
    if request.param == "postgresql":
        found = request.getfixturevalue("served")
        assert isinstance(found, Served)
        return found
    return Files(tmp_path_factory.mktemp("databases"))


@pytest.fixture
def databases(every_database: Databases) -> Iterator[Databases]:
    """Return the same for one test, which has what it asked for to itself; it is dropped after it."""
    with tidy(every_database) as mine:
        yield mine


@pytest.fixture
def url(databases: Databases) -> str:
    """Return the address of a database at this program's revision: one of each kind, in turn."""
    return databases.migrated()
