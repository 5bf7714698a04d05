"""`transom read`: what a mail, a text or a boat form says."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from service import bootstrap
from service.cli import faults, given, out
from service.cli.options import Db, Json, Source, reading
from service.cli.outbox import write_bytes
from service.cli.pages import reading as page
from service.cli.sheet import Sheet, said
from service.core.boat import BoatForm
from service.core.reading import Reading
from service.files.write.reading_html import reading_html
from service.flow.read import read_file

FORM_SCHEMA = "boat-form"


Html = Annotated[
    Path | None,
    typer.Option("--html", metavar="OUT", help="Also write a page: the letter, its words marked, beside the form."),
]


def read(file: Source, json: Json = False, html: Html = None, db: Db = None) -> None:
    """Read what a mail, a text or a boat form says.

    Form, evidence, doubts, what is missing, questions. Exit status 0 also for a mail that asks for nothing.
    """
    data, name = given.read(file)
    got = read_any(data, name, db)
    if html is not None:
        write_bytes(html, reading_html(got, name, said).encode("utf-8", "replace"))
        out.note(f"transom: wrote {html}")
    if json:
        out.document(got.document())
        return
    with out.page() as console:
        page.show(Sheet(console), got, name)


def read_any(data: bytes, name: str, db: str | None) -> Reading:
    """Return the reading; where there is no database yet, names of hull models are found by their look alone."""
    with faults.reading(name, FORM_SCHEMA):
        chosen = bootstrap.settings(db)
        if bootstrap.state(chosen) == "new":
            return read_file(None, data, name)
        with reading(db) as uow:
            return read_file(uow, data, name)


def one_form(file: str, db: str | None) -> BoatForm:
    """Return the boat form in a file: a form, or the first boat of a mail. BadInput where there is none."""
    data, name = given.read(file)
    got = read_any(data, name, db)
    if got.form is None:
        raise faults.BadInput(
            f"{name}: it speaks of no boat. Give a boat form; `transom schema {FORM_SCHEMA}` shows it"
        )
    if len(got.forms) > 1:
        out.note(f"transom: {name} speaks of {len(got.forms)} boats; this is about the first")
    return got.form
