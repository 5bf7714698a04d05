"""What `bench_import` times, each step in a process of its own: python -m scripts.import_steps STEP URL FILE.

Prints one JSON object: seconds (without starting Python and loading modules), peak memory, and what was done.
"""

from __future__ import annotations

import csv
import hashlib
import json
import os
import resource
import sqlite3
import sys
import time
from collections.abc import Callable, Iterable
from pathlib import Path
from threading import Thread
from typing import Any

import psycopg

from service.flow.decide_hulls import decider
from service.flow.export_records import export_to
from service.flow.import_hulls import import_hulls
from service.flow.import_records import import_records
from service.store import migrate
from service.store.ids import random_id
from service.store.unit import Store

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
    """Read the file with pandas and put its rows into one plain table with the driver's executemany."""
    return _plain(url, file, copy=False)


def copy(url: str, file: Path) -> dict[str, object]:
    """Do the same with PostgreSQL's COPY in place of executemany."""
    return _plain(url, file, copy=True)


def _plain(url: str, file: Path, *, copy: bool) -> dict[str, object]:
    import pandas as pd  # noqa: PLC0415 - its memory is the floor's own

    start = time.perf_counter()
    frame = pd.read_csv(file, low_memory=False)
    rows = frame.astype(object).where(frame.notna(), None).itertuples(index=False, name=None)
    names = [f'"{name}"' for name in frame.columns]
    if url.startswith("sqlite"):
        _into_sqlite(url, names, rows)
    else:
        _into_postgres(url, names, [frame[name].dtype.kind for name in frame.columns], rows, copy=copy)
    return {"seconds": time.perf_counter() - start, "rows": len(frame)}


def _into_sqlite(url: str, names: list[str], rows: Iterable[Any]) -> None:
    connection = sqlite3.connect(url.removeprefix("sqlite:///"))
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = NORMAL")
    connection.execute(f"CREATE TABLE plain ({', '.join(names)})")
    connection.executemany(f"INSERT INTO plain VALUES ({', '.join('?' * len(names))})", rows)  # noqa: S608 - our headings
    connection.commit()
    connection.close()


_KINDS = {"f": "double precision", "i": "double precision", "b": "boolean"}


def _into_postgres(url: str, names: list[str], kinds: list[str], rows: Iterable[Any], *, copy: bool) -> None:
    columns = ", ".join(f"{name} {_KINDS.get(kind, 'text')}" for name, kind in zip(names, kinds, strict=True))
    with psycopg.connect(url) as connection, connection.cursor() as cursor:
        cursor.execute(f"CREATE TABLE plain ({columns})".encode())
        if copy:
            with cursor.copy(f"COPY plain ({', '.join(names)}) FROM STDIN".encode()) as stream:
                for row in rows:
                    stream.write_row(row)
        else:
            marks = ", ".join(["%s"] * len(names))
            cursor.executemany(f"INSERT INTO plain VALUES ({marks})".encode(), rows)  # noqa: S608 - marks alone


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
    """Return the most memory this process and those it started had, in MB, whether or not at the same moment."""
    return (_high("self") + sum(_CHILDREN.values())) / 1000


def _high(process: str) -> float:
    """Return the most memory a process had, in kB as Linux says it; 0 where it is gone."""
    try:
        said = Path("/proc", process, "status").read_text()
    except OSError:
        return 0.0
    return next((float(line.split()[1]) * 1.024 for line in said.splitlines() if line.startswith("VmHWM")), 0.0)


_CHILDREN: dict[str, float] = {}


def _watch() -> None:
    """Look at the children's memory for ever: what they had is not told once they have ended."""
    while True:
        for place in Path("/proc").glob("[0-9]*"):
            try:
                parent = (place / "stat").read_text().rpartition(")")[2].split()[1]
            except OSError:
                continue
            if int(parent) == os.getpid():
                _CHILDREN[place.name] = max(_CHILDREN.get(place.name, 0.0), _high(place.name))
        time.sleep(0.2)


STEPS = {"ours": ours, "again": again, "floor": floor, "copy": copy, "export": export}


def main() -> None:
    """Do one step and print what came of it."""
    step, url, file = sys.argv[1:]
    Thread(target=_watch, daemon=True).start()
    before = time.process_time()
    done = STEPS[step](url, Path(file))
    children = resource.getrusage(resource.RUSAGE_CHILDREN)
    cores = (time.process_time() - before, children.ru_utime + children.ru_stime)
    print(json.dumps({"peak_mb": _peak(), "busiest": max(cores), **done}))


if __name__ == "__main__":
    main()
