"""`transom recall` and `transom fit`: what other boats carry, one configuration."""

from __future__ import annotations

from typing import Annotated

import typer

from service.cli import faults, out
from service.cli.options import Db, FormFile, Json, Seed, reading
from service.cli.pages import boat
from service.cli.pages import fit as fit_page
from service.cli.reading import one_form
from service.cli.sheet import Sheet
from service.core.catalogue import Configuration
from service.core.form import parse_shape
from service.flow.fit import fit_form
from service.flow.recall import recall_form

Gear = Annotated[str, typer.Option("--gear", metavar="CODE", help="The gear.")]
Lower = Annotated[str, typer.Option("--lower", metavar="CODE", help="The lower bracket.")]
Upper = Annotated[str, typer.Option("--upper", metavar="CODE", help="The upper bracket.")]
Shaft = Annotated[str, typer.Option("--shaft", metavar="CODE", help="The shaft.")]


def recall(form: FormFile, json: Json = False, db: Db = None) -> None:
    """Bring up boats like this one, unchecked.

    Precedents with their likeness and differences, and what fitters would install.
    """
    boat_form = one_form(form, db)
    with reading(db) as uow:
        found = recall_form(uow, boat_form)
    if json:
        hull = found.hull.model_dump(mode="json") if found.hull else None
        out.document({"schema": "recall/1", "hull": hull, **found.recall.model_dump(mode="json")})
        return
    with out.page() as console:
        sheet = Sheet(console)
        sheet.title(form, f"{found.recall.sisters} sister ships in the fleet")
        sheet.part("boat", *boat.hull(found.hull))
        sheet.part("precedents", *boat.precedents(found.recall.precedents))
        sheet.part("suggestions", *boat.votes(found.recall.votes))


def fit(
    form: FormFile,
    gear: Gear,
    lower: Lower,
    upper: Upper,
    shaft: Shaft,
    seed: Seed = 1,
    json: Json = False,
    db: Db = None,
) -> None:
    """Place and check one configuration.

    On the boat of a form. Exit status 1 where it does not fit.
    """
    with faults.reading("configuration", "catalogue"):
        asked = parse_shape(Configuration, {"gear": gear, "lower": lower, "upper": upper, "shaft": shaft})
    boat_form = one_form(form, db)
    with reading(db) as uow:
        found = fit_form(uow, boat_form, asked, seed=seed)
    if json:
        out.document(found)
    else:
        with out.page() as console:
            fit_page.show(Sheet(console), found, boat_form, form)
    if found.verdict == "does_not_fit":
        raise typer.Exit(faults.NO)
