from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
import sqlalchemy as sa
from alembic.config import Config

from service.store import dialect
from service.store.migrate import configuration


@pytest.fixture
def url(tmp_path: Path) -> str:
    return f"sqlite:///{tmp_path / 'ledger.db'}"


@pytest.fixture
def alembic_config() -> Config:
    return configuration()


@pytest.fixture
def alembic_engine(url: str) -> Iterator[sa.Engine]:
    engine = dialect.connect(dialect.address(url))
    yield engine
    engine.dispose()
