"""`transom records import`: the fleet's installations in."""

from __future__ import annotations

import typer

from service.cli import faults, given, out
from service.cli.options import Db, Json, Preview, Source, opened
from service.cli.pages import imports
from service.cli.progress import bar, rows_of
from service.cli.sheet import Sheet
from service.flow.decide_hulls import decider
from service.flow.import_records import import_records


def import_(file: Source, preview: Preview = False, json: Json = False, db: Db = None) -> None:
    """Take over records from CSV, XLSX or JSON lines. Exit status 1 where rows were not taken."""
    data, name = given.read(file)
    with opened(db) as store, bar("records", rows_of(data)) as advance:
        decide = decider(store.reading())
        report = import_records(store.writing(), data, name, decide=decide, preview=preview, progress=advance)
    if json:
        out.document(imports.document(report))
    else:
        with out.page() as console:
            imports.show(Sheet(console), report, name, "records")
    if not report.whole:
        raise typer.Exit(faults.NO)
