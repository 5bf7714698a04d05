"""What goes wrong, as RFC 9457 problem documents: what, where and how to mend it, with a page for each type."""

from __future__ import annotations

import json
import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from importlib import resources
from typing import Any

from pydantic import BaseModel, Field
from starlette.responses import Response

MEDIA = "application/problem+json"


@dataclass(frozen=True)
class Kind:
    """One type of problem: the status it goes with, its title and what its page says."""

    status: int
    title: str
    says: str


def _kinds() -> dict[str, Kind]:
    text = resources.files("service.api").joinpath("problems.toml").read_text("utf-8")
    return {
        name: Kind(**{**said, "says": " ".join(said["says"].split())}) for name, said in tomllib.loads(text).items()
    }


KINDS = _kinds()
"""Every type of problem by its name."""


class Fault(BaseModel):
    """One thing wrong with what was sent: where, as a JSON pointer (RFC 6901), what kind, and how to mend it."""

    pointer: str = Field(examples=["/transom/rake_deg"])
    code: str = Field(examples=["less_than_equal"])
    detail: str = Field(examples=["input should be less than or equal to 80"])


class ProblemDocument(BaseModel):
    """An RFC 9457 problem document."""

    type: str = Field(examples=["/problems/invalid"])
    title: str = Field(examples=["What was sent has faults"])
    status: int = Field(examples=[422])
    detail: str = Field(examples=["one fault; see errors"])
    instance: str = Field(examples=["/v1/enquiries"])
    errors: list[Fault] = []
    request_id: str = Field(examples=["5f2b1c0d9e8a47b6a1c2d3e4f5a6b7c8"])


class Problem(Exception):  # noqa: N818 - named as RFC 9457 names it
    """Ends a request with a problem document of one of KINDS."""

    def __init__(
        self, kind: str, detail: str, *, errors: Sequence[Fault] = (), headers: Mapping[str, str] | None = None
    ) -> None:
        """Keep what is to be said."""
        super().__init__(detail)
        self.kind, self.detail, self.errors, self.headers = kind, detail, tuple(errors), dict(headers or {})

    @property
    def status(self) -> int:
        """Return the HTTP status."""
        return KINDS[self.kind].status


def document(problem: Problem, path: str, request_id: str) -> dict[str, Any]:
    """Return the problem document."""
    return {
        "type": f"/problems/{problem.kind}",
        "title": KINDS[problem.kind].title,
        "status": problem.status,
        "detail": problem.detail,
        "instance": path,
        "errors": [fault.model_dump() for fault in problem.errors],
        "request_id": request_id,
    }


def response(problem: Problem, path: str, request_id: str) -> Response:
    """Return the response that tells of a problem."""
    body = json.dumps(document(problem, path, request_id), ensure_ascii=False).encode("utf-8", "replace")
    headers = {"Cache-Control": "no-store", **problem.headers}
    return Response(body, problem.status, headers=headers, media_type=MEDIA)


def pointer(location: Sequence[int | str]) -> str:
    """Return a JSON pointer to a place.

    >>> pointer(("transom", "profile", 2, "aft_mm")), pointer(("a/b", "~"))
    ('/transom/profile/2/aft_mm', '/a~1b/~0')
    """
    return "".join(f"/{str(part).replace('~', '~0').replace('/', '~1')}" for part in location)
