"""Records: found, shown, proposed, changed. People's data only to those whose they are, and never unnoticed."""

from __future__ import annotations

from collections.abc import Mapping
from functools import partial
from typing import Annotated, Any

from fastapi import APIRouter, Header, Path, Query, Request
from starlette.responses import Response

from service.api import paging
from service.api.etags import etag, expected, unchanged
from service.api.once import IdempotencyKey, do_once, once
from service.api.paging import Cursor, Limit
from service.api.problems import Problem
from service.api.shapes import RecordChange, RecordPage, RecordWanted
from service.api.strict import JSON, StrictRoute
from service.api.who import RecordsRead, RecordsWrite, Service, actor
from service.core.boat import Stern
from service.core.people import without_people
from service.core.proposal import SentAnswer
from service.core.record import Record, Status
from service.flow.authenticate import Caller
from service.flow.edit_record import Edited, correct_record, redirected
from service.flow.find_records import Wanted, find_records
from service.flow.propose_record import Chosen, kept_answer, propose_record
from service.flow.step_record import Told, step_record
from service.store.idempotency import Reply
from service.store.unit import UnitOfWork

routes = APIRouter(prefix="/v1", tags=["records"], route_class=StrictRoute)
Reference = Annotated[str, Path(min_length=1, max_length=80, examples=["2003-006"])]
IfMatch = Annotated[str | None, Header(alias="If-Match", description="The ETag of the state you looked at; needed.")]
Year = Annotated[int | None, Query(ge=1850, le=2100)]
Word = Annotated[str | None, Query(min_length=1, max_length=200)]
TAGGED: dict[int | str, dict[str, Any]] = {
    200: {"headers": {"ETag": {"schema": {"type": "string"}, "description": "Of this state"}}}
}


@routes.get("/records", response_model=RecordPage)
def get_records(  # noqa: PLR0913 - a filter is an argument
    request: Request,
    by: RecordsRead,
    service: Service,
    *,
    hull: Word = None,
    year_from: Year = None,
    year_to: Year = None,
    stern: Stern | None = None,
    status: Status | None = None,
    dealer: Word = None,
    code: Annotated[list[str], Query(max_length=4)] = [],  # noqa: B006 - the framework copies it
    limit: Limit = paging.USUAL,
    after: Cursor = None,
) -> Response:
    """Find records by hull model (id or name), years built, stern, status, dealer or codes; the newest first.

    Precedents come without their owners' data. A name of a hull model that is not sure finds nothing; `hull` then says
    which could be meant.
    """
    asked = {
        "hull": hull, "year_from": year_from, "year_to": year_to, "stern": stern, "status": status, "dealer": dealer,
        "code": code,
    }  # fmt: skip
    if dealer is not None and not by.sees(dealer):
        raise Problem("not-found", "there are no records of that dealer for you")
    place = paging.place(after, {**asked, "of": by.dealer})
    wanted = Wanted(hull, (year_from, year_to), stern, status, dealer, tuple(code), None, limit, place)
    with service.store.reading() as uow:
        if dealer is not None and dealer not in uow.records.dealers():
            return _page(request, RecordPage(records=[], next=None), {}, limit)
        found = find_records(uow, wanted)
    shown = [_shown(record, by) for record in found.records]
    _saw(request, by, service, [record for record in found.records if _whole(record, by)])
    goes_on = None if found.next is None else paging.cursor(found.next, {**asked, "of": by.dealer})
    hull_said = None if found.sure else found.hull
    return _page(request, RecordPage(records=shown, next=goes_on, hull=hull_said), asked, limit)


def _page(request: Request, page: RecordPage, asked: Mapping[str, object], limit: int) -> Response:
    headers = paging.link(request.url.path, asked, page.next, limit)
    return Response(page.model_dump_json(by_alias=True), headers=headers, media_type=JSON)


@routes.get("/records/{reference}", response_model=Record, responses={**TAGGED, 304: {"description": "You have it"}})
def get_record(
    request: Request,
    reference: Reference,
    by: RecordsRead,
    service: Service,
    if_none_match: Annotated[str | None, Header(alias="If-None-Match")] = None,
) -> Response:
    """Get one record as it stands, with the ETag that a change has to name."""
    with service.store.reading() as uow:
        record, number = _standing(uow, reference)
    body = _shown(record, by).model_dump_json(by_alias=True)
    tag = etag(body, number)
    same = unchanged(if_none_match, tag)
    if same is not None:
        return same
    _saw(request, by, service, [record] if _whole(record, by) else [])
    headers = {"ETag": tag, "Content-Location": f"/v1/records/{record.reference}"}
    return Response(body, headers=headers, media_type=JSON)


@routes.post("/records", response_model=Record, status_code=201)
async def create_record(
    request: Request,
    wanted: RecordWanted,
    by: RecordsWrite,
    service: Service,
    idempotency_key: IdempotencyKey = None,
) -> Response:
    """Make an answer's suggestion a record of what is proposed."""
    asked = once(request, service, by, idempotency_key, await request.body())
    return await do_once(asked, partial(_answer, by, service, wanted), partial(_propose, by, wanted))


def _answer(by: Caller, service: Service, wanted: RecordWanted) -> tuple[SentAnswer, ...]:
    with service.store.reading() as uow:
        owner = uow.answers.owner(wanted.answer)
        if owner is None or not by.sees(owner):
            raise Problem("not-found", "there is no such answer")
        return kept_answer(uow, wanted.answer)


def _propose(by: Caller, wanted: RecordWanted, uow: UnitOfWork, answers: tuple[SentAnswer, ...]) -> Reply:
    chosen = Chosen(rank=wanted.rank)
    record = propose_record(uow, answers, chosen, who=by.who, why=wanted.why, anyway=wanted.anyway).record
    body = _shown(record, by).model_dump_json(by_alias=True)
    return Reply(201, {"Location": f"/v1/records/{record.reference}", "ETag": etag(body, 1)}, body)


@routes.patch("/records/{reference}", response_model=Record, responses=TAGGED)
def change_record(
    request: Request,
    reference: Reference,
    change: RecordChange,
    by: RecordsWrite,
    service: Service,
    if_match: IfMatch = None,
) -> Response:
    """Correct fields of a record, or step it; what it was stays in its history."""
    with service.store.reading() as uow:
        record, number = _standing(uow, reference)
    if not _whole(record, by):
        raise Problem("not-found", "there is no such record of yours")
    expected(if_match, etag(_shown(record, by).model_dump_json(by_alias=True), number))
    with service.store.writing(actor(request, by)) as uow:
        edited = _change(uow, record.reference, change, by, number)
    body = _shown(edited.record, by).model_dump_json(by_alias=True)
    return Response(body, headers={"ETag": etag(body, edited.number)}, media_type=JSON)


def _change(uow: UnitOfWork, reference: str, change: RecordChange, by: Caller, expect: int) -> Edited:
    if change.step is not None:
        told = Told(day=change.step.date, why=change.why, note=change.step.note)
        return step_record(uow, reference, change.step.status, told, who=by.who, expect=expect)
    return correct_record(uow, reference, change.set or {}, who=by.who, why=change.why, expect=expect)


def _standing(uow: UnitOfWork, reference: str) -> tuple[Record, int]:
    stands, _ = redirected(uow, reference)
    record, number = uow.records.get(stands), uow.records.head(stands)
    if record is None or number is None:
        raise Problem("not-found", "there is no such record")
    return record, number


def _whole(record: Record, by: Caller) -> bool:
    """Say whether the caller may see whose it is: the desk's admin, or the dealer whose it is."""
    return by.may("admin") if by.dealer is None else by.dealer == record.dealer


def _shown(record: Record, by: Caller) -> Record:
    return record if _whole(record, by) else without_people(record)


def _saw(request: Request, by: Caller, service: Service, records: list[Record]) -> None:
    if not records:
        return
    with service.store.writing(actor(request, by)) as uow:
        for record in records:
            uow.saw("record", record.reference)
        uow.commit()
