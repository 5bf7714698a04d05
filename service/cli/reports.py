"""`transom report`: what the records say when they are looked at together."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated, get_args

import typer

from service.cli import faults, out, outbox
from service.cli.options import Db, Json, group, reading
from service.cli.pages import reports as page
from service.cli.progress import bar
from service.cli.sheet import Sheet
from service.core.quality import Kind
from service.flow.report_quality import quality_files, report_quality

commands = group("Reports over all records.")
KINDS: tuple[str, ...] = get_args(Kind)
Out = Annotated[Path | None, typer.Option("--out", metavar="DIR", help="Also write it there, as CSV and XLSX.")]


@commands.command()
def quality(
    kind: Annotated[
        str | None, typer.Option("--kind", metavar="|".join(KINDS), help="Only findings of this kind.")
    ] = None,
    fit: Annotated[bool, typer.Option("--fit/--no-fit", help="Try each record on its own boat; takes longest.")] = True,
    out_: Out = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """List what is likely wrong with records, each with a proposed mend.

    Impossible values, installations written down twice, values unlike sister ships', measurements that contradict each
    other, records that fail their own fit, and what is missing and matters.
    """
    if kind is not None and kind not in KINDS:
        raise faults.BadInput(f"there is no kind {kind!r} of findings; take one of {', '.join(KINDS)}")
    folder = outbox.ready(out_)
    with reading(db) as uow, bar("records", uow.records.count() if fit else None) as advance:
        found = report_quality(uow, fit=fit, progress=advance)
    if kind is not None:
        found = found.model_copy(update={"findings": tuple(one for one in found.findings if one.kind == kind)})
    if folder is not None:
        for name, data in quality_files(found).items():
            outbox.write_bytes(folder / name, data)
    if json:
        out.document(found)
        return
    with out.page() as console:
        page.quality(Sheet(console), found)
