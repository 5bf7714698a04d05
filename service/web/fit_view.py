"""A fit as pages show it: checks as rows, what moved, and the measurements worth changing."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from service.core.answer.questions import ASKABLE
from service.core.boat import BoatForm, get, how_to_measure, is_path, title
from service.core.fit import Check, Fit, Placement
from service.core.fit.names import obstacle_names
from service.core.reading.shape import Missing
from service.web.pages import number, percent

FIRST, WEIGHTY = 8, 0.01
"""Measurements that can be changed beside the drawing; one that carries less of the doubt than this waits its turn."""
SOURCES = {"sister_ships": "sister ships", "neighbours": "similar boats", "prior": "what is usual"}
UNITS = {"mm": "mm", "deg": "°", "kg": "kg"}
OTHERWISE = {"interactions": "Several acting together", "waterline": "Where the water stands"}
HUNG = "main_rudder.hung"
WIDEST_MM = 3_000.0
_FINE = 100.0
"""From here on a decimal says nothing."""


def amount(value: float | None, unit: str) -> str:
    """Return a value of a check in its unit.

    >>> amount(0.5, "1"), amount(12.34, "mm"), amount(340.2, "N")
    ('50\u202f%', '12.3\u202fmm', '340\u202fN')
    """
    if value is None:
        return number(None)
    if unit == "1":
        return f"{number(100 * value)}\u202f%"
    return number(value, 1 if abs(value) < _FINE else 0, unit)


@dataclass(frozen=True)
class Row:
    """One check in words, and how far it is from its limit in its own scale, held within -1..3."""

    id: str
    title: str
    value: str
    limit: str
    margin: str
    status: str
    binds: bool
    case: str
    chance: str
    source: str
    scaled: float
    was: str = ""
    turned: bool = False
    """It passed before and fails now, or the other way."""


def rows(fit: Fit, before: Fit | None = None) -> tuple[Row, ...]:
    """Return the checks: what can refuse before advice; of each what fails, what is not known, then the nearest to its limit."""
    was = {check.id: check for check in before.checks} if before else {}
    ranked = sorted(fit.checks, key=lambda c: (not c.binds, c.status != "fail", c.status != "unknown", _scaled(c)))
    return tuple(_row(check, was.get(check.id)) for check in ranked)


def _scaled(check: Check) -> float:
    whole = check.id.startswith("immersion.") and (check.value or 0.0) >= 1.0
    return 1e9 if check.margin is None or whole else check.margin / (check.scale or 1.0)


def _row(check: Check, was: Check | None) -> Row:
    return Row(
        id=check.id, title=_capital(check.why.partition(": ")[0]), value=amount(check.value, check.unit),
        limit=amount(check.limit, check.unit), margin=amount(check.margin, check.unit), status=check.status,
        binds=check.binds, case=check.case, chance="" if check.probability is None else percent(check.probability),
        source=check.source, scaled=min(max(_scaled(check), -1.0), 3.0) if check.margin is not None else 0.0,
        was=amount(was.margin, was.unit) if was else "", turned=was is not None and was.status != check.status,
    )  # fmt: skip


def binding(fit: Fit) -> Row | None:
    """Return the check that binds: the nearest to its limit, or the furthest beyond it."""
    able = [c for c in fit.checks if c.binds and c.margin is not None]
    return _row(min(able, key=_scaled), None) if able else None


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def question_title(form: BoatForm, field: str) -> str:
    """Return what a missing thing is called in a list of questions."""
    if field.startswith("obstacles["):
        return _capital(obstacle_names(form).get(field.replace("obstacles", "obstacle"), "something on the stern"))
    return _capital("hull model" if field == "boat.model" else title(field))


def titled(field: str) -> str:
    """Return what a field of a doubt or a difference is called; what is no field goes by its own name."""
    if field.startswith("obstacles["):
        return "Something on the stern"
    return OTHERWISE.get(field) or _capital(title(field) if is_path(field) else field.replace("_", " "))


def place_words(at: Placement | None) -> str:
    """Return where a fit sits, in words."""
    if at is None:
        return "Nowhere"
    side = "starboard" if at.offset_mm > 0 else "port"
    beside = "On the centreline" if abs(at.offset_mm) < 0.5 else f"{number(abs(at.offset_mm), 0, 'mm')} to {side}"  # noqa: PLR2004 - half a millimetre
    return (
        f"{beside}, shaft {number(at.shaft_aft_mm, 0, 'mm')} aft of the top edge; collars "
        f"{number(at.lower_height_mm, 0, 'mm')} and {number(at.upper_height_mm, 0, 'mm')} above the water"
    )


@dataclass(frozen=True)
class Input:
    """A measurement that can be changed: its value as the form has it, what stands for it where there is none, and why."""

    path: str
    label: str
    value: str
    unit: str
    note: str
    help: str
    trouble: str = ""


def inputs(
    form: BoatForm, fit: Fit, missing: Sequence[Missing], typed: Mapping[str, str], faults: Mapping[str, str]
) -> tuple[Input, ...]:
    """Return the measurements that matter most: what brings doubt, what was stated, what is missing; and all that were typed."""
    doubt = {one.field: one.share for one in fit.doubt}
    stated = [field for field in ASKABLE if get(form, field) is not None]
    weighty = [field for field, share in doubt.items() if share >= WEIGHTY]
    wanted = [field for field in (*weighty, *stated, *(one.field for one in missing)) if _simple(field)]
    chosen = list(dict.fromkeys(wanted))[:FIRST]
    chosen += [field for field in typed if field not in chosen and _simple(field)]
    return tuple(_input(form, fit, field, doubt.get(field), typed, faults.get(field, "")) for field in chosen)


def _simple(field: str) -> bool:
    part, _, name = field.partition(".")
    measured = part in ("boat", "transom", "main_rudder") and name.rpartition("_")[2] in UNITS
    return (measured and "[" not in name) or field == HUNG


def _input(form: BoatForm, fit: Fit, field: str, share: float | None, typed: Mapping[str, str], trouble: str) -> Input:
    value = get(form, field)
    own = written(value)
    filled = next((one for one in fit.filled if one.field == field), None)
    notes = []
    unit = UNITS.get(field.rpartition("_")[2], "")
    if value is None and filled is not None:
        about = number(filled.value, 0, unit) if isinstance(filled.value, float) else filled.value.replace("_", " ")
        notes.append(f"not stated; {about} from {SOURCES[filled.from_]}")
    elif value is None:
        notes.append("not stated")
    if share is not None:
        notes.append(f"{percent(share)} of the doubt")
    return Input(
        field,
        _capital(title(field)),
        typed.get(field, own),
        unit,
        "; ".join(notes),
        how_to_measure(field) or "",
        trouble,
    )


def written(value: object) -> str:
    """Return a value of the form as a field holds it."""
    return "" if value is None else f"{value:g}" if isinstance(value, (int, float)) else str(value)


def changes(form: BoatForm, typed: Mapping[str, str]) -> dict[str, object]:
    """Return what of the fields that were sent differs from the form: text with its unit, None where it was emptied."""
    known = {field: text for field, text in typed.items() if _simple(field)}
    return {field: text or None for field, text in known.items() if text != written(get(form, field))}


def widest(form: BoatForm, fit: Fit) -> float:
    """Return how far to either side the shaft may be tried (mm)."""
    filled = {one.field: one.value for one in fit.filled}
    found = form.transom.width_top_mm or filled.get("transom.width_top_mm")
    half = float(found) / 2 if isinstance(found, (int, float)) else WIDEST_MM / 2
    return float(round(min(max(half, 100.0), WIDEST_MM)))
