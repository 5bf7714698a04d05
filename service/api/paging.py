"""Long lists in pages: an opaque cursor that goes on with the list that gave it, and no other."""

from __future__ import annotations

import base64
import binascii
import hashlib
import json
from collections.abc import Mapping
from typing import Annotated, Any
from urllib.parse import urlencode

from fastapi import Query

from service.api.problems import Problem

MOST, USUAL = 200, 50
Limit = Annotated[int, Query(ge=1, le=MOST, description="How many at most.")]
Cursor = Annotated[str | None, Query(max_length=600, description="Where to go on: `next` of the page before.")]
WRONG = "this cursor does not go on with this list; begin again without one"


def cursor(place: str, asked: Mapping[str, Any]) -> str:
    """Return the cursor for what comes behind `place` in the list asked for.

    >>> place(cursor("2024-05-01~7", {"stern": "scoop"}), {"stern": "scoop"})
    '2024-05-01~7'
    """
    text = json.dumps([place, _mark(asked)], separators=(",", ":"))
    return base64.urlsafe_b64encode(text.encode()).decode().rstrip("=")


def place(text: str | None, asked: Mapping[str, Any]) -> str | None:
    """Return the place in a cursor; None for none. The problem is `bad-cursor` for another list's, or no cursor at all."""
    if text is None:
        return None
    try:
        said = json.loads(base64.urlsafe_b64decode(text.encode("ascii") + b"=" * (-len(text) % 4)))
        where, mark = said
    except (ValueError, TypeError, binascii.Error, RecursionError):
        raise Problem("bad-cursor", WRONG) from None
    if not isinstance(where, str) or mark != _mark(asked):
        raise Problem("bad-cursor", WRONG)
    return where


def link(path: str, asked: Mapping[str, Any], after: str | None, limit: int) -> dict[str, str]:
    """Return the Link header to the next page (RFC 8288); nothing where there is none."""
    if after is None:
        return {}
    said = {name: value for name, value in asked.items() if value not in (None, (), [])}
    return {"Link": f'<{path}?{urlencode({**said, "limit": limit, "after": after}, doseq=True)}>; rel="next"'}


def _mark(asked: Mapping[str, Any]) -> str:
    text = json.dumps(asked, sort_keys=True, default=str)
    return hashlib.sha256(text.encode()).hexdigest()[:16]
