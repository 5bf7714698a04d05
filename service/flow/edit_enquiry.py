"""Change an enquiry's form or hull model at the desk: nothing is lost, and anything can be taken back."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from service.core.boat import BoatForm, Contact
from service.core.form_changes import FormClash, brought_together, said
from service.flow.hull_index import known_hulls
from service.flow.refusal import Refused
from service.flow.resolve import hull_of
from service.store.enquiries import Enquiry
from service.store.enquiry_steps import Step, Waits
from service.store.unit import UnitOfWork

CHOSEN = "hull model: "
"""How the words of a step begin that chose one."""
_WAITS: dict[str, Waits] = {"closed": "nobody", "asked": "them", "sent": "them"}


@dataclass(frozen=True)
class EditedEnquiry:
    """Where an enquiry stands now; `step` is None where nothing was changed."""

    version: int
    step: int | None


class EnquiryMoved(Refused):
    """Somebody else has changed it meanwhile. `form` holds both changes, and yours where the two clash."""

    def __init__(self, version: int, form: BoatForm, clashes: Sequence[FormClash], step: Step) -> None:
        """Keep what is needed to choose."""
        super().__init__(f"{step.who} changed this enquiry meanwhile. Nothing was written")
        self.version, self.form, self.clashes, self.step = version, form, tuple(clashes), step


Read = Callable[[BoatForm], BoatForm]
"""Makes the new form of the one that its page was made from."""


def edit_enquiry(
    uow: UnitOfWork, enquiry: Enquiry, read: Read, *, who: str, expect: int, typed: Mapping[str, str] | None = None
) -> EditedEnquiry:
    """Make the form what `read` says, find its hull model again where its name changed, and commit.

    `expect` is the version that the page was made from: EnquiryMoved where it is another by now. `typed` are the words
    that values were written in, by their fields. FormError where the form does not hold.
    """
    with uow:
        now = _standing(uow, enquiry.id)
        steps = uow.steps.of(enquiry.id)
        yours = read(form_at(now, steps, expect))
        if now.version != expect:
            together, clashes = brought_together(form_at(now, steps, expect), now.form, yours)
            raise EnquiryMoved(now.version, together, clashes, steps[-1])
        if said(yours) == said(now.form):
            return EditedEnquiry(now.version, None)
        words = "\n".join(f"{field} = {text}" for field, text in (typed or {}).items()) or None
        return _write(uow, now, yours, _hull_after(uow, now, yours), who=who, words=words)


def choose_hull(uow: UnitOfWork, enquiry: Enquiry, hull: str | None, *, who: str, expect: int) -> EditedEnquiry:
    """Say which hull model it is (None: none of those that are known), and commit. Refused where there is no such one."""
    with uow:
        now = _standing(uow, enquiry.id)
        if now.version != expect:
            raise Refused("somebody changed this enquiry meanwhile. Look at it as it stands now, then choose again")
        model = uow.hulls.get(hull) if hull else None
        if hull and model is None:
            raise Refused("there is no such hull model; it may have been merged. Choose another")
        words = CHOSEN + (str(model) if model else "none of those that are known")
        return _write(uow, now, now.form, model.id if model else None, who=who, words=words)


def undo_step(uow: UnitOfWork, enquiry: Enquiry, step: int, *, who: str) -> EditedEnquiry:
    """Take the last step back, and commit; taking that back brings it again. Refused where another came after it."""
    with uow:
        now = _standing(uow, enquiry.id)
        steps = uow.steps.of(enquiry.id)
        found = next((one for one in steps if one.number == step), None)
        if found is None or now.version != step or found.did not in ("edited", "undone", "closed", "reopened"):
            raise Refused("this cannot be taken back any more: something was done after it. The history shows what")
        before = [one for one in steps if one.number < step]
        waits = waits_after(before)
        if found.form is None:
            number = uow.steps.add(enquiry.id, "undone", who=who, said=f"step {step}", waits=waits)
        else:
            state = next(one for one in reversed(before) if one.form is not None)
            number = uow.steps.add(
                enquiry.id, "undone", who=who, form=state.form, hull=state.hull, said=f"step {step}", waits=waits
            )
        uow.commit()
    return EditedEnquiry(number, number)


def bring_back(uow: UnitOfWork, enquiry: Enquiry, step: int, *, who: str, expect: int) -> EditedEnquiry:
    """Make the form what it was after an earlier step, and commit."""
    with uow:
        now = _standing(uow, enquiry.id)
        found = next((s for s in uow.steps.of(enquiry.id) if s.number == step and s.form is not None), None)
        if found is None or found.form is None or now.version != expect:
            raise Refused("this state cannot be brought back: the enquiry was changed meanwhile. Look at it again")
        return _write(uow, now, found.form, found.hull, who=who, words=f"as after step {step}")


def note_enquiry(uow: UnitOfWork, enquiry: Enquiry, text: str, *, who: str) -> EditedEnquiry:
    """Write something beside it that only the desk reads, and commit."""
    if not text.strip():
        raise Refused("the note is empty; write something")
    with uow:
        number = uow.steps.add(enquiry.id, "noted", who=who, said=text.strip()[:2_000])
        uow.commit()
    return EditedEnquiry(number, number)


def close_enquiry(uow: UnitOfWork, enquiry: Enquiry, *, who: str, closed: bool = True) -> EditedEnquiry:
    """Close it, so that it waits for nobody, or open it again, and commit."""
    with uow:
        if (_standing(uow, enquiry.id).waits == "nobody") == closed:
            return EditedEnquiry(uow.steps.version(enquiry.id), None)
        waits: Waits = "nobody" if closed else "us"
        number = uow.steps.add(enquiry.id, "closed" if closed else "reopened", who=who, waits=waits)
        uow.commit()
    return EditedEnquiry(number, number)


def say_who_asks(uow: UnitOfWork, enquiry: Enquiry, contact: Contact, *, who: str) -> EditedEnquiry:
    """Say who is to be answered, and commit. It stands in no history, so that it can be forgotten."""
    with uow:
        if contact == enquiry.form.contact:
            return EditedEnquiry(enquiry.version, None)
        number = uow.steps.add(
            enquiry.id, "noted", who=who, said="who asks was changed", contact=uow.enquiries.contact(contact)
        )
        uow.commit()
    return EditedEnquiry(number, number)


def form_at(enquiry: Enquiry, steps: Sequence[Step], version: int) -> BoatForm:
    """Return the form as it stood at a version; that of today where nothing changed it since.

    Refused for a version there never was.
    """
    if not 0 <= version <= enquiry.version:
        raise Refused("this page is of another enquiry; open it again")
    kept = [step for step in steps if step.form is not None]
    if not kept:
        return enquiry.form
    before = [step for step in kept if step.number <= version] or kept[:1]
    form = before[-1].form
    return enquiry.form if form is None else form.model_copy(update={"contact": enquiry.form.contact})


def waits_after(steps: Sequence[Step]) -> Waits:
    """Return whose move it is after these steps."""
    last = next((step for step in reversed(steps) if step.did != "noted"), None)
    return "us" if last is None else _WAITS.get(last.did, "us")


def _standing(uow: UnitOfWork, enquiry_id: str) -> Enquiry:
    found = uow.enquiries.get(enquiry_id)
    if found is None:
        raise Refused("this enquiry is gone")
    return found


def _hull_after(uow: UnitOfWork, enquiry: Enquiry, form: BoatForm) -> str | None:
    was, boat = enquiry.form.boat, form.boat
    if (was.model, was.builder, was.year) == (boat.model, boat.builder, boat.year):
        return enquiry.hull
    decision = hull_of(known_hulls(uow), form)
    return decision.model.id if decision and decision.model else None


def _write(
    uow: UnitOfWork, enquiry: Enquiry, form: BoatForm, hull: str | None, *, who: str, words: str | None
) -> EditedEnquiry:
    """Add a step with a form; before the first of them, one with the form as it came."""
    if not any(step.form is not None for step in uow.steps.of(enquiry.id)):
        uow.steps.add(enquiry.id, "opened", who=who, form=enquiry.form, hull=enquiry.hull)
    number = uow.steps.add(enquiry.id, "edited", who=who, form=form, hull=hull, said=words, waits="us")
    uow.commit()
    return EditedEnquiry(number, number)
