"""What of a true boat is written down: methods and their scatter, gaps, rounding, and slips of the pen.

Returns boat forms (`boat-form/1`) as plain JSON values.
"""

from __future__ import annotations

from typing import Any

import numpy as np

from seed_fixtures.boats import Boat, Thing
from seed_fixtures.dice import Rng, happens
from seed_fixtures.habits import Dealer

Form = dict[str, Any]
SCATTER = {
    "tape": (7.0, 1.5), "laser": (3.0, 0.5), "phone_level": (12.0, 1.0), "inclinometer": (10.0, 0.5),
    "drawing": (15.0, 1.0), "photo": (45.0, 3.0), "guess": (80.0, 5.0), "sister_ship": (30.0, 1.8),
}  # fmt: skip
"""True scatter by method: mm and degrees, one standard deviation. The demo's own; no source."""
FIRST, LAST = 2001, 2025
NAMED = (0.5, 0.25, 0.07, 0.08, 0.06, 0.04)
"""Shares of the ways in which people write a boat's name."""
SLIP = 0.025
"""How often a record carries a slip of the pen."""
OFTEN_LEFT_OUT = {
    "transom.top_height_mm": 0.5, "transom.rake_deg": 0.6, "transom.width_top_mm": 0.9, "main_rudder.hung": 0.4,
    "transom.camber_mm": 2.2, "transom.thickness_mm": 1.6, "transom.bottom_height_mm": 1.2,
    "main_rudder.stock_aft_mm": 2.0, "main_rudder.bottom_height_mm": 2.2, "main_rudder.top_height_mm": 1.8,
    "main_rudder.max_deflection_deg": 2.3, "main_rudder.leading_edge_aft_mm": 2.2, "boat.stern": 0.5,
    "boat.draft_mm": 1.3, "boat.hull_material": 0.9, "transom.width_waterline_mm": 1.8,
}  # fmt: skip
"""How much more (or less) often than others a field is left out."""


def written_down(boat: Boat, dealer: Dealer, year: int, rng: Rng) -> Form:
    """Return the form as this dealer noted it in `year`."""
    method = _method(dealer, rng)
    level = {"tape": "phone_level", "laser": "inclinometer"}.get(method, method)
    missing = 0.36 - 0.14 * (year - FIRST) / (LAST - FIRST)
    form: Form = {
        "schema": "boat-form/1",
        "enquiry": {"dealer": dealer.name, "country": dealer.country, "language": dealer.language},
    }
    for path, value in _truth(boat).items():
        if value is None or happens(rng, min(0.92, missing * OFTEN_LEFT_OUT.get(path, 1.0))):
            continue
        part, key = path.split(".")
        form.setdefault(part, {})[key] = _noted(key, value, level if key.endswith("_deg") else method, rng)
    form.setdefault("boat", {}).update(_name(boat, rng))
    if "transom" in form:
        if boat.stern.kind == "double_ended":
            _maybe_sections(form, boat, method, rng)
        else:
            _maybe_profile(form, boat, method, rng)
        form["methods"] = {"*": method} if level == method else {"*": method, "transom.rake_deg": level}
        if method == "guess" and "top_height_mm" in form["transom"]:
            form["uncertainties"] = {"transom.top_height_mm": 100}
    things = [_obstacle(thing, method, missing, rng) for thing in boat.things if not happens(rng, missing)]
    if things:
        form["obstacles"] = things
    return _slipped(form, rng) if happens(rng, SLIP) else form


def _method(dealer: Dealer, rng: Rng) -> str:
    if happens(rng, dealer.careful):
        return str(rng.choice(["tape", "laser", "drawing"], p=[0.75, 0.15, 0.1]))
    return str(rng.choice(["tape", "photo", "guess", "sister_ship"], p=[0.5, 0.2, 0.2, 0.1]))


def _truth(boat: Boat) -> dict[str, float | str | None]:
    stern, rudder = boat.stern, boat.rudder
    scoop = stern.step_height is not None
    return {
        "boat.year": boat.year,
        "boat.loa_mm": boat.loa,
        "boat.lwl_mm": boat.lwl,
        "boat.beam_mm": boat.beam,
        "boat.draft_mm": boat.draft,
        "boat.displacement_kg": boat.displacement,
        "boat.hull_material": boat.material,
        "boat.stern": stern.kind,
        "transom.top_height_mm": stern.top,
        "transom.bottom_height_mm": stern.bottom,
        "transom.rake_deg": stern.rake,
        "transom.width_top_mm": stern.width_top,
        "transom.width_waterline_mm": stern.width_water,
        "transom.camber_mm": stern.camber,
        "transom.thickness_mm": stern.thickness,
        "transom.step_height_mm": stern.step_height,
        "transom.step_depth_mm": stern.step_depth if scoop else None,
        "transom.step_width_mm": stern.step_width if scoop else None,
        "transom.lower_rake_deg": stern.lower_rake if scoop else None,
        "transom.post_width_mm": stern.post_width,
        "main_rudder.hung": rudder.hung,
        "main_rudder.stock_aft_mm": rudder.stock,
        "main_rudder.leading_edge_aft_mm": rudder.leading,
        "main_rudder.trailing_edge_aft_mm": rudder.trailing,
        "main_rudder.top_height_mm": rudder.top,
        "main_rudder.bottom_height_mm": rudder.bottom,
        "main_rudder.max_deflection_deg": rudder.deflection,
    }


def _noted(key: str, value: float | str, method: str, rng: Rng) -> float | str:
    if isinstance(value, str) or key == "year":
        return value
    mm, deg = SCATTER[method]
    if key.endswith("_deg"):
        return round(value + float(rng.normal(0, deg)))
    if key.endswith("_kg"):
        return max(500, round(value * float(rng.normal(1, 0.05)), -2))
    if key in ("loa_mm", "lwl_mm", "beam_mm", "draft_mm"):
        return round(value * float(rng.normal(1, 0.004)), -1)
    small = key in ("thickness_mm", "post_width_mm", "camber_mm")
    got = value + float(rng.normal(0, mm * (0.12 if small else 1)))
    return max(3, round(got)) if small else int(5 * round(got / 5))


def _name(boat: Boat, rng: Rng) -> Form:
    """Return builder and model as people write them: glued, abbreviated, without the yard, in another script of II."""
    model = boat.model
    said: Form = {"builder": boat.builder, "model": model}
    habit = str(rng.choice(["full", "no yard", "loud", "glued", "other spelling", "short yard"], p=NAMED))
    if habit == "no yard":
        del said["builder"]
    elif habit == "loud":
        said["model"] = model.upper()
    elif habit == "glued":
        said["model"] = model.replace(" ", "")
    elif habit == "other spelling":
        said["model"] = model.replace("Mk II", "Mk2").replace(" S", "-S").replace(".", ",")
    elif habit == "short yard":
        said["builder"] = boat.builder.split(maxsplit=1)[0]
    return said


def _maybe_profile(form: Form, boat: Boat, method: str, rng: Rng) -> None:
    """Add a profile where somebody measured with care: points down from the top edge."""
    if method not in ("laser", "drawing") or boat.stern.step_height is not None or happens(rng, 0.4):
        return
    mm = SCATTER[method][0]
    down = np.arange(0.0, boat.stern.top - boat.stern.bottom, 250.0)
    x = boat.stern.skin(0.0, boat.stern.top - down) + rng.normal(0, mm, len(down)) * (down > 0)
    if len(down) > 1:
        form["transom"]["profile"] = [
            {"below_top_mm": round(d), "aft_mm": round(float(a))} for d, a in zip(down, x, strict=True)
        ]


def _maybe_sections(form: Form, boat: Boat, method: str, rng: Rng) -> None:
    """Add plan sections of a double-ender's quarters, where somebody took the trouble: half of those with a tape."""
    if method not in ("tape", "laser", "drawing") or not happens(rng, 0.5):
        return
    stern, mm = boat.stern, SCATTER[method][0]
    sections = []
    for height in (round(stern.top) - 40, round(stern.top * 0.65), round(stern.top * 0.3)):
        widest = float(stern.half_breadth(np.array([float(height)]))[0])
        points = [
            {
                "half_breadth_mm": half,
                "aft_mm": round(float(stern.skin(half, np.array([height]))[0]) + float(rng.normal(0, mm))),
            }
            for half in range(0, int(widest) + 1, 100)
        ]
        sections.append({"height_mm": height, "points": points})
    form["transom"]["sections"] = sections


def _obstacle(thing: Thing, method: str, missing: float, rng: Rng) -> Form:
    said: Form = {"kind": thing.kind}
    if not happens(rng, missing / 2):
        said["side"] = thing.side
    if not happens(rng, missing * 1.3):
        shift = rng.normal(0, SCATTER[method][0], 3)
        pairs = (("aft_mm", thing.aft), ("starboard_mm", thing.starboard), ("height_mm", thing.height))
        for (key, pair), by in zip(pairs, shift, strict=True):
            said[key] = [int(5 * round((end + float(by)) / 5)) for end in pair]
        if thing.moves == "folds" and happens(rng, 0.5):  # half say where it folds to
            said["swept_to"] = {"height_mm": [-600, said["height_mm"][0]]}
    for key, value in (("removable", thing.removable), ("keep", thing.keep)):
        if value and happens(rng, 0.7):  # not everybody says
            said[key] = True
    if thing.moves != "fixed":
        said["moves"] = thing.moves
    return said


def _slipped(form: Form, rng: Rng) -> Form:
    """Return the form with one slip of the pen: a lost sign, inches for mm, cm for mm, two digits swapped."""
    transom, boat = form.get("transom", {}), form["boat"]
    can = {
        "sign": bool(transom.get("rake_deg")),
        "inches": "width_top_mm" in transom,
        "centimetres": "beam_mm" in boat,
        "digits": "top_height_mm" in transom,
    }
    sort = str(rng.choice([name for name, possible in can.items() if possible] or ["none"]))
    if sort == "sign":
        transom["rake_deg"] = -transom["rake_deg"]
    elif sort == "inches":
        transom["width_top_mm"] = round(transom["width_top_mm"] / 25.4, 1)
    elif sort == "centimetres":
        boat["beam_mm"] = round(boat["beam_mm"] / 10)
    elif sort == "digits":
        first, second, third, *rest = list(f"{transom['top_height_mm']:03.0f}")
        swapped = int("".join([first, third, second, *rest]))
        if swapped > max(transom.get("bottom_height_mm", 0), 0):
            transom["top_height_mm"] = swapped
    return form
