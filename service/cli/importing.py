"""`transom records import` and `transom imports`: the fleet's installations in, and what became of every import."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from service.cli import faults, given, out
from service.cli.doer import Who, doer
from service.cli.jobs import AsJob, told
from service.cli.options import Db, Json, Preview, Source, group, opened, reading
from service.cli.outbox import write_bytes
from service.cli.pages import imports
from service.cli.progress import bar, rows_of
from service.cli.sheet import Sheet
from service.flow.decide_hulls import decider
from service.flow.fault_sheet import FaultSheet, kept_fault_sheet, preview_fault_sheet
from service.flow.guess_mapping import guess_mapping
from service.flow.import_job import start_import
from service.flow.import_records import MappingFile, import_records
from service.flow.import_report import ImportReport
from service.flow.resume_import import resume_import
from service.flow.undo_import import undo_import
from service.store.happening import Actor

commands = group("What was imported: list, look, undo, and go on with what broke off.")
Map = Annotated[
    Path | None, typer.Option("--map", metavar="MAP.toml", help="What the columns of your own table stand for.")
]
GuessTo = Annotated[
    Path | None,
    typer.Option("--guess", metavar="MAP.toml", help="Only write what the columns may stand for, to be confirmed."),
]
OneSheet = Annotated[
    str | None, typer.Option("--sheet", metavar="NAME", help="With --guess: the sheet, else the best recognised one.")
]
Faults = Annotated[
    Path | None,
    typer.Option("--errors", metavar="FILE", help="Write the rows not taken, with what is wrong, to be mended."),
]
Import = Annotated[str, typer.Argument(metavar="IMPORT", help="An import's id, as `transom imports list` shows it.")]


def import_(
    file: Source,
    map_: Map = None,
    guess: GuessTo = None,
    sheet: OneSheet = None,
    errors: Faults = None,
    preview: Preview = False,
    job: AsJob = False,
    who: Who = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Take over records from CSV, TSV, XLSX, ODS, Parquet or JSON lines. Exit status 1 where rows were not taken.

    Your own table: --guess MAP.toml writes what its columns may stand for; confirm it, then import with --map MAP.toml.
    """
    data, name = given.read(file)
    if guess is not None:
        _guess(data, name, guess, sheet, json)
        return
    if job and (preview or errors is not None):
        raise faults.BadInput("--job looks at nothing and waits for nothing: leave out --preview and --errors")
    if sheet is not None:
        raise faults.BadInput("--sheet goes with --guess; afterwards the mapping file says which sheets are read")
    mapping = None if map_ is None else MappingFile(given.read(str(map_))[0], map_.name)
    if job:
        _leave_to_a_worker(data, name, mapping, who, db, json=json)
        return
    with opened(db) as store, bar("records", rows_of(data)) as advance:
        decide = decider(store.reading())
        uow = store.reading() if preview else store.writing()
        with faults.reading(map_.name if map_ else name, "records"):
            report = import_records(
                uow, data, name, mapping=mapping, decide=decide, who=doer(who), preview=preview, progress=advance
            )
        if errors is not None and report.rejected:
            sheet_of = (
                kept_fault_sheet(store.reading(), report.batch.id)
                if report.batch
                else preview_fault_sheet(data, name, mapping, report.rows)
            )
            _leave(errors, sheet_of)
    _show(report, name, json=json)


def _leave_to_a_worker(
    data: bytes, name: str, mapping: MappingFile | None, who: str | None, db: str | None, *, json: bool
) -> None:  # fmt: skip
    with opened(db) as store, faults.reading(mapping.name if mapping else name, "records"):
        told(start_import(store.writing(), data, name, actor=Actor(doer(who)), mapping=mapping), json=json)


def _guess(data: bytes, name: str, target: Path, sheet: str | None, json: bool) -> None:
    found = guess_mapping(data, name, sheet=sheet)
    if target.exists():
        raise faults.BadInput(f"{target}: this file is there already; what you confirmed may be in it. Name another")
    write_bytes(target, found.text.encode())
    if json:
        out.document(imports.guesses(found, str(target)))
        return
    with out.page() as console:
        imports.show_guesses(Sheet(console), found, name, str(target))


def _leave(target: Path, sheet: FaultSheet) -> None:
    write_bytes(target, sheet.data)
    if target.suffix.lower().removeprefix(".") != sheet.ending:
        out.note(f"{target}: its content is {sheet.ending}, as the file's that was imported")


def _show(report: ImportReport, name: str, *, json: bool) -> None:
    if json:
        out.document(imports.document(report))
    else:
        with out.page() as console:
            imports.show(Sheet(console), report, name, "records")
    if not report.whole:
        raise typer.Exit(faults.NO)


@commands.command("list")
def list_(json: Json = False, db: Db = None) -> None:
    """List every import, the newest first."""
    with reading(db) as uow:
        found = uow.imports.all()
    if json:
        out.document([imports.batch(one) for one in found])
        return
    with out.page() as console:
        imports.show_list(Sheet(console), found)


@commands.command()
def show(import_id: Import, errors: Faults = None, json: Json = False, db: Db = None) -> None:
    """Show what became of each row of an import; --errors writes those not taken, to be mended and imported."""
    with opened(db) as store:
        with store.reading() as uow:
            batch = uow.imports.get(import_id)
            rows = tuple(uow.imports.outcomes(import_id))
        if errors is not None:
            _leave(errors, kept_fault_sheet(store.reading(), import_id))
    if json:
        out.document(imports.batch(batch) | {"rows": [imports.row(one) for one in rows]})
        return
    with out.page() as console:
        imports.show_batch(Sheet(console), batch, rows)


@commands.command()
def undo(import_id: Import, who: Who = None, json: Json = False, db: Db = None) -> None:
    """Undo an import: what it added goes, what it changed is changed back. Exit status 1 where rows were kept."""
    with opened(db) as store, bar("rows") as advance:
        done = undo_import(store.writing(), import_id, who=doer(who), progress=advance)
    if json:
        out.document(imports.batch(done.batch) | {"rows": [imports.row(one) for one in done.rows]})
    else:
        with out.page() as console:
            imports.show_undone(Sheet(console), done)
    if not done.whole:
        raise typer.Exit(faults.NO)


@commands.command()
def resume(import_id: Import, json: Json = False, db: Db = None) -> None:
    """Go on with an import that broke off, at the first row that was not acknowledged."""
    with opened(db) as store, bar("records") as advance:
        decide = decider(store.reading())
        report = resume_import(store.writing(), import_id, decide=decide, progress=advance)
    _show(report, report.batch.name if report.batch else import_id, json=json)
