"""What went out for an enquiry: questions, answers frozen as sent, taken back, or begun again from."""

from __future__ import annotations

from service.core.answer import Answer
from service.files.write.eml import Worded
from service.flow.refusal import Refused
from service.store.enquiries import Enquiry
from service.store.enquiry_steps import Step
from service.store.unit import UnitOfWork


class ChangedMeanwhile(Refused):
    """The enquiry is no longer what a letter was written about; the letter is not lost."""


def mark_asked(uow: UnitOfWork, enquiry: Enquiry, letter: Worded, *, who: str) -> int:
    """Write down that questions went out, in these words; it is the asker's move. Return the step."""
    with uow:
        _standing(uow, enquiry)
        step = uow.steps.add(enquiry.id, "asked", who=who, said=_words(letter), waits="them")
        uow.commit()
    return step


def send_answer(uow: UnitOfWork, enquiry: Enquiry, answer: Answer, letter: Worded, *, who: str) -> tuple[str, int]:
    """Freeze an answer as sent, with the words it went in; return its id and the step.

    ChangedMeanwhile where the enquiry is no longer the one that `answer` was worked out for.
    """
    with uow:
        _standing(uow, enquiry)
        named = answer.model_copy(update={"enquiry": enquiry.id, "id": uow.answers.new_id()})
        kept = uow.answers.add(enquiry.id, named.model_dump_json(by_alias=True), answer_id=named.id)
        step = uow.steps.add(enquiry.id, "sent", who=who, answer=kept, said=_words(letter), waits="them")
        uow.commit()
    return kept, step


def take_back(uow: UnitOfWork, enquiry: Enquiry, step: int, *, who: str) -> None:
    """Say that the last letter did not go out after all; an answer frozen for it stays as it is.

    Refused where something came after it.
    """
    with uow:
        steps = uow.steps.of(enquiry.id)
        last = steps[-1] if steps else None
        if last is None or last.number != step or last.did not in ("asked", "sent"):
            raise Refused("this cannot be taken back any more: something was done after it. The history shows what")
        what = "the answer" if last.did == "sent" else "the questions"
        uow.steps.add(enquiry.id, "undone", who=who, answer=last.answer, said=f"{what} did not go out", waits="us")
        uow.commit()


def start_again(uow: UnitOfWork, enquiry: Enquiry, answer: Answer, *, who: str) -> int:
    """Make the form what it was when an answer was frozen, for new measurements to go into; return the step."""
    with uow:
        now = uow.enquiries.get(enquiry.id)
        if now is None:
            raise Refused("this enquiry is gone")
        hull = answer.hull.model.id if answer.hull and answer.hull.model else None
        if not any(one.form is not None for one in uow.steps.of(enquiry.id)):
            uow.steps.add(enquiry.id, "opened", who=who, form=now.form, hull=now.hull)
        step = uow.steps.add(enquiry.id, "copied", who=who, form=answer.form, hull=hull, answer=answer.id, waits="us")
        uow.commit()
    return step


def sent_as(steps: tuple[Step, ...], answer_id: str) -> tuple[Step | None, Step | None]:
    """Return the step with which an answer went out, and the one that took it back; None where there is none."""
    mine = [one for one in steps if one.answer == answer_id]
    return next((s for s in mine if s.did == "sent"), None), next((s for s in mine if s.did == "undone"), None)


def _standing(uow: UnitOfWork, enquiry: Enquiry) -> None:
    if uow.steps.version(enquiry.id) != enquiry.version:
        raise ChangedMeanwhile(
            "somebody changed this enquiry meanwhile, so the answer may be another one now. Look at it, then send yours"
        )


def _words(letter: Worded) -> str:
    return f"{letter.subject}\n\n{letter.text}"
