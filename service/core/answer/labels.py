"""What fields, things on a stern and values are called: messages, so that every language has its own names."""

from __future__ import annotations

import re
from functools import reduce

from service.core.answer.speech import Amount, Said, said
from service.core.boat import BoatForm, title

WORDS = frozenset({
    "plumb", "raked", "reverse", "scoop", "open", "double_ended", "inboard", "transom", "frp_solid", "frp_cored", "wood",
    "aluminium", "steel",
})  # fmt: skip
"""Values of fields that are words, each with a message."""
UNITS = ("mm", "deg", "kg")


def key(field: str) -> str:
    """Return a field's path as messages are named by it."""
    return field.replace(".", "-")


def label(form: BoatForm, field: str) -> Said:
    """Return what a field is called; one that belongs to a thing on the stern goes by the thing."""
    if field.startswith("obstacles["):
        return thing_at(form, field)
    if field in ("obstacles", "waterline", "interactions"):
        return said(f"field-{field}")
    named = "[" not in field and title(field) != field and field.startswith(("boat.", "transom.", "main_rudder."))
    return said(f"field-{key(field)}" if named else "field-other")


def thing_at(form: BoatForm, field: str) -> Said:
    """Return what stands at `obstacles[3]` or `obstacle[3]` of the form, and on which side."""
    found = re.search(r"\[(\d+)\]", field)
    index = int(found[1]) if found else -1
    if not 0 <= index < len(form.obstacles):
        return said("thing-other")
    one = form.obstacles[index]
    name = said(f"thing-{one.kind}")
    return said("thing-at", side=one.side, thing=name) if one.side else name


def bracket(role: str) -> Said:
    """Return what the bracket of a role is called."""
    return said(f"bracket-{role}")


def value_of(field: str, value: object) -> str | Amount | Said:
    """Return a value of a field as it is to be said."""
    unit = field.rsplit("_", 1)[-1]
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        # a year and a count have no unit and no marks
        return Amount(value=float(value), unit=unit) if unit in UNITS else f"{value:g}"
    text = str(value)
    return said(f"word-{text}") if text in WORDS else text


def things(text: str) -> Said | str:
    """Return the kinds of obstacle that a difference lists, as `ladder, rail`: all of them, one behind the other."""
    names = [said(f"thing-{kind}") for kind in text.split(", ") if kind]
    return reduce(lambda first, last: said("also", first=first, last=last), names) if names else text
