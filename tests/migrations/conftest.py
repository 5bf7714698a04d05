from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
import sqlalchemy as sa
from alembic.config import Config

from service.store import dialect
from service.store.migrate import configuration
from tests.support.databases import Databases, Files


@pytest.fixture
def url(databases: Databases) -> str:
    """Return the address of a database in which there is nothing yet, one of each kind in turn."""
    return databases.empty()


@pytest.fixture
def file_url(tmp_path: Path) -> str:
    """Return the address of an SQLite file that is not there yet: for what concerns files alone."""
    return Files(tmp_path).empty()


@pytest.fixture
def alembic_config() -> Config:
    return configuration()


@pytest.fixture
def alembic_engine(url: str) -> Iterator[sa.Engine]:
    engine = dialect.connect(dialect.address(url))
    yield engine
    engine.dispose()
