"""Read a mail, a text or a boat form."""

from __future__ import annotations

from service.core.answer.questions import of_reading
from service.core.boat import BoatForm
from service.core.reading import Reading
from service.core.reading.gaps import gaps
from service.core.reading.letter import Letter
from service.core.reading.reader import read
from service.files.read.enquiry import read_enquiry
from service.files.read.messages import speak
from service.store.enquiries import Enquiry
from service.store.unit import UnitOfWork


def read_file(uow: UnitOfWork | None, data: bytes, name: str) -> Reading:
    """Return what was read; a boat form comes back as a reading with its form. Unreadable or FormError otherwise.

    Without a database names of hull models are found by their look alone.
    """
    got = read_enquiry(data, name)
    return from_form(got) if isinstance(got, BoatForm) else from_letter(uow, got)


def from_letter(uow: UnitOfWork | None, letter: Letter) -> Reading:
    """Return the reading of a letter, with the registry's names to look for."""
    return _asking(read(letter, known_models=() if uow is None else _names(uow)))


def _names(uow: UnitOfWork) -> tuple[str, ...]:
    """Return every name of every hull model; looked up once as long as the registry is the same."""

    def build() -> tuple[str, ...]:
        return tuple(name for hull in uow.hulls.all() for name in (hull.model, str(hull), *hull.aliases))

    with uow:
        stamp = None if uow.writes else uow.hulls.log.mark()  # what is being written may never be committed
        return uow.kept.get("names of hull models", stamp, build)


def reading_of(uow: UnitOfWork, enquiry: Enquiry) -> Reading:
    """Return what a kept enquiry's words say, read again; no forms in it where they say nothing of a boat.

    Of a mail only subject and text are kept, so what its headers told is not among it. A boat form is shown as it came.
    """
    source = enquiry.source
    if source.lstrip().startswith("{"):
        return from_form(enquiry.form).model_copy(update={"text": source})
    head, cut, body = source.partition("\n\n")
    subject = enquiry.message_id is not None and bool(cut) and "\n" not in head
    return from_letter(uow, Letter(body, subject=head) if subject else Letter(source))


def from_form(form: BoatForm) -> Reading:
    """Return a boat form as a reading: nothing was interpreted, so nothing is in evidence."""
    return _asking(
        Reading(
            is_enquiry=True, kind="enquiry", language=form.enquiry.language, text="", boats=1, form=form, forms=(form,),
            missing=gaps(form),
        )
    )  # fmt: skip


def _asking(reading: Reading) -> Reading:
    """Return the reading with its questions, in the writer's language and measures."""
    asked = of_reading(reading)
    country = reading.form.enquiry.country if reading.form else None
    theirs = speak(reading.language, country)
    return reading.model_copy(update={"questions": tuple(map(theirs.sentence, asked.values())), "asks": tuple(asked)})
