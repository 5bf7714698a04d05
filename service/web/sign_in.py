"""Signing in and out, and what is one's own: password and second factor."""

from __future__ import annotations

from typing import Annotated

import segno
from fastapi import APIRouter, Depends, Query, Request
from starlette.responses import Response

from service.core.password import SALT_BYTES, SECRET_BYTES, TOKEN_BYTES, enrolment, secret_of
from service.flow.manage_users import change_password, set_second_factor
from service.flow.refusal import Refused
from service.flow.sign_in import CodeWanted, sign_in, sign_out
from service.web.desk import Here
from service.web.pages import ROOT, page, redirect, within
from service.web.posted import Form, Posted, unsigned
from service.web.who import Anyone, actor, drop_cookie, keep_cookie

routes = APIRouter()
Then = Annotated[str, Query(max_length=2_000)]


@routes.get("/sign-in")
def show_sign_in(request: Request, then: Then = "") -> Response:
    """Show the form to sign in with."""
    return page(request, "sign_in.html", then=within(then), login="", trouble=None, code=False)


@routes.post("/sign-in")
def do_sign_in(request: Request, here: Here, form: Annotated[Posted, Depends(unsigned)]) -> Response:
    """Sign somebody in, or say why not."""
    address = request.client.host if request.client else "unknown"
    then, login = within(form.text("then")), form.text("login")
    code, status = False, 422
    if not here.passes(address):
        trouble, status = "There were too many tries from your address. Wait a minute", 429
    else:
        try:
            ticket = here.random(TOKEN_BYTES).hex()
            sign_in(here.store, login, form.text("password"), form.text("code"), ticket=ticket)
            response = redirect(request, then)
            keep_cookie(response, ticket)
        except CodeWanted as wanted:
            trouble, code = str(wanted), True
        except Refused as refused:
            trouble = str(refused)
        else:
            return response
    return page(request, "sign_in.html", status=status, then=then, login=login, trouble=trouble, code=code)


@routes.post("/sign-out")
def do_sign_out(request: Request, here: Here, by: Anyone, _: Form) -> Response:
    """Sign somebody out."""
    sign_out(here.store, by.token)
    response = redirect(request, f"{ROOT}/sign-in", "You are signed out")
    drop_cookie(response)
    return response


@routes.get("/account")
def show_account(request: Request, here: Here, by: Anyone) -> Response:
    """Show what is somebody's own: password and second factor."""
    secret = secret_of(here.random(SECRET_BYTES))
    return _account(request, by, secret, None)


@routes.post("/account/password")
def do_change_password(request: Request, here: Here, by: Anyone, form: Form) -> Response:
    """Take a new password."""
    salt = here.random(SALT_BYTES)
    if form.text("new") != form.text("again"):
        raise Refused("the new password was not written the same twice")
    unit = here.store.writing(actor(request, by))
    change_password(unit, by.user, form.text("old"), form.text("new"), salt=salt, token=by.token)
    return redirect(request, f"{ROOT}/account", "The new password is taken; you are signed out everywhere else")


@routes.post("/account/factor")
def do_set_factor(request: Request, here: Here, by: Anyone, form: Form) -> Response:
    """Take a second factor, or take it away."""
    secret = form.text("secret") or None
    try:
        set_second_factor(here.store.writing(actor(request, by)), by.user, secret, form.text("code"))
    except Refused as refused:
        return _account(request, by, secret or "", str(refused))
    said = "From now on a code is asked for when you sign in" if secret else "No code is asked for any more"
    return redirect(request, f"{ROOT}/account", said)


def _account(request: Request, by: Anyone, secret: str, trouble: str | None) -> Response:
    address = enrolment(secret, by.user.login) if secret and not by.user.secret else None
    picture = segno.make(address).svg_inline(scale=4, border=2, dark="#000", light="#fff") if address else None
    status = 422 if trouble else 200
    return page(request, "account.html", status=status, secret=secret, picture=picture, trouble=trouble)
