"""Random boats, every field given, and random things on their sterns. All invented; bounds judged, no source."""

from __future__ import annotations

import math
from typing import Any, get_args

import numpy as np

from service.core.boat import BoatForm, Stern
from service.core.form import parse_form

Rng = np.random.Generator
Json = dict[str, Any]
STERNS: tuple[Stern, ...] = get_args(Stern)
RAKES = {
    "plumb": (-4, 6), "raked": (8, 38), "reverse": (-36, -8), "scoop": (-28, 4), "open": (-20, 6),
    "double_ended": (0, 36),
}  # fmt: skip
KINDS = ("ladder", "platform", "davits", "outboard", "exhaust", "rail", "stay", "arch", "other")


def random_boat(rng: Rng, *, things: int = 4, swept: float = 0.3) -> BoatForm:
    """Return a boat with every value that the fit uses, and up to `things` obstacles, of which a share `swept` moves."""
    stern = STERNS[int(rng.integers(len(STERNS)))]
    open_stern = stern == "open"
    top = _of(rng, 380, 620) if open_stern else _of(rng, 780, 1500)
    bottom = _of(rng, -300, 0.25 * top)
    transom: Json = {
        "top_height_mm": top, "bottom_height_mm": bottom, "rake_deg": _of(rng, *RAKES[stern], digits=1),
        "width_top_mm": _of(rng, 1100, 3200), "camber_mm": _camber(rng, stern), "thickness_mm": _of(rng, 8, 30),
    }  # fmt: skip
    transom["width_waterline_mm"] = round(transom["width_top_mm"] * float(rng.uniform(0.45, 1.0)))
    if stern == "scoop":
        step = _of(rng, max(bottom + 150, 180), top - 350)
        transom |= {
            "step_height_mm": step, "step_depth_mm": _of(rng, 250, 900), "step_width_mm": _of(rng, 600, 1700),
            "lower_rake_deg": _of(rng, -25, 8, digits=1),
        }  # fmt: skip
    elif rng.random() < 0.35:  # a scoop's curve would have to name its step; level cuts and profiles are for the others
        transom |= _measured(rng, transom)
    if stern == "double_ended":
        transom["post_width_mm"] = _of(rng, 40, 160)
    return parse_form({
        "boat": {
            "stern": stern, "displacement_kg": _of(rng, 2500, 14_000), "loa_mm": _of(rng, 7500, 14_500),
            "lwl_mm": _of(rng, 6500, 12_500),
        },
        "transom": transom,
        "main_rudder": _rudder(rng, transom),
        "obstacles": [_thing(rng, top, swept) for _ in range(int(rng.integers(0, things + 1)))],
    })  # fmt: skip


def _of(rng: Rng, low: float, high: float, digits: int = 0) -> float:
    return round(float(rng.uniform(low, high)), digits)


def _camber(rng: Rng, stern: str) -> float:
    if stern == "double_ended":
        return _of(rng, 250, 1100)
    return _of(rng, -60, 0) if rng.random() < 0.1 else _of(rng, 0, 160)


def _measured(rng: Rng, transom: Json) -> Json:
    """Return a profile or level cuts of the same stern, bent a little and not quite regular."""
    top, bottom = transom["top_height_mm"], transom["bottom_height_mm"]
    slope, bend = math.tan(math.radians(transom["rake_deg"])), _of(rng, -60, 60)

    def centre(z: float) -> float:
        share = (top - z) / (top - bottom)
        return float((z - top) * slope + bend * share * (1.0 - share) * 4.0)

    if rng.random() < 0.5:
        heights = np.linspace(top, bottom, int(rng.integers(3, 8)))[int(rng.random() < 0.3) :]
        if rng.random() < 0.5:
            points = [{"height_mm": float(z), "aft_mm": round(centre(z), 1)} for z in heights]
        else:
            points = [{"below_top_mm": float(top - z), "aft_mm": round(centre(z), 1)} for z in heights]
        return {"profile": points}
    half, camber = transom["width_top_mm"] / 2.0, transom["camber_mm"]
    cuts = []
    for z in np.linspace(top, bottom, int(rng.integers(2, 5))):
        broad = half * float(rng.uniform(0.7, 1.0))
        at = np.linspace(0.0, broad, int(rng.integers(3, 7)))
        row = [
            {
                "half_breadth_mm": round(float(y), 1),
                "aft_mm": round(float(centre(z) - camber * (y / half) ** 2 - drop), 1),
            }
            for y, drop in zip(at, np.cumsum(rng.uniform(0.0, 6.0, at.size)) * (at > 0), strict=True)
        ]
        cuts.append({"height_mm": float(z), "points": row})
    return {"sections": cuts}


def _rudder(rng: Rng, transom: Json) -> Json:
    outside = rng.random() < 0.35
    chord, share = _of(rng, 350, 650), float(rng.uniform(0.0, 0.25))
    at_water = -transom["top_height_mm"] * math.tan(math.radians(transom["rake_deg"]))
    stock = round(at_water + _of(rng, 20, 120)) if outside else _of(rng, -1500, 100)
    twin = not outside and rng.random() < 0.25
    rudder: Json = {
        "hung": "transom" if outside else "inboard", "stock_aft_mm": stock, "number": 2 if twin else 1,
        "leading_edge_aft_mm": round(stock - share * chord), "trailing_edge_aft_mm": round(stock + (1 - share) * chord),
        "top_height_mm": _of(rng, 100, 700) if outside else _of(rng, -400, 0), "bottom_height_mm": _of(rng, -2000, -900),
        "max_deflection_deg": _of(rng, 28, 45),
    }  # fmt: skip
    return rudder | ({"spacing_mm": _of(rng, 700, 2200)} if twin else {})


def _box(rng: Rng, top: float) -> Json:
    """Return a box about where a gear hangs: seldom through it, often near it, now and then without an end."""
    box: Json = {}
    places = {"aft_mm": (-200, 900), "starboard_mm": (-1100, 1100), "height_mm": (-300, top + 1400)}
    sizes = {"aft_mm": (20, 500), "starboard_mm": (20, 700), "height_mm": (30, 700)}
    for axis, (low, high) in places.items():
        start = _of(rng, low, high)
        span: list[float | None] = [start, start + _of(rng, *sizes[axis])]
        if rng.random() < 0.08:
            span[int(rng.integers(2))] = None
        box[axis] = span
    return box


def _thing(rng: Rng, top: float, swept: float) -> Json:
    thing = _box(rng, top) | {"kind": str(rng.choice(KINDS))}
    if rng.random() < swept:
        thing |= {"moves": str(rng.choice(["folds", "swings", "slides"])), "swept_to": _box(rng, top)}
    elif rng.random() < 0.2:
        thing["moves"] = "slides"
    if rng.random() < 0.25:
        thing["removable"] = True
        thing["keep"] = [True, False, None][int(rng.integers(3))]
    return thing
