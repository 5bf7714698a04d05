"""What is held about people: find somebody, give it out, take it away for good, and who is past their time."""

from __future__ import annotations

import json
from typing import Annotated

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service import bootstrap
from service.flow.people_erase import erase_person
from service.flow.people_export import export_person
from service.flow.people_find import Somebody, find_people, somebody
from service.flow.people_retention import Due, months_before, past_retention
from service.flow.refusal import Refused
from service.store.people import Known
from service.web.attached import attached
from service.web.desk import Desk, Here
from service.web.faults import NotFound
from service.web.pages import ROOT, page, redirect
from service.web.posted import Form
from service.web.who import AtAdmin, AtDesk, actor

routes = APIRouter(prefix="/people")
MOST_SHOWN, LONGEST_MONTHS = 100, 1200
UNSAID = "asked for at the desk"
Text = Annotated[str, Query(max_length=200)]


@routes.get("")
def find(request: Request, here: Here, by: AtDesk, q: Text = "") -> Response:
    """Find people by a part of a name, an address or a number."""
    del by
    wanted = q.strip()
    found: tuple[Known, ...] = ()
    if wanted:
        with here.store.reading() as uow:
            found = find_people(uow, wanted)
    shown = found[:MOST_SHOWN]
    return page(request, "people/find.html", part="people/found.html", q=wanted, shown=shown, count=len(found))


@routes.post("/export")
def do_export(request: Request, here: Here, by: AtDesk, form: Form) -> Response:
    """Give out everything that is held about somebody; that it was stands in the audit."""
    found = export_person(here.store.writing(actor(request, by)), form.text("who"))
    return attached(json.dumps(found, ensure_ascii=False, indent=2).encode() + b"\n", f"person-{form.text('who')}.json")


@routes.get("/retention")
def list_due(request: Request, here: Here, by: AtDesk, months: Text = "") -> Response:
    """List people not heard of for so many months whom no shipped or installed record names."""
    del by
    trouble, held, due = None, bootstrap.retention(), tuple[Due, ...]()
    if months.strip():
        fits = months.strip().isascii() and months.strip().isdecimal() and 1 <= int(months) <= LONGEST_MONTHS
        trouble = None if fits else f"Write whole months, 1 to {LONGEST_MONTHS}."
        held = int(months) if fits else None
    if held is not None:
        with here.store.reading() as uow:
            due = past_retention(uow, months_before(here.clock(), held))
    return page(
        request, "people/retention.html", status=422 if trouble else 200,
        months=months.strip() or (held or ""), held=held, due=due[:MOST_SHOWN], count=len(due), trouble=trouble,
    )  # fmt: skip


@routes.get("/erase")
def show_erase(request: Request, here: Here, by: AtAdmin, who: Text = "", looked: Text = "") -> Response:
    """Show who it is at once, and what taking their data away would do when all that is held was `looked` through."""
    del by
    return _erasing(request, here, who.strip(), look=bool(looked))


@routes.post("/erase")
def do_erase(request: Request, here: Here, by: AtAdmin, form: Form) -> Response:
    """Take somebody's data away for good, where their name was typed to confirm it."""
    who, why, attachments = form.text("who"), form.text("why"), form.text("attachments") == "yes"
    one = _somebody(here, who)
    if _plain(form.text("name")) != _plain(called(one)):
        return _erasing(request, here, who, why=why, unsure="That is not the name above. Nothing was erased.")
    unit = here.store.writing(actor(request, by))
    try:
        done = erase_person(unit, here.vault, who, why=why or UNSAID, attachments=attachments)
    except Refused as refused:
        return _erasing(request, here, who, why=why, trouble=f"{refused}.")
    said = f"Erased: {len(done.contacts)} contacts, {len(done.enquiries)} enquiries; {len(done.records)} records stay without them"
    return redirect(request, f"{ROOT}/people", said)


def called(one: Somebody) -> str:
    """Return what is typed to confirm: a name, else an address, a number or an id."""
    first = one.contacts[0]
    return next((text for c in one.contacts for text in (c.name,) if text), first.email or first.phone or first.id)


def _plain(text: str) -> str:
    return " ".join(text.casefold().split())


def _somebody(here: Desk, who: str) -> Somebody:
    try:
        return somebody(here.store.reading(), who)
    except Refused as refused:
        raise NotFound(f"{refused}") from None


def _erasing(
    request: Request,
    here: Desk,
    who: str,
    *,
    look: bool = True,
    why: str = "",
    unsure: str | None = None,
    trouble: str | None = None,
) -> Response:
    one = _somebody(here, who)
    would = erase_person(here.store.reading(), here.vault, who, why="", preview=True) if look else None
    return page(
        request, "people/erase.html", part="people/would.html", status=422 if trouble or unsure else 200,
        who=who, one=one, name=called(one), would=would, why=why, unsure=unsure, trouble=trouble,
    )  # fmt: skip
