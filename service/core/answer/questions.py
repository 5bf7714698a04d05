"""What is missing, and which question is worth asking: the one that settles most first, at most three."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np

from service.core.answer import labels
from service.core.answer.shapes import Missing
from service.core.answer.speech import Amount, Said, mm, said
from service.core.boat import BoatForm
from service.core.hulls import HullDecision
from service.core.reading.shape import Doubt, Reading

if TYPE_CHECKING:
    from service.core.fit.boats import Boats
    from service.core.fit.engine import Fitted

MOST_QUESTIONS = 3
BINS = 5
WORTH_ASKING = 0.01
"""A field that neither raises the best fit's probability nor carries a share of the doubt this large is not asked."""
ASKABLE = (
    "transom.top_height_mm", "transom.rake_deg", "transom.bottom_height_mm", "main_rudder.hung",
    "main_rudder.trailing_edge_aft_mm", "transom.width_top_mm", "transom.thickness_mm", "boat.displacement_kg",
    "transom.step_height_mm", "transom.step_depth_mm", "transom.camber_mm", "transom.width_waterline_mm",
    "transom.post_width_mm", "main_rudder.stock_aft_mm", "boat.stern",
)  # fmt: skip
"""In the order in which they matter for a fit where nothing else decides."""


def missing(boats: Boats, fitted: Sequence[Fitted], hull: HullDecision | None) -> tuple[Missing, ...]:
    """Return what nobody stated and the fit has to guess, what settles most first.

    settles = E[best probability once answered] less the best today: the draws are sorted into equal parts by the
    field's value, the best configuration is taken in each, and the parts averaged.
    """
    guessed = {f.field for f in boats.factors if f.source != "measured"} | set(boats.unknown)
    guessed |= {f.field for f in boats.filled}
    doubt = {d.field: d.share for d in fitted[0].fit.doubt} if fitted else {}
    rows = []
    for place, field in enumerate(ASKABLE):
        if field in guessed:
            rows.append((_settles(boats, fitted, field), doubt.get(field, 0.0), -place, field))
    for index in range(len(boats.form.obstacles)):
        field = f"obstacles[{index}]"
        if any(g.startswith(field + ".") for g in guessed):
            axes = [g for g in guessed if g.startswith(field + ".") and g in boats.drawn]
            gain = max((_settles(boats, fitted, axis) for axis in axes), default=0.0)
            rows.append((gain, doubt.get(field, 0.0), -len(ASKABLE), field))
    if hull is None or hull.status != "matched":
        rows.append((0.0, 0.0, 1, "boat.model"))
    rows.sort(reverse=True)
    return tuple(
        Missing(field=field, why=_why(boats, field, share), settles=round(gain, 4)) for gain, share, _, field in rows
    )


def _settles(boats: Boats, fitted: Sequence[Fitted], field: str) -> float:
    values = boats.drawn.get(field)
    if values is None or not fitted or float(np.ptp(values)) == 0.0:
        return 0.0
    passes = np.stack([one.passes for one in fitted]).astype(float)
    today = float(passes.mean(axis=1).max())
    parts = np.array_split(np.argsort(values, kind="stable"), BINS)
    answered = sum(float(passes[:, part].mean(axis=1).max()) * part.size for part in parts) / values.size
    return max(0.0, answered - today)


def _why(boats: Boats, field: str, share: float) -> str:
    if field == "boat.model":
        return "not known which hull model this is; sister ships would tell much of the rest"
    if field == "transom.thickness_mm":
        return "bolt lengths cannot be given without it"
    filled = next((f for f in boats.filled if f.field.startswith(field)), None)
    source = {"sister_ships": "sister ships", "neighbours": "similar boats", "prior": "what is usual"}
    taken = f"taken from {source[filled.from_]}" if filled else "not known"
    part = f"; it carries {100 * share:.0f} % of the doubt" if share >= WORTH_ASKING else ""
    return taken + part


EXACT: dict[str, float] = {
    "transom.top_height_mm": 10, "transom.rake_deg": 1, "transom.bottom_height_mm": 20, "transom.width_top_mm": 20,
    "transom.width_waterline_mm": 30, "transom.thickness_mm": 2, "transom.camber_mm": 5, "transom.step_height_mm": 10,
    "transom.step_depth_mm": 10, "transom.step_width_mm": 20, "transom.post_width_mm": 2,
    "main_rudder.trailing_edge_aft_mm": 20, "main_rudder.stock_aft_mm": 20, "boat.displacement_kg": 200,
    "obstacle_mm": 20,
}  # fmt: skip
"""How exactly a thing has to be measured to be of use (common practice, no source)."""
WORTH_A_WORD = ("contradictory", "sign_unknown", "unit_unknown", "other_datum", "ambiguous")
"""Doubts that a question settles; what was taken back or is of another boat is asked for like anything missing."""


def ask(
    form: BoatForm, missing_: Sequence[Missing], hull: HullDecision | None, doubts: Sequence[Doubt] = ()
) -> tuple[Said, ...]:
    """Return at most three questions: what the message left in doubt, which hull, then what settles most."""
    asked = [of_doubt(form, one) for one in doubts if one.why in WORTH_A_WORD]
    settled = {one.field for one in doubts if one.why in WORTH_A_WORD}
    if hull is not None and hull.status == "several":
        asked.append(said("ask-hull", names=tuple(dict.fromkeys(str(a.model) for a in hull.alternatives))))
    for one in missing_:
        if one.field == "boat.model":
            if hull is None or (hull.status == "unknown" and not hull.alternatives):
                asked.append(said("ask-boat-model"))
            continue
        if one.field in settled:
            continue
        if (one.settles or 0.0) < WORTH_ASKING and "%" not in one.why and one.field != "transom.thickness_mm":
            continue
        asked.append(question(form, one.field))
    alone = {one.model_dump_json(): one for one in asked}
    return tuple(alone.values())[:MOST_QUESTIONS]


def of_reading(reading: Reading) -> dict[str, Said]:
    """Return at most three questions by the field they ask for, before anything is fitted.

    First what the message left in doubt, then what is missing, in the order of the reading; of several boats about the first.
    """
    if reading.form is None:
        return {}
    key_fields = {one.field for one in reading.missing}
    asked: dict[str, Said] = {}
    for doubt in reading.doubts if reading.boats == 1 else ():
        if doubt.why in WORTH_A_WORD and doubt.field in key_fields:
            asked.setdefault(doubt.field, of_doubt(reading.form, doubt))
    for one in reading.missing:
        asked.setdefault(one.field, question(reading.form, one.field))
    return dict(list(asked.items())[:MOST_QUESTIONS])


def question(form: BoatForm, field: str) -> Said:
    """Return the question for a field: what, how it is measured, and how exactly."""
    if field == "obstacles":
        return said("ask-obstacles", exact=mm(EXACT["obstacle_mm"]))
    if field.startswith("obstacles["):
        return said("ask-obstacle", thing=labels.thing_at(form, field), exact=mm(EXACT["obstacle_mm"]))
    if field not in EXACT:
        return said("ask-" + labels.key(field))
    return said("ask-" + labels.key(field), exact=Amount(value=EXACT[field], unit=field.rsplit("_", 1)[-1]))


def of_doubt(form: BoatForm, doubt: Doubt) -> Said:
    """Return the question for something said that stays out of the form, with the writer's own words."""
    values = tuple(labels.value_of(doubt.field, value) for value in doubt.values)
    name = labels.label(form, doubt.field)
    if doubt.why == "contradictory" and len(values) > 1:
        return said("ask-doubt-contradictory", field=name, values=values)
    return said(f"ask-doubt-{'ambiguous' if doubt.why == 'contradictory' else doubt.why}", field=name, text=doubt.text)
