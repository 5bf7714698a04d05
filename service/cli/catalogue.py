"""`transom catalogue`: what the maker sells, and the rules it is fitted by."""

from __future__ import annotations

import shlex
from pathlib import Path
from typing import Annotated

import typer

from service.cli import faults, given, out
from service.cli.options import Db, Json, Source, group, opened, reading
from service.cli.pages import catalogue_diff as page
from service.cli.sheet import Sheet, table
from service.core.catalogue import Catalogue
from service.core.form import FormError
from service.files.read.catalogue_file import read_catalogue
from service.flow.compare_catalogues import Side, compare_catalogues
from service.flow.load_catalogue import load_catalogue

commands = group("The catalogue: gears, shafts, brackets, parts, rules.")
SCHEMA = "catalogue"
Before = Annotated[str, typer.Argument(metavar="A", help="What stands: a file (TOML), or the version of a loaded one.")]
After = Annotated[str, typer.Argument(metavar="B", help="What it is compared with: the same; - reads standard input.")]
References = Annotated[
    bool, typer.Option("--records", help="Name the records that carry what differs, not only how many.")
]


@commands.command()
def check(file: Source, json: Json = False, db: Db = None) -> None:
    """Say everything that is wrong with a catalogue (TOML). Exit status 2 where anything is."""
    del db  # every command takes it; checking needs none
    data, name = given.read(file)
    try:
        with faults.reading(name, SCHEMA):
            found = read_catalogue(data, name)
    except faults.BadInput as error:
        if json and isinstance(error.__cause__, FormError):
            defects = [{"field": d.field, "value": d.value, "problem": d.problem} for d in error.__cause__.defects]
            out.document({"ok": False, "defects": defects})
        raise
    if json:
        out.document({"ok": True, "defects": [], **_summary(found)})
        return
    _show(found, name, "in order")


@commands.command()
def load(file: Source, json: Json = False, db: Db = None) -> None:
    """Take a catalogue into use: answers from now on are made with it. Loading the same again changes nothing."""
    data, name = given.read(file)
    with opened(db) as store, faults.reading(name, SCHEMA):
        loaded = load_catalogue(store.writing(), data, name)
    if json:
        out.document({"fresh": loaded.fresh, **_summary(loaded.catalogue)})
        return
    _show(loaded.catalogue, name, "loaded" if loaded.fresh else "was loaded already")


@commands.command()
def diff(before: Before, after: After, records: References = False, json: Json = False, db: Db = None) -> None:
    """Say what differs between two catalogues, field by field, and how many records carry what was changed or removed.

    Exit status 0 whether anything differs or not; --json says it in `same`.
    """
    sides = _side(before), _side(after)
    with faults.reading(f"{before}, {after}", SCHEMA), reading(db) as uow:
        found = compare_catalogues(uow, *sides, references=records)
    if json:
        out.document(found)
        return
    with out.page() as console:
        page.show(Sheet(console), found)


def _side(said: str) -> Side:
    """Return what was named: a file where there is one of that name or it can be nothing else, else a version."""
    if said == given.STDIN or said.endswith(".toml") or Path(said).is_file():
        data, name = given.read(said)
        return Side(name, data, "FILE" if said == given.STDIN else shlex.quote(said))
    return Side(said)


def _summary(found: Catalogue) -> dict[str, object]:
    return {
        "name": found.name,
        "version": found.version,
        "gears": len(found.gears),
        "shafts": len(found.shafts),
        "brackets": len(found.brackets),
        "parts": len(found.parts),
        "configurations": len(found.configurations()),
    }


def _show(found: Catalogue, name: str, state: str) -> None:
    with out.page() as console:
        sheet = Sheet(console)
        sheet.title(name, state)
        rows = [(key, str(value)) for key, value in _summary(found).items()]
        sheet.part("catalogue", table(("", ""), rows))
