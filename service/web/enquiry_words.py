"""Words for values, hull models and steps of an enquiry."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from service.core.boat import BoatForm
from service.core.form_changes import form_changes
from service.core.hulls import HullDecision
from service.core.hulls.shapes import Evidence
from service.core.reading.shape import Doubt
from service.core.record import HullModel
from service.core.revision import Change
from service.flow.take_in import CAME_FROM, GOES_ON
from service.store.enquiry_steps import Step
from service.web.boat_fields import UNITS, shown

DID = {
    "opened": "took it up", "edited": "changed it", "undone": "took that back", "asked": "asked the writer",
    "sent": "sent the answer", "copied": "copied it", "noted": "noted", "closed": "closed it", "reopened": "opened it again",
}  # fmt: skip
_DOUBTS = {
    "contradictory": "said twice, and not alike", "withdrawn": "taken back", "sign_unknown": "which way is not said",
    "unit_unknown": "the unit is not said", "other_boat": "of another boat", "other_datum": "counted from something else",
    "ambiguous": "can be read in two ways",
}  # fmt: skip


@dataclass(frozen=True)
class Candidate:
    """A hull model to choose; no `probability` where nobody reckoned one."""

    model: HullModel
    probability: float | None
    saw: Sequence[Evidence] = ()


@dataclass(frozen=True)
class Past:
    """One step of the history as people read it; `leads` is the enquiry that it speaks of."""

    step: Step
    did: str
    changes: tuple[Change, ...]
    said: str | None
    leads: str | None = None


def doubt_said(doubt: Doubt) -> str:
    """Return why something stays out of the form."""
    return _DOUBTS[doubt.why]


def written(value: object, field: str = "") -> str:
    r"""Return a value of any field for people, lists on one line.

    >>> written(977.9, "transom.top_height_mm"), written(None), written([{"kind": "ladder", "keep": True}])
    ('977.9\u202fmm', 'not said', 'ladder (keep yes)')
    >>> written(-23.0, "transom.rake_deg"), written(1992, "boat.year")
    ('\u221223°', '1992')
    """
    if value is None or value == []:
        return "not said"
    if isinstance(value, list):
        return ", ".join(written(item) for item in value)
    if isinstance(value, Mapping):
        kind = str(value.get("kind", ""))
        rest = "; ".join(f"{key} {written(item)}" for key, item in value.items() if key != "kind")
        return f"{kind} ({rest})" if kind else rest
    unit = UNITS.get(field.rpartition("_")[2])  # type: ignore[call-overload]  # any text may be asked for
    if isinstance(value, float | int) and not isinstance(value, bool):
        figure = shown(value).replace("-", "\u2212")
        return figure + ("" if not unit else unit if unit == "°" else f"\u202f{unit}")
    return shown(value).replace("_", " ")


def years(model: HullModel) -> str:
    """Return the years a model was built in; empty where they are not known.

    >>> years(HullModel(id="a", model="A", first_year=1987)), years(HullModel(id="a", model="A"))
    ('1987 to ?', '')
    """
    if model.first_year is None and model.last_year is None:
        return ""
    return f"{model.first_year or '?'} to {model.last_year or '?'}"


def facts(model: HullModel) -> str:
    """Return what is known of a model, on one line."""
    spoken = [("built", years(model))]
    spoken += [
        (word, f"{value / 1000:.2f} m")
        for word, value in (("long", model.loa_mm), ("wide", model.beam_mm), ("deep", model.draft_mm))
        if value
    ]
    spoken += [("", f"{model.displacement_kg:.0f} kg" if model.displacement_kg else ""), ("stern", model.stern or "")]
    said = [f"{word} {text}".strip().replace("_", " ") for word, text in spoken if text]
    return ", ".join(said) or "nothing more is known of it"


def candidates(
    decision: HullDecision | None, now: HullModel | None, found: HullDecision | None
) -> tuple[Candidate, ...]:
    """Return the models to choose from: what was looked for first, then what her name could mean, each once."""
    listed: dict[str, Candidate] = {}
    for one in (*_of(found), *_of(decision)):
        listed.setdefault(one.model.id, one)
    if now is not None:
        listed.setdefault(now.id, Candidate(now, None))
    return tuple(listed.values())


def _of(decision: HullDecision | None) -> Iterator[Candidate]:
    if decision is None:
        return
    if decision.model is not None:
        yield Candidate(decision.model, decision.probability, decision.saw)
    for one in decision.alternatives:
        yield Candidate(one.model, one.probability, one.saw)


def history(steps: Sequence[Step]) -> tuple[Past, ...]:
    """Return what was done, the last first, with what each step changed of the form before it."""
    forms: list[BoatForm | None] = [None]
    for step in steps:
        forms.append(step.form if step.form is not None else forms[-1])
    past = []
    for step, (before, after) in zip(steps, pairwise(forms), strict=True):
        changed = () if step.form is None or before is None or after is None else form_changes(before, after)
        typed = step.did == "edited" and " = " in (step.said or "")
        words = None if typed else step.said
        tie = next((tie for tie in (GOES_ON, CAME_FROM) if step.did == "noted" and (words or "").startswith(tie)), None)
        leads = None if tie is None or words is None else words.removeprefix(tie)
        past.append(Past(step, DID[step.did], changed, tie or words, leads))
    return tuple(reversed(past))
