"""One seeded desk for all tests of its pages; a seeded desk on each kind of database where that matters."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from service.api.log import configure
from tests.support.databases import Databases
from tests.support.offices import Office, office
from tests.support.seeding import seeded_like
from tests.support.things import made


@pytest.fixture(scope="session", autouse=True)
def _quiet() -> None:
    """Log as a running service does."""
    configure()


@pytest.fixture(scope="module")
def here(ledger: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Office]:
    """Return a desk on a copy of the seeded file, for one module."""
    folder = tmp_path_factory.mktemp("desk")
    file = shutil.copy(ledger, folder / "ledger.sqlite")
    with office(f"sqlite:///{file}", folder / "files") as opened:
        yield opened


@pytest.fixture
def everywhere(databases: Databases, ledger: Path, tmp_path: Path) -> Iterator[Office]:
    """Return a desk of its own for one test, on each kind of database in turn."""
    with office(seeded_like(databases, ledger), tmp_path / "files") as opened:
        yield opened


@pytest.fixture(scope="module")
def things(here: Office) -> dict[str, str]:
    """Return ids by kind of things that stand in the ledger of `here`."""
    return made(here.store)
