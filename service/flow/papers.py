"""Everything that leaves with an answer, by name: the reply, and what is drawn and listed."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from service.core.answer import Answer, Draft, as_text, reply
from service.core.catalogue import Catalogue
from service.files.read.messages import speak
from service.files.write.eml import Recipient, Thread, write_eml, write_html
from service.flow.draw import draw_file, draw_files
from service.store.enquiries import Enquiry
from service.store.unit import UnitOfWork

MARK = 12
"""How many signs of an answer's hash its papers carry."""
LONGEST_SUBJECT = 250


@dataclass(frozen=True)
class Paper:
    """One document: its name, its media type, its bytes."""

    name: str
    media_type: str
    content: bytes


@dataclass(frozen=True)
class Material:
    """What papers are made from: the answer, the catalogue it was made with, the mail it answers, its mark."""

    answer: Answer
    catalogue: Catalogue | None
    enquiry: Enquiry | None
    mark: str
    draft: Draft


def papers(uow: UnitOfWork, answer: Answer, *, language: str | None = None) -> Iterator[Paper]:
    """Yield every paper of an answer, in the order of `NAMES`; what there is nothing to put on is left out."""
    made = _material(uow, answer, language)
    drawn = {one.name: one for one in draw_files(uow, answer)}
    for name in NAMES:
        one = drawn.get(name)
        found = Paper(one.name, one.media, one.content) if one else _made(made, name) if name in _MAKERS else None
        if found is not None:
            yield found


def paper(uow: UnitOfWork, answer: Answer, name: str, *, language: str | None = None) -> Paper | None:
    """Return one paper, None where this answer has none of that name. KeyError for a name that no paper has.

    `language` (BCP 47) is for the reply; without it the enquirer's own is taken.
    """
    if name in _MAKERS:
        return _made(_material(uow, answer, language), name)
    if name not in DRAWINGS:
        raise KeyError(name)
    one = draw_file(uow, answer, name)
    return None if one is None else Paper(one.name, one.media, one.content)


def mark_of(uow: UnitOfWork, answer: Answer) -> str:
    """Return the mark by which an answer is looked up: the beginning of its document's SHA-256, as it was kept."""
    kept = uow.answers.hash_of(answer.id) if answer.id else None
    return (kept or hashlib.sha256(answer.model_dump_json(by_alias=True).encode()).hexdigest())[:MARK]


def _material(uow: UnitOfWork, answer: Answer, language: str | None) -> Material:
    asked = answer.form.enquiry
    speech = speak(language or asked.language, asked.country)
    return Material(
        answer=answer,
        catalogue=uow.catalogues.get(answer.provenance.catalogue),
        enquiry=uow.enquiries.get(answer.enquiry) if answer.enquiry else None,
        mark=mark_of(uow, answer),
        draft=reply(answer, speech),
    )


def _made(made: Material, name: str) -> Paper | None:
    media_type, make = _MAKERS[name]
    content = make(made)
    return None if content is None else Paper(name, media_type, content)


def _text(made: Material) -> bytes:
    return (as_text(made.draft) + "\n").encode("utf-8", "replace")


def _html(made: Material) -> bytes:
    return write_html(made.draft).encode("utf-8", "replace")


def _mail(made: Material) -> bytes:
    contact = made.answer.form.contact
    return write_eml(made.draft, Recipient(contact.name, contact.email), _thread(made.enquiry))


def _thread(enquiry: Enquiry | None) -> Thread | None:
    """Return the mail an enquiry came as, None where it came another way. A mail's text begins with its subject."""
    if enquiry is None or enquiry.message_id is None:
        return None
    first, gap, _ = enquiry.source.partition("\n\n")
    told = gap and "\n" not in first and len(first) <= LONGEST_SUBJECT
    return Thread(enquiry.message_id, first if told else None)


DRAWINGS = (
    "drawing.svg", "side.svg", "stern.svg", "plan.svg", "lower-plate.svg", "upper-plate.svg", "drawing.dxf", "template.pdf",
    "lower-pad.stl", "upper-pad.stl",
)  # fmt: skip
_MAKERS: Mapping[str, tuple[str, Callable[[Material], bytes | None]]] = {
    "reply.txt": ("text/plain; charset=utf-8", _text),
    "reply.html": ("text/html; charset=utf-8", _html),
    "reply.eml": ("message/rfc822", _mail),
}
NAMES = (*_MAKERS, *DRAWINGS)
