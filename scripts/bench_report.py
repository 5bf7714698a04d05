"""`report demand` over many records on both databases, beside DuckDB and plain pandas on the same records as Parquet.

    scripts/bench report [--records 10000,100000,1000000] [--database sqlite|postgresql] [--repeats 3] [--backtest]

Each runs in a process of its own, all of them in turn, so that what else the machine does meets them alike. The report is
timed as whoever asks for it waits: the whole command, from its start to the end of its JSON; a server's own processors
are not in its figure. DuckDB and pandas do the counting alone, over a file that holds nothing else, and without starting
up: the limit and the floor. Exit status 1 where a million records take 5 s or 1 GB or more, where the counts differ, or where
time grows faster than the records. `--backtest` shows how true forecasts of generated fleets of known rates were.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from contextlib import ExitStack
from functools import partial
from itertools import pairwise
from pathlib import Path
from typing import Any

from rich.console import Console

from service.cli.sheet import RIGHT, table
from tests.support.databases import Databases, Files, Served
from tests.support.postgres import server

TOP = Path(__file__).resolve().parent.parent
AS_OF = "2026-01-15"
"""The day that the steps count up to, too: else the counts differ."""
RUN = "from service.cli.main import run; run()"
MOST_S, MOST_MB, FULL = 5.0, 1000.0, 1_000_000
LINEAR = 1.5
"""Ten times the records may take at most fifteen times as long."""


def step(name: str, *arguments: object) -> dict[str, Any]:
    """Run one step in a process of its own."""
    command = [sys.executable, "-m", "scripts.report_steps", name, *map(str, arguments)]
    ran = subprocess.run(command, cwd=TOP, capture_output=True, text=True, check=False)  # noqa: S603 - our own
    if ran.returncode:
        raise SystemExit(f"{name} failed:\n{ran.stderr}")
    done: dict[str, Any] = json.loads(ran.stdout)
    return done


def command(url: str) -> dict[str, Any]:
    """Run the command itself; time and memory are those of its whole process."""
    asked = ["report", "demand", "--as-of", AS_OF, "--json", "--db", url]
    start = time.perf_counter()
    with tempfile.TemporaryFile() as said:
        running = subprocess.Popen([sys.executable, "-c", RUN, *asked], cwd=TOP, stdout=said)  # noqa: S603 - our own
        _, status, used = os.wait4(running.pid, 0)
        seconds = time.perf_counter() - start
        if status:
            raise SystemExit("report demand failed")
        said.seek(0)
        counted = json.load(said)["counts"]["boats counted"]
    cpu = used.ru_utime + used.ru_stime
    return {"seconds": seconds, "cpu": cpu, "peak_mb": used.ru_maxrss / 1000, "counted": counted}


def best(works: dict[str, Callable[[], dict[str, Any]]], repeats: int) -> dict[str, dict[str, Any]]:
    """Return the quickest run of each, all in turn: what others do on the machine only ever adds to the time."""
    runs = [{name: work() for name, work in works.items()} for _ in range(repeats)]
    return {name: min((run[name] for run in runs), key=lambda one: float(one["seconds"])) for name in works}


def line(kind: str, records: int, done: dict[str, Any]) -> tuple[str, ...]:
    """Return what a step took as a line of the table."""
    shown = (f"{done['seconds']:.2f} s", f"{done['cpu']:.2f} s", f"{done['peak_mb']:.0f} MB", f"{done['counted']}")
    return (kind, f"{records}", *shown)


def measured(
    kinds: list[Databases], records: int, repeats: int, folder: Path
) -> tuple[list[tuple[str, ...]], dict[str, dict[str, Any]]]:
    """Return the lines for so many records, and each step's figures by what it is."""
    works = dict[str, Callable[[], dict[str, Any]]]()
    file = folder / f"{records}.parquet"
    step("parquet", file, records)
    for databases in kinds:
        url = databases.migrated()
        step("fill", url, file)
        works[databases.kind] = partial(command, url)
        works[f"{databases.kind}, counting alone"] = partial(step, "count", url)
    for name in ("duckdb", "pandas"):
        works[f"{name}, counting alone"] = partial(step, name, file)
    found = best(works, repeats)
    lines = [
        line(f"report demand, {kind}" if "alone" not in kind else kind, records, done) for kind, done in found.items()
    ]
    return lines, found


def main() -> int:
    """Print the table and return 0 where everything holds."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--records", default="10000,100000,1000000")
    parser.add_argument("--repeats", type=int, default=3)
    parser.add_argument("--database", choices=("sqlite", "postgresql"), help="one of them alone")
    parser.add_argument("--backtest", action="store_true", help="forecasts of generated fleets alone")
    asked = parser.parse_args()
    if asked.backtest:
        from scripts.report_backtest import shown  # noqa: PLC0415 - large, and a child's peak is never below its parent's

        Console(width=110, no_color=True, highlight=False).print(shown())
        return 0
    sizes = sorted(int(one) for one in asked.records.split(","))
    lines, every = list[tuple[str, ...]](), dict[int, dict[str, dict[str, Any]]]()
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="transom-bench-")))
        kinds: list[Databases] = [Files(folder)] if asked.database != "postgresql" else []
        if asked.database != "sqlite":
            kinds.append(Served(stack.enter_context(server())))
        for size in sizes:
            some, every[size] = measured(kinds, size, asked.repeats, folder)
            lines += some
    print(f"quickest of {asked.repeats}; `counting alone` leaves out forecasts, shares and starting up")
    heads = ("", f"{RIGHT}records", f"{RIGHT}time", f"{RIGHT}processor", f"{RIGHT}peak", f"{RIGHT}counted")
    Console(width=110, no_color=True, highlight=False).print(table(heads, lines, wraps=()))
    wrong = list(faults(every))
    for fault in wrong:
        print(f"DOES NOT HOLD: {fault}")
    return 1 if wrong else 0


def faults(every: dict[int, dict[str, dict[str, Any]]]) -> list[str]:
    """Return what does not hold."""
    found = []
    for size, steps in every.items():
        if len({done["counted"] for done in steps.values()}) != 1:
            found.append(f"{size} records: counts differ")
        for kind in ("sqlite", "postgresql"):
            done = steps.get(kind)
            if done and size >= FULL and (done["seconds"] >= MOST_S or done["peak_mb"] >= MOST_MB):
                found.append(f"{kind}: {size} records took {done['seconds']:.2f} s and {done['peak_mb']:.0f} MB")
    sizes = sorted(every)
    for less, more in pairwise(sizes):
        for kind in every[less]:
            grown = every[more][kind]["cpu"] / every[less][kind]["cpu"]
            if grown > LINEAR * more / less:
                found.append(f"{kind}: {more / less:g} times the records took {grown:.1f} times as long")
    return found


if __name__ == "__main__":
    sys.exit(main())
