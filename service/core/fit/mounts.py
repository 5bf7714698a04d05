"""A bracket on the skin: seat, pad, reach, struts; each kind by its own rule (FIT, exact meanings)."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from service.core.catalogue import Rules
from service.core.fit.entry import Entry
from service.core.fit.kit import Mount
from service.core.fit.site import Site, half_breadth, skin

Array = NDArray[np.float64]
SPREADS = np.linspace(0.0, 1.0, 9)
NOTHING_TO_STAND_ON = -1000.0
"""Margin in mm of a step bracket on a boat without a step: no placement mends it."""


@dataclass(frozen=True)
class Seated:
    """What was solved for one bracket, per row."""

    flange_height: Array
    seat_x: Array
    rake: Array
    plan: Array
    pad: Array
    pad_rake: Array
    """Tangent of the bevel up and down, beyond what the flange takes."""
    pad_plan: Array
    reach: Array
    reach_margin: Array
    pad_margin: Array
    room: Array
    arm: Array
    """Arm as a box: x low, x high, y low, y high, z low, z high as (6, N)."""
    spread: Array
    feet: Array | None
    """Strut feet (2, 3, N): x, y, z of port and starboard foot; None where no bracket is strutted."""
    strut_length: Array
    strut_margin: Array
    gap_margin: Array
    stands: Array
    stands_margin: Array


def beyond(slope: Array, low: Array, high: Array) -> Array:
    """Return the tangent that a pad must take: the skin's slope less the nearest slope the flange takes."""
    return slope - np.clip(slope, low, high)


def seat(site: Site, mount: Mount, y: Array, x: Array, collar: Array, rules: Rules) -> Seated:
    """Seat one bracket with its collar's centre at height `collar` and the shaft axis at `x`."""
    flange = collar - mount.rise
    at = skin(site, y, flange)
    swing_low = np.where(y < 0, -mount.swing_high, mount.swing_low)
    swing_high = np.where(y < 0, -mount.swing_low, mount.swing_high)
    tilt = beyond(at.rake, mount.tilt_low, mount.tilt_high)
    turn = np.where(mount.cheek, 0.0, beyond(at.plan, swing_low, swing_high))
    room = _room(site, mount, y, flange, rules)
    pad, reach, reach_margin, pad_margin = _pad(mount, x - at.x, tilt, turn, rules)
    stands, stands_margin = collar - site.step_height, np.zeros_like(room)
    if mount.any("step"):
        on_step = _on_step(site, mount, y, x, rules)
        reach = np.where(mount.step, on_step[0], reach)
        reach_margin = np.where(mount.step, on_step[1], reach_margin)
        room = np.where(mount.step, on_step[2], room)
        pad, pad_margin = np.where(mount.step, 0.0, pad), np.where(mount.step, rules["pad_max"], pad_margin)
        stands_margin = np.minimum(stands - mount.stands_low, mount.stands_high - stands)
    spread, feet, length, strut_margin = _struts(site, mount, y, x, collar, flange, rules)
    low_x = np.minimum(x - reach, x)
    half = mount.width / 2
    arm = np.stack(
        np.broadcast_arrays(low_x, x, y - half, y + half, collar - mount.collar / 2, collar + mount.collar / 2)
    )
    post_gap = np.minimum(site.post - mount.gap_low, mount.gap_high - site.post)
    return Seated(
        flange, at.x, at.rake, at.plan, pad, tilt, turn, reach, reach_margin, pad_margin, room, arm, spread, feet,
        length, strut_margin, post_gap, stands, stands_margin,
    )  # fmt: skip


def _pad(mount: Mount, gap: Array, tilt: Array, turn: Array, rules: Rules) -> tuple[Array, Array, Array, Array]:
    """Return pad at the centre, reach and both margins.

    The thinnest corner is kept at zero or more by construction; from there the pad grows only while that raises the
    smaller of the scaled reach and pad margins: both are linear in it, so the best is where two of them cross.
    """
    bevel = mount.height / 2 * np.abs(tilt) + mount.width / 2 * np.abs(turn)
    thickest = rules["pad_max"]
    s_reach, s_pad = rules.scale_of("reach"), rules.scale_of("pad")
    middle = gap - (mount.reach_low + mount.reach_high) / 2
    room = thickest - bevel
    shared = (room / s_pad - (mount.reach_high - gap) / s_reach) / (1 / s_reach + 1 / s_pad)
    pad = np.maximum(bevel, np.minimum(middle, shared))
    pad = np.where(mount.cheek, 0.0, pad)
    reach = gap - pad
    reach_margin = np.minimum(reach - mount.reach_low, mount.reach_high - reach)
    pad_margin = np.where(mount.cheek, -bevel, thickest - bevel - pad)
    return pad, reach, reach_margin, pad_margin


def _room(site: Site, mount: Mount, y: Array, flange: Array, rules: Rules) -> Array:
    """Return how far the footprint with its edge distance stays inside sound skin (mm), negative beyond it."""
    edge, half = rules["edge_distance"], mount.height / 2
    high, low = flange + half + edge, flange - half - edge
    upright = np.minimum(site.top - high, low - site.bottom)
    if site.stepped:
        riser = np.minimum(site.top - high, low - site.step_height)
        under = np.minimum(site.step_height - high, low - site.bottom)
        upright = np.maximum(riser, under)
    if site.stern == "double_ended" and (site.curve is None or not site.curve.half.size):
        breadth = site.post / 2 + np.zeros_like(flange)
    else:
        breadth = np.minimum(half_breadth(site, high), half_breadth(site, low))
        if site.curve is not None and site.curve.half.size:
            breadth = np.minimum(breadth, site.curve.half[-1])
    across = breadth - np.abs(y) - mount.width / 2 - edge
    return np.minimum(upright, np.where(mount.cheek, upright - 1e3 * np.abs(y), across))


def _on_step(site: Site, mount: Mount, y: Array, x: Array, rules: Rules) -> tuple[Array, Array, Array]:
    """Return reach, its margin and the room of a base that stands on the step."""
    edge = rules["edge_distance"]
    riser = skin(site, y, site.step_height + np.zeros_like(y)).x
    first, last = riser + edge + mount.height / 2, riser + site.step_depth - edge - mount.height / 2
    low, high = np.maximum(mount.reach_low, x - last), np.minimum(mount.reach_high, x - first)
    reach = (low + high) / 2
    margin = np.minimum(reach - mount.reach_low, mount.reach_high - reach)
    on = np.minimum(x - reach - first, last - (x - reach))
    across = site.half_step - np.abs(y) - mount.width / 2 - edge
    room = np.minimum(on, across)
    return reach, margin, room if site.stepped else np.full_like(room, NOTHING_TO_STAND_ON)


def _struts(
    site: Site, mount: Mount, y: Array, x: Array, collar: Array, flange: Array, rules: Rules
) -> tuple[Array, Array | None, Array, Array]:
    """Return spread, feet, length and scaled-free margin, for the spread within its range that leaves most margin."""
    if not mount.any("strutted"):
        zero = np.zeros_like(collar)
        return zero, None, zero, zero
    z = np.broadcast_to(flange + mount.foot_rise, collar.shape)
    edge = rules["edge_distance"]
    upright = np.minimum(site.top - z - edge, z - edge - site.bottom)
    half = half_breadth(site, z)
    spread = mount.spread_low + SPREADS[:, None] * (mount.spread_high - mount.spread_low)
    feet_x, margin = [], np.full(np.broadcast_shapes(spread.shape, collar.shape), np.inf)
    length = np.zeros_like(margin)
    for sign in (-1.0, 1.0):
        foot_y = y + sign * spread / 2
        foot_x = skin(site, foot_y, np.broadcast_to(z, foot_y.shape)).x
        one = np.sqrt((x - foot_x) ** 2 + (spread / 2) ** 2 + (collar - z) ** 2)
        margin = np.minimum(margin, np.minimum(one - mount.strut_low, mount.strut_high - one))
        margin = np.minimum(margin, np.minimum(upright, half - np.abs(foot_y) - edge))
        length = np.maximum(length, one)
        feet_x.append(foot_x)
    best = margin.argmax(axis=0)
    rows = np.arange(margin.shape[-1])
    chosen = np.broadcast_to(spread, margin.shape)[best, rows]
    feet = np.stack(
        [
            np.stack([np.broadcast_to(fx, margin.shape)[best, rows], y + sign * chosen / 2, z])
            for fx, sign in zip(feet_x, (-1.0, 1.0), strict=True)
        ]
    )
    return chosen, feet, length[best, rows], np.where(mount.strutted, margin[best, rows], 0.0)


def entries(role: str, seated: Seated, mount: Mount, rules: Rules) -> list[Entry]:
    """Return the checks of one bracket."""
    zero = np.zeros(())
    limit = np.where(
        seated.reach - mount.reach_low < mount.reach_high - seated.reach, mount.reach_low, mount.reach_high
    )
    thickest = rules["pad_max"] - seated.pad_margin
    found = [
        Entry(
            f"{role}.reach", seated.reach, limit, seated.reach_margin, rules.scale_of("reach"), rule="bracket.reach_mm"
        ),
        Entry(
            f"{role}.pad",
            thickest,
            np.asarray(rules["pad_max"]),
            seated.pad_margin,
            rules.scale_of("pad"),
            rule="pad_max",
        ),
        Entry(f"{role}.seat", seated.room, zero, seated.room, rules.scale_of("seat"), rule="edge_distance"),
    ]
    if mount.any("strutted"):
        away = np.where(mount.strutted, seated.strut_margin, np.inf)
        found.append(
            Entry(f"{role}.strut", seated.strut_length, zero, away, rules.scale_of("strut"), rule="bracket.struts")
        )
    if mount.any("cheek"):
        away = np.where(mount.cheek, seated.gap_margin, np.inf)
        found.append(
            Entry(f"{role}.gap", away, zero, away, rules.scale_of("gap"), rule="bracket.gap_mm", constant=True)
        )
    if mount.any("step"):
        away = np.where(mount.step, seated.stands_margin, np.inf)
        found.append(
            Entry(f"{role}.stands", seated.stands, zero, away, rules.scale_of("stands"), rule="bracket.stands_mm")
        )
    return found
