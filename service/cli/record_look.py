"""`transom records show|history|find`: looking at records."""

from __future__ import annotations

import re
from typing import Annotated, Any

import typer

from service.cli import faults, out
from service.cli.options import Db, Json, reading
from service.cli.pages import records as page
from service.cli.reading import one_form
from service.cli.record_life import Ref
from service.cli.sheet import Sheet
from service.flow.find_records import Found, Wanted, find_records
from service.flow.record_history import record_history, show_record

_YEARS = re.compile(r"(\d{4})?(\.\.)?(\d{4})?")


def show(
    ref: Ref,
    revision: Annotated[
        int | None, typer.Option("--revision", min=1, help="As it stood then; now if not said.")
    ] = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Show one record as it stands, with what was measured on its boat."""
    with reading(db) as uow:
        shown = show_record(uow, ref, revision)
    if json:
        out.document(
            {
                "schema": "record-shown/1",
                "reference": shown.record.reference,
                "revision": shown.revision.number,
                "head": shown.head,
                "who": shown.revision.who,
                "at": shown.revision.at.isoformat(),
                "why": shown.revision.why,
                "record": shown.record.model_dump(mode="json", by_alias=True, exclude_none=True),
                "hull": shown.hull.model_dump(mode="json", exclude_none=True) if shown.hull else None,
                "measurements": [row.model_dump(mode="json", exclude_none=True) for row in shown.measured],
                "same_boat": list(shown.boat),
                "took_in": list(shown.took_in),
                "notes": list(shown.notes),
                "attachments": [
                    {"number": one.number, "sha256": one.sha256, "name": one.name, "type": one.type, "bytes": one.bytes}
                    for one in shown.attached
                ],
            }
        )
        return
    with out.page() as console:
        page.show(Sheet(console), shown)


def history(ref: Ref, json: Json = False, db: Db = None) -> None:
    """Tell how a record came to be what it is: who changed what, when and why."""
    with reading(db) as uow:
        found = record_history(uow, ref)
    if json:
        steps = [step.model_dump(mode="json") for step in found.steps]
        notes = list(found.notes)
        out.document({"schema": "record-history/1", "reference": found.reference, "revisions": steps, "notes": notes})
        return
    with out.page() as console:
        page.history(Sheet(console), found)


def find(
    hull: Annotated[str | None, typer.Option("--hull", metavar="NAME", help="A hull model: name or id.")] = None,
    year: Annotated[
        str | None, typer.Option("--year", metavar="A..B", help="Built then: 1984, 1984..1990, ..1990.")
    ] = None,
    stern: Annotated[str | None, typer.Option("--stern", help="The transom type.")] = None,
    status: Annotated[str | None, typer.Option("--status", help="proposed, shipped, installed or withdrawn.")] = None,
    dealer: Annotated[str | None, typer.Option("--dealer", help="The dealer, as records name it.")] = None,
    configuration: Annotated[
        str | None, typer.Option("--configuration", metavar="CODES", help="Codes that must be among what it carries.")
    ] = None,
    near: Annotated[
        str | None, typer.Option("--near", metavar="FORM", help="Nearest to the boat of this form.")
    ] = None,
    limit: Annotated[int, typer.Option("--limit", min=1, max=1000, help="How many at most.")] = 20,
    after: Annotated[
        str | None, typer.Option("--after", metavar="CURSOR", help="Go on where the last page ended.")
    ] = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Find records, newest first, or nearest to a boat first.

    Exit status 1 where it is not sure which hull model is meant.
    """
    wanted = Wanted(
        hull=hull,
        years=_years(year),
        stern=stern,
        status=status,
        dealer=dealer,
        codes=tuple((configuration or "").replace("·", " ").split()),
        near=one_form(near, db) if near else None,
        limit=limit,
        after=after,
    )
    with reading(db) as uow:
        found = find_records(uow, wanted)
    if json:
        out.document(_document(found))
    else:
        with out.page() as console:
            page.found(Sheet(console), found)
    if not found.sure:
        raise typer.Exit(faults.NO)


def _document(found: Found) -> dict[str, Any]:
    return {
        "schema": "records-found/1",
        "records": [r.model_dump(mode="json", by_alias=True, exclude_none=True) for r in found.records],
        "near": [one.model_dump(mode="json") for one in found.near],
        "hull": found.hull.model_dump(mode="json") if found.hull else None,
        "next": found.next,
    }


def _years(text: str | None) -> tuple[int | None, int | None]:
    if text is None:
        return None, None
    said = _YEARS.fullmatch(text.strip())
    if said is None or not (said[1] or said[3]) or (said[1] and said[3] and not said[2]):
        raise faults.BadInput(f"--year {text!r}: write one year or two with dots between, such as 1984 or 1984..1990")
    first, last = (int(year) if year else None for year in (said[1], said[3]))
    return (first, last) if said[2] else (first, first)
