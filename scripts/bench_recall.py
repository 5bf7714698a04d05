"""How long precedents take over fleets of 10,000 to a million records, on one core, beside two plain ways in the same run.

The demo fleet over and over, each number of each copy moved a little, so that no two boats are alike. Beside it: the same
definition as a plain loop, which must give the same ten nearest, and scikit-learn's brute force on values filled with the
mean, which shows what filling costs in right neighbours. `--quick` leaves the million out.
"""

from __future__ import annotations

import statistics
import sys
import time
from collections.abc import Callable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray
from rich.console import Console
from sklearn.neighbors import NearestNeighbors

from scripts.bench_fleet import demo_fleet
from service.cli.sheet import RIGHT, table
from service.core.boat import BoatForm
from service.core.recall.distance import Rows, deltas
from service.core.recall.features import FEATURES
from service.core.recall.fleet import Fleet
from service.core.recall.precedents import recall
from service.core.recall.ranking import rank

SIZES = (10_000, 100_000, 1_000_000)
ASKED, NEAREST = 12, 10
TARGET_MS = 25.0
MOVED = 0.02
"""How far numbers are moved, in parts of their spread."""


def grown(small: Fleet, size: int) -> Fleet:
    """Return a fleet of `size` records like the small one."""
    dice = np.random.default_rng(11)
    at = np.arange(size) % small.rows.size
    values = small.rows.values[:, at].copy()
    for k, feature in enumerate(FEATURES):
        if feature.sort in ("number", "log"):
            values[k] += dice.normal(0, MOVED, size).astype(np.float32)
    choices = {part: replace(one, chosen=one.chosen[at]) for part, one in small.choices.items()}
    return replace(
        small, records=tuple(small.records[n] for n in at), said=small.said[:, at], rows=Rows(values, small.rows.kinds[at]),
        hull=small.hull[at], speaks_for=small.speaks_for[at], speaks_against=small.speaks_against[at], choices=choices,
    )  # fmt: skip


def timed(work: Callable[[int], object]) -> tuple[float, float]:
    """Return the median milliseconds of one call, by the clock and of this thread's processor time."""
    work(0)
    clock, spent = [], []
    for n in range(ASKED):
        start, begun = time.perf_counter(), time.thread_time()
        work(n)
        clock.append(1000 * (time.perf_counter() - start))
        spent.append(1000 * (time.thread_time() - begun))
    return statistics.median(clock), statistics.median(spent)


def plainly(fleet: Fleet, form: BoatForm, hull: str | None) -> tuple[list[int], float]:
    """Return the nearest places by a loop over boats and features, and its milliseconds, reading the numbers apart."""
    ours = fleet.ask(form, hull)
    apart, known = deltas(fleet.rows, ours)
    able = rank(fleet, form, hull).comparable.tolist()
    columns, has = apart.T.tolist(), known.T.tolist()
    weights, m = fleet.measure.weights.tolist(), fleet.measure
    start = time.perf_counter()
    far = []
    for n in range(len(columns)):
        if able[n]:
            pull, shared = m.shrink * m.middle, m.shrink
            for w, d, both in zip(weights, columns[n], has[n], strict=True):
                if both:
                    pull += w * d
                    shared += w
            far.append((pull / shared, n))
    nearest = [n for _, n in sorted(far)[:NEAREST]]
    return nearest, 1000 * (time.perf_counter() - start)


def filled(fleet: Fleet) -> NDArray[np.float32]:
    """Return the features as one matrix, boats down, each weighed, what is unknown by the mean."""
    values = fleet.rows.values.T * fleet.measure.weights.astype(np.float32)
    means = np.nanmean(values, axis=0)
    return np.ascontiguousarray(np.where(np.isnan(values), means, values), dtype=np.float32)


def line(small: Fleet, size: int) -> tuple[str, ...]:
    """Return one row of the table. RuntimeError where the loop finds others than recall does."""
    fleet = grown(small, size)
    asked = [small.records[n * 37] for n in range(ASKED)]
    ours, spent = timed(lambda n: recall(fleet, asked[n].form, hull=asked[n].hull))
    matrix = filled(fleet)
    brute = NearestNeighbors(n_neighbors=NEAREST, algorithm="brute", metric="manhattan", n_jobs=1).fit(matrix)
    theirs, _ = timed(lambda n: brute.kneighbors(matrix[n * 37][None]))
    found, loops = 0, []
    for n, one in enumerate(asked[:3]):
        nearest, took = plainly(fleet, one.form, one.hull)
        loops.append(took)
        ranking = rank(fleet, one.form, one.hull)
        mine = ranking.nearest(ranking.comparable, NEAREST).tolist()
        if mine != nearest:
            raise RuntimeError(f"{size} records: the loop finds {nearest}, recall {mine}")
        found += len(set(mine) & set(brute.kneighbors(matrix[n * 37][None])[1][0].tolist()))
    return (
        f"{size:,}", f"{ours:.1f} ms", f"{spent:.1f} ms", f"{statistics.median(loops):.0f} ms", f"{theirs:.1f} ms",
        f"{found / (3 * NEAREST):.2f}",
    )  # fmt: skip


def main() -> None:
    """Print the table."""
    small = demo_fleet()
    sizes = SIZES[:-1] if "--quick" in sys.argv[1:] else SIZES
    heads = (
        f"{RIGHT}records", f"{RIGHT}recall", f"{RIGHT}of it processor", f"{RIGHT}plain loop, same ten",
        f"{RIGHT}brute force, filled", f"{RIGHT}right of its ten",
    )  # fmt: skip
    rows = [line(small, size) for size in sizes]
    console = Console(width=110, no_color=True, highlight=False)
    console.print(table(heads, rows, wraps=()))
    console.print(
        f"median of {ASKED} boats, precedents, votes and all; target {TARGET_MS:.0f} ms at a million on one core"
    )


if __name__ == "__main__":
    main()
