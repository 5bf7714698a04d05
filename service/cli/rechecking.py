"""`transom recheck`: the whole fleet against a catalogue."""

from __future__ import annotations

from typing import Annotated

import typer

from service.cli import faults, given, out
from service.cli.doer import Who, doer
from service.cli.jobs import AsJob, told
from service.cli.options import Db, Json, opened, reading
from service.cli.progress import bar
from service.cli.sheet import Sheet, table
from service.core.answer.recheck import Recheck
from service.flow.recheck import recheck_fleet
from service.flow.recheck_job import start_recheck
from service.store.happening import Actor

CatalogueFile = Annotated[
    str | None, typer.Option("--catalogue", metavar="FILE", help="A catalogue (TOML) to compare with the loaded one.")
]
SHOWN = 40
WORDS = {"passes": "pass", "undecided": "cannot be decided", "fails": "fail", "cannot_be_made": "cannot be made"}


def recheck(
    catalogue: CatalogueFile = None, job: AsJob = False, who: Who = None, json: Json = False, db: Db = None
) -> None:  # fmt: skip
    """Check every record against the catalogue.

    With another catalogue: what would change. Exit status 1 where a record fails, or with --catalogue where one
    would come out worse. With --job a worker does it, and `transom jobs show` says what was found.
    """
    data, name = (None, "") if catalogue is None else given.read(catalogue)
    if job:
        with faults.reading(name, "catalogue"), opened(db) as store:
            told(start_recheck(store.writing(), data, name, actor=Actor(doer(who))), json=json)
        return
    with faults.reading(name, "catalogue"), reading(db) as uow:
        total = uow.records.count() * (1 if data is None else 2)
        with bar("recheck", total) as advance:
            found = recheck_fleet(uow, data, name, progress=advance)
    if json:
        out.document(found)
    else:
        with out.page() as console:
            _show(Sheet(console), found)
    worse = [c for c in found.changes if c.before.found == "passes"]
    if worse or (found.against is None and any(row.found != "passes" for row in found.rows)):
        raise typer.Exit(faults.NO)


def _show(sheet: Sheet, found: Recheck) -> None:
    sheet.title("Recheck", found.against or found.catalogue)
    for key, count in found.counts.items():
        sheet.line(f"{count:5d}  {WORDS[key]}")
    if found.against is None:
        rows = [(r.record, WORDS[r.found], r.why) for r in found.rows if r.found != "passes"]
        columns: tuple[str, ...] = ("record", "", "why")
    else:
        rows = [(c.record, f"{WORDS[c.before.found]} -> {WORDS[c.after.found]}", c.after.why) for c in found.changes]
        columns = ("record", f"{found.catalogue} -> {found.against}", "why")
    if rows:
        sheet.whole(table(columns, rows[:SHOWN], wraps=(2,)))
    if len(rows) > SHOWN:
        sheet.line(f"and {len(rows) - SHOWN} more; --json lists all")
