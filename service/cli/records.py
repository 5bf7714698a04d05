"""`transom records`: the fleet's installations in and out."""

from __future__ import annotations

import json as json_values
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Annotated, get_args

import typer

from service.cli import faults, given, importing, out, record_life, record_look
from service.cli.options import Db, Json, group, reading
from service.cli.outbox import written
from service.cli.progress import bar
from service.files.write.tables import Format, Unwritable
from service.flow.export_records import export_records, export_to

commands = group("The fleet's records: one installation each.")
commands.command("import")(importing.import_)
commands.command("find")(record_look.find)
commands.command("show")(record_look.show)
commands.command("history")(record_look.history)
commands.command("propose")(record_life.propose)
commands.command("step")(record_life.step)
commands.command("outcome")(record_life.outcome)
commands.command("measure")(record_life.measure)
commands.command("correct")(record_life.correct)
commands.command("restore")(record_life.restore)
commands.command("merge")(record_life.merge)
FORMATS = get_args(Format)
BINARY = ("xlsx", "ods", "parquet")
Target = Annotated[str, typer.Argument(metavar="FILE", help="Where to; its ending says the format. - is stdout.")]
As = Annotated[
    str | None, typer.Option("--format", metavar="|".join(FORMATS), help="JSON lines alone keep history. Else csv.")
]


@commands.command()
def export(file: Target = given.STDIN, format_: As = None, json: Json = False, db: Db = None) -> None:
    """Give every record out as CSV, TSV, XLSX, ODS, Parquet or JSON lines.

    With --json and no FILE: one document with all of them.
    """
    to_stdout = file == given.STDIN
    chosen: Format = "jsonl" if json and to_stdout and format_ is None else _format(format_, file)
    if json and to_stdout and chosen != "jsonl":
        raise faults.BadInput("--json prints one JSON document; name a FILE to write another format beside it")
    if to_stdout and chosen in BINARY and sys.stdout.isatty():
        raise faults.BadInput(f"a {chosen} file is no text for a terminal. Name a FILE ending in .{chosen}")
    with reading(db) as uow, bar("records", uow.records.count()) as advance, _unwritable():
        if not to_stdout:
            with written(Path(file)) as stream:
                count = export_to(stream, uow, chosen, progress=advance)
                size = stream.tell()
            if json:
                out.document({"file": file, "format": chosen, "records": count, "bytes": size})
        elif json:
            lines = export_records(uow, chosen).splitlines()
            out.document({"schema": "records/1", "records": [json_values.loads(line) for line in lines]})
        else:
            out.raw(export_records(uow, chosen))


@contextmanager
def _unwritable() -> Iterator[None]:
    try:
        yield
    except Unwritable as problem:
        raise faults.BadInput(str(problem)) from None


def _format(asked: str | None, file: str) -> Format:
    name = (asked or Path(file).suffix.removeprefix(".") or "csv").lower()
    for known in FORMATS:
        if name == known:
            return known  # type: ignore[no-any-return]  # one of the names the type lists
    raise faults.BadInput(
        f"records are not written as {name!r}. Take one of {', '.join(FORMATS)} (--format, or FILE's ending)"
    )
