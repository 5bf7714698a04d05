from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime

import pytest
import sqlalchemy as sa

from service.store.unit import Store
from tests.support.desks import MakeStore, desks


@pytest.fixture
def make_store(url: str) -> Iterator[MakeStore]:
    """Open further stores on the same database, as other processes would."""
    with desks(url, datetime(2024, 5, 1, tzinfo=UTC)) as make:
        yield make


@pytest.fixture
def store(make_store: MakeStore) -> Store:
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
