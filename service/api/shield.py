"""What stands around every request: its id, its log line, its size and pace, headers, and the last word on faults."""

from __future__ import annotations

import asyncio
import re
import time
import traceback
import uuid
from dataclasses import dataclass, field
from pathlib import Path

from starlette.datastructures import Headers, MutableHeaders
from starlette.requests import ClientDisconnect
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from service.api import problems
from service.api.explain import explain
from service.api.log import log
from service.api.metrics import Metrics
from service.api.problems import Problem
from service.api.running import Allowance

MB = 1_000_000
LARGEST = MB
LARGEST_MAIL, LARGEST_IMPORT = 25 * MB, 64 * MB
WHOLE_BODY_S = 30.0
GONE = 499
"""What the log says where nobody waited for the answer."""
_ID = re.compile(r"[A-Za-z0-9._-]{1,64}")
CORS_UNDER = "/v1/reconcile"
CORS = {
    "access-control-allow-origin": "*",
    "access-control-expose-headers": "RateLimit, RateLimit-Policy, X-Request-ID",
}
PREFLIGHT = {
    "access-control-allow-methods": "GET, POST, OPTIONS",
    "access-control-allow-headers": "Authorization, X-API-Key, Content-Type, X-Request-ID",
    "access-control-max-age": "86400",
}
GUARDS = {
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "content-security-policy": "default-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'",
}


def largest(path: str, kind: str) -> int:
    """Return how many bytes a body may have."""
    if path == "/v1/imports" or path.startswith("/desk/imports"):
        return LARGEST_IMPORT
    if path.startswith("/desk/"):  # mails and photos come in as parts of forms
        return LARGEST_MAIL
    return LARGEST_MAIL if kind.startswith("message/rfc822") else LARGEST


@dataclass
class _Passing:
    """One request on its way through."""

    scope: Scope
    request_id: str
    began: float
    status: int = 0
    seen: int = 0
    whole: bool = False
    headers: Headers = field(init=False)

    def __post_init__(self) -> None:
        self.headers = Headers(scope=self.scope)

    @property
    def path(self) -> str:
        return str(self.scope["path"])

    @property
    def route(self) -> str:
        return str(getattr(self.scope.get("route"), "path", "none"))


class Shield:
    """The outermost part of the application."""

    def __init__(self, app: ASGIApp, metrics: Metrics) -> None:
        """Keep what is inside."""
        self._app, self._metrics = app, metrics

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Let a request through."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        asked = Headers(scope=scope).get("x-request-id", "")
        request_id = asked if _ID.fullmatch(asked) else uuid.uuid4().hex  # noqa: TID251 - an edge; it names one request
        passing = _Passing(scope, request_id, time.monotonic())
        scope.setdefault("state", {})["request_id"] = request_id
        self._metrics.running.inc()
        try:
            await self._through(passing, receive, self._sender(passing, send))
        finally:
            self._metrics.running.dec()
            self._note(passing)

    async def _through(self, passing: _Passing, receive: Receive, send: Send) -> None:
        scope = passing.scope
        try:
            if passing.path.startswith(CORS_UNDER) and scope["method"] == "OPTIONS":
                await _preflight(send)
                return
            _see_length(passing)
            await self._app(scope, self._receiver(passing, receive), send)
        except ClientDisconnect:
            passing.status = passing.status or GONE
        except Exception as error:  # the last word: nobody sees a trace, and the log has it
            problem = explain(error)
            if problem is None:
                _tell(error, passing)
                problem = Problem("fault", "a fault of the service itself; it was logged under this request_id")
            if passing.status:
                raise  # half of an answer is out: the connection must break
            reply = problems.response(problem, passing.path, passing.request_id)
            await reply(scope, receive, send)

    def _receiver(self, passing: _Passing, receive: Receive) -> Receive:
        most = largest(passing.path, passing.headers.get("content-type", ""))
        ends = time.monotonic() + WHOLE_BODY_S

        async def paced() -> Message:
            if passing.whole:  # only the end of the connection is waited for now, and that may take its time
                return await receive()
            try:
                message = await asyncio.wait_for(receive(), max(0.0, ends - time.monotonic()))
            except TimeoutError:
                raise Problem("too-slow", f"the body did not arrive within {WHOLE_BODY_S:g} s") from None
            passing.seen += len(message.get("body", b""))
            if passing.seen > most:
                raise _too_large(most)
            passing.whole = not message.get("more_body", False)
            return message

        return paced

    def _sender(self, passing: _Passing, send: Send) -> Send:
        async def guarded(message: Message) -> None:
            if message["type"] == "http.response.start":
                passing.status = message["status"]
                headers = MutableHeaders(scope=message)
                headers["x-request-id"] = passing.request_id
                for name, value in GUARDS.items():
                    headers.setdefault(name, value)
                headers.setdefault("cache-control", "private, no-store")
                if passing.path.startswith(CORS_UNDER):
                    headers.update(CORS)
                allowance = passing.scope["state"].get("allowance")
                if isinstance(allowance, Allowance):
                    headers.update(allowance.headers)
            await send(message)

        return guarded

    def _note(self, passing: _Passing) -> None:
        seconds = time.monotonic() - passing.began
        method = passing.scope["method"]
        known = method if method in ("GET", "HEAD", "POST", "PATCH", "PUT", "DELETE", "OPTIONS") else "OTHER"
        self._metrics.note(known, passing.route, passing.status, seconds)
        log(
            "info",
            "request",
            request_id=passing.request_id,
            method=known,
            route=passing.route,
            status=passing.status,
            ms=round(1000 * seconds, 1),
            bytes_in=passing.seen,
            key=passing.scope["state"].get("key"),
        )


def _tell(error: Exception, passing: _Passing) -> None:
    """Log where a fault is and of which kind; its text may quote what somebody sent."""
    frames = traceback.extract_tb(error.__traceback__)[-12:]
    where = [f"{Path(frame.filename).name}:{frame.lineno} {frame.name}" for frame in frames]
    log("error", "fault", request_id=passing.request_id, route=passing.route, error=type(error).__name__, where=where)


def _see_length(passing: _Passing) -> None:
    length = passing.headers.get("content-length", "0")
    most = largest(passing.path, passing.headers.get("content-type", ""))
    if length.isdecimal() and int(length) > most:
        raise _too_large(most)


def _too_large(most: int) -> Problem:
    return Problem("too-large", f"more than {most / MB:.0f} MB; send less at once", headers={"Connection": "close"})


async def _preflight(send: Send) -> None:
    headers = [(name.encode(), value.encode()) for name, value in PREFLIGHT.items()]
    await send({"type": "http.response.start", "status": 204, "headers": headers})
    await send({"type": "http.response.body", "body": b""})
