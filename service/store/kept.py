"""What was built from the database and is good as long as its stamp: shared by all threads that use one store."""

from __future__ import annotations

from collections.abc import Callable
from threading import Lock
from typing import TypeVar, cast

T = TypeVar("T")


class Kept:
    """One thing for each name, with the stamp it was built at."""

    def __init__(self) -> None:
        self._guard = Lock()
        self._building: dict[str, Lock] = {}
        self._things: dict[str, tuple[object, object]] = {}

    def get(self, name: str, stamp: object, build: Callable[[], T]) -> T:
        """Return the thing of this name built at this stamp; `build` makes it where the one kept is another's.

        Threads that want the same one at the same time wait for the first, and none gets one of another stamp. Without
        a stamp it is built and not kept.
        """
        if stamp is None:
            return build()
        with self._guard:
            building = self._building.setdefault(name, Lock())
        with building:
            had = self._things.get(name)
            if had is None or had[0] != stamp:
                had = (stamp, build())
                self._things[name] = had
        return cast("T", had[1])
