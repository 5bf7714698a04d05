"""Strong ETags, and the conditions that name them (RFC 9110)."""

from __future__ import annotations

import hashlib
import re

from starlette.responses import Response

from service.api.problems import Problem

LISTED = r'\*|(W/)?"[!#-~]*"( *, *(W/)?"[!#-~]*")*'
"""What If-Match may hold."""
_TAG = re.compile(r'(W/)?"([\x21\x23-\x7e\x80-\xff]*)"')


def etag(content: str | bytes, number: int | None = None) -> str:
    """Return the ETag of a content; with the number of its revision in front where it has one."""
    data = content.encode() if isinstance(content, str) else content
    digest = hashlib.sha256(data).hexdigest()[:24]
    return f'"{digest}"' if number is None else f'"{number}.{digest}"'


def unchanged(if_none_match: str | None, tag: str) -> Response | None:
    """Return 304 where the client has this very state; None where it has to be sent."""
    if if_none_match is None:
        return None
    named = {opaque for _, opaque in _TAG.findall(if_none_match)}
    if if_none_match.strip() == "*" or tag.strip('"') in named:
        return Response(status_code=304, headers={"ETag": tag})
    return None


def expected(if_match: str | None, tag: str) -> None:
    """Return where a change may go on. Problems: `precondition-required` without If-Match, `stale` for another state."""
    if not if_match:
        raise Problem("precondition-required", "send If-Match with the ETag of the state you looked at")
    if not re.fullmatch(LISTED, if_match):
        raise Problem("bad-request", 'If-Match holds no ETag: it is written in quotes, as in "2.4f1a", or is *')
    strong = {opaque for weak, opaque in _TAG.findall(if_match) if not weak}
    if if_match.strip() != "*" and tag.strip('"') not in strong:
        raise Problem("stale", "it is in another state now; get it again", headers={"ETag": tag})
