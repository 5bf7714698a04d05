"""Webhooks: who is told when an answer is ready or a record changed."""

from __future__ import annotations

from functools import partial
from typing import Annotated

from fastapi import APIRouter, Path, Request
from starlette.responses import Response

from service.api.once import IdempotencyKey, do_once, once
from service.api.problems import Problem
from service.api.running import Running
from service.api.shapes import Event, WebhookList, WebhookMade, WebhookView, WebhookWanted
from service.api.strict import JSON, StrictRoute
from service.api.who import EnquiriesRead, EnquiriesWrite, Service, actor
from service.flow.add_webhook import SECRET_BYTES, add_webhook
from service.flow.authenticate import Caller
from service.store.idempotency import Reply
from service.store.unit import UnitOfWork
from service.store.webhooks import Webhook

routes = APIRouter(prefix="/v1", tags=["webhooks"], route_class=StrictRoute)


@routes.get("/webhooks", response_model=WebhookList)
def get_webhooks(by: EnquiriesRead, service: Service) -> Response:
    """List your webhooks, without their secrets."""
    with service.store.reading() as uow:
        found = uow.webhooks.of(by.owner)
    shown = WebhookList(webhooks=[WebhookView.model_validate(_fields(one)) for one in found])
    return Response(shown.model_dump_json(), media_type=JSON)


@routes.post("/webhooks", response_model=WebhookMade, status_code=201)
async def create_webhook(
    request: Request,
    wanted: WebhookWanted,
    by: EnquiriesWrite,
    service: Service,
    idempotency_key: IdempotencyKey = None,
) -> Response:
    """Be told at an https address. Messages are signed by Standard Webhooks with the secret shown this once.

    `record.changed` needs a key with the scope records:read.
    """
    both: list[Event] = ["answer.ready", "record.changed"]
    events = wanted.events or [event for event in both if event == "answer.ready" or by.may("records:read")]
    if "record.changed" in events and not by.may("records:read"):
        raise Problem("forbidden", "record.changed needs a key with the scope records:read")
    asked = once(request, service, by, idempotency_key, await request.body())
    random = service.random(SECRET_BYTES)
    return await do_once(asked, lambda: random, partial(_add, by, service, wanted.url, tuple(events)))


def _add(by: Caller, service: Running, url: str, events: tuple[str, ...], uow: UnitOfWork, random: bytes) -> Reply:
    made = add_webhook(uow, by.owner, url, events, random=random, insecure=service.serving.insecure_webhooks)
    shown = WebhookMade.model_validate({**_fields(made), "secret": made.secret})
    return Reply(201, {"Location": f"/v1/webhooks/{made.id}"}, shown.model_dump_json())


@routes.delete("/webhooks/{webhook_id}", status_code=204, response_class=Response)
def remove_webhook(
    request: Request,
    webhook_id: Annotated[str, Path(max_length=80)],
    by: EnquiriesWrite,
    service: Service,
) -> Response:
    """Be told no more. What was still to be told is dropped."""
    with service.store.writing(actor(request, by)) as uow:
        found = uow.webhooks.get(webhook_id)
        if found is None or found.owner != by.owner:
            raise Problem("not-found", "there is no such webhook")
        uow.webhooks.remove(webhook_id)
        uow.commit()
    return Response(status_code=204)


def _fields(one: Webhook) -> dict[str, object]:
    return {
        "id": one.id,
        "url": one.url,
        "events": list(one.events),
        "created": one.created,
        "stopped": one.stopped,
        "why": one.why,
    }
