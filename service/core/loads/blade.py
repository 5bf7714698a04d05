"""Forces on an all-movable blade of low aspect ratio that pierces the surface.

Below the stall: lift with a cross-flow term (L. F. Whicker and L. F. Fehlner, DTMB report 933, 1958; repeated in
Principles of Naval Architecture, 1989, vol. III, ch. IX; from memory, the 0.9 and the cross-flow coefficient read in
T. Prestero, MIT thesis 2001, table 2.2). Beyond it the force turns towards that of a plate set across the flow.

The aspect ratio is that of the immersed span alone. The water's surface is no mirror for a blade that pierces it: at
speed it gives way, so the aspect ratio is not doubled.
"""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from service.core.loads.validity import Array, Num, Valid, formula

PARASITE = 0.0065
"""Profile drag coefficient of a NACA 0015 section (Whicker and Fehlner, from memory)."""
OSWALD = 0.9
WHICKER_FEHLNER = "Whicker and Fehlner, DTMB report 933 (1958), from memory"
ASPECT = Valid(0.5, 6.0)
ANGLE = Valid(-np.pi / 2, np.pi / 2, "rad")
BROADSIDE_CENTRE = 0.5
"""Where the pressure of a plate across the flow acts, as a share of the chord: the middle, by symmetry."""


class Coefficients(NamedTuple):
    """Force over ½ rho A V²: across the flow, along it, square to the blade; centre of pressure over the chord."""

    lift: Array
    drag: Array
    normal: Array
    centre: Array


class Planform(NamedTuple):
    """What the coefficients need of the blade beside its aspect ratio.

    `taper`: tip chord over root chord. `faired`: tip rounded, 1, or square, 0. `lift_cap`: greatest lift coefficient.
    `broadside`: normal-force coefficient across the flow.
    """

    taper: float = 1.0
    faired: bool = False
    lift_cap: float = 1.33
    broadside: float = 1.3


SQUARE = Planform()
"""A rectangular blade with a square tip."""


@formula(WHICKER_FEHLNER, aspect=ASPECT, sweep_rad=Valid(-0.2, 0.6, "rad"))
def lift_slope(aspect: Num, sweep_rad: Num = 0.0) -> Array:
    """Return dCL/da at zero angle, per radian: 1.8π A / (cos s · sqrt(A² / cos⁴ s + 4) + 1.8).

    Arguments broadcast. A: immersed span over chord, 0.5 to 6; s: sweep of the quarter chord.
    Source: Whicker and Fehlner 1958, from memory. Not the lifting-line slope 2πA/(A+2) that also goes by their names.

    >>> round(float(lift_slope(2.0)), 4)
    2.4435
    """
    a, cos = np.asarray(aspect, dtype=float), np.cos(sweep_rad)
    return np.asarray(1.8 * np.pi * a / (cos * np.sqrt(a**2 / cos**4 + 4) + 1.8))


@formula(WHICKER_FEHLNER, taper=Valid(0.3, 1.0))
def cross_flow(taper: Num, *, faired: bool) -> Array:
    """Return the cross-flow drag coefficient: 0.1 + 0.7 λ with a faired tip, 0.1 + 1.6 λ with a square one.

    >>> round(float(cross_flow(0.654, faired=True)), 4), round(float(cross_flow(1.0, faired=False)), 2)
    (0.5578, 1.7)
    """
    return np.asarray(0.1 + (0.7 if faired else 1.6) * np.asarray(taper, dtype=float))


@formula(WHICKER_FEHLNER, aspect=ASPECT)
def stall_angle(aspect: Num, planform: Planform = SQUARE) -> Array:
    """Return the angle in radians at which the lift reaches its cap: the root of s a + (C/A) a² = cap.

    >>> round(float(np.degrees(stall_angle(2.0, Planform(0.45, faired=False, lift_cap=1.33)))), 1)
    28.8
    """
    slope, cross = lift_slope(aspect), cross_flow(planform.taper, faired=planform.faired) / np.asarray(aspect)
    return np.asarray((np.sqrt(slope**2 + 4 * cross * planform.lift_cap) - slope) / (2 * cross))


@formula(WHICKER_FEHLNER, aspect=ASPECT, angle_rad=ANGLE)
def coefficients(aspect: Num, angle_rad: Num, planform: Planform = SQUARE) -> Coefficients:
    """Return lift, drag, normal force and centre of pressure of a blade at an angle to the flow.

    Up to the stall: CL = s a + (C/A) a², CD = 0.0065 + CL² / (0.9 π A), CN = CL cos a + CD sin a, and the centre from
    the moment about the quarter chord, Cm = (1/4 - m) s a - C a² / 2A with m = 1/2 - (1.11 sqrt(A² + 4) + 2) / 4(A + 2).
    Beyond: normal force, force along the chord and centre run straight to broadside, none and mid-chord at 90°
    (an interpolation of this program's own; lift never exceeds its cap).

    Arguments broadcast; all four have the broadcast shape. a in radians within ±π/2; odd in a but for drag and centre.

    >>> [round(float(v), 4) for v in coefficients(2.0, np.radians(10.0), Planform(faired=True))]
    [0.4387, 0.0405, 0.439, 0.1947]
    """
    a, angle = np.broadcast_arrays(np.asarray(aspect, dtype=float), np.asarray(angle_rad, dtype=float))
    stall = stall_angle(a, planform)
    size, sign = np.abs(angle), np.where(angle < 0, -1.0, 1.0)
    attached = np.minimum(size, stall)
    slope, cross = lift_slope(a), cross_flow(planform.taper, faired=planform.faired) / a
    lift = slope * attached + cross * attached**2
    drag = PARASITE + lift**2 / (np.pi * OSWALD * a)
    normal = lift * np.cos(attached) + drag * np.sin(attached)
    chordwise = drag * np.cos(attached) - lift * np.sin(attached)
    centre = _centre(a, attached, slope, cross, normal)
    past = np.clip((size - stall) / (np.pi / 2 - stall), 0.0, 1.0)
    normal += past * (planform.broadside - normal)
    chordwise *= 1 - past
    centre += past * (BROADSIDE_CENTRE - centre)
    across = normal * np.cos(size) - chordwise * np.sin(size)
    along = normal * np.sin(size) + chordwise * np.cos(size)
    return Coefficients(sign * across, along, sign * normal, centre)


def _centre(aspect: Array, angle: Array, slope: Array, cross: Array, normal: Array) -> Array:
    """Return the centre of pressure over the chord from the leading edge, at zero angle its limit."""
    share = 0.5 - (1.11 * np.sqrt(aspect**2 + 4) + 2) / (4 * (aspect + 2))
    small = np.maximum(angle, 1e-6)
    moment = (0.25 - share) * slope * small - 0.5 * cross * small**2
    force = np.where(angle > small / 2, normal, slope * small)
    return np.asarray(0.25 - moment / force)


@formula("definition", chord_mm=Valid(50, 800, "mm"), wet_span_mm=Valid(0, 3000, "mm"))
def wet_area(chord_mm: Num, wet_span_mm: Num) -> Array:
    """Return the area of the immersed part of a rectangular blade in m²; arguments broadcast."""
    return np.asarray(np.asarray(chord_mm, dtype=float) * wet_span_mm / 1e6)


@formula("definition", wet_span_mm=Valid(1, 3000, "mm"))
def aspect_ratio(chord_mm: Num, wet_span_mm: Num) -> Array:
    """Return immersed span over chord, at least 0.05 so that a blade out of the water divides by nothing.

    >>> float(aspect_ratio(220.0, 660.0))
    3.0
    """
    return np.asarray(np.maximum(np.asarray(wet_span_mm, dtype=float) / chord_mm, 0.05))


@formula("definition of the centre of pressure", centre=Valid(0, 1))
def balance_torque(normal_n: Num, centre: Num, chord_mm: Num, balance_mm: Num) -> Array:
    """Return the moment about the shaft axis in N·m: N (centre · chord - balance), positive where the blade trails.

    `balance_mm` is the chord forward of the axis; `centre` counts from the leading edge of the flow. Broadcasts.

    >>> round(float(balance_torque(1000.0, 0.25, 220.0, 48.0)), 6)
    7.0
    """
    return np.asarray(np.asarray(normal_n) * (np.asarray(centre) * chord_mm - balance_mm) / 1000)
