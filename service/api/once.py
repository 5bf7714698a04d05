"""Requests that create something work once, however often they are sent (IETF draft on the Idempotency-Key header)."""

from __future__ import annotations

import asyncio
import hashlib
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from typing import Annotated, TypeVar

from fastapi import Header, Request
from starlette.concurrency import run_in_threadpool
from starlette.requests import ClientDisconnect
from starlette.responses import Response

from service.api.problems import Problem
from service.api.running import Running
from service.api.who import actor
from service.flow.authenticate import Caller
from service.store.errors import StoreError
from service.store.happening import Actor
from service.store.idempotency import Claim, Found, Reply
from service.store.unit import UnitOfWork

T = TypeVar("T")
JSON = "application/json"
LONGEST_KEY = 200
PATIENCE_S = 60.0
"""How long a request waits for the same one that came before it, before it is told to come again."""
FIRST_LOOK_S, LAST_LOOK_S = 0.05, 0.5

IdempotencyKey = Annotated[
    str | None,
    Header(
        alias="Idempotency-Key",
        description="Another one for each new thing, at most 200 visible characters; needed.",
        examples=["6f1d0a52-8f5e-4c57-9d0e-0f2a7c6b9e11"],
    ),
]


@dataclass(frozen=True)
class Once:
    """One such request: who sent it, to which operation, under which key, with which content."""

    request: Request
    service: Running
    by: Caller
    actor: Actor
    operation: str
    key: str
    fingerprint: str


def once(request: Request, service: Running, by: Caller, key: str | None, content: bytes) -> Once:
    """Return the request as one to be done once. The problem is `key-missing` where it has no usable key."""
    if not key or len(key) > LONGEST_KEY or not (key.isascii() and key.isprintable()):
        raise Problem("key-missing", f"send an Idempotency-Key of 1 to {LONGEST_KEY} visible characters")
    operation = f"{request.method} {request.url.path}?{request.url.query}"
    kind = request.headers.get("content-type", "").encode()
    return Once(
        request, service, by, actor(request, by), operation, key, hashlib.sha256(kind + b"\n" + content).hexdigest()
    )


async def do_once(asked: Once, prepare: Callable[[], T], keep: Callable[[UnitOfWork, T], Reply]) -> Response:
    """Do the request, or answer what was answered before.

    `prepare` works something out and writes nothing; `keep` writes it, in one transaction with the reply that is given
    whenever the request comes again. What fails leaves no trace, and may be sent again.
    """
    found = await _claimed(asked)
    if found.claim is None:
        return answered(found.reply, again=True)
    claim = found.claim
    try:
        made = await heavily(asked.request, asked.service, prepare)
        reply = await run_in_threadpool(_kept, asked, claim, made, keep)
    except BaseException:
        await asyncio.shield(run_in_threadpool(_release, asked, claim))
        raise
    return answered(reply)


async def heavily(request: Request, service: Running, work: Callable[[], T]) -> T:
    """Do heavy work when its turn comes. ClientDisconnect where whoever asked for it has gone away meanwhile."""
    async with service.heavy:
        if await request.is_disconnected():
            raise ClientDisconnect
        return await run_in_threadpool(work)


def _kept(asked: Once, claim: Claim, made: T, keep: Callable[[UnitOfWork, T], Reply]) -> Reply:
    with asked.service.store.writing(asked.actor).together() as uow:
        reply = keep(uow, made)
        uow.idempotency.finish(claim, reply)
    return reply


async def _claimed(asked: Once) -> Found:
    waited, pause = 0.0, FIRST_LOOK_S
    while True:
        found = await run_in_threadpool(_claim, asked)
        if found.state == "other":
            raise Problem("key-reused", "this Idempotency-Key came with another request before; take a new one")
        if found.state != "running":
            return found
        if waited >= PATIENCE_S:
            said = {"Retry-After": "5"}
            raise Problem("conflict", "the same request is still being worked on", headers=said)
        await asyncio.sleep(pause)
        waited, pause = waited + pause, min(2 * pause, LAST_LOOK_S)


def _claim(asked: Once) -> Found:
    with asked.service.store.reading() as uow:
        seen = uow.idempotency.look(_owner(asked.by), asked.key, asked.operation, asked.fingerprint)
    if seen is not None and seen.state != "mine":
        return seen
    with asked.service.store.writing() as uow:
        found = uow.idempotency.claim(_owner(asked.by), asked.key, asked.operation, asked.fingerprint)
        uow.commit()
    return found


def _owner(by: Caller) -> str:
    """Return whose keys are told apart: a dealer's stay the same when its key is replaced."""
    return f"dealer {by.dealer}" if by.dealer is not None else f"key {by.key}"


def _release(asked: Once, claim: Claim) -> None:
    with suppress(StoreError), asked.service.store.writing() as uow:  # the lease ends by itself
        uow.idempotency.release(claim)
        uow.commit()


def answered(reply: Reply | None, *, again: bool = False) -> Response:
    """Return the response of a reply."""
    assert reply is not None  # noqa: S101 - whatever is done has one
    headers = {**reply.headers, **({"Idempotency-Replayed": "true"} if again else {})}
    return Response(reply.body.encode(), reply.status, headers=headers, media_type=JSON)
