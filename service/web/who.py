"""Who is signed in, and may they? Each route names who may come in its signature: `by: AtDesk`."""

from __future__ import annotations

from collections.abc import Callable
from typing import Annotated
from urllib.parse import quote

from fastapi import Depends, Request, Response

from service.flow.sign_in import IDLE, Visitor, visitor
from service.store.happening import Actor
from service.web.desk import Desk, desk

COOKIE = "__Host-desk"
OPEN_TO_FRESH = ("/desk/account", "/desk/account/password", "/desk/sign-out")


class SignInFirst(Exception):  # noqa: N818 - named for what it is
    """Nobody is signed in; `then` is where they wanted to go."""

    def __init__(self, then: str) -> None:
        """Keep the place."""
        super().__init__(then)
        self.then = then


class ChooseFirst(Exception):  # noqa: N818 - the same
    """A password that was given out has to be replaced before anything else."""


class NotYours(Exception):  # noqa: N818 - the same
    """Signed in, but not for this."""


def signed_in(request: Request, here: Annotated[Desk, Depends(desk)]) -> Visitor:
    """Return who is signed in. SignInFirst where nobody is, ChooseFirst where they have to choose a password."""
    token = request.cookies.get(COOKIE, "")
    found = visitor(here.store, token) if token else None
    if found is None:
        path = request.url.path + (f"?{request.url.query}" if request.url.query else "")
        raise SignInFirst(quote(path if request.method == "GET" else request.scope.get("root_path", "")))
    if found.user.fresh and request.url.path not in OPEN_TO_FRESH:
        raise ChooseFirst
    request.state.visitor = found
    return found


def allowed(*roles: str) -> Callable[..., Visitor]:
    """Return what lets these roles in. NotYours for the others."""

    def one(by: Annotated[Visitor, Depends(signed_in)]) -> Visitor:
        if by.user.role not in roles:
            raise NotYours
        return by

    return one


def owner_of(by: Visitor) -> str | None:
    """Return whose enquiries somebody sees: a dealer's people their own dealer's, others everybody's (None)."""
    return by.user.dealer if by.user.role == "dealer" else None


def actor(request: Request, by: Visitor) -> Actor:
    """Return on whose behalf something is written, for the audit."""
    return Actor(by.who, None, getattr(request.state, "request_id", None))


def keep_cookie(response: Response, token: str) -> None:
    """Give the browser the cookie of a session: for this host alone, over TLS or loopback, out of reach of scripts."""
    response.set_cookie(
        COOKIE, token, max_age=int(IDLE.total_seconds()) * 14, path="/", secure=True, httponly=True, samesite="lax"
    )


def drop_cookie(response: Response) -> None:
    """Take the cookie back."""
    response.delete_cookie(COOKIE, path="/", secure=True, httponly=True, samesite="lax")


Anyone = Annotated[Visitor, Depends(signed_in)]
"""Whoever is signed in."""
AtDesk = Annotated[Visitor, Depends(allowed("desk", "admin"))]
"""The maker's own people, but fitters."""
Selling = Annotated[Visitor, Depends(allowed("desk", "admin", "dealer"))]
"""Whoever answers enquiries: the desk all of them, a dealer's people their own."""
Fitting = Annotated[Visitor, Depends(allowed("desk", "admin", "fitter"))]
"""Whoever writes down what was really fitted."""
AtAdmin = Annotated[Visitor, Depends(allowed("admin"))]
"""Who looks after people, keys and the audit."""
