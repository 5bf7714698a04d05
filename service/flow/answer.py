"""The whole job: read what came in, take it for a boat, recall, fit, answer, and keep what was asked and answered."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from service.core.answer import Answer, Answers
from service.core.boat import BoatForm
from service.core.form import merged
from service.core.reading import Reading
from service.core.reading.letter import Letter
from service.files.read.enquiry import read_enquiry
from service.flow.beside import Copy
from service.flow.hull_index import hull_index
from service.flow.read import from_form, from_letter
from service.flow.reckon import Question, Reckoner
from service.flow.resolve import hull_of
from service.store.unit import Store, UnitOfWork


@dataclass(frozen=True)
class Worked:
    """What came in and what there is to answer, before any of it is kept. `letter` is None for a boat form."""

    reading: Reading
    letter: Letter | None
    text: str
    received: datetime
    answers: tuple[Answer, ...]


def answer_file(
    store: Store, data: bytes, name: str, *, now: datetime, seed: int = 1, keep: bool = True, aside: Copy | None = None
) -> Answers:
    """Return the answers to a mail, a text or a boat form, one a boat; none where it asks nothing.

    Worked out on one moment of the database without holding anybody up (`aside`: by that copy's reckoner, on a moment of
    its own); `keep` then writes enquiry and answer. Raises as `read_file` and `gather` do.
    """
    worked = work_out(store, data, name, now=now, seed=seed, aside=aside)
    if not keep or not worked.answers:
        return as_answers(worked, worked.answers)
    with store.writing() as uow:
        kept = keep_answers(uow, worked)
        uow.commit()
    return kept


def work_out(
    store: Store,
    data: bytes,
    name: str,
    *,
    now: datetime,
    seed: int = 1,
    dealer: str | None = None,
    channel: Literal["api", "web"] = "api",
    aside: Copy | None = None,
) -> Worked:
    """Return what is to be answered, and keep nothing.

    `dealer` is who asks, where that is known whatever the message says, and `channel` the way it then came; it speaks
    of no other dealer's mails.
    """
    got = read_enquiry(data, name)
    letter = got if isinstance(got, Letter) else None
    text = letter.text if letter else data.decode("utf-8", "replace")
    with store.reading() as uow:
        reading = from_letter(uow, got) if isinstance(got, Letter) else from_form(got)
        said = (letter.date if letter else None) or (reading.form.enquiry.received if reading.form else None)
        about = {"dealer": dealer, "channel": channel}
        forms = _forms(uow, reading, letter, about) if reading.is_enquiry else []
        index, reckoner = hull_index(uow), Reckoner(uow, aside)
        asked = [Question(form, hull_of(index, form), reading.doubts, seed) for form in forms]
        answers = tuple(map(reckoner.compose, asked))
    return Worked(reading, letter, text, said or now, answers)


def keep_answers(uow: UnitOfWork, worked: Worked, *, owner: str = "") -> Answers:
    """Keep enquiries and answers of `owner` (the maker's own desk where empty) and return them with their ids.

    Whoever began the unit of work commits it.
    """
    kept = tuple(_keep(uow, one, boat, worked, owner) for boat, one in enumerate(worked.answers))
    return as_answers(worked, kept)


def as_answers(worked: Worked, answers: tuple[Answer, ...]) -> Answers:
    """Return `answers/1` of them."""
    return Answers(is_enquiry=worked.reading.is_enquiry, kind=worked.reading.kind, answers=answers)


def _forms(uow: UnitOfWork, reading: Reading, letter: Letter | None, about: Mapping[str, str | None]) -> list[BoatForm]:
    """Return the form of each boat, with what earlier mails said of her and who asks."""
    dealer, forms = about["dealer"], []
    for boat, said in enumerate(reading.forms):
        form = _with_earlier(uow, letter, boat, said, dealer)
        if dealer is not None:
            asked = form.enquiry.model_copy(update=about)
            form = form.model_copy(update={"enquiry": asked})
        forms.append(form)
    return forms


def _with_earlier(uow: UnitOfWork, letter: Letter | None, boat: int, form: BoatForm, dealer: str | None) -> BoatForm:
    """Return the form with gaps filled by what the same boat's earlier mails of this thread said."""
    if letter is None:
        return form
    before = [m for m in letter.thread if m != letter.message_id]
    for earlier in reversed(uow.enquiries.in_thread(before, dealer)):
        if earlier.boat == boat:
            form = merged(form, earlier.form)
    return form


def _keep(uow: UnitOfWork, answer: Answer, boat: int, worked: Worked, owner: str) -> Answer:
    enquiry = uow.enquiries.add(
        answer.form,
        source=worked.text,
        received=worked.received,
        message_id=worked.letter.message_id if worked.letter else None,
        boat=boat,
        hull=answer.hull.model.id if answer.hull and answer.hull.model else None,
        owner=owner,
    )
    named = answer.model_copy(update={"enquiry": enquiry, "id": uow.answers.new_id()})
    uow.answers.add(enquiry, named.model_dump_json(by_alias=True), answer_id=named.id)
    return named
