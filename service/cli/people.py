"""`transom people`: what is held about somebody, and taking it away."""

from __future__ import annotations

from dataclasses import asdict
from pathlib import Path
from typing import Annotated, Any

import typer

from service import bootstrap
from service.cli import faults, out, outbox
from service.cli.doer import Who as Doer
from service.cli.doer import doer
from service.cli.options import Db, Json, Preview, group, opened, reading
from service.cli.pages import people as page
from service.cli.plain import as_json
from service.cli.sheet import Sheet
from service.flow.people_erase import Erased, erase_person
from service.flow.people_export import export_person
from service.flow.people_find import find_people
from service.flow.people_retention import Due, apply_retention, months_before, past_retention
from service.store.happening import Actor
from service.store.people import Known

commands = group("What is held about somebody: find, export, erase, and what is past its time.")
Text = Annotated[str, typer.Argument(metavar="TEXT", help="A part of a name, an address or a telephone number.")]
Person = Annotated[str, typer.Argument(metavar="WHO", help="A contact's id, or their whole address, name or number.")]
OutFile = Annotated[Path, typer.Option("--out", metavar="FILE", help="The file to write (JSON).")]
Why = Annotated[str, typer.Option("--why", help="Why; it is kept, so it must not name them.")]
Attached = Annotated[
    bool,
    typer.Option("--with-attachments", help="Also put a note in the place of every mail attached to their records."),
]
Months = Annotated[
    int | None,
    typer.Option(
        "--months", min=1, max=1200, help="How long they are held; else TRANSOM_RETENTION_MONTHS, else for ever."
    ),
]
Apply = Annotated[bool, typer.Option("--apply", help="Erase them; without it they are only listed.")]
REASON = "held longer than set"


@commands.command()
def find(text: Text, json: Json = False, db: Db = None) -> None:
    """List the contacts in which the text stands. Exit status 1 where there is none."""
    with reading(db) as uow:
        found = find_people(uow, text)
    if json:
        out.document({"schema": "people/1", "people": [_contact(one) for one in found]})
    else:
        with out.page() as console:
            page.contacts(Sheet(console), found)
    if not found:
        raise typer.Exit(faults.NO)


@commands.command()
def export(who: Person, file: OutFile, by: Doer = None, json: Json = False, db: Db = None) -> None:
    """Write everything that is held about one person into a file, and say what could not be looked into."""
    with opened(db) as store:
        found = export_person(store.writing(Actor(doer(by))), who)
    outbox.write_bytes(file, as_json(found).encode() + b"\n")
    if json:
        counts = {key: len(value) for key, value in found.items() if isinstance(value, list)}
        out.document({"schema": "person-written/1", "file": str(file), "counts": counts})
        return
    with out.page() as console:
        page.exported(Sheet(console), found, str(file))


@commands.command()
def erase(
    who: Person,
    why: Why,
    preview: Preview = False,
    attached: Attached = False,
    by: Doer = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Take a person's data away, for good: this cannot be undone. Look at it with --preview first.

    Boat forms, fits and records stay, without them. A note stands for each of their mails. Mails attached to records are
    listed for you to decide. What backups hold is theirs until those are thrown away.
    """
    vault = bootstrap.vault(bootstrap.settings(db))
    if not preview:
        out.note("transom: this cannot be undone")
    with opened(db) as store:
        uow = store.writing(Actor(doer(by)))
        found = erase_person(uow, vault, who, why=why, preview=preview, attachments=attached)
    _tell(found, json)


@commands.command()
def retention(months: Months = None, apply: Apply = False, by: Doer = None, json: Json = False, db: Db = None) -> None:
    """List people not heard of for so many months whom no shipped or installed record names; with --apply erase them.

    Where no time is set nobody is due. Erasing cannot be undone.
    """
    try:
        held = months or bootstrap.retention()
    except ValueError as error:
        raise faults.BadInput(str(error)) from None
    vault = bootstrap.vault(bootstrap.settings(db))
    due: tuple[Due, ...] = ()
    erased = None
    if held is not None:
        before = months_before(bootstrap.clock(), held)
        with opened(db) as store, store.writing(Actor(doer(by))) if apply else store.reading() as uow:
            due = past_retention(uow, before)
            erased = apply_retention(uow, vault, before, why=REASON) if apply else None
    if json:
        rows = [{"contacts": list(one.who.ids), "heard": one.heard.isoformat()} for one in due]
        out.document(
            {
                "schema": "retention/1",
                "months": held,
                "due": rows,
                "erased": None if erased is None else _shaped(erased),
            }
        )
        return
    with out.page() as console:
        page.due(Sheet(console), held, due, erased)


def _tell(found: Erased, json: bool) -> None:
    if json:
        out.document(_shaped(found))
        return
    with out.page() as console:
        page.erased(Sheet(console), found)


def _shaped(found: Erased) -> dict[str, Any]:
    mails = [{"record": m.reference, "number": m.number, "sha256": m.sha256} for m in found.mails]
    return {"schema": "erased/1", **asdict(found), "mails": mails}


def _contact(one: Known) -> dict[str, Any]:
    return {**asdict(one), "created": one.created.isoformat()}
