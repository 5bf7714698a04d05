"""Fields of a record in words, and their values as people read them."""

from __future__ import annotations

from typing import Any

from service.core.boat import title
from service.core.record import Record
from service.flow.compare_records import described
from service.web.pages import number

LABELS = {
    "record.status": "status",
    "record.date": "date",
    "record.dealer": "dealer",
    "record.hull": "hull model",
    "record.catalogue": "catalogue",
    "record.answer": "answer",
    "configuration.gear": "gear",
    "configuration.lower": "lower bracket",
    "configuration.upper": "upper bracket",
    "configuration.shaft": "shaft",
    "placement.offset_mm": "shaft beside the centreline",
    "placement.shaft_aft_mm": "shaft aft of the top edge",
    "placement.lower_height_mm": "lower collar above the water",
    "placement.upper_height_mm": "upper collar above the water",
    "placement.shaft_bottom_mm": "shaft's lower end above the water",
    "outcome.fitted_as_proposed": "fitted as proposed",
    "outcome.note": "what was heard",
    "outcome.changed": "what was changed, and why",
    "boat.name": "boat's name",
    "boat.sail_number": "sail number",
    "boat.hull_number": "hull number",
    "boat.displacement_is": "displacement is",
    "contact.name": "contact: name",
    "contact.email": "contact: mail",
    "contact.phone": "contact: telephone",
    "contact.role": "contact: role",
    "main_rudder.number": "main rudders",
    "main_rudder.spacing_mm": "main rudders apart",
    "preferences.side": "wished side",
    "preferences.avoid": "to be avoided",
    "preferences.strength": "how much it is wished",
    "notes": "notes",
    "obstacles": "things on the stern",
}
SIGNS = {"mm": "mm", "deg": "\u00b0", "kg": "kg"}
MATERIALS = {
    "frp_solid": "solid laminate", "frp_cored": "cored laminate", "wood": "wood", "aluminium": "aluminium", "steel": "steel",
}  # fmt: skip
LINE = 60
"""A list longer than this is counted rather than shown (characters)."""
STATUS = {"proposed": "open", "shipped": "close", "installed": "good", "withdrawn": "plain"}


def label(field: str) -> str:
    """Return what people call a field.

    >>> label("configuration.lower"), label("transom.rake_deg"), label("methods[transom.rake_deg]")
    ('lower bracket', 'rake of the transom', 'rake of the transom: method')
    """
    for kind, word in (("methods[", "method"), ("uncertainties[", "uncertainty")):
        if field.startswith(kind):
            inner = field.removeprefix(kind).removesuffix("]")
            return f"{'everything' if inner == '*' else label(inner)}: {word}"
    if field.startswith("proposed."):
        return f"proposed {label('configuration.' + field.removeprefix('proposed.'))}"
    return LABELS.get(field) or title(field)


def value(field: str, what: Any) -> str:  # noqa: ANN401 - a value of any field
    """Return a value with its unit; a dash for what nobody said.

    >>> value("transom.rake_deg", -12.5), value("outcome.fitted_as_proposed", True), value("boat.name", None)
    ('\u221212.5\u202f\u00b0', 'yes', '\u2013')
    """
    if what is None or what == "":
        return "\u2013"
    if isinstance(what, bool):
        return "yes" if what else "no"
    if isinstance(what, (int, float)):
        return number(what, 0 if float(what).is_integer() else 1, SIGNS.get(field.rpartition("_")[2], ""))
    return _listed(field, what) if isinstance(what, (list, dict)) else _worded(field, str(what))


def _worded(field: str, text: str) -> str:
    if field == "boat.hull_material":
        return MATERIALS.get(text, text)
    return text.replace("_", "-") if field == "boat.stern" else text


def _listed(field: str, what: list[Any] | dict[str, Any]) -> str:
    if field == "obstacles" and isinstance(what, list):
        return "; ".join(f"{one.get('kind')}{' ' + one['side'] if one.get('side') else ''}" for one in what) or "\u2013"
    return f"{len(what)} of them" if len(str(what)) > LINE else str(what)


def side(offset: float | None) -> str:
    """Return where a shaft stands athwartships.

    >>> side(-300.0), side(0.0), side(None)
    ('300\u202fmm to port', 'centreline', '\u2013')
    """
    if offset is None:
        return "\u2013"
    if abs(offset) < 1:
        return "centreline"
    return f"{number(abs(offset), 0, 'mm')} to {'starboard' if offset > 0 else 'port'}"


def called(record: Record, hull: object | None) -> str:
    """Return what the boat of a record is: her hull model, else what was written."""
    boat = record.form.boat
    return (
        str(hull) if hull else " ".join(word for word in (boat.builder, boat.model) if word) or "hull model not known"
    )


def labels(paths: tuple[str, ...]) -> str:
    """Return what people call some fields, on one line."""
    return ", ".join(map(label, paths))


def pairs(names: tuple[str, ...]) -> list[tuple[str, str]]:
    """Return names with the words they are chosen by."""
    return [(name, name.replace("_", "-")) for name in names]


__all__ = ["LABELS", "MATERIALS", "SIGNS", "STATUS", "called", "described", "label", "labels", "pairs", "side", "value"]
