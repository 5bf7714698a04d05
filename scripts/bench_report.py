"""`report demand` over many records on both databases, beside DuckDB and plain pandas on the same records as Parquet.

    scripts/bench report [--records 100000,1000000] [--database sqlite|postgresql] [--repeats 3] [--backtest]

Each runs in a process of its own. DuckDB and pandas do the counting alone, over a file that holds nothing else: the
limit and the floor. Exit status 1 where a million records take 5 s or 1 GB or more, where the counts differ, or where
time grows faster than the records. `--backtest` shows how true forecasts of generated fleets of known rates were.
"""

from __future__ import annotations

import argparse
import json
import subprocess
import sys
import tempfile
from contextlib import ExitStack
from itertools import pairwise
from pathlib import Path
from typing import Any

from rich.console import Console

from scripts.report_backtest import shown
from service.cli.sheet import RIGHT, table
from tests.support.databases import Databases, Files, Served
from tests.support.postgres import server

TOP = Path(__file__).resolve().parent.parent
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


def best(name: str, repeats: int, *arguments: object) -> dict[str, Any]:
    """Return the quickest of some runs: what others do on the machine only ever adds to the time."""
    return min((step(name, *arguments) for _ in range(repeats)), key=lambda one: float(one["seconds"]))


def line(kind: str, records: int, done: dict[str, Any]) -> tuple[str, ...]:
    """Return what a step took as a line of the table."""
    shown = (f"{done['seconds']:.2f} s", f"{done['cpu']:.2f} s", f"{done['peak_mb']:.0f} MB", f"{done['counted']}")
    return (kind, f"{records}", *shown)


def measured(
    kinds: list[Databases], records: int, repeats: int, folder: Path
) -> tuple[list[tuple[str, ...]], dict[str, dict[str, Any]]]:
    """Return the lines for so many records, and each step's figures by what it is."""
    lines, found = list[tuple[str, ...]](), dict[str, dict[str, Any]]()
    file = folder / f"{records}.parquet"
    step("parquet", file, records)
    for databases in kinds:
        url = databases.migrated()
        step("fill", url, file)
        found[databases.kind] = best("demand", repeats, url)
        found[f"{databases.kind}, counting alone"] = best("count", repeats, url)
    for name in ("duckdb", "pandas"):
        found[f"{name}, counting alone"] = best(name, repeats, file)
    lines += [
        line(f"report demand, {kind}" if "alone" not in kind else kind, records, done) for kind, done in found.items()
    ]
    return lines, found


def main() -> int:
    """Print the table and return 0 where everything holds."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--records", default="100000,1000000")
    parser.add_argument("--repeats", type=int, default=3)
    parser.add_argument("--database", choices=("sqlite", "postgresql"), help="one of them alone")
    parser.add_argument("--backtest", action="store_true", help="forecasts of generated fleets alone")
    asked = parser.parse_args()
    if asked.backtest:
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
