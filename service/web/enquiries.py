"""Enquiries: what waits for whom, taking in what came, and one enquiry with its letter and its form."""

from __future__ import annotations

import base64
import binascii
from typing import Annotated, Any
from urllib.parse import urlencode

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service.core.form import FormError
from service.files.read.errors import Unreadable
from service.flow.resolve import resolve_name
from service.flow.sign_in import Visitor
from service.flow.take_in import Taken, take_in
from service.flow.waiting_enquiries import waiting_enquiries
from service.web.by_page import by_page
from service.web.desk import Desk, Here
from service.web.enquiry_edits import mine, shown
from service.web.faults import NotFound
from service.web.pages import ROOT, page, redirect
from service.web.posted import Form, Posted
from service.web.who import Selling, actor, owner_of

routes = APIRouter(prefix="/enquiries")
AT = f"{ROOT}/enquiries"
PER_PAGE = 25
WAITS = {"us": "Ours to do", "them": "With the asker", "nobody": "Done"}
CARRIED = 200_000
"""A file of so many bytes is sent along when somebody has to be asked about it; of a larger one its words alone."""
KINDS = {
    "thanks": "a letter of thanks", "spares": "an order of parts", "reply": "a reply without anything of a boat in it",
    "other": "something that asks for no gear",
}  # fmt: skip


@routes.get("")
def list_all(
    request: Request,
    here: Here,
    by: Selling,
    waits: Annotated[str, Query(max_length=10)] = "us",
    after: Annotated[str | None, Query(max_length=200)] = None,
) -> Response:
    """List enquiries, the newest first; those that wait for the desk where nothing else is asked for."""
    return _list(request, here, by, waits=waits, after=after)


def _list(
    request: Request,
    here: Desk,
    by: Visitor,
    *,
    waits: str = "us",
    after: str | None = None,
    status: int = 200,
    **said: Any,  # noqa: ANN401 - of the form to take something in
) -> Response:
    waits = waits if waits in WAITS else "all"
    try:
        with here.store.reading() as uow:
            chosen = None if waits == "all" else waits
            board = waiting_enquiries(uow, owner_of(by), waits=chosen, after=after, limit=PER_PAGE)
    except ValueError:
        raise NotFound("This place in the list is not known. Begin at its top.") from None
    following = f"{AT}?{urlencode({'waits': waits, 'after': board.following})}" if board.following else None
    form = {"text": "", "trouble": None, "refused": None, "raw": ""} | said
    return page(
        request, "enquiries/list.html", status=status, board=board, waits=waits, names=WAITS, later=after is not None,
        following=following, of_all=owner_of(by) is None, **form,
    )  # fmt: skip


@routes.post("")
def take(request: Request, here: Here, by: Selling, form: Form) -> Response:
    """Take in a mail, a text or a boat form, pasted or as a file; what asks for nothing is said, and may be taken anyway."""
    data, name = _given(form)
    try:
        taken = take_in(
            here.store, data, name, actor=actor(request, by), dealer=owner_of(by), anyway=bool(form.text("anyway"))
        )
    except FormError as error:
        lines = [str(defect) for defect in error.defects]
        return _list(request, here, by, status=422, text=form.text("text"), trouble="; ".join(lines))
    except (Unreadable, ValueError) as error:
        return _list(request, here, by, status=422, text=form.text("text"), trouble=by_page(str(error)))
    if not taken.enquiries:
        raw = base64.b64encode(data).decode() if form.file("file") and len(data) <= CARRIED else form.text("raw")
        text = form.text("text") or taken.text
        return _list(request, here, by, status=422, text=text, raw=raw, refused=KINDS.get(taken.kind, KINDS["other"]))
    return redirect(request, f"{AT}/{taken.enquiries[0]}", _said(taken))


def _given(form: Posted) -> tuple[bytes, str]:
    sent = form.file("file")
    if sent is not None:
        return sent.content, sent.name
    try:
        raw = base64.b64decode(form.text("raw"), validate=True)
    except binascii.Error:
        raw = b""
    return (raw, "the file") if raw else (form.text("text").encode(), "what was pasted")


def _said(taken: Taken) -> str:
    many = len(taken.enquiries)
    if taken.known:
        return "This came before: here is the enquiry there is"
    if many > 1:
        return f"Taken in: {many} boats, an enquiry for each. The others stand beside this one's name"
    return "Taken in" if taken.kind in ("enquiry", "reply") else "Taken in with an empty form"


@routes.get("/{enquiry_id}")
def show(
    request: Request, here: Here, by: Selling, enquiry_id: str, hull: Annotated[str, Query(max_length=200)] = ""
) -> Response:
    """Show an enquiry: its letter with each value's words marked, its form, what there is to offer, its history.

    `hull` is a name to look for among the hull models.
    """
    enquiry = mine(here, by, enquiry_id)
    if not hull.strip():
        return shown(request, here, enquiry)
    with here.store.reading() as uow:
        found = resolve_name(uow, hull.strip())
    lost = None if found.model or found.alternatives else "No hull model answers to that"
    return shown(request, here, enquiry, found=found, hull_query=hull, choosing=True, hull_trouble=lost)
