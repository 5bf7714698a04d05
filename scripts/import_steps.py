"""What `bench_import` times, each step in a process of its own: python -m scripts.import_steps STEP URL FILE.

Prints one JSON object: seconds (without starting Python and loading modules), peak memory, and what was done.
"""

from __future__ import annotations

import csv
import hashlib
import json
import resource
import sqlite3
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import psycopg

from service.flow.decide_hulls import decider
from service.flow.export_records import export_to
from service.flow.import_hulls import import_hulls
from service.flow.import_records import import_records
from service.store import migrate
from service.store.ids import random_id
from service.store.unit import Store

if TYPE_CHECKING:
    import pandas as pd

FIXTURES = Path(__file__).resolve().parent.parent / "seed_fixtures"


def clock() -> Callable[[], object]:
    """Return the service's own clock."""
    from service.bootstrap import clock as own  # noqa: PLC0415 - what reads the clock is the service's own

    return own


def ours(url: str, file: Path) -> dict[str, object]:
    """Import the file as `transom records import` does, into a new database that has the hull models."""
    migrate.upgrade(url)
    store = _store(url)
    import_hulls(store.writing(), (FIXTURES / "hulls.csv").read_bytes(), "hulls.csv")
    start = time.perf_counter()
    report = import_records(store.writing(), file.read_bytes(), file.name, decide=decider(store.reading()))
    took = time.perf_counter() - start
    store.close()
    return {"seconds": took, "created": len(report.created), "rejected": len(report.rejected)}


def again(url: str, file: Path) -> dict[str, object]:
    """Import it once more: nothing is to change."""
    store = _store(url)
    start = time.perf_counter()
    report = import_records(store.writing(), file.read_bytes(), file.name, decide=decider(store.reading()))
    took = time.perf_counter() - start
    store.close()
    return {"seconds": took, "unchanged": len(report.unchanged)}


def floor(url: str, file: Path) -> dict[str, object]:
    """Read the file with pandas and put its rows into one plain table, as the driver does many rows fastest."""
    import pandas as pd  # noqa: PLC0415 - its memory is the floor's own

    start = time.perf_counter()
    frame = pd.read_csv(file, low_memory=False)
    rows = frame.astype(object).where(frame.notna(), None).itertuples(index=False, name=None)
    names = ", ".join(f'"{name}"' for name in frame.columns)
    if url.startswith("sqlite"):
        _into_sqlite(url, names, len(frame.columns), rows)
    else:
        _into_postgres(url, names, frame, rows)
    return {"seconds": time.perf_counter() - start, "rows": len(frame)}


def _into_sqlite(url: str, names: str, width: int, rows: object) -> None:
    connection = sqlite3.connect(url.removeprefix("sqlite:///"))
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = NORMAL")
    connection.execute(f"CREATE TABLE plain ({names})")
    connection.executemany(f"INSERT INTO plain VALUES ({', '.join('?' * width)})", rows)  # type: ignore[arg-type] # tuples  # noqa: S608 - our own headings
    connection.commit()
    connection.close()


def _into_postgres(url: str, names: str, frame: pd.DataFrame, rows: object) -> None:
    kinds = ", ".join(
        f'"{name}" {"double precision" if frame[name].dtype.kind in "fi" else "boolean" if frame[name].dtype.kind == "b" else "text"}'
        for name in frame.columns
    )
    with psycopg.connect(url) as connection, connection.cursor() as cursor:
        cursor.execute(f"CREATE TABLE plain ({kinds})".encode())
        with cursor.copy(f"COPY plain ({names}) FROM STDIN".encode()) as copy:
            for row in rows:  # type: ignore[attr-defined] # tuples
                copy.write_row(row)


def export(url: str, file: Path) -> dict[str, object]:
    """Export to a file beside, and compare with what was imported: the same rows, whatever their order."""
    store = _store(url)
    target = file.with_suffix(".again.csv")
    start = time.perf_counter()
    with target.open("wb") as stream:
        count = export_to(stream, store.reading(), "csv")
    took = time.perf_counter() - start
    peak = _peak()
    store.close()
    return {"seconds": took, "records": count, "peak_mb": peak, "same": _digest(file) == _digest(target)}


def _digest(file: Path) -> str:
    """Return a hash of the headings and of the set of rows."""
    with file.open(encoding="utf-8", newline="") as text:
        rows = csv.reader(text)
        headings = next(rows)
        each = sorted(hashlib.sha256("\x1f".join(row).encode()).digest() for row in rows)
    return hashlib.sha256("\x1f".join(headings).encode() + b"".join(each)).hexdigest()


def _store(url: str) -> Store:
    return Store(url, now=clock(), new_id=random_id)  # type: ignore[arg-type] # the clock


def _peak() -> float:
    """Return the most memory this process had, and its largest child on top, whether or not at the same moment."""
    kinds = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    return sum(resource.getrusage(kind).ru_maxrss for kind in kinds) * 1024 / 1e6  # Linux counts in KiB


STEPS = {"ours": ours, "again": again, "floor": floor, "export": export}


def main() -> None:
    """Do one step and print what came of it."""
    step, url, file = sys.argv[1:]
    before = time.process_time()
    done = STEPS[step](url, Path(file))
    print(json.dumps({"peak_mb": _peak(), "cpu": time.process_time() - before, **done}))


if __name__ == "__main__":
    main()
