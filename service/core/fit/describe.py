"""A placed configuration in published shape: checks in words, pads, bolts, parts, loads."""

from __future__ import annotations

from typing import Any

import numpy as np

from service.core.boat import BoatForm
from service.core.catalogue import Bracket, Catalogue, Configuration
from service.core.fit import fasteners, loads, wording
from service.core.fit.checks import Sheet, Spot
from service.core.fit.entry import Entry
from service.core.fit.kit import Kit
from service.core.fit.mounts import Seated
from service.core.fit.shapes import Check, Fit, Placement
from service.core.fit.site import Site

NEEDS = {
    "main_rudder.hung": ("main_rudder.",),
    "main_rudder.trailing_edge_aft_mm": ("main_rudder.", "wake"),
    "main_rudder.stock_aft_mm": ("main_rudder.",),
    "transom.top_height_mm": ("lower.", "upper.", "hull."),
    "transom.bottom_height_mm": ("lower.seat", "upper.seat", "hull."),
    "transom.rake_deg": ("lower.", "upper.", "hull."),
    "transom.width_top_mm": ("lower.seat", "upper.seat"),
    "transom.post_width_mm": ("lower.gap", "upper.gap"),
    "transom.step_height_mm": ("lower.", "upper."),
    "boat.displacement_kg": ("displacement",),
}
"""Which checks cannot be made while a field has neither a value nor a prior."""
FAR_CLEAR = 1e6


def describe(
    form: BoatForm,
    catalogue: Catalogue,
    configuration: Configuration,
    unknown: tuple[str, ...],
    site: Site,
    kit: Kit,
    spot: Spot,
    sheet: Sheet,
) -> Fit:
    """Return the fit as published, but for verdict and probabilities, which the engine adds."""
    names = obstacle_names(form)
    blocked = _blocked(unknown)
    checks = tuple(
        _check(entry, catalogue, configuration, names, blocked) for entry in sheet.entries if _applies(entry)
    )
    y, x, lower, upper, bottom = (float(a[0]) for a in spot.stack())
    placement = Placement(
        offset_mm=round(y, 2), shaft_aft_mm=round(x, 2), lower_height_mm=round(lower, 2),
        upper_height_mm=round(upper, 2), shaft_bottom_mm=round(bottom, 2),
        shaft_top_mm=round(bottom + float(kit.length[0]), 2),
    )  # fmt: skip
    thickness = form.transom.thickness_mm
    metal = [
        ("lower", catalogue.bracket(configuration.lower), sheet.lower),
        ("upper", catalogue.bracket(configuration.upper), sheet.upper),
    ]
    backing = catalogue.rules.rule.get("backing_thickness")
    pads, bolts = [], []
    for role, bracket, seated in metal:
        at = _seat_data(seated)
        cut = fasteners.pad(role, bracket, at)  # type: ignore[arg-type]  # the two roles above
        pads += [cut] if cut else []
        bolts.append(fasteners.fastener(role, bracket, at, cut, thickness, backing.value if backing else None))  # type: ignore[arg-type]  # the same
    binding = [c for c in checks if c.binds and c.margin is not None and c.scale]
    least = min(binding, key=lambda c: (c.margin or 0.0) / (c.scale or 1.0))
    return Fit(
        configuration=configuration,
        verdict="undecided",
        probability=None,
        placement=placement,
        checks=checks,
        trades=tuple(
            f"take off the {names[c.id]}" for c in checks if not c.binds and c.status == "fail" and c.id in names
        ),
        loads=_loads(form, catalogue, configuration, site, spot),
        pads=tuple(pads),
        fasteners=tuple(bolts),
        cuts=_cuts(metal, sheet),
        parts=fasteners.parts(catalogue, configuration),
        owner_supplies=owner_supplies(form),
        smallest_margin=round((least.margin or 0.0) / (least.scale or 1.0), 4),
        why=f"tightest: {least.why}",
    )


def obstacle_names(form: BoatForm) -> dict[str, str]:
    """Return what each obstacle check speaks of: `obstacle[0]` -> `folding ladder to port`."""
    moving = {"folds": "folding ", "swings": "swinging ", "slides": "sliding ", "fixed": "fixed "}
    sides = {"port": " to port", "starboard": " to starboard", "centre": " amidships"}
    return {
        f"obstacle[{i}]": f"{moving.get(o.moves or '', '')}{o.kind}{sides.get(o.side or '', '')}"
        for i, o in enumerate(form.obstacles)
    }


def _blocked(unknown: tuple[str, ...]) -> tuple[str, ...]:
    found: list[str] = []
    for field in unknown:
        if field.startswith("obstacles["):
            found.append("obstacle" + field[len("obstacles") : field.index("]") + 1])
        found += NEEDS.get(field, ())
    return tuple(found)


def _applies(entry: Entry) -> bool:
    """Leave out checks of another kind of bracket, and clearances from what is nowhere near."""
    return bool(np.isfinite(entry.margin).all()) and abs(float(np.ravel(entry.margin)[0])) < FAR_CLEAR


def _check(
    entry: Entry, catalogue: Catalogue, configuration: Configuration, names: dict[str, str], blocked: tuple[str, ...]
) -> Check:
    value, limit, margin = (float(np.ravel(a)[0]) for a in (entry.value, entry.limit, entry.margin))
    source = wording.source(entry, catalogue, configuration)
    unknown = any(entry.id.startswith(prefix) for prefix in blocked)
    if unknown:
        said = f"{wording.title(entry.id, names)}: not known, and nothing to take it from"
        return Check(id=entry.id, value=None, limit=limit, margin=None, unit=entry.unit, scale=entry.scale, probability=None,
                     status="unknown", case=entry.case, why=said, source=source, binds=entry.binds)  # fmt: skip
    return Check(
        id=entry.id, value=round(value, 4), limit=round(limit, 4), margin=round(margin, 4), unit=entry.unit,
        scale=entry.scale, probability=None, status="pass" if margin >= 0 else "fail", case=entry.case,
        why=wording.why(entry.id, value, limit, margin, entry.unit, names), source=source, binds=entry.binds,
    )  # fmt: skip


def _seat_data(seated: Seated) -> fasteners.SeatData:
    values = [float(np.ravel(a)[0]) for a in (seated.pad, seated.pad_rake, seated.pad_plan, seated.rake, seated.plan)]
    return fasteners.SeatData(*values)


def _cuts(metal: list[tuple[str, Bracket, Seated]], sheet: Sheet) -> tuple[dict[str, Any], ...]:
    return tuple(
        {
            "role": role, "part": "strut", "count": bracket.struts.count,
            "length_mm": round(float(np.ravel(seated.strut_length)[0]), 1),
            "spread_mm": round(float(np.ravel(seated.spread)[0]), 1),
        }
        for role, bracket, seated in metal
        if bracket.struts is not None and sheet
    )  # fmt: skip


def _loads(
    form: BoatForm, catalogue: Catalogue, configuration: Configuration, site: Site, spot: Spot
) -> dict[str, Any]:
    """Return the blade's force at hull speed with the blade at its greatest angle, where the waterline length is known."""
    if form.boat.lwl_mm is None:
        return {}
    gear = catalogue.gear(configuration.gear)
    high = float(spot.bottom[0]) - gear.blade.root_gap_mm
    wet = float(np.clip(gear.blade.span_mm - max(high, 0.0), 0.0, gear.blade.span_mm))
    speed = float(loads.hull_speed(form.boat.lwl_mm / 1000))
    force = float(loads.blade_force(speed, gear.blade.chord_mm, wet, np.radians(gear.blade.max_angle_deg)))
    return {
        "hull_speed": {
            "speed_ms": round(speed, 2), "angle_deg": gear.blade.max_angle_deg, "blade_force_n": round(force),
            "formula": "CN ½ rho A V², Whicker and Fehlner lift with stall", "source": "DTMB report 933 (1958), from memory",
        }
    } if site is not None else {}  # fmt: skip


def owner_supplies(form: BoatForm) -> tuple[str, ...]:
    """Return what the owner has to provide."""
    own = [
        "sealant for the bolt holes",
        "backing plates cut to the drawing (316 stainless, aluminium or sealed marine plywood)",
    ]
    if form.boat.hull_material == "frp_cored" or form.transom.core_mm:
        own.append("epoxy to fill the core around every hole, or compression sleeves")
    if form.boat.hull_material in ("aluminium", "steel"):
        own.append("insulating washers and sleeves between stainless metal and the hull")
    own.append("a straight tube of the shaft's diameter to plumb with before drilling")
    return tuple(own)
