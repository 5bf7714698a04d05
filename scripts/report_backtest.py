"""How true forecasts were: generated fleets of known rates, and the demo fleet, on quarters that no method was chosen by."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from rich.console import Group, RenderableType

from service.cli.sheet import RIGHT, table
from service.core.demand import cells
from service.core.demand.backtest import Panel, asked, choose, foretold, pits, score
from service.core.demand.methods import FLOORS
from tests.core.demand.fleets import HELD, WAYS, fleet

FLEET = Path(__file__).resolve().parent.parent / "seed_fixtures" / "fleet.jsonl"
SEEDS = range(4)
DEMO = "demo fleet"


def panels() -> Iterator[tuple[str, Panel]]:
    """Yield fleets by the way their rates go, and the demo fleet's gears, brackets, shafts and configurations."""
    for way in WAYS:
        for seed in SEEDS:
            yield way, fleet(way, seed)
    records = [json.loads(line) for line in FLEET.read_text("utf-8").splitlines()]
    counts: dict[tuple[cells.Codes, int | None], int] = {}
    for one in (one for one in records if one["status"] in ("shipped", "installed")):
        made, (year, month, _) = one["configuration"], map(int, one["date"].split("-"))
        key = ((made["gear"], made["lower"], made["upper"], made["shaft"]), year * 12 + month - 1)
        counts[key] = counts.get(key, 0) + 1
    needs = cells.goods([codes for codes, _ in counts], None)
    counted = cells.by_quarter(cells.Counts(counts, {}), needs)
    for kind in (*cells.METAL, cells.CONFIGURATION):
        yield DEMO, cells.panel(counted, kind, 2001 * 4, 2026 * 4)


def shown() -> RenderableType:
    """Return a table: each way of rates with what was chosen, and all together; and the transforms in ten bins."""
    lines = list[tuple[str, ...]]()
    transforms: dict[str, list[NDArray[np.float64]]] = {}
    sums: dict[str, list[list[float]]] = {}
    for way, panel in panels():
        last = panel.quarters - HELD
        chosen = choose(panel, seed=1, last=last)
        held = asked(panel)
        held[:, :last] = False
        if not held.any():
            continue
        ran = foretold(panel, chosen.method)
        ours = score(panel, ran, held, chosen.method.name, 7)
        floors = [score(panel, foretold(panel, floor), held, floor.name, 7).log_score for floor in FLOORS]
        sums.setdefault(way, []).append(
            [ours.asked, ours.log_score, *floors, *ours.covered, *ours.covered_exactly, float(chosen.method.floor)]
        )
        transforms.setdefault(way, []).append(pits(panel, ran, held, 7))
    every = [row for rows in sums.values() for row in rows]
    generated = [row for way, rows in sums.items() if way != DEMO for row in rows]
    for name, rows in (*sums.items(), ("all generated", generated), ("all", every)):
        lines.append(_line(name, np.array(rows)))
    heads = (
        "", f"{RIGHT}asked", f"{RIGHT}log score", f"{RIGHT}mean floor", f"{RIGHT}naive floor", f"{RIGHT}in 80 %",
        f"{RIGHT}in 95 %", f"{RIGHT}exactly 80", f"{RIGHT}exactly 95", f"{RIGHT}floor used",
    )  # fmt: skip
    bins = [np.histogram(np.concatenate(some), 10, (0, 1))[0] for some in transforms.values()]
    shares = [("all", sum(bins)), *zip(transforms, bins, strict=True)]
    second = [(name, *(f"{100 * n / found.sum():.1f}" for n in found)) for name, found in shares]  # type: ignore[union-attr] # counts
    return Group(
        table(heads, lines, wraps=()),
        "\nrandomised transforms, per cent in each tenth:",
        table(("", *(f"{RIGHT}{n / 10:.1f}" for n in range(1, 11))), second, wraps=()),
    )


def _line(name: str, rows: NDArray[np.float64]) -> tuple[str, ...]:
    weights = rows[:, 0]
    mean = (rows[:, 1:8] * weights[:, None]).sum(axis=0) / weights.sum()
    scores, shares = mean[:3], mean[3:]
    floors = f"{int(rows[:, 8].sum())} of {len(rows)}"
    return (name, f"{int(weights.sum())}", *(f"{x:.3f}" for x in scores), *(f"{100 * x:.1f} %" for x in shares), floors)
