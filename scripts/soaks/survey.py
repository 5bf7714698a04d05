"""What is put forward of the whole catalogue beside placing every configuration in every lie."""

from __future__ import annotations

import time
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass

import numpy as np

from service.core.catalogue import Catalogue, Configuration
from service.core.fit.boats import prepare
from service.core.fit.kit import build
from service.core.fit.place import place
from service.core.fit.site import S
from service.core.fit.survey import Burdens, promising
from tests.referee.boats import random_boat
from tests.referee.compare import demo_catalogue

CLOSE = 0.01
"""Misses by as much are the same."""
FIRST = 5
"""So many of what is put forward are compared beside the first."""
AIM_S = 0.15
"""A survey of the whole catalogue should take no longer (s of processor)."""


@dataclass(frozen=True)
class Found:
    """One boat: what both searches put first, how many pass, how well the first few agree, and the times (s)."""

    seed: int
    stern: str
    passing: int
    same: str
    first_few: int
    quick: float
    whole: float
    what: str


def survey(seed: int, catalogue: Catalogue) -> Found:
    """Search the catalogue on one random boat, pruned and whole."""
    form = random_boat(np.random.default_rng(seed))
    site = prepare(form, catalogue, draws=1).nominal
    started = time.process_time()
    put = promising(site, catalogue, keep=FIRST)
    quick = time.process_time() - started
    every = sorted(_able(catalogue, float(site.values[0, S.DISPLACEMENT])), key=Burdens(catalogue))
    started = time.process_time()
    aims = place(site, build(catalogue, every), catalogue.rules).aims.max(axis=1)
    whole = time.process_time() - started
    good = [c for c, aim in zip(every, aims, strict=True) if aim >= 0]
    if good:
        ours = next(n for n, c in enumerate(every) if c == put[0])
        best = every.index(good[0])
        same = "same" if ours == best else "simpler" if ours < best else "differs"
        told = f"{put[0]} where {good[0]}"
    else:
        ours, best = float(aims[every.index(put[0])]), float(aims.max())
        same, told = "same" if ours >= best - CLOSE else "differs", f"miss {ours:.3f} where {best:.3f}"
    agree = len(set(put) & set(good[:FIRST])) if good else FIRST
    return Found(seed, str(form.boat.stern), len(good), same, agree, quick, whole, told)


def _able(catalogue: Catalogue, heavy: float) -> list[Configuration]:
    codes = {gear.code for gear in catalogue.gears if heavy <= gear.max_displacement_kg}
    return [c for c in catalogue.configurations() if not codes or c.gear in codes]


def _batch(seeds: Sequence[int]) -> list[Found]:
    catalogue = demo_catalogue()
    promising(prepare(random_boat(np.random.default_rng(0)), catalogue, draws=1).nominal, catalogue)  # compiled first
    return [survey(seed, catalogue) for seed in seeds]


def run(seeds: Sequence[int]) -> bool:
    """Survey all boats; print the table; say whether the answer is always the whole search's, or a simpler one."""
    print(f"seeds {seeds[0]}..{seeds[-1]}; {len(demo_catalogue().configurations())} configurations, three lies")
    found: list[Found] = []
    with ProcessPoolExecutor() as pool:
        for part in pool.map(_batch, [seeds[n : n + 5] for n in range(0, len(seeds), 5)]):
            found += part
            print(f"  {len(found)} boats, {sum(f.same == 'differs' for f in found)} differ", flush=True)
    for kind, kept in (
        ("something passes", [f for f in found if f.passing]),
        ("nothing", [f for f in found if not f.passing]),
    ):
        if not kept:
            continue
        counts = {same: sum(f.same == same for f in kept) for same in ("same", "simpler", "differs")}
        quick, whole = (np.array([getattr(f, name) for f in kept]) for name in ("quick", "whole"))
        print(
            f"{kind}: {len(kept)} boats; {counts}; of the first {FIRST} {np.mean([f.first_few for f in kept]):.1f} agree"
        )
        print(
            f"  pruned {1000 * np.median(quick):.0f} ms median, {1000 * quick.max():.0f} ms most (aim {1000 * AIM_S:g});"
            f" whole {np.median(whole):.1f} s; {np.median(whole / quick):.0f} times faster"
        )
    for f in found:
        if f.same == "differs":
            print(f"  differs: boat {f.seed}, {f.stern}: {f.what}")
    return not any(f.same == "differs" for f in found)
