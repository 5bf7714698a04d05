"""The house's keys to the service over HTTP: make one, shown once; take one back."""

from __future__ import annotations

from datetime import timedelta

from fastapi import APIRouter, Request
from starlette.responses import Response

from service.core.api_key import RANDOM_BYTES, SCOPES
from service.flow.create_key import KeyWanted, create_key
from service.flow.refusal import Refused
from service.flow.restore_key import restore_key
from service.flow.revoke_key import revoke_key
from service.web.desk import Desk, Here
from service.web.pages import ROOT, Notice, page, redirect
from service.web.posted import Form, Posted
from service.web.who import AtAdmin, actor

routes = APIRouter(prefix="/house/keys")
HERE = f"{ROOT}/house/keys"
SOON = timedelta(days=30)
OPENS = {
    "enquiries:write": "send enquiries and have them answered",
    "enquiries:read": "read enquiries and answers",
    "records:read": "read records",
    "records:write": "write records",
    "reports:read": "read reports",
    "admin": "everything, every dealer's too",
}


@routes.get("")
def list_keys(request: Request, here: Here, by: AtAdmin) -> Response:
    """List the keys, without what is secret of them."""
    del by
    return _listed(request, here, Posted())


@routes.post("")
def do_create(request: Request, here: Here, by: AtAdmin, form: Form) -> Response:
    """Make a key and show it, this once."""
    try:
        wanted = KeyWanted(
            name=form.text("name") or None,
            scopes=tuple(form.all("scope")),
            dealer=form.text("dealer") or None,
            days=_days(form.text("days") or "365"),
            replaces=form.text("replaces") or None,
            grace_days=_days(form.text("grace") or "7"),
        )
        unit = here.store.writing(actor(request, by))
        made = create_key(unit, wanted, random=here.random(RANDOM_BYTES), who=by.who)
    except Refused as refused:
        return _listed(request, here, form, f"{refused}.")
    return page(request, "house/key.html", key=made.key, text=made.text)


@routes.post("/{key_id}/revoke")
def do_revoke(request: Request, here: Here, by: AtAdmin, form: Form, key_id: str) -> Response:
    """Take a key back at once."""
    del form
    found = revoke_key(here.store.writing(actor(request, by)), key_id)
    said = f"Key {found.name} opens nothing any more. For ten minutes this can be undone"
    return redirect(request, HERE, Notice(said, f"{HERE}/{key_id}/restore"))


@routes.post("/{key_id}/restore")
def do_restore(request: Request, here: Here, by: AtAdmin, form: Form, key_id: str) -> Response:
    """Give a key back that was taken back by mistake a moment ago."""
    del form
    found = restore_key(here.store.writing(actor(request, by)), key_id)
    return redirect(request, HERE, Notice(f"Key {found.name} opens what it did", f"{HERE}/{key_id}/revoke"))


def _days(text: str) -> int:
    if not (text.isascii() and text.isdecimal() and len(text) < 6):  # noqa: PLR2004 - longer than any key lasts
        raise Refused(f"{text!r} is no number of days; write a whole one, as 365")
    return int(text)


def _listed(request: Request, here: Desk, form: Posted, trouble: str | None = None) -> Response:
    with here.store.reading() as uow:
        keys, now = uow.keys.all(), uow.now()
    said = {name: form.text(name) for name in ("name", "dealer", "days", "replaces", "grace")}
    return page(
        request, "house/keys.html", status=422 if trouble else 200,
        keys=keys, now=now, soon=now + SOON, said=said, ticked=form.all("scope"), trouble=trouble,
        scopes=[(scope, OPENS[scope]) for scope in SCOPES],
    )  # fmt: skip
