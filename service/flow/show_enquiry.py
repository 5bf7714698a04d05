"""Everything that is known of one enquiry, for whoever works on it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from service.core.answer import Answer
from service.core.boat import BoatForm, get
from service.core.fit.shapes import Filled
from service.core.hulls import Candidates, HullDecision
from service.core.hulls.shapes import HullCandidate
from service.core.reading import Reading
from service.core.record import HullModel
from service.flow.edit_enquiry import CHOSEN
from service.flow.hull_index import known_hulls
from service.flow.read import reading_of
from service.flow.resolve import hull_of
from service.store.enquiries import Enquiry
from service.store.enquiry_steps import Step
from service.store.unit import UnitOfWork


@dataclass(frozen=True)
class ShownEnquiry:
    """`siblings` are the other boats of the same message; `filled` what the last answer took from elsewhere.

    `typed` are the words that values were last written in at the desk, by their fields.
    """

    enquiry: Enquiry
    reading: Reading
    steps: tuple[Step, ...]
    hull: HullDecision | None
    siblings: tuple[Enquiry, ...]
    filled: tuple[Filled, ...]
    typed: dict[str, str]


def get_enquiry(uow: UnitOfWork, enquiry_id: str, owner: str | None) -> Enquiry | None:
    """Return an enquiry; None where there is no such one, or where it is another owner's (everybody's where None)."""
    with uow:
        found = uow.enquiries.get(enquiry_id)
    return None if found is None or (owner is not None and found.owner != owner) else found


def show_enquiry(uow: UnitOfWork, enquiry: Enquiry) -> ShownEnquiry:
    """Return all there is of it, read on one moment of the database."""
    with uow:
        steps = uow.steps.of(enquiry.id)
        same = uow.enquiries.in_thread([enquiry.message_id]) if enquiry.message_id else ()
        siblings = tuple(one for one in same if one.owner == enquiry.owner and one.id != enquiry.id)
        hull = hull_decided(known_hulls(uow), enquiry, steps, _model(uow, enquiry.hull))
        reading = reading_of(uow, enquiry)
        return ShownEnquiry(enquiry, reading, steps, hull, siblings, _filled(uow, enquiry, steps), typed_in(steps))


def hull_decided(
    index: Candidates, enquiry: Enquiry, steps: Sequence[Step], chosen: HullModel | None
) -> HullDecision | None:
    """Return what the boat is taken for: what somebody at the desk chose, else what her name says.

    `chosen` is the model that the enquiry names. A choice holds until her name is changed.
    """
    found = hull_of(index, enquiry.form)
    step = choice(steps)
    if enquiry.hull == (found.model.id if found and found.model else None) or (enquiry.hull is None and step is None):
        return found
    others = found.alternatives if found else ()
    if found and found.model:
        others = (HullCandidate(model=found.model, probability=found.probability, saw=found.saw), *others)
    why = f"chosen by {step.who} at the desk on {step.at:%Y-%m-%d}" if step else "as it was taken for earlier"
    if chosen is None:
        return HullDecision(status="unknown", model=None, probability=0.0, alternatives=others, why=why)
    return HullDecision(status="matched", model=chosen, probability=1.0, alternatives=others, why=why)


def choice(steps: Sequence[Step]) -> Step | None:
    """Return the step that chose the hull model; None where her name has been changed since, or nobody chose."""
    found, name = None, None
    for step in steps:
        if step.form is None:
            continue
        now = (step.form.boat.model, step.form.boat.builder, step.form.boat.year)
        if (step.said or "").startswith(CHOSEN):
            found = step
        elif now != name or step.hull != (found.hull if found else step.hull):
            found = None
        name = now
    return found


def typed_in(steps: Sequence[Step]) -> dict[str, str]:
    """Return the words that values were written in at the desk, as far as the values still stand."""
    found: dict[str, str] = {}
    last: BoatForm | None = None
    for step in steps:
        if step.form is None:
            continue
        if last is not None:
            found = {path: text for path, text in found.items() if _same(last, step.form, path)}
        if step.did == "edited" and step.said and not step.said.startswith(CHOSEN):
            found |= {
                field: text for field, cut, text in (line.partition(" = ") for line in step.said.split("\n")) if cut
            }
        last = step.form
    return found


def _same(one: BoatForm, other: BoatForm, path: str) -> bool:
    try:
        return bool(get(one, path) == get(other, path))
    except KeyError:
        return False


def _model(uow: UnitOfWork, hull: str | None) -> HullModel | None:
    return uow.hulls.among([hull]).get(hull) if hull else None


def _filled(uow: UnitOfWork, enquiry: Enquiry, steps: Sequence[Step]) -> tuple[Filled, ...]:
    """Return what the answer to the form as it stands took from elsewhere; nothing where none was worked out yet."""
    draft = uow.steps.draft(enquiry.id)
    if draft is not None and draft.version == enquiry.version:
        return _of(draft.document)
    kept = () if any(step.form for step in steps) else uow.answers.of(enquiry.id)
    document = uow.answers.get(kept[-1]) if kept else None
    return _of(document) if document else ()


def _of(document: str) -> tuple[Filled, ...]:
    answer = Answer.model_validate_json(document)
    return answer.suggestions[0].fit.filled if answer.suggestions else ()
