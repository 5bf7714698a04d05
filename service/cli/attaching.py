"""`transom attachments`: photos, drawings and mails that belong to records."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated, Any

import typer

from service import bootstrap
from service.cli import faults, given, out, outbox
from service.cli.doer import Who, doer
from service.cli.options import Db, Json, group, opened, reading
from service.cli.record_life import Note, Ref
from service.cli.sheet import Sheet, table
from service.files.read.media import LARGEST
from service.flow.attach import attach, attached, check_files, exported
from service.store.attachments import Attachment

commands = group("Photos, drawings and mails that belong to records.")
Files = Annotated[list[Path], typer.Argument(metavar="FILE...", help="Photos, drawings (PDF, DXF, DWG), mails, texts.")]
Folder = Annotated[Path, typer.Option("--out", metavar="DIR", help="The folder to write them into.")]


@commands.command()
def add(ref: Ref, files: Files, note: Note = None, who: Who = None, json: Json = False, db: Db = None) -> None:
    """Keep files with a record, each once; what kind they are is told by their content."""
    brought = [(path.name, given.read(str(path), most=LARGEST)[0]) for path in files]
    vault = bootstrap.vault(bootstrap.settings(db))
    with opened(db) as store:
        fresh = attach(store.writing(), vault, ref, brought, who=doer(who), note=note)
    _tell(
        fresh,
        json,
        f"{len(fresh)} kept" + (f", {len(brought) - len(fresh)} were there" if len(fresh) < len(brought) else ""),
    )


@commands.command("list")
def list_(ref: Ref, json: Json = False, db: Db = None) -> None:
    """List what belongs to a record."""
    with reading(db) as uow:
        found = attached(uow, ref)
    _tell(found, json, f"{len(found)} files of record {ref}")


@commands.command()
def export(ref: Ref, folder: Folder, json: Json = False, db: Db = None) -> None:
    """Write a record's files into a folder, under names that say what they are."""
    ready = outbox.ready(folder)
    vault = bootstrap.vault(bootstrap.settings(db))
    written = []
    with reading(db) as uow:
        for name, data in exported(uow, vault, ref):
            outbox.write_bytes(Path(str(ready)) / name, data)
            written.append(name)
    if json:
        out.document({"schema": "attachments-written/1", "folder": str(folder), "files": written})
        return
    out.say(f"{len(written)} files written into {folder}")


@commands.command()
def check(json: Json = False, db: Db = None) -> None:
    """Read every attachment again and see that it is what it was. Exit status 1 where one is not."""
    vault = bootstrap.vault(bootstrap.settings(db))
    with reading(db) as uow:
        found = check_files(uow, vault)
    faults_ = [{**_document(one), "health": health} for one, health in found.faults]
    if json:
        out.document(
            {"schema": "attachments-checked/1", "sound": found.sound, "faults": faults_, "strays": list(found.strays)}
        )
    else:
        with out.page() as console:
            sheet = Sheet(console)
            sheet.title("Attachments", f"{found.sound} sound")
            rows = [(one.reference, one.name, health, one.sha256) for one, health in found.faults]
            if rows:
                sheet.part("faults", table(("record", "name", "", "sha256"), rows))
            if found.strays:
                sheet.part("strays", table(("",), [(name,) for name in found.strays]))
    if found.faults:
        raise typer.Exit(faults.NO)


def _tell(found: tuple[Attachment, ...], json: bool, title: str) -> None:
    if json:
        out.document({"schema": "attachments/1", "attachments": [_document(one) for one in found]})
        return
    with out.page() as console:
        sheet = Sheet(console)
        sheet.title("Attachments", title)
        rows = [
            (str(one.number), one.name, one.type, f"{one.bytes} bytes", f"{one.who}, {one.at:%Y-%m-%d}", one.note or "")
            for one in found
        ]
        if rows:
            sheet.whole(table((">", "name", "type", ">size", "by", "note"), rows, wraps=(1, 5)))


def _document(one: Attachment) -> dict[str, Any]:
    return {**vars(one), "at": one.at.isoformat()}
