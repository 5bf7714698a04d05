from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from itertools import count
from pathlib import Path

import pytest
import sqlalchemy as sa

from service.store import migrate
from service.store.unit import Store


@pytest.fixture
def url(tmp_path: Path) -> str:
    return f"sqlite:///{tmp_path / 'ledger.db'}"


@pytest.fixture
def make_store(url: str) -> Iterator[Callable[[], Store]]:
    """Open further stores on the same database, as other processes would."""
    migrate.upgrade(url)
    numbers, opened = count(1), list[Store]()
    start = datetime(2024, 5, 1, tzinfo=UTC)

    def make() -> Store:
        store = Store(
            url,
            now=lambda: start + timedelta(minutes=next(numbers)),
            new_id=lambda kind: f"{kind}-{next(numbers)}",
        )
        opened.append(store)
        return store

    yield make
    for store in opened:
        store.close()


@pytest.fixture
def store(make_store: Callable[[], Store]) -> Store:
    return make_store()


@pytest.fixture
def statements(store: Store) -> list[str]:
    """Every statement the store runs from now on."""
    said: list[str] = []
    sa.event.listen(store._engine, "before_cursor_execute", lambda *a: said.append(a[2]))
    return said
