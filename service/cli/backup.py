"""`transom backup` and `transom restore`: everything in one file, and back again."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated, Any

import typer
from typer.core import TyperGroup

from service import bootstrap
from service.cli import faults, out
from service.cli.doer import Who, doer
from service.cli.jobs import AsJob, told
from service.cli.options import Db, Json, opened
from service.cli.progress import bar
from service.cli.sheet import Sheet, table
from service.core.archive import Manifest
from service.flow.back_up import back_up
from service.flow.backup_job import start_backup
from service.flow.restore import restore as restored
from service.flow.verify_backup import verify_backup
from service.store.happening import Actor

To = Annotated[Path, typer.Argument(metavar="FILE", help="The archive to write (a zip file).")]
From = Annotated[Path, typer.Argument(metavar="FILE", help="The archive to read.")]
Overwrite = Annotated[bool, typer.Option("--overwrite", help="Replace the file where there is one already.")]
Files = Annotated[
    Path | None, typer.Option("--files", metavar="DIR", help="The folder for attachments; else TRANSOM_FILES.")
]
_WRITE = "write"


class _WriteUnlessSaid(TyperGroup):
    """`transom backup FILE` is `transom backup write FILE`."""

    def parse_args(self, ctx: Any, args: list[str]) -> list[str]:  # noqa: ANN401 - typer keeps the class to itself
        """Put the command in where none was named."""
        if args and args[0] not in self.commands and args[0] not in ctx.help_option_names:
            args = [_WRITE, *args]
        return super().parse_args(ctx, args)


commands = typer.Typer(
    cls=_WriteUnlessSaid,
    help="Write everything into one file: `transom backup FILE`; look whether it is sound: `transom backup verify FILE`.",
    no_args_is_help=True,
    add_completion=False,
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
)


@commands.command()
def write(
    file: To, overwrite: Overwrite = False, job: AsJob = False, who: Who = None, json: Json = False, db: Db = None
) -> None:  # fmt: skip
    """Write the database and its attachments into one file, as they are at this moment, while others go on working.

    Exit status 1 where an attachment was missing or damaged, and so is not in it. The file holds people's data. With
    --job the worker that takes it writes the file, where it runs.
    """
    chosen = bootstrap.settings(db)
    if job:
        with opened(db) as store:
            by = Actor(doer(who))
            told(start_backup(store.writing(), bootstrap.vault(chosen), file, actor=by, overwrite=overwrite), json=json)
        return
    with bar("backup") as advance:
        made = back_up(
            chosen.database,
            bootstrap.vault(chosen),
            file,
            at=bootstrap.clock(),
            overwrite=overwrite,
            progress=advance,
        )
    _tell(made, "Backup", f"written to {file}", json)
    if made.lost:
        raise typer.Exit(faults.NO)


@commands.command()
def verify(file: From, json: Json = False, db: Db = None) -> None:
    """Read a backup from end to end and say what is wrong with it, and where. Exit status 1 where something is."""
    del db  # every command takes it; an archive needs none
    with bar("verify") as advance:
        found = verify_backup(file, progress=advance)
    if json:
        wrong = [{"where": fault.where, "what": fault.what} for fault in found.faults]
        taken = None if found.manifest is None else _document(found.manifest)
        out.document({"schema": "backup-verified/1", "sound": not wrong, "faults": wrong, "backup": taken})
    elif found.manifest is not None and not found.faults:
        _tell(found.manifest, "Backup", f"{file} is sound", json)
    else:
        with out.page() as console:
            sheet = Sheet(console)
            sheet.title("Backup", f"{file} is not sound")
            sheet.whole(table(("where", "what"), list(found.faults), wraps=(0, 1)))
    if found.faults:
        raise typer.Exit(faults.NO)


def restore(file: From, files: Files = None, json: Json = False, db: Db = None) -> None:
    """Fill an empty database, SQLite or PostgreSQL, from a backup; what is wrong with it is told before anything is done.

    Exit status 1 where attachments were lost before the backup was taken.
    """
    chosen = bootstrap.settings(db)
    bootstrap.make_folder(chosen)
    vault = bootstrap.vault(chosen) if files is None else bootstrap.vault_in(files)
    with bar("restore") as advance:
        done = restored(file, chosen.database, vault, progress=advance)
    _tell(done, "Restored", f"{bootstrap.shown(chosen)}, attachments in {vault.folder}", json)
    if done.lost:
        raise typer.Exit(faults.NO)


def _tell(manifest: Manifest, title: str, said: str, json: bool) -> None:
    if json:
        out.document(_document(manifest))
        return
    with out.page() as console:
        sheet = Sheet(console)
        sheet.title(title, said)
        rows = [(one.name, str(one.rows)) for one in manifest.tables if one.rows]
        sheet.line(f"taken {manifest.taken:%Y-%m-%d %H:%M} UTC, revision {manifest.head}, {manifest.software}")
        sheet.line(f"{manifest.rows} rows, {len(manifest.files)} files")
        sheet.whole(table(("table", ">rows"), rows))
        if manifest.lost:
            sheet.part("lost", table(("", "sha256"), [(one.health, one.sha256) for one in manifest.lost]))


def _document(manifest: Manifest) -> dict[str, Any]:
    return manifest.model_dump(mode="json", by_alias=True)
