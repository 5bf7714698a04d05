"""One random boat: what the engine says of a placement beside what the referee finds."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.fit.boats import prepare
from service.core.fit.checks import CEILING, check
from service.core.fit.describe import check_ids
from service.core.fit.kit import Kit, build
from service.core.fit.mounts import Seated
from service.core.fit.place import LIES, place, polished
from service.core.fit.site import Site
from service.core.fit.terms import FIXED, WAKE, terms
from service.core.fit.things import PARTS, part_gap
from service.files.read.catalogue_file import read_catalogue
from tests.referee.arithmetic import limits, margins
from tests.referee.boats import random_boat
from tests.referee.measure import Fineness, Mounted, Spot, parts, to_hull, to_rudder, to_things
from tests.referee.skin import Skin

Array = NDArray[np.float64]
FIXTURE = Path(__file__).resolve().parents[2] / "seed_fixtures" / "catalogue.toml"
SHOWN = 500.0
"""Clearances are compared up to this (mm): beyond, both must be beyond."""
ARITHMETIC = 1e-3
"""By how much the engine's arithmetic may differ from the referee's (mm, shares, kg)."""
CLEARANCE = 1.0
"""By how much a clearance may differ (mm)."""


@dataclass(frozen=True)
class Case:
    """A configuration somewhere on a boat, and whether the engine lets it pass."""

    seed: int
    form: BoatForm
    configuration: Configuration
    site: Site
    kit: Kit
    spot: Array


@dataclass
class Verdict:
    """What one case showed: differences (mm) by check or part, refutations in words, effect of halving the steps."""

    passes: bool
    differences: dict[str, float] = field(default_factory=dict)
    refuted: list[str] = field(default_factory=list)
    halving: dict[str, float] = field(default_factory=dict)
    square_ends: dict[str, float] = field(default_factory=dict)
    """How much more room a strut has whose ends are cut square (mm)."""


def demo_catalogue() -> Catalogue:
    """Return the demo maker's catalogue."""
    return read_catalogue(FIXTURE.read_bytes(), FIXTURE.name)


def cases(
    seed: int, catalogue: Catalogue, every: Sequence[Configuration], tries: int = 3, choice: int = 24
) -> list[Case]:
    """Return some configurations on one random boat: the best placed of a few, and others pushed from their place."""
    rng = np.random.default_rng(seed)
    form = random_boat(rng)
    site = prepare(form, catalogue, draws=1).nominal
    chosen = [every[int(n)] for n in rng.choice(len(every), choice, replace=False)]
    kit = build(catalogue, chosen)
    best = place(site, kit, catalogue.rules)
    order = np.argsort(-best.aims.max(axis=1))[:tries]
    found = []
    for rank, index in enumerate(int(n) for n in order):
        own = build(catalogue, [chosen[index]])
        lie = int(best.aims[index].argmax()) if rank == 0 else int(rng.integers(len(LIES)))
        spot, _ = polished(site, kit, catalogue.rules, best, index, lie)
        if rank > 0:
            push = rng.normal(0.0, 60.0, 5)
            spot = spot + push * (np.array([spot[0] != 0.0, 1, 1, 1, 1]))
        found.append(Case(seed, form, chosen[index], site, own, spot))
    return found


def engine(case: Case, catalogue: Catalogue, near: float = np.inf) -> tuple[Array, tuple[Seated, Seated], bool]:
    """Return the engine's rows of value, limit and margin, both seats, and whether every binding check passes."""
    out = np.empty((len(check_ids(case.form)), 3))
    y, x, lower, upper, bottom = (float(v) for v in case.spot)
    seats = check(case.site, 0, case.kit, 0, terms(catalogue.rules), y, x, lower, upper, bottom, near, out)
    binds = [n != WAKE and (n < FIXED or case.site.binds[n - FIXED] > 0) for n in range(len(out))]
    passes = bool((out[binds, 2] >= 0).all())
    return out, seats, passes


def spot_of(case: Case, catalogue: Catalogue, seats: tuple[Seated, Seated]) -> Spot:
    """Return what the engine chose, and nothing of what it worked out."""
    y, x, lower, upper, bottom = (float(v) for v in case.spot)
    low, up = (
        Mounted(catalogue.bracket(code), collar, seat.pad, seat.spread, seat.reach)
        for code, collar, seat in (
            (case.configuration.lower, lower, seats[0]),
            (case.configuration.upper, upper, seats[1]),
        )
    )
    return Spot(y, x, low, up, bottom)


def measured(
    case: Case, catalogue: Catalogue, spot: Spot, fine: Fineness, *, round_ends: bool = True
) -> dict[str, float]:
    """Return every clearance by check, those from obstacles by obstacle and part."""
    skin = Skin(case.form)
    made = parts(skin, catalogue, case.configuration, spot, fine, round_ends=round_ends)
    found = to_hull(skin, made, spot, fine) | to_rudder(case.form, made, fine)
    for slot, gaps in enumerate(to_things(case.form, made, spot)):
        found |= {f"obstacle[{slot}] {part}": gap for part, gap in gaps.items()}
    return found


def referee(case: Case, catalogue: Catalogue, fine: Fineness, *, halve: bool) -> Verdict:
    """Compare one case; `halve` also measures with mesh and angle step halved, and struts cut square."""
    out, seats, passes = engine(case, catalogue)
    spot = spot_of(case, catalogue, seats)
    verdict = Verdict(passes)
    found = measured(case, catalogue, spot, fine)
    said = _engine_gaps(case, out, seats)
    for name, gap in found.items():
        verdict.differences[name] = _shown(said[name]) - _shown(gap)
    _refute(case, catalogue, out, spot, found, verdict)
    if halve:
        finer = measured(case, catalogue, spot, fine.halved())
        verdict.halving = {name: _shown(gap) - _shown(finer[name]) for name, gap in found.items()}
        square = measured(case, catalogue, spot, fine, round_ends=False)
        verdict.square_ends = {n: square[n] - found[n] for n in found if n.endswith("struts")}
    return verdict


def _shown(gap: float) -> float:
    return min(max(gap, 0.0), SHOWN)


def _engine_gaps(case: Case, out: Array, seats: tuple[Seated, Seated]) -> dict[str, float]:
    said = {id_: float(out[n, 0]) for n, id_ in enumerate(check_ids(case.form))}
    y, x, lower, upper, bottom = (float(v) for v in case.spot)
    for place_ in range(case.site.box_info.shape[0]):
        for part, name in enumerate(PARTS):
            gap = float(part_gap(case.site, 0, place_, case.kit, 0, x, y, bottom, (lower, upper), *seats, part))
            whole = "blade" if name.startswith("blade") else name.split(" strut ")[0]
            key = f"obstacle[{place_}] {whole}{' struts' if ' strut ' in name else ''}"
            said[key] = min(gap, said.get(key, np.inf))
    return said


def _refute(
    case: Case, catalogue: Catalogue, out: Array, spot: Spot, found: dict[str, float], verdict: Verdict
) -> None:
    """Note where the engine's arithmetic differs, and what the referee refutes of a placement that is said to pass."""
    said = {id_: float(out[n, 2]) for n, id_ in enumerate(check_ids(case.form))}
    own = margins(Skin(case.form), catalogue, case.configuration, spot)
    for name, margin in own.items():
        if np.isfinite(margin) or np.isfinite(said[name]):
            both = np.clip([said[name], margin], -CEILING * 100, np.inf)
            verdict.differences[f"margin {name}"] = float(both[0] - both[1])
        if verdict.passes and margin < -ARITHMETIC:
            verdict.refuted.append(f"{name} {margin:.3f}")
    least = limits(catalogue, case.form)
    for name, gap in found.items():
        id_ = name.split(" ")[0]
        binds = not id_.startswith("obstacle") or bool(case.site.binds[int(id_[9:-1])])
        if verdict.passes and binds and gap < least[id_] - CLEARANCE:
            verdict.refuted.append(f"{name} {gap:.2f} where {least[id_]:g} is the least")
