"""Checks of the skin under a flange: bearing, punching, bending through its thickness, crushing of its core."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

import numpy as np

from service.core.loads import plate, skin
from service.core.loads.materials import Skin, laminate_bending, skin_of
from service.core.loads.mount import Carried
from service.core.loads.rows import About, at_most
from service.core.loads.shapes import Hull, Mount, Result, Role
from service.core.loads.standard import Numbers
from service.core.loads.threads import Size, size_of
from service.core.loads.validity import Array, Finding, Num

HALVINGS = 30


class Told(NamedTuple):
    """What the skin is made of and how much of its strength may be used."""

    strength: Skin
    share: float
    whole_mm: Array
    core_mm: Array
    faces_mm: Array
    source: str


class Under(NamedTuple):
    """What all checks of one bracket's skin share."""

    role: Role
    mount: Mount
    hull: Hull
    told: Told
    cases: tuple[str, ...]
    numbers: Numbers


def skin_results(
    role: Role, mount: Mount, hull: Hull, on: Carried, cases: tuple[str, ...], numbers: Numbers, *, plates: bool = True
) -> tuple[tuple[Result, ...], tuple[Finding, ...], Array | None]:
    """Return the skin's checks, findings, and how far beyond its bolts the backing plate must reach.

    That is None where the skin is not known, or `plates` says not to look for it.
    """
    missing = _missing(role, mount, hull)
    if missing:
        return (), missing, None
    told, found = _told(hull, numbers)
    under = Under(role, mount, hull, told, cases, numbers)
    shear, pull = on.shear_n.max(axis=0), on.pull_n.max(axis=0)
    size = size_of(mount.bolt)
    if mount.kind == "cheek":
        return (_bearing(under, size, shear, np.asarray(hull.post_mm, dtype=float)),), found, None
    results = [
        _bearing(under, size, shear, told.whole_mm if hull.filled else told.faces_mm),
        _punching(under, size, pull),
    ]
    bend, overlap = _bending(under, on, plates=plates)
    results.append(bend)
    if np.any(told.core_mm > 0):
        results.append(_crush(under, size, pull))
    return tuple(results), (*found, *_ranges(under)), overlap


def _ranges(under: Under) -> tuple[Finding, ...]:
    """Return what is out of range: skin, core and the largest backing plate against the panel."""
    told, cored = under.told, bool(np.any(under.told.core_mm > 0))
    boss = _boss(under.mount, under.numbers["backing_overlap_most"])
    sandwich = plate.sandwich_stress.findings(core_share=told.core_mm / np.maximum(told.whole_mm, 0.1)) if cored else ()
    return (
        *plate.solid_stress.findings(skin_mm=told.whole_mm),
        *plate.bending_from_moment.findings(share=boss / _panel(under)),
        *sandwich,
    )


def _panel(under: Under) -> Num:
    """Return the radius of the unsupported panel: the hull's own, or the rules'."""
    return under.hull.panel_mm if under.hull.panel_mm is not None else under.numbers["skin_panel_radius"]


def _missing(role: Role, mount: Mount, hull: Hull) -> tuple[Finding, ...]:
    """Say what is not known and keeps the skin from being checked."""
    needs = {"post_mm": hull.post_mm} if mount.kind == "cheek" else {"thickness_mm": hull.thickness_mm}
    if mount.kind != "cheek" and hull.material == "frp_cored":
        needs["core_mm"] = hull.core_mm
    return tuple(
        Finding("skin", f"transom.{name}", f"not known: the skin under the {role} bracket is not checked")
        for name, value in needs.items()
        if value is None
    )


def _told(hull: Hull, numbers: Numbers) -> tuple[Told, tuple[Finding, ...]]:
    strength, doubt = skin_of(hull.material, numbers["skin_glass_share"], numbers["skin_bearing"])
    whole = np.asarray(hull.thickness_mm if hull.thickness_mm is not None else 0.0, dtype=float)
    core = np.minimum(np.asarray(hull.core_mm if hull.core_mm is not None else 0.0, dtype=float), 0.95 * whole)
    rule = "safety_skin" if strength.measure == "ultimate" else "safety_metal_yield"
    source = f"{strength.source}; {numbers.source(rule)}"
    found: tuple[Finding, ...] = (Finding("skin", "boat.hull_material", doubt),) if doubt else ()
    if strength.measure == "ultimate" and hull.material != "wood":
        found += laminate_bending.findings(glass_share=numbers["skin_glass_share"])
    return Told(strength, 1 / numbers[rule], whole, core, whole - core, source), found


def _bearing(under: Under, size: Size, shear_n: Array, through_mm: Array) -> Result:
    about = About(
        f"load.{under.role}.skin_bearing",
        f"{under.role} bolts bearing on the hull",
        "MPa",
        "V / d t",
        under.told.source,
    )
    stress = skin.bearing_stress(shear_n, size.diameter_mm, np.maximum(through_mm, 0.1))
    return at_most(about, stress, under.told.strength.bearing * under.told.share, under.cases, under.numbers)


def _punching(under: Under, size: Size, pull_n: Array) -> Result:
    spread = skin.spread_diameter(size.washer_mm, under.numbers["backing_thickness"])
    about = About(
        f"load.{under.role}.skin_punching", f"{under.role} bolts pulling through the skin", "MPa",
        "T / π d t, d = washer and twice the backing plate, t the faces alone", under.told.source,
    )  # fmt: skip
    stress = skin.punching_stress(pull_n, spread, np.maximum(under.told.faces_mm, 0.1))
    return at_most(about, stress, under.told.strength.shear * under.told.share, under.cases, under.numbers)


def _crush(under: Under, size: Size, pull_n: Array) -> Result:
    """Return the pressure on the core: a filled hole bears on its plug, an unfilled one also takes the tightening."""
    numbers = under.numbers
    rule = "core_plug_crush" if under.hull.filled else "core_crush"
    tight = skin.preload(size.area_mm2, numbers["bolt_proof"], numbers["bolt_preload_share"])
    area = skin.ring_area(skin.spread_diameter(size.washer_mm, numbers["backing_thickness"]), size.hole_mm)
    how = "on a plug or sleeve" if under.hull.filled else "on the bare core"
    about = About(
        f"load.{under.role}.core", f"pressure of the {under.role} bolts {how}", "MPa",
        "max(T, tightening) / area under washer and backing plate", f"{numbers.source(rule)}; {numbers.source('safety_skin')}",
    )  # fmt: skip
    limit = numbers[rule] / numbers["safety_skin"]
    return at_most(about, skin.crush_stress(np.maximum(pull_n, tight), area), limit, under.cases, numbers)


def _boss(mount: Mount, overlap_mm: Num) -> Array:
    """Return the radius of the backing plate: the bolts' rectangle and the overlap all round, as a circle of its area."""
    wide, high = np.ptp(np.asarray(mount.pattern_mm, dtype=float), axis=0)
    return plate.boss_radius(wide + 2 * np.asarray(overlap_mm, dtype=float), high + 2 * np.asarray(overlap_mm))


def _bending(under: Under, on: Carried, *, plates: bool) -> tuple[Result, Array | None]:
    """Return the skin's bending with the largest backing plate allowed, and the overlap that is enough."""
    numbers, told = under.numbers, under.told
    load, panel = on.flange, _panel(under)
    # The moment on the skin is the flange's and that of its in-plane force on the pad's thickness.
    pad = np.asarray(under.mount.pad_mm, dtype=float) / 1000
    moment = np.hypot(load.about_across_nm + pad * np.abs(load.up_n) * np.sign(load.about_across_nm),
                      load.about_up_nm + pad * np.abs(load.across_n) * np.sign(load.about_up_nm))  # fmt: skip

    def stress(overlap: Num) -> Array:
        width = plate.panel_moment(moment, load.normal_n, _boss(under.mount, overlap), panel)
        solid = plate.solid_stress(width, np.maximum(told.whole_mm, 0.1))
        cored = plate.sandwich_stress(width, np.maximum(told.whole_mm, 0.1), told.core_mm)
        return np.asarray(np.where(told.core_mm > 0, cored, solid))

    limit = told.strength.bending * told.share
    about = About(
        f"load.{under.role}.skin_bending", f"bending of the skin round the {under.role} bracket's backing plate", "MPa",
        "6 m / t² (sandwich: m / tf d), m round a stiff boss in a held round plate, with the largest backing plate",
        f"{plate.ROARK}; {told.source}; {numbers.source('skin_panel_radius')}; {numbers.source('backing_overlap_most')}",
    )  # fmt: skip
    result = at_most(about, stress(numbers["backing_overlap_most"]), limit, under.cases, numbers)
    return result, _enough(lambda overlap: stress(overlap).max(axis=0), limit, numbers) if plates else None


def _enough(stress: Callable[[Num], Array], limit: float, numbers: Numbers) -> Array:
    """Return the least overlap in mm whose stress stays within the limit, by halving; infinite where the most does not."""
    low, high = numbers["backing_overlap"], numbers["backing_overlap_most"]
    enough, held = stress(low) <= limit, stress(high) <= limit
    least, most = np.full(enough.shape, low), np.full(enough.shape, high)
    if not np.all(enough | ~held):  # else the halving would be for nothing: the one or the other is the answer
        for _ in range(HALVINGS):
            middle = (least + most) / 2
            good = stress(middle) <= limit
            least, most = np.where(good, least, middle), np.where(good, middle, most)
    most = np.where(enough, low, most)
    return np.asarray(np.where(held, most, np.inf))
