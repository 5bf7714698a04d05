"""A bar on stderr for what takes longer than a second."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from threading import Timer

from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn, TimeElapsedColumn

PATIENCE_S = 1.0
Advance = Callable[[int], None]


def rows_of(data: bytes) -> int | None:
    """Return about how many rows a table in text has; None for a workbook, which has to be opened to know."""
    return None if data.startswith(b"PK") else data.count(b"\n")


@contextmanager
def bar(label: str, total: int | None = None) -> Iterator[Advance]:
    """Yield a function to call with how many more are done; the bar shows after a second, and only on a terminal."""
    counted = () if total is None else (MofNCompleteColumn(),)
    columns = (TextColumn("{task.description}"), BarColumn(), *counted, TimeElapsedColumn())
    console = Console(file=sys.stderr, no_color=True)
    shown = Progress(*columns, console=console, transient=True, disable=not console.is_terminal)
    task = shown.add_task(label, total=total)
    later = Timer(PATIENCE_S, shown.start)
    later.daemon = True
    later.start()
    try:
        yield lambda done: shown.advance(task, done)
    finally:
        later.cancel()
        later.join()
        shown.stop()
