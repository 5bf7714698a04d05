"""The true boats of the demo fleet: what every hull model is like, and how its sister ships differ.

Figures are the demo's own, within bands of common practice (no source). Millimetres, degrees, kilograms.
"""

from __future__ import annotations

from dataclasses import replace
from math import radians, tan
from typing import Any

from seed_fixtures.boats import Boat, Rudder, Stern
from seed_fixtures.dice import Rng
from seed_fixtures.things import things_on

CORED_SINCE = 1993
OUTBOARD = (
    "oxbarrow-26", "oxbarrow-28", "oxbarrow-28-s", "oxbarrow-32", "morwik-27", "grimvik-27", "grimvik-32",
    "grimvik-32-ls",
)  # fmt: skip
"""Hull models whose main rudder hangs outside, on transom or sternpost."""
METAL = {"vrijlande-37": "steel", "vrijlande-37-ds": "steel", "vrijlande-44": "steel", "grimvik-38": "wood"}
TWIN = ("beltranza-40-s",)

STERNS: dict[str, dict[str, tuple[float, float]]] = {
    "plumb": {"top": (940, 50), "bottom": (-40, 40), "rake": (1.5, 2), "wide": (0.62, 0.04), "water": (0.7, 0.05)},
    "raked": {"top": (950, 50), "bottom": (130, 60), "rake": (22, 5), "wide": (0.5, 0.04), "water": (0.55, 0.05)},
    "reverse": {"top": (970, 50), "bottom": (0, 40), "rake": (-22, 4), "wide": (0.52, 0.04), "water": (0.7, 0.05)},
    "scoop": {"top": (1040, 60), "bottom": (-20, 30), "rake": (-14, 4), "wide": (0.62, 0.04), "water": (0.75, 0.05)},
    "open": {"top": (475, 15), "bottom": (-20, 25), "rake": (-7, 3), "wide": (0.8, 0.03), "water": (0.78, 0.04)},
    "double_ended": {
        "top": (1040, 60), "bottom": (-260, 60), "rake": (19, 4), "wide": (0.46, 0.03), "water": (0.5, 0.05),
    },
}  # fmt: skip
"""By stern: mean and spread between hull models; widths as shares of beam and of the width at the top."""

TRAILING = {"plumb": -340, "raked": -780, "reverse": 0, "scoop": 150, "open": -320, "double_ended": -520}
"""Mean x of an inboard rudder's trailing edge."""


def _number(row: dict[str, str], key: str) -> float:
    return float(row[key])


def hull_truth(row: dict[str, str], rng: Rng) -> Boat:
    """Return the hull model as drawn: the boat that every sister ship departs from."""
    longer = (_number(row, "loa_mm") - 10_000) / 1000
    stern = _stern(row, longer, rng)
    return Boat(
        hull=row["id"],
        builder=row["builder"],
        model=row["model"],
        year=int(row["first_year"]),
        loa=_number(row, "loa_mm"),
        lwl=_number(row, "lwl_mm"),
        beam=_number(row, "beam_mm"),
        draft=_number(row, "draft_mm"),
        displacement=_number(row, "displacement_kg"),
        material=METAL.get(row["id"], "frp_solid" if int(row["first_year"]) < CORED_SINCE else "frp_cored"),
        stern=stern,
        rudder=_rudder(row["id"], stern, longer, rng),
    )


def _stern(row: dict[str, str], longer: float, rng: Rng) -> Stern:
    kind = row["stern"]
    drawn = {key: float(rng.normal(*pair)) for key, pair in STERNS[kind].items()}
    wide = drawn["wide"] * _number(row, "beam_mm")
    scoop: dict[str, float] = {}
    if kind == "scoop":
        scoop = {
            "step_height": float(rng.normal(295, 25)),
            "step_depth": float(rng.normal(520, 60)),
            "step_width": 0.62 * wide,
            "lower_rake": float(rng.normal(-10, 3)),
        }
    return Stern(
        kind=kind,
        top=drawn["top"] + (12 if kind == "open" else 45) * longer,
        bottom=drawn["bottom"],
        rake=drawn["rake"],
        width_top=wide,
        width_water=wide * drawn["water"],
        camber=float(rng.normal(620, 50)) if kind == "double_ended" else float(abs(rng.normal(40, 18))),
        thickness=float(rng.normal(11, 1.5)) + 0.8 * longer,
        post_width=float(rng.normal(90, 10)) if kind == "double_ended" else None,
        **scoop,
    )


def _rudder(hull: str, stern: Stern, longer: float, rng: Rng) -> Rudder:
    if hull in OUTBOARD:
        at_water = -stern.top * tan(radians(stern.rake))
        ended = stern.kind == "double_ended"
        stock = at_water * 0.75 + 25
        return Rudder(
            hung="transom",
            stock=stock,
            leading=stock - 30,
            trailing=stock + float(rng.normal(440 if ended else 470, 25)) + 15 * longer,
            top=float(rng.uniform(200, 330) if ended else rng.uniform(0.2, 0.42) * stern.top),
            bottom=float(rng.normal(-1050, 80)),
            deflection=36,
        )
    trailing = TRAILING[stern.kind] + float(rng.normal(0, 110)) - 30 * longer
    chord = float(rng.normal(520, 40))
    return Rudder(
        hung="inboard",
        stock=trailing - 0.8 * chord,
        leading=trailing - chord,
        trailing=trailing,
        top=float(rng.normal(-190, 40)),
        bottom=float(rng.normal(-1450, 90)) - 70 * longer,
        deflection=35,
        number=2 if hull in TWIN else 1,
    )


def sister_ship(hull: Boat, row: dict[str, str], bought: int, rng: Rng) -> Boat:
    """Return one boat of a hull model: built within its years, loaded, rebuilt and fitted out by its owners."""
    built = int(rng.integers(hull.year, min(int(row["last_year"]), bought) + 1))
    sunk = float(rng.normal(12, 26))
    stern = hull.stern
    changed: dict[str, Any] = {
        "top": stern.top - sunk + float(rng.normal(0, 10)),
        "bottom": stern.bottom - sunk,
        "rake": stern.rake + float(rng.normal(0, 1.4)),
        "camber": max(0.0, stern.camber + float(rng.normal(0, 6))),
        "thickness": max(6.0, stern.thickness + float(rng.normal(0, 1.2))),
    }
    if stern.step_height is not None:
        changed["step_height"] = stern.step_height - sunk + float(rng.normal(0, 6))
    own = replace(stern, **changed)
    rudder = replace(
        hull.rudder,
        trailing=hull.rudder.trailing + float(rng.normal(0, 15)),
        top=hull.rudder.top - sunk,
        bottom=hull.rudder.bottom - sunk,
    )
    return replace(
        hull,
        year=built,
        stern=own,
        rudder=rudder,
        displacement=hull.displacement * float(rng.normal(1.07, 0.05)),
        things=things_on(own, built, rng, middle_free=rudder.hung == "inboard"),
    )
