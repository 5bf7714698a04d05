"""The placement beside scipy's differential evolution: how often worse, and how many times faster."""

from __future__ import annotations

import time
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import Bounds, differential_evolution

from service.core.catalogue import Catalogue, Configuration
from service.core.compiled import compiled
from service.core.fit.bits import NEAR
from service.core.fit.boats import prepare
from service.core.fit.checks import check, scales, smallest
from service.core.fit.kit import STEP, Kit, M, build
from service.core.fit.place import LIES, SIDE, place, polished
from service.core.fit.site import Flag, S, Site
from service.core.fit.starts import offset_range
from service.core.fit.terms import FIXED, Terms, terms
from tests.referee.boats import random_boat
from tests.referee.compare import demo_catalogue

Array = NDArray[np.float64]
WORSE, WORSE_SHARE, FASTER = 0.01, 0.01, 50.0
"""A smallest scaled margin lower by more counts as worse; what share may be; how many times faster is aimed at."""
TOL, MAXITER = 0.01, 1000
"""scipy's own defaults, stated."""
AXIS, BOTTOM = (-1500.0, 2500.0), (-700.0, 200.0)
"""Generous bounds: the axis in the frame, the shaft's bottom from the water to so much above the top edge (mm)."""
CHOICE = 40
"""Every second pair is the best of so many configurations, so that passing ones are among them."""
LEAST = -1e6


@dataclass(frozen=True)
class Pair:
    """One boat and configuration: smallest governing scaled margin of both, and the time each took (s)."""

    seed: int
    ours: float
    theirs: float
    our_time: float
    their_time: float
    what: str


@compiled
def value(site: Site, kit: Kit, t: Terms, scale: Array, out: Array, at: Array) -> float:
    """Return the smallest governing scaled margin of a placement (5,)."""
    check(site, 0, kit, 0, t, at[0], at[1], at[2], at[3], at[4], NEAR, out)
    return smallest(site, out, scale, True, True)[0]  # noqa: FBT003 - compiled code takes no keywords


def pair(seed: int, catalogue: Catalogue, every: Sequence[Configuration]) -> Pair:
    """Place one configuration on one random boat, both ways."""
    rng = np.random.default_rng(seed)
    form = random_boat(rng)
    site, t = prepare(form, catalogue, draws=1).nominal, terms(catalogue.rules)
    one = every[int(rng.integers(len(every)))]
    if seed % 2:
        some = [every[int(n)] for n in rng.choice(len(every), CHOICE, replace=False)]
        one = some[int(place(site, build(catalogue, some), catalogue.rules).aims.max(axis=1).argmax())]
    kit, count = build(catalogue, [one]), FIXED + site.binds.size
    scale, out = scales(t, count), np.empty((count, 3))
    started = time.process_time()
    best = place(site, kit, catalogue.rules)
    spot, _ = polished(site, kit, catalogue.rules, best, 0, int(best.aims[0].argmax()))
    our_time = time.process_time() - started
    started = time.process_time()
    theirs = max(_evolved(site, kit, t, scale, out, SIDE[lie], seed) for lie in LIES)
    return Pair(
        seed, value(site, kit, t, scale, out, spot), theirs, our_time, time.process_time() - started,
        f"{form.boat.stern}, {one}",
    )  # fmt: skip


def _evolved(site: Site, kit: Kit, t: Terms, scale: Array, out: Array, side: float, seed: int) -> float:
    """Return the best that differential evolution finds in one lie."""
    top, bottom = float(site.values[0, S.TOP]), float(site.values[0, S.BOTTOM])
    bounds = [
        offset_range(site, kit, 0, side, t),
        AXIS,
        *(_collars(site, m, top, bottom) for m in (kit.lower, kit.upper)),
    ]
    bounds.append((BOTTOM[0], top + BOTTOM[1]))
    least, most = (np.array(ends) for ends in zip(*bounds, strict=True))
    fixed = side == 0.0
    at = np.zeros(5)

    def lost(v: Array) -> float:
        at[1 if fixed else 0 :] = v
        return -max(float(value(site, kit, t, scale, out, at)), LEAST)

    first = 1 if fixed else 0
    found = differential_evolution(lost, Bounds(least[first:], most[first:]), tol=TOL, maxiter=MAXITER, rng=seed)
    return -float(found.fun)


def _collars(site: Site, m: Array, top: float, bottom: float) -> tuple[float, float]:
    """Return the lowest and highest collar over skin, or over the step within what a stand can."""
    if m[0, M.KIND] == STEP and site.flags[Flag.STEPPED]:
        step = float(site.values[0, S.STEP_HEIGHT])
        return step + float(m[0, M.STANDS_LOW]), step + float(m[0, M.STANDS_HIGH])
    rise = float(m[0, M.RISE])
    return bottom + rise, top + rise


def _batch(seeds: Sequence[int]) -> list[Pair]:
    catalogue = demo_catalogue()
    every = catalogue.configurations()
    pair(0, catalogue, every)  # compiled before the clock counts
    return [pair(seed, catalogue, every) for seed in seeds]


def run(seeds: Sequence[int]) -> bool:
    """Place all pairs; print the table; say whether few enough are worse."""
    print(
        f"seeds {seeds[0]}..{seeds[-1]}; differential evolution: tol {TOL:g}, maxiter {MAXITER}, all else scipy's defaults"
    )
    batches = [seeds[n : n + 10] for n in range(0, len(seeds), 10)]
    pairs: list[Pair] = []
    with ProcessPoolExecutor() as pool:
        for part in pool.map(_batch, batches):
            pairs += part
            print(f"  {len(pairs)} pairs, worse {sum(p.ours < p.theirs - WORSE for p in pairs)}", flush=True)
    return report(pairs)


def report(pairs: Sequence[Pair]) -> bool:
    """Print how the two compare; say whether few enough are worse."""
    gain = np.array([p.ours - p.theirs for p in pairs])
    worse, better = gain < -WORSE, gain > WORSE
    print(f"{'pairs':>8s} {'worse':>6s} {'equal':>6s} {'better':>7s}   (by more than {WORSE:g})")
    for name, kept in (("all", gain > -np.inf), ("pass", np.array([max(p.ours, p.theirs) >= 0 for p in pairs]))):
        print(f"{name:>8s} {(worse & kept).sum():6d} {(~worse & ~better & kept).sum():6d} {(better & kept).sum():7d}")
    quantiles = " ".join(f"{q:g} %: {np.quantile(gain, q / 100):+.4f}" for q in (0, 1, 5, 50, 95, 100))
    print(f"ours less theirs, quantiles: {quantiles}")
    sign = [p for p in pairs if (p.ours >= 0) != (p.theirs >= 0)]
    print(f"one passes and the other does not: {len(sign)} (ours passes in {sum(p.ours >= 0 for p in sign)})")
    for name, some in (("pass", [p for p in pairs if p.ours >= 0]), ("miss", [p for p in pairs if p.ours < 0])):
        if some:
            ratio, ours = (
                float(np.median(v)) for v in zip(*((p.their_time / p.our_time, p.our_time) for p in some), strict=True)
            )
            print(
                f"those that {name}, median: {1000 * ours:.1f} ms of processor, {ratio:.0f} times faster (aim {FASTER:g})"
            )
    for p, bad in zip(pairs, worse, strict=True):
        if bad:
            print(f"  worse: boat {p.seed}, {p.what}: {p.ours:.3f} where {p.theirs:.3f} can be had")
    return bool(worse.mean() <= WORSE_SHARE)
