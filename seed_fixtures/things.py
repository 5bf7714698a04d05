"""What owners and yards put on sterns, and where. Odds and places are the demo's own; no source."""

from __future__ import annotations

import numpy as np

from seed_fixtures.boats import Pair, Stern, Thing
from seed_fixtures.dice import Rng, happens

MODERN = 1990


def things_on(stern: Stern, built: int, rng: Rng, *, middle_free: bool) -> tuple[Thing, ...]:
    """Return what stands on one boat's stern; no ladder in the middle where a rudder hangs there."""
    found: list[Thing] = []
    if happens(rng, 0.78):  # most have a pushpit
        found.append(_rail(stern, rng))
    if happens(rng, 0.66) and stern.kind != "open":  # two in three lead a stay aft
        found += _stays(stern, rng)
    if happens(rng, 0.55):  # every other boat has a ladder aft
        found.append(_ladder(stern, rng, middle_free=middle_free))
    if happens(rng, 0.3):  # diesels whose exhaust leads aft
        found.append(_exhaust(stern, rng))
    for kind, odds in (("davits", 0.06), ("outboard", 0.09), ("staff", 0.16), ("arch", 0.06), ("platform", 0.04)):
        if happens(rng, odds) and (kind != "arch" or built > MODERN):
            found += _other(kind, stern, rng)
    return tuple(found)


def _rail(stern: Stern, rng: Rng) -> Thing:
    forward = float(rng.uniform(80, 190))
    tall = float(rng.normal(600, 25))
    half = stern.width_top / 2 - 60
    return Thing("rail", "across", (-forward - 60, -forward), (-half, half), (stern.top, stern.top + tall))


def _stays(stern: Stern, rng: Rng) -> list[Thing]:
    up = (stern.top, stern.top + 9000)
    forward = float(rng.uniform(90, 220))
    if happens(rng, 0.7):  # a single stay is commoner than a pair
        return [Thing("stay", "centre", (-forward - 150, -forward), (-12, 12), up)]
    apart = stern.width_top / 2 - 150
    return [
        Thing("stay", side, (-forward - 150, -forward), (sign * apart - 12, sign * apart + 12), up)
        for side, sign in (("port", -1), ("starboard", 1))
    ]


def _along(stern: Stern, low: float, high: float, out: float) -> Pair:
    """Return the least and greatest x of a thing `out` mm proud of the skin between two heights."""
    x = stern.skin(0.0, np.array([low, high]))
    return float(x.min()), float(x.max()) + out


def _ladder(stern: Stern, rng: Rng, *, middle_free: bool) -> Thing:
    odds = [0.42, 0.33, 0.25] if middle_free else [0.0, 0.6, 0.4]
    side = str(rng.choice(["centre", "port", "starboard"], p=odds))
    place = {"centre": 0.0, "port": -1.0, "starboard": 1.0}[side] * min(430.0, stern.width_top / 2 - 260)
    folds = happens(rng, 0.62)  # most ladders fold
    high = stern.step_height if stern.step_height is not None else stern.top
    low = high - (320.0 if folds else high + 350.0)
    return Thing(
        "ladder",
        side,
        _along(stern, max(low, stern.bottom), high - 1, 90),
        (place - 170, place + 170),
        (low, high + 60),
        moves="folds" if folds else "fixed",
        removable=happens(rng, 0.35),
        keep=happens(rng, 0.6),
    )


def _exhaust(stern: Stern, rng: Rng) -> Thing:
    low = max(90.0, stern.bottom + 40)
    side, sign = ("port", -1) if happens(rng, 0.6) else ("starboard", 1)  # more to port
    at = sign * float(rng.uniform(260, 480))
    return Thing("exhaust", side, _along(stern, low, low + 80, 30), (at - 45, at + 45), (low, low + 80))


def _other(kind: str, stern: Stern, rng: Rng) -> list[Thing]:
    half, top = stern.width_top / 2, stern.top
    if kind == "davits":
        apart = min(half - 100, 650.0)
        return [
            Thing(kind, side, (-250, 850), (sign * apart - 50, sign * apart + 50), (top + 100, top + 650), keep=True)
            for side, sign in (("port", -1), ("starboard", 1))
        ]
    if kind == "outboard":
        side, sign = ("starboard", 1) if happens(rng, 0.6) else ("port", -1)  # more to starboard
        at = sign * (half - 220)
        return [Thing(kind, side, (-150, 170), (at - 150, at + 150), (top - 100, top + 700), removable=True)]
    if kind == "staff":
        return [Thing(kind, "starboard", (-70, 30), (half - 330, half - 280), (top, top + 1200), removable=True)]
    if kind == "arch":
        return [Thing(kind, "across", (-600, -200), (-half, half), (top, top + 2000), keep=True)]
    out = _along(stern, 180, 280, 420)
    return [Thing(kind, "centre", out, (-420, 420), (180, 280), removable=happens(rng, 0.5))]
