"""JSON as it is written down in RFC 8259 and no more: no NaN, no key twice, no depth without end, UTF-8 alone."""

from __future__ import annotations

import json
import math
from collections.abc import Callable, Coroutine
from email.message import Message
from typing import Any

from fastapi.routing import APIRoute
from starlette.requests import Request
from starlette.responses import Response

from service.api.problems import Problem

DEEPEST = 40
JSON = "application/json"


def media_type(header: str) -> tuple[str, str | None]:
    """Return the media type and the charset of a Content-Type.

    >>> media_type("application/json; charset=UTF-8")
    ('application/json', 'utf-8')
    """
    message = Message()
    message["content-type"] = header if header.isascii() else "x/x"
    charset = message.get_content_charset()
    return message.get_content_type().lower() if "/" in header else "", charset


def see_json(header: str | None) -> None:
    """Return where a Content-Type says JSON in UTF-8; else the problem is `unsupported`."""
    kind, charset = media_type(header or "")
    if kind != JSON:
        raise Problem("unsupported", f"send {JSON}")
    if charset not in (None, "utf-8", "utf8", "us-ascii"):
        raise Problem("unsupported", f"charset {charset[:40]!r}: JSON is always UTF-8")


def loads(data: bytes) -> Any:  # noqa: ANN401 - JSON is any
    """Return the value. The problem is `bad-request` and says where for what is no JSON, or more than JSON."""
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError as error:
        raise Problem("bad-request", f"the body is not UTF-8: byte {error.start} is not") from None
    try:
        value = json.loads(
            text, object_pairs_hook=_once, parse_constant=_no_number, parse_float=_finite, parse_int=_whole
        )
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise Problem("bad-request", f"broken JSON at {where}: {error.msg}") from None
    except RecursionError:
        raise _deep() from None
    _see(value)
    if "\\ud" in text.lower():
        _see_letters(value)
    return value


def _see(value: object) -> None:
    level: list[object] = [value]
    for _ in range(DEEPEST):
        level = [
            item
            for one in level
            for item in (one.values() if isinstance(one, dict) else one if isinstance(one, list) else ())
        ]
        if not level:
            return
    raise _deep()


def _deep() -> Problem:
    return Problem("bad-request", f"JSON nested deeper than {DEEPEST} levels")


def _see_letters(value: object) -> None:
    try:
        json.dumps(value, ensure_ascii=False).encode()
    except UnicodeEncodeError:
        raise Problem("bad-request", "a \\u escape is half a letter (a lone surrogate)") from None


def _once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    found = dict(pairs)
    if len(found) != len(pairs):
        keys = [key for key, _ in pairs]
        twice = next(key for key in keys if keys.count(key) > 1)
        raise Problem("bad-request", f"the key {twice[:80]!r} stands twice in one object")
    return found


def _no_number(name: str) -> float:
    raise Problem("bad-request", f"{name} is no JSON number; leave out what is not known")


def _finite(text: str) -> float:
    number = float(text)
    if not math.isfinite(number):
        raise Problem("bad-request", f"the number {text[:40]} is too large")
    return number


def _whole(text: str) -> int:
    if len(text) > 18:  # noqa: PLR2004 - what 64 bits hold
        raise Problem("bad-request", f"the number {text[:40]} is too large")
    return int(text)


class StrictRequest(Request):
    """A request whose JSON is read strictly."""

    async def json(self) -> Any:  # noqa: ANN401 - JSON is any
        """Return the body's value."""
        return loads(await self.body())


class StrictRoute(APIRoute):
    """A route that takes its JSON strictly, and says 415 of a body that does not say it is JSON."""

    def get_route_handler(self) -> Callable[[Request], Coroutine[Any, Any, Response]]:
        """Return the handler, which is handed a strict request."""
        handler, takes_json = super().get_route_handler(), self.body_field is not None

        async def strict(request: Request) -> Response:
            if takes_json:
                see_json(request.headers.get("content-type"))
            return await handler(StrictRequest(request.scope, request.receive))

        return strict
