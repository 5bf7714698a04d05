"""A placed configuration in published shape: checks in words, pads, bolts, parts, loads."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

import numpy as np
from numpy.typing import NDArray

from service.core.boat import BoatForm
from service.core.catalogue import Catalogue, Configuration, Role
from service.core.fit import fasteners, wording
from service.core.fit.assemble import obstacles_that_count
from service.core.fit.bits import INF
from service.core.fit.checks import check, scales
from service.core.fit.kit import G, Kit
from service.core.fit.mounts import Seated
from service.core.fit.names import OWN_TUBE, obstacle_names, of_hull
from service.core.fit.outcome import Outcome, scaled, tightest
from service.core.fit.shapes import Check, Fit, PartLine, Placement
from service.core.fit.site import Site
from service.core.fit.strength import load_document, load_outcomes
from service.core.fit.terms import FIXED, KINDS, Kind, terms
from service.core.loads.shapes import Assessment

Array = NDArray[np.float64]
NEEDS = {
    "main_rudder.hung": ("main_rudder.",),
    "main_rudder.trailing_edge_aft_mm": ("main_rudder.", "wake"),
    "main_rudder.stock_aft_mm": ("main_rudder.",),
    "main_rudder.leading_edge_aft_mm": ("main_rudder.",),
    "main_rudder.top_height_mm": ("main_rudder.",),
    "main_rudder.bottom_height_mm": ("main_rudder.",),
    "main_rudder.max_deflection_deg": ("main_rudder.",),
    "main_rudder.spacing_mm": ("main_rudder.", "wake"),
    "transom.top_height_mm": ("lower.", "upper.", "hull."),
    "transom.bottom_height_mm": ("lower.seat", "upper.seat", "hull."),
    "transom.rake_deg": ("lower.", "upper.", "hull."),
    "transom.width_top_mm": ("lower.", "upper.", "hull."),
    "transom.width_waterline_mm": ("lower.seat", "upper.seat", "lower.strut", "upper.strut"),
    "transom.camber_mm": ("lower.", "upper.", "hull."),
    "transom.post_width_mm": ("lower.gap", "upper.gap"),
    "transom.step_height_mm": ("lower.", "upper.", "hull."),
    "transom.step_depth_mm": ("lower.", "upper.", "hull."),
    "transom.step_width_mm": ("lower.seat", "upper.seat"),
    "transom.lower_rake_deg": ("lower.", "upper.", "hull."),
    "boat.displacement_kg": ("displacement",),
}
"""Which checks cannot be made while a field has neither a value nor a prior."""
FAR_CLEAR = 1e6


@dataclass(frozen=True)
class Placed:
    """One configuration where it was placed: a site of one row, a kit of one entry, a spot (5,)."""

    site: Site
    kit: Kit
    spot: Array


def check_ids(form: BoatForm) -> list[str]:
    """Return the ids of all checks of this boat, in the order of a row of margins."""
    return [kind.id for kind in KINDS] + [f"obstacle[{index}]" for index, _ in obstacles_that_count(form)]


def describe(
    form: BoatForm, catalogue: Catalogue, configuration: Configuration, unknown: tuple[str, ...], placed: Placed
) -> Fit:
    """Return the fit as published, but for verdict and probabilities, which the engine adds."""
    names = obstacle_names(form)
    under_way = _under_way(catalogue, configuration, float(placed.spot[4]))
    y, x, lower, upper, bottom = (float(v) for v in placed.spot)
    rows, seats = outcomes(form, catalogue, configuration, unknown, placed)
    checks = tuple(row.check() for row in rows)
    metal = _metal(form, catalogue, configuration, seats)
    least = tightest(checks)
    parts = fasteners.parts(catalogue, configuration)
    return Fit(
        configuration=configuration,
        verdict="undecided",
        probability=None,
        placement=Placement(
            offset_mm=round(y, 2), shaft_aft_mm=round(x, 2), lower_height_mm=round(lower, 2),
            upper_height_mm=round(upper, 2), shaft_bottom_mm=round(bottom, 2),
            shaft_top_mm=round(bottom + float(placed.kit.gear[0, G.LENGTH]), 2),
        ),
        checks=(*checks, *under_way),
        trades=tuple(f"take off the {names[c.id]}" for c in checks if not c.binds and c.status == "fail" and c.id in names),
        parts=parts,
        owner_supplies=owner_supplies(form, catalogue, parts),
        smallest_margin=round(scaled(least), 4),
        why=f"tightest: {least.why}",
        **metal,
    )  # fmt: skip


def _under_way(catalogue: Catalogue, configuration: Configuration, bottom: float) -> tuple[Check, ...]:
    """Return the depth of the blade's top at hull speed, where the stern squats into its own wave: advice.

    Nothing where the rules state no `stern_wave`: how much higher the water then stands at the stern.
    """
    wave = catalogue.rules.rule.get("stern_wave")
    if wave is None:
        return ()
    limit = catalogue.rules["root_depth_max"]
    value = wave.value - (bottom - catalogue.gear(configuration.gear).blade.root_gap_mm)
    id_, margin = "root_depth.under_way", limit - value
    return (
        Check(
            id=id_, value=round(value, 4), limit=limit, margin=round(margin, 4), unit="mm",
            scale=catalogue.rules.scale_of("root_depth"), probability=None, status="pass" if margin >= 0 else "fail",
            case="hull speed", why=wording.why(id_, value, limit, margin, "mm", {}), binds=False,
            source=f"rule stern_wave: {wave.source}; rule root_depth_max: {catalogue.rules.rule['root_depth_max'].source}",
        ),
    )  # fmt: skip


def _metal(
    form: BoatForm, catalogue: Catalogue, configuration: Configuration, seats: tuple[Seated, Seated]
) -> dict[str, Any]:
    """Return pads, bolts and strut cuts of both brackets."""
    rule = catalogue.rules.rule.get("backing_thickness")
    backing = rule.value if rule else None
    pads, bolts, cuts = [], [], []
    roles: tuple[tuple[Role, str], ...] = (("lower", configuration.lower), ("upper", configuration.upper))
    for (role, code), seated in zip(roles, seats, strict=True):
        bracket = catalogue.bracket(code)
        cut = fasteners.pad(role, bracket, seated)
        pads += [cut] if cut else []
        if bracket.kind == "cheek":
            bolts.append(fasteners.across(role, bracket, form.transom.post_width_mm))
        else:
            bolts.append(fasteners.fastener(role, bracket, seated, cut, form.transom.thickness_mm, backing))
        if bracket.struts is not None:
            cuts.append({
                "role": role, "part": "strut", "count": bracket.struts.count,
                "length_mm": round(seated.strut_length, 1), "spread_mm": round(seated.spread, 1),
            })  # fmt: skip
    return {"pads": tuple(pads), "fasteners": tuple(bolts), "cuts": tuple(cuts)}


def _blocked(unknown: tuple[str, ...]) -> tuple[str, ...]:
    found: list[str] = []
    for field in unknown:
        if field.startswith("obstacles["):
            found.append("obstacle" + field[len("obstacles") : field.index("]") + 1])
        found += NEEDS.get(field, ())
    return tuple(found)


def outcomes(
    form: BoatForm, catalogue: Catalogue, configuration: Configuration, unknown: tuple[str, ...], placed: Placed
) -> tuple[tuple[Outcome, ...], tuple[Seated, Seated]]:
    """Return every check of the geometry that applies, and both seats.

    One that has neither value nor prior to stand on is unknown.
    """
    ids, names, blocked, t = check_ids(form), obstacle_names(form), _blocked(unknown), terms(catalogue.rules)
    out, scale = np.empty((len(ids), 3)), scales(t, len(ids)).tolist()
    y, x, lower, upper, bottom = (float(v) for v in placed.spot)
    seats = check(placed.site, 0, placed.kit, 0, t, y, x, lower, upper, bottom, INF, out)
    rows = []
    for place, (id_, (value, limit, margin)) in enumerate(zip(ids, out.tolist(), strict=True)):
        lacks = id_.startswith(blocked)
        applies = math.isfinite(margin) and abs(margin) < FAR_CLEAR
        if not applies and not (lacks and place >= FIXED):
            continue
        kind = KINDS[place] if place < FIXED else _obstacle_kind(id_, placed.site, place - FIXED)
        why = _lacking if lacks else partial(_said, value, limit, margin, kind.unit)
        rows.append(Outcome(
            id_, None if lacks else round(value, 4), round(limit, 4) if applies else None,
            None if lacks else round(margin, 4), kind.unit, scale[place],
            "unknown" if lacks else "pass" if margin >= 0 else "fail", kind.case, kind.binds, partial(why, id_, names),
            partial(wording.source, kind, catalogue, configuration),
        ))  # fmt: skip
    return tuple(rows), seats


def _said(value: float, limit: float, margin: float, unit: str, id_: str, names: dict[str, str]) -> str:
    return wording.why(id_, value, limit, margin, unit, names)


def _lacking(id_: str, names: dict[str, str]) -> str:
    return f"{wording.title(id_, names)}: not known, and nothing to take it from"


def _obstacle_kind(id_: str, site: Site, slot: int) -> Kind:
    place = int(np.flatnonzero(site.box_info[:, 0] == slot)[0])
    rule = "moving_gap" if site.box_info[place, 2] else "fixed_gap"
    return Kind(id_, "obstacle", "mm", rule, binds=bool(site.binds[slot]))


def with_loads(fit: Fit, found: Assessment | None) -> Fit:
    """Return the fit with its load checks, cases and findings; the tightest check is named anew."""
    if found is None:
        return fit.model_copy(update={"loads": {"findings": ["waterline length not known: no loads worked out"]}})
    checks = (*fit.checks, *(row.check() for row in load_outcomes(found)))
    least = tightest(checks)
    weak = [
        role
        for role in ("lower", "upper")
        if any(of_hull(c.id) and f".{role}." in c.id and c.status == "fail" for c in checks)
    ]
    update = {
        "trades": (*fit.trades, *(f"have the skin behind the {role} bracket built up" for role in weak)),
        "checks": checks, "loads": load_document(found), "smallest_margin": round(scaled(least), 4),
        "why": f"tightest: {least.why}",
    }  # fmt: skip
    return fit.model_copy(update=update)


def owner_supplies(form: BoatForm, catalogue: Catalogue, parts: Sequence[PartLine]) -> tuple[str, ...]:
    """Return what the owner has to provide, beside the parts that are shipped."""
    own = [
        "sealant for the bolt holes",
        "backing plates cut to the drawing (316 stainless, aluminium or sealed marine plywood)",
    ]
    if form.boat.hull_material == "frp_cored" or form.transom.core_mm:
        own.append("epoxy to fill the core around every hole, or compression sleeves")
    if form.boat.hull_material in ("aluminium", "steel"):
        own.append("insulating washers and sleeves between stainless metal and the hull")
    plumbing = {part.code for part in catalogue.parts if part.plumbs}
    if not any(line.code in plumbing for line in parts):
        own.append(OWN_TUBE)
    return tuple(own)
