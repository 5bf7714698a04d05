from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path

import pytest

from service.store import migrate
from service.store.unit import Store


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    """Open an empty database, with a clock that moves a minute at each look and ids that count."""
    url = f"sqlite:///{tmp_path / 'ledger.db'}"
    migrate.upgrade(url)
    numbers = count(1)
    start = datetime(2024, 5, 1, tzinfo=UTC)
    made = Store(
        url, now=lambda: start + timedelta(minutes=next(numbers)), new_id=lambda kind: f"{kind}-{next(numbers)}"
    )
    yield made
    made.close()
