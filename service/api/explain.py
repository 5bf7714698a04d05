"""Errors of the use cases, of the framework and of the program -> problems."""

from __future__ import annotations

import re

from fastapi.exceptions import RequestValidationError
from starlette.exceptions import HTTPException

from service.api.problems import Fault, Problem, pointer
from service.core.form import Defect, FormError
from service.files.read.errors import Unreadable
from service.flow.fit import NotInCatalogueError
from service.flow.known import NoCatalogueError
from service.flow.refusal import Moved, Refused
from service.store.errors import Conflict, StoreError

MOST_FAULTS = 50
RETRY_S = 5
_BY_STATUS = {400: "bad-request", 404: "not-found", 405: "method-not-allowed", 413: "too-large", 415: "unsupported"}


def explain(error: Exception) -> Problem | None:
    """Return the problem an error stands for; None for a fault of the program itself."""
    if isinstance(error, Problem):
        return error
    if isinstance(error, HTTPException) and isinstance(error.__cause__, Problem):
        return error.__cause__  # raised while the body was read, and wrapped by the framework
    if isinstance(error, HTTPException):
        return _of_the_framework(error)
    if isinstance(error, RequestValidationError):
        return invalid(
            [Fault(pointer=_place(e["loc"]), code=e["type"], detail=_said(e["msg"])) for e in error.errors()]
        )
    if isinstance(error, FormError):
        return invalid([of_defect(defect) for defect in error.defects])
    return _of_the_use_case(error)


def invalid(faults: list[Fault]) -> Problem:
    """Return the problem that lists these faults."""
    count = "one fault" if len(faults) == 1 else f"{len(faults)} faults"
    more = f"; the first {MOST_FAULTS} are listed" if len(faults) > MOST_FAULTS else ""
    return Problem("invalid", f"{count}; see errors{more}", errors=faults[:MOST_FAULTS])


def of_defect(defect: Defect) -> Fault:
    """Return a defect of a form as a fault."""
    parts = [part for part in re.split(r"[.\[\]]+", defect.field) if part]
    said = f"{defect.problem} (got {defect.value})" if defect.value else defect.problem
    return Fault(pointer=pointer(parts), code="invalid", detail=said)


def _of_the_framework(error: HTTPException) -> Problem:
    kind = _BY_STATUS.get(error.status_code, "bad-request")
    said = {
        "not-found": "nothing has this address; /docs lists what there is",
        "method-not-allowed": "this address does not take that method",
    }
    return Problem(kind, said.get(kind, str(error.detail)), headers=error.headers)


def _of_the_use_case(error: Exception) -> Problem | None:
    if isinstance(error, Moved):
        faults = [
            Fault(pointer=pointer(("set", one.field)), code="changed", detail=f"was {one.was!r}, is now {one.now!r}")
            for one in error.clashes
        ]
        return Problem("stale", f"it is at revision {error.head}; you worked on {error.expected}", errors=faults)
    if isinstance(error, (Refused, NotInCatalogueError)):
        return Problem("refused", str(error))
    if isinstance(error, Unreadable):
        return Problem("invalid", str(error), errors=[Fault(pointer="", code="unreadable", detail=str(error))])
    return _of_the_store(error)


def _of_the_store(error: Exception) -> Problem | None:
    if isinstance(error, Conflict):
        return Problem("conflict", f"{error.what}: {error.where}")
    if isinstance(error, NoCatalogueError):
        return Problem("away", "no catalogue is loaded yet", headers={"Retry-After": "60"})
    if isinstance(error, StoreError):  # its text names the database, which is nobody's business here
        return Problem("away", "the database cannot be worked with just now", headers={"Retry-After": str(RETRY_S)})
    return None


def _place(location: tuple[int | str, ...]) -> str:
    inside = location[1:] if location[:1] == ("body",) else location
    return pointer(inside)


def _said(message: str) -> str:
    bare = message.removeprefix("Value error, ")
    return bare[:1].lower() + bare[1:]
