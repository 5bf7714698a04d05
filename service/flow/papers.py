"""Everything that leaves with an answer, by name: the reply, and what is drawn and listed."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import dataclass

from service.core.answer import Answer, Draft, Suggestion, as_text
from service.core.answer.reply import called, reply
from service.core.catalogue import Catalogue
from service.core.drawing.lengths import on_letter
from service.files.read.messages import speak
from service.files.write.eml import Recipient, Thread, write_eml, write_html
from service.flow.beside import Copy, beside
from service.flow.draw import Drawing, draw_file, files_of
from service.flow.reckon import Reckoner
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
    shown: Drawing | None

    @property
    def best(self) -> Suggestion | None:
        """Return the best suggestion, None where there is none."""
        return self.answer.suggestions[0] if self.answer.suggestions else None

    @property
    def boat(self) -> str:
        """Return what the boat is called on papers: her model, and her own name."""
        own = self.answer.form.boat.name
        model = called(self.answer) or "A boat without a model"
        return f"{model}, {own}" if own else model

    @property
    def letter(self) -> bool:
        """Say whether the paper is Letter and not A4."""
        return on_letter(self.answer.form.enquiry.country)


def papers(uow: UnitOfWork, answer: Answer, *, aside: Copy | None = None) -> Iterator[Paper]:
    """Yield every paper of an answer, in the order of `NAMES`; what there is nothing to put on is left out.

    `aside` is a copy of this process whose reckoner says what there is to draw.
    """
    made = _material(uow, answer, None, aside)
    pages = beside(lambda: tuple(_named(made, PDFS)))
    here = {one.name: one for one in _named(made, [name for name in NAMES if name not in PDFS])}
    found = here | {one.name: one for one in pages()}
    yield from (found[name] for name in NAMES if name in found)


def _named(made: Material, names: Collection[str]) -> Iterator[Paper]:
    """Yield those papers of the material that are named, in the order of `names`."""
    drawn = {one.name: one for one in files_of(made.shown, names)} if made.shown else {}
    for name in names:
        one = drawn.get(name)
        found = Paper(one.name, one.media, one.content) if one else _made(made, name) if name in _MAKERS else None
        if found is not None:
            yield found


def load_writers() -> None:
    """Load what the papers are written with: most of it is large, and is otherwise loaded by the first that needs it."""
    import service.files.write.dxf  # noqa: PLC0415 - loading is what is asked for
    import service.files.write.packing  # noqa: PLC0415 - the same
    import service.files.write.sheet_pdf  # noqa: PLC0415 - the same
    import service.files.write.template_pdf  # noqa: F401, PLC0415 - the same


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


def _material(uow: UnitOfWork, answer: Answer, language: str | None, aside: Copy | None = None) -> Material:
    asked = answer.form.enquiry
    speech = speak(language or asked.language, asked.country)
    return Material(
        answer=answer,
        catalogue=uow.catalogues.get(answer.provenance.catalogue),
        enquiry=uow.enquiries.get(answer.enquiry) if answer.enquiry else None,
        mark=mark_of(uow, answer),
        draft=reply(answer, speech),
        shown=Reckoner(uow, aside).draw(answer),
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
    return write_eml(made.draft, Recipient(contact.name, contact.email), thread_of(made.enquiry))


def thread_of(enquiry: Enquiry | None) -> Thread | None:
    """Return the mail an enquiry came as, None where it came another way. A mail's text begins with its subject."""
    if enquiry is None or enquiry.message_id is None:
        return None
    first, gap, _ = enquiry.source.partition("\n\n")
    told = gap and "\n" not in first and len(first) <= LONGEST_SUBJECT
    return Thread(enquiry.message_id, first if told else None)


def _sheet(made: Material) -> bytes | None:
    from service.files.write.sheet_pdf import Sheet, write_sheet  # noqa: PLC0415 - the PDF writer is large

    if made.best is None or made.catalogue is None:
        return None
    views = made.shown.views if made.shown else ()
    return write_sheet(
        Sheet(
            made.answer, made.best, made.catalogue, made.mark, made.boat, views, speak("en", "GB"), letter=made.letter
        )
    )


def _packed(how: str) -> Callable[[Material], bytes | None]:
    """Return what makes one of the warehouse's lists: none where nothing fits and so nothing is shipped."""

    def make(made: Material) -> bytes | None:
        from service.files.write import packing  # noqa: PLC0415 - the PDF writer is large
        from service.files.write.sheet_metal import owner_buys  # noqa: PLC0415 - the same

        if made.best is None or made.catalogue is None or made.best.fit.verdict == "does_not_fit":
            return None
        origin = f"catalogue {made.catalogue.version}. Answer {made.mark}"
        fit, asked = made.best.fit, made.answer.form.enquiry
        what = packing.Packing(
            fit.configuration, fit.parts, made.catalogue, made.boat, origin,
            going_to=", ".join(filter(None, (asked.dealer or made.answer.form.contact.name, asked.country, asked.reference))),
            not_shipped=owner_buys(fit),
            letter=made.letter,
        )  # fmt: skip
        written: bytes = getattr(packing, how)(what)
        return written

    return make


DRAWINGS = (
    "drawing.svg", "side.svg", "stern.svg", "plan.svg", "lower-plate.svg", "upper-plate.svg", "drawing.dxf", "template.pdf",
    "lower-pad.stl", "upper-pad.stl",
)  # fmt: skip
_MAKERS: Mapping[str, tuple[str, Callable[[Material], bytes | None]]] = {
    "reply.txt": ("text/plain; charset=utf-8", _text),
    "reply.html": ("text/html; charset=utf-8", _html),
    "reply.eml": ("message/rfc822", _mail),
    "sheet.pdf": ("application/pdf", _sheet),
    "packing.pdf": ("application/pdf", _packed("packing_pdf")),
    "packing.csv": ("text/csv; charset=utf-8", _packed("packing_csv")),
    "picking.csv": ("text/csv; charset=utf-8", _packed("picking_csv")),
    "prices.csv": ("text/csv; charset=utf-8", _packed("prices_csv")),
    "packing.xlsx": ("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", _packed("packing_xlsx")),
}
NAMES = (*_MAKERS, *DRAWINGS)
PDFS = ("sheet.pdf", "template.pdf")
"""Half of the work, by the clock."""
