"""Waiting for what other threads and processes do."""

from __future__ import annotations

import time
from collections.abc import Callable


def until(holds: Callable[[], object], patience_s: float = 60.0) -> None:
    """Wait until something holds; it fails where it never does."""
    ends = time.monotonic() + patience_s
    while not holds():
        assert time.monotonic() < ends, "it never came to that"
        time.sleep(0.02)
