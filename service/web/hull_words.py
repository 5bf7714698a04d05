"""What a hull model says of itself, for pages."""

from __future__ import annotations

from service.core.record import HullModel
from service.core.registry import FIELDS
from service.web.pages import number

LABELS = {
    "builder": "Yard",
    "model": "Model",
    "first_year": "Built from",
    "last_year": "Built until",
    "loa_mm": "Length over all",
    "lwl_mm": "Waterline",
    "beam_mm": "Beam",
    "draft_mm": "Draught",
    "displacement_kg": "Displacement",
    "stern": "Stern",
}


def value(name: str, item: object) -> str:
    r"""Return a field's value with its unit; a dash for none.

    >>> value("loa_mm", 9420.0), value("first_year", 1971)
    ('9420\u202fmm', '1971')
    """
    if isinstance(item, (int, float)) and not name.endswith("_year"):
        return number(float(item), 0, name.rpartition("_")[2])
    return "\u2013" if item is None else str(item)


def years(hull: HullModel) -> str:
    """Return when it was built, as far as is known."""
    if hull.first_year is None and hull.last_year is None:
        return "\u2013"
    return f"{hull.first_year or '?'}\u2013{hull.last_year or ''}"


def facts(hull: HullModel) -> list[tuple[str, str]]:
    """Return label and value of everything it says."""
    return [(LABELS[name], value(name, getattr(hull, name))) for name in FIELDS if getattr(hull, name) is not None]
