"""Errors into pages: what happened, where, and what to do about it."""

from __future__ import annotations

from dataclasses import dataclass, replace

from fastapi import FastAPI, Request
from fastapi.exceptions import RequestValidationError
from starlette.exceptions import HTTPException
from starlette.responses import Response

from service.core.form import FormError
from service.files.read.errors import Unreadable
from service.flow.fit import NotInCatalogueError
from service.flow.known import NoCatalogueError
from service.flow.refusal import Moved, Refused
from service.store.errors import Conflict, StoreError
from service.web.by_page import by_page
from service.web.guard import ForeignRequest
from service.web.pages import ROOT, page, redirect, within
from service.web.who import ChooseFirst, NotYours, SignInFirst


@dataclass(frozen=True)
class Told:
    """What a page says of an error."""

    status: int
    title: str
    detail: str
    lines: tuple[str, ...] = ()


class NotFound(LookupError):  # noqa: N818 - named for what it is
    """There is no such thing, or it is not this visitor's to see: they are told the same."""


def explain(error: Exception) -> Told | None:
    """Return what to say of an error; None for a fault of the program itself."""
    if isinstance(error, Moved):
        lines = tuple(f"{c.field}: was {c.was}, {c.who} made it {c.now}; yours is {c.yours}" for c in error.clashes)
        return Told(409, "Somebody else was quicker", f"{error}".partition("\n")[0], lines)
    if isinstance(error, FormError):
        lines = tuple(f"{d.field}: {d.problem}" + (f" (got {d.value})" if d.value else "") for d in error.defects)
        return Told(422, "Some of this cannot be taken", "Nothing was changed. Mend these, then send it again:", lines)
    if isinstance(error, (Refused, NotInCatalogueError, Unreadable)):
        return Told(422, "This cannot be done so", str(error))
    return _of_the_visitor(error) or _of_the_framework(error) or _of_the_store(error)


def _of_the_visitor(error: Exception) -> Told | None:
    if isinstance(error, NotYours):
        return Told(403, "Not for this account", "Your role does not open this page. An admin can change that.")
    if isinstance(error, NotFound):
        return Told(404, "There is no such page", str(error) or "It may have been merged, or the address is mistyped.")
    if isinstance(error, ForeignRequest):
        said = "The form did not come from this desk, or you were signed out meanwhile. Nothing was changed."
        return Told(403, "Send it again from here", said)
    return None


def _of_the_framework(error: Exception) -> Told | None:
    if isinstance(error, RequestValidationError):
        lines = tuple(f"{e['loc'][-1]}: {e['msg']}" for e in error.errors())
        return Told(422, "This address asks for something else", "What it was given cannot be read:", lines)
    if isinstance(error, HTTPException):
        said = {404: "There is no such page", 405: "This page does not take that"}
        title = said.get(error.status_code, "This cannot be done so")
        return Told(error.status_code, title, "The address may be mistyped, or old. The drawers above lead on.")
    return None


def _of_the_store(error: Exception) -> Told | None:
    if isinstance(error, Conflict):
        return Told(409, "That does not go together", f"{error.what}: {error.where}. {error.mend}")
    if isinstance(error, NoCatalogueError):
        return Told(503, "No catalogue yet", "Nothing can be fitted before one is loaded, under Catalogue.")
    if isinstance(error, StoreError):  # its text names the database, which is nobody's business here
        return Told(503, "The database is away", "Nothing was changed. Try again in a few seconds.")
    return None


def told(request: Request, error: Exception) -> Response:
    """Return the page for an error."""
    if isinstance(error, SignInFirst):
        to = within(error.then)
        return redirect(request, f"{ROOT}/sign-in?then={to}" if to != f"{ROOT}/" else f"{ROOT}/sign-in")
    if isinstance(error, ChooseFirst):
        return redirect(request, f"{ROOT}/account", "Choose a password of your own first")
    said = explain(error)
    if said is None:
        raise error
    said = replace(said, detail=by_page(said.detail), lines=tuple(map(by_page, said.lines)))
    return page(request, "fault.html", status=said.status, part="fault_part.html", fault=said)


def install(app: FastAPI) -> None:
    """Let every error that can be explained become a page."""
    kinds: tuple[type[Exception], ...] = (
        Refused, NotInCatalogueError, Unreadable, FormError, NotYours, NotFound, ForeignRequest, SignInFirst, ChooseFirst,
        RequestValidationError, HTTPException, StoreError, NoCatalogueError,
    )  # fmt: skip
    for kind in kinds:
        app.add_exception_handler(kind, told)
