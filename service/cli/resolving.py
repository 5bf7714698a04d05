"""`transom resolve`: which hull model a name means."""

from __future__ import annotations

from typing import Annotated

import typer

from service.cli import faults, given, out
from service.cli.options import Db, Json, reading
from service.cli.pages import boat
from service.cli.progress import bar, rows_of
from service.cli.sheet import Sheet
from service.core import units
from service.core.hulls import HullDecision
from service.flow.resolve import resolve_name, resolve_rows

Name = Annotated[str | None, typer.Argument(metavar="NAME", help="The boat's name as people write it.")]
Many = Annotated[
    str | None,
    typer.Option("--file", metavar="NAMES.csv", help="Many: columns name, builder, year, loa_mm, beam_mm."),
]
Builder = Annotated[str | None, typer.Option("--builder", help="The yard, where it is told apart from the name.")]
Year = Annotated[int | None, typer.Option("--year", help="Year of building.")]
Loa = Annotated[str | None, typer.Option("--loa-mm", metavar="LENGTH", help="Length overall: mm, or with a unit.")]
Beam = Annotated[str | None, typer.Option("--beam-mm", metavar="LENGTH", help="Beam: mm, or with a unit.")]


def resolve(
    name: Name = None,
    file: Many = None,
    builder: Builder = None,
    year: Year = None,
    loa_mm: Loa = None,
    beam_mm: Beam = None,
    json: Json = False,
    db: Db = None,
) -> None:
    """Find the hull model a name means.

    Matched, several or unknown, and why.
    With --file, one JSON line for each row, in order.
    """
    if (name is None) == (file is None):
        raise faults.BadInput("give either a NAME or --file NAMES.csv; `transom resolve --help` shows both")
    if file is not None:
        if any(value is not None for value in (builder, year, loa_mm, beam_mm)):
            raise faults.BadInput(
                "--builder, --year, --loa-mm and --beam-mm go with a NAME; with --file they are columns"
            )
        _many(file, db)
        return
    loa, beam = _length("--loa-mm", loa_mm), _length("--beam-mm", beam_mm)
    with reading(db) as uow:
        found = resolve_name(uow, name or "", builder=builder, year=year, loa_mm=loa, beam_mm=beam)
    if json:
        out.document(found)
        return
    with out.page() as console:
        sheet = Sheet(console)
        sheet.title(name or "")
        sheet.part("hull", *boat.hull(found))
        sheet.part("seen", *boat.seen(found))


def _many(file: str, db: str | None) -> None:
    data, name = given.read(file)
    with reading(db) as uow, bar("names", rows_of(data)) as advance:
        for decision in resolve_rows(uow, data, name):
            out.document(_line(decision), indent=None)
            advance(1)


def _line(decision: HullDecision) -> dict[str, object]:
    return decision.model_dump(mode="json", include={"status", "model", "probability", "alternatives", "why"})


def _length(option: str, text: str | None) -> float | None:
    if text is None:
        return None
    got = units.parse(text, "length", assumed="mm")
    if isinstance(got, units.Unread):
        raise faults.BadInput(f"{option}: {text!r} is {got.reason}: {got.why}. Write 9140, 9.14 m or 30 ft")
    return got.value
