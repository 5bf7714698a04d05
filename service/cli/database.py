"""`transom db`: make, bring up to date and look at the database."""

from __future__ import annotations

import typer

from service import bootstrap
from service.cli import faults, out
from service.cli.options import Db, Json, group
from service.cli.progress import bar

commands = group("Make the database, bring it up to date, look at it.")
STATES = {
    "ok": "up to date",
    "new": "not there yet (or empty): run `transom db upgrade`",
    "old": "made by an older version: run `transom db upgrade`",
    "newer": "made by a newer version of transom: update the program",
    "not_ours": "another program's",
}


@commands.command()
def upgrade(json: Json = False, db: Db = None) -> None:
    """Bring the database to this version, making it where there is none."""
    chosen = bootstrap.settings(db)
    before = bootstrap.state(chosen)
    with bar("upgrade"):
        revision = bootstrap.upgrade(chosen)
    if json:
        out.document({"database": bootstrap.shown(chosen), "before": before, "revision": revision})
        return
    done = {"ok": "is up to date", "new": "made"}.get(before, "upgraded")
    out.say(f"{bootstrap.shown(chosen)}: {done}, at revision {revision}")


@commands.command()
def check(json: Json = False, db: Db = None) -> None:
    """Say whether the database can be worked with, changing nothing. Exit status 3 where it cannot."""
    chosen = bootstrap.settings(db)
    found = bootstrap.state(chosen)
    if json:
        out.document({"database": bootstrap.shown(chosen), "state": found})
    elif found == "ok":
        out.say(f"{bootstrap.shown(chosen)}: {STATES[found]}")
    if found != "ok":
        out.note(f"transom: {bootstrap.shown(chosen)}: {STATES[found]}")
        raise typer.Exit(faults.CANNOT_WORK)
