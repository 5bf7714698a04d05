"""The loads of a placed configuration, on the nominal boat and on every draw through the same formulas."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration
from service.core.compiled import compiled
from service.core.fit import wording
from service.core.fit.kit import Kit, M
from service.core.fit.mounts import Seated, seat
from service.core.fit.names import of_hull
from service.core.fit.outcome import Outcome
from service.core.fit.site import S, Site, skin
from service.core.fit.terms import Terms, terms
from service.core.loads.assess import assess
from service.core.loads.gather import Place, Seat, inputs_of
from service.core.loads.shapes import Assessment, Hull, Result
from service.core.loads.standard import Numbers

Array = NDArray[np.float64]
REACH, RAKE, PLAN, PAD, STANDS, FEET = 0, 1, 2, 3, 4, 5
COLUMNS = 11
ADVICE = frozenset({"load.shaft_shaking"})
"""Load checks that rest on figures known only to a factor (damping, push of eddies): advice, never a refusal."""


@dataclass(frozen=True)
class Skin:
    """What the loads need of a boat beside its site; None where not even usual figures are known.

    Waterline length and thickness (N,), material and core.
    """

    lwl_mm: Array | None
    thickness_mm: Array | None
    material: str | None
    core_mm: float | None

    def rows(self, rows: slice) -> Skin:
        """Return some of the rows."""
        lwl, thickness = (None if a is None else a[rows] for a in (self.lwl_mm, self.thickness_mm))
        return replace(self, lwl_mm=lwl, thickness_mm=thickness)


def strength(
    catalogue: Catalogue, configuration: Configuration, site: Site, kit: Kit, spots: Array, hull: Skin, *, plates: bool
) -> Assessment | None:
    """Return every load check on each row: site of N rows, kit of one entry, `spots` (N, 5).

    None where nothing is known of the waterline length, and so of speed. `plates`: find the backing plate that would do
    as well.
    """
    if hull.lwl_mm is None:
        return None
    seats = _seats(site, kit, spots, terms(catalogue.rules))
    lower, upper = (
        _seat(seats[:, role], strutted=bool(m[0, M.KIND] == 1)) for role, m in enumerate((kit.lower, kit.upper))
    )
    place = Place(spots[:, 2], spots[:, 3], spots[:, 4])
    body = Hull(
        lwl_mm=hull.lwl_mm, material=hull.material, thickness_mm=hull.thickness_mm, core_mm=hull.core_mm,
        post_mm=site.values[:, S.POST] if site.values[:, S.POST].any() else None,
    )  # fmt: skip
    return assess(
        inputs_of(catalogue, configuration, place, (lower, upper), body), Numbers(catalogue.rules), plates=plates
    )


def _seat(rows: Array, *, strutted: bool) -> Seat:
    feet = rows[:, FEET:].reshape(-1, 2, 3) if strutted else None
    return Seat(rows[:, REACH], rows[:, RAKE], rows[:, PLAN], rows[:, PAD], rows[:, STANDS], feet)


@compiled
def _seats(site: Site, kit: Kit, spots: Array, t: Terms) -> Array:
    """Return (N, 2, COLUMNS): reach, slopes the flange takes itself (radians), pad, height above a step, strut feet."""
    n = spots.shape[0]
    out = np.zeros((n, 2, COLUMNS))
    for i in range(n):
        y, x = spots[i, 0], spots[i, 1]
        for role in range(2):
            m = kit.upper if role else kit.lower
            collar = spots[i, 3] if role else spots[i, 2]
            s = seat(site, i, m, 0, y, x, collar, t)
            _, rake, plan = skin(site, i, y, s.flange)
            row = out[i, role]
            row[REACH], row[PAD] = s.reach, s.pad
            row[RAKE], row[PLAN] = math.atan(rake - s.tilt), math.atan(plan - s.turn)
            row[STANDS] = collar - site.values[i, S.STEP_HEIGHT]
            _feet(row, s, x, collar)
    return out


@compiled
def _feet(row: Array, s: Seated, x: float, collar: float) -> None:
    row[FEET], row[FEET + 1], row[FEET + 2] = s.foot_port - x, -s.spread / 2.0, s.foot_z - collar
    row[FEET + 3], row[FEET + 4], row[FEET + 5] = s.foot_starboard - x, s.spread / 2.0, s.foot_z - collar


def load_outcomes(found: Assessment) -> tuple[Outcome, ...]:
    """Return the load checks of the first row."""
    return tuple(_outcome(one) for one in found.results if np.isfinite(one.margin[0]))


def _outcome(one: Result) -> Outcome:
    value, limit, margin = (float(a[0]) for a in (one.value, one.limit, one.margin))
    return Outcome(
        one.id, round(value, 4), round(limit, 4), round(margin, 4), one.unit, float(one.scale[0]),
        "pass" if margin >= 0 else "fail", one.case_name((0,)),
        one.binds and not of_hull(one.id) and one.id not in ADVICE,
        partial(wording.compared, one.title, value, limit, margin, one.unit), lambda: f"{one.formula}; {one.source}",
    )  # fmt: skip


def load_document(found: Assessment) -> dict[str, Any]:
    """Return the cases with speed, angle, forces, formula and source, and what the reader must know of them."""
    cases = found.cases
    rows = {
        name: {
            "speed_ms": round(float(cases.speed_ms[k].flat[0]), 2), "angle_deg": round(float(cases.angle_deg[k].flat[0]), 1),
            "along_n": round(float(cases.along_n[k].flat[0])), "side_n": round(float(cases.side_n[k].flat[0])),
            "torque_nm": round(float(cases.torque_nm[k].flat[0]), 1), "formula": cases.formulas[k], "source": cases.sources[k],
        }
        for k, name in enumerate(cases.names)
    }  # fmt: skip
    return {
        "cases": rows,
        "findings": [finding.text for finding in found.findings],
        "backing_overlap_mm": {role: _finite(np.ravel(a)[0]) for role, a in found.backing_overlap_mm.items()},
    }


def _finite(value: float) -> float | None:
    """Return a figure to a tenth, None where no plate would do: JSON knows no infinity."""
    return round(float(value), 1) if math.isfinite(value) else None


def skin_of(form: BoatForm, values: dict[str, Array], material: str | None) -> Skin:
    """Return what the loads need of a boat, from rows of factor values."""
    lwl, thickness = values.get("boat.lwl_mm"), values.get("transom.thickness_mm")
    return Skin(
        lwl_mm=None if lwl is None else np.maximum(lwl, 1000.0),
        thickness_mm=None if thickness is None else np.maximum(thickness, 1.0),
        material=material,
        core_mm=form.transom.core_mm,
    )
