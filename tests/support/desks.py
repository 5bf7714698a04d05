"""Several desks at one database, with clocks that move a minute at each look and ids that count."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta
from itertools import count

from service.store.unit import Store

MakeStore = Callable[[], Store]


@contextmanager
def desks(url: str, start: datetime) -> Iterator[MakeStore]:
    """Yield what opens a further desk, as other processes would; they share clock and ids, and are closed at the end."""
    numbers, opened = count(1), list[Store]()

    def make() -> Store:
        store = Store(
            url,
            now=lambda: start + timedelta(minutes=next(numbers)),
            new_id=lambda kind: f"{kind}-{next(numbers)}",
        )
        opened.append(store)
        return store

    try:
        yield make
    finally:
        for store in opened:
            store.close()
