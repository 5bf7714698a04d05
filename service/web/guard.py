"""What stands about every page: headers, and the refusal of what another site sends in somebody's name."""

from __future__ import annotations

from urllib.parse import urlsplit

from fastapi import Request
from starlette.datastructures import MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send

CSP = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; form-action 'self'; "
    "frame-ancestors 'none'; base-uri 'none'"
)
HEADERS = {
    "content-security-policy": CSP,
    "referrer-policy": "same-origin",  # with none at all, a form's own Origin would read "null"
    "x-content-type-options": "nosniff",
    "cross-origin-opener-policy": "same-origin",
    "permissions-policy": "camera=(), microphone=(), geolocation=()",
}


class ForeignRequest(Exception):  # noqa: N818 - named for what it is
    """A request that another site made this browser send."""


class Guard:
    """The outermost part of the desk."""

    def __init__(self, app: ASGIApp) -> None:
        """Keep what is inside."""
        self._app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Let a request through, with the headers of the desk on its answer."""

        async def guarded(message: Message) -> None:
            if message["type"] == "http.response.start":
                headers = MutableHeaders(scope=message)
                for name, value in HEADERS.items():
                    headers.setdefault(name, value)
                headers.setdefault("cache-control", "private, no-store")
            await send(message)

        await self._app(scope, receive, guarded)


def see_origin(request: Request) -> None:
    """Refuse what another site sends: by Sec-Fetch-Site, else by Origin. ForeignRequest.

    A program that sends neither still needs the word that its session's forms carry.
    """
    site, origin = request.headers.get("sec-fetch-site"), request.headers.get("origin")
    if site is not None:
        foreign = site != "same-origin"
    else:
        foreign = origin is not None and urlsplit(origin).netloc != request.headers.get("host")
    if foreign:
        raise ForeignRequest
