"""`transom users`: who may sign in at the desk."""

from __future__ import annotations

from typing import Annotated, Any

import typer

from service import bootstrap
from service.cli import out
from service.cli.options import Db, Json, group, opened, reading
from service.cli.sheet import Sheet, table, words
from service.flow.manage_users import GIVEN_BYTES, ROLES, Given, add_user, change_user, reset_user
from service.store.users import User

commands = group("Who may sign in at the desk in a browser: add, list, give a new password, close.")
Login = Annotated[str, typer.Argument(metavar="LOGIN", help="The mail address they sign in by.")]
Name = Annotated[str, typer.Option("--name", help="Their name, as it stands in histories.")]
Role = Annotated[str, typer.Option("--role", help=f"What they do: {', '.join(ROLES)}.")]
Dealer = Annotated[str | None, typer.Option("--dealer", help="Whose they are, for a dealer's people.")]


@commands.command()
def add(
    login: Login, name: Name, role: Role = "desk", dealer: Dealer = None, json: Json = False, db: Db = None
) -> None:
    """Let somebody sign in, and show the password to give them, this once; they choose their own at the first visit."""
    random = bootstrap.random_bytes(GIVEN_BYTES)
    with opened(db) as store:
        _show(add_user(store.writing(), login, name=name, role=role, dealer=dealer, random=random), json=json)


@commands.command()
def reset(login: Login, json: Json = False, db: Db = None) -> None:
    """Give somebody a new password, take their second factor away and sign them out everywhere."""
    with opened(db) as store:
        _show(reset_user(store.writing(), login, random=bootstrap.random_bytes(GIVEN_BYTES)), json=json)


@commands.command()
def close(login: Login, json: Json = False, db: Db = None) -> None:
    """Let somebody sign in no more; what they did stays under their name."""
    with opened(db) as store:
        _told(change_user(store.writing(), login, closed=True), "signs in no more", json=json)


@commands.command("open")
def open_(login: Login, json: Json = False, db: Db = None) -> None:
    """Let somebody who was closed sign in again."""
    with opened(db) as store:
        _told(change_user(store.writing(), login, closed=False), "signs in again", json=json)


@commands.command("list")
def list_(json: Json = False, db: Db = None) -> None:
    """List who may sign in, and who did."""
    with reading(db) as uow:
        found = uow.users.all()
    if json:
        out.document([_document(user) for user in found])
        return
    rows = [
        (user.login, user.name, user.role, user.dealer or "", "yes" if user.secret else "no", _day(user), "no" if user.closed else "yes")
        for user in found
    ]  # fmt: skip
    headings = ("signs in by", "name", "role", "dealer", "second factor", "last seen", "may")
    with out.page() as console:
        Sheet(console).part("users", table(headings, rows, wraps=(0, 1, 3)) if rows else words("there are none yet"))


def _show(made: Given, *, json: bool) -> None:
    if json:
        out.document({**_document(made.user), "password": made.password})
        return
    out.say(made.password)
    out.note(f"transom: {made.user.login} signs in with this password and chooses another; it is not shown again")


def _told(user: User, what: str, *, json: bool) -> None:
    if json:
        out.document(_document(user))
    else:
        out.note(f"transom: {user.login} {what}")


def _document(user: User) -> dict[str, Any]:
    return {
        "login": user.login,
        "name": user.name,
        "role": user.role,
        "dealer": user.dealer,
        "second_factor": user.secret is not None,
        "seen": user.seen.isoformat() if user.seen else None,
        "closed": user.closed.isoformat() if user.closed else None,
    }


def _day(user: User) -> str:
    return f"{user.seen:%Y-%m-%d}" if user.seen else "never"
