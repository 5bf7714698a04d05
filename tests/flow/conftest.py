from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path

import pytest

from service.flow.import_hulls import import_hulls
from service.flow.import_records import import_records
from service.flow.load_catalogue import load_catalogue
from service.store import migrate
from service.store.unit import Store
from tests.support.databases import Files

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"


def opened(url: str) -> Store:
    """Open a database with a clock that moves a minute at each look and ids that count."""
    numbers = count(1)
    start = datetime(2024, 5, 1, tzinfo=UTC)
    return Store(
        url,
        now=lambda: start + timedelta(minutes=next(numbers)),
        new_id=lambda kind: f"{kind}-{next(numbers)}",
    )


@pytest.fixture
def store(url: str) -> Iterator[Store]:
    """Open an empty database, one of each kind in turn."""
    made = opened(url)
    yield made
    made.close()


def seed(url: str) -> None:
    """Make the database from nothing and load the demo maker's catalogue, models and fleet."""
    migrate.upgrade(url)
    made = opened(url)
    try:
        load_catalogue(made.writing(), (FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml")
        hulls = import_hulls(made.writing(), (FIXTURES / "hulls.csv").read_bytes(), "hulls.csv")
        records = import_records(made.writing(), (FIXTURES / "fleet.jsonl").read_bytes(), "fleet.jsonl")
    finally:
        made.close()
    assert (hulls.rejected, records.rejected) == ((), ())


@pytest.fixture(scope="session")
def files(tmp_path_factory: pytest.TempPathFactory) -> Files:
    """Return what gives out SQLite files."""
    return Files(tmp_path_factory.mktemp("flow"))


@pytest.fixture
def copies(files: Files) -> Iterator[Callable[[], Store]]:
    """Open further copies of the loaded database, each for this test alone. Files: what is slow runs once."""
    made: list[Store] = []

    def one() -> Store:
        made.append(opened(files.like(seed)))
        return made[-1]

    yield one
    for store in made:
        store.close()


@pytest.fixture
def seeded(copies: Callable[[], Store]) -> Store:
    return copies()


@pytest.fixture(scope="session")
def mails() -> Path:
    """Return the folder of the enquiries that ship with the project."""
    return FIXTURES / "enquiries"
