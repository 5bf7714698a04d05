"""What was not said and matters for a fit, in the order a fitter would ask."""

from __future__ import annotations

from service.core import boat
from service.core.boat import BoatForm
from service.core.reading.shape import Missing

MOST_QUESTIONS = 3
KEY_FIELDS: dict[str, str] = {
    "boat.model": "the hull model brings sister ships, whose measures and installations stand in for what is not said",
    "transom.top_height_mm": "every height of the gear counts from it",
    "transom.rake_deg": "it sets how far the shaft stands off, and which bracket reaches",
    "transom.bottom_height_mm": "the lower bracket must sit on skin above it",
    "main_rudder.hung": "a rudder on the transom stands where the gear would",
    "main_rudder.trailing_edge_aft_mm": "the gear's own rudder must clear it",
    "obstacles": "ladder, platform, davits, outboard, stays and rails decide on the side",
    "transom.thickness_mm": "it sets bolt length and backing plates",
    "boat.displacement_kg": "it decides on the size of gear",
}


def gaps(form: BoatForm) -> tuple[Missing, ...]:
    """Return the key fields the form does not have, in order; a profile or sections stand for the rake."""
    found = []
    for name, why in KEY_FIELDS.items():
        value = form.obstacles if name == "obstacles" else boat.get(form, name)
        shaped = name == "transom.rake_deg" and (form.transom.profile or form.transom.sections)
        if (value is None or value == ()) and not shaped:
            found.append(Missing(field=name, why=f"{boat.title(name)}: {why}"))
    return tuple(found)


def questions(missing: tuple[Missing, ...]) -> tuple[str, ...]:
    """Return at most three questions, with how to measure where the form's definition says it."""
    asked = []
    for gap in missing[:MOST_QUESTIONS]:
        how = boat.how_to_measure(gap.field)
        name = "what stands on the stern" if gap.field == "obstacles" else boat.title(gap.field)
        asked.append(f"What is the {name}? {how}" if how else f"Please tell us the {name}.")
    return tuple(asked)
