"""What goes out for an enquiry: questions, the reply with its papers, answers frozen as sent, and a new start from one."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request
from starlette.responses import Response

from service.core.answer import Answer
from service.files.write.eml import Worded
from service.flow.draft_letters import as_mail, worded
from service.flow.draw_fit import catalogue_of, draw_fit
from service.flow.offer_papers import offered
from service.flow.papers import mark_of, paper
from service.flow.refusal import Refused
from service.flow.send_answer import ChangedMeanwhile, mark_asked, send_answer, sent_as, start_again, take_back
from service.flow.working_answer import working_answer
from service.store.enquiries import Enquiry
from service.store.unit import UnitOfWork
from service.web import fit_view
from service.web.by_page import by_page
from service.web.desk import Desk, Here
from service.web.faults import NotFound
from service.web.fit_panel import Wanted, mine, shown, whole, worked
from service.web.pages import ROOT, Notice, page, redirect
from service.web.posted import Form, Posted
from service.web.who import Selling, actor

routes = APIRouter(prefix="/enquiries")


@routes.post("/{enquiry_id}/ask")
def do_ask(request: Request, here: Here, by: Selling, enquiry_id: str, form: Form) -> Response:
    """Write down that questions went out."""
    enquiry = mine(here, by, enquiry_id)
    try:
        letter = _letter(form)
        _of_this_version(enquiry, form)
        step = mark_asked(here.store.writing(actor(request, by)), enquiry, letter, who=by.who)
    except Refused as error:
        return _again(request, here, enquiry, form, error, asking=_as_typed(form))
    said = "The questions are written down as asked; it is their move"
    return redirect(request, _at(enquiry), Notice(said, undo=f"{_at(enquiry)}/letters/{step}/undo"))


@routes.post("/{enquiry_id}/send")
def do_send(request: Request, here: Here, by: Selling, enquiry_id: str, form: Form) -> Response:
    """Freeze the answer as sent, with the words it went in."""
    enquiry = mine(here, by, enquiry_id)
    try:
        letter = _letter(form)
        _of_this_version(enquiry, form)
        answer = working_answer(here.store, enquiry)
        if form.text("fleet") != answer.provenance.catalogue:
            raise ChangedMeanwhile("the catalogue is another one by now, so the answer may be, too. Look at it again")
        kept, step = send_answer(here.store.writing(actor(request, by)), enquiry, answer, letter, who=by.who)
    except Refused as error:
        return _again(request, here, enquiry, form, error, reply=_as_typed(form))
    notice = Notice("Frozen as sent; it is their move", undo=f"{_at(enquiry)}/letters/{step}/undo")
    return redirect(request, f"{_at(enquiry)}/answers/{kept}", notice)


@routes.post("/{enquiry_id}/reply.eml")
def do_mail(request: Request, here: Here, by: Selling, enquiry_id: str, form: Form) -> Response:
    """Return a letter as a mail to be opened in a mail program and sent from there."""
    enquiry = mine(here, by, enquiry_id)
    try:
        letter = _letter(form)
    except Refused as error:
        return _again(request, here, enquiry, form, error)
    return _file("reply.eml", "message/rfc822", as_mail(enquiry, working_answer(here.store, enquiry), letter))


@routes.post("/{enquiry_id}/letters/{step}/undo")
def do_take_back(request: Request, here: Here, by: Selling, enquiry_id: str, step: int, _: Form) -> Response:
    """Say that the last letter did not go out after all."""
    enquiry = mine(here, by, enquiry_id)
    take_back(here.store.writing(actor(request, by)), enquiry, step, who=by.who)
    return redirect(request, _at(enquiry), "Taken back: it did not go out. What was frozen stays as it is")


@routes.get("/{enquiry_id}/papers/{name}")
def show_paper(here: Here, by: Selling, enquiry_id: str, name: str) -> Response:
    """Return a paper of what there would be to answer, as a file."""
    answer = working_answer(here.store, mine(here, by, enquiry_id))
    with here.store.reading() as uow:
        return _paper(uow, answer, name)


@routes.get("/{enquiry_id}/answers/{answer_id}")
def show_answer(request: Request, here: Here, by: Selling, enquiry_id: str, answer_id: str) -> Response:
    """Show an answer exactly as it went."""
    enquiry = mine(here, by, enquiry_id)
    with here.store.reading() as uow:
        answer = _frozen(uow, enquiry, answer_id)
        step, back = sent_as(uow.steps.of(enquiry.id), answer_id)
        catalogue = catalogue_of(uow, answer)
        best = answer.suggestions[0] if answer.suggestions else None
        views = draw_fit(answer.form, best.fit, catalogue) if best and catalogue else None
        mark = mark_of(uow, answer)
    return page(
        request, "fits/answer.html", enquiry=enquiry, answer=answer, step=step, back=back, mark=mark, best=best, views=views,
        papers=offered(answer) if catalogue else (), rows=fit_view.rows(best.fit) if best else (),
        place_words=fit_view.place_words,
    )  # fmt: skip


@routes.get("/{enquiry_id}/answers/{answer_id}/papers/{name}")
def show_frozen_paper(here: Here, by: Selling, enquiry_id: str, answer_id: str, name: str) -> Response:
    """Return a paper of an answer that went out, as a file."""
    enquiry = mine(here, by, enquiry_id)
    with here.store.reading() as uow:
        return _paper(uow, _frozen(uow, enquiry, answer_id), name)


@routes.post("/{enquiry_id}/answers/{answer_id}/copy")
def do_copy(request: Request, here: Here, by: Selling, enquiry_id: str, answer_id: str, _: Form) -> Response:
    """Begin again from an answer: its form becomes the enquiry's, for new measurements to go into."""
    enquiry = mine(here, by, enquiry_id)
    with here.store.reading() as uow:
        answer = _frozen(uow, enquiry, answer_id)
    start_again(here.store.writing(actor(request, by)), enquiry, answer, who=by.who)
    return redirect(request, _at(enquiry), "The form is what it was for that answer; put the new measurements in")


def _at(enquiry: Enquiry) -> str:
    return f"{ROOT}/enquiries/{enquiry.id}"


def _as_typed(form: Posted) -> Worded:
    return Worded(form.text("language"), form.text("subject"), form.text("text"))


def _letter(form: Posted) -> Worded:
    return worded(form.text("language"), form.text("subject"), form.text("text"))


def _of_this_version(enquiry: Enquiry, form: Posted) -> None:
    if form.text("version") != str(enquiry.version):
        raise ChangedMeanwhile("somebody changed this enquiry meanwhile. Above is what there is to answer now")


def _again(
    request: Request,
    here: Desk,
    enquiry: Enquiry,
    form: Posted,
    error: Refused,
    **typed: Any,  # noqa: ANN401 - the letter as it was typed
) -> Response:
    """Return the page once more with what is wrong, and the letter as it was typed."""
    said = by_page(str(error))
    if isinstance(error, ChangedMeanwhile):
        said += ". Your letter is still below, as you wrote it; take the draft again if it should say what is new"
    wanted = Wanted(look=whole(form.text("look")), trouble=said, **typed)
    status = 409 if isinstance(error, ChangedMeanwhile) else 422
    return shown(request, worked(here, enquiry, wanted), status=status)


def _frozen(uow: UnitOfWork, enquiry: Enquiry, answer_id: str) -> Answer:
    document = uow.answers.get(answer_id) if answer_id in uow.answers.of(enquiry.id) else None
    if document is None:
        raise NotFound("There is no such answer to this enquiry.")
    return Answer.model_validate_json(document)


def _paper(uow: UnitOfWork, answer: Answer, name: str) -> Response:
    try:
        found = paper(uow, answer, name)
    except KeyError:
        found = None
    if found is None:
        raise NotFound("This answer has no such paper.")
    return _file(found.name, found.media_type, found.content)


def _file(name: str, media: str, content: bytes) -> Response:
    return Response(content, media_type=media, headers={"Content-Disposition": f'attachment; filename="{name}"'})
