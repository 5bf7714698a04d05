"""Enquiries in, answers out."""

from __future__ import annotations

import re
from functools import partial
from typing import Annotated, Any

from fastapi import APIRouter, Header, Path, Query, Request
from starlette.responses import Response

from service.api import paging
from service.api.etags import etag, unchanged
from service.api.negotiate import chosen
from service.api.once import IdempotencyKey, do_once, once
from service.api.paging import Cursor, Limit
from service.api.problems import Problem
from service.api.running import Running
from service.api.shapes import BYTES, EnquiryItem, EnquiryPage, EnquiryView, TextEnquiry
from service.api.strict import JSON, StrictRoute, loads, media_type, see_json
from service.api.who import EnquiriesRead, EnquiriesWrite, Service, actor
from service.core.answer import Answer, Answers
from service.core.form import parse_shape
from service.flow.answer import Worked, keep_answers, work_out
from service.flow.authenticate import Caller
from service.flow.list_enquiries import list_enquiries
from service.flow.papers import NAMES, paper
from service.store.enquiries import Enquiry
from service.store.idempotency import Reply
from service.store.unit import UnitOfWork

MAIL, SVG, PLAIN = "message/rfc822", "image/svg+xml", "text/plain"
WORDS: dict[str, Any] = {"type": "string"}
BY_TYPE: dict[str, str] = {
    PLAIN: "reply.txt",
    SVG: "drawing.svg",
    "application/pdf": "sheet.pdf" if "sheet.pdf" in NAMES else "template.pdf",
    "image/vnd.dxf": "drawing.dxf",
    "text/html": "reply.html",
    MAIL: "reply.eml",
}
"""What an enquiry can be had as, beside JSON."""
XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
PAPER_TYPES = (*BY_TYPE, "model/stl", "text/csv", XLSX)
Language = Annotated[
    str | None,
    Query(
        max_length=35,
        pattern="^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$",
        description="Of the words (BCP 47); the asker's own where not said.",
        examples=["de"],
    ),
]
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
    responses={200: {"content": {kind: {"schema": WORDS if kind == PLAIN else BYTES} for kind in BY_TYPE}}},
)
def get_enquiry(request: Request, enquiry_id: str, by: EnquiriesRead, service: Service) -> Response:
    """Get one enquiry; by `Accept` one of its papers instead: the reply as text, page or mail, the drawing, the PDF."""
    kind = chosen(request.headers.get("accept"), (JSON, *BY_TYPE))
    if kind != JSON:
        return _given(request, enquiry_id, BY_TYPE[kind], by, service)
    with service.store.reading() as uow:
        found = _own(uow, by, enquiry_id)
        answers = uow.answers.of(enquiry_id)
    _saw(request, by, service, "enquiry", enquiry_id)
    here = f"/v1/enquiries/{enquiry_id}"
    links = {"reply": "reply", "drawing": "drawing.svg", **{name: name for name in NAMES}} if answers else {}
    places = {name: f"{here}/{place}" for name, place in links.items()}
    view = EnquiryView(**_item(found), form=found.form, answers=list(answers), links=places)
    return Response(view.model_dump_json(by_alias=True), headers={"Vary": "Accept"}, media_type=JSON)


@routes.get(
    "/enquiries/{enquiry_id}/reply",
    response_class=Response,
    responses={200: {"content": {PLAIN: {"schema": WORDS}}, "description": "The reply"}},
)
def get_reply(
    request: Request, enquiry_id: str, by: EnquiriesRead, service: Service, language: Language = None
) -> Response:
    """Get the reply to an enquiry in plain words, in the asker's language, ready to be read through and sent."""
    return _given(request, enquiry_id, "reply.txt", by, service, language)


@routes.get(
    "/enquiries/{enquiry_id}/drawing.svg",
    response_class=Response,
    responses={200: {"content": {SVG: {"schema": BYTES}}, "description": "The drawing"}},
)
def get_drawing(
    request: Request, enquiry_id: str, by: EnquiriesRead, service: Service, language: Language = None
) -> Response:
    """Get the drawing of the best suggestion."""
    return _given(request, enquiry_id, "drawing.svg", by, service, language)


@routes.get(
    "/enquiries/{enquiry_id}/{name}",
    response_class=Response,
    responses={200: {"content": {kind: {"schema": BYTES} for kind in PAPER_TYPES}, "description": "The paper"}},
)
def get_paper(
    request: Request,
    enquiry_id: str,
    name: Annotated[str, Path(max_length=80, json_schema_extra={"enum": list(NAMES)})],
    by: EnquiriesRead,
    service: Service,
    *,
    language: Language = None,
) -> Response:
    """Get a paper of the answer: the reply in another form, a view, a plan in CAD, a template to drill by.

    What there is nothing to put on is not found: a boat that nothing was placed on has no drawing.
    """
    return _given(request, enquiry_id, name, by, service, language)


def _given(
    request: Request, enquiry_id: str, name: str, by: Caller, service: Running, language: str | None = None
) -> Response:
    with service.store.reading() as uow:
        answer = _latest(uow, by, enquiry_id)
        found = paper(uow, answer, name, language=language) if name in NAMES else None
    if found is None:
        raise Problem("not-found", "the answer has no such paper; `links` of the enquiry lists those there may be")
    _saw(request, by, service, "enquiry", enquiry_id)
    headers = {"Vary": "Accept"}
    if not found.media_type.startswith(PLAIN):
        headers["Content-Disposition"] = f'attachment; filename="{found.name}"'
    return Response(found.content, headers=headers, media_type=found.media_type)


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
