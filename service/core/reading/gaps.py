"""What was not said and matters for a fit, what settles most first."""

from __future__ import annotations

from service.core import boat
from service.core.boat import BoatForm
from service.core.reading.settles import SETTLES
from service.core.reading.shape import Missing

KEY_FIELDS: dict[str, str] = {
    "boat.model": "the hull model brings sister ships, whose measures and installations stand in for what is not said",
    "boat.stern": "it decides which brackets can sit there",
    "transom.top_height_mm": "every height of the gear counts from it",
    "transom.rake_deg": "it sets how far the shaft stands off, and which bracket reaches",
    "transom.bottom_height_mm": "the lower bracket must sit on skin above it",
    "main_rudder.hung": "a rudder on the transom stands where the gear would",
    "main_rudder.trailing_edge_aft_mm": "the gear's own rudder must clear it",
    "obstacles": "ladder, platform, davits, outboard, stays and rails decide on the side",
    "transom.thickness_mm": "it sets bolt length and backing plates",
    "boat.displacement_kg": "it decides on the size of gear",
    "transom.step_height_mm": "a bracket can stand on the step",
    "transom.step_depth_mm": "what stands on the step must keep clear of its edge",
}
ONLY_ON = {"transom.step_height_mm": "scoop", "transom.step_depth_mm": "scoop"}
"""Fields that only one sort of stern has."""
ORDER = tuple(sorted(KEY_FIELDS, key=lambda name: -SETTLES.get(name, 0.0)))
"""What settles most first; a reading is made before anything is fitted, so the order is that of the whole fleet."""


def gaps(form: BoatForm) -> tuple[Missing, ...]:
    """Return the key fields the form does not have, in order; a profile or sections stand for the rake."""
    found = []
    for name in ORDER:
        value = form.obstacles if name == "obstacles" else boat.get(form, name)
        shaped = name == "transom.rake_deg" and (form.transom.profile or form.transom.sections)
        elsewhere = name in ONLY_ON and form.boat.stern != ONLY_ON[name]
        if (value is None or value == ()) and not shaped and not elsewhere:
            found.append(Missing(field=name, why=f"{boat.title(name)}: {KEY_FIELDS[name]}"))
    return tuple(found)
