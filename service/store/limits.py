"""How many requests were made in a window, counted by all workers of one service together.

The counters stand in a small file of their own beside nothing that matters: it may be lost at any time. In the ledger
they would wait whenever somebody writes there.
"""

from __future__ import annotations

import sqlite3
import time
from pathlib import Path
from threading import Lock
from typing import Any

from limits.storage import Storage

_KEPT_S = 3600


class Windows(Storage):
    """Counters by key and window. With no file they are this process's own."""

    STORAGE_SCHEME = ["transom"]

    def __init__(self, file: Path | None = None, **options: Any) -> None:  # noqa: ANN401 - whatever the base takes
        """Open the file, making it where there is none."""
        super().__init__(None, **options)
        self._lock = Lock()
        self._db = sqlite3.connect(str(file or ":memory:"), isolation_level=None, check_same_thread=False, timeout=5)
        self._db.execute("PRAGMA journal_mode = MEMORY")
        self._db.execute("PRAGMA synchronous = OFF")
        self._db.execute(
            "CREATE TABLE IF NOT EXISTS windows (name TEXT PRIMARY KEY, n INTEGER, ends REAL) WITHOUT ROWID"
        )
        self._swept = 0.0

    @property
    def base_exceptions(self) -> type[Exception]:
        """Return what the file's driver raises."""
        return sqlite3.Error

    def incr(self, key: str, expiry: int, amount: int = 1) -> int:
        """Count `amount` more and return how many there are in the window, which ends `expiry` seconds after the first."""
        now = time.time()
        with self._lock:
            self._sweep(now)
            (count,) = self._db.execute(
                "INSERT INTO windows VALUES (?, ?, ?) ON CONFLICT (name) DO UPDATE SET"
                " n = CASE WHEN ends <= ? THEN excluded.n ELSE n + excluded.n END,"
                " ends = CASE WHEN ends <= ? THEN excluded.ends ELSE ends END RETURNING n",
                (key, amount, now + expiry, now, now),
            ).fetchone()
        return int(count)

    def get(self, key: str) -> int:
        """Return how many there are in the window that runs now."""
        return int(self._row(key)[0])

    def get_expiry(self, key: str) -> float:
        """Return when the window ends, in seconds since 1970; now, where none runs."""
        return float(self._row(key)[1])

    def check(self) -> bool:
        """Say whether the counters can be read."""
        return self._row("") is not None

    def reset(self) -> int | None:
        """Forget everything."""
        with self._lock:
            return self._db.execute("DELETE FROM windows").rowcount

    def clear(self, key: str) -> None:
        """Forget one window."""
        with self._lock:
            self._db.execute("DELETE FROM windows WHERE name = ?", (key,))

    def close(self) -> None:
        """Let go of the file."""
        self._db.close()

    def _row(self, key: str) -> tuple[int, float]:
        now = time.time()
        with self._lock:
            row = self._db.execute("SELECT n, ends FROM windows WHERE name = ? AND ends > ?", (key, now)).fetchone()
        return row or (0, now)

    def _sweep(self, now: float) -> None:
        if now - self._swept > _KEPT_S:
            self._swept = now
            self._db.execute("DELETE FROM windows WHERE ends <= ?", (now,))
