"""The house's users: let somebody in, give a new password, change what they are, close and open again."""

from __future__ import annotations

from typing import Annotated
from urllib.parse import quote, urlencode

from fastapi import APIRouter, Query, Request
from starlette.responses import Response

from service.flow.manage_users import GIVEN_BYTES, ROLES, add_user, change_user, reset_user
from service.flow.refusal import Refused
from service.store.errors import Conflict
from service.store.users import User
from service.web.desk import Desk, Here
from service.web.faults import NotFound
from service.web.pages import ROOT, Notice, page, redirect
from service.web.posted import Form, Posted
from service.web.who import AtAdmin, actor

routes = APIRouter(prefix="/house/users")
HERE = f"{ROOT}/house/users"
Old = Annotated[str, Query(max_length=200)]
WHAT = {
    "desk": "desk: everything but the house",
    "dealer": "dealer: that dealer's own enquiries",
    "fitter": "fitter: what was really fitted",
    "admin": "admin: everything",
}
CHOICES = [(role, WHAT[role]) for role in ROLES]


@routes.get("")
def list_users(request: Request, here: Here, by: AtAdmin) -> Response:
    """List who may sign in."""
    del by
    return _listed(request, here, Posted())


@routes.post("")
def do_add(request: Request, here: Here, by: AtAdmin, form: Form) -> Response:
    """Let somebody new sign in, and show the password to give them."""
    random = here.random(GIVEN_BYTES)
    role = form.text("role")
    unit = here.store.writing(actor(request, by))
    try:
        made = add_user(
            unit, form.text("login"), name=form.text("name"), role=role, random=random, dealer=form.text("dealer")
        )
    except Refused as refused:
        return _listed(request, here, form, f"{refused}.")
    except Conflict as conflict:
        return _listed(request, here, form, f"{conflict.what}: {conflict.where}. {conflict.mend}.")
    return page(request, "house/password.html", user=made.user, password=made.password, fresh=True)


@routes.post("/{login:path}/reset")
def do_reset(request: Request, here: Here, by: AtAdmin, form: Form, login: str) -> Response:
    """Give a new password, take the second factor away and sign them out everywhere."""
    del form
    user = _user(here, login)
    made = reset_user(here.store.writing(actor(request, by)), user.login, random=here.random(GIVEN_BYTES))
    return page(request, "house/password.html", user=made.user, password=made.password, fresh=False)


@routes.post("/{login:path}/close")
def do_close(request: Request, here: Here, by: AtAdmin, form: Form, login: str) -> Response:
    """Let somebody sign in no more."""
    del form
    done = change_user(here.store.writing(actor(request, by)), _user(here, login).login, by=by.user, closed=True)
    return redirect(request, HERE, Notice(f"{done.name} signs in no more", f"{_at(login)}/open"))


@routes.post("/{login:path}/open")
def do_open(request: Request, here: Here, by: AtAdmin, form: Form, login: str) -> Response:
    """Let somebody sign in again."""
    del form
    done = change_user(here.store.writing(actor(request, by)), _user(here, login).login, by=by.user, closed=False)
    return redirect(request, HERE, Notice(f"{done.name} signs in again", f"{_at(login)}/close"))


@routes.get("/{login:path}")
def show(request: Request, here: Here, by: AtAdmin, login: str) -> Response:
    """Show somebody, with what can be changed."""
    del by
    return _shown(request, _user(here, login))


@routes.post("/{login:path}")
def do_change(
    request: Request, here: Here, by: AtAdmin, form: Form, login: str,
    name: Old = "", role: Old = "", dealer: Old = "",
) -> Response:  # fmt: skip
    """Change name, role and dealer; the address of an undo holds what they were."""
    user = _user(here, login)
    old = {"name": user.name, "role": user.role, "dealer": user.dealer or ""}
    given = form.text("role") != ""
    new = {
        "name": form.text("name") if given else name,
        "role": form.text("role") if given else role,
        "dealer": form.text("dealer") if given else dealer,
    }
    unit = here.store.writing(actor(request, by))
    try:
        done = change_user(unit, user.login, by=by.user, **{**new, "dealer": new["dealer"] or None})
    except Refused as refused:
        return _shown(request, user, new, f"{refused}.")
    return redirect(
        request, _at(login),
        Notice(f"{done.name} is {done.role} now", f"{_at(login)}?{urlencode(old)}", "Change it back"),
    )  # fmt: skip


def _at(login: str) -> str:
    """Return where somebody is shown."""
    return f"{HERE}/{quote(login, safe='')}"


def _user(here: Desk, login: str) -> User:
    with here.store.reading() as uow:
        found = uow.users.by_login(login)
    if found is None:
        raise NotFound("nobody signs in by that address")
    return found


def _listed(request: Request, here: Desk, form: Posted, trouble: str | None = None) -> Response:
    with here.store.reading() as uow:
        users = uow.users.all()
    said = {name: form.text(name) for name in ("login", "name", "role", "dealer")}
    status = 422 if trouble else 200
    return page(request, "house/users.html", status=status, users=users, said=said, roles=CHOICES, trouble=trouble)


def _shown(request: Request, user: User, said: dict[str, str] | None = None, trouble: str | None = None) -> Response:
    now = said or {"name": user.name, "role": user.role, "dealer": user.dealer or ""}
    status = 422 if trouble else 200
    return page(request, "house/user.html", status=status, user=user, said=now, roles=CHOICES, trouble=trouble)
