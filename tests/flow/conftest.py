from __future__ import annotations

import shutil
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

FIXTURES = Path(__file__).resolve().parents[2] / "seed_fixtures"


def opened(file: Path) -> Store:
    """Open a database with a clock that moves a minute at each look and ids that count."""
    numbers = count(1)
    start = datetime(2024, 5, 1, tzinfo=UTC)
    return Store(
        f"sqlite:///{file}",
        now=lambda: start + timedelta(minutes=next(numbers)),
        new_id=lambda kind: f"{kind}-{next(numbers)}",
    )


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """Open an empty database."""
    file = tmp_path / "ledger.db"
    migrate.upgrade(f"sqlite:///{file}")
    made = opened(file)
    yield made
    made.close()


@pytest.fixture(scope="session")
def seeded_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a database migrated from nothing and loaded with the demo maker's catalogue, models and fleet."""
    file = tmp_path_factory.mktemp("flow") / "seeded.db"
    migrate.upgrade(f"sqlite:///{file}")
    made = opened(file)
    try:
        load_catalogue(made.writing(), (FIXTURES / "catalogue.toml").read_bytes(), "catalogue.toml")
        hulls = import_hulls(made.writing(), (FIXTURES / "hulls.csv").read_bytes(), "hulls.csv")
        records = import_records(made.writing(), (FIXTURES / "fleet.jsonl").read_bytes(), "fleet.jsonl")
    finally:
        made.close()
    assert (hulls.rejected, records.rejected) == ((), ())
    return file


@pytest.fixture
def copies(seeded_file: Path, tmp_path: Path) -> Iterator[Callable[[], Store]]:
    """Open further copies of the loaded database, each for this test alone."""
    made: list[Store] = []

    def one() -> Store:
        file = Path(shutil.copy(seeded_file, tmp_path / f"ledger{len(made)}.db"))
        made.append(opened(file))
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
