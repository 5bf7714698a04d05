"""Import of many records on both databases, beside pandas.read_csv and the driver's own bulk insert of the same rows.

    scripts/bench import [--records 100000] [--database sqlite|postgresql] [--repeats 3]

Each step runs in a process of its own, by turns with the floor. Exit status 1 where the import is more than four times
as slow (by the medians), takes 500 MB or more, loses a row, or does not come out again as it went in.
"""

from __future__ import annotations

import argparse
import json
import statistics
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import ExitStack
from pathlib import Path
from typing import Any

from rich.console import Console

from service.cli.sheet import RIGHT, table
from service.core.record import Record
from service.files.read.records_file import read_records
from service.files.write.tables import put_records
from tests.support.databases import Databases, Files, Served
from tests.support.postgres import server

TOP = Path(__file__).resolve().parent.parent
FLEET = TOP / "seed_fixtures" / "fleet.jsonl"
MOST_TIMES, MOST_MB = 4.0, 500.0


def grown(size: int) -> Iterator[Record]:
    """Yield the demo fleet over and over, each record under a reference, a name and measures of its own."""
    known = [row.record for row in read_records(FLEET.read_bytes(), FLEET.name).rows]
    for number in range(size):
        one = known[number % len(known)]
        transom, boat = one.form.transom, one.form.boat
        height = None if transom.top_height_mm is None else transom.top_height_mm + number % 97 / 7
        form = one.form.model_copy(
            update={
                "boat": boat.model_copy(update={"name": f"Boat {number}"}),
                "transom": transom.model_copy(update={"top_height_mm": height}),
            }
        )
        yield one.model_copy(update={"reference": f"{one.reference}-{number}", "form": form})


def step(name: str, url: str, file: Path) -> dict[str, Any]:
    """Run one step in a process of its own."""
    command = [sys.executable, "-m", "scripts.import_steps", name, url, str(file)]
    ran = subprocess.run(command, cwd=TOP, capture_output=True, text=True, check=False)  # noqa: S603 - our own
    if ran.returncode:
        raise SystemExit(f"{name} failed:\n{ran.stderr}")
    done: dict[str, Any] = json.loads(ran.stdout)
    return done


def measure(databases: Databases, file: Path, records: int, repeats: int) -> tuple[list[tuple[str, ...]], list[str]]:
    """Return the lines of one database, and what does not hold."""
    ours, floor, copied = (list[dict[str, Any]]() for _ in range(3))
    url = ""
    for _ in range(repeats):
        if databases.kind == "postgresql":
            copied.append(step("copy", databases.empty(), file))
        floor.append(step("floor", databases.empty(), file))
        url = databases.empty()
        ours.append(step("ours", url, file))
    again, export = step("again", url, file), step("export", url, file)
    mine, plain = (statistics.median(one["seconds"] for one in some) for some in (ours, floor))
    times, peak = mine / plain, max(one["peak_mb"] for one in (*ours, again, export))
    lines = [
        (databases.kind, "pandas + executemany", f"{plain:.2f} s", f"{records / plain:.0f}", _core(floor), _mb(floor)),
        ("", "import", f"{mine:.2f} s", f"{records / mine:.0f}", _core(ours), _mb(ours)),
        ("", f"= {times:.2f} times as slow", "", "", _times(ours, floor), ""),
        *_copied(copied, mine, records),
        (
            "",
            "import once more",
            f"{again['seconds']:.2f} s",
            f"{records / again['seconds']:.0f}",
            _core([again]),
            _mb([again]),
        ),
        (
            "",
            "export",
            f"{export['seconds']:.2f} s",
            f"{records / export['seconds']:.0f}",
            _core([export]),
            _mb([export]),
        ),
    ]
    checks = {
        f"{times:.2f} times as slow, more than {MOST_TIMES:g}": times <= MOST_TIMES,
        f"{peak:.0f} MB, not under {MOST_MB:g}": peak < MOST_MB,
        "rows were lost": all(one["created"] == records and not one["rejected"] for one in ours),
        "importing once more changed something": again["unchanged"] == records,
        "what came out is not what went in": export["same"] and export["records"] == records,
    }
    return lines, [f"{databases.kind}: {what}" for what, holds in checks.items() if not holds]


def _copied(copied: list[dict[str, Any]], mine: float, records: int) -> list[tuple[str, ...]]:
    """Return the lines on the server's own COPY, which no driver does by itself; nothing is asked of them."""
    if not copied:
        return []
    plain = statistics.median(one["seconds"] for one in copied)
    return [
        ("", "pandas + COPY", f"{plain:.2f} s", f"{records / plain:.0f}", _core(copied), _mb(copied)),
        ("", f"(import: {mine / plain:.2f} times as slow)", "", "", "", ""),
    ]


def _core(some: list[dict[str, Any]]) -> str:
    return f"{_busiest(some):.2f} s"


def _busiest(some: list[dict[str, Any]]) -> float:
    """Return how long the process that worked most did so: what a busy machine does not change much."""
    return statistics.median(one["busiest"] for one in some)


def _times(some: list[dict[str, Any]], others: list[dict[str, Any]]) -> str:
    return f"{_busiest(some) / _busiest(others):.2f} times"


def _mb(some: list[dict[str, Any]]) -> str:
    return f"{max(one['peak_mb'] for one in some):.0f} MB"


def main() -> int:
    """Print the table; return 0 where everything holds."""
    parser = argparse.ArgumentParser(prog="scripts/bench import", description=__doc__)
    parser.add_argument("--records", type=int, default=100_000)
    parser.add_argument("--repeats", type=int, default=3)
    parser.add_argument("--database", choices=("sqlite", "postgresql"), help="one of them alone")
    asked = parser.parse_args()
    lines, wrong = list[tuple[str, ...]](), list[str]()
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="transom-bench-")))
        file = folder / "fleet.csv"
        with file.open("wb") as stream:
            put_records(stream, grown(asked.records), "csv")
        kinds: list[Databases] = []
        if asked.database != "postgresql":
            kinds.append(Files(folder))
        if asked.database != "sqlite":
            kinds.append(Served(stack.enter_context(server())))
        for databases in kinds:
            some, faults = measure(databases, file, asked.records, asked.repeats)
            lines += some
            wrong += faults
        size = file.stat().st_size / 1e6
    print(f"{asked.records} records, {size:.0f} MB of CSV, medians of {asked.repeats}, by turns")
    heads = ("", "", f"{RIGHT}median", f"{RIGHT}rows a second", f"{RIGHT}busiest core", f"{RIGHT}peak")
    Console(width=100, no_color=True, highlight=False).print(table(heads, lines, wraps=()))
    for fault in wrong:
        print(f"DOES NOT HOLD: {fault}")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
