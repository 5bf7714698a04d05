"""Configurations as arrays: one entry a configuration, so that one call places many."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, fields

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Bracket, Catalogue, Configuration

Array = NDArray[np.float64]
Index = NDArray[np.intp]


@dataclass(frozen=True)
class Mount:
    """One bracket role over all configurations; angles as tangents, everything (C,)."""

    reach_low: Array
    reach_high: Array
    tilt_low: Array
    tilt_high: Array
    swing_low: Array
    swing_high: Array
    width: Array
    height: Array
    collar: Array
    rise: Array
    lowest_hole: Array
    strutted: Array
    spread_low: Array
    spread_high: Array
    strut_low: Array
    strut_high: Array
    strut_radius: Array
    foot_rise: Array
    cheek: Array
    gap_low: Array
    gap_high: Array
    step: Array
    stands_low: Array
    stands_high: Array

    def take(self, rows: Index) -> Mount:
        """Return the mounts at `rows`."""
        return Mount(**{field.name: getattr(self, field.name)[rows] for field in fields(self)})

    def any(self, name: str) -> bool:
        """Say whether any of them is of a kind (`strutted`, `cheek`, `step`)."""
        return bool(getattr(self, name).any())


@dataclass(frozen=True)
class Kit:
    """Gear, shaft and both mounts over all configurations, everything (C,)."""

    lower: Mount
    upper: Mount
    length: Array
    tube: Array
    head_room: Array
    vane_radius: Array
    vane_bottom: Array
    vane_top: Array
    head_radius: Array
    head_height: Array
    tiller_radius: Array
    tiller_height: Array
    balance: Array
    tail: Array
    span: Array
    root_gap: Array
    blade_angle: Array
    max_displacement: Array

    def take(self, rows: Index) -> Kit:
        """Return the configurations at `rows`, repeats allowed."""
        rest = {f.name: getattr(self, f.name)[rows] for f in fields(self) if f.name not in ("lower", "upper")}
        return Kit(self.lower.take(rows), self.upper.take(rows), **rest)


def build(catalogue: Catalogue, configurations: Sequence[Configuration]) -> Kit:
    """Return the arrays of the given configurations; KeyError names a code the catalogue does not hold."""
    gears = [catalogue.gear(c.gear) for c in configurations]
    shafts = [catalogue.shaft(c.shaft) for c in configurations]

    def of(read: Callable[..., float], things: Sequence[object]) -> Array:
        return np.array([read(thing) for thing in things], dtype=float)

    return Kit(
        lower=_mount([catalogue.bracket(c.lower) for c in configurations]),
        upper=_mount([catalogue.bracket(c.upper) for c in configurations]),
        length=of(lambda s: s.length_mm, shafts),
        tube=of(lambda g: g.tube.outside_mm / 2, gears),
        head_room=of(lambda g: g.head_mm, gears),
        vane_radius=of(lambda g: g.vane.radius_mm, gears),
        vane_bottom=of(lambda g: g.vane.bottom_mm, gears),
        vane_top=of(lambda g: g.vane.top_mm, gears),
        head_radius=of(lambda g: g.head.radius_mm, gears),
        head_height=of(lambda g: g.head.height_mm, gears),
        tiller_radius=of(lambda g: g.tiller.radius_mm, gears),
        tiller_height=of(lambda g: g.tiller.height_mm, gears),
        balance=of(lambda g: g.blade.balance_mm, gears),
        tail=of(lambda g: g.blade.chord_mm - g.blade.balance_mm, gears),
        span=of(lambda g: g.blade.span_mm, gears),
        root_gap=of(lambda g: g.blade.root_gap_mm, gears),
        blade_angle=of(lambda g: np.radians(g.blade.max_angle_deg), gears),
        max_displacement=of(lambda g: g.max_displacement_kg, gears),
    )


def _mount(brackets: Sequence[Bracket]) -> Mount:
    def of(read: Callable[[Bracket], float]) -> Array:
        return np.array([read(bracket) for bracket in brackets], dtype=float)

    def tangent(read: Callable[[Bracket], float]) -> Array:
        return np.tan(np.radians(np.clip(of(read), -89.0, 89.0)))

    return Mount(
        reach_low=of(lambda b: b.reach_mm[0]),
        reach_high=of(lambda b: b.reach_mm[1]),
        tilt_low=tangent(lambda b: b.tilt_deg[0]),
        tilt_high=tangent(lambda b: b.tilt_deg[1]),
        swing_low=tangent(lambda b: b.swing_deg[0]),
        swing_high=tangent(lambda b: b.swing_deg[1]),
        width=of(lambda b: b.flange.width_mm),
        height=of(lambda b: b.flange.height_mm),
        collar=of(lambda b: b.collar.height_mm),
        rise=of(lambda b: b.collar.rise_mm),
        lowest_hole=of(lambda b: min(z for _, z in b.bolts.pattern_mm)),
        strutted=np.array([b.struts is not None for b in brackets]),
        spread_low=of(lambda b: b.struts.spread_mm[0] if b.struts and b.struts.count > 1 else 0.0),
        spread_high=of(lambda b: b.struts.spread_mm[1] if b.struts and b.struts.count > 1 else 0.0),
        strut_low=of(lambda b: b.struts.length_mm[0] if b.struts else 0.0),
        strut_high=of(lambda b: b.struts.length_mm[1] if b.struts else 0.0),
        strut_radius=of(lambda b: b.struts.tube.outside_mm / 2 if b.struts else 0.0),
        foot_rise=of(lambda b: b.struts.foot_rise_mm if b.struts else 0.0),
        cheek=np.array([b.kind == "cheek" for b in brackets]),
        gap_low=of(lambda b: b.gap_mm[0] if b.gap_mm else 0.0),
        gap_high=of(lambda b: b.gap_mm[1] if b.gap_mm else 0.0),
        step=np.array([b.kind == "step" for b in brackets]),
        stands_low=of(lambda b: b.stands_mm[0] if b.stands_mm else 0.0),
        stands_high=of(lambda b: b.stands_mm[1] if b.stands_mm else 0.0),
    )
