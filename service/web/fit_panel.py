"""What there would be to answer to an enquiry, as pages show it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from fastapi import Request
from starlette.responses import Response

from service.core.answer import Answer, Suggestion
from service.core.answer.asking import askable
from service.core.boat import BoatForm
from service.core.fit import Fit
from service.files.read.messages import LANGUAGES
from service.files.write.eml import Worded
from service.flow.draft_letters import question_letter, reply_letter
from service.flow.draw_fit import FitViews, catalogue_of, draw_fit
from service.flow.known import NoCatalogueError
from service.flow.offer_papers import offered
from service.flow.show_enquiry import get_enquiry
from service.flow.sign_in import Visitor
from service.flow.working_answer import working_answer
from service.store.enquiries import Enquiry
from service.store.enquiry_steps import Step
from service.store.unit import UnitOfWork
from service.web import fit_view
from service.web.desk import Desk
from service.web.faults import NotFound
from service.web.pages import ROOT, page
from service.web.who import owner_of

NAMES = {
    "en": "English", "da": "Danish", "de": "German", "es": "Spanish", "fr": "French", "it": "Italian", "nl": "Dutch",
    "no": "Norwegian", "sv": "Swedish",
}  # fmt: skip


@dataclass(frozen=True)
class Sent:
    """An answer that was frozen: the step it went out with, where it did here, and whether that was taken back."""

    answer: str
    step: Step | None
    back: Step | None


@dataclass(frozen=True)
class Outcome:
    """What came of changing something. `kind`: the suggestion itself, other measurements, or another place."""

    kind: Literal["best", "tried", "placed"]
    form: BoatForm
    fit: Fit
    before: Fit | None
    views: FitViews | None
    rows: tuple[fit_view.Row, ...]
    binding: fit_view.Row | None
    changes: Mapping[str, object]


@dataclass(frozen=True)
class Panel:
    """What there would be to answer. `answer` is None while that has still to be worked out (or cannot be: `trouble`)."""

    enquiry: Enquiry
    answer: Answer | None = None
    look: Suggestion | None = None
    outcome: Outcome | None = None
    inputs: tuple[fit_view.Input, ...] = ()
    widest: float = 0.0
    reply: Worded | None = None
    asking: Worded | None = None
    askable: Mapping[str, str] = field(default_factory=dict)
    asked: tuple[str, ...] = ()
    papers: tuple[tuple[str, str], ...] = ()
    sent: tuple[Sent, ...] = ()
    trouble: str = ""
    languages: Mapping[str, str] = field(default_factory=lambda: NAMES)
    place_words = staticmethod(fit_view.place_words)
    check_rows = staticmethod(fit_view.rows)
    amount = staticmethod(fit_view.amount)
    titled = staticmethod(fit_view.titled)

    @property
    def at(self) -> str:
        """Return the path of the enquiry."""
        return f"{ROOT}/enquiries/{self.enquiry.id}"


@dataclass(frozen=True)
class Wanted:
    """What somebody looks at: which suggestion, in which language, which questions; what they typed and what came of it."""

    look: int = 1
    language: str | None = None
    ask: tuple[str, ...] | None = None
    typed: Mapping[str, str] = field(default_factory=dict)
    faults: Mapping[str, str] = field(default_factory=dict)
    outcome: Outcome | None = None
    reply: Worded | None = None
    asking: Worded | None = None
    trouble: str = ""


def mine(here: Desk, by: Visitor, enquiry_id: str) -> Enquiry:
    """Return an enquiry that somebody may see. NotFound where there is none, or where it is another dealer's."""
    found = get_enquiry(here.store.reading(), enquiry_id, owner_of(by))
    if found is None:
        raise NotFound("There is no such enquiry.")
    return found


def worked(here: Desk, enquiry: Enquiry, wanted: Wanted) -> Panel:
    """Return the answer, worked out where it has to be, as pages show it."""
    try:
        answer = working_answer(here.store, enquiry)
    except NoCatalogueError:
        said = "There is no catalogue yet, so nothing can be fitted. Load one: transom catalogue load FILE"
        return Panel(enquiry, trouble=said)
    with here.store.reading() as uow:
        return filled(uow, enquiry, answer, wanted)


def filled(uow: UnitOfWork, enquiry: Enquiry, answer: Answer, wanted: Wanted) -> Panel:
    """Return all that the panel shows of an answer."""
    look = looked_at(answer, wanted.look)
    outcome = wanted.outcome or (_suggested(uow, answer, look) if look else None)
    fields = tuple(askable(answer))
    language = wanted.language if wanted.language in LANGUAGES else None
    asked = wanted.ask
    return Panel(
        enquiry=enquiry,
        answer=answer,
        look=look,
        outcome=outcome,
        inputs=fit_view.inputs(answer.form, look.fit, answer.missing, wanted.typed, wanted.faults) if look else (),
        widest=fit_view.widest(answer.form, look.fit) if look else 0.0,
        reply=wanted.reply or reply_letter(answer, language),
        asking=wanted.asking or question_letter(answer, asked, language),
        askable={name: fit_view.question_title(answer.form, name) for name in fields},
        asked=_first_asked(answer) if asked is None else asked,
        papers=offered(answer),
        sent=_sent(uow, enquiry),
        trouble=wanted.trouble,
    )


def _first_asked(answer: Answer) -> tuple[str, ...]:
    """Return the fields of the questions that the reply asks by itself."""
    return tuple(name for name, one in askable(answer).items() if one in answer.asked)


def looked_at(answer: Answer, rank: int) -> Suggestion | None:
    """Return the suggestion of a rank, the best where there is none of it."""
    return next((s for s in answer.suggestions if s.rank == rank), next(iter(answer.suggestions), None))


def _suggested(uow: UnitOfWork, answer: Answer, look: Suggestion) -> Outcome:
    catalogue = catalogue_of(uow, answer)
    views = draw_fit(answer.form, look.fit, catalogue) if catalogue else None
    return Outcome("best", answer.form, look.fit, None, views, fit_view.rows(look.fit), fit_view.binding(look.fit), {})


def _sent(uow: UnitOfWork, enquiry: Enquiry) -> tuple[Sent, ...]:
    steps = uow.steps.of(enquiry.id)
    went = {s.answer: s for s in steps if s.did == "sent"}
    back = {s.answer: s for s in steps if s.did == "undone" and s.answer}
    return tuple(Sent(one, went.get(one), back.get(one)) for one in reversed(uow.answers.of(enquiry.id)))


def shown(request: Request, made: Panel, *, status: int = 200, part: str = "fits/panel.html") -> Response:
    """Return the page, or its part where a script asks; what is wrong takes the place of the whole panel."""
    response = page(request, "fits/page.html", status=status, part=part, panel=made)
    if status >= 400:  # noqa: PLR2004 - not taken
        response.headers["HX-Retarget"], response.headers["HX-Reswap"] = "#fits", "outerHTML"
    return response


def whole(text: str, otherwise: int = 1) -> int:
    """Return a whole number as it was sent, another where it is none."""
    return int(text) if text.isascii() and text.isdecimal() and len(text) < 9 else otherwise  # noqa: PLR2004 - a number of steps
