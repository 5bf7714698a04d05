"""`transom hulls`: the registry of hull models."""

from __future__ import annotations

import typer

from service.cli import faults, given, out
from service.cli.options import Db, Json, Preview, Source, group, opened, reading
from service.cli.pages import imports
from service.cli.progress import bar, rows_of
from service.cli.sheet import Sheet, number, table
from service.flow.import_hulls import import_hulls

commands = group("The registry of hull models.")


@commands.command("import")
def import_(file: Source, preview: Preview = False, json: Json = False, db: Db = None) -> None:
    """Take over hull models from CSV or XLSX. Exit status 1 where rows were not taken."""
    data, name = given.read(file)
    with opened(db) as store, bar("hull models", rows_of(data)) as advance:
        report = import_hulls(store.writing(), data, name, preview=preview, progress=advance)
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
        sheet = Sheet(console)
        sheet.title("Hull models", str(len(found)))
        if not found:
            sheet.line("none yet; take them over with `transom hulls import FILE`")
            return
        rows = [
            (
                hull.id,
                f"{hull}\n  also {', '.join(hull.aliases)}" if hull.aliases else str(hull),
                f"{hull.first_year or ''}-{hull.last_year or ''}".strip("-"),
                number(hull.loa_mm, "mm"),
                hull.stern or "-",
            )
            for hull in found
        ]
        sheet.whole(table(("id", "hull model", "years", ">length", "stern"), rows, wraps=(1,)))
