from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from itertools import count

import pytest
import sqlalchemy as sa

from service.store.unit import Store


@pytest.fixture
def make_store(url: str) -> Iterator[Callable[[], Store]]:
    """Open further stores on the same database, as other processes would."""
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
    """Every statement the store runs from now on, but for those that begin a transaction on a server."""
    said: list[str] = []

    def heard(*all_of_it: object) -> None:
        statement = str(all_of_it[2])
        if not statement.startswith(("SET LOCAL", "SELECT pg_advisory")):
            said.append(statement)

    sa.event.listen(store._engine, "before_cursor_execute", heard)
    return said
