"""Enquiries in, answers out."""

from __future__ import annotations

import re
from functools import partial
from typing import Annotated, Any

from fastapi import APIRouter, Header, Request
from starlette.responses import Response

from service.api import paging
from service.api.etags import etag, unchanged
from service.api.negotiate import chosen
from service.api.once import IdempotencyKey, do_once, once
from service.api.paging import Cursor, Limit
from service.api.problems import Problem
from service.api.shapes import BYTES, EnquiryItem, EnquiryPage, EnquiryView, TextEnquiry
from service.api.strict import JSON, StrictRoute, loads, media_type, see_json
from service.api.who import EnquiriesRead, EnquiriesWrite, Service, actor
from service.core.answer import Answer, Answers
from service.core.form import parse_shape
from service.flow.answer import Worked, keep_answers, work_out
from service.flow.authenticate import Caller
from service.flow.draw import draw_answer
from service.flow.list_enquiries import list_enquiries
from service.flow.papers import paper
from service.store.enquiries import Enquiry
from service.store.idempotency import Reply
from service.store.unit import UnitOfWork

MAIL, SVG, PLAIN = "message/rfc822", "image/svg+xml", "text/plain"
_MARK = re.compile(r"[0-9a-f]{8,64}")
routes = APIRouter(prefix="/v1", tags=["enquiries"], route_class=StrictRoute)
IfNoneMatch = Annotated[str | None, Header(alias="If-None-Match")]


@routes.post(
    "/enquiries",
    response_model=Answers,
    status_code=201,
    responses={200: {"model": Answers, "description": "It asks for no fit: nothing was kept."}},
)
async def create_enquiry(
    request: Request, by: EnquiriesWrite, service: Service, idempotency_key: IdempotencyKey = None
) -> Response:
    """Ask what a boat needs, and get the answer: a boat form, `{"text": ...}`, or a mail as it came (message/rfc822).

    One answer a boat; enquiry and answers are kept and can be had again under `Location`.
    """
    content = await request.body()
    data = _message(request.headers.get("content-type"), content)
    asked = once(request, service, by, idempotency_key, content)
    prepare = partial(work_out, service.store, data, "the enquiry", now=service.clock(), dealer=by.dealer)
    return await do_once(asked, prepare, partial(_keep, by))


def _message(kind: str | None, content: bytes) -> bytes:
    """Return what the use case reads: bytes of a form, a mail or a text."""
    if media_type(kind or "")[0] == MAIL:
        return content
    if media_type(kind or "")[0] != JSON:
        raise Problem("unsupported", f"send {JSON} or {MAIL}")
    see_json(kind)
    value = loads(content)
    if isinstance(value, dict) and "text" in value:
        return parse_shape(TextEnquiry, value).text.encode()
    if not isinstance(value, dict):
        raise Problem("bad-request", 'send a JSON object: a boat form or {"text": "..."}')
    return content


def _keep(by: Caller, uow: UnitOfWork, worked: Worked) -> Reply:
    answers = keep_answers(uow, worked, owner=by.owner)
    body = answers.model_dump_json(by_alias=True)
    if not answers.answers:
        return Reply(200, {}, body)
    links = ", ".join(f'</v1/answers/{one.id}>; rel="item"' for one in answers.answers)
    return Reply(201, {"Location": f"/v1/enquiries/{answers.answers[0].enquiry}", "Link": links}, body)


@routes.get("/enquiries", response_model=EnquiryPage)
def get_enquiries(by: EnquiriesRead, service: Service, limit: Limit = paging.USUAL, after: Cursor = None) -> Response:
    """List your enquiries, the newest first."""
    asked = {"of": by.dealer}
    with service.store.reading() as uow:
        found, following = list_enquiries(uow, by.dealer, after=paging.place(after, asked), limit=limit)
    goes_on = None if following is None else paging.cursor(following, asked)
    page = EnquiryPage(enquiries=[EnquiryItem(**_item(one)) for one in found], next=goes_on)
    return Response(page.model_dump_json(), headers=paging.link("/v1/enquiries", {}, goes_on, limit), media_type=JSON)


def _item(one: Enquiry) -> dict[str, Any]:
    form = one.form
    return {
        "id": one.id,
        "created": one.created,
        "received": one.received,
        "owner": one.owner or None,
        "reference": form.enquiry.reference,
        "builder": form.boat.builder,
        "model": form.boat.model,
        "hull": one.hull,
    }


@routes.get(
    "/enquiries/{enquiry_id}",
    response_model=EnquiryView,
    responses={200: {"content": {PLAIN: {"schema": {"type": "string"}}, SVG: {"schema": BYTES}}}},
)
def get_enquiry(request: Request, enquiry_id: str, by: EnquiriesRead, service: Service) -> Response:
    """Get one enquiry; with `Accept: text/plain` the reply to it, with `image/svg+xml` the drawing."""
    kind = chosen(request.headers.get("accept"), (JSON, PLAIN, SVG))
    if kind == PLAIN:
        return get_reply(request, enquiry_id, by, service)
    if kind == SVG:
        return get_drawing(enquiry_id, by, service)
    with service.store.reading() as uow:
        found = _own(uow, by, enquiry_id)
        answers = uow.answers.of(enquiry_id)
    _saw(request, by, service, "enquiry", enquiry_id)
    here = f"/v1/enquiries/{enquiry_id}"
    links = {"reply": f"{here}/reply", "drawing": f"{here}/drawing.svg"} if answers else {}
    view = EnquiryView(**_item(found), form=found.form, answers=list(answers), links=links)
    return Response(view.model_dump_json(by_alias=True), headers={"Vary": "Accept"}, media_type=JSON)


@routes.get(
    "/enquiries/{enquiry_id}/reply",
    response_class=Response,
    responses={200: {"content": {PLAIN: {"schema": {"type": "string"}}}, "description": "The reply"}},
)
def get_reply(request: Request, enquiry_id: str, by: EnquiriesRead, service: Service) -> Response:
    """Get the reply to an enquiry in plain words, ready to be read through and sent."""
    with service.store.reading() as uow:
        found = paper(uow, _latest(uow, by, enquiry_id), "reply.txt")
    _saw(request, by, service, "enquiry", enquiry_id)
    if found is None:
        raise Problem("not-found", "this enquiry has no reply")
    return Response(found.content, media_type=PLAIN, headers={"Vary": "Accept"})


@routes.get(
    "/enquiries/{enquiry_id}/drawing.svg",
    response_class=Response,
    responses={200: {"content": {SVG: {"schema": BYTES}}, "description": "The drawing"}},
)
def get_drawing(enquiry_id: str, by: EnquiriesRead, service: Service) -> Response:
    """Get the drawing of the best suggestion."""
    with service.store.reading() as uow:
        drawing = draw_answer(uow, _latest(uow, by, enquiry_id))
    if drawing is None:
        raise Problem("not-found", "nothing was suggested that can be drawn")
    headers = {"Content-Disposition": 'attachment; filename="drawing.svg"', "Vary": "Accept"}
    return Response(drawing, media_type=SVG, headers=headers)


@routes.get("/answers/{answer_id}", response_model=Answer, responses={304: {"description": "You have it"}})
def get_answer(
    request: Request, answer_id: str, by: EnquiriesRead, service: Service, if_none_match: IfNoneMatch = None
) -> Response:
    """Get an answer exactly as it was sent, to the byte: by its id, or by the mark on its papers.

    The mark is the beginning (8 signs or more) of the SHA-256 of the answer's document.
    """
    with service.store.reading() as uow:
        answer_id = _by_mark(uow, by, answer_id) if _MARK.fullmatch(answer_id) else answer_id
        owner = uow.answers.owner(answer_id)
        document = None if owner is None or not by.sees(owner) else uow.answers.get(answer_id)
    if document is None:
        raise Problem("not-found", "there is no such answer")
    tag = etag(document)
    same = unchanged(if_none_match, tag)
    if same is not None:
        return same
    _saw(request, by, service, "answer", answer_id)
    return Response(document, media_type=JSON, headers={"ETag": tag})


def _by_mark(uow: UnitOfWork, by: Caller, mark: str) -> str:
    """Return the id of the one answer of the caller's that has this mark; two that share it need a longer one."""
    own = [one for one in uow.answers.by_hash(mark) if by.sees(uow.answers.owner(one) or "")]
    if len(own) != 1:
        raise Problem(
            "not-found", "no answer has this mark" if not own else "several answers have this mark: give more of it"
        )
    return own[0]


def _own(uow: UnitOfWork, by: Caller, enquiry_id: str) -> Enquiry:
    found = uow.enquiries.get(enquiry_id)
    if found is None or not by.sees(found.owner):
        raise Problem("not-found", "there is no such enquiry")
    return found


def _latest(uow: UnitOfWork, by: Caller, enquiry_id: str) -> Answer:
    _own(uow, by, enquiry_id)
    answers = uow.answers.of(enquiry_id)
    document = uow.answers.get(answers[-1]) if answers else None
    if document is None:
        raise Problem("not-found", "this enquiry has no answer")
    return Answer.model_validate_json(document)


def _saw(request: Request, by: Caller, service: Service, kind: str, thing: str) -> None:
    with service.store.writing(actor(request, by)) as uow:
        uow.saw(kind, thing)
        uow.commit()
