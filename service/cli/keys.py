"""`transom keys`: who may ask the service over HTTP."""

from __future__ import annotations

from typing import Annotated, Any

import typer

from service import bootstrap
from service.cli import out
from service.cli.doer import Who, doer
from service.cli.options import Db, Json, group, reading, writing
from service.cli.sheet import Sheet, table, words
from service.core.api_key import RANDOM_BYTES, SCOPES
from service.flow.create_key import KeyWanted, create_key
from service.flow.revoke_key import revoke_key
from service.store.keys import ApiKey

commands = group("Keys to the service over HTTP: make, list, revoke.")
Name = Annotated[str | None, typer.Option("--name", help="What it is for: a web form, a spreadsheet.")]
Scope = Annotated[list[str] | None, typer.Option("--scope", help=f"What it opens, once each: {', '.join(SCOPES)}.")]
Dealer = Annotated[
    str | None,
    typer.Option("--dealer", help="Whose it is; it sees that dealer's enquiries alone. Without: your own desk's."),
]
Days = Annotated[int, typer.Option("--days", min=1, max=3660, help="How long it opens anything.")]
Replaces = Annotated[
    str | None, typer.Option("--replaces", metavar="KEY", help="The id of a key it takes the place of.")
]
Grace = Annotated[int, typer.Option("--grace", min=0, max=3660, help="Days until the key that is replaced ends.")]
Id = Annotated[str, typer.Argument(metavar="KEY", help="A key's id, as `transom keys list` shows it.")]


@commands.command()
def create(
    name: Name = None,
    scope: Scope = None,
    dealer: Dealer = None,
    days: Days = 365,
    replaces: Replaces = None,
    grace: Grace = 7,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Make a key and show it, this once: only its hash is kept.

    With --replaces the new one opens what the old one does, and both work until the grace is over.
    """
    wanted = KeyWanted(name, tuple(scope or ()), dealer, days, replaces, grace)
    with writing(db) as uow:
        made = create_key(uow, wanted, random=bootstrap.random_bytes(RANDOM_BYTES), who=doer(who))
    if json:
        out.document({**_document(made.key), "key": made.text})
        return
    out.say(made.text)
    out.note(f"transom: key {made.key.id} opens {', '.join(made.key.scopes)}; it is not shown again")


@commands.command("list")
def list_(json: Json = False, db: Db = None) -> None:
    """List the keys, without what is secret of them."""
    with reading(db) as uow:
        found, now = uow.keys.all(), uow.now()
    if json:
        out.document([_document(key) for key in found])
        return
    rows = [
        (key.id, key.name, key.dealer or "(desk)", " ".join(key.scopes), _day(key.used), _ends(key), "yes" if key.valid(now) else "no")
        for key in found
    ]  # fmt: skip
    headings = ("id", "name", "dealer", "opens", "last used", "ends", "valid")
    with out.page() as console:
        Sheet(console).part("keys", table(headings, rows, wraps=(1, 2, 3)) if rows else words("there are none yet"))


@commands.command()
def revoke(key: Id, json: Json = False, db: Db = None) -> None:
    """Take a key back at once."""
    with writing(db) as uow:
        found = revoke_key(uow, key)
    if json:
        out.document(_document(found))
        return
    out.say(f"key {found.id} ({found.name}) is revoked")


def _document(key: ApiKey) -> dict[str, Any]:
    times = {name: getattr(key, name) for name in ("created", "expires", "used", "revoked")}
    return {
        "id": key.id,
        "name": key.name,
        "dealer": key.dealer,
        "scopes": list(key.scopes),
        "who": key.who,
        **{name: at.isoformat() if at else None for name, at in times.items()},
        "replaces": key.replaces,
    }


def _day(at: Any) -> str:  # noqa: ANN401 - a time or none
    return f"{at:%Y-%m-%d}" if at else "never"


def _ends(key: ApiKey) -> str:
    return f"revoked {_day(key.revoked)}" if key.revoked else _day(key.expires)
