"""Clearances on meshes and every check again, on random boats: what differs, what is refuted, what halving moves."""

from __future__ import annotations

import time
from collections import defaultdict
from collections.abc import Iterable, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, field

from service.core.catalogue import Catalogue, Configuration
from tests.referee.compare import ARITHMETIC, CLEARANCE, cases, demo_catalogue, referee
from tests.referee.measure import Fineness

HALVED = 0.3
"""By how much halving mesh and angle step may move a clearance (mm)."""
BATCH = 10
CHOICE, HALVE_EVERY = 8, 4
"""Configurations of which the best placed are compared; with mesh and steps halved as well on every so manieth boat."""


@dataclass
class Findings:
    """What some boats showed: differences (mm) by check or part, the effect of halving, refutations."""

    placed: int = 0
    halved: int = 0
    passing: int = 0
    differences: dict[str, list[float]] = field(default_factory=lambda: defaultdict(list))
    halving: dict[str, float] = field(default_factory=lambda: defaultdict(float))
    square: float = 0.0
    refuted: list[str] = field(default_factory=list)

    def take(self, other: Findings) -> None:
        """Add what other boats showed."""
        self.placed, self.passing = self.placed + other.placed, self.passing + other.passing
        self.halved += other.halved
        self.square, self.refuted = max(self.square, other.square), self.refuted + other.refuted
        for name, values in other.differences.items():
            self.differences[name] += values
        for name, moved in other.halving.items():
            self.halving[name] = max(self.halving[name], moved)


def look(seeds: Sequence[int], catalogue: Catalogue, every: Sequence[Configuration], *, tries: int = 3) -> Findings:
    """Compare some configurations on each of some boats; the first of some boats with mesh and steps halved as well."""
    found = Findings()
    for seed in seeds:
        for rank, case in enumerate(cases(seed, catalogue, every, tries, CHOICE)):
            halve = rank == 0 and seed % HALVE_EVERY == 0
            verdict = referee(case, catalogue, Fineness(), halve=halve)
            found.halved += halve
            found.placed += 1
            found.passing += verdict.passes
            found.refuted += [f"boat {seed}, {case.configuration}: {what}" for what in verdict.refuted]
            for name, value in verdict.differences.items():
                moves = name.startswith("obstacle") and case.form.obstacles[int(name[9 : name.index("]")])].swept_to
                what = f"{'moving ' if moves else 'fixed '}{name.split(' ', 1)[1]}" if name.startswith("obst") else name
                found.differences[what].append(value)
            for name, moved in verdict.halving.items():
                part = name.split(" ", 1)[-1]
                found.halving[part] = max(found.halving[part], abs(moved))
            found.square = max(found.square, *verdict.square_ends.values(), 0.0)
    return found


def _batch(seeds: Sequence[int]) -> Findings:
    catalogue = demo_catalogue()
    return look(seeds, catalogue, catalogue.configurations())


def run(seeds: Sequence[int]) -> bool:
    """Compare all; print the table; say whether everything holds."""
    fine, found, started = Fineness(), Findings(), time.monotonic()
    print(f"seeds {seeds[0]}..{seeds[-1]}; hull mesh {fine.size:g} mm, angle step {fine.step:g}°")
    batches = [seeds[n : n + BATCH] for n in range(0, len(seeds), BATCH)]
    with ProcessPoolExecutor() as pool:
        for done, part in enumerate(pool.map(_batch, batches), start=1):
            found.take(part)
            if done % 10 == 0 or done == len(batches):
                print(
                    f"  {done * BATCH} boats, {time.monotonic() - started:.0f} s, refuted {len(found.refuted)}",
                    flush=True,
                )
    return report(found)


def report(found: Findings) -> bool:
    """Print what was found, clearances first; say whether everything holds."""
    print(f"{found.placed} placements, {found.passing} of them pass")
    print(f"{'engine less referee (mm)':28s} {'placements':>10s} {'least':>9s} {'most':>9s} {'beyond':>7s}")
    wrong = 0
    for name, values in sorted(found.differences.items()):
        beyond = sum(abs(v) > limit_of(name) for v in values)
        wrong += beyond
        print(f"{name:28s} {len(values):10d} {min(values):9.4f} {max(values):9.4f} {beyond:7d}")
    moved = max(found.halving.values(), default=0.0)
    print(f"halving mesh and angle step moves no clearance of {found.halved} placements by more than {moved:.4f} mm")
    print(f"struts are taken with round ends; cut square they would have up to {found.square:.2f} mm more room")
    _list("refuted", found.refuted)
    return wrong == 0 and moved <= HALVED and not found.refuted


def limit_of(name: str) -> float:
    """Return by how much a check may differ: clearances by a millimetre, arithmetic hardly at all."""
    return ARITHMETIC if name.startswith("margin") else CLEARANCE


def _list(what: str, lines: Iterable[str]) -> None:
    every = list(lines)
    print(f"{what}: {len(every)}")
    for line in every[:20]:
        print(f"  {line}")
