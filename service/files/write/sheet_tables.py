"""The tables of a fit sheet."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from reportlab.platypus import Flowable

from service.core.answer import Answer, Suggestion
from service.core.answer.labels import label
from service.core.answer.speech import Speech
from service.core.boat import BoatForm, Method, Obstacle, get, title
from service.core.catalogue import Catalogue
from service.core.fit import Fit, Placement
from service.files.write.paper import gap, items, table, text

DASH = "\N{EN DASH}"
MEASURED = (
    "boat.loa_mm", "boat.lwl_mm", "boat.beam_mm", "boat.draft_mm", "boat.displacement_kg", "boat.hull_material", "boat.stern",
    "transom.top_height_mm", "transom.bottom_height_mm", "transom.rake_deg", "transom.width_top_mm",
    "transom.width_waterline_mm", "transom.camber_mm", "transom.thickness_mm", "transom.core_mm", "transom.step_height_mm",
    "transom.step_depth_mm", "transom.step_width_mm", "transom.lower_rake_deg", "transom.post_width_mm", "main_rudder.hung",
    "main_rudder.stock_aft_mm", "main_rudder.leading_edge_aft_mm", "main_rudder.trailing_edge_aft_mm",
    "main_rudder.top_height_mm", "main_rudder.bottom_height_mm", "main_rudder.max_deflection_deg",
)  # fmt: skip
FROM = {"sister_ships": "from sister ships", "neighbours": "from similar boats", "prior": "usual figure"}
STATUS = {"pass": "passes", "fail": "FAILS", "unknown": "not known"}
AXES = (("aft_mm", "aft"), ("starboard_mm", "to starboard"), ("height_mm", "high"))
ENDLESS = "open"
WHOLE_FROM = 100
"""From here on a tenth is not shown."""


def configuration(best: Suggestion, catalogue: Catalogue) -> Flowable:
    """Return the four parts with their codes and what they are."""
    c = best.configuration
    shaft = catalogue.shaft(c.shaft)
    rows = [
        ("Gear", c.gear, catalogue.gear(c.gear).name),
        ("Lower bracket", c.lower, catalogue.bracket(c.lower).name),
        ("Upper bracket", c.upper, catalogue.bracket(c.upper).name),
        ("Shaft", c.shaft, f"{shaft.length_mm:g} mm long"),
    ]
    return table(("part", "code", "what it is"), rows, (0.2, 0.35, 0.45))


def placement(at: Placement) -> Flowable:
    """Return where it sits, each length in mm and in inches."""
    side = "on the centreline" if abs(at.offset_mm) < 0.5 else "starboard" if at.offset_mm > 0 else "port"  # noqa: PLR2004 - mm
    rows = [
        ("Shaft's axis off the centreline", *_both(abs(at.offset_mm)), side),
        ("Shaft's axis aft of the transom's top edge", *_both(at.shaft_aft_mm), "along a level batten"),
        ("Middle of the lower collar", *_both(at.lower_height_mm), "above the water"),
        ("Middle of the upper collar", *_both(at.upper_height_mm), "above the water"),
        ("Lower end of the shaft", *_both(at.shaft_bottom_mm), "above the water"),
        ("Upper end of the shaft", *_both(at.shaft_top_mm), "above the water"),
    ]
    return table(("where", ">mm", ">in", "from where"), rows, (0.42, 0.13, 0.15, 0.3))


def _both(mm: float) -> tuple[str, str]:
    return _minus(f"{mm + 0.0:.0f}"), _minus(f"{mm / 25.4 + 0.0:.2f}")


def measured(form: BoatForm, fit: Fit, catalogue: Catalogue, english: Speech) -> Iterator[Flowable]:
    """Return every measure the fit stands on: what was given and how it was taken, what was filled in and from where."""
    filled = {f.field: f for f in fit.filled}
    rows, bold = [], []
    for path in MEASURED:
        value = get(form, path)
        if value is not None:
            rows.append((_name(path), _shown(path, value), *_how(form, path, catalogue)))
        elif path in filled:
            one = filled[path]
            spread = "" if one.spread is None else f"± {one.spread:.0f}"
            rows.append((_name(path), _shown(path, one.value), f"not given: {FROM[one.from_]}", spread))
            bold.append(len(rows) - 1)
    for what in ("profile", "sections"):
        given = getattr(form.transom, what)
        if given:
            rows.append(
                (
                    title(f"transom.{what}").capitalize(),
                    f"{len(given)} heights",
                    *_how(form, f"transom.{what}", catalogue),
                )
            )
    yield (
        table(("what", ">value", "how it was taken", ">±"), rows, (0.46, 0.2, 0.24, 0.1), bold)
        if rows
        else text("Nothing was given.")
    )
    yield text("Set bold on grey: not measured on this boat. ± is one standard deviation.")
    if form.obstacles:
        yield gap()
        yield things(form, fit, english)


def _name(path: str) -> str:
    name = title(path)
    return name[:1].upper() + name[1:]


def _shown(path: str, value: object) -> str:
    if not isinstance(value, (int, float)):
        return str(value).replace("_", " ")
    for suffix, unit in (("_mm", " mm"), ("_deg", "°"), ("_kg", " kg")):
        if path.endswith(suffix):
            return _minus(f"{value:.{0 if abs(value) >= WHOLE_FROM else 1}f}".removesuffix(".0") + unit)
    return f"{value:g}"


def _how(form: BoatForm, path: str, catalogue: Catalogue) -> tuple[str, str]:
    method: Method | None = form.methods.get(path) or form.methods.get("*")
    said = form.uncertainties.get(path)
    kind = path.rsplit("_", 1)[-1]
    if kind not in ("mm", "deg", "kg"):
        return (method or DASH).replace("_", " "), ""
    spread = getattr(catalogue.method(method), kind) if said is None else said / 3**0.5
    return (method or "not said how").replace("_", " "), f"± {spread:.1f}".removesuffix(".0")


def things(form: BoatForm, fit: Fit, english: Speech) -> Flowable:
    """Return what stands on the stern, where, and whether it moves or may go."""
    guessed = {f.field.split(".")[0] for f in fit.filled}
    rows, bold = [], []
    for index, one in enumerate(form.obstacles):
        name = english.put(label(form, f"obstacles[{index}]"))
        where = _where(one)
        if f"obstacles[{index}]" in guessed or not where:
            bold.append(index)
            where = f"{where}; rest in its usual place" if where else "in its usual place"
        rows.append((name[:1].upper() + name[1:], where, _moves(one)))
    return table(("on the stern", "where, mm", "moves, stays"), rows, (0.28, 0.46, 0.26), bold)


def _where(one: Obstacle) -> str:
    told = []
    for axis, word in AXES:
        span = getattr(one, axis)
        if span is not None:
            low, high = (ENDLESS if end is None else _minus(f"{end:g}") for end in span)
            told.append(f"{low} to {high} {word}")
    return "; ".join(told)


def _moves(one: Obstacle) -> str:
    if one.present is False:
        return "is not there"
    words: list[str] = [one.moves or ""]
    words += ["must stay"] if one.keep else ["can come off"] if one.removable else []
    return ", ".join(word for word in words if word)


def case_letters(fit: Fit) -> dict[str, str]:
    """Return a letter for each load case; both sides of one case share it."""
    found: dict[str, str] = {}
    for name in fit.loads.get("cases", {}):
        found.setdefault(_bare(name), chr(ord("A") + len(found)))
    return {name: found[_bare(name)] for name in fit.loads.get("cases", {})}


def _bare(case: str) -> str:
    return (
        case.removesuffix(", to starboard")
        .removesuffix(", to port")
        .removesuffix(" and to starboard")
        .removesuffix(" and to port")
    )


def checks(fit: Fit, letters: Mapping[str, str]) -> Flowable:
    """Return every check with its margin, those of the boat's geometry first; what fails is bold."""
    rows: list[tuple[str, ...]] = []
    bold: list[int] = []
    for check in fit.checks:
        if check.status == "fail":
            bold.append(len(rows))
        what = check.why.split(": ")[0]
        rows.append((
            what[:1].upper() + what[1:], letters.get(check.case, ""), _amount(check.value, check.unit),
            _amount(check.limit, check.unit), _amount(check.margin, check.unit, signed=True), _chance(check.probability),
            STATUS[check.status] if check.binds or check.status != "fail" else "advice",
        ))  # fmt: skip
    heads = ("what is looked at", "case", ">value", ">limit", ">left", ">chance", "status")
    return table(heads, rows, (0.5, 0.05, 0.09, 0.09, 0.11, 0.08, 0.08), bold)


def _amount(value: float | None, unit: str, *, signed: bool = False) -> str:
    if value is None:
        return DASH
    if unit == "1":
        value, unit = 100 * value, "%"
    decimals = 1 if 0 < abs(value) < 10 and unit not in ("%", "mm") else 0  # noqa: PLR2004 - two figures are enough
    return _minus(f"{round(value, decimals) + 0.0:{'+' if signed else ''}.{decimals}f} {unit}")


def _minus(number: str) -> str:
    return number.replace("-", "\N{MINUS SIGN}")


def _chance(share: float | None) -> str:
    if share is None:
        return DASH
    return "> 99 %" if share > 0.99 else "< 1 %" if share < 0.01 else f"{100 * share:.0f} %"  # noqa: PLR2004 - never quite certain


def loads(fit: Fit, letters: Mapping[str, str]) -> Iterator[Flowable]:
    """Return what the sea puts on the blade, case by case, and what the reader must know of it.

    A case to port is the mirror of the one to starboard and is not said twice; cases that load no blade are left out.
    """
    cases: dict[str, dict[str, Any]] = fit.loads.get("cases", {})
    rows: list[tuple[str, ...]] = []
    seen: set[str] = set()
    for name, c in cases.items():
        letter = letters[name]
        if letter in seen or not (c["along_n"] or c["side_n"]):
            continue
        seen.add(letter)
        bare = _bare(name)
        rows.append((
            letter, bare[:1].upper() + bare[1:] + ", either side", f"{c['speed_ms']:.1f}", f"{abs(c['angle_deg']):.0f}°",
            _minus(f"{c['along_n']:.0f}"), f"{abs(c['side_n']):.0f}", f"{abs(c['torque_nm']):.0f}",
        ))  # fmt: skip
    if rows:
        heads = ("case", "what it is", ">speed, m/s", ">angle", ">aft, N", ">sideways, N", ">twist, N·m")
        yield table(heads, rows, (0.06, 0.38, 0.11, 0.1, 0.11, 0.13, 0.11))
        own = sorted({letters[n] for n, c in cases.items() if not (c["along_n"] or c["side_n"])})
        if own:
            yield text(f"Cases {', '.join(own)}: the gear's own mass thrown about in a seaway, no load on the blade.")
    findings = [str(one)[:1].upper() + str(one)[1:] for one in fit.loads.get("findings", [])]
    if findings:
        yield gap(2)
        yield from items(findings)


def provenance(answer: Answer, mark: str) -> Flowable:
    """Return what it was made from, and how the answer is found again."""
    made = answer.provenance
    names = ", ".join(p.record for p in answer.precedents) or "none"
    rows = [
        (
            "Answer",
            f"{mark}: the beginning of its SHA-256, by which GET /v1/answers/{mark} gives it back; {answer.id or 'not kept'}",
        ),
        ("Records", f"{made.records} in the fleet; brought up: {names}"),
        (
            "Made by",
            f"{made.software}; catalogue {made.catalogue}; likeness weighed by {made.weights}; seed {made.seed}",
        ),
    ]
    return table(("from", "what"), rows, (0.14, 0.86))
