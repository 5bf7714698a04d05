"""`transom catalogue`: what the maker sells, and the rules it is fitted by."""

from __future__ import annotations

from service.cli import faults, given, out
from service.cli.options import Db, Json, Source, group, opened
from service.cli.sheet import Sheet, table
from service.core.catalogue import Catalogue
from service.core.form import FormError
from service.files.read.catalogue_file import read_catalogue
from service.flow.load_catalogue import load_catalogue

commands = group("The catalogue: gears, shafts, brackets, parts, rules.")
SCHEMA = "catalogue"


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
