"""Checks of a bracket's metal: collar loads against the maker's allowables, bolts, struts and their feet."""

from __future__ import annotations

import numpy as np

from service.core.loads import bolts, struts, tube
from service.core.loads.mount import UP, Carried
from service.core.loads.on_shaft import metal_of
from service.core.loads.rows import About, at_most
from service.core.loads.shapes import Mount, Result, Role, StrutSet
from service.core.loads.standard import Numbers
from service.core.loads.threads import size_of
from service.core.loads.validity import Array, Finding, length_of

ALLOWABLE = "the catalogue's own allowable of the bracket"


def bracket_results(
    role: Role, mount: Mount, collar_n: Array, on: Carried, cases: tuple[str, ...], numbers: Numbers
) -> tuple[tuple[Result, ...], tuple[Finding, ...]]:
    """Return allowables, bolts and struts of one bracket; cases on the first axis."""
    results = [*_allowables(role, mount, collar_n, on, cases, numbers)]
    bolt, found = _bolts(role, mount, on, cases, numbers)
    results.append(bolt)
    if mount.struts is not None and on.struts_n is not None:
        more, seen = _struts(role, mount, mount.struts, on.struts_n, cases, numbers)
        results += more
        found += seen
    return tuple(results), found


def _allowables(
    role: Role, mount: Mount, collar_n: Array, on: Carried, cases: tuple[str, ...], numbers: Numbers
) -> tuple[Result, ...]:
    """Return fore and aft, athwartships and moment; under struts only what the arm hands on turns the flange."""
    moment = length_of(on.moment_nm)
    rows: tuple[tuple[str, str, str, str, Array, float], ...] = (
        ("along", "force fore and aft", "N", "collar load, fore and aft", np.abs(collar_n[..., 0]), mount.along_n),
        ("side", "force athwartships", "N", "collar load, athwartships", np.abs(collar_n[..., 1]), mount.side_n),
        (
            "moment",
            "moment about the flange's centre",
            "N·m",
            "|r x F|, r from the flange to the collar",
            moment,
            mount.moment_nm,
        ),
    )
    return tuple(
        at_most(About(f"load.{role}.{name}", f"{what} on the {role} bracket", unit, how, ALLOWABLE), values, most, cases, numbers)
        for name, what, unit, how, values, most in rows
    )  # fmt: skip


def _resistances(size: str, planes: int, numbers: Numbers) -> tuple[Array, Array]:
    """Return what one bolt resists in shear and in pull, N; the rules' bolt safety stands where EN has 1.25."""
    area, gamma = size_of(size).area_mm2, numbers["safety_bolt"]
    shear = bolts.shear_resistance(area, numbers["bolt_ultimate"], gamma, numbers["bolt_shear_factor"])
    return np.asarray(planes * shear), bolts.tension_resistance(area, numbers["bolt_ultimate"], gamma)


def _bolts(
    role: Role, mount: Mount, on: Carried, cases: tuple[str, ...], numbers: Numbers
) -> tuple[Result, tuple[Finding, ...]]:
    unity = bolts.combined(on.shear_n, on.pull_n, *_resistances(mount.bolt, mount.planes, numbers)).max(axis=0)
    source = f"{bolts.EUROCODE}; {bolts.ELASTIC}; {numbers.source('bolt_ultimate')}; {numbers.source('safety_bolt')}"
    about = About(
        f"load.{role}.bolts", f"worst bolt of the {role} bracket, shear and pull together", "1",
        "Fv/FvRd + Ft/1.4FtRd, pull from the greater of neutral axis at the centroid and pivot at the pressed edge", source,
    )  # fmt: skip
    found: tuple[Finding, ...] = ()
    diameter = size_of(mount.bolt).diameter_mm
    if np.any(np.asarray(mount.pad_mm) > 3 * diameter):
        text = f"{role} pad is thicker than three bolt diameters: bending of the bolts within it is left out"
        found = (Finding("bolts", f"{role}.pad_mm", text),)
    return at_most(about, np.asarray(unity), 1.0, cases, numbers), found


def _struts(
    role: Role, mount: Mount, group: StrutSet, pulls_n: Array, cases: tuple[str, ...], numbers: Numbers
) -> tuple[list[Result], tuple[Finding, ...]]:
    """Return struts against buckling and their feet's bolts."""
    metal, found = metal_of(group.tube)
    section = tube.section(group.tube.outside_mm, group.tube.wall_mm)
    length = length_of(group.feet_mm)
    capacity = struts.strut_capacity(section.area, section.inertia, length, metal.young, metal.proof)
    unity = struts.strut_unity(
        pulls_n, section.area * metal.proof, capacity, numbers["safety_metal_yield"], numbers["safety_buckling"]
    ).max(axis=-1)
    safety = f"{numbers.source('safety_buckling')}; {numbers.source('safety_metal_yield')}"
    about = About(
        f"load.{role}.struts", f"struts of the {role} bracket, buckling and pull", "1",
        "N safety / chi A fy; arm and struts share fore and aft in the worse of two ways", f"{struts.PERRY}; {metal.source}; {safety}",
    )  # fmt: skip
    rows = [at_most(about, np.asarray(unity), 1.0, cases, numbers), _feet(role, mount, group, pulls_n, cases, numbers)]
    slender = np.sqrt(section.area * metal.proof / struts.euler_load(metal.young, section.inertia, length))
    ways = group.feet_mm / length[..., None]
    up = np.broadcast_to(UP, ways[..., 0, :].shape)
    volume = struts.bar_volume(np.stack([ways[..., 0, :], ways[..., 1, :], up], axis=-1))
    flat = struts.bar_forces.findings(volume=volume)
    return rows, (*found, *flat, *struts.buckling_share.findings(slenderness=slender))


def _feet(
    role: Role, mount: Mount, group: StrutSet, pulls_n: Array, cases: tuple[str, ...], numbers: Numbers
) -> Result:
    """Return a strut foot's bolts: pull along the skin's normal, shear across it, in equal shares (the strut is pinned)."""
    feet = np.asarray(group.feet_mm, dtype=float)
    towards = -feet / length_of(feet)[..., None]  # from the foot to the collar: a pull goes that way
    normal = np.einsum("...ki,...i->...k", towards, np.asarray(mount.axes)[..., 0, :])
    shear = np.abs(pulls_n) * np.sqrt(np.maximum(1 - normal**2, 0.0)) / group.bolts
    pull = np.maximum(pulls_n * normal, 0.0) / group.bolts
    unity = bolts.combined(shear, pull, *_resistances(group.bolt, 1, numbers)).max(axis=-1)
    about = About(
        f"load.{role}.feet", f"bolts of the {role} bracket's strut feet", "1", "Fv/FvRd + Ft/1.4FtRd, equal shares",
        f"{bolts.EUROCODE}; {numbers.source('bolt_ultimate')}; {numbers.source('safety_bolt')}",
    )  # fmt: skip
    return at_most(about, np.asarray(unity), 1.0, cases, numbers)
