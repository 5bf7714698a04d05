"""The whole job: read what came in, take it for a boat, recall, fit, answer, and keep what was asked and answered."""

from __future__ import annotations

from datetime import datetime

from service.core.answer import Answer, Answers, compose
from service.core.boat import BoatForm
from service.core.form import merged
from service.core.hulls import HullDecision
from service.core.reading import Reading
from service.core.reading.letter import Letter
from service.files.read.enquiry import read_enquiry
from service.flow.known import gather
from service.flow.read import from_form, from_letter
from service.flow.resolve import hull_of
from service.store.unit import UnitOfWork


def answer_file(uow: UnitOfWork, data: bytes, name: str, *, now: datetime, seed: int = 1, keep: bool = True) -> Answers:
    """Return the answers to a mail, a text or a boat form, one a boat; none where it asks nothing.

    `keep` writes enquiry and answer and commits (the unit of work must be a writing one). Raises as `read_file` and
    `gather` do.
    """
    got = read_enquiry(data, name)
    letter = got if isinstance(got, Letter) else None
    reading = from_letter(uow, got) if isinstance(got, Letter) else from_form(got)
    if not reading.is_enquiry:
        return Answers(is_enquiry=False, kind=reading.kind, answers=())
    shelf = gather(uow)
    answers = []
    for boat, said in enumerate(reading.forms):
        form = _with_earlier(uow, letter, boat, said)
        hull = hull_of(shelf.index, form)
        answer = compose(form, hull, shelf.known, doubts=_doubts(reading), seed=seed)
        if keep:
            received = (letter.date if letter else None) or form.enquiry.received or now
            answer = _keep(uow, answer, letter, boat, data, received, hull)
        answers.append(answer)
    if keep:
        uow.commit()
    return Answers(is_enquiry=True, kind=reading.kind, answers=tuple(answers))


def _with_earlier(uow: UnitOfWork, letter: Letter | None, boat: int, form: BoatForm) -> BoatForm:
    """Return the form with gaps filled by what the same boat's earlier mails of this thread said."""
    if letter is None:
        return form
    before = [m for m in letter.thread if m != letter.message_id]
    for earlier in reversed(uow.enquiries.in_thread(before)):
        if earlier.boat == boat:
            form = merged(form, earlier.form)
    return form


def _doubts(reading: Reading) -> tuple[str, ...]:
    return tuple(reading.questions) if reading.doubts else ()


def _keep(
    uow: UnitOfWork,
    answer: Answer,
    letter: Letter | None,
    boat: int,
    data: bytes,
    received: datetime,
    hull: HullDecision | None,
) -> Answer:
    enquiry = uow.enquiries.add(
        answer.form,
        source=letter.text if letter else data.decode("utf-8", "replace"),
        received=received,
        message_id=letter.message_id if letter else None,
        boat=boat,
        hull=hull.model.id if hull and hull.model else None,
    )
    named = answer.model_copy(update={"enquiry": enquiry, "id": uow.answers.new_id()})
    uow.answers.add(enquiry, named.model_dump_json(by_alias=True), answer_id=named.id)
    return named
