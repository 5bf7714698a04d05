"""The whole job: read what came in, take it for a boat, recall, fit, answer, and keep what was asked and answered."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from service.core.answer import Answer, Answers, compose
from service.core.boat import BoatForm
from service.core.form import merged
from service.core.reading import Reading
from service.core.reading.letter import Letter
from service.files.read.enquiry import read_enquiry
from service.flow.known import gather
from service.flow.read import from_form, from_letter
from service.flow.resolve import hull_of
from service.store.unit import Store, UnitOfWork


@dataclass(frozen=True)
class Arrived:
    """What came in: as a letter where it is one, its text, and when."""

    letter: Letter | None
    text: str
    received: datetime


def answer_file(store: Store, data: bytes, name: str, *, now: datetime, seed: int = 1, keep: bool = True) -> Answers:
    """Return the answers to a mail, a text or a boat form, one a boat; none where it asks nothing.

    Worked out on one moment of the database without holding anybody up; `keep` then writes enquiry and answer.
    Raises as `read_file` and `gather` do.
    """
    got = read_enquiry(data, name)
    letter = got if isinstance(got, Letter) else None
    with store.reading() as uow:
        reading = from_letter(uow, got) if isinstance(got, Letter) else from_form(got)
        if not reading.is_enquiry:
            return Answers(is_enquiry=False, kind=reading.kind, answers=())
        answers = _worked_out(uow, reading, letter, seed)
    if keep:
        form = reading.form or BoatForm()
        received = (letter.date if letter else None) or form.enquiry.received or now
        text = letter.text if letter else data.decode("utf-8", "replace")
        with store.writing() as uow:
            answers = [_keep(uow, one, boat, Arrived(letter, text, received)) for boat, one in enumerate(answers)]
            uow.commit()
    return Answers(is_enquiry=True, kind=reading.kind, answers=tuple(answers))


def _worked_out(uow: UnitOfWork, reading: Reading, letter: Letter | None, seed: int) -> list[Answer]:
    shelf = gather(uow)
    doubts = tuple(reading.questions) if reading.doubts else ()
    answers = []
    for boat, said in enumerate(reading.forms):
        form = _with_earlier(uow, letter, boat, said)
        answers.append(compose(form, hull_of(shelf.index, form), shelf.known, doubts=doubts, seed=seed))
    return answers


def _with_earlier(uow: UnitOfWork, letter: Letter | None, boat: int, form: BoatForm) -> BoatForm:
    """Return the form with gaps filled by what the same boat's earlier mails of this thread said."""
    if letter is None:
        return form
    before = [m for m in letter.thread if m != letter.message_id]
    for earlier in reversed(uow.enquiries.in_thread(before)):
        if earlier.boat == boat:
            form = merged(form, earlier.form)
    return form


def _keep(uow: UnitOfWork, answer: Answer, boat: int, arrived: Arrived) -> Answer:
    enquiry = uow.enquiries.add(
        answer.form,
        source=arrived.text,
        received=arrived.received,
        message_id=arrived.letter.message_id if arrived.letter else None,
        boat=boat,
        hull=answer.hull.model.id if answer.hull and answer.hull.model else None,
    )
    named = answer.model_copy(update={"enquiry": enquiry, "id": uow.answers.new_id()})
    uow.answers.add(enquiry, named.model_dump_json(by_alias=True), answer_id=named.id)
    return named
