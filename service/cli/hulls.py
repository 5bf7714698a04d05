"""`transom hulls`: the registry of hull models."""

from __future__ import annotations

from dataclasses import asdict

import typer

from service.cli import faults, given, out
from service.cli import hull_changes as changes
from service.cli.doer import Who, doer
from service.cli.options import Db, Json, Preview, Source, group, opened, reading
from service.cli.pages import hulls as page
from service.cli.pages import imports
from service.cli.progress import bar, rows_of
from service.cli.sheet import Sheet
from service.flow.import_hulls import import_hulls
from service.flow.show_hull import show_hull

commands = group("The registry of hull models.")


@commands.command("import")
def import_(file: Source, preview: Preview = False, who: Who = None, json: Json = False, db: Db = None) -> None:
    """Take over hull models from CSV or XLSX. Exit status 1 where rows were not taken."""
    data, name = given.read(file)
    with opened(db) as store, bar("hull models", rows_of(data)) as advance:
        report = import_hulls(store.writing(), data, name, who=doer(who), preview=preview, progress=advance)
    if json:
        out.document(imports.document(report))
    else:
        with out.page() as console:
            imports.show(Sheet(console), report, name, "hull models")
    if not report.whole:
        raise typer.Exit(faults.NO)


@commands.command("list")
def list_(json: Json = False, db: Db = None) -> None:
    """List every hull model with its id, by builder and model."""
    with reading(db) as uow:
        found = uow.hulls.all()
    if json:
        out.document([hull.model_dump(mode="json") for hull in found])
        return
    with out.page() as console:
        page.listed(Sheet(console), found)


@commands.command()
def show(hull: changes.Id, json: Json = False, db: Db = None) -> None:
    """Show one hull model: its names, what leads to it, what names it, and what was done to it."""
    with reading(db) as uow:
        found = show_hull(uow, hull)
    if json:
        rest = {
            "schema": "hull-shown/1",
            "asked": found.asked,
            "hull": found.hull.model_dump(mode="json"),
            "merged": [other.model_dump(mode="json") for other in found.merged],
            "aliases": [{**asdict(one), "at": one.at.isoformat()} for one in found.aliases],
            "uses": found.uses,
            "changes": [changes.change_document(one, found.undone) for one in found.changes],
        }
        out.document(rest)
        return
    with out.page() as console:
        page.shown(Sheet(console), found)


for one in (
    changes.alias,
    changes.merge,
    changes.unmerge,
    changes.split,
    changes.duplicates,
    changes.distinct,
    changes.undo,
    changes.log,
):
    commands.command()(one)
