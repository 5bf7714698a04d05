"""How fast names are resolved, and what the index costs, as the registry grows: what `scripts/bench names` runs.

Registries are invented. Names are those of their models, dirtied by rule; one in five is of a model that is not there.
Each size is measured in a process of its own on one core, index and resolver alone; then 10,000 names go through the
database as `transom resolve --file` takes them. Times are those the core worked, so that a busy machine does not show;
only the reading of the registry, and PostgreSQL, which works elsewhere, are timed by the clock. Beside them, in the same
run: rapidfuzz's WRatio over all names, on fewer names because it is slow, and pg_trgm where a server is to be had.
"""

from __future__ import annotations

import argparse
import json
import os
import resource
import subprocess
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Callable, Sequence
from contextlib import ExitStack, suppress
from pathlib import Path

import matplotlib as mpl
import psycopg
from matplotlib import pyplot as plt
from rapidfuzz import fuzz, process, utils
from rich.console import Console

from service import bootstrap
from service.cli.sheet import RIGHT, table
from service.core.hulls import HullIndex, resolve
from service.flow.resolve import resolve_rows
from service.settings import Settings
from tests.support import postgres
from tests.support.invented_hulls import dirty_names, invented_hulls

mpl.use("Agg")
SIZES = (2_000, 20_000, 200_000, 1_000_000)
QUICK = (2_000, 20_000)
THROUGH_STORE, NAMES = 200_000, 10_000
FEW, FEWER = 2_000, 60
MB = 1e6


def timed(
    names: Sequence[str], ask: Callable[[str], object], clock: Callable[[], float] = time.process_time
) -> list[float]:
    """Return the milliseconds that each name took, sorted, after one that warms up; by default those the core worked."""
    ask(names[0])
    taken = []
    for name in names:
        start = clock()
        ask(name)
        taken.append(1000 * (clock() - start))
    return sorted(taken)


def spread(taken: Sequence[float]) -> dict[str, float]:
    """Return median and 99th percentile."""
    return {"p50": taken[len(taken) // 2], "p99": taken[int(len(taken) * 0.99)]}


def resident() -> float:
    """Return what this process holds in memory now, in MB."""
    pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1])
    return pages * resource.getpagesize() / MB


def one_size(size: int) -> dict[str, float]:
    """Measure index and resolver at one size, and WRatio beside them; models are read one by one and not kept."""
    asked = [name for name, _ in dirty_names(size, FEW)]
    made = time.process_time()
    for _ in invented_hulls(size):
        pass
    making = time.process_time() - made
    before = resident()
    start = time.process_time()
    index = HullIndex.build(invented_hulls(size))
    building = time.process_time() - start - making
    held, peak = resident() - before, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000
    ours = spread(timed(asked, lambda name: resolve(index, name)))
    texts = [utils.default_process(str(model)) for model in index.models()]
    plain = spread(timed(asked[:FEWER], lambda name: process.extractOne(
        utils.default_process(name), texts, scorer=fuzz.WRatio, processor=None
    )))  # fmt: skip
    return {"size": size, "build": building, "held": held, "peak": peak, **ours, "floor": plain["p50"]}


def each_size(sizes: Sequence[int]) -> list[dict[str, float]]:
    """Measure every size in a process of its own."""
    found = []
    for size in sizes:
        command = [sys.executable, "-m", "scripts.bench_names", "--one", str(size)]
        done = subprocess.run(command, check=True, capture_output=True, text=True)  # noqa: S603 - this very program
        found.append(json.loads(done.stdout))
    return found


def through_the_store(size: int, names: int) -> list[tuple[str, str]]:
    """Time a file of names against a registry in a database, as the command takes it."""
    lines = ["name,loa_mm", *(f'"{name}",{length or ""}' for name, length in dirty_names(size, names))]
    with tempfile.TemporaryDirectory() as folder:
        chosen = Settings(f"sqlite:///{Path(folder) / 'names.sqlite'}")
        bootstrap.upgrade(chosen)
        store = bootstrap.open_store(chosen)
        with store.writing() as uow:
            uow.hulls.put(list(invented_hulls(size)), who="bench", why="to be timed")
            uow.commit()
        with store.reading() as uow:
            start = time.perf_counter()
            decisions = resolve_rows(uow, "\n".join(lines).encode(), "names.csv")
            taken = [(next(decisions), 0.0)]
            head = time.perf_counter() - start
            before = time.process_time()
            for decision in decisions:
                after = time.process_time()
                taken.append((decision, 1000 * (after - before)))
                before = after
        store.close()
    found = spread(sorted(ms for _, ms in taken[1:]))
    counts = Counter(decision.status for decision, _ in taken)
    return [
        ("names", str(len(taken))),
        ("reading the registry, building the index, the first name", f"{head:.1f} s"),
        ("one name, median", f"{found['p50']:.2f} ms"),
        ("one name, 99th percentile", f"{found['p99']:.2f} ms"),
        *((f"  {status}", str(count)) for status, count in sorted(counts.items())),
    ]


def trigrams_in_postgresql(size: int) -> dict[str, float] | None:
    """Time pg_trgm's best match over the same names; None where no server is to be had."""
    asked = [name for name, _ in dirty_names(size, FEWER * 4)]
    with ExitStack() as stack:
        try:
            running = stack.enter_context(postgres.server())
        except postgres.NoServerError:
            return None
        with psycopg.connect(running.url("postgres"), autocommit=True) as connection:
            connection.execute("CREATE EXTENSION IF NOT EXISTS pg_trgm")
            connection.execute("CREATE TABLE names (id text, name text)")
            with connection.cursor().copy("COPY names FROM STDIN") as rows:
                for model in invented_hulls(size):
                    rows.write_row((model.id, str(model)))
            connection.execute("CREATE INDEX ON names USING gin (name gin_trgm_ops)")
            connection.execute("ANALYZE names")
            look = "SELECT id FROM names WHERE name %% %s ORDER BY similarity(name, %s) DESC, id LIMIT 1"
            return spread(
                timed(asked, lambda name: connection.execute(look, (name, name)).fetchone(), time.perf_counter)
            )


def draw_growth(grown: Sequence[dict[str, float]], path: Path) -> None:
    """Draw how time a name and memory grow with the registry, both scales by powers of ten."""
    figure, (left, right) = plt.subplots(1, 2, figsize=(11, 4.2), layout="constrained")
    sizes = [g["size"] for g in grown]
    for key, said, shade in (
        ("floor", "WRatio, median", "0.65"),
        ("p99", "99th percentile", "0.4"),
        ("p50", "median", "0"),
    ):
        left.plot(sizes, [g[key] for g in grown], marker="o", color=shade, label=said)
    right.plot(sizes, [g["held"] for g in grown], marker="o", color="0", label="held")
    right.plot(sizes, [g["peak"] for g in grown], marker="o", color="0.5", label="process at most")
    for axes, title in ((left, "milliseconds a name"), (right, "memory of the index, MB")):
        axes.set(xscale="log", yscale="log", xlabel="hull models in the registry")
        axes.set_title(title, loc="left", fontweight="bold")
        axes.spines[["top", "right"]].set_visible(False)
        axes.legend(frameon=False)
    figure.savefig(path, dpi=110)
    plt.close(figure)


def main() -> None:
    """Print the tables."""
    parser = argparse.ArgumentParser(prog="scripts/bench names", description=__doc__)
    parser.add_argument("--quick", action="store_true", help="small sizes alone")
    parser.add_argument("--plot", type=Path, metavar="FILE", help="draw the growth there: .svg or .png")
    parser.add_argument("--one", type=int, help=argparse.SUPPRESS)
    chosen = parser.parse_args()
    with suppress(AttributeError, OSError):  # one core, where the system lets a process choose
        os.sched_setaffinity(0, {max(os.sched_getaffinity(0))})
    if chosen.one:
        print(json.dumps(one_size(chosen.one)))
        return
    console = Console(width=110, no_color=True, highlight=False)
    grown = each_size(QUICK if chosen.quick else SIZES)
    heads = [
        f"{RIGHT}{head}" for head in ("models", "built in s", "MB held", "MB at most", "p50 ms", "p99 ms", "WRatio p50")
    ]
    rows = [
        (f"{g['size']:,.0f}", f"{g['build']:.1f}", f"{g['held']:.0f}", f"{g['peak']:.0f}", f"{g['p50']:.2f}",
         f"{g['p99']:.2f}", f"{g['floor']:.1f}")
        for g in grown
    ]  # fmt: skip
    console.print(table(heads, rows, wraps=()))
    if chosen.plot:
        draw_growth(grown, chosen.plot)
    size = QUICK[-1] if chosen.quick else THROUGH_STORE
    beside = trigrams_in_postgresql(size)
    said = "no server here" if beside is None else f"{beside['p50']:.1f} ms, 99th percentile {beside['p99']:.1f} ms"
    lines = [*through_the_store(size, NAMES // 10 if chosen.quick else NAMES), ("pg_trgm, one name, median", said)]
    console.print(table((f"a file of names against {size:,} models", f"{RIGHT}took"), lines, wraps=()))


if __name__ == "__main__":
    main()
