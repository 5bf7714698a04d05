"""Sister ships that carry something else, or carry it elsewhere: which measurement makes the difference.

Their measurement is put into this boat, one field at a time, and the configuration is placed anew; the field that
moves the placement (or turns the verdict) most is the one named.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
from numpy.typing import NDArray

from service.core.answer.shapes import Contrast, Suggestion
from service.core.boat import get, title
from service.core.catalogue import Configuration
from service.core.fit.boats import Boats, allowed_lies, variant
from service.core.fit.kit import build
from service.core.fit.place import place
from service.core.form import FormError, with_values
from service.core.recall import Precedent, Recall
from service.core.recall.fleet import Fleet

FIELDS = (
    "transom.rake_deg", "transom.top_height_mm", "transom.bottom_height_mm", "transom.width_top_mm",
    "transom.camber_mm", "main_rudder.trailing_edge_aft_mm", "transom.step_height_mm", "boat.displacement_kg",
)  # fmt: skip
MOST_SISTERS = 2
NOTICEABLE_MM = 5.0


def with_sisters(
    boats: Boats, suggestions: Sequence[Suggestion], remembered: Recall, fleet: Fleet
) -> tuple[Contrast, ...]:
    """Return what separates the likest sister ships from this boat, where anything measured on both does."""
    sisters = [p for p in remembered.precedents if p.sister][:MOST_SISTERS]
    if not suggestions or not sisters:
        return ()
    ours = suggestions[0]
    found = []
    for sister in sisters:
        theirs = {
            field: value for field, value in _differing(boats, sister, fleet).items() if _sound(boats, field, value)
        }
        if theirs:
            found.append(_one(boats, ours, sister, theirs))
    return tuple(found)


def _differing(boats: Boats, sister: Precedent, fleet: Fleet) -> dict[str, float]:
    form = next(r.form for r in fleet.records if r.reference == sister.record)
    values = {}
    for field in FIELDS:
        mine, other = get(boats.form, field), get(form, field)
        if mine is not None and other is not None and abs(float(mine) - float(other)) > 1e-6:  # noqa: PLR2004 - written to a tenth
            values[field] = float(other)
    return values


def _sound(boats: Boats, field: str, value: float) -> bool:
    """Say whether the boat is still a boat with a sister's value: her bottom edge may lie above this one's top."""
    try:
        with_values(boats.form, {field: value})
    except FormError:
        return False
    return True


def _spot(
    boats: Boats, configuration: Configuration, changes: Mapping[str, float]
) -> tuple[NDArray[np.float64], float]:
    form = with_values(boats.form, changes) if changes else boats.form
    site = variant(boats, form).nominal
    best = place(site, build(boats.catalogue, [configuration]), boats.catalogue.rules, lies=allowed_lies(boats.form))
    lie = int(best.aims[0].argmax())
    return best.spots[0, lie], float(best.aims[0, lie])


def _one(boats: Boats, ours: Suggestion, sister: Precedent, theirs: Mapping[str, float]) -> Contrast:
    base, _ = _spot(boats, ours.configuration, {})
    moved = {}
    for field, value in theirs.items():
        spot, margin = _spot(boats, ours.configuration, {field: value})
        # the offset is free on a wide transom, so it is not counted as a move
        moved[field] = (float(np.abs(spot[1:] - base[1:]).max()), margin, spot)
    field = max(moved, key=lambda f: (moved[f][1] < 0, moved[f][0]))
    shift, margin, spot = moved[field]
    mine, other = float(get(boats.form, field)), theirs[field]
    same = sister.configuration == ours.configuration
    carries = "the same configuration" if same else str(sister.configuration)
    if margin < 0:
        effect = f"with her {title(field)} {ours.configuration} would not pass"
    elif shift < NOTICEABLE_MM:
        effect = "none of what was measured on both moves the placement noticeably"
    else:
        effect = (
            f"with her {title(field)} the shaft would stand {spot[1] - base[1]:+.0f} mm fore and aft, "
            f"the lower collar {spot[2] - base[2]:+.0f} mm and the upper {spot[3] - base[3]:+.0f} mm in height"
        )
    unit = "°" if field.endswith("_deg") else " kg" if field.endswith("_kg") else " mm"
    text = f"sister ship {sister.record} carries {carries}; her {title(field)} is {other:g}{unit}, yours {mine:g}{unit}: {effect}"
    return Contrast(
        record=sister.record, configuration=sister.configuration, field=field, theirs=other, ours=mine,
        moves_mm=round(shift, 1), text=text,
        effect="fails" if margin < 0 else "none" if shift < NOTICEABLE_MM else "moves",
        shift_mm=(round(float(spot[1] - base[1]), 1), round(float(spot[2] - base[2]), 1), round(float(spot[3] - base[3]), 1)),
    )  # fmt: skip
